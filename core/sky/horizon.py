"""What stands in the way: the skyline as pairs of azimuth and altitude."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.language import say

Floats = NDArray[np.float64]
Booleans = NDArray[np.bool_]

LOWEST_DEG, HIGHEST_DEG = -30.0, 90.0  # from a summit the skyline lies below the horizontal
_NUMBER = r"[+\-−]?\d+(?:[.,]\d+)?"
_PAIR = re.compile(rf"\s*({_NUMBER})\s*°?(?:\s*[,:/;\t]\s+|\s*[:/;\t]\s*|\s+)({_NUMBER})\s*°?\s*$")
_TIGHT_PAIR = re.compile(r"\s*([+\-−]?\d+(?:\.\d+)?)\s*,\s*([+\-−]?\d+(?:\.\d+)?)\s*$")


class UnusableHorizon(ValueError):
    """The message is a sentence for the person who typed or drew."""


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
        raise UnusableHorizon(
            say(
                "Line {number} of the horizon, “{line}”, is not an azimuth and an altitude; "
                "write two numbers in degrees, like 135 12.5.",
                number=number,
                line=line[:40],
            )
        )
    azimuth_deg, altitude_deg = (
        float(part.replace(",", ".").replace("−", "-")) for part in found.groups()
    )
    try:
        _check(azimuth_deg, altitude_deg)
    except UnusableHorizon as problem:
        raise UnusableHorizon(
            say("Line {number} of the horizon: {problem}", number=number, problem=problem)
        ) from None
    return azimuth_deg, altitude_deg


def _check(azimuth_deg: float, altitude_deg: float) -> None:
    if not 0.0 <= azimuth_deg <= 360.0:
        raise UnusableHorizon(
            say(
                "azimuth {azimuth:g}° is not between 0 and 360; count from north through east.",
                azimuth=azimuth_deg,
            )
        )
    if not LOWEST_DEG <= altitude_deg <= HIGHEST_DEG:
        raise UnusableHorizon(
            say(
                "altitude {altitude:g}° is not between {low:g} and {high:g}; the azimuth "
                "goes first, the altitude second.",
                altitude=altitude_deg,
                low=LOWEST_DEG,
                high=HIGHEST_DEG,
            )
        )
