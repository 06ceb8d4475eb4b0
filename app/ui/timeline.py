"""A picture of the night over one line of time: curves, bars, a moment that can be moved."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field
from enum import Enum
from typing import overload

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPolygonF,
    QResizeEvent,
)
from PySide6.QtWidgets import QApplication, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from app.ui.form import Key
from app.ui.style import Colour, Look, Theme, between
from app.ui.text import Text
from core.language import say
from core.night.darkness import Night
from core.sky.almanac import Light
from core.sky.clocks import Zone

# What a picture of the night shows: graphs and lanes over one line of time.
#
# Times are Unix seconds; the zone turns them into what a clock shows.

Floats = NDArray[np.float64]
Span = tuple[float, float]


class Stroke(Enum):
    """How a line is drawn; lines are told apart by this and by their names."""

    MAIN = "solid"
    SECOND = "dashed"
    THIRD = "dotted"
    EDGE = "thin"


def plain(value: float) -> str:
    return f"{value:g}"


@dataclass(frozen=True, eq=False)
class Trace:
    """A line through (n,) times and values; NaN breaks it. `is_ground`: nothing shows below it."""

    name: str
    utc_s: Floats
    values: Floats
    stroke: Stroke = Stroke.MAIN
    is_ground: bool = False

    def at(self, utc_s: float) -> float:
        """Straight between the samples; NaN outside them."""
        return float(np.interp(utc_s, self.utc_s, self.values, left=np.nan, right=np.nan))


@dataclass(frozen=True, eq=False)
class Graph:
    """Lines with one scale. `title` names the quantity with its unit, `words` write one value.

    `ticks`: values the scale is marked at, low to high; `low` and `high` bound the picture.
    `is_by_factors`: equal steps up are equal factors.
    """

    title: str
    traces: tuple[Trace, ...]
    ticks: tuple[float, ...]
    low: float
    high: float
    words: Callable[[float], str] = plain
    is_by_factors: bool = False
    share: float = 1.0  # of the room, against other graphs


@dataclass(frozen=True)
class TimeBlock:
    """Something that lasts; hatched where something cannot be done."""

    begin_utc_s: float
    end_utc_s: float
    text: str
    is_hatched: bool = False


@dataclass(frozen=True)
class Pin:
    """Something at one moment."""

    utc_s: float
    text: str


@dataclass(frozen=True)
class Lane:
    """A row of blocks and pins."""

    title: str
    blocks: tuple[TimeBlock, ...] = ()
    pins: tuple[Pin, ...] = ()


@dataclass(frozen=True)
class Shade:
    """How dark the sky is in a span: 0 by day to 1 at night."""

    begin_utc_s: float
    end_utc_s: float
    darkness: float


@dataclass(frozen=True, eq=False)
class NightPicture:
    """Rows from the top. `now_utc_s` is marked where it lies within."""

    begin_utc_s: float
    end_utc_s: float
    zone: Zone
    rows: tuple[Graph | Lane, ...] = ()
    shades: tuple[Shade, ...] = ()
    now_utc_s: float = field(default=np.nan)

    def clock(self, utc_s: float) -> str:
        """Hours and minutes, to the nearest minute."""
        return clock_words(self.zone, utc_s)

    def told_at(self, utc_s: float) -> str:
        """Everything the picture holds of one moment, in words."""
        said = [self.clock(utc_s)]
        for row in self.rows:
            said += _of_graph(row, utc_s) if isinstance(row, Graph) else _of_lane(row, utc_s)
        return "; ".join(said)

    @property
    def has_values(self) -> bool:
        """Whether there is anything to copy."""
        graphs = [row for row in self.rows if isinstance(row, Graph)]
        return any(len(trace.utc_s) for graph in graphs for trace in graph.traces)

    def as_text(self) -> str:
        """All values for a table program: one line a sample, comma separated, times in UTC."""
        traces = [
            trace
            for row in self.rows
            if isinstance(row, Graph)
            for trace in row.traces
            if len(trace.utc_s)
        ]
        if not traces:
            return ""
        times = traces[0].utc_s
        head = ",".join(["utc", *(f'"{trace.name}"' for trace in traces)])
        stamps = np.datetime_as_string(np.round(times).astype("datetime64[s]"))
        columns = [np.interp(times, trace.utc_s, trace.values) for trace in traces]
        rows = zip(stamps.tolist(), *(column.tolist() for column in columns), strict=True)
        lines = [",".join([f"{stamp}Z", *(f"{v:.6g}" for v in values)]) for stamp, *values in rows]
        return "\n".join([head, *lines, ""])


def clock_words(zone: Zone, utc_s: float) -> str:
    """Hours and minutes of the clocks there, to the nearest minute."""
    return zone.civil(round(utc_s / 60.0) * 60.0).strftime("%H:%M")


def steps(low: float, high: float, most: int, is_angle: bool = False) -> tuple[float, ...]:
    """Round values that mark a scale from `low` to `high`, about `most` of them."""
    room = max(high - low, 1e-9)
    sizes = _round_sizes(room, is_angle)
    first = next((n for n, one in enumerate(sizes) if room / one <= most), len(sizes) - 1)
    marks = _multiples(low, high, sizes[first])
    # One mark alone is no scale: then rather one step finer.
    return marks if len(marks) > 1 or first == 0 else _multiples(low, high, sizes[first - 1])


def _multiples(low: float, high: float, size: float) -> tuple[float, ...]:
    first, last = np.ceil(low / size - 1e-9), np.floor(high / size + 1e-9)
    return tuple((np.arange(first, last + 1) * size).tolist())


def _round_sizes(room: float, is_angle: bool) -> list[float]:
    if is_angle and room > 20.0:
        return [5.0, 10.0, 15.0, 30.0, 45.0, 90.0, 180.0, 360.0, 720.0]
    tens = 10.0 ** (np.floor(np.log10(room)) - 1.0)
    return [float(digit * tens * ten) for ten in (1, 10, 100) for digit in (1, 2, 5)]


def _of_graph(graph: Graph, utc_s: float) -> list[str]:
    found = [(trace.name, trace.at(utc_s)) for trace in graph.traces]
    return [f"{name} {graph.words(value)}" for name, value in found if np.isfinite(value)]


def _of_lane(lane: Lane, utc_s: float) -> list[str]:
    return [block.text for block in lane.blocks if block.begin_utc_s <= utc_s <= block.end_utc_s]


# The line of time of a night, with nothing on it yet.

BESIDE_S = 3600.0  # shown before sunset and after sunrise
_DARKNESS = {
    Light.DAY: 0.0,
    Light.CIVIL: 0.3,
    Light.NAUTICAL: 0.55,
    Light.ASTRONOMICAL: 0.8,
    Light.NIGHT: 1.0,
}


def night_frame(
    night: Night, zone: Zone, now_utc_s: float, rows: tuple[Graph | Lane, ...]
) -> NightPicture:
    begin, end = shown_span(night)
    return NightPicture(begin, end, zone, rows, shades(night), now_utc_s)


def shown_span(night: Night) -> Span:
    """Somewhat more than from sunset to sunrise; noon to noon where the Sun keeps up or down."""
    sunset, sunrise = night.sunset_utc_s, night.sunrise_utc_s
    if sunset is None or sunrise is None or sunrise <= sunset:
        return night.begin_utc_s, night.end_utc_s
    return max(sunset - BESIDE_S, night.begin_utc_s), min(sunrise + BESIDE_S, night.end_utc_s)


def shades(night: Night) -> tuple[Shade, ...]:
    times = [night.begin_utc_s, *(change.utc_s for change in night.light.changes), night.end_utc_s]
    lights = [night.light.at_start, *(change.light for change in night.light.changes)]
    return tuple(
        Shade(begin, end, _DARKNESS[light])
        for begin, end, light in zip(times[:-1], times[1:], lights, strict=True)
    )


# Where the rows of a picture of the night go.

GAP_PX = 6.0
PIN_PX = 5.0
MOST_LEVELS = 4
LEAST_GRAPH_LINES = 5.0  # the least height of a graph, in lines of text


@dataclass(frozen=True)
class PlacedItem:
    """An item of a lane: at which level, from where to where, and where its words begin.

    `words` is empty where there is no room for them.
    """

    item: TimeBlock | Pin
    level: int
    left: float
    right: float
    words_left: float
    words: str


@dataclass(frozen=True)
class TimelineRow:
    """A row with the area of its picture, its title above it; `placed` for a lane."""

    row: Graph | Lane
    area: QRectF
    placed: tuple[PlacedItem, ...] = ()


class NightLayout:
    """For a picture in a widget of a width; `height` None asks for the least height."""

    def __init__(
        self, picture: NightPicture, metrics: QFontMetricsF, width: float, height: float | None
    ) -> None:
        self._picture = picture
        self._metrics = metrics
        self.line = metrics.height()
        self.left = self._widest_tick() + 10.0
        self.right = max(width - 0.5 * metrics.horizontalAdvance("00:00") - 4.0, self.left + 40.0)
        lanes = {id(row): self._placed(row) for row in picture.rows if isinstance(row, Lane)}
        fixed = sum(self._lane_height(placed) for placed in lanes.values())
        shares = [row.share for row in picture.rows if isinstance(row, Graph)]
        least = LEAST_GRAPH_LINES * self.line * sum(shares)
        fixed += len(shares) * (self.line + GAP_PX) + self.line + 2.0 * GAP_PX
        self.height = fixed + least
        free = least if height is None else max(height - fixed, least)
        self.rows = self._stacked(lanes, free / max(sum(shares), 1e-9))
        self.bottom = self.rows[-1].area.bottom() if self.rows else 0.0

    @overload
    def x(self, utc_s: float) -> float: ...
    @overload
    def x(self, utc_s: Floats) -> Floats: ...
    def x(self, utc_s: float | Floats) -> float | Floats:
        begin, end = self._picture.begin_utc_s, self._picture.end_utc_s
        return self.left + (utc_s - begin) / (end - begin) * (self.right - self.left)

    def utc_s(self, x: float) -> float:
        """Kept within the picture."""
        begin, end = self._picture.begin_utc_s, self._picture.end_utc_s
        share = (x - self.left) / (self.right - self.left)
        return begin + min(max(share, 0.0), 1.0) * (end - begin)

    def _widest_tick(self) -> float:
        words = [
            row.words(tick)
            for row in self._picture.rows
            if isinstance(row, Graph)
            for tick in row.ticks
        ]
        return max((self._metrics.horizontalAdvance(word) for word in words), default=20.0)

    def _stacked(
        self, lanes: dict[int, tuple[PlacedItem, ...]], per_share: float
    ) -> list[TimelineRow]:
        top, rows = 0.0, []
        for row in self._picture.rows:
            top += self.line
            if isinstance(row, Graph):
                area = QRectF(self.left, top, self.right - self.left, row.share * per_share)
                rows.append(TimelineRow(row, area))
            else:
                placed = lanes[id(row)]
                inner = self._lane_height(placed) - self.line - GAP_PX
                area = QRectF(self.left, top, self.right - self.left, inner)
                rows.append(TimelineRow(row, area, placed))
            top = area.bottom() + GAP_PX
        return rows

    def level_height(self) -> float:
        return self.line + 5.0

    def _lane_height(self, placed: Sequence[PlacedItem]) -> float:
        levels = max((one.level for one in placed), default=0) + 1
        return self.line + levels * self.level_height() + GAP_PX

    def _placed(self, lane: Lane) -> tuple[PlacedItem, ...]:
        """Every item on the first level where neither it nor its words are in another's way."""
        items: list[TimeBlock | Pin] = [*lane.blocks, *lane.pins]
        items.sort(key=lambda item: item.begin_utc_s if isinstance(item, TimeBlock) else item.utc_s)
        taken: list[list[tuple[float, float]]] = [[] for _ in range(MOST_LEVELS)]
        found = []
        for item in items:
            left, right = self._extent(item)
            if right < self.left or left > self.right:
                continue
            one = self._on_level(item, left, right, taken)
            taken[one.level].append((left, right))
            if one.words:
                width = self._metrics.horizontalAdvance(one.words)
                taken[one.level].append((one.words_left, one.words_left + width))
            found.append(one)
        return tuple(found)

    def _extent(self, item: TimeBlock | Pin) -> tuple[float, float]:
        if isinstance(item, Pin):
            middle = self.x(item.utc_s)
            return middle - PIN_PX, middle + PIN_PX
        left, right = self.x(item.begin_utc_s), self.x(item.end_utc_s)
        return max(left, self.left), min(max(right, left + 3.0), self.right)

    def _on_level(
        self,
        item: TimeBlock | Pin,
        left: float,
        right: float,
        taken: list[list[tuple[float, float]]],
    ) -> PlacedItem:
        width = self._metrics.horizontalAdvance(item.text)
        inside = isinstance(item, TimeBlock) and width + 10.0 <= right - left
        starts = [left + 5.0] if inside else [right + 4.0, left - 4.0 - width]
        for level, spans in enumerate(taken):
            if not _is_free(spans, left, right):
                continue
            for start in starts:
                fits = self.left <= start and start + width <= self.right
                if fits and (inside or _is_free(spans, start, start + width)):
                    return PlacedItem(item, level, left, right, start, item.text)
        level = next((n for n, spans in enumerate(taken) if _is_free(spans, left, right)), 0)
        return PlacedItem(item, level, left, right, right, "")


