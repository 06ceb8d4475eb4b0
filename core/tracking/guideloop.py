"""What guiding leaves of a motion: measured now and then, corrected late, by a share."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.language import say
from core.tracking.motion import Motion
from core.tracking.run import UnusableRun

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Guiding:
    """`interval_s`: from one measurement to the next, its exposure included; `delay_s`: from the
    middle of a measurement to its correction; `share`: of the offset corrected each time;
    `noise_arcsec`: error of one measurement per axis, what the air moves the guide star.
    """

    interval_s: float
    delay_s: float
    share: float = 0.6
    noise_arcsec: float = 0.3

    def __post_init__(self) -> None:
        """Refuses settings no guider has, in a sentence."""
        if not 0.05 <= self.interval_s <= 600.0:
            raise UnusableRun(
                say(
                    "A guide interval of {interval:g} s cannot be; enter seconds, usually 1 to 10.",
                    interval=self.interval_s,
                )
            )
        if not 0.0 <= self.delay_s <= 10.0 * self.interval_s:
            raise UnusableRun(
                say(
                    "A guide delay of {delay:g} s does not fit an interval of {interval:g} s; "
                    "enter both in seconds (milliseconds taken for seconds?).",
                    delay=self.delay_s,
                    interval=self.interval_s,
                )
            )
        if not 0.0 < self.share < 2.0 or not self.noise_arcsec >= 0.0:
            raise UnusableRun(
                say(
                    "The share corrected each time lies above 0 and below 2 (above 1 it "
                    "overshoots), and the measurement noise is not negative."
                )
            )


def step_for(guiding: Guiding) -> float:
    """A step of time, seconds, fine enough to follow the loop."""
    return min(1.0, guiding.interval_s / 4.0)


def guided(motion: Motion, guiding: Guiding, seed: int = 1) -> Motion:
    """The motion with the corrections in it. The same `seed` draws the same measurement noise."""
    rng = np.random.default_rng(seed)
    every = max(round(guiding.interval_s / motion.step_s), 1)
    late = round(guiding.delay_s / motion.step_s)
    path = np.stack([motion.east_arcsec, motion.north_arcsec], axis=-1)
    starts = (0, *motion.breaks)
    ends = (*motion.breaks, path.shape[0])
    parts = [
        _loop(path[start:end], every, late, guiding, rng)
        for start, end in zip(starts, ends, strict=True)
    ]
    east, north = np.concatenate(parts).T
    return replace(motion, east_arcsec=east.copy(), north_arcsec=north.copy())


def _loop(
    path: Floats, every: int, late: int, guiding: Guiding, rng: np.random.Generator
) -> Floats:
    """One stretch (n, 2): mean over each interval measured, corrected `late` steps after it."""
    size = path.shape[0]
    before = np.concatenate([np.zeros((1, 2)), np.cumsum(path - path[0], axis=0)])
    noise = guiding.noise_arcsec * rng.standard_normal((size // every + 1, 2))
    applied = np.zeros((size, 2))
    level = np.zeros(2)
    pending: list[tuple[int, Floats]] = []
    for number, start in enumerate(range(0, size, every)):
        end = min(start + every, size)
        at = start
        while pending and pending[0][0] < end:
            due, step = pending.pop(0)
            applied[at : max(due, at)] = level
            at, level = max(due, at), level + step
        applied[at:end] = level
        moved = (before[end] - before[start]) / (end - start) - applied[start:end].mean(axis=0)
        middle = (start + end) // 2
        pending.append((max(middle + late, end), guiding.share * (moved + noise[number])))
    return np.asarray(path - path[0] - applied)
