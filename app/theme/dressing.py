"""Putting the style sheet on the window piece by piece, so that the window never has to wait.

A sheet is laid again on every widget below the one it is set on, all at once. So a page carries for
good a sheet that holds for its frames alone, in colours of the palette, and the sheet that changes
is set on small pieces: first on those seen, with the window's picture held until all of them have
it, then on the rest.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from time import perf_counter

from PySide6.QtCore import QCoreApplication, QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtWidgets import QWidget
from shiboken6 import isValid

from app.theme.cutting import GROWN, Cut, cut, frame_of, parts
from app.theme.sheet import FRAMES_SHEET

SLICE_S = 0.008  # pieces are dressed for so long before the window answers again


class Dressing(QObject):
    """Whatever is not in one of the parts has the palette alone."""

    settled = Signal()  # all that is seen has the sheet

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._sheet = ""
        self._frames: set[QWidget] = set()
        self._pieces: dict[QWidget, None] = {}  # a set that keeps its order
        self._seen: dict[QWidget, None] = {}  # yet to be dressed
        self._hidden: dict[QWidget, None] = {}  # likewise, when there is time
        self._raw: dict[QWidget, None] = {}  # dressed before they were ever polished
        self._grown: set[QWidget] = set()  # frames
        self._held: set[QWidget] = set()  # windows
        self._idle = QTimer(self)
        self._idle.setInterval(0)
        self._idle.timeout.connect(self._go_on)

    def add(self, part: QWidget) -> None:
        """A part to be dressed from now on as a whole, for as long as it exists."""
        self._take(Cut([], [part]), at_once=True)

    def add_page(self, page: QWidget) -> Iterator[None]:
        """A page, to be dressed piece by piece, with whatever comes into it later.

        In slices, all of which must be taken before the page is shown. It should have its place in
        the window by then: Qt looks at all that a page holds when it is moved with a sheet on it.
        """
        page.setStyleSheet(FRAMES_SHEET)
        yield
        made = frame_of(page)
        self._watch(made)
        until = perf_counter() + SLICE_S
        for piece in made.pieces:
            if perf_counter() > until:
                yield
                until = perf_counter() + SLICE_S
            if isValid(piece):
                self._dress_raw(piece)
        self._idle.start()

    def change(self, sheet: str) -> None:
        """What is seen changes within the next moments, in one picture; the rest after it."""
        self._sheet = sheet
        self._forget_gone()
        every = (*self._frames, *self._pieces)
        self._seen = dict.fromkeys(part for part in every if part.isVisible())
        self._hidden = dict.fromkeys(part for part in every if not part.isVisible())
        self._hold(self._seen)
        self._idle.start()

    def sheet(self) -> str:
        """For a window that opens for a while."""
        return self._sheet

    def is_settled(self) -> bool:
        """Whether all that is seen has the sheet."""
        return not self._seen

    def close(self) -> None:
        """Leaves the rest as it is."""
        self._idle.stop()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        kind = event.type()
        if kind == QEvent.Type.Show and watched in self._hidden:
            self._come_into_view(watched)
        elif kind == QEvent.Type.ChildAdded and watched in self._frames:
            # The child itself may be half made by now.
            self._grown.add(watched)
            self._idle.start()
        elif kind in (QEvent.Type.ChildPolished, GROWN) and watched in self._grown:
            self._catch_up(watched, at_once=True)
        return super().eventFilter(watched, event)

    def _take(self, made: Cut, *, at_once: bool) -> None:
        self._watch(made)
        for piece in made.pieces:
            if at_once or piece.isVisible():
                self._dress_raw(piece)
            else:
                self._hidden[piece] = None

    def _watch(self, made: Cut) -> None:
        self._frames.update(made.frames)
        self._pieces.update(dict.fromkeys(made.pieces))
        for part in (*made.frames, *made.pieces):
            part.installEventFilter(self)

    def _dress_raw(self, piece: QWidget) -> None:
        piece.setStyleSheet(self._sheet)
        self._raw[piece] = None

    def _catch_up(self, frame: QWidget, *, at_once: bool = False) -> None:
        """Dresses what came into a frame: at once when it is about to be shown."""
        self._grown.discard(frame)
        if isValid(frame):
            for child in parts(frame):
                if child not in self._frames and child not in self._pieces:
                    self._take(cut(child), at_once=at_once)

    def _dress(self, part: QWidget) -> None:
        if not isValid(part):
            return
        if part not in self._frames:
            part.setStyleSheet(self._sheet)
        elif part.testAttribute(Qt.WidgetAttribute.WA_WState_Polished):
            part.style().polish(part)  # by itself, in the palette's new colours

    def _come_into_view(self, part: QWidget) -> None:
        del self._hidden[part]
        self._seen[part] = None
        self._hold([part])

    def _hold(self, some: Iterable[QWidget]) -> None:
        """No picture of a window is drawn in which some parts have the old sheet."""
        for window in {part.window() for part in some} - self._held:
            window.setUpdatesEnabled(False)
            self._held.add(window)

    def _let_go(self) -> None:
        for window in self._held:
            if isValid(window):
                window.setUpdatesEnabled(True)
                # Qt drops a request to paint that meets a held window, and waits for it for ever.
                QCoreApplication.postEvent(window, QEvent(QEvent.Type.UpdateRequest))
        self._held.clear()
        self.settled.emit()

    def _go_on(self) -> None:
        until = perf_counter() + SLICE_S
        for frame in tuple(self._grown):
            self._catch_up(frame)
        waiting = self._seen or self._hidden
        while waiting and perf_counter() < until:
            part = next(iter(waiting))
            del waiting[part]
            self._dress(part)
        while self._raw and not waiting and perf_counter() < until:
            part = next(iter(self._raw))
            del self._raw[part]
            if isValid(part):
                part.ensurePolished()  # so that showing it for the first time is quick
        if not self._seen and self._held:
            self._let_go()
        if not (self._seen or self._hidden or self._raw):
            self._idle.stop()

    def _forget_gone(self) -> None:
        self._frames = {frame for frame in self._frames if isValid(frame)}
        self._pieces = {piece: None for piece in self._pieces if isValid(piece)}
