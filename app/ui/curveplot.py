"""Curves over an axis with a name and a unit: thinned for drawing, read with the pointer."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from enum import Enum
from typing import Any

import numpy as np
import pyqtgraph as pg
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QFocusEvent, QFont, QKeyEvent
from PySide6.QtWidgets import QApplication, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from app.ui.form import Key
from app.ui.style import Theme
from app.ui.text import Text
from core.language import say

# Thinning a long line to what a screen can show.

Floats = NDArray[np.float64]


def decimate(
    x: Floats, y: Floats, left: float, right: float, columns: int
) -> tuple[Floats, Floats]:
    """The part of a line between `left` and `right` with every peak: a lowest and a highest point
    per column.

    `x` (n,) increasing, `y` (n,) alike. A neighbour on either side is kept, so that the line leaves
    the picture where it should. A line with few points comes back as it is.
    """
    first = max(int(np.searchsorted(x, left)) - 1, 0)
    last = min(int(np.searchsorted(x, right, side="right")) + 1, len(x))
    x, y = x[first:last], y[first:last]
    if len(x) <= 4 * columns or right <= left:
        return x, y
    edges = np.linspace(left, right, columns + 1)[1:-1]
    starts = np.unique(np.concatenate(([0], np.searchsorted(x, edges))))
    starts = starts[starts < len(x)]
    thin_y = np.empty(2 * len(starts))
    thin_y[0::2] = np.minimum.reduceat(y, starts)
    thin_y[1::2] = np.maximum.reduceat(y, starts)
    return np.repeat(x[starts], 2), thin_y


def thinned(x: Floats, y: Floats, least: float) -> tuple[Floats, Floats]:
    """A line (n,) with one point for each `least` of its length; both ends stay."""
    if len(x) < 3:
        return x, y
    along = np.cumsum(np.hypot(np.diff(x), np.diff(y)))
    kept = np.diff(np.floor(along / least), prepend=-1.0) > 0.0
    kept = np.concatenate([[True], kept])
    kept[-1] = True
    return x[kept], y[kept]


# What a plot of curves shows, and how its values read as text.

NEAR = 0.01  # of the width: curves of one name this close are read off together
COLUMNS = 900  # points across a picture; more are not told apart


class Ink(Enum):
    """How a curve is drawn; each is told from the others without its colour."""

    FULL = "━━"
    DASHED = "╍╍"
    DOTTED = "┉┉"
    THIN = "──"
    DOTS = "•"


@dataclass(frozen=True, eq=False)
class Curve:
    """Arrays (n,), NaN where nothing is known. `low`, `high`: its 95 % band."""

    name: str
    x: Floats
    y: Floats
    ink: Ink = Ink.FULL
    low: Floats | None = None
    high: Floats | None = None

    def thinned(self) -> Curve:
        """With no more points than can be seen, every peak kept."""
        if self.ink is Ink.DOTS or self.low is not None or self.x.size <= 4 * COLUMNS:
            return self
        known = np.isfinite(self.x) & np.isfinite(self.y)
        x, y = self.x[known], self.y[known]
        if x.size < 2 or np.any(np.diff(x) < 0.0):
            return self
        return Curve(self.name, *decimate(x, y, float(x[0]), float(x[-1]), COLUMNS), self.ink)


def _plainly(value: float) -> str:
    return f"{value:.4g}"


@dataclass(frozen=True, eq=False)
class CurvePicture:
    """`x_name`, `y_name`: of the axes, unit included. `x_words`, `y_words`: a value with its unit.

    `x_ticks`: places and words, where the axis is not to choose them itself. `x_values`: turns a
    place along the axis into the value that is copied. `levels`: level lines with their names.
    """

    title: str
    x_name: str
    y_name: str
    curves: tuple[Curve, ...]
    x_words: Callable[[float], str] = _plainly
    y_words: Callable[[float], str] = _plainly
    x_ticks: Sequence[tuple[float, str]] = ()
    x_values: Callable[[Floats], Floats] = field(default=lambda x: x)
    levels: tuple[tuple[float, str], ...] = ()
    y_range: tuple[float, float] | None = None
    is_square: bool = False

    def x_span(self) -> tuple[float, float]:
        return _span([curve.x for curve in self.curves])

    def y_span(self) -> tuple[float, float]:
        if self.y_range is not None:
            return self.y_range
        values = [curve.y for curve in self.curves]
        values += [band for one in self.curves for band in (one.low, one.high) if band is not None]
        values += [np.array([level]) for level, _ in self.levels]
        low, high = _span(values)
        room = 0.06 * (high - low)
        return low - room, high + room

    def words_at(self, x: float) -> str:
        """What every curve says nearest to a place along the axis; curves of one name together."""
        low, high = self.x_span()
        found: dict[str, list[tuple[float, float]]] = {}
        for curve in self.curves:
            known = np.flatnonzero(np.isfinite(curve.y) & np.isfinite(curve.x))
            if known.size:
                at = known[int(np.argmin(np.abs(curve.x[known] - x)))]
                off = abs(float(curve.x[at]) - x)
                found.setdefault(curve.name, []).append((off, float(curve.y[at])))
        said = []
        for name, values in found.items():
            reach = min(off for off, _ in values) + NEAR * (high - low)
            near = sorted(value for off, value in values if off <= reach)
            words = self.y_words(near[0])
            if len(near) > 1:
                words = say("{low} to {high}", low=words, high=self.y_words(near[-1]))
            said.append(f"{name} {words}")
        return f"{self.x_words(x)}: {', '.join(said)}" if said else ""

    def table(self) -> str:
        """All points as lines of tab-separated text."""
        rows = [f"curve\t{self.x_name}\t{self.y_name}\tlow\thigh"]
        for curve in self.curves:
            empty = np.full(curve.x.size, np.nan)
            low = empty if curve.low is None else curve.low
            high = empty if curve.high is None else curve.high
            columns = (self.x_values(curve.x), curve.y, low, high)
            for row in zip(*columns, strict=True):
                cells = ["" if np.isnan(value) else f"{value:.6g}" for value in row]
                rows.append("\t".join([curve.name, *cells]))
        return "\n".join(rows)


def _span(arrays: Sequence[Floats]) -> tuple[float, float]:
    known = [values[np.isfinite(values)] for values in arrays]
    known = [values for values in known if values.size]
    if not known:
        return 0.0, 1.0
    low = min(float(values.min()) for values in known)
    high = max(float(values.max()) for values in known)
    return (low, high) if high > low else (low - 0.5, high + 0.5)


def joined(curves: Sequence[Curve]) -> list[Curve]:
    """Lines of one name and ink as one with gaps, which is drawn several times as fast."""
    found: dict[object, list[Curve]] = {}
    for curve in curves:
        is_plain = curve.low is None and curve.ink is not Ink.DOTS
        found.setdefault((curve.name, curve.ink) if is_plain else curve, []).append(curve)
    gap = np.array([np.nan])
    return [
        one[0]
        if len(one) == 1
        else replace(
            one[0],
            x=np.concatenate([part for curve in one for part in (curve.x, gap)]),
            y=np.concatenate([part for curve in one for part in (curve.y, gap)]),
        )
        for one in found.values()
    ]


# An axis whose whole name can be read, however large the text and small the plot.

SIDES = ("bottom", "left")
_LEAST_SCALE = 0.5


class NamedAxis(pg.AxisItem):
    """The name stands in the middle, made smaller where the axis is too short for it."""

    def setLabel(self, *args: Any, **kwargs: Any) -> None:
        super().setLabel(*args, **kwargs)
        self.resizeEvent()

    def resizeEvent(self, event: Any = None) -> None:
        super().resizeEvent(event)
        if self.label is None:  # while it is closed
            return
        natural_px = self.label.boundingRect().width()
        is_upright = self.orientation == "left"
        room_px = self.size().height() if is_upright else self.size().width()
        scale = min(1.0, max(room_px / max(natural_px, 1.0), _LEAST_SCALE))
        self.label.setScale(scale)
        half_px = 0.5 * scale * natural_px
        if is_upright:
            self.label.setY(0.5 * room_px + half_px)
        else:
            self.label.setX(0.5 * room_px - half_px)


def named_axes() -> dict[str, NamedAxis]:
    """For a plot with axes at the bottom and at the left."""
    return {side: NamedAxis(side) for side in SIDES}


# A plot of a few curves, read off with the pointer or the arrow keys.

HEIGHT_PX = 300
STEPS = 100  # of the arrow keys, from one side to the other
STYLES = {
    Ink.FULL: Qt.PenStyle.SolidLine,
    Ink.DASHED: Qt.PenStyle.DashLine,
    Ink.DOTTED: Qt.PenStyle.DotLine,
    Ink.THIN: Qt.PenStyle.SolidLine,
}


class CurvePlot(QWidget):
    """Shows one `Picture` at a time. Left and right move along it, Home and End to its ends."""

    def __init__(
        self, theme: Theme, height_px: int = HEIGHT_PX, parent: QWidget | None = None
    ) -> None:
        """`height_px`: of the picture at the usual text size."""
        super().__init__(parent)
        self._height_px = height_px
        self._theme = theme
        self._picture: CurvePicture | None = None
        self._at = 0.0
        self._view = pg.PlotWidget(axisItems=named_axes())
        self._plot = self._view.getPlotItem()
        self._cursor = pg.InfiniteLine(angle=90)
        self._title = Text("", "title")
        self._legend = Text("", "small")
        self._readout = Text(self.tr("Point at the plot, or use the arrow keys."), "small")
        self._copy = Key(self.tr("Copy values"))
        self._set_up()
        self._arrange()
        self._restyle()
        theme.changed.connect(self._restyle)

    def _set_up(self) -> None:
        self._plot.setMenuEnabled(False)
        self._plot.hideButtons()
        self._plot.layout.setContentsMargins(4, 4, 10, 10)  # names of axes reach over their edge
        self._plot.setMouseEnabled(x=False, y=False)
        for part in (self._view, self._view.viewport()):
            part.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._view.scene().sigMouseMoved.connect(self._pointed)
        for side in ("bottom", "left"):
            self._plot.getAxis(side).enableAutoSIPrefix(False)
        self._plot.showGrid(x=True, y=True, alpha=0.2)
        self._plot.getViewBox().sigResized.connect(self._place_names)
        self._copy.clicked.connect(self.copy)
        self._copy.setToolTip(self.tr("Put what is drawn on the clipboard as a table"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._readout.setMinimumHeight(1)

    def _arrange(self) -> None:
        head = QHBoxLayout()
        head.addWidget(self._title, 1)
        head.addWidget(self._copy)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addLayout(head)
        column.addWidget(self._legend)
        column.addWidget(self._view)
        column.addWidget(self._readout)
        self._view.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)

    def show_picture(self, picture: CurvePicture) -> None:
        thin = tuple(curve.thinned() for curve in picture.curves)
        self._picture = replace(picture, curves=thin)
        self._title.say(picture.title)
        self._view.setAccessibleName(picture.title)
        self.setAccessibleName(picture.title)
        named = [f"{one.ink.value} {one.name}" for one in _named(thin)]
        self._legend.say("    ".join(named) if len(named) > 1 else "")
        self._draw()

    def picture(self) -> CurvePicture | None:
        """What is drawn, thinned."""
        return self._picture

    def readout(self) -> str:
        return self._readout.text()

    def legend(self) -> str:
        return self._legend.text()

    def copy_key(self) -> Key:
        return self._copy

    def copy(self) -> None:
        if self._picture is not None:
            QApplication.clipboard().setText(self._picture.table())

    def read_at(self, x: float) -> None:
        """Reads the curves off there."""
        if self._picture is None:
            return
        low, high = self._picture.x_span()
        self._at = min(max(x, low), high)
        words = self._picture.words_at(self._at)
        self._readout.setText(words)
        self.setAccessibleDescription(words)
        self._cursor.setPos(self._at)
        self._cursor.show()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self._picture is None:
            super().keyPressEvent(event)
            return
        low, high = self._picture.x_span()
        step = (high - low) / STEPS
        places = {
            Qt.Key.Key_Left: self._at - step,
            Qt.Key.Key_Right: self._at + step,
            Qt.Key.Key_Home: low,
            Qt.Key.Key_End: high,
        }
        wanted = places.get(Qt.Key(event.key()))
        if wanted is None:
            super().keyPressEvent(event)
        else:
            self.read_at(wanted)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason):
            self.read_at(self._at)
        self._show_focus(True)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self._show_focus(False)

    def _show_focus(self, here: bool) -> None:
        ring = self._theme.look.accent if here else self._theme.look.well
        self._view.setStyleSheet(f"border: 3px solid {ring};")

    def _draw(self) -> None:
        picture = self._picture
        if picture is None:
            return
        self._plot.clear()
        for curve in joined(picture.curves):
            self._draw_curve(curve)
        look = self._theme.look
        font = self._font()
        for level, name in picture.levels:
            pen = pg.mkPen(QColor(look.quiet), width=1, style=Qt.PenStyle.DotLine)
            self._plot.addItem(pg.InfiniteLine(pos=level, angle=0, pen=pen))
            label = pg.TextItem(name, color=QColor(look.quiet), anchor=(1.0, 1.0))
            label.setFont(font)
            label.setPos(picture.x_span()[1], level)
            self._plot.addItem(label)
        self._cursor.hide()
        self._plot.addItem(self._cursor)
        self._set_axes(picture)

    def _draw_curve(self, curve: Curve) -> None:
        colour = self._colour(curve.ink)
        if curve.low is not None and curve.high is not None:
            clear = pg.mkPen(None)
            ends = [pg.PlotCurveItem(curve.x, y, pen=clear) for y in (curve.low, curve.high)]
            faint = QColor(colour)
            faint.setAlpha(60)
            for end in ends:
                self._plot.addItem(end)
            self._plot.addItem(pg.FillBetweenItem(*ends, brush=faint))
        if curve.ink is Ink.DOTS:
            size = 4 if curve.x.size > 400 else 8
            self._plot.plot(
                *(curve.x, curve.y),
                pen=None,
                symbol="o",
                symbolSize=size,
                symbolBrush=colour,
                symbolPen=None,
            )
            return
        width = 1 if curve.ink is Ink.THIN or curve.x.size > 2000 else 2
        pen = pg.mkPen(colour, width=width, style=STYLES[curve.ink])
        self._plot.plot(curve.x, curve.y, pen=pen, connect="finite")

    def _set_axes(self, picture: CurvePicture) -> None:
        bottom = self._plot.getAxis("bottom")
        bottom.setTicks([list(picture.x_ticks)] if picture.x_ticks else None)
        look, font = self._theme.look, self._font()
        for side, name in (("bottom", picture.x_name), ("left", picture.y_name)):
            self._plot.getAxis(side).setLabel(
                name, color=look.text, **{"font-size": f"{font.pixelSize()}px"}
            )
        box = self._plot.getViewBox()
        box.setAspectLocked(picture.is_square)
        x_range, y_range = picture.x_span(), picture.y_span()
        box.setRange(xRange=x_range, yRange=y_range, padding=0.01, disableAutoRange=True)

    def _place_names(self) -> None:
        """The names of the axes go to the middle of their axes."""
        for side in ("bottom", "left"):
            self._plot.getAxis(side).resizeEvent()

    def _restyle(self) -> None:
        look, font = self._theme.look, self._font()
        self._view.setBackground(QColor(look.well))
        self._cursor.setPen(pg.mkPen(QColor(look.text), width=1))
        for side in ("bottom", "left"):
            axis = self._plot.getAxis(side)
            axis.setPen(QColor(look.edge))
            axis.setTextPen(QColor(look.text))
            axis.setStyle(tickFont=font, maxTickLevel=0)
        self._plot.getAxis("bottom").setHeight(round(2.7 * font.pixelSize() + 10))
        self._plot.getAxis("left").setWidth(round(4.4 * font.pixelSize()))  # alike in all plots
        self._view.setFixedHeight(round(self._height_px * (0.75 + 0.25 * self._theme.scale)))
        self._show_focus(self.hasFocus())
        self._draw()

    def _colour(self, ink: Ink) -> QColor:
        look = self._theme.look
        named = {Ink.FULL: look.accent, Ink.DASHED: look.text, Ink.DOTTED: look.legs[1]}
        return QColor(named.get(ink, look.edge if ink is Ink.THIN else look.quiet))

    def _font(self) -> QFont:
        font = self.font()
        font.setPixelSize(round(13 * self._theme.scale))
        return font

    def _pointed(self, where: QPointF) -> None:
        if self._picture is not None and self._plot.sceneBoundingRect().contains(where):
            self.read_at(self._plot.getViewBox().mapSceneToView(where).x())


def _named(curves: tuple[Curve, ...]) -> list[Curve]:
    """One of each name, in order."""
    return list({curve.name: curve for curve in curves}.values())
