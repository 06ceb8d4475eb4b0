"""A drawing of what the Drift page is about: an axis beside the pole, and a star that creeps."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.theme.theme import Theme

# In parts of a drawing so wide and high.
WIDTH, HEIGHT = 100.0, 40.0
LARGEST = 9.0  # pixels a part; larger, the drawing would shout
GROUND = 34.0
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
        self._line(painter, quiet, 1, QPointF(2.0, GROUND), QPointF(50.0, GROUND))
        for foot in (-5.0, 0.0, 5.0):
            self._line(painter, text, 2, MOUNT, QPointF(MOUNT.x() + foot, GROUND))
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
