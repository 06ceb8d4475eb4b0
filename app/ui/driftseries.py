"""The shapes that tell legs apart, in plots and beside names."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray
from pyqtgraph.graphicsItems.ScatterPlotItem import Symbols
from PySide6.QtCore import QPointF, QRectF, QSize
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from app.ui.style import Theme
from core.alignment.driftlog.records import Leg
from core.language import marked, say

if TYPE_CHECKING:
    from core.alignment.axis.legrate import LegTrend


# Name for the person, code of pyqtgraph. The cross is kept for readings that are set aside.
SHAPES = (
    (marked("circle"), "o"),
    (marked("square"), "s"),
    (marked("triangle"), "t1"),
    (marked("diamond"), "d"),
    (marked("star"), "star"),
    (marked("pentagon"), "p"),
    (marked("inverted triangle"), "t"),
    (marked("plus"), "+"),
)
SET_ASIDE = "x"


def shape_name(index: int) -> str:
    return say(SHAPES[index % len(SHAPES)][0])


def shape_code(index: int) -> str:
    return SHAPES[index % len(SHAPES)][1]


def tint(theme: Theme, index: int) -> QColor:
    return QColor(theme.look.legs[index % len(theme.look.legs)])


class LegShape(QWidget):
    """One shape, as tall as a line of text."""

    def __init__(self, theme: Theme, index: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._index = index
        self.setAccessibleName(shape_name(index))
        self.setToolTip(shape_name(index))

    def sizeHint(self) -> QSize:
        side = round(20 * self._theme.scale)
        return QSize(side, side)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colour = tint(self._theme, self._index)
        painter.setPen(QPen(colour, 0))
        painter.setBrush(colour)
        side = 0.7 * min(self.width(), self.height())
        painter.translate(QPointF(QRectF(self.rect()).center()))
        painter.scale(side, side)
        painter.drawPath(Symbols[shape_code(self._index)])
        painter.end()


# What a drift plot shows of one leg, in minutes and seconds of arc from the leg's own start.

Floats = NDArray[np.float64]
NOTHING: Floats = np.empty(0)
LEAST_ROOM_ARCSEC = 2.0
MOST_GROUPS = 24  # of readings nobody has judged yet
FEWEST_IN_GROUP = 5


NO_PAUSES = np.empty(0, np.intp)


def _nothing() -> Floats:
    return NOTHING


def _no_pauses() -> NDArray[np.intp]:
    return NO_PAUSES


@dataclass(frozen=True, eq=False)
class DriftSeries:
    """Minutes since the leg began against north drift in seconds of arc, (n,) unless said.

    `mean_*` (k,): group means, before a fit medians. `line_*`, `low_*`, `high_*` (m,): fitted line
    and its 95 % band.
    `set_aside` (n,): readings the fit left out. `steps`: minute and size of each jump.
    `pauses`: indices of the readings after which none came for long.
    `index`: which shape the leg has. `judged`: the fit all of it comes from, None without one.
    """

    label: str
    index: int
    start_utc_s: float
    minutes: Floats
    arcsec: Floats
    set_aside: NDArray[np.bool_]
    mean_minutes: Floats = field(default_factory=_nothing)
    mean_arcsec: Floats = field(default_factory=_nothing)
    line_minutes: Floats = field(default_factory=_nothing)
    line_arcsec: Floats = field(default_factory=_nothing)
    low_arcsec: Floats = field(default_factory=_nothing)
    high_arcsec: Floats = field(default_factory=_nothing)
    steps: tuple[tuple[float, float], ...] = ()
    judged: object = None
    pauses: NDArray[np.intp] = field(default_factory=_no_pauses)

    def lowest_arcsec(self) -> float:
        """Of readings and band; of a band far wider than the readings only a part."""
        lowest = float(self.arcsec.min())
        return max(min(lowest, float(self.low_arcsec.min(initial=lowest))), lowest - self._room())

    def highest_arcsec(self) -> float:
        """Likewise upwards."""
        highest = float(self.arcsec.max())
        band = float(self.high_arcsec.max(initial=highest))
        return min(max(highest, band), highest + self._room())

    def _room(self) -> float:
        return max(float(np.ptp(self.arcsec)), LEAST_ROOM_ARCSEC)


def series(leg: Leg, trend: LegTrend | None, index: int) -> DriftSeries:
    """`trend` may be older than the leg: readings that came since are simply not yet judged."""
    if len(leg.utc_s) == 0:
        return DriftSeries(leg.label, index, 0.0, NOTHING, NOTHING, np.zeros(0, bool))
    start = float(leg.utc_s[0])
    minutes = (leg.utc_s - start) / 60.0
    if trend is None:
        zero = float(leg.north_arcsec[0])
        untouched = np.zeros(len(minutes), bool)
        arcsec = leg.north_arcsec - zero
        middles = (_middles(minutes), _middles(arcsec))
        return DriftSeries(
            *(leg.label, index, start, minutes, arcsec, untouched, *middles), pauses=leg.pauses
        )
    zero = float(trend.curve_arcsec[0])
    return DriftSeries(
        leg.label,
        index,
        start,
        minutes,
        leg.north_arcsec - zero,
        _padded(trend.rejected, len(minutes)),
        (trend.bin_utc_s - start) / 60.0,
        trend.bin_arcsec - zero,
        (trend.curve_utc_s - start) / 60.0,
        trend.curve_arcsec - zero,
        trend.curve_low_arcsec - zero,
        trend.curve_high_arcsec - zero,
        tuple(((step.utc_s - start) / 60.0, step.size_arcsec) for step in trend.steps),
        trend,
        leg.pauses,
    )


def _middles(values: Floats) -> Floats:
    """Medians of neighbours (k,), which a gust does not move; none of a few."""
    count = min(MOST_GROUPS, len(values) // FEWEST_IN_GROUP)
    return (
        np.array([np.median(group) for group in np.array_split(values, count)])
        if count
        else NOTHING
    )


def _padded(mask: NDArray[np.bool_], count: int) -> NDArray[np.bool_]:
    padded = np.zeros(count, bool)
    padded[: min(count, len(mask))] = mask[:count]
    return padded
