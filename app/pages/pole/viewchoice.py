"""Which way round a sight or finder shows the sky."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.widgets.choice import Choice
from app.widgets.named import Named
from core.alignment.polarscope.view import View
from core.language import say


class ViewChoice(Named):
    """`view_chosen` carries a View."""

    view_chosen = Signal(object)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        self._choice = Choice(name, [(view.name, _begun(say(view.value))) for view in View])
        super().__init__(name, self._choice, parent=parent)
        self._choice.chosen.connect(lambda chosen: self.view_chosen.emit(View[chosen]))

    def show_view(self, view: View) -> None:
        self._choice.show_choice(view.name)

    def choice(self) -> Choice:
        return self._choice


def _begun(words: str) -> str:
    return words[:1].upper() + words[1:]
