"""Plots of a report as SVG: lines and markers over a frame with round ticks, black on white."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from html import escape

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

WIDTH_PX, HEIGHT_PX = 640, 260
_LEFT, _RIGHT, _TOP, _BOTTOM = 62, 14, 30, 46
_TICKS = 6
_MOST_MARKERS = 240
_INKS = ("#1b1b1b", "#5a5a5a")
_FONT = 'font-family="sans-serif" fill="#1b1b1b"'


@dataclass(frozen=True, eq=False)
class PlotSeries:
    """Points (n,) as markers, or joined by a line; `name` for the key."""

    x: Floats
    y: Floats
    name: str
    is_line: bool = False


@dataclass(frozen=True, eq=False)
class Plot:
    """A titled plot; axis titles with their units. `name` tells plots of a report apart."""

    name: str
    title: str
    x_title: str
    y_title: str
    series: tuple[PlotSeries, ...]

    def svg(self) -> str:
        """The picture, `WIDTH_PX` by `HEIGHT_PX`, complete in itself."""
        frame = _Frame.around(self.series)
        parts = [
            f'<svg xmlns="http://www.w3.org/2000/svg" width="{WIDTH_PX}" height="{HEIGHT_PX}" '
            f'viewBox="0 0 {WIDTH_PX} {HEIGHT_PX}" role="img">',
            f"<title>{escape(self.title)}</title>",
            f'<rect width="{WIDTH_PX}" height="{HEIGHT_PX}" fill="#ffffff"/>',
            _text(WIDTH_PX / 2, 18, self.title, size=13),
            *frame.drawn(self.x_title, self.y_title),
            *(
                line
                for number, series in enumerate(self.series)
                for line in _drawn(series, frame, number)
            ),
            _key(self.series),
            "</svg>",
        ]
        return "\n".join(parts)


@dataclass(frozen=True)
class _Frame:
    """What of the data the frame spans."""

    x_from: float
    x_to: float
    y_from: float
    y_to: float

    @classmethod
    def around(cls, series: Sequence[PlotSeries]) -> _Frame:
        x = np.concatenate([np.zeros(0), *(one.x for one in series)])
        y = np.concatenate([np.zeros(0), *(one.y for one in series)])
        return cls(*_span(x), *_span(y, margin=0.06))

    def at(self, x: Floats, y: Floats) -> tuple[Floats, Floats]:
        """Places on the picture."""
        wide, high = WIDTH_PX - _LEFT - _RIGHT, HEIGHT_PX - _TOP - _BOTTOM
        across = _LEFT + (x - self.x_from) / (self.x_to - self.x_from) * wide
        down = _TOP + (self.y_to - y) / (self.y_to - self.y_from) * high
        return across, down

    def drawn(self, x_title: str, y_title: str) -> list[str]:
        right, bottom = WIDTH_PX - _RIGHT, HEIGHT_PX - _BOTTOM
        lines = [
            f'<rect x="{_LEFT}" y="{_TOP}" width="{right - _LEFT}" height="{bottom - _TOP}" '
            'fill="none" stroke="#1b1b1b"/>'
        ]
        for value in ticks(self.x_from, self.x_to):
            x = float(self.at(np.array(value), np.array(self.y_from))[0])
            lines.append(_line(x, bottom, x, bottom + 5))
            lines.append(_text(x, bottom + 18, _figure(value)))
        for value in ticks(self.y_from, self.y_to):
            y = float(self.at(np.array(self.x_from), np.array(value))[1])
            lines.append(_line(_LEFT - 5, y, _LEFT, y))
            lines.append(_text(_LEFT - 8, y + 4, _figure(value), anchor="end"))
        middle = (_TOP + bottom) / 2
        lines.append(_text((_LEFT + right) / 2, HEIGHT_PX - 10, x_title))
        turned = f'transform="rotate(-90 14 {middle:.1f})"'
        lines.append(_text(14, middle, y_title, more=turned))
        return lines


def ticks(low: float, high: float) -> list[float]:
    """Round values from low to high, some six: multiples of 1, 2 or 5 times a power of ten."""
    rough = (high - low) / _TICKS
    power = 10.0 ** math.floor(math.log10(rough))
    step = next(power * factor for factor in (1.0, 2.0, 5.0, 10.0) if power * factor >= rough)
    first, last = math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9)
    return [number * step for number in range(first, last + 1)]


def thinned(x: Floats, y: Floats, most: int = _MOST_MARKERS) -> tuple[Floats, Floats]:
    """At most `most` points: means of groups of neighbours, all of the data used."""
    if x.size <= most:
        return x, y
    edges = np.linspace(0, x.size, most + 1).astype(int)
    counts = np.diff(edges)
    return np.add.reduceat(x, edges[:-1]) / counts, np.add.reduceat(y, edges[:-1]) / counts


def _span(values: Floats, margin: float = 0.0) -> tuple[float, float]:
    finite = values[np.isfinite(values)]
    if not finite.size:
        return 0.0, 1.0
    low, high = float(finite.min()), float(finite.max())
    wide = max(high - low, 1e-6 * max(abs(low), abs(high)), 1e-3)
    extra = margin * wide if high - low >= wide else 0.5 * wide
    return low - extra, high + extra


def _drawn(series: PlotSeries, frame: _Frame, number: int) -> list[str]:
    known = np.isfinite(series.x) & np.isfinite(series.y)
    x, y = frame.at(*thinned(series.x[known], series.y[known]))
    ink = _INKS[number % len(_INKS)]
    if series.is_line:
        points = " ".join(f"{a:.1f},{b:.1f}" for a, b in zip(x, y, strict=True))
        return [f'<polyline points="{points}" fill="none" stroke="{ink}" stroke-width="1.5"/>']
    shape = _ring if number % 2 == 0 else _cross
    return [shape(a, b, ink) for a, b in zip(x.tolist(), y.tolist(), strict=True)]


def _key(series: Sequence[PlotSeries]) -> str:
    """Which mark means what, below the frame where no data lie."""
    marks = ["—" if one.is_line else "○×"[number % 2] for number, one in enumerate(series)]
    words = "   ".join(f"{mark} {one.name}" for mark, one in zip(marks, series, strict=True))
    return _text(WIDTH_PX - _RIGHT, HEIGHT_PX - 10, words, anchor="end")


def _ring(x: float, y: float, ink: str) -> str:
    return f'<circle cx="{x:.1f}" cy="{y:.1f}" r="2" fill="none" stroke="{ink}"/>'


def _cross(x: float, y: float, ink: str) -> str:
    arms = f"M{x - 2:.1f} {y - 2:.1f}l4 4m0 -4l-4 4"
    return f'<path d="{arms}" fill="none" stroke="{ink}"/>'


def _line(x1: float, y1: float, x2: float, y2: float) -> str:
    return f'<path d="M{x1:.1f} {y1:.1f}L{x2:.1f} {y2:.1f}" stroke="#1b1b1b"/>'


def _text(
    x: float, y: float, text: str, size: int = 11, anchor: str = "middle", more: str = ""
) -> str:
    place = f'x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}" font-size="{size}"'
    return f"<text {place} {_FONT} {more}>{escape(text)}</text>"


def _figure(value: float) -> str:
    return f"{value:.6g}".replace("-", "−") if abs(value) > 1e-9 else "0"
