"""What a plot of curves shows, and how its values read as text."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from enum import Enum

import numpy as np
from numpy.typing import NDArray

from app.widgets.decimate import decimate
from core.language import say

Floats = NDArray[np.float64]

NEAR = 0.01  # of the width: curves of one name this close are read off together
COLUMNS = 900  # points across a picture; more are not told apart


class Ink(Enum):
    """How a curve is drawn; each is told from the others without its colour."""

    FULL = "━━"
    DASHED = "╍╍"
    DOTTED = "┉┉"
    THIN = "──"
    DOTS = "•"


@dataclass(frozen=True, eq=False)
class Curve:
    """Arrays (n,), NaN where nothing is known. `low`, `high`: its 95 % band."""

    name: str
    x: Floats
    y: Floats
    ink: Ink = Ink.FULL
    low: Floats | None = None
    high: Floats | None = None

    def thinned(self) -> Curve:
        """With no more points than can be seen, every peak kept."""
        if self.ink is Ink.DOTS or self.low is not None or self.x.size <= 4 * COLUMNS:
            return self
        known = np.isfinite(self.x) & np.isfinite(self.y)
        x, y = self.x[known], self.y[known]
        if x.size < 2 or np.any(np.diff(x) < 0.0):
            return self
        return Curve(self.name, *decimate(x, y, float(x[0]), float(x[-1]), COLUMNS), self.ink)


def _plainly(value: float) -> str:
    return f"{value:.4g}"


@dataclass(frozen=True, eq=False)
class Picture:
    """`x_name`, `y_name`: of the axes, unit included. `x_words`, `y_words`: a value with its unit.

    `x_ticks`: places and words, where the axis is not to choose them itself. `x_values`: turns a
    place along the axis into the value that is copied. `levels`: level lines with their names.
    """

    title: str
    x_name: str
    y_name: str
    curves: tuple[Curve, ...]
    x_words: Callable[[float], str] = _plainly
    y_words: Callable[[float], str] = _plainly
    x_ticks: Sequence[tuple[float, str]] = ()
    x_values: Callable[[Floats], Floats] = field(default=lambda x: x)
    levels: tuple[tuple[float, str], ...] = ()
    y_range: tuple[float, float] | None = None
    is_square: bool = False

    def x_span(self) -> tuple[float, float]:
        return _span([curve.x for curve in self.curves])

    def y_span(self) -> tuple[float, float]:
        if self.y_range is not None:
            return self.y_range
        values = [curve.y for curve in self.curves]
        values += [band for one in self.curves for band in (one.low, one.high) if band is not None]
        values += [np.array([level]) for level, _ in self.levels]
        low, high = _span(values)
        room = 0.06 * (high - low)
        return low - room, high + room

    def words_at(self, x: float) -> str:
        """What every curve says nearest to a place along the axis; curves of one name together."""
        low, high = self.x_span()
        found: dict[str, list[tuple[float, float]]] = {}
        for curve in self.curves:
            known = np.flatnonzero(np.isfinite(curve.y) & np.isfinite(curve.x))
            if known.size:
                at = known[int(np.argmin(np.abs(curve.x[known] - x)))]
                off = abs(float(curve.x[at]) - x)
                found.setdefault(curve.name, []).append((off, float(curve.y[at])))
        said = []
        for name, values in found.items():
            reach = min(off for off, _ in values) + NEAR * (high - low)
            near = sorted(value for off, value in values if off <= reach)
            words = self.y_words(near[0])
            if len(near) > 1:
                words = say("{low} to {high}", low=words, high=self.y_words(near[-1]))
            said.append(f"{name} {words}")
        return f"{self.x_words(x)}: {', '.join(said)}" if said else ""

    def table(self) -> str:
        """All points as lines of tab-separated text."""
        rows = [f"curve\t{self.x_name}\t{self.y_name}\tlow\thigh"]
        for curve in self.curves:
            empty = np.full(curve.x.size, np.nan)
            low = empty if curve.low is None else curve.low
            high = empty if curve.high is None else curve.high
            columns = (self.x_values(curve.x), curve.y, low, high)
            for row in zip(*columns, strict=True):
                cells = ["" if np.isnan(value) else f"{value:.6g}" for value in row]
                rows.append("\t".join([curve.name, *cells]))
        return "\n".join(rows)


def _span(arrays: Sequence[Floats]) -> tuple[float, float]:
    known = [values[np.isfinite(values)] for values in arrays]
    known = [values for values in known if values.size]
    if not known:
        return 0.0, 1.0
    low = min(float(values.min()) for values in known)
    high = max(float(values.max()) for values in known)
    return (low, high) if high > low else (low - 0.5, high + 0.5)


def joined(curves: Sequence[Curve]) -> list[Curve]:
    """Lines of one name and ink as one with gaps, which is drawn several times as fast."""
    found: dict[object, list[Curve]] = {}
    for curve in curves:
        is_plain = curve.low is None and curve.ink is not Ink.DOTS
        found.setdefault((curve.name, curve.ink) if is_plain else curve, []).append(curve)
    gap = np.array([np.nan])
    return [
        one[0]
        if len(one) == 1
        else replace(
            one[0],
            x=np.concatenate([part for curve in one for part in (curve.x, gap)]),
            y=np.concatenate([part for curve in one for part in (curve.y, gap)]),
        )
        for one in found.values()
    ]
