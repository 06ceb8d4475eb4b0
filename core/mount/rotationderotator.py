"""What a field derotator has to do for one target, and whether its limits hold."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.language import say
from core.mount.rotationtrack import Track

Floats = NDArray[np.float64]

HALF_TURN_DEG = 180.0  # a rectangular frame turned by this covers the same field again


@dataclass(frozen=True)
class Derotator:
    """A derotator's stops and speed. Angles grow the way the parallactic angle does."""

    lowest_deg: float
    highest_deg: float
    fastest_deg_per_s: float

    @property
    def range_deg(self) -> float:
        return self.highest_deg - self.lowest_deg


@dataclass(frozen=True, eq=False)
class Derotation:
    """The derotator's angle along the track, (n,), rewinds included; begins where they are fewest.

    `rewind_utc_s`: moments by which it must have been turned back by half turns, since the next
    reading would lie beyond a stop. `too_fast_utc_s`: first and last moment at which the field
    turns faster than it can; None if it never does. `holds`: neither happens.
    """

    angle_deg: Floats
    rate_deg_per_hour: Floats
    start_deg: float
    needed_range_deg: float
    fastest_deg_per_s: float
    rewind_utc_s: tuple[float, ...]
    too_fast_utc_s: tuple[float, float] | None

    @property
    def holds(self) -> bool:
        return not self.rewind_utc_s and self.too_fast_utc_s is None

    @property
    def sentence(self) -> str:
        """Whether its limits hold, for the person."""
        if self.holds:
            return say(
                "The field turns through {turn:.0f}° on this track; the derotator manages it from "
                "{start:.0f}° in one go.",
                turn=self.needed_range_deg,
                start=self.start_deg,
            )
        return say(
            "The field turns through {turn:.0f}° on this track; {troubles}. Stop the exposure for "
            "that time.",
            turn=self.needed_range_deg,
            troubles=say(" and ").join(self._troubles()),
        )

    def _troubles(self) -> Iterator[str]:
        times = len(self.rewind_utc_s)
        if times == 1:
            yield say("it must be turned back by half a turn once")
        elif times > 1:
            yield say("it must be turned back by half a turn {times} times", times=times)
        if self.too_fast_utc_s is not None:
            minutes = (self.too_fast_utc_s[1] - self.too_fast_utc_s[0]) / 60.0
            yield say(
                "near the zenith the field turns at up to {speed:.2f}° a second, faster than it "
                "can, for {minutes:.0f} min",
                speed=self.fastest_deg_per_s,
                minutes=max(minutes, 1.0),
            )


def derotation(track: Track, derotator: Derotator) -> Derotation:
    """What is needed for the whole track. Raises ValueError, a sentence, for impossible limits."""
    if not (derotator.range_deg >= HALF_TURN_DEG and derotator.fastest_deg_per_s > 0.0):
        raise ValueError(
            say(
                "A derotator with {range:.0f}° between its stops cannot be used: it needs at "
                "least 180°, and a speed above zero. Correct its limits.",
                range=derotator.range_deg,
            )
        )
    field = track.field_angle_deg - track.field_angle_deg[0]
    start = _best_start_deg(field, derotator)
    angle, rewinds = _within_stops(start + field, derotator)
    speed = np.abs(track.rate_deg_per_hour) / 3600.0
    fast = track.utc_s[speed > derotator.fastest_deg_per_s]
    return Derotation(
        *(angle, track.rate_deg_per_hour, start, float(np.ptp(field)), float(np.max(speed))),
        tuple(track.utc_s[rewinds].tolist()),
        (float(fast[0]), float(fast[-1])) if fast.size else None,
    )


def _best_start_deg(field_deg: Floats, derotator: Derotator) -> float:
    """In the middle of what fits; at the stop that leaves the longest way when not all does."""
    if np.ptp(field_deg) <= derotator.range_deg:
        spare = derotator.range_deg - np.ptp(field_deg)
        return float(derotator.lowest_deg - np.min(field_deg) + 0.5 * spare)
    return derotator.lowest_deg if field_deg[-1] >= field_deg[0] else derotator.highest_deg


def _within_stops(wanted_deg: Floats, derotator: Derotator) -> tuple[Floats, list[int]]:
    """The angles with half turns taken off where a stop is in the way, and where that begins."""
    angle, shift, rewinds = np.empty_like(wanted_deg), 0.0, []
    for index, wanted in enumerate(wanted_deg.tolist()):
        turns = _half_turns(wanted + shift, derotator)
        if turns != 0.0:
            shift += turns
            rewinds.append(index)
        angle[index] = wanted + shift
    return angle, rewinds


def _half_turns(angle_deg: float, derotator: Derotator) -> float:
    """What to add, in half turns, to come back as far from the stop as the range allows."""
    above, below = angle_deg - derotator.highest_deg, derotator.lowest_deg - angle_deg
    most = HALF_TURN_DEG * (derotator.range_deg // HALF_TURN_DEG)
    if above > 0.0:
        return -max(most, HALF_TURN_DEG * float(np.ceil(above / HALF_TURN_DEG)))
    if below > 0.0:
        return max(most, HALF_TURN_DEG * float(np.ceil(below / HALF_TURN_DEG)))
    return 0.0
