"""The panel where readings come from: one way at a time, the active one named."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QSize, Signal
from PySide6.QtWidgets import QWidget

from app.theme.cutting import GROWS, tell_grown
from app.widgets.ahead import lay_out, polish
from app.widgets.choice import Choice
from app.widgets.text import Panel

PRACTICE, HAND, LOG = "practice", "hand", "log"


class ReadingsPanel(Panel):
    """Builds the controls of a way when it is first taken. `left` and `taken` carry its key."""

    left = Signal(str)
    taken = Signal(str)  # its controls are there and shown

    def __init__(
        self, builders: dict[str, Callable[[], QWidget]], parent: QWidget | None = None
    ) -> None:
        super().__init__(self.tr("Readings from"), parent)
        self.setProperty(GROWS, True)
        self._builders = builders
        self._way = ""
        self._controls: dict[str, QWidget] = {}
        self._ways = Choice(
            self.tr("Readings from"),
            [
                (PRACTICE, self.tr("Practice sky")),
                (HAND, self.tr("By hand")),
                (LOG, self.tr("Drift log")),
            ],
        )
        self._ways.chosen.connect(self.take)
        self.column.addWidget(self._ways)

    def way(self) -> str:
        return self._way

    def choice(self) -> Choice:
        """Its keys, to take a way with."""
        return self._ways

    def take(self, way: str) -> None:
        """Leaves the way in use and takes another; the same again changes nothing."""
        if way == self._way:
            return
        # Never without a way in between: whoever hears of the leaving would show an empty page.
        before, self._way = self._way, way
        self._leave(before)
        self._ways.show_choice(way)
        self.prepare(way)
        self._controls[way].show()
        self.taken.emit(way)

    def prepare(self, way: str) -> None:
        """Builds the controls of a way without showing them, unless they are there already."""
        self._make(way)
        tell_grown(self)

    def unbuilt(self, way: str) -> list[Callable[[], None]]:
        """Steps to be taken when there is time: then taking the way is quick."""
        return [
            partial(self._make, way),
            partial(tell_grown, self),
            partial(self._polish, way),
            partial(self._lay_out, way),
        ]

    def _make(self, way: str) -> None:
        if way not in self._controls:
            self._controls[way] = self._builders[way]()
            self._controls[way].hide()
            self.column.addWidget(self._controls[way])

    def _polish(self, way: str) -> None:
        polish(self._controls[way])

    def _lay_out(self, way: str) -> None:
        controls = self._controls[way]
        lay_out(controls, QSize(self.contentsRect().width(), controls.sizeHint().height()))

    def leave(self) -> None:
        """No way is in use any more."""
        before, self._way = self._way, ""
        self._leave(before)

    def _leave(self, way: str) -> None:
        if way:
            self._controls[way].hide()
            self._ways.show_none()
            self.left.emit(way)  # whoever listens may drop the controls

    def drop(self, way: str) -> None:
        """Forgets the controls of a way, so that they are built afresh."""
        controls = self._controls.pop(way, None)
        if controls is not None:
            self.column.removeWidget(controls)
            controls.setParent(None)
            controls.deleteLater()

    def controls(self, way: str) -> QWidget | None:
        return self._controls.get(way)
