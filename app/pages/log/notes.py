"""A night read from the log, with its pictures made ready to be shown."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.night.archive import MEDIA_TYPES, PictureFile, picture_from
from app.pages.log.files import FileBar
from app.pages.log.parts import LogParts
from app.pages.log.words import clock_words, told
from app.ui.form import Field, Key, KeyRow, Lines
from app.ui.photo import Photo, small
from app.ui.style import Theme
from app.ui.text import Panel, Text
from app.workers.latest import LatestOnly
from core.night.record import Entry, Kind, NightRecord
from core.night.report import drift_arcsec_per_min
from core.sky.clocks import Zone


@dataclass(frozen=True, eq=False)
class PictureShown:
    """A picture of the night. `image`: None where it is none that can be shown."""

    entry: Entry
    image: QImage | None

    @property
    def name(self) -> str:
        """Of the file it came from."""
        return str(self.entry.content.get("name") or "")

    @property
    def caption(self) -> str:
        return str(self.entry.content.get("caption") or "")


@dataclass(frozen=True, eq=False)
class OpenedNight:
    """`drifts`: by the key of a leg, its slope in arcseconds a minute; None: too few readings."""

    night: NightRecord
    pictures: list[PictureShown]
    drifts: Mapping[int, float | None]


def opened(night: NightRecord) -> OpenedNight:
    """For a worker thread: a long leg takes a while to be fitted."""
    pictures = night.of_kind(Kind.PICTURE)
    return OpenedNight(
        night,
        [PictureShown(one, small(one.attachment or b"")) for one in pictures],
        {one.key: drift_arcsec_per_min(one.leg) for one in night.legs},
    )


# A picture of a night with its caption, to be changed in place, and a key to remove it.


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


# What was said of a night, a line to say more, and its pictures.

NOTE_PX = 88


class NightNotes(Panel):
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


# Notes and pictures of the open night: added, changed, removed, put back.

LOOK_AGAIN_MS = 1000
KEPT_WITHIN_S = 1.0  # on a disk that works it takes a tenth


class Remembering(QObject):
    """Every change is kept at once. `changed` follows those after which the night looks different.

    `opened`: the key of the night that is open on the page, None for none. Call `stop` at the end.
    """

    changed = Signal()

    def __init__(
        self,
        bar: FileBar,
        parts: LogParts,
        opened: Callable[[], int | None],
        parent: QObject,
    ) -> None:
        super().__init__(parent)
        self._bar, self._parts, self._opened = bar, parts, opened
        self._is_waiting = False
        self._looks = LatestOnly(self)
        self._looks.done.connect(self._take_look)
        self._again = QTimer(self, singleShot=True, interval=LOOK_AGAIN_MS)
        self._again.timeout.connect(self._look)

    def stop(self) -> None:
        """Waits for what is under way; harmless twice."""
        self._again.stop()
        self._looks.close()

    def note(self, text: str) -> None:
        """A new note; tonight's are also on the Tonight page."""
        night = self._opened()
        if night == self._parts.tonight:
            self._parts.book.note(text)
        elif night is not None:
            self._parts.log.put_entry(Kind.NOTE, {"text": text}, night_id=night)
        self._told()

    def change_note(self, entry: Entry, text: str) -> None:
        """The time stays that of the first writing."""
        self._put(entry, text=text)
        self._told()

    def describe(self, entry: Entry, caption: str) -> None:
        """The caption of a picture; the night is not read anew for that."""
        self._put(entry, caption=caption)
        self._bar.say(self.tr("The caption is kept."))
        self._say_if_waiting()

    def remove(self, entry: Entry) -> None:
        self._parts.log.remove_entry(entry.key)
        self._tell_book()
        self._told()

    def put_back(self, entry: Entry) -> None:
        """As it was before it was removed, its picture included."""
        self._parts.log.put_entry(
            entry.kind, entry.content, entry.attachment, entry.key, entry.utc_s, self._opened()
        )
        self._tell_book()
        self._told()

    def take_picture(self, path: Path) -> None:
        if self._opened() is None:
            self._bar.say(self.tr("Open a night first: the picture goes with it."))
            return
        self._bar.run(lambda: picture_from(path))

    def keep_picture(self, picture: PictureFile) -> str:
        """One read from disk. A sentence."""
        content = {"name": picture.name, "media_type": picture.media_type, "caption": ""}
        self._parts.log.put_entry(Kind.PICTURE, content, picture.data, night_id=self._opened())
        sentence = self.tr("{name} is kept with the night.").format(name=picture.name)
        self._bar.say(sentence)
        self._told()
        return self._bar.said()

    def choose_picture(self) -> None:
        patterns = [f"*{end}" for end in MEDIA_TYPES]
        self._bar.choose(self.tr("Choose a picture"), patterns, self.take_picture)

    def _told(self) -> None:
        self._say_if_waiting()
        self.changed.emit()

    def _say_if_waiting(self) -> None:
        """It cannot be seen on the page before it is in the log."""
        if self._parts.log.is_read_only:
            self._say_waiting()
        self._is_waiting = False  # of this nothing is known yet
        self._look()

    def _look(self) -> None:
        """Whether it has come to disk, found out beside the window's thread."""
        log = self._parts.log
        self._looks.send(lambda: log.flush(KEPT_WITHIN_S))

    def _take_look(self, is_kept: object) -> None:
        was_waiting, self._is_waiting = self._is_waiting, not is_kept
        if not is_kept:
            if not was_waiting:
                self._say_waiting()
            self._again.start()
        elif was_waiting:
            self._bar.say(self.tr("What waited in memory is written into the log now."))
            self.changed.emit()

    def _say_waiting(self) -> None:
        if self._parts.log.is_read_only:
            why = self.tr(
                "This waits in memory: another copy of the program writes the log. It is "
                "written when that copy is closed."
            )
        else:
            why = self.tr(
                "This waits in memory: the log of nights does not take it now. It is written as "
                "soon as it does; do not close the program before."
            )
        self._bar.say(why)

    def _put(self, entry: Entry, **changed: str) -> None:
        content = {**entry.content, **changed}
        night = self._opened()
        self._parts.log.put_entry(entry.kind, content, entry_id=entry.key, night_id=night)

    def _tell_book(self) -> None:
        """Steps of tonight's checklist may hang on it."""
        if self._opened() == self._parts.tonight:
            self._parts.book.changed.emit()
