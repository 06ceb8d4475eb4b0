"""What was done about the flip: two large keys for cold hands, and what they were pressed for."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.session.flipbook import FlipBook
from app.widgets.key import Key
from app.widgets.keyrow import KeyRow
from app.widgets.nightpicture import clock_words
from app.widgets.text import Text
from core.sky.clocks import Zone


class FlipKeys(QWidget):
    """For one target at a time; kept with the night, where the checklist finds it."""

    def __init__(self, book: FlipBook, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._book = book
        self._target = ""
        self._zone: Zone | None = None
        self._count = 0
        self._done = Text()
        self._flipped = Key(self.tr("The mount has flipped"), "primary")
        self._centred = Key(self.tr("Centred and focused again"), "primary")
        self._back = Key(self.tr("Take the last one back"))
        self._flipped.clicked.connect(lambda: book.flip(self._target))
        self._centred.clicked.connect(lambda: book.centre(self._target))
        self._back.clicked.connect(lambda: book.take_back(self._target))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._done)
        column.addWidget(KeyRow((self._flipped, self._centred, self._back)))
        book.changed.connect(self._show)

    def flipped_button(self) -> Key:
        return self._flipped

    def centred_button(self) -> Key:
        return self._centred

    def back_button(self) -> Key:
        return self._back

    def said(self) -> str:
        return self._done.text()

    def show_target(self, target: str, count: int, zone: Zone) -> None:
        """`count`: how many flips are planned."""
        self._target, self._count, self._zone = target, count, zone
        self._show()

    def _show(self) -> None:
        if self._zone is None:
            return
        flips = self._book.flips(self._target)
        waits = bool(flips) and flips[-1].centred_utc_s is None
        had_focus = any(key.hasFocus() for key in (self._flipped, self._centred, self._back))
        said = []
        for one in flips:
            when = clock_words(self._zone, one.flipped_utc_s)
            if one.centred_utc_s is None:
                said.append(
                    self.tr("Flipped at {time}. Now centre the target and focus.").format(time=when)
                )
            else:
                again = clock_words(self._zone, one.centred_utc_s)
                words = self.tr("Flipped at {time}, centred and focused again at {again}.")
                said.append(words.format(time=when, again=again))
        self._done.say("\n".join(said))
        self._centred.setVisible(waits)
        self._flipped.setVisible(not waits and len(flips) < max(self._count, 1))
        self._back.setVisible(bool(flips))
        if had_focus:
            self._next_key(waits).setFocus()

    def _next_key(self, waits: bool) -> Key:
        """Where a hand that just pressed one goes on."""
        if waits:
            return self._centred
        return self._flipped if self._flipped.isVisibleTo(self) else self._back
