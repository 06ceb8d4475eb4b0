"""Parts of a page of which one is looked at."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.theme.cutting import GROWS, tell_grown
from app.widgets.ahead import lay_out, polish
from app.widgets.choice import Choice


@dataclass(frozen=True)
class Section:
    """`build` makes it, when it is first looked at or before."""

    name: str
    title: str
    build: Callable[[], QWidget]


class Sections(QWidget):
    """Keys along the top, the section chosen below.

    Both signals carry its name each time: `showing` just before it comes into view, when filling it
    costs no layout of its own, `shown` after.
    """

    showing = Signal(str)
    shown = Signal(str)

    def __init__(
        self, name: str, sections: Sequence[Section], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setProperty(GROWS, True)
        self._sections = {section.name: section for section in sections}
        self._built: dict[str, QWidget] = {}
        self._keys = Choice(name, [(section.name, section.title) for section in sections])
        self._keys.chosen.connect(self.show_section)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(10)
        self._column.addWidget(self._keys)

    def unbuilt(self) -> list[Callable[[], None]]:
        """Steps for each section, to be taken when there is time: then showing it is quick."""
        return [
            partial(step, name)
            for name in self._sections
            for step in (self._make, self._dress, self._polish, self._lay_out)
        ]

    def _dress(self, _name: str) -> None:
        tell_grown(self)

    def _polish(self, name: str) -> None:
        polish(self._built[name])

    def _lay_out(self, name: str) -> None:
        lay_out(self._built[name], self.size())

    def _make(self, name: str) -> None:
        if name in self._built:
            return
        widget = self._sections[name].build()
        widget.setAccessibleName(self._sections[name].title)
        widget.hide()
        self._built[name] = widget
        self._column.addWidget(widget, 1)

    def show_section(self, name: str) -> None:
        self._make(name)
        tell_grown(self)
        self._keys.show_choice(name)
        for other, widget in self._built.items():
            if other != name:
                widget.hide()
        self.showing.emit(name)
        self._built[name].show()
        self._built[name].updateGeometry()  # the page has not counted what came in while hidden
        self.shown.emit(name)

    def names(self) -> list[str]:
        """In order."""
        return list(self._sections)

    def current(self) -> str:
        return self._keys.choice()

    def section(self, name: str) -> QWidget | None:
        """The section if it has been looked at."""
        return self._built.get(name)

    def keys(self) -> Choice:
        return self._keys
