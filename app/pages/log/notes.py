"""What was said of a night, a line to say more, and its pictures."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.pages.log.opened import PictureShown
from app.pages.log.pictureview import PictureView
from app.pages.log.words import clock_words, told
from app.theme.theme import Theme
from app.widgets.key import Key
from app.widgets.keyrow import KeyRow
from app.widgets.lines import Lines
from app.widgets.text import Panel, Text
from core.night.record import Entry, Kind, NightRecord
from core.sky.clocks import Zone

NOTE_PX = 88


class Notes(Panel):
    """`noted` carries a text, `changed` an Entry and its new text, `described` an Entry and its
    new caption, `removed` and `put_back` an Entry; `picture_wanted` asks for the file picker.
    """

    noted = Signal(str)
    changed = Signal(object, str)
    described = Signal(object, str)
    removed = Signal(object)
    put_back = Signal(object)
    picture_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Notes and pictures"), parent)
        self._theme = theme
        self._night: int | None = None
        self._edited: Entry | None = None
        self._gone: Entry | None = None
        self._rows: list[SaidRow] = []
        self._photos: list[PictureView] = []
        self._lines = Lines(self.tr("A note for this night"))
        self._lines.setPlaceholderText(self.tr("What went well, what to change"))
        self._lines.setFixedHeight(NOTE_PX)
        self._write = Key()
        self._leave = Key(self.tr("Leave it as it was"))
        self._picture = Key(self.tr("Add a picture"))
        self._write.clicked.connect(self._submit)
        self._leave.clicked.connect(lambda: self._edit(None))
        self._picture.clicked.connect(self.picture_wanted)
        self._said, self._gallery = QVBoxLayout(), QVBoxLayout()
        self._gone_words = Text()
        self._undo = Key(self.tr("Put it back"))
        self._undo.clicked.connect(self._restore)
        self._gone_row = QWidget()
        row = QHBoxLayout(self._gone_row)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._gone_words, 1)
        row.addWidget(self._undo)
        dropped = self.tr("A picture can also be dropped on this page.")
        self.column.addLayout(self._said)
        for part in (
            self._gone_row,
            self._lines,
            KeyRow((self._write, self._leave, self._picture)),
            Text(dropped, "small"),
        ):
            self.column.addWidget(part)
        self.column.addLayout(self._gallery)
        self._gone_row.hide()
        self._edit(None)

    def lines(self) -> Lines:
        return self._lines

    def write_button(self) -> Key:
        return self._write

    def leave_button(self) -> Key:
        return self._leave

    def undo_button(self) -> Key:
        return self._undo

    def rows(self) -> list[SaidRow]:
        return list(self._rows)

    def said(self) -> str:
        """What was said of the night, a line each."""
        return "\n".join(row.words() for row in self._rows)

    def photos(self) -> list[PictureView]:
        return list(self._photos)

    def show_night(self, night: NightRecord, pictures: list[PictureShown], zone: Zone) -> None:
        if night.key != self._night:
            self._night = night.key
            self._edit(None)
            self._show_gone(None)
        for old in (*self._rows, *self._photos):
            old.hide()
            old.deleteLater()
        said = [(one, told(one, zone)) for one in night.entries]
        self._rows = [
            self._row(one, f"{clock_words(one.utc_s, zone)}   {words}")
            for one, words in said if words
        ]  # fmt: skip
        self._photos = [self._photo(one) for one in pictures]
        for column, parts in ((self._said, self._rows), (self._gallery, self._photos)):
            for part in parts:
                column.addWidget(part)

    def _row(self, entry: Entry, words: str) -> SaidRow:
        row = SaidRow(words, entry.kind == Kind.NOTE)
        row.edit_wanted.connect(lambda: self._edit(entry))
        row.remove_wanted.connect(lambda: self._remove(entry))
        return row

    def _photo(self, shown: PictureShown) -> PictureView:
        view = PictureView(self._theme, shown)
        view.described.connect(lambda caption: self.described.emit(shown.entry, caption))
        view.remove_wanted.connect(lambda: self._remove(shown.entry))
        return view

    def _submit(self) -> None:
        text, edited = self._lines.text().strip(), self._edited
        if text:
            self._edit(None)
            if edited is None:
                self.noted.emit(text)
            else:
                self.changed.emit(edited, text)
        self._lines.setFocus()

    def _edit(self, entry: Entry | None) -> None:
        """A note in the line to be changed; None: the line is for a new one."""
        self._edited = entry
        self._leave.setVisible(entry is not None)
        if entry is None:
            self._write.setText(self.tr("Write it down"))
            self._lines.show_text("")
            return
        self._write.setText(self.tr("Keep the change"))
        self._lines.show_text(str(entry.content.get("text", "")))
        self._lines.setFocus()

    def _remove(self, entry: Entry) -> None:
        if self._edited is not None and self._edited.key == entry.key:
            self._edit(None)
        self._show_gone(entry)
        self._undo.setFocus()
        self.removed.emit(entry)

    def _restore(self) -> None:
        gone = self._gone
        self._show_gone(None)
        self._lines.setFocus()
        if gone is not None:
            self.put_back.emit(gone)

    def _show_gone(self, entry: Entry | None) -> None:
        self._gone = entry
        self._gone_row.setVisible(entry is not None)
        if entry is not None:
            is_picture = entry.kind == Kind.PICTURE
            picture, note = self.tr("The picture is removed."), self.tr("The note is removed.")
            words = picture if is_picture else note
            self._gone_words.say(words)
            self._undo.setAccessibleDescription(words)


class SaidRow(QWidget):
    """One thing that was said. A note can be changed; whatever was said can be removed."""

    edit_wanted = Signal()
    remove_wanted = Signal()

    def __init__(self, words: str, is_note: bool, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._words = Text(words)
        self._edit, self._remove = Key(self.tr("Change")), Key(self.tr("Remove"))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(self._words, 1)
        for key, wanted in (
            (self._edit, self.edit_wanted),
            (self._remove, self.remove_wanted),
        ):
            key.setAccessibleName(f"{key.text()}: {words}")
            key.clicked.connect(wanted)
            row.addWidget(key)
            key.setVisible(is_note)  # not before it has a place: it would be a window of its own

    def words(self) -> str:
        return self._words.text()

    def edit_button(self) -> Key:
        return self._edit

    def remove_button(self) -> Key:
        return self._remove
