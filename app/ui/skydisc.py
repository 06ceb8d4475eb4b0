"""The sky above as a disc with stars and ways marked, to look at and to point into."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from enum import Enum

import numpy as np
from PySide6.QtCore import QEvent, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
    QPixmap,
    QPolygonF,
)
from PySide6.QtWidgets import QWidget

from app.ui.curveplot import thinned
from app.ui.skyview import FROM_ZENITH_DEG, Contour, Floats, RoundDrawing, SkyView, tinted
from app.ui.style import Colour, Look, Theme
from core.sky.horizon import Booleans, Horizon

# What a picture of the sky above shows.


class Sign(Enum):
    """How a place is marked."""

    STAR = "star"
    DIAMOND = "diamond"
    RING = "ring"
    DOT = "dot"


@dataclass(frozen=True)
class SkyMark:
    azimuth_deg: float
    altitude_deg: float
    words: str = ""
    sign: Sign = Sign.DOT
    is_loud: bool = False


@dataclass(frozen=True, eq=False)
class SkyPath:
    """A way over the sky, (n,) degrees, in order of time; an arrow tells which way."""

    azimuth_deg: Floats
    altitude_deg: Floats


@dataclass(frozen=True, eq=False)
class SkyZone:
    """An area that a mount cannot reach: its outline (n,), degrees."""

    azimuth_deg: Floats
    altitude_deg: Floats
    words: str


@dataclass(frozen=True, eq=False)
class DomePicture:
    """`bands` (n, n) as `app.ui.skyview` makes them, or None. `rings_deg`: altitudes."""

    rim_deg: float = FROM_ZENITH_DEG
    rings_deg: tuple[float, ...] = (0.0, 30.0, 60.0)
    contours: tuple[Contour, ...] = ()
    bands: Floats | None = None
    horizon: Horizon = field(default_factory=Horizon.flat)
    path: SkyPath | None = None
    marks: tuple[SkyMark, ...] = ()
    zone: SkyZone | None = None


# Words in a drawing, each where nothing stands yet.

BACK_OPACITY = 205  # of 255: what lies under the words stays to be guessed
MARGIN_PX = 2.0


class WordRoom:
    """For one drawing on `painter`; nothing is written across the edge of what it paints on."""

    def __init__(self, painter: QPainter) -> None:
        self._painter = painter
        self._bounds = QRectF(painter.window())
        self._taken: list[QRectF] = []
        self.metrics = QFontMetricsF(painter.font())

    def take(self, area: QRectF) -> None:
        """Keeps words out of here."""
        self._taken.append(area)

    def write(
        self,
        centre: QPointF,
        words: str,
        colour: Colour,
        back: Colour | None = None,
        must: bool = False,
    ) -> bool:
        """True where the words found room, or `must` stand there; `back`: a ground below them."""
        width = self.metrics.horizontalAdvance(words) + 2.0 * MARGIN_PX
        height = self.metrics.height()
        frame = QRectF(centre.x() - width / 2.0, centre.y() - height / 2.0, width, height)
        if not must and not self._is_free(frame):
            return False
        self._taken.append(frame)
        if back is not None:
            ground = QColor(back)
            ground.setAlpha(BACK_OPACITY)
            self._painter.fillRect(frame.adjusted(0, 1, 0, -1), ground)
        self._painter.setPen(QColor(colour))
        self._painter.drawText(frame, Qt.AlignmentFlag.AlignCenter, words)
        return True

    def beside(
        self,
        place: QPointF,
        gap: QPointF,
        words: str,
        colour: Colour,
        back: Colour | None = None,
    ) -> bool:
        """To the right, the left, above, below or at a corner, `gap` away; else nowhere."""
        if not words:
            return False
        aside = self.metrics.horizontalAdvance(words) / 2.0 + gap.x()
        upright = self.metrics.height() / 2.0 + gap.y()
        return any(
            self.write(place + way, words, colour, back) for way in _ways_beside(aside, upright)
        )

    def _is_free(self, frame: QRectF) -> bool:
        if not self._bounds.contains(frame):
            return False
        return not any(frame.intersects(other) for other in self._taken)


def _ways_beside(aside: float, upright: float) -> Iterable[QPointF]:
    yield from (QPointF(aside, 0.0), QPointF(-aside, 0.0))
    yield from (QPointF(0.0, -upright), QPointF(0.0, upright))
    yield from (QPointF(aside, -upright), QPointF(-aside, upright))


# Draws what is marked in the sky above: stars, moments of a way, the moment picked.

GAP = QPointF(12.0, 8.0)


class DomeMarks:
    """`at`: where a place in the sky is drawn, by azimuth and altitude in degrees."""

    def __init__(
        self,
        painter: QPainter,
        look: Look,
        words: WordRoom,
        at: Callable[[float, float], QPointF],
    ) -> None:
        self._painter = painter
        self._look = look
        self._words = words
        self._at = at

    def draw(self, picture: DomePicture) -> None:
        """The loud ones first: their words find room before others."""
        for mark in sorted(picture.marks, key=lambda mark: not mark.is_loud):
            if 90.0 - mark.altitude_deg <= picture.rim_deg:
                place = self._at(mark.azimuth_deg, mark.altitude_deg)
                self._sign(mark, place)
                self._beside(mark, place)

    def _sign(self, mark: SkyMark, place: QPointF) -> None:
        colour = QColor(self._look.accent if mark.is_loud else self._look.text)
        self._painter.setPen(QPen(colour, 2))
        self._painter.setBrush(colour)
        if mark.sign is Sign.DOT:
            self._painter.drawEllipse(place, 2.5, 2.5)
        elif mark.sign is Sign.RING:
            self._painter.setBrush(QColor(self._look.well))
            self._painter.drawEllipse(place, 5.5, 5.5)
        else:
            self._painter.setPen(QPen(QColor(self._look.well), 1.5))
            self._painter.drawPolygon(_shape(mark.sign, place, 8.0))

    def _beside(self, mark: SkyMark, place: QPointF) -> None:
        colour = self._look.accent if mark.is_loud else self._look.text
        self._words.beside(place, GAP, mark.words, colour, self._look.well)


def _shape(sign: Sign, place: QPointF, size: float) -> QPolygonF:
    corners = 10 if sign is Sign.STAR else 4
    corner = []
    for number in range(corners):
        reach = size * (0.42 if sign is Sign.STAR and number % 2 else 1.0)
        angle = 2.0 * math.pi * number / corners
        corner.append(place + QPointF(math.sin(angle), -math.cos(angle)) * reach)
    return QPolygonF(corner)


# Draws the sky above.

LEAST_PX = 3.0
ARROW_PX = 9.0


class DomePainter:
    """One drawing on `painter`: the rim is `radius` pixels round `middle`.

    `winds`: the letters for north, east, south and west.
    """

    def __init__(
        self,
        painter: QPainter,
        look: Look,
        picture: DomePicture,
        middle: QPointF,
        radius: float,
        winds: tuple[str, str, str, str],
    ) -> None:
        self._painter = painter
        self._look = look
        self._picture = picture
        self._middle = middle
        self._radius = radius
        self._winds = winds
        self._view = SkyView(picture.rim_deg)
        self._words = WordRoom(painter)
        self._lines = [
            (contour, self._line(contour.azimuth_deg, contour.altitude_deg))
            for contour in picture.contours
        ]

    def draw(self) -> None:
        inside = QPainterPath()
        inside.addEllipse(self._middle, self._radius, self._radius)
        self._painter.save()
        self._painter.setClipPath(inside)
        self._sky()
        self._rings()
        self._contour_lines()
        self._obstructions()
        self._zone()
        self._path()
        self._painter.restore()
        self._rim()
        DomeMarks(self._painter, self._look, self._words, self.at).draw(self._picture)
        self._contour_words()

    def at(self, azimuth_deg: float, altitude_deg: float) -> QPointF:
        return self._points(np.array([azimuth_deg]), np.array([altitude_deg]))[0]

    def _points(self, azimuth_deg: Floats, altitude_deg: Floats) -> list[QPointF]:
        right, down = self._view.place(azimuth_deg, altitude_deg)
        return [
            self._middle + QPointF(x, y) * self._radius
            for x, y in zip(right.tolist(), down.tolist(), strict=True)
        ]

    def _line(self, azimuth_deg: Floats, altitude_deg: Floats) -> list[QPointF]:
        """A line through places, no denser than can be seen."""
        right, down = self._view.place(azimuth_deg, altitude_deg)
        right, down = thinned(right * self._radius, down * self._radius, LEAST_PX)
        return [
            self._middle + QPointF(x, y) for x, y in zip(right.tolist(), down.tolist(), strict=True)
        ]

    def _sky(self) -> None:
        self._painter.setPen(Qt.PenStyle.NoPen)
        self._painter.setBrush(QColor(self._look.well))
        self._painter.drawEllipse(self._middle, self._radius, self._radius)
        if self._picture.bands is None:
            return
        image = tinted(self._picture.bands, self._look)
        side = 2.0 * self._radius
        corner = self._middle - QPointF(self._radius, self._radius)
        self._painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        self._painter.drawImage(QRectF(corner.x(), corner.y(), side, side), image)

    def _rings(self) -> None:
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        for altitude in self._picture.rings_deg:
            reach = (90.0 - altitude) / self._picture.rim_deg * self._radius
            self._painter.setPen(QPen(QColor(self._look.line), 1))
            self._painter.drawEllipse(self._middle, reach, reach)
        for azimuth in (0.0, 45.0, 90.0, 135.0):
            ends = [self.at(azimuth + turn, 90.0 - self._picture.rim_deg) for turn in (0.0, 180.0)]
            self._painter.drawLine(*ends)

    def _rim(self) -> None:
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        self._painter.setPen(QPen(QColor(self._look.edge), 1.5))
        self._painter.drawEllipse(self._middle, self._radius, self._radius)
        gap = 3.0 + self._words.metrics.height() / 2.0
        for number, words in enumerate(self._winds):
            angle = math.radians(90.0 * number)
            reach = self._radius + gap + (2.0 if number % 2 else 0.0)
            place = self._middle + QPointF(math.sin(angle), -math.cos(angle)) * reach
            self._words.write(place, words, self._look.text, must=True)
        for altitude in self._picture.rings_deg:
            if 90.0 - altitude < self._picture.rim_deg - 1e-9:
                place = self.at(247.5, altitude)
                self._words.write(place, f"{altitude:g}°", self._look.quiet, self._look.well)

    def _obstructions(self) -> None:
        horizon = self._picture.horizon
        if horizon.azimuth_deg.size == 0:
            return
        edges = horizon.azimuth_deg
        azimuth = np.unique(np.concatenate([np.arange(0.0, 361.0), edges - 1e-4, edges + 1e-4]))
        skyline = self._points(azimuth, np.maximum(horizon.limit_deg(azimuth), 0.0))
        area = QPainterPath()
        area.addEllipse(self._middle, self._radius + 2.0, self._radius + 2.0)
        sky = QPainterPath()
        sky.addPolygon(QPolygonF(skyline))
        blocked = area.subtracted(sky)
        self._painter.fillPath(blocked, QColor(self._look.panel))
        self._painter.fillPath(blocked, QBrush(QColor(self._look.edge), Qt.BrushStyle.BDiagPattern))
        self._painter.setPen(QPen(QColor(self._look.text), 1.5))
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        self._painter.drawPolygon(QPolygonF(skyline))

    def _zone(self) -> None:
        zone = self._picture.zone
        if zone is None:
            return
        outline = QPolygonF(self._points(zone.azimuth_deg, zone.altitude_deg))
        self._painter.setBrush(QBrush(QColor(self._look.alarm), Qt.BrushStyle.DiagCrossPattern))
        self._painter.setPen(QPen(QColor(self._look.alarm), 1.5))
        self._painter.drawPolygon(outline)

    def _path(self) -> None:
        path = self._picture.path
        if path is None or len(path.azimuth_deg) < 2:
            return
        clear = self._picture.horizon.is_clear(path.azimuth_deg, path.altitude_deg)
        points = self._points(path.azimuth_deg, path.altitude_deg)
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        for is_clear, pen in (
            (False, QPen(QColor(self._look.accent), 1.5, Qt.PenStyle.DotLine)),
            (True, QPen(QColor(self._look.accent), 3.0)),
        ):
            self._painter.setPen(pen)
            for piece in _pieces(points, clear == is_clear):
                self._painter.drawPolyline(QPolygonF(piece))
        self._arrow(points, clear)

    def _arrow(self, points: list[QPointF], clear: Booleans) -> None:
        """At the end of what is seen of the way."""
        seen = np.flatnonzero(clear)
        if seen.size < 3:
            return
        tip, before = points[seen[-1]], points[seen[-3]]
        way = tip - before
        length = math.hypot(way.x(), way.y())
        if length < 1e-6:
            return
        ahead = way / length * ARROW_PX
        aside = QPointF(-ahead.y(), ahead.x()) * 0.6
        self._painter.setPen(Qt.PenStyle.NoPen)
        self._painter.setBrush(QColor(self._look.accent))
        self._painter.drawPolygon(QPolygonF([tip + ahead, tip + aside, tip - aside]))

    def _contour_lines(self) -> None:
        self._painter.setBrush(Qt.BrushStyle.NoBrush)
        for contour, points in self._lines:
            style = Qt.PenStyle.DashLine if contour.is_negative else Qt.PenStyle.SolidLine
            self._painter.setPen(QPen(QColor(self._look.quiet), 1.2, style))
            self._painter.drawPolyline(QPolygonF(points))

    def _contour_words(self) -> None:
        for contour, points in self._lines:
            if _reach(points) > 2.5 * self._words.metrics.horizontalAdvance(contour.words):
                self._label(contour, points)

    def _label(self, contour: Contour, points: list[QPointF]) -> None:
        """Where it first finds room, starting from its middle; nowhere in a crowd."""
        middle = len(points) // 2
        for step in range(0, middle, max(1, middle // 12)):
            for place in (points[middle + step - 1], points[middle - step]):
                if self._is_inside(place) and self._words.write(
                    place, contour.words, self._look.text, self._look.well
                ):
                    return

    def _is_inside(self, place: QPointF) -> bool:
        way = place - self._middle
        if math.hypot(way.x(), way.y()) > self._radius - 1.2 * self._words.metrics.height():
            return False
        right, down = way.x() / self._radius, way.y() / self._radius
        azimuth, altitude = self._view.direction(right, down)
        return bool(self._picture.horizon.is_clear(azimuth, altitude))


def _pieces(points: list[QPointF], chosen: Booleans) -> list[list[QPointF]]:
    """Runs of chosen points, each with one point more at its end so that runs join."""
    pieces: list[list[QPointF]] = []
    for index, is_chosen in enumerate(chosen.tolist()):
        if not is_chosen:
            continue
        if index == 0 or not chosen[index - 1]:
            pieces.append(points[max(index - 1, 0) : index])
        pieces[-1].append(points[index])
    return [piece for piece in pieces if len(piece) > 1]


def _reach(points: list[QPointF]) -> float:
    """How far a line spreads, both ways together."""
    frame = QPolygonF(points).boundingRect()
    return frame.width() + frame.height()


# The sky above, to look at and to point into.

SMALL_PX = 13
EDGE = 1e-6  # the rim itself belongs to the map
STEP, FINE = 0.05, 0.01  # of the arrow keys, in parts of the radius; with Shift the finer


class Dome(RoundDrawing):
    """`told` carries a sentence on the direction under the pointer or the cursor of the arrow keys.

    `value_at` writes what the map says of an azimuth and altitude in degrees.
    """

    told = Signal(str)

    def __init__(self, name: str, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(theme, name, (270, 60), parent)
        self._picture = DomePicture()
        self._value_at: Callable[[float, float], str] | None = None
        self._cursor = QPointF(0.0, 0.0)
        self._pixmap: QPixmap | None = None
        self._made_for: object = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def show_picture(
        self, picture: DomePicture, value_at: Callable[[float, float], str] | None = None
    ) -> None:
        self._picture = picture
        self._value_at = value_at
        self.update()

    def picture(self) -> DomePicture:
        return self._picture

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        self._point_at(self.share_of(event.position()))

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._cursor = self.share_of(event.position())
        self._point_at(self._cursor)
        self.update()

    def leaveEvent(self, event: QEvent) -> None:
        self.told.emit("")
        super().leaveEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        way = self.arrow_of(event)
        if way is None:
            super().keyPressEvent(event)
            return
        fine = event.modifiers() & Qt.KeyboardModifier.ShiftModifier
        there = self._cursor + way * (FINE if fine else STEP)
        if there.x() ** 2 + there.y() ** 2 <= 1.0 + EDGE:
            self._cursor = there
        self._point_at(self._cursor)
        self.update()

    def _point_at(self, place: QPointF) -> None:
        azimuth, altitude = SkyView(self._picture.rim_deg).direction(place.x(), place.y())
        if altitude < 90.0 - self._picture.rim_deg - EDGE:
            self.told.emit("")
            return
        said = self.tr("Azimuth {azimuth:.0f}°, {altitude} high").format(
            azimuth=float(azimuth), altitude=self._height(abs(float(altitude)))
        )
        if not self._picture.horizon.is_clear(azimuth, altitude):
            said = self.tr("{place}: obstructed").format(place=said)
        elif self._value_at is not None:
            said = f"{said}: {self._value_at(float(azimuth), float(altitude))}"
        self.setAccessibleDescription(said)
        self.told.emit(said)

    def _height(self, altitude_deg: float) -> str:
        digits = 0 if self._picture.rim_deg > 20.0 else 2
        return f"{altitude_deg:.{digits}f}°"

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.drawPixmap(0, 0, self._drawn())
        self.draw_focus(painter)
        painter.end()

    def _drawn(self) -> QPixmap:
        """The picture as it was drawn last, or drawn anew where anything of it has changed."""
        ratio = self.devicePixelRatioF()
        made_for = self._picture, self.size(), self._theme.look.name, self._theme.scale, ratio
        if self._pixmap is None or made_for != self._made_for:
            self._made_for = made_for
            self._pixmap = QPixmap(self.size() * ratio)
            self._pixmap.setDevicePixelRatio(ratio)
            self._pixmap.fill(Qt.GlobalColor.transparent)
            self._draw_on(self._pixmap)
        return self._pixmap

    def _small(self) -> QFont:
        font = QFont(self.font())
        font.setPixelSize(round(SMALL_PX * self._theme.scale))
        return font

    def _draw_on(self, pixmap: QPixmap) -> None:
        painter = QPainter(pixmap)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self._small())
        winds = (self.tr("N"), self.tr("E"), self.tr("S"), self.tr("W"))
        where = self.middle(), self.radius()
        DomePainter(painter, self._theme.look, self._picture, *where, winds).draw()
        painter.end()

    def draw_focus(self, painter: QPainter) -> None:
        """With a cross where the arrow keys read."""
        super().draw_focus(painter)
        if not self.hasFocus():
            return
        place = self.middle() + self._cursor * self.radius()
        painter.setPen(QPen(QColor(self._theme.look.accent), 2))
        for arm in (QPointF(9, 0), QPointF(0, 9)):
            painter.drawLine(place - arm, place - arm * 0.3)
            painter.drawLine(place + arm * 0.3, place + arm)
