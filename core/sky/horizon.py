"""What stands in the way: the skyline as pairs of azimuth and altitude."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.finding import Code, Refused


class Skyline(Code):
    """Why a point of the horizon cannot be taken."""

    NO_PAIR = "no pair"
    LINE = "line"
    AZIMUTH = "azimuth"
    ALTITUDE = "altitude"


Floats = NDArray[np.float64]
Booleans = NDArray[np.bool_]

LOWEST_DEG, HIGHEST_DEG = -30.0, 90.0  # from a summit the skyline lies below the horizontal
_NUMBER = r"[+\-−]?\d+(?:[.,]\d+)?"
_PAIR = re.compile(rf"\s*({_NUMBER})\s*°?(?:\s*[,:/;\t]\s+|\s*[:/;\t]\s*|\s+)({_NUMBER})\s*°?\s*$")
_TIGHT_PAIR = re.compile(r"\s*([+\-−]?\d+(?:\.\d+)?)\s*,\s*([+\-−]?\d+(?:\.\d+)?)\s*$")


class UnusableHorizon(Refused):
    """What was typed or drawn cannot be taken."""


@dataclass(frozen=True, eq=False)
class Horizon:
    """A skyline. `azimuth_deg` (n,), from north through east, in [0, 360), never falling.

    `altitude_deg` (n,) is where the sky begins. Between points the skyline is straight, round
    north too; two points of one azimuth are an upright edge. Without points it is flat at zero.
    """

    azimuth_deg: Floats
    altitude_deg: Floats

    @classmethod
    def flat(cls) -> Horizon:
        """Nothing in the way."""
        return cls(np.empty(0), np.empty(0))

    @classmethod
    def through(cls, points: Iterable[tuple[float, float]]) -> Horizon:
        """The skyline through (azimuth, altitude) points in any order. Raises UnusableHorizon."""
        pairs = [(float(azimuth), float(altitude)) for azimuth, altitude in points]
        for azimuth_deg, altitude_deg in pairs:
            _check(azimuth_deg, altitude_deg)
        # A point at 360 closes the circle from the west, so it stands before one at 0.
        pairs.sort(key=lambda pair: (pair[0] % 360.0, pair[0] != 360.0))
        columns = np.array(pairs, dtype=np.float64).reshape(-1, 2).T
        return cls(columns[0] % 360.0, columns[1])

    def limit_deg(self, azimuth_deg: ArrayLike) -> Floats:
        """Altitude at which the sky begins, shaped as `azimuth_deg` (any real angle)."""
        azimuth = np.mod(np.asarray(azimuth_deg, dtype=np.float64), 360.0)
        if self.azimuth_deg.size == 0:
            return np.zeros_like(azimuth)
        around = np.concatenate(
            [self.azimuth_deg[-1:] - 360.0, self.azimuth_deg, self.azimuth_deg[:1] + 360.0]
        )
        heights = np.concatenate([self.altitude_deg[-1:], self.altitude_deg, self.altitude_deg[:1]])
        return np.asarray(np.interp(azimuth, around, heights), dtype=np.float64)

    def is_clear(self, azimuth_deg: ArrayLike, altitude_deg: ArrayLike) -> Booleans:
        """Whether the sky is free there; the two broadcast. On the skyline itself it is not."""
        return np.asarray(np.asarray(altitude_deg) > self.limit_deg(azimuth_deg), dtype=np.bool_)

    def as_text(self) -> str:
        """One "azimuth altitude" a line, to a hundredth of a degree; `parse` reads it."""
        rows = zip(self.azimuth_deg, self.altitude_deg, strict=True)
        return "".join(f"{azimuth:.2f} {altitude:.2f}\n" for azimuth, altitude in rows)


def parse(text: str) -> Horizon:
    """The skyline from pairs, one a line or separated by "|". Raises UnusableHorizon.

    Two numbers a line, azimuth first, parted by a space, comma, semicolon, colon, slash or tab;
    decimal commas are understood where the parting is not a lone comma. What follows # is a remark.
    """
    points = []
    for number, line in enumerate(text.replace("|", "\n").splitlines(), start=1):
        plain = line.partition("#")[0].strip()
        if plain:
            points.append(_point(plain, number))
    return Horizon.through(points)


def _point(line: str, number: int) -> tuple[float, float]:
    found = _TIGHT_PAIR.match(line) or _PAIR.match(line)
    if found is None:
        raise UnusableHorizon(Skyline.NO_PAIR, number=number, line=line[:40])
    azimuth_deg, altitude_deg = (
        float(part.replace(",", ".").replace("−", "-")) for part in found.groups()
    )
    try:
        _check(azimuth_deg, altitude_deg)
    except UnusableHorizon as problem:
        raise UnusableHorizon(Skyline.LINE, number=number, problem=problem.finding) from None
    return azimuth_deg, altitude_deg


def _check(azimuth_deg: float, altitude_deg: float) -> None:
    if not 0.0 <= azimuth_deg <= 360.0:
        raise UnusableHorizon(Skyline.AZIMUTH, azimuth=azimuth_deg)
    if not LOWEST_DEG <= altitude_deg <= HIGHEST_DEG:
        raise UnusableHorizon(
            Skyline.ALTITUDE, altitude=altitude_deg, low=LOWEST_DEG, high=HIGHEST_DEG
        )


# Drawing a skyline: a stroke of the pen over a horizon gives a new horizon.

PEN_DEG = 5.0  # a touch of the pen raises at least so much of the skyline
_FINE_DEG = 0.5  # the hand is not steadier
_BESIDE_DEG = 1e-6


def redrawn(horizon: Horizon, stroke: Sequence[tuple[float, float]]) -> Horizon:
    """The horizon with the skyline along the stroke instead of what was there.

    `stroke`: (azimuth, altitude) in degrees in the order drawn, azimuths within 0 to 360 (a stroke
    does not cross north). Where it goes over the same azimuth again, the later counts. Altitudes
    are kept within 0 and 90. An empty stroke changes nothing.
    """
    if not stroke:
        return horizon
    azimuth_deg, altitude_deg = _heights(stroke)
    if azimuth_deg[-1] - azimuth_deg[0] >= 360.0:
        return Horizon.through(_thinned(azimuth_deg, altitude_deg))
    kept = _outside(horizon, azimuth_deg[0], azimuth_deg[-1])
    return Horizon.through([*kept, *_with_edges(horizon, azimuth_deg, altitude_deg)])


def raised(horizon: Horizon, azimuth_deg: float, step_deg: float) -> Horizon:
    """The horizon with one pen's width of skyline about that azimuth higher by a step."""
    altitude_deg = float(horizon.limit_deg(azimuth_deg)) + step_deg
    return redrawn(horizon, [(azimuth_deg % 360.0, altitude_deg)])


