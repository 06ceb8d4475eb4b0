"""A picture of a night with its caption, to be changed in place, and a key to remove it."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.log.opened import PictureShown
from app.theme.theme import Theme
from app.widgets.field import Field
from app.widgets.key import Key
from app.widgets.keyrow import KeyRow
from app.widgets.photo import Photo
from app.widgets.text import Text


class PictureView(QWidget):
    """`described` carries a new caption, once it is typed."""

    described = Signal(str)
    remove_wanted = Signal()

    def __init__(self, theme: Theme, shown: PictureShown, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._kept = shown.caption
        name = shown.caption or shown.name
        self._caption = Field(self.tr("Caption"), self.tr("what it shows; goes into the report"))
        self._caption.line().setAccessibleName(self.tr("Caption of {name}").format(name=shown.name))
        self._caption.show_text(shown.caption)
        self._caption.left.connect(self._submit)
        self._remove = Key(self.tr("Remove the picture"))
        self._remove.setAccessibleName(self.tr("Remove the picture {name}").format(name=name))
        self._remove.clicked.connect(self.remove_wanted)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 8, 0, 0)
        if shown.image is not None:
            column.addWidget(Photo(theme, shown.image, name))
        column.addWidget(Text(shown.name, "small"))
        column.addWidget(self._caption)
        column.addWidget(KeyRow((self._remove,)))

    def caption(self) -> Field:
        return self._caption

    def remove_button(self) -> Key:
        return self._remove

    def _submit(self) -> None:
        if self._caption.text() != self._kept:
            self._kept = self._caption.text()
            self.described.emit(self._kept)
