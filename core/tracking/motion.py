"""Where the mount points beside the star from moment to moment, freed of the air: what smears."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import uniform_filter1d

from core.language import say
from core.tracking.periodic import PeriodicError
from core.tracking.run import Run, UnusableRun
from core.tracking.wander import between_readings, drives_own

Floats = NDArray[np.float64]

_SMOOTH_SHARE = 1.0 / 32.0  # of the worm's turn: slow enough to calm the air, fast for harmonics
_MOST_STEPS = 60_000


class Drive(Enum):
    """How the drive is run."""

    UNGUIDED = "unguided"
    TRAINED = "trained"
    GUIDED = "guided"


@dataclass(frozen=True, eq=False)
class Motion:
    """Evenly spaced offsets of the star on the sky; arrays (n,), arcsec, east and north.

    `breaks`: indices at which a new stretch begins; no exposure reaches over one. `turn` (n,): the
    worm's turn each moment belongs to.
    """

    step_s: float
    east_arcsec: Floats
    north_arcsec: Floats
    breaks: tuple[int, ...]
    turn: NDArray[np.intp]

    @property
    def duration_s(self) -> float:
        """The whole length, breaks included."""
        return self.step_s * (self.east_arcsec.size - 1)


def motion(
    result: PeriodicError,
    run: Run,
    drive: Drive,
    *,
    declination_deg: float | None = None,
    step_s: float = 1.0,
    doubt: float = 0.0,
) -> Motion:
    """The drive's own motion seen at a declination (None: the run's star); no axis drift in it.

    The changing part is the run's residual, less what the air does in it. TRAINED leaves it alone,
    widened by what a mean of so many turns cannot know. GUIDED starts from UNGUIDED: the guiding
    acts on it in `core.tracking.guideloop`. The drive's steady drift beyond the axis model is in
    all of them; while the axis is unknown it holds the axis drift too. `doubt`: by how many
    standard deviations of what tells it from the air the changing part is taken stronger.
    """
    dec = result.declination_deg if declination_deg is None else declination_deg
    step_s = max(step_s, (result.utc_s[-1] - result.utc_s[0]) / _MOST_STEPS)
    times, breaks = _grid(result, step_s)
    lead = _changing(result, run, times, doubt)
    if drive is Drive.TRAINED:
        lead = lead * _unseen_turns(result.turns)
    else:
        lead = lead + result.curve_arcsec(times)
    lead = lead + result.drift_arcsec_per_min / 60.0 * (times - times[0])
    turn = np.floor((times - result.epoch_utc_s) / result.period_s).astype(np.intp)
    east = lead * math.cos(math.radians(dec))
    return Motion(step_s, east, np.zeros_like(east), breaks, turn)


def _unseen_turns(turns: float) -> float:
    """Residual about a mean over n turns is √(1−1/n) of the scatter; a new turn's is √(1+1/n)."""
    if turns < 2.0:
        raise UnusableRun(
            say("What training would leave cannot be told from fewer than two turns.")
        )
    return math.sqrt((turns + 1.0) / (turns - 1.0))


def _grid(result: PeriodicError, step_s: float) -> tuple[Floats, tuple[int, ...]]:
    """Times (n,) over all stretches laid end to end, and where each begins."""
    parts, breaks, size = [], [], 0
    for piece in range(int(result.piece[-1]) + 1):
        inside = result.utc_s[result.piece == piece]
        if inside.size < 2 or inside[-1] - inside[0] < 2.0 * step_s:
            continue
        times = np.arange(inside[0], inside[-1], step_s)
        parts.append(times)
        breaks.append(size)
        size += times.size
    return np.concatenate(parts), tuple(breaks[1:])


def _changing(result: PeriodicError, run: Run, times: Floats, doubt: float) -> Floats:
    """The part that does not repeat (n,), without the air.

    Where the air cannot be told from the drive a running mean calms it.
    """
    own = None
    if run.north_arcsec is not None:
        air = np.interp(result.utc_s, run.utc_s, _air_arcsec(run))
        own = drives_own(
            result.utc_s, result.residual_arcsec, air, result.piece, run.interval_s, doubt
        )
    if own is None:
        calm = _calmed(result.utc_s, result.residual_arcsec, _SMOOTH_SHARE * result.period_s)
        return np.interp(times, result.utc_s, calm)
    between = between_readings(times, result.utc_s, own, result.piece)
    return np.asarray(np.interp(times, result.utc_s, own) + between)


def _air_arcsec(run: Run) -> Floats:
    """What the air does (n,), as a lead of the drive: the north offsets less a curved trend."""
    assert run.north_arcsec is not None
    minutes = (run.utc_s - run.utc_s[0]) / 60.0
    order = min(4, 1 + int(run.duration_s // 3600.0))
    trend = np.polyval(np.polyfit(minutes, run.north_arcsec, order), minutes)
    return np.asarray((run.north_arcsec - trend) / run.cos_declination)


def _calmed(utc_s: Floats, values: Floats, window_s: float) -> Floats:
    """Running mean (n,) over a span of time, readings taken as even."""
    width = max(round(window_s / float(np.median(np.diff(utc_s)))), 1)
    return np.asarray(uniform_filter1d(values, width, mode="nearest"))
