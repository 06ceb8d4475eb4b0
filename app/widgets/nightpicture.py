"""What a picture of the night shows: graphs and lanes over one line of time.

Times are Unix seconds; the zone turns them into what a clock shows.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from enum import Enum

import numpy as np
from numpy.typing import NDArray

from core.sky.clocks import Zone

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
class Block:
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
    blocks: tuple[Block, ...] = ()
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
