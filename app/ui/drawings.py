"""Small drawings: stacked frames, a star on pixels, a tube from behind, an axis beside the pole."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QBrush, QColor, QPainter, QPaintEvent, QPen, QPolygonF, QRadialGradient
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.ui.curveplot import thinned
from app.ui.style import Theme
from core.language import say

# A drawing of what is left of a picture after frames that turned are stacked.

Floats = NDArray[np.float64]

LEAST_PX = 0.5


class CropDrawing(QWidget):
    """The first frame, the last one, the part common to all, and the largest crop in it."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._size = (0.0, 0.0)
        self._turned_deg = 0.0
        self._common: Floats | None = None
        self._crop: Floats | None = None
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(self.tr("Drawing of the stacked picture"))
        theme.changed.connect(self.update)

    def sizeHint(self) -> QSize:
        return QSize(320, 240)

    def minimumSizeHint(self) -> QSize:
        return QSize(180, 150)

    def show_stack(
        self,
        size_px: tuple[float, float],
        turned_deg: float,
        common_px: Floats | None,
        crop_px: Floats | None,
    ) -> None:
        """Width and height of a frame, the last frame's turn, outlines (n, 2) from its centre, x to
        the right and y up; angles anticlockwise."""
        self._size, self._turned_deg = size_px, turned_deg
        self._common, self._crop = common_px, crop_px
        self.update()

    def _scale(self) -> float:
        reach = float(np.hypot(*self._size))
        return (min(self.width(), self.height()) - 12.0) / max(reach, 1e-9)

    def _polygon(self, points: Floats) -> QPolygonF:
        scale, middle = self._scale(), QRectF(self.rect()).center()
        right, down = thinned(scale * points[:, 0], -scale * points[:, 1], LEAST_PX)
        return QPolygonF(
            [middle + QPointF(x, y) for x, y in zip(right.tolist(), down.tolist(), strict=True)]
        )

    def _frame(self, turned_deg: float) -> QPolygonF:
        half = np.array(self._size) / 2.0
        corners = np.array([(-1, -1), (1, -1), (1, 1), (-1, 1)]) * half
        turn = np.radians(turned_deg)
        cosine, sine = np.cos(turn), np.sin(turn)
        return self._polygon(corners @ np.array([[cosine, sine], [-sine, cosine]]))

    def paintEvent(self, _event: QPaintEvent) -> None:
        if self._common is None or self._crop is None:
            return
        look = self._theme.look
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(look.quiet), 1.5))
        painter.setBrush(QColor(look.well))
        painter.drawPolygon(self._frame(0.0))
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QBrush(QColor(look.chosen)))
        painter.drawPolygon(self._polygon(self._common))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(look.quiet), 1.5, Qt.PenStyle.DashLine))
        painter.drawPolygon(self._frame(self._turned_deg))
        painter.setPen(QPen(QColor(look.accent), 3))
        painter.drawPolygon(self._polygon(self._crop))
        painter.end()


# A star's image drawn over the pixels that see it, to scale.

FEWEST = 5  # pixels across the drawing
MOST = 40
ROUND = 3.2  # the drawing is so many times as wide as the star


