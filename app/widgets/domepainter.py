"""Draws the sky above."""

from __future__ import annotations

import math

import numpy as np
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QPainter,
    QPainterPath,
    QPen,
    QPolygonF,
)

from app.theme.look import Look
from app.widgets.contours import Contour
from app.widgets.decimate import thinned
from app.widgets.domemarks import DomeMarks
from app.widgets.domepicture import DomePicture
from app.widgets.skyimage import tinted
from app.widgets.skyview import Floats, SkyView
from app.widgets.wordroom import WordRoom
from core.sky.horizon import Booleans

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
