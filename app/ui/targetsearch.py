"""Finding a target by typing: a name, a number of a catalogue, or coordinates."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from app.ui.form import Field
from core.language import say
from core.sky.targets import Target

ROLE = Qt.ItemDataRole.UserRole
MOST_LINES = 6


class TargetSearch(QWidget):
    """`typed` asks for targets; whoever finds them calls `offer`. `chosen` carries a Target.

    Enter takes the first one offered, the down key leads into the list.
    """

    typed = Signal(str)
    chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        example = self.tr("M 31, Vega, Saturn …")
        self._field = Field(self.tr("Find a target"), example, has_name_above=False)
        self._list = QListWidget()
        self._list.setAccessibleName(self.tr("Targets found"))
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.itemActivated.connect(self._take)
        self._list.itemClicked.connect(self._take)
        self._list.hide()
        self._waits = False
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addWidget(self._field)
        column.addWidget(self._list)
        self._field.edited.connect(self._edited)
        self._field.submitted.connect(self._submitted)
        self._field.line().installEventFilter(self)
        self.setFocusProxy(self._field)

    def field(self) -> Field:
        return self._field

    def found(self) -> QListWidget:
        return self._list

    def offer(self, text: str, targets: Sequence[Target]) -> None:
        """What was found for a text; answers to an older text are passed over."""
        if text != self._field.text():
            return
        self._list.clear()
        for target in targets:
            item = QListWidgetItem(_line(target))
            item.setData(ROLE, target)
            self._list.addItem(item)
        self._fit()
        self._field.note("")
        if text and not targets:
            self._field.note(
                self.tr("Nothing is called that. Coordinates go like 00 42 44 +41 16 09 (J2000).")
            )
        if self._waits and targets:
            self._take(self._list.item(0))
        self._waits = False

    def _fit(self) -> None:
        count = self._list.count()
        self._list.setVisible(count > 0)
        if count:
            self._list.setFixedHeight(min(count, MOST_LINES) * self._list.sizeHintForRow(0) + 8)

    def _edited(self) -> None:
        self._waits = False
        if not self._field.text():
            self.offer("", ())
        self.typed.emit(self._field.text())

    def _submitted(self) -> None:
        """Enter before the answer has come waits for it."""
        if self._list.count():
            self._take(self._list.item(0))
        elif self._field.text():
            self._waits = True
            self.typed.emit(self._field.text())

    def _take(self, item: QListWidgetItem) -> None:
        target = item.data(ROLE)
        self._field.show_text("")
        self._list.clear()
        self._list.hide()
        self._field.setFocus()
        self.chosen.emit(target)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        down = isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress
        if down and event.key() == Qt.Key.Key_Down and self._list.count():  # type: ignore[attr-defined]
            self._list.setCurrentRow(0)
            self._list.setFocus()
            return True
        return super().eventFilter(watched, event)


def _line(target: Target) -> str:
    said = [target.name, target.kind]
    if target.magnitude is not None:
        said.append(say("magnitude {magnitude:.1f}", magnitude=target.magnitude))
    if target.size_arcmin is not None:
        said.append(say("{size:g}′ across", size=target.size_arcmin))
    return "   ".join([said[0], ", ".join(said[1:])])