def _heights(stroke: Sequence[tuple[float, float]]) -> tuple[Floats, Floats]:
    """The stroke as rising azimuths, one a degree and its ends, and their altitudes."""
    azimuths = np.clip([point[0] for point in stroke], 0.0, 360.0)
    first = max(float(azimuths.min()) - PEN_DEG / 2.0, 0.0)
    last = min(float(azimuths.max()) + PEN_DEG / 2.0, 360.0)
    grid = np.unique(np.concatenate([[first, last], np.arange(np.ceil(first), last)]))
    heights = np.full(grid.size, float(np.clip(stroke[0][1], 0.0, HIGHEST_DEG)))
    for (start, low), (end, high) in zip(stroke, [*stroke[1:], stroke[-1]], strict=True):
        west, east = sorted((start, end))
        touched = (grid >= west - PEN_DEG / 2.0) & (grid <= east + PEN_DEG / 2.0)
        slope = [low, high] if start <= end else [high, low]
        heights[touched] = np.interp(grid[touched], [west, east + _BESIDE_DEG], slope)
    return grid, np.clip(heights, 0.0, HIGHEST_DEG)


def _outside(horizon: Horizon, first_deg: float, last_deg: float) -> list[tuple[float, float]]:
    pairs = zip(horizon.azimuth_deg.tolist(), horizon.altitude_deg.tolist(), strict=True)
    return [(azimuth, height) for azimuth, height in pairs if not first_deg <= azimuth <= last_deg]


def _with_edges(
    horizon: Horizon, azimuth_deg: Floats, altitude_deg: Floats
) -> list[tuple[float, float]]:
    """The stroke's points with an upright edge at either end down or up to the old skyline."""
    first, last = float(azimuth_deg[0]), float(azimuth_deg[-1])
    before = float(horizon.limit_deg(first - _BESIDE_DEG))
    after = float(horizon.limit_deg(last + _BESIDE_DEG))
    points = _thinned(azimuth_deg, altitude_deg)
    # Of two points at north, the one written 360 stands before the one written 0.
    return [(first or 360.0, before), *points, (0.0 if last == 360.0 else last, after)]


def _thinned(azimuth_deg: Floats, altitude_deg: Floats) -> list[tuple[float, float]]:
    """The fewest of the points whose straight joins stay within what a hand can draw."""
    keep, start, end = [0], 0, 2
    while end < azimuth_deg.size:
        between = slice(start, end + 1)
        ends = azimuth_deg[[start, end]], altitude_deg[[start, end]]
        straight = np.interp(azimuth_deg[between], *ends)
        if np.max(np.abs(straight - altitude_deg[between])) > _FINE_DEG:
            start = end - 1
            keep.append(start)
        end += 1
    keep.append(azimuth_deg.size - 1)
    return [(float(azimuth_deg[at]), round(float(altitude_deg[at]), 1)) for at in keep]
