"""Masses on a beam about a pivot, drawn to scale."""

from __future__ import annotations

import math
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QPolygonF, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.ui.style import Theme

# What a drawing of masses on a beam shows, to scale.

GAP_PX = 3.0


@dataclass(frozen=True)
class BeamMass:
    """A mass at its place along the beam, mm from the pivot, positive to the right."""

    name: str
    mass_kg: float
    arm_mm: float
    is_weight: bool = False


@dataclass(frozen=True)
class Beam:
    """`rail_mm`: a rail drawn from one place to another (the bar, the tube). `slide_mm`: an arrow
    of that length. `are_named`: names above the blocks instead of numbers in them. `left`, `right`:
    what lies on either side. `told`: the drawing in a sentence.
    """

    blocks: tuple[BeamMass, ...]
    pivot: str
    left: str
    right: str
    rail_mm: tuple[float, float] | None = None
    slide_mm: float | None = None
    are_named: bool = False
    told: str = ""

    @property
    def span_mm(self) -> tuple[float, float]:
        """From the leftmost to the rightmost thing."""
        places = [block.arm_mm for block in self.blocks] + [0.0]
        if self.rail_mm is not None:
            places += self.rail_mm
        return min(places), max(places)

    @property
    def heaviest_kg(self) -> float:
        return max((block.mass_kg for block in self.blocks), default=1.0)


def stacked(blocks: tuple[BeamMass, ...], sides_px: list[float], px_per_mm: float) -> list[float]:
    """How high each block stands so that none covers another, heavy ones below; pixels."""
    bases = [0.0] * len(blocks)
    placed: list[tuple[float, float, float]] = []
    for number in sorted(range(len(blocks)), key=lambda one: -blocks[one].mass_kg):
        middle, side = blocks[number].arm_mm * px_per_mm, sides_px[number]
        low, high = middle - side / 2.0 - GAP_PX, middle + side / 2.0 + GAP_PX
        under = [top for begin, end, top in placed if low < end and begin < high]
        bases[number] = max(under, default=0.0)
        placed.append((low, high, bases[number] + side + GAP_PX))
    return bases


# Draws masses on a beam about a pivot, distances to scale and areas as the masses are.

SIDE_PX = 46.0  # of the heaviest block at the usual text size
LEAST_PX = 16.0
MARGIN_PX = 14.0
RULER_MM = (10.0, 20.0, 50.0, 100.0, 200.0, 500.0, 1000.0)


