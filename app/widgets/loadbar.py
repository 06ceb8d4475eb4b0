"""A load as a bar against what the mount is listed to carry and the part of it one keeps to."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.theme.theme import Theme

GAP_PX = 6


@dataclass(frozen=True)
class Load:
    """In kg. `later_kg`: what is still to be bought, hatched at the end. `words` tell it all."""

    now_kg: float
    later_kg: float
    practice_kg: float | None
    capacity_kg: float | None
    words: str = ""

    @property
    def whole_kg(self) -> float:
        return self.now_kg + self.later_kg

    @property
    def reach_kg(self) -> float:
        """What the bar is as long as."""
        return max(self.whole_kg, self.capacity_kg or 0.0, 0.1) * 1.04


class LoadBar(QWidget):
    """The load is filled, what is planned is hatched; beyond the capacity it sticks out."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._load = Load(0.0, 0.0, None, None)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.updateGeometry)

    def show_load(self, load: Load) -> None:
        self._load = load
        self.setAccessibleName(self.tr("Load against capacity"))
        self.setAccessibleDescription(load.words)
        self.update()

    def load(self) -> Load:
        return self._load

    def sizeHint(self) -> QSize:
        line = self.fontMetrics().height()
        return QSize(320, 2 * line + 2 * GAP_PX + self._bar_px())

    def minimumSizeHint(self) -> QSize:
        return QSize(160, self.sizeHint().height())

    def _bar_px(self) -> int:
        return round(26 * self._theme.scale)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        line = self.fontMetrics().height()
        bar = QRectF(1.0, line + GAP_PX, self.width() - 2.0, self._bar_px())
        self._draw_bar(painter, bar)
        load = self._load
        if load.capacity_kg is not None:
            words = self.tr("listed {kg:.3g} kg").format(kg=load.capacity_kg)
            self._mark(painter, bar, load.capacity_kg, words, is_above=True)
        if load.practice_kg is not None:
            words = self.tr("keep to {kg:.3g} kg").format(kg=load.practice_kg)
            self._mark(painter, bar, load.practice_kg, words, is_above=False)
        painter.end()

    def _x(self, bar: QRectF, kg: float) -> float:
        return bar.left() + bar.width() * kg / self._load.reach_kg

    def _draw_bar(self, painter: QPainter, bar: QRectF) -> None:
        look, load = self._theme.look, self._load
        end = self._x(bar, load.capacity_kg or load.reach_kg)
        painter.setPen(QPen(QColor(look.edge), 1))
        painter.setBrush(QColor(look.well))
        painter.drawRect(QRectF(bar.topLeft(), QPointF(end, bar.bottom())))
        now, whole = self._x(bar, load.now_kg), self._x(bar, load.whole_kg)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(look.accent))
        inner = bar.adjusted(3, 4, 0, -4)
        painter.drawRect(QRectF(inner.topLeft(), QPointF(max(now, inner.left()), inner.bottom())))
        if load.later_kg > 0.0:
            self._hatch(painter, QRectF(QPointF(now, inner.top()), QPointF(whole, inner.bottom())))

    def _hatch(self, painter: QPainter, box: QRectF) -> None:
        painter.save()
        painter.setPen(QPen(QColor(self._theme.look.accent), 2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.setClipRect(box)
        place = box.left() - box.height()
        while place < box.right():
            painter.drawLine(QPointF(place, box.bottom()), QPointF(place + box.height(), box.top()))
            place += 8.0
        painter.drawRect(box)
        painter.restore()

    def _mark(self, painter: QPainter, bar: QRectF, kg: float, words: str, is_above: bool) -> None:
        look, metrics = self._theme.look, self.fontMetrics()
        x = self._x(bar, kg)
        style = Qt.PenStyle.SolidLine if is_above else Qt.PenStyle.DashLine
        painter.setPen(QPen(QColor(look.text), 2, style))
        painter.drawLine(QPointF(x, bar.top() - GAP_PX), QPointF(x, bar.bottom() + GAP_PX))
        width = metrics.horizontalAdvance(words)
        left = min(max(x - width / 2.0, 0.0), self.width() - width)
        base = metrics.ascent() if is_above else self.height() - metrics.descent()
        painter.setPen(QColor(look.text if is_above else look.quiet))
        painter.drawText(QPointF(left, base), words)
