"""Reading a plot: the value nearest the pointer, walking through readings, keys to zoom."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from app.ui.driftseries import DriftSeries

# The reading nearest to the pointer.

AROUND = 200  # readings looked at on either side of the pointer's time
NEAR = 0.05  # of the picture's width and height together; farther off nothing is meant


@dataclass(frozen=True)
class PlotReading:
    """`index` within the leg; `time`: hours, minutes, seconds of UTC."""

    label: str
    index: int
    minutes: float
    arcsec: float
    time: str


def nearest(
    legs: Sequence[DriftSeries], minutes: float, arcsec: float, width: float, height: float
) -> PlotReading | None:
    """`width` in minutes and `height` in seconds of arc are those of the picture."""
    best, least = None, NEAR
    for leg in legs:
        middle = int(np.searchsorted(leg.minutes, minutes))
        part = slice(max(middle - AROUND, 0), middle + AROUND)
        far = np.hypot((leg.minutes[part] - minutes) / width, (leg.arcsec[part] - arcsec) / height)
        if len(far) and far.min() < least:
            least = float(far.min())
            best = reading_at(leg, part.start + int(far.argmin()))
    return best


def reading_at(leg: DriftSeries, at: int) -> PlotReading:
    """The reading of that index."""
    utc_s = leg.start_utc_s + 60.0 * float(leg.minutes[at])
    time = datetime.fromtimestamp(utc_s, UTC).strftime("%H:%M:%S")
    return PlotReading(leg.label, at, float(leg.minutes[at]), float(leg.arcsec[at]), time)


# One reading of a plot singled out: by walking from one to the next, or by the pointer.


class PlotWalk:
    """Stays on its leg and reading while more readings come; forgets a leg that is gone."""

    def __init__(self) -> None:
        self._label = ""
        self._at = -1

    def point_at(self, found: PlotReading) -> None:
        """Go on from a reading that was pointed at."""
        self._label, self._at = found.label, found.index

    def step(self, legs: Sequence[DriftSeries], readings: int) -> PlotReading | None:
        """The reading so many on, at most to the end of the leg; the newest one to begin with."""
        leg = self._leg(legs)
        if leg is None:
            return None
        last = len(leg.minutes) - 1
        begins = leg.label != self._label
        self._label = leg.label
        self._at = last if begins else min(max(self._at + readings, 0), last)
        return reading_at(leg, self._at)

    def next_leg(self, legs: Sequence[DriftSeries]) -> PlotReading | None:
        """The newest reading of the leg after the present one, round the legs."""
        filled = [leg for leg in legs if len(leg.minutes)]
        if not filled:
            return None
        labels = [leg.label for leg in filled]
        at = labels.index(self._label) + 1 if self._label in labels else 0
        leg = filled[at % len(filled)]
        self._label, self._at = leg.label, len(leg.minutes) - 1
        return reading_at(leg, self._at)

    def _leg(self, legs: Sequence[DriftSeries]) -> DriftSeries | None:
        filled = [leg for leg in legs if len(leg.minutes)]
        same = [leg for leg in filled if leg.label == self._label]
        if same:
            return same[0]
        return filled[-1] if filled else None


# Keys for a plot: zoom, pan, walk through the readings, copy the one that is read out.

PAN = 0.1  # of the picture, by one press of an arrow key
ZOOM = 0.8
LONG_STEP = 20  # readings

Key = Qt.Key
PANS = {
    Key.Key_Left: (-PAN, 0.0),
    Key.Key_Right: (PAN, 0.0),
    Key.Key_Up: (0.0, PAN),
    Key.Key_Down: (0.0, -PAN),
}
ZOOMS = {
    Key.Key_Plus: ZOOM,
    Key.Key_Equal: ZOOM,  # the same key without Shift on many keyboards
    Key.Key_Minus: 1.0 / ZOOM,
}
WALKS = {
    Key.Key_Period: 1,
    Key.Key_Comma: -1,
    Key.Key_PageDown: LONG_STEP,
    Key.Key_PageUp: -LONG_STEP,
}


class PlotKeys(QObject):
    """`moved`: the picture was zoomed or panned. `walked` carries readings to go on by, signed.

    `next_leg` and `copy` are asked for by L and Ctrl+C.
    """

    moved = Signal()
    walked = Signal(int)
    next_leg = Signal()
    copy = Signal()

    def __init__(self, view: QWidget, box: pg.ViewBox) -> None:
        super().__init__(view)
        self._box = box
        view.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        view.installEventFilter(self)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Takes the keys it knows and leaves the others."""
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            action = self._action(event)
            if action is not None:
                action()
                return True
        return super().eventFilter(watched, event)

    def _action(self, event: QKeyEvent) -> Callable[[], object] | None:
        key = Qt.Key(event.key())
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            return self.copy.emit if key == Key.Key_C else None
        if key in PANS:
            return lambda: self._pan(*PANS[key])
        if key in ZOOMS:
            return lambda: self._zoom(ZOOMS[key])
        if key in WALKS:
            return lambda: self.walked.emit(WALKS[key])
        return self.next_leg.emit if key == Key.Key_L else None

    def _pan(self, right: float, up: float) -> None:
        (x0, x1), (y0, y1) = self._box.viewRange()
        self._box.translateBy(x=right * (x1 - x0), y=up * (y1 - y0))
        self.moved.emit()

    def _zoom(self, factor: float) -> None:
        self._box.scaleBy((factor, factor))
        self.moved.emit()
