"""Bars: how much each cause does, a load against what is carried, a part of a whole."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.ui.style import Theme

# How much each cause does, as bars from the largest down, against what is allowed.

CAUSE_GAP_PX = 12
ROOM = 1.04  # beyond the longest bar


@dataclass(frozen=True)
class CauseBar:
    """`size` in any unit, `words` the size with it."""

    name: str
    size: float
    words: str


class CauseBars(QWidget):
    """A bar past the dotted line is more than is allowed; it is filled, the others are hollow."""

    def __init__(self, theme: Theme, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._causes: tuple[CauseBar, ...] = ()
        self._allowed = CauseBar("", 0.0, "")
        self.setAccessibleName(name)
        policy = QSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setSizePolicy(policy)
        theme.changed.connect(self.updateGeometry)
        theme.changed.connect(self.update)

    def show_causes(self, causes: Sequence[CauseBar], allowed: CauseBar) -> None:
        """`allowed`: what one cause may do at most; its name stands beside the dotted line."""
        self._causes, self._allowed = tuple(causes), allowed
        said = [f"{one.name} {one.words}" for one in (*causes, allowed)]
        self.setAccessibleDescription("; ".join(said))
        self.updateGeometry()
        self.update()

    def causes(self) -> tuple[CauseBar, ...]:
        return self._causes

    def sizeHint(self) -> QSize:
        rows = len(self._causes) + 1
        return QSize(240, rows * self._row_px() if self._causes else 0)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def paintEvent(self, _event: QPaintEvent) -> None:
        if not self._causes:
            return
        painter = QPainter(self)
        scale = self._scale()
        for number, cause in enumerate(self._causes):
            self._draw_bar(painter, number, cause, scale)
        self._draw_allowed(painter, scale)
        painter.end()

    def _row_px(self) -> int:
        return round(1.5 * self.fontMetrics().height())

    def _left(self) -> int:
        widths = [self.fontMetrics().horizontalAdvance(one.name) for one in self._causes]
        return max(widths, default=0) + CAUSE_GAP_PX

    def _scale(self) -> float:
        """Pixels a unit, so that the longest bar and its words fit."""
        metrics = self.fontMetrics()
        words = max(metrics.horizontalAdvance(one.words) for one in self._causes) + CAUSE_GAP_PX
        room = max(self.width() - self._left() - words, 20)
        return room / max(*(ROOM * one.size for one in self._causes), self._allowed.size, 1e-9)

    def _draw_bar(self, painter: QPainter, number: int, cause: CauseBar, scale: float) -> None:
        look, row = self._theme.look, self._row_px()
        top, left = number * row, self._left()
        painter.setPen(QColor(look.text))
        side = Qt.AlignmentFlag.AlignVCenter
        painter.drawText(QRectF(0, top, left, row), side, cause.name)
        is_over = cause.size > self._allowed.size
        painter.setPen(QPen(QColor(look.accent if is_over else look.edge), 2))
        painter.setBrush(QColor(look.accent) if is_over else Qt.BrushStyle.NoBrush)
        length = max(cause.size * scale, 2.0)
        painter.drawRect(QRectF(left, top + 0.25 * row, length, 0.5 * row))
        painter.setPen(QColor(look.text))
        painter.drawText(
            QRectF(left + length + CAUSE_GAP_PX, top, row * 20, row), side, cause.words
        )

    def _draw_allowed(self, painter: QPainter, scale: float) -> None:
        look, row = self._theme.look, self._row_px()
        bottom = len(self._causes) * row
        x = self._left() + self._allowed.size * scale
        painter.setPen(QPen(QColor(look.text), 2, Qt.PenStyle.DotLine))
        painter.drawLine(round(x), 0, round(x), bottom + round(0.3 * row))
        painter.setPen(QColor(look.quiet))
        words = f"{self._allowed.name} {self._allowed.words}"
        width = self.fontMetrics().horizontalAdvance(words)
        start = min(max(x - 0.5 * width, 0.0), max(self.width() - width, 0.0))
        where = QRectF(start, bottom + 0.2 * row, width + 4, 0.8 * row)
        painter.drawText(where, Qt.AlignmentFlag.AlignVCenter, words)


# A load as a bar against what the mount is listed to carry and the part of it one keeps to.

BAR_GAP_PX = 6


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
        return QSize(320, 2 * line + 2 * BAR_GAP_PX + self._bar_px())

    def minimumSizeHint(self) -> QSize:
        return QSize(160, self.sizeHint().height())

    def _bar_px(self) -> int:
        return round(26 * self._theme.scale)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        line = self.fontMetrics().height()
        bar = QRectF(1.0, line + BAR_GAP_PX, self.width() - 2.0, self._bar_px())
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
        painter.drawLine(QPointF(x, bar.top() - BAR_GAP_PX), QPointF(x, bar.bottom() + BAR_GAP_PX))
        width = metrics.horizontalAdvance(words)
        left = min(max(x - width / 2.0, 0.0), self.width() - width)
        base = metrics.ascent() if is_above else self.height() - metrics.descent()
        painter.setPen(QColor(look.text if is_above else look.quiet))
        painter.drawText(QPointF(left, base), words)


# A part of a whole as a thin bar; what is not known yet stands open at its end.


class ShareBar(QWidget):
    """`share` and `at_best` from 0 to 1. The words beside it say the same."""

    def __init__(
        self, theme: Theme, share: float, at_best: float, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._theme = theme
        self._share, self._at_best = share, at_best
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(self.tr("{share:.2f} of 1").format(share=share))

    def sizeHint(self) -> QSize:
        return QSize(80, round(10 * self._theme.scale))

    def paintEvent(self, _event: QPaintEvent) -> None:
        look = self._theme.look
        painter = QPainter(self)
        whole = QRectF(0.5, 0.5, self.width() - 1.0, self.height() - 1.0)
        painter.setPen(QPen(QColor(look.line), 1))
        painter.setBrush(QColor(look.well))
        painter.drawRect(whole)
        part = QRectF(whole.left(), whole.top(), whole.width() * self._share, whole.height())
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(look.accent))
        painter.drawRect(part)
        if self._at_best > self._share:
            end = whole.width() * self._at_best
            hope = QRectF(part.right(), whole.top(), end - part.width(), whole.height())
            painter.setPen(QPen(QColor(look.accent), 1, Qt.PenStyle.DashLine))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRect(hope)
        painter.end()