class BeamDrawing(QWidget):
    """Blocks carry numbers; the names belong to the list beside the drawing."""

    def __init__(self, theme: Theme, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._beam = Beam((), "", "", "")
        self._bases: list[float] = []
        self._zero = QPointF()
        self._px_per_mm = 1.0
        self.setAccessibleName(name)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        theme.changed.connect(self.updateGeometry)

    def show_beam(self, beam: Beam) -> None:
        self._beam = beam
        self.setAccessibleDescription(beam.told)
        self._place()
        self.updateGeometry()
        self.update()

    def beam(self) -> Beam:
        return self._beam

    def sizeHint(self) -> QSize:
        self._place()
        tops = [base + self._side_px(one) for base, one in self._stacked()]
        line = self.fontMetrics().height()
        above = line if self._beam.are_named or self._beam.slide_mm else 0
        return QSize(480, round(max(tops, default=0.0) + above + 3.6 * line + 3 * MARGIN_PX))

    def minimumSizeHint(self) -> QSize:
        return QSize(240, self.sizeHint().height())

    def _stacked(self) -> list[tuple[float, BeamMass]]:
        return list(zip(self._bases, self._beam.blocks, strict=True))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Narrower, blocks may have to stand on each other."""
        super().resizeEvent(event)
        self.updateGeometry()

    def place_px(self, arm_mm: float) -> float:
        """Where in the widget a place along the beam lies, from the left."""
        self._place()
        return self._zero.x() + arm_mm * self._px_per_mm

    def _side_px(self, block: BeamMass) -> float:
        share = math.sqrt(block.mass_kg / self._beam.heaviest_kg)
        return max(SIDE_PX * self._theme.scale * share, LEAST_PX * self._theme.scale)

    def _place(self) -> None:
        low, high = self._beam.span_mm
        edge = SIDE_PX * self._theme.scale / 2.0 + MARGIN_PX
        room = max(self.width() - 2.0 * edge, 60.0)
        self._px_per_mm = room / max(high - low, 50.0)
        blocks = self._beam.blocks
        sides = [self._side_px(one) for one in blocks]
        self._bases = stacked(blocks, sides, self._px_per_mm)
        line = self.fontMetrics().height()
        base = self.height() - 3.4 * line - MARGIN_PX - 10.0
        self._zero = QPointF(edge - low * self._px_per_mm, base)

    def paintEvent(self, _event: QPaintEvent) -> None:
        self._place()
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self._draw_beam(painter)
        for number, (base, block) in enumerate(self._stacked(), start=1):
            self._draw_block(painter, number, base, block)
        self._draw_words(painter)
        self._draw_ruler(painter)
        painter.end()

    def _at(self, arm_mm: float, up_px: float = 0.0) -> QPointF:
        return QPointF(self._zero.x() + arm_mm * self._px_per_mm, self._zero.y() - up_px)

    def _draw_beam(self, painter: QPainter) -> None:
        look, beam = self._theme.look, self._beam
        low, high = beam.span_mm
        painter.setPen(QPen(QColor(look.quiet), 2))
        painter.drawLine(self._at(low), self._at(high))
        if beam.rail_mm is not None:
            begin, end = beam.rail_mm
            painter.setPen(QPen(QColor(look.edge), 1))
            painter.setBrush(QColor(look.well))
            painter.drawRect(QRectF(self._at(begin, 5.0), self._at(end, -5.0)))
        foot = 16.0 * self._theme.scale
        zero = self._at(0.0, -6.0)
        corners = [zero, zero + QPointF(-foot * 0.6, foot), zero + QPointF(foot * 0.6, foot)]
        painter.setPen(QPen(QColor(look.text), 2))
        painter.setBrush(QColor(look.panel))
        painter.drawPolygon(QPolygonF(corners))

    def _draw_block(self, painter: QPainter, number: int, base: float, block: BeamMass) -> None:
        look, side = self._theme.look, self._side_px(block)
        corner = self._at(block.arm_mm, base + 6.0 + side) - QPointF(side / 2.0, 0.0)
        box = QRectF(corner.x(), corner.y(), side, side)
        painter.setPen(QPen(QColor(look.text), 2))
        painter.setBrush(QColor(look.accent if block.is_weight else look.panel))
        if block.is_weight:
            painter.drawRect(box)
        else:
            painter.drawRoundedRect(box, 5.0, 5.0)
        if self._beam.are_named:
            width = self.fontMetrics().horizontalAdvance(block.name)
            painter.setPen(QColor(look.text))
            painter.drawText(QPointF(box.center().x() - width / 2.0, box.top() - 5.0), block.name)
            return
        painter.setPen(QColor(look.on_accent if block.is_weight else look.text))
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, str(number))

    def _draw_words(self, painter: QPainter) -> None:
        beam, metrics = self._beam, self.fontMetrics()
        line = self._zero.y() + 10.0 + 16.0 * self._theme.scale + metrics.ascent()
        painter.setPen(QColor(self._theme.look.quiet))
        middle = metrics.horizontalAdvance(beam.pivot) / 2.0
        x = min(max(self._zero.x() - middle, 0.0), self.width() - 2.0 * middle)
        painter.drawText(QPointF(x, line), beam.pivot)
        base = line + metrics.height()
        painter.drawText(QPointF(MARGIN_PX, base), f"← {beam.left}")
        right = f"{beam.right} →"
        place = self.width() - MARGIN_PX - metrics.horizontalAdvance(right)
        painter.drawText(QPointF(place, base), right)
        if beam.slide_mm:
            self._draw_slide(painter, beam.slide_mm)

    def _draw_slide(self, painter: QPainter, slide_mm: float) -> None:
        """An arrow to scale, at least as long as can be seen."""
        length = slide_mm * self._px_per_mm
        length = math.copysign(max(abs(length), 14.0), length)
        start = QPointF(self._zero.x(), MARGIN_PX / 2.0 + 4.0)
        end = start + QPointF(length, 0.0)
        back = math.copysign(8.0, length)
        painter.setPen(QPen(QColor(self._theme.look.accent), 3))
        painter.drawLine(start, end)
        for side in (-5.0, 5.0):
            painter.drawLine(end, end + QPointF(-back, side))

    def _draw_ruler(self, painter: QPainter) -> None:
        """A length to measure the drawing with."""
        fitting = [one for one in RULER_MM if one * self._px_per_mm <= self.width() / 3.0]
        length = fitting[-1] if fitting else RULER_MM[0]
        metrics = self.fontMetrics()
        words = self.tr("{mm:g} mm").format(mm=length)
        base = self.height() - MARGIN_PX / 2.0 - metrics.descent()
        start = QPointF((self.width() - length * self._px_per_mm) / 2.0, base - 3.0)
        end = start + QPointF(length * self._px_per_mm, 0.0)
        painter.setPen(QPen(QColor(self._theme.look.quiet), 1))
        painter.drawLine(start, end)
        for place in (start, end):
            painter.drawLine(place - QPointF(0.0, 4.0), place + QPointF(0.0, 4.0))
        painter.drawText(end + QPointF(8.0, 4.0), words)
