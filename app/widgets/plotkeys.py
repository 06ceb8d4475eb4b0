"""Keys for a plot: zoom, pan, walk through the readings, copy the one that is read out."""

from __future__ import annotations

from collections.abc import Callable

import pyqtgraph as pg
from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

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
