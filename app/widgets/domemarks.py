"""Draws what is marked in the sky above: stars, moments of a way, the moment picked."""

from __future__ import annotations

import math
from collections.abc import Callable

from PySide6.QtCore import QPointF
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from app.theme.look import Look
from app.widgets.domepicture import DomePicture, Sign, SkyMark
from app.widgets.wordroom import WordRoom

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
