"""Where the stars of a field are seen during exposures, before any mount enters."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import cast

import numpy as np
from numpy.typing import NDArray

from core.alignment.budget.task import LOWEST_ALTITUDE_DEG as LOWEST
from core.alignment.budget.task import Task, UnusableTask, Vantage
from core.alignment.geometry import SIDEREAL_RATE_RAD_PER_S, observed_direction
from core.language import say

Floats = NDArray[np.float64]

DIRECTIONS = 7  # round the field; where trails vary smoothly with it the rest is interpolated
INSTANTS = 5
_EXPOSURES = 13  # looked at within a span of hour angles


@dataclass(frozen=True, eq=False)
class Exposures:
    """Exposures to judge: hour angle at the beginning, declination, duration; each (n,)."""

    hour_angle_rad: Floats
    declination_rad: Floats
    duration_s: Floats

    @classmethod
    def over_span(cls, task: Task, vantage: Vantage) -> Exposures:
        """Evenly over the target's span, those that stay above 10°; UnusableTask if none does."""
        target = task.target
        first, last = np.deg2rad([target.first_hour_angle_deg, target.last_hour_angle_deg])
        start = np.linspace(first, max(first, last - task.exposure_turn_rad), _EXPOSURES)
        start = start[:1] if start[-1] == start[0] else start
        declination = float(np.deg2rad(target.declination_deg))
        up = start[_stays_up(start, declination, task.exposure_turn_rad, vantage)]
        if up.size == 0:
            raise UnusableTask(
                say(
                    "At declination {declination:g}° the target is never above {lowest:g}° "
                    "for a whole exposure between hour angles {first:g}° and {last:g}°; "
                    "choose other hours, or check the latitude.",
                    declination=target.declination_deg,
                    lowest=LOWEST,
                    first=target.first_hour_angle_deg,
                    last=target.last_hour_angle_deg,
                )
            )
        return cls(up, np.full_like(up, declination), np.full_like(up, task.exposure_s))

    @property
    def turn_rad(self) -> Floats:
        """How far the sky turns in each, (n,)."""
        return SIDEREAL_RATE_RAD_PER_S * self.duration_s

    def some(self, chosen: NDArray[np.bool]) -> Exposures:
        """Those that are `chosen` (n,)."""
        return Exposures(
            self.hour_angle_rad[chosen], self.declination_rad[chosen], self.duration_s[chosen]
        )


def _stays_up(start: Floats, declination: float, turn: float, vantage: Vantage) -> NDArray[np.bool]:
    """Whether each exposure begins and ends high enough."""
    ends = np.stack([start, start + turn])
    seen = observed_direction(ends, declination, vantage.latitude_rad, vantage.refraction)
    return np.asarray((seen[..., 2] >= np.sin(np.deg2rad(LOWEST))).all(axis=0))


@dataclass(frozen=True, eq=False)
class SeenField:
    """Unit vectors north, east, up: `centre` (n, 1, k, 3), `corner` and `guide` (n, m, k, 3).

    n exposures, m directions round the field, k instants of an exposure. The corner lies half a
    diagonal from the centre, the guide star on the other side of it; how the sensor is turned and
    where the guide star stands is left open, so that the worst of all directions can be taken.
    `turn_rad` (n, 1, k): how far the sky has turned. `guide` is None when unguided. `is_smooth`:
    the directions are placed so that trails between them may be interpolated evenly.
    """

    centre: Floats
    corner: Floats
    guide: Floats | None
    turn_rad: Floats
    is_smooth: bool = True

    def joined(self, other: SeenField) -> SeenField:
        """With the directions of another field of the same exposures, both guided."""
        assert self.guide is not None
        assert other.guide is not None
        corner = np.concatenate([self.corner, other.corner], axis=1)
        return replace(self, corner=corner, guide=np.concatenate([self.guide, other.guide], axis=1))


def seen_field(
    exposures: Exposures,
    task: Task,
    vantage: Vantage,
    guide_rad: Floats | None = None,
    instants: int = INSTANTS,
) -> SeenField:
    """The field of `task` during `exposures`; their durations count, not the task's.

    `guide_rad` (n, m): directions in which the guide star stands, from north through east; evenly
    all round when None.
    """
    even = np.arange(DIRECTIONS)[np.newaxis] * (2.0 * np.pi / DIRECTIONS)
    around = even if guide_rad is None else guide_rad
    turn = exposures.turn_rad[:, np.newaxis, np.newaxis] * np.linspace(0.0, 1.0, instants)
    guide = np.stack([np.cos(around), np.sin(around)])
    return SeenField(
        _seen(exposures, np.zeros((2, 1, 1)), turn, vantage),
        _seen(exposures, -np.tan(task.optics.half_diagonal_rad) * guide, turn, vantage),
        _seen(exposures, np.tan(task.guide_star_offset_rad) * guide, turn, vantage)
        if task.is_guided
        else None,
        turn,
    )


def _seen(exposures: Exposures, tangent: Floats, turn: Floats, vantage: Vantage) -> Floats:
    """Directions (n, m, k, 3) of stars at tangent-plane places (2, n or 1, m), north and east.

    Inverse of the gnomonic projection: Smart, Spherical Astronomy (1977), section 161; from memory.
    """
    north, east = tangent[..., np.newaxis]
    centre = exposures.declination_rad[:, np.newaxis, np.newaxis]
    outward = np.cos(centre) - north * np.sin(centre)
    behind = np.arctan2(east, outward)
    declination = np.arctan2(np.sin(centre) + north * np.cos(centre), np.hypot(outward, east))
    hour_angle = exposures.hour_angle_rad[:, np.newaxis, np.newaxis] - behind + turn
    hour_angle, declination = np.broadcast_arrays(hour_angle, declination)
    as_one = cast(float, declination)  # it takes an array of declinations as well as one
    return observed_direction(hour_angle, as_one, vantage.latitude_rad, vantage.refraction)
