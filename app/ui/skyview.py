"""How a disc shows the sky above: its projection, lines of equal value, tints."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray
from pyqtgraph.functions import isocurve
from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QImage, QKeyEvent, QPainter, QPen, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.ui.style import Colour, Look, Theme

# The sky above as a disc: the zenith in the middle, north at the top, east on the right.
#
# So it lies over a map of the ground. To somebody who lies on the back and looks up it is mirrored;
# every drawing of the whole sky here is the same way round, and says so.

Floats = NDArray[np.float64]

FROM_ZENITH_DEG = 90.0


@dataclass(frozen=True)
class SkyView:
    """Distances from the zenith are drawn true; `rim_deg` of it lie at the rim."""

    rim_deg: float = FROM_ZENITH_DEG

    def place(self, azimuth_deg: ArrayLike, altitude_deg: ArrayLike) -> tuple[Floats, Floats]:
        """Right and down from the zenith, in parts of the radius."""
        reach = (90.0 - np.asarray(altitude_deg, dtype=np.float64)) / self.rim_deg
        azimuth = np.radians(np.asarray(azimuth_deg, dtype=np.float64))
        return reach * np.sin(azimuth), -reach * np.cos(azimuth)

    def direction(self, right: ArrayLike, down: ArrayLike) -> tuple[Floats, Floats]:
        """Azimuth in [0, 360) and altitude of a place, degrees; below the rim goes on."""
        across, along = np.asarray(right, dtype=np.float64), np.asarray(down, dtype=np.float64)
        azimuth = np.mod(np.degrees(np.arctan2(across, -along)), 360.0)
        return azimuth, 90.0 - self.rim_deg * np.hypot(across, along)

    def grid(self, count: int) -> tuple[Floats, Floats]:
        """Azimuth and altitude (count, count) of the pixels of a square round the disc."""
        middles = (np.arange(count) + 0.5) / count * 2.0 - 1.0
        return self.direction(middles[np.newaxis, :], middles[:, np.newaxis])


# Lines of equal value over the sky.

Values = Callable[[Floats, Floats], Floats]  # of azimuth and altitude, degrees, that broadcast

_AROUND = 181  # places round the horizon, and down from the zenith
_DOWN = 91
_SEAM_DEG = 90.001  # where the grid begins and ends: few lines run across due east
_INNERMOST = 0.11
_HALF = 0.499999  # of a cell: from a place on its edge to the corners before and behind it
_HALVINGS = 14  # to a ten-thousandth of a degree
_ACROSS = 280  # pixels of the tones, either way


@dataclass(frozen=True, eq=False)
class Contour:
    """A line of one value; `azimuth_deg`, `altitude_deg` (k,) along it. `words` name the value."""

    words: str
    is_negative: bool
    azimuth_deg: Floats
    altitude_deg: Floats


def contours(
    values: Values,
    levels: Sequence[float],
    words: Callable[[float], str],
    rim_deg: float = FROM_ZENITH_DEG,
) -> tuple[Contour, ...]:
    """Lines at each level, down to `rim_deg` from the zenith; denser in altitude near it."""
    azimuth = np.linspace(_SEAM_DEG, _SEAM_DEG + 360.0, _AROUND)
    # Not from the zenith itself, where lines run together.
    from_zenith = rim_deg * np.linspace(_INNERMOST, 1.0, _DOWN) ** 1.5
    grid = np.asarray(values(azimuth[np.newaxis], 90.0 - from_zenith[:, np.newaxis]))
    grid = np.broadcast_to(grid, (_DOWN, _AROUND))
    found = []
    for level in levels:
        for piece in isocurve(grid, level, connected=True, extendToEdge=False):
            # The curve is given in the middles of cells, half a cell off.
            edge = np.array([(point[0], point[1]) for point in piece]).T - 0.5
            turned, down = _crossing(values, level, edge, azimuth, from_zenith)
            found.append(Contour(words(level), level < 0.0, turned, 90.0 - down))
    return tuple(found)


def _crossing(
    values: Values, level: float, edge: Floats, azimuth: Floats, from_zenith: Floats
) -> tuple[Floats, Floats]:
    """Azimuth and zenith distance (k,) where the values pass the level, halved to from a guess.

    `edge` (2, k): places in the grid, down and around, each between two of its corners. What bends
    sharply from one corner to the next, or jumps, is met all the same.
    """
    (before, left), (after, right) = (np.rint(edge + side).astype(int) for side in (-_HALF, _HALF))
    low = np.array([azimuth[left], from_zenith[before]])
    high = np.array([azimuth[right], from_zenith[after]])
    is_above = np.asarray(values(low[0], 90.0 - low[1])) > level
    for _ in range(_HALVINGS):
        middle = 0.5 * (low + high)
        is_low = (np.asarray(values(middle[0], 90.0 - middle[1])) > level) == is_above
        low, high = np.where(is_low, middle, low), np.where(is_low, high, middle)
    turned, down = 0.5 * (low + high)
    return turned, down


def bands(values: Values, levels: Sequence[float], rim_deg: float = FROM_ZENITH_DEG) -> Floats:
    """Which band between levels each pixel of the sky lies in, (n, n), as 0 to 1; NaN outside.

    The sign of a value does not count.
    """
    azimuth, altitude = SkyView(rim_deg).grid(_ACROSS)
    sizes = np.abs(np.asarray(values(azimuth, altitude)))
    edges = np.sort(np.unique(np.abs(np.asarray(levels, dtype=np.float64))))
    band = np.searchsorted(edges, sizes) / max(len(edges), 1)
    return np.where(altitude >= 90.0 - rim_deg, band, np.nan)


# A figure over the whole sky as a picture in the colours of a look.

STEPS = 6  # shades up to twice the limit; steps can be told apart, a smooth ramp cannot
HATCH_PX = 9
TONES = 256
LINE, CLEAR = STEPS, STEPS + 1


def picture(values: Floats, limit: float, look: Look) -> QImage:
    """Rows of `values` (n, n) run from south to north; the picture has north on top.

    The darker half of the shades is within `limit`. Beyond it the sky is hatched, and a line goes
    along the limit, so that the shades need not be told apart. NaN stays clear.
    """
    rows = np.flipud(values)
    known = np.isfinite(rows)
    with np.errstate(invalid="ignore"):  # comparing NaN
        beyond = known & (rows > limit)
        steps = np.where(known, np.minimum(rows * (STEPS / 2.0 / limit), STEPS - 1), CLEAR)
    shades = steps.astype(np.uint8)
    shades[_hatched(beyond) | _border(beyond, known)] = LINE
    return _image(_table(look)[shades])


def tinted(shares: Floats, look: Look) -> QImage:
    """Shares 0 to 1 as tones from the well to what is chosen; NaN is the well. Rows run down."""
    low, high = _rgb(look.well), _rgb(look.chosen)
    parts = np.linspace(0.0, 1.0, TONES)[:, np.newaxis]
    table = np.full((TONES, 4), 255, dtype=np.uint8)
    table[:, :3] = np.round(low + parts * (high - low))
    tones = np.clip(np.nan_to_num(shares) * (TONES - 1), 0, TONES - 1).astype(np.uint8)
    return _image(table[tones])


def _table(look: Look) -> NDArray[np.uint8]:
    """Colours (STEPS + 2, 4): the shades, the lines, and nothing."""
    low, high, bright = _rgb(look.well), _rgb(look.chosen), _rgb(look.edge)
    table = np.zeros((STEPS + 2, 4), np.uint8)
    for step, part in enumerate(np.linspace(0.0, 1.0, STEPS)):
        to_high = low + (high - low) * min(2.0 * part, 1.0)
        colour = to_high + (bright - high) * max(1.2 * part - 0.6, 0.0)
        table[step] = [*np.round(colour), 255]
    table[LINE] = [*_rgb(look.text), 255]
    return table


def _rgb(colour: Colour) -> Floats:
    named = QColor(colour)
    return np.array([named.red(), named.green(), named.blue()], dtype=np.float64)


def _hatched(beyond: NDArray[np.bool]) -> NDArray[np.bool]:
    row, column = np.indices(beyond.shape)
    return np.asarray(beyond & ((row + column) % HATCH_PX == 0))


def _border(beyond: NDArray[np.bool], known: NDArray[np.bool]) -> NDArray[np.bool]:
    """Three pixels wide, inside the disc alone."""
    edge = np.zeros_like(beyond)
    for axis in (0, 1):
        for way in (-1, 1):
            other, there = np.roll(beyond, way, axis), np.roll(known, way, axis)
            edge |= known & there & (other != beyond)
    return edge


def _image(pixels: NDArray[np.uint8]) -> QImage:
    height, width, _ = pixels.shape
    image = QImage(pixels.data, width, height, 4 * width, QImage.Format.Format_RGBA8888)
    return image.copy()  # the array's memory goes away


# A drawing in a circle: its size, its middle and radius, the arrow keys, the ring of the focus.

WINDOW_SHARE = 0.55  # more of the window's height would only push the rest away
FOCUS_PX = 3

_ARROWS = {
    Qt.Key.Key_Left: QPointF(-1, 0),
    Qt.Key.Key_Right: QPointF(1, 0),
    Qt.Key.Key_Up: QPointF(0, -1),
    Qt.Key.Key_Down: QPointF(0, 1),
}


class RoundDrawing(QWidget):
    """`least_px`: (side, and how much of it grows with the text) of the smallest drawing.

    Room for letters is left round the rim. The drawing lies at the top where there is more height
    than a disc can use.
    """

    def __init__(
        self,
        theme: Theme,
        name: str,
        least_px: tuple[int, int],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._least_px = least_px
        self.setAccessibleName(name)
        self.setMouseTracking(True)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        theme.changed.connect(self._restyle)

    def sizeHint(self) -> QSize:
        side = round(280 + 160 * self._theme.scale)
        return QSize(side, side)

    def minimumSizeHint(self) -> QSize:
        fixed, growing = self._least_px
        side = round(fixed + growing * self._theme.scale)
        return QSize(side, side)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self.isWindow():
            return
        room = round(WINDOW_SHARE * self.window().height())
        self.setMaximumHeight(max(min(self.width(), room), self.minimumSizeHint().height()))

    def middle(self) -> QPointF:
        return QPointF(self.width() / 2.0, min(self.height(), self.width()) / 2.0)

    def radius(self) -> float:
        aside = QFontMetricsF(self.font()).height() + 8.0
        return max(min(self.width(), self.height()) / 2.0 - aside, 20.0)

    def share_of(self, point: QPointF) -> QPointF:
        """A point of the widget, from the middle, in parts of the radius."""
        return (point - self.middle()) / self.radius()

    def arrow_of(self, event: QKeyEvent) -> QPointF | None:
        """The way an arrow key points, of length one; None for any other key."""
        return _ARROWS.get(Qt.Key(event.key()))

    def draw_focus(self, painter: QPainter) -> None:
        """Round the rim, while the keys act here."""
        if self.hasFocus():
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.setPen(QPen(QColor(self._theme.look.accent), FOCUS_PX))
            painter.drawEllipse(self.middle(), self.radius(), self.radius())

    def _restyle(self) -> None:
        self.updateGeometry()
        self.update()
