"""A picture of the night with a moment on it that can be moved."""

from __future__ import annotations

import math

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtGui import (
    QFont,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.theme.theme import Theme
from app.widgets.nightlayout import NightLayout
from app.widgets.nightpainter import NightPainter
from app.widgets.nightpicture import NightPicture

STEP_S, FINE_S, COARSE_S = 300.0, 60.0, 3600.0
SMALL_PX = 13


class NightChart(QWidget):
    """`picked` carries the moment a person picks by pressing, dragging or the arrow keys, Unix
    seconds; `told` a sentence on the moment pointed at or picked.

    Left and right move by five minutes, with Shift by one, Page up and down by an hour.
    """

    picked = Signal(float)
    told = Signal(str)

    def __init__(self, name: str, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._picture: NightPicture | None = None
        self._picked = math.nan
        self._pointed = math.nan
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAccessibleName(name)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        theme.changed.connect(self._restyle)

    def show_picture(self, picture: NightPicture | None) -> None:
        self._picture = picture
        self._fit()
        self._describe()
        self.update()

    def picture(self) -> NightPicture | None:
        return self._picture

    def show_moment(self, utc_s: float) -> None:
        """The moment picked elsewhere."""
        self._picked = utc_s
        self._describe()
        self.update()

    def moment(self) -> float:
        return self._picked

    def sizeHint(self) -> QSize:
        return QSize(520, max(self.minimumHeight(), 240))

    def _small(self) -> QFont:
        font = QFont(self.font())
        font.setPixelSize(round(SMALL_PX * self._theme.scale))
        return font

    def _laid(self, picture: NightPicture, height: float | None) -> NightLayout:
        return NightLayout(picture, QFontMetricsF(self._small()), float(self.width()), height)

    def _fit(self) -> None:
        least = 0 if self._picture is None else math.ceil(self._laid(self._picture, None).height)
        if least != self.minimumHeight():
            self.setMinimumHeight(least)

    def _restyle(self) -> None:
        self._fit()
        self.update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is Qt.MouseButton.LeftButton:
            self._pick(event.position().x())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._picture is None:
            return
        if event.buttons() & Qt.MouseButton.LeftButton:
            self._pick(event.position().x())
            return
        self._pointed = self._laid(self._picture, float(self.height())).utc_s(event.position().x())
        self.told.emit(self._picture.told_at(self._pointed))
        self.update()

    def leaveEvent(self, event: QEvent) -> None:
        self._pointed = math.nan
        self._describe()
        self.update()
        super().leaveEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        way = {
            Qt.Key.Key_Left: -STEP_S,
            Qt.Key.Key_Right: STEP_S,
            Qt.Key.Key_PageDown: COARSE_S,
            Qt.Key.Key_PageUp: -COARSE_S,
        }.get(Qt.Key(event.key()))
        if way is None or self._picture is None:
            super().keyPressEvent(event)
            return
        fine = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        step = math.copysign(FINE_S, way) if fine else way
        start = self._picked if math.isfinite(self._picked) else self._picture.begin_utc_s
        self._take(start + step)

    def _pick(self, x: float) -> None:
        if self._picture is not None:
            self._pointed = math.nan
            self._take(self._laid(self._picture, float(self.height())).utc_s(x))

    def _take(self, utc_s: float) -> None:
        if self._picture is None:
            return
        begin, end = self._picture.begin_utc_s, self._picture.end_utc_s
        self.show_moment(min(max(round(utc_s / FINE_S) * FINE_S, begin), end))
        self.picked.emit(self._picked)

    def _describe(self) -> None:
        if self._picture is None or not math.isfinite(self._picked):
            return
        sentence = self._picture.told_at(self._picked)
        self.setAccessibleDescription(sentence)
        self.told.emit(sentence)

    def paintEvent(self, _event: QPaintEvent) -> None:
        if self._picture is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self._small())
        layout = self._laid(self._picture, float(self.height()))
        drawing = NightPainter(painter, self._theme.look, self._picture, layout)
        drawing.draw(self._picked, self._pointed, self.hasFocus())
        painter.end()