def _is_free(spans: Sequence[tuple[float, float]], left: float, right: float) -> bool:
    return all(right < begin or left > end for begin, end in spans)


# Draws a picture of the night.

STROKES = {
    Stroke.MAIN: (2.0, Qt.PenStyle.SolidLine),
    Stroke.SECOND: (2.0, Qt.PenStyle.DashLine),
    Stroke.THIRD: (2.0, Qt.PenStyle.DotLine),
    Stroke.EDGE: (1.0, Qt.PenStyle.SolidLine),
}
HOUR_S = 3600.0


class NightPainter:
    """One drawing on `painter`. `chosen` is the moment picked, `pointed` the one pointed at."""

    def __init__(
        self, painter: QPainter, look: Look, picture: NightPicture, layout: NightLayout
    ) -> None:
        self._painter = painter
        self._look = look
        self._picture = picture
        self._layout = layout
        self._metrics = QFontMetricsF(painter.font())

    def draw(self, chosen: float, pointed: float, is_focused: bool) -> None:
        for row in self._layout.rows:
            self._ground(row)
            if isinstance(row.row, Graph):
                self._graph(row, row.row)
            else:
                self._lane(row, row.row)
            self._painter.setBrush(Qt.BrushStyle.NoBrush)
            self._painter.setPen(QPen(QColor(self._look.line), 1))
            self._painter.drawRect(row.area)
        self._hours()
        self._now()
        self._moment(pointed, self._look.quiet, 1, Qt.PenStyle.SolidLine, "")
        width = 3 if is_focused else 2
        self._moment(chosen, self._look.accent, width, Qt.PenStyle.SolidLine, "◆")

    def _ground(self, row: TimelineRow) -> None:
        """The darker the sky, the deeper; the words of a row stand above it."""
        deep, light = sorted((self._look.well, self._look.hover), key=_lightness)
        for shade in self._picture.shades:
            left = max(self._layout.x(shade.begin_utc_s), row.area.left())
            right = min(self._layout.x(shade.end_utc_s), row.area.right())
            if right > left:
                tone = between(light, deep, shade.darkness)
                area = QRectF(left, row.area.top(), right - left, row.area.height())
                self._painter.fillRect(area, tone)
        self._words(row.area.left(), row.area.top() - self._layout.line, row.row.title)

    def _words(self, left: float, top: float, words: str, colour: str = "") -> None:
        self._painter.setPen(QColor(colour or self._look.text))
        self._painter.drawText(QPointF(left, top + self._metrics.ascent()), words)

    def _hours(self) -> None:
        bottom = self._layout.bottom
        step = self._hour_step()
        begin, end = self._picture.begin_utc_s, self._picture.end_utc_s
        for utc_s in _full_hours(self._picture, begin, end):
            hour = self._picture.zone.civil(utc_s).hour
            x = self._layout.x(utc_s)
            labelled = hour % step == 0
            self._painter.setPen(QPen(QColor(self._look.edge), 1))
            self._painter.drawLine(QPointF(x, bottom), QPointF(x, bottom + (6 if labelled else 3)))
            if labelled:
                words = clock_words(self._picture.zone, utc_s)
                half = self._metrics.horizontalAdvance(words) / 2.0
                self._words(x - half, bottom + 6.0, words)

    def _hour_step(self) -> int:
        hours = (self._picture.end_utc_s - self._picture.begin_utc_s) / HOUR_S
        per_hour = (self._layout.right - self._layout.left) / max(hours, 1.0)
        needed = 1.4 * self._metrics.horizontalAdvance("00:00")
        return next((step for step in (1, 2, 3, 6) if step * per_hour >= needed), 12)

    def _graph(self, row: TimelineRow, graph: Graph) -> None:
        heights = height_of(graph, row.area, np.array(graph.ticks)).tolist()
        for tick, y in zip(graph.ticks, heights, strict=True):
            self._painter.setPen(QPen(QColor(self._look.line), 1))
            self._painter.drawLine(QPointF(row.area.left(), y), QPointF(row.area.right(), y))
            words = graph.words(tick)
            left = row.area.left() - self._metrics.horizontalAdvance(words) - 6.0
            self._words(left, y - self._metrics.height() / 2.0, words, self._look.quiet)
        self._painter.save()
        self._painter.setClipRect(row.area)
        for trace in graph.traces:
            self._trace(row.area, graph, trace)
        self._painter.restore()
        if len(graph.traces) > 1:
            self._legend(row, graph)

    def _trace(self, area: QRectF, graph: Graph, trace: Trace) -> None:
        width, style = STROKES[trace.stroke]
        colour = self._look.accent if trace.stroke is Stroke.MAIN else self._look.text
        for points in self._pieces(area, graph, trace):
            if trace.is_ground:
                floor = [
                    QPointF(points[-1].x(), area.bottom()),
                    QPointF(points[0].x(), area.bottom()),
                ]
                self._painter.setPen(Qt.PenStyle.NoPen)
                self._painter.setBrush(QBrush(QColor(self._look.edge), Qt.BrushStyle.BDiagPattern))
                self._painter.drawPolygon(QPolygonF([*points, *floor]))
            self._painter.setBrush(Qt.BrushStyle.NoBrush)
            self._painter.setPen(QPen(QColor(colour), width, style))
            self._painter.drawPolyline(QPolygonF(points))

    def _pieces(self, area: QRectF, graph: Graph, trace: Trace) -> list[list[QPointF]]:
        """The line where it has values, no denser than pixels; any gap breaks it."""
        every = max(1, len(trace.utc_s) // max(int(area.width()), 1))
        across = self._layout.x(trace.utc_s[::every])
        high = height_of(graph, area, trace.values[::every])
        known = np.isfinite(trace.values)
        whole = np.logical_and.reduceat(known, np.arange(0, len(known), every))
        edges = np.flatnonzero(np.diff(np.concatenate([[0], whole.astype(np.int8), [0]])))
        return [
            [QPointF(x, y) for x, y in zip(across[a:b].tolist(), high[a:b].tolist(), strict=True)]
            for a, b in zip(edges[::2], edges[1::2], strict=True)
            if b - a > 1
        ]

    def _legend(self, row: TimelineRow, graph: Graph) -> None:
        """Samples of the strokes with their names, at the right of the title."""
        right = row.area.right()
        y = row.area.top() - self._layout.line
        for trace in reversed(graph.traces):
            width, style = STROKES[trace.stroke]
            right -= self._metrics.horizontalAdvance(trace.name)
            free = row.area.left() + self._metrics.horizontalAdvance(graph.title) + 46.0
            if right < free:
                return
            self._words(right, y, trace.name, self._look.quiet)
            middle = y + self._metrics.height() / 2.0
            colour = self._look.accent if trace.stroke is Stroke.MAIN else self._look.text
            self._painter.setPen(QPen(QColor(colour), width, style))
            self._painter.drawLine(QPointF(right - 34.0, middle), QPointF(right - 6.0, middle))
            right -= 50.0

    def _lane(self, row: TimelineRow, _lane: Lane) -> None:
        for placed in row.placed:
            top = row.area.top() + placed.level * self._layout.level_height() + 1.0
            if isinstance(placed.item, TimeBlock):
                self._block(placed, placed.item, top)
            else:
                self._pin(placed, top)
            if placed.words:
                self._words(placed.words_left, top + 1.0, placed.words)

    def _block(self, placed: PlacedItem, block: TimeBlock, top: float) -> None:
        height = self._layout.level_height() - 2.0
        area = QRectF(placed.left, top, placed.right - placed.left, height)
        self._painter.setPen(QPen(QColor(self._look.edge), 1))
        self._painter.setBrush(QColor(self._look.chosen))
        self._painter.drawRoundedRect(area, 3.0, 3.0)
        if block.is_hatched:
            self._painter.setBrush(QBrush(QColor(self._look.edge), Qt.BrushStyle.BDiagPattern))
            self._painter.drawRoundedRect(area, 3.0, 3.0)

    def _pin(self, placed: PlacedItem, top: float) -> None:
        middle = QPointF(0.5 * (placed.left + placed.right), top + self._layout.level_height() / 2)
        arms = (QPointF(PIN_PX, 0), QPointF(0, PIN_PX), QPointF(-PIN_PX, 0), QPointF(0, -PIN_PX))
        self._painter.setPen(Qt.PenStyle.NoPen)
        self._painter.setBrush(QColor(self._look.accent))
        self._painter.drawPolygon(QPolygonF([middle + arm for arm in arms]))

    def _moment(
        self, utc_s: float, colour: str, width: int, style: Qt.PenStyle, words: str
    ) -> None:
        if not self._picture.begin_utc_s <= utc_s <= self._picture.end_utc_s:
            return  # NaN included
        x = self._layout.x(utc_s)
        self._painter.setPen(QPen(QColor(colour), width, style))
        for row in self._layout.rows:
            self._painter.drawLine(QPointF(x, row.area.top()), QPointF(x, row.area.bottom()))
        if words and self._layout.rows:
            half = self._metrics.horizontalAdvance(words) / 2.0
            self._words(x - half, self._layout.rows[0].area.top(), words, colour)

    def _now(self) -> None:
        """Dotted; its word stands beside it, where no moment picked strikes it through."""
        now = self._picture.now_utc_s
        self._moment(now, self._look.quiet, 1, Qt.PenStyle.DotLine, "")
        if self._layout.rows and self._picture.begin_utc_s <= now <= self._picture.end_utc_s:
            words, x = say("now"), self._layout.x(now)
            width = self._metrics.horizontalAdvance(words)
            left = x + 8.0 if x + 8.0 + width < self._layout.right else x - 8.0 - width
            self._words(left, self._layout.rows[0].area.top(), words, self._look.quiet)


def _lightness(colour: Colour) -> float:
    return QColor(colour).lightnessF()


def height_of(graph: Graph, area: QRectF, values: Floats) -> Floats:
    """Where values lie in the area of a graph."""
    low, high = graph.low, graph.high
    if graph.is_by_factors:
        low, high = (math.log(max(one, 1e-9)) for one in (low, high))
        values = np.log(np.maximum(values, 1e-9))
    return np.asarray(area.bottom() - (values - low) / (high - low) * area.height())


def _full_hours(picture: NightPicture, begin: float, end: float) -> Floats:
    """Whole hours of the clock: zones may be off by half an hour."""
    first = picture.zone.civil(begin)
    into = first.minute * 60.0 + first.second + first.microsecond * 1e-6
    start = begin - into + (HOUR_S if into else 0.0)
    return np.arange(start, end + 1.0, HOUR_S)


# A picture of the night with a moment on it that can be moved.

STEP_S, FINE_S, COARSE_S = 300.0, 60.0, 3600.0
SMALL_PX = 13


class NightChart(QWidget):
    """`picked` carries the moment a person picks by pressing, dragging or the arrow keys, Unix
    seconds; `told` a sentence on the moment pointed at or picked.

    Left and right move by five minutes, with Shift by one, Page up and down by an hour.
    """

    picked = Signal(float)
    told = Signal(str)

    def __init__(self, name: str, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._picture: NightPicture | None = None
        self._picked = math.nan
        self._pointed = math.nan
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setAccessibleName(name)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        theme.changed.connect(self._restyle)

    def show_picture(self, picture: NightPicture | None) -> None:
        self._picture = picture
        self._fit()
        self._describe()
        self.update()

    def picture(self) -> NightPicture | None:
        return self._picture

    def show_moment(self, utc_s: float) -> None:
        """The moment picked elsewhere."""
        self._picked = utc_s
        self._describe()
        self.update()

    def moment(self) -> float:
        return self._picked

    def sizeHint(self) -> QSize:
        return QSize(520, max(self.minimumHeight(), 240))

    def _small(self) -> QFont:
        font = QFont(self.font())
        font.setPixelSize(round(SMALL_PX * self._theme.scale))
        return font

    def _laid(self, picture: NightPicture, height: float | None) -> NightLayout:
        return NightLayout(picture, QFontMetricsF(self._small()), float(self.width()), height)

    def _fit(self) -> None:
        least = 0 if self._picture is None else math.ceil(self._laid(self._picture, None).height)
        if least != self.minimumHeight():
            self.setMinimumHeight(least)

    def _restyle(self) -> None:
        self._fit()
        self.update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() is Qt.MouseButton.LeftButton:
            self._pick(event.position().x())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._picture is None:
            return
        if event.buttons() & Qt.MouseButton.LeftButton:
            self._pick(event.position().x())
            return
        self._pointed = self._laid(self._picture, float(self.height())).utc_s(event.position().x())
        self.told.emit(self._picture.told_at(self._pointed))
        self.update()

    def leaveEvent(self, event: QEvent) -> None:
        self._pointed = math.nan
        self._describe()
        self.update()
        super().leaveEvent(event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        way = {
            Qt.Key.Key_Left: -STEP_S,
            Qt.Key.Key_Right: STEP_S,
            Qt.Key.Key_PageDown: COARSE_S,
            Qt.Key.Key_PageUp: -COARSE_S,
        }.get(Qt.Key(event.key()))
        if way is None or self._picture is None:
            super().keyPressEvent(event)
            return
        fine = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        step = math.copysign(FINE_S, way) if fine else way
        start = self._picked if math.isfinite(self._picked) else self._picture.begin_utc_s
        self._take(start + step)

    def _pick(self, x: float) -> None:
        if self._picture is not None:
            self._pointed = math.nan
            self._take(self._laid(self._picture, float(self.height())).utc_s(x))

    def _take(self, utc_s: float) -> None:
        if self._picture is None:
            return
        begin, end = self._picture.begin_utc_s, self._picture.end_utc_s
        self.show_moment(min(max(round(utc_s / FINE_S) * FINE_S, begin), end))
        self.picked.emit(self._picked)

    def _describe(self) -> None:
        if self._picture is None or not math.isfinite(self._picked):
            return
        sentence = self._picture.told_at(self._picked)
        self.setAccessibleDescription(sentence)
        self.told.emit(sentence)

    def paintEvent(self, _event: QPaintEvent) -> None:
        if self._picture is None:
            return
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self._small())
        layout = self._laid(self._picture, float(self.height()))
        drawing = NightPainter(painter, self._theme.look, self._picture, layout)
        drawing.draw(self._picked, self._pointed, self.hasFocus())
        painter.end()


# A picture of the night with the values of a moment below it, and a key to copy them all.


class NightView(QWidget):
    """`picked` carries the moment a person picks, Unix seconds."""

    picked = Signal(float)

    def __init__(self, name: str, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._chart = NightChart(name, theme)
        self._told = Text(self.tr("Press on the picture, or use the arrow keys."), "small")
        self._copy = Key(self.tr("Copy values"))
        self._copy.setAccessibleName(self.tr("Copy the values of: {name}").format(name=name))
        self._copy.setToolTip(self.tr("All values on the clipboard, for a table program"))
        self._chart.picked.connect(self.picked)
        self._chart.told.connect(self._told.say)
        self._copy.clicked.connect(self._copied)
        foot = QHBoxLayout()
        foot.addWidget(self._told, 1)
        foot.addWidget(self._copy)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addWidget(self._chart, 1)
        column.addLayout(foot)
        policy = self.sizePolicy()  # what stands above it stays where it is
        policy.setRetainSizeWhenHidden(True)
        self.setSizePolicy(policy)

    def chart(self) -> NightChart:
        return self._chart

    def told(self) -> str:
        return self._told.text()

    def copy_button(self) -> Key:
        return self._copy

    def show_picture(self, picture: NightPicture | None) -> None:
        self._chart.show_picture(picture)
        self._copy.setEnabled(picture is not None and picture.has_values)

    def show_moment(self, utc_s: float) -> None:
        self._chart.show_moment(utc_s)

    def _copied(self) -> None:
        picture = self._chart.picture()
        if picture is not None:
            QApplication.clipboard().setText(picture.as_text())