class PixelGrid(QWidget):
    """`across`: pixels across the star's width at half its brightness; None shows nothing."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._across: float | None = None
        self.setAccessibleName(self.tr("A star over the pixels of the camera, to scale"))
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.updateGeometry)

    def sizeHint(self) -> QSize:
        side = round(130 + 40 * self._theme.scale)
        return QSize(side, side)

    def show_across(self, across: float | None) -> None:
        self._across = across
        words = "" if across is None else self.tr("{n:.1f} pixels across the star")
        self.setAccessibleDescription(words.format(n=across))
        self.setVisible(across is not None)
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        if self._across is None:
            return
        look = self._theme.look
        painter = QPainter(self)
        count = min(max(round(self._across * ROUND), FEWEST), MOST) | 1  # a pixel in the middle
        side = self.width() / count
        box = QRectF(0.5, 0.5, self.width() - 1.0, self.height() - 1.0)
        painter.fillRect(box, QColor(look.well))
        middle, radius = box.center(), self._across * side / 2.0
        glow = QRadialGradient(middle, 2.0 * radius)
        for place, strength in ((0.0, 1.0), (0.25, 0.84), (0.5, 0.5), (0.75, 0.2), (1.0, 0.0)):
            colour = QColor(look.accent)
            colour.setAlphaF(strength)
            glow.setColorAt(place, colour)
        painter.fillRect(box, glow)
        painter.setPen(QPen(QColor(look.line), 1))
        for number in range(1, count):
            place = number * side
            painter.drawLine(QPointF(place, box.top()), QPointF(place, box.bottom()))
            painter.drawLine(QPointF(box.left(), place), QPointF(box.right(), place))
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setPen(QPen(QColor(look.text), 2, Qt.PenStyle.DashLine))
        painter.drawEllipse(middle, radius, radius)
        painter.setPen(QPen(QColor(look.edge), 1))
        painter.drawRect(box)
        painter.end()


# A tube seen from behind, with the eyepiece where it sits round it.

TUBE, STALK, WIDE = 0.52, 0.34, 0.2  # in parts of half the drawing
GROUND_SHARE = 0.96


class TubeDrawing(QWidget):
    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._round_tube_deg: float | None = None
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("Drawing: the tube from behind, with its eyepiece"))
        theme.changed.connect(self._restyle)

    def sizeHint(self) -> QSize:
        side = round(80 + 40 * self._theme.scale)
        return QSize(side, side)

    def show_eyepiece(self, round_tube_deg: float | None) -> None:
        """0 on top, 90 on the right for somebody behind the tube."""
        self._round_tube_deg = round_tube_deg
        self.setAccessibleDescription("" if round_tube_deg is None else place_words(round_tube_deg))
        self.update()

    def _restyle(self) -> None:
        self.updateGeometry()
        self.update()

    def paintEvent(self, _event: QPaintEvent) -> None:
        if self._round_tube_deg is None:
            return
        look = self._theme.look
        half = min(self.width(), self.height()) / 2.0
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.translate(QRectF(self.rect()).center())
        painter.setPen(QPen(QColor(look.edge), 2))
        painter.drawLine(QPointF(-half, GROUND_SHARE * half), QPointF(half, GROUND_SHARE * half))
        painter.save()
        painter.rotate(self._round_tube_deg)
        painter.setPen(QPen(QColor(look.accent), 2))
        painter.setBrush(QColor(look.chosen))
        eyepiece = QRectF(-WIDE * half / 2, -(TUBE + STALK) * half, WIDE * half, STALK * half + 4)
        painter.drawRoundedRect(eyepiece, 3, 3)
        painter.restore()
        painter.setPen(QPen(QColor(look.text), 3))
        painter.setBrush(QColor(look.well))
        painter.drawEllipse(QPointF(0.0, 0.0), TUBE * half, TUBE * half)
        painter.setPen(QPen(QColor(look.quiet), 1, Qt.PenStyle.DashLine))
        painter.drawLine(QPointF(0.0, -TUBE * half), QPointF(0.0, -0.3 * TUBE * half))
        painter.end()


def place_words(round_tube_deg: float) -> str:
    """Where the eyepiece sits, in one of eight places."""
    places = (
        say("on top of the tube"),
        say("on top, towards the right"),
        say("on the right of the tube"),
        say("under the tube, towards the right"),
        say("under the tube"),
        say("under the tube, towards the left"),
        say("on the left of the tube"),
        say("on top, towards the left"),
    )
    return places[round(round_tube_deg / 45.0) % len(places)]


# A drawing of what the Drift page is about: an axis beside the pole, and a star that creeps.

# In parts of a drawing so wide and high.
WIDTH, HEIGHT = 100.0, 40.0
LARGEST = 9.0  # pixels a part; larger, the drawing would shout
GROUND_Y = 34.0
MOUNT = QPointF(14.0, 31.0)
POLE = QPointF(40.0, 12.0)
AXIS = QPointF(34.0, 7.0)
FIELD = QPointF(76.0, 17.0)
FIELD_RADIUS = 15.0
STARS = tuple(QPointF(68.0 + 5.0 * step, 17.0 - 2.2 * step) for step in range(4))


class Sketch(QWidget):
    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._scale = 1.0
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setAccessibleName(
            self.tr(
                "Drawing: the axis of a mount points beside the pole, and in the eyepiece the star "
                "creeps away from where the mount keeps pointing."
            )
        )

    def sizeHint(self) -> QSize:
        return QSize(640, 240)

    def minimumSizeHint(self) -> QSize:
        side = self._theme.scale
        return QSize(round(240 * side), round(140 * side))

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        # One line of writing below the drawing, whatever its size.
        line = self.fontMetrics().height()
        self._scale = min(self.width() / WIDTH, (self.height() - line) / HEIGHT, LARGEST)
        left = (self.width() - WIDTH * self._scale) / 2.0
        top = (self.height() - HEIGHT * self._scale - line) / 2.0
        painter.translate(left, top)
        self._draw_mount(painter)
        self._draw_field(painter)
        painter.end()

    def _at(self, point: QPointF) -> QPointF:
        return QPointF(point.x() * self._scale, point.y() * self._scale)

    def _draw_mount(self, painter: QPainter) -> None:
        look = self._theme.look
        text, quiet = QColor(look.text), QColor(look.quiet)
        self._line(painter, quiet, 1, QPointF(2.0, GROUND_Y), QPointF(50.0, GROUND_Y))
        for foot in (-5.0, 0.0, 5.0):
            self._line(painter, text, 2, MOUNT, QPointF(MOUNT.x() + foot, GROUND_Y))
        self._line(painter, quiet, 1, MOUNT, POLE, Qt.PenStyle.DashLine)
        self._line(painter, text, 4, MOUNT, AXIS)
        self._dot(painter, quiet, POLE, 5)
        self._write(painter, quiet, POLE, self.tr("the pole"), right_of=True)
        self._write(painter, text, AXIS, self.tr("the axis"), right_of=False)

    def _draw_field(self, painter: QPainter) -> None:
        look = self._theme.look
        painter.setPen(QPen(QColor(look.quiet), 1))
        painter.setBrush(QColor(look.well))
        radius = FIELD_RADIUS * self._scale
        painter.drawEllipse(self._at(FIELD), radius, radius)
        reach = QPointF(FIELD_RADIUS, 0.0)
        self._line(painter, QColor(look.quiet), 1, FIELD - reach, FIELD + reach)
        for number, star in enumerate(STARS, start=1):
            colour = QColor(look.accent)
            colour.setAlphaF(0.25 * number)
            self._dot(painter, colour, star, 3 + number)
        below = QPointF(FIELD.x(), FIELD.y() + FIELD_RADIUS + 1.0)
        words = self.tr("in the eyepiece, minute by minute")
        place = self._at(below)
        metrics = painter.fontMetrics()
        painter.setPen(QColor(look.quiet))
        painter.drawText(
            QPointF(
                place.x() - metrics.horizontalAdvance(words) / 2.0, place.y() + metrics.ascent()
            ),
            words,
        )

    def _line(
        self,
        painter: QPainter,
        colour: QColor,
        width_px: int,
        start: QPointF,
        end: QPointF,
        style: Qt.PenStyle = Qt.PenStyle.SolidLine,
    ) -> None:
        pen = QPen(colour, width_px, style)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        painter.drawLine(self._at(start), self._at(end))

    def _dot(self, painter: QPainter, colour: QColor, place: QPointF, radius_px: int) -> None:
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(colour)
        painter.drawEllipse(self._at(place), radius_px, radius_px)

    def _write(
        self, painter: QPainter, colour: QColor, beside: QPointF, words: str, right_of: bool
    ) -> None:
        metrics = painter.fontMetrics()
        gap = 12.0
        shift = gap if right_of else -gap - metrics.horizontalAdvance(words)
        painter.setPen(colour)
        painter.drawText(self._at(beside) + QPointF(shift, metrics.ascent() / 2.0), words)
