"""Notes and pictures of the open night: added, changed, removed, put back."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal

from app.pages.log.filebar import FileBar
from app.pages.log.parts import LogParts
from app.session.errand import Errand
from app.session.nightfiles import MEDIA_TYPES, PictureFile, picture_from
from core.night.record import Entry, Kind

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
        self._looks = Errand(self)
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
