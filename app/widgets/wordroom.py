"""Words in a drawing, each where nothing stands yet."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter

from app.theme.look import Colour

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
