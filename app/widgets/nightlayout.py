"""Where the rows of a picture of the night go."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import overload

from PySide6.QtCore import QRectF
from PySide6.QtGui import QFontMetricsF

from app.widgets.nightpicture import Block, Floats, Graph, Lane, NightPicture, Pin

GAP_PX = 6.0
PIN_PX = 5.0
MOST_LEVELS = 4
LEAST_GRAPH_LINES = 5.0  # the least height of a graph, in lines of text


@dataclass(frozen=True)
class Placed:
    """An item of a lane: at which level, from where to where, and where its words begin.

    `words` is empty where there is no room for them.
    """

    item: Block | Pin
    level: int
    left: float
    right: float
    words_left: float
    words: str


@dataclass(frozen=True)
class Row:
    """A row with the area of its picture, its title above it; `placed` for a lane."""

    row: Graph | Lane
    area: QRectF
    placed: tuple[Placed, ...] = ()


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

    def _stacked(self, lanes: dict[int, tuple[Placed, ...]], per_share: float) -> list[Row]:
        top, rows = 0.0, []
        for row in self._picture.rows:
            top += self.line
            if isinstance(row, Graph):
                area = QRectF(self.left, top, self.right - self.left, row.share * per_share)
                rows.append(Row(row, area))
            else:
                placed = lanes[id(row)]
                inner = self._lane_height(placed) - self.line - GAP_PX
                area = QRectF(self.left, top, self.right - self.left, inner)
                rows.append(Row(row, area, placed))
            top = area.bottom() + GAP_PX
        return rows

    def level_height(self) -> float:
        return self.line + 5.0

    def _lane_height(self, placed: Sequence[Placed]) -> float:
        levels = max((one.level for one in placed), default=0) + 1
        return self.line + levels * self.level_height() + GAP_PX

    def _placed(self, lane: Lane) -> tuple[Placed, ...]:
        """Every item on the first level where neither it nor its words are in another's way."""
        items: list[Block | Pin] = [*lane.blocks, *lane.pins]
        items.sort(key=lambda item: item.begin_utc_s if isinstance(item, Block) else item.utc_s)
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

    def _extent(self, item: Block | Pin) -> tuple[float, float]:
        if isinstance(item, Pin):
            middle = self.x(item.utc_s)
            return middle - PIN_PX, middle + PIN_PX
        left, right = self.x(item.begin_utc_s), self.x(item.end_utc_s)
        return max(left, self.left), min(max(right, left + 3.0), self.right)

    def _on_level(
        self,
        item: Block | Pin,
        left: float,
        right: float,
        taken: list[list[tuple[float, float]]],
    ) -> Placed:
        width = self._metrics.horizontalAdvance(item.text)
        inside = isinstance(item, Block) and width + 10.0 <= right - left
        starts = [left + 5.0] if inside else [right + 4.0, left - 4.0 - width]
        for level, spans in enumerate(taken):
            if not _is_free(spans, left, right):
                continue
            for start in starts:
                fits = self.left <= start and start + width <= self.right
                if fits and (inside or _is_free(spans, start, start + width)):
                    return Placed(item, level, left, right, start, item.text)
        level = next((n for n, spans in enumerate(taken) if _is_free(spans, left, right)), 0)
        return Placed(item, level, left, right, right, "")


def _is_free(spans: Sequence[tuple[float, float]], left: float, right: float) -> bool:
    return all(right < begin or left > end for begin, end in spans)
