"""What was said of a night, and a line to say more."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.log.words import clock_words, told
from app.theme.theme import Theme
from app.widgets.key import Key
from app.widgets.keyrow import KeyRow
from app.widgets.lines import Lines
from app.widgets.photo import Photo
from app.widgets.text import Panel, Text
from core.night.reportnight import NightRecord
from core.sky.zones import Zone

NOTE_PX = 88


class Notes(Panel):
    """`noted` carries a text; `picture_wanted` asks for the file picker."""

    noted = Signal(str)
    picture_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Notes and pictures"), parent)
        self._theme = theme
        self._told = Text()
        self._lines = Lines(self.tr("A note for this night"))
        self._lines.setPlaceholderText(self.tr("What went well, what to change"))
        self._lines.setFixedHeight(NOTE_PX)
        self._write = Key(self.tr("Write it down"))
        self._picture = Key(self.tr("Add a picture"))
        self._write.clicked.connect(self._submit)
        self._picture.clicked.connect(self.picture_wanted)
        self._photos: list[QWidget] = []
        self._gallery = QVBoxLayout()
        dropped = self.tr("A picture can also be dropped on this page.")
        for part in (self._told, self._lines, KeyRow((self._write, self._picture))):
            self.column.addWidget(part)
        self.column.addWidget(Text(dropped, "small"))
        self.column.addLayout(self._gallery)

    def lines(self) -> Lines:
        return self._lines

    def write_button(self) -> Key:
        return self._write

    def said(self) -> str:
        """What was said of the night, a line each."""
        return self._told.text()

    def photos(self) -> list[QWidget]:
        return list(self._photos)

    def show_night(
        self, night: NightRecord, pictures: list[tuple[str, QImage | None]], zone: Zone
    ) -> None:
        """`pictures`: the caption of each, and its image where it is one."""
        said = [(clock_words(one.utc_s, zone), told(one)) for one in night.entries]
        self._told.say("\n".join(f"{when}   {what}" for when, what in said if what))
        for gone in self._photos:
            gone.hide()
            gone.deleteLater()
        self._photos = [self._shown(*one) for one in pictures]
        for photo in self._photos:
            self._gallery.addWidget(photo)

    def _shown(self, caption: str, image: QImage | None) -> QWidget:
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, 0, 0, 0)
        if image is not None:
            column.addWidget(Photo(self._theme, image, caption))
        column.addWidget(Text(caption, "small"))
        return holder

    def _submit(self) -> None:
        text = self._lines.text().strip()
        if text:
            self._lines.show_text("")
            self.noted.emit(text)
        self._lines.setFocus()
