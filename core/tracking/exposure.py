"""The longest exposure, as a chance against the length: unguided, trained, guided."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.alignment.budget.words import duration, pixels
from core.language import marked, say
from core.tracking.guideloop import Guiding, guided, step_for
from core.tracking.motion import Drive, Motion, motion
from core.tracking.periodic import PeriodicError
from core.tracking.progress import KeepGoing, ask
from core.tracking.run import Run, UnusableRun
from core.tracking.smear import STILL, SteadyDrift, Sums

Floats = NDArray[np.float64]

LENGTHS_S = np.geomspace(2.0, 1800.0, 40)


@dataclass(frozen=True)
class Limit:
    """Smear allowed: `part_px` of a pixel at an image scale."""

    scale_arcsec_per_px: float
    part_px: float = 0.5

    def __post_init__(self) -> None:
        """Asks for the scale where it is missing or cannot be, in a sentence."""
        if not 0.01 <= self.scale_arcsec_per_px <= 1000.0:
            raise UnusableRun(
                say(
                    "The image scale is not known; enter arcseconds per pixel (206.265 times "
                    "the pixel size in µm over the focal length in mm)."
                )
            )
        if not 0.01 <= self.part_px <= 100.0:
            raise UnusableRun(say("The smear allowed lies between 0.01 and 100 pixels."))

    @property
    def arcsec(self) -> float:
        """On the sky."""
        return self.part_px * self.scale_arcsec_per_px


@dataclass(frozen=True, eq=False)
class ChanceCurve:
    """Chance (n,) that an exposure begun at a random moment keeps the limit, with its 95 % band:
    how much the worm's turns differ, and how well the run tells drive and air apart.

    NaN beyond half the run. `longest_s`: the longest exposure of which nine in ten keep it, 0 when
    none does.
    """

    drive: Drive
    exposure_s: Floats
    chance: Floats
    low: Floats
    high: Floats
    longest_s: float
    sentence: str


SURE = 0.9
_HALF_WIDTH = 1.96  # of a 95 % interval, in standard deviations
_UNEVEN = 1.5  # times the shortest interval, but for one in ten at either end
_TITLES = {
    Drive.UNGUIDED: marked("Unguided"),
    Drive.TRAINED: marked("Trained"),
    Drive.GUIDED: marked("Guided"),
}


def chance_curves(
    result: PeriodicError,
    run: Run,
    limit: Limit,
    *,
    declination_deg: float,
    unguided_drift: SteadyDrift = STILL,
    guided_drift: SteadyDrift = STILL,
    guiding: Guiding | None = None,
    exposure_s: Sequence[float] | Floats = LENGTHS_S,
    keep_going: KeepGoing | None = None,
    drives: Sequence[Drive] = tuple(Drive),
) -> tuple[ChanceCurve, ...]:
    """Those of `drives`, the guided one only with `guiding`. Drifts: `polarpart.polar_part`.

    Guiding takes out the unguided drift and leaves the guided one, the turning of the field.
    """
    lengths = np.asarray(exposure_s, dtype=np.float64)
    wanted = [one for one in drives if guiding is not None or one is not Drive.GUIDED]
    curves = []
    for number, drive in enumerate(wanted):
        loop = guiding if drive is Drive.GUIDED else None
        step_s = 1.0 if loop is None else step_for(loop)
        sums = []
        for part, doubt in enumerate((0.0, -_HALF_WIDTH, _HALF_WIDTH)):
            ask(keep_going, (number + part / 3.0) / len(wanted))
            path = motion(
                *(result, run, drive), declination_deg=declination_deg, step_s=step_s, doubt=doubt
            )
            drift = unguided_drift
            if loop is not None:
                path, drift = guided(with_drift(path, unguided_drift), loop), guided_drift
            sums.append(Sums.of(path, drift))
        curve = _curve(sums, drive, lengths, limit)
        if loop is not None and _reads_seldom(run, loop):
            doubtful = say(
                "The run was read too seldom or too unevenly for a guider this quick, so that this "
                "may be too hopeful: record a run with a reading every second or two."
            )
            curve = replace(curve, sentence=f"{curve.sentence} {doubtful}")
        curves.append(curve)
    ask(keep_going, 1.0)
    return tuple(curves)


def _reads_seldom(run: Run, guiding: Guiding) -> bool:
    """Whether a guider works on motion that the run jumps over."""
    steps = np.diff(run.utc_s)
    is_uneven = float(np.quantile(steps, 0.9)) > _UNEVEN * float(np.quantile(steps, 0.1))
    return is_uneven or run.interval_s > guiding.interval_s


def with_drift(path: Motion, drift: SteadyDrift) -> Motion:
    """The steady drift laid into the motion, for a guider to take out again."""
    minutes = path.step_s / 60.0 * np.arange(path.east_arcsec.size)
    return Motion(
        path.step_s,
        path.east_arcsec + drift.east_arcsec_per_min * minutes,
        path.north_arcsec + drift.north_arcsec_per_min * minutes,
        path.breaks,
        path.turn,
    )


def _curve(sums: Sequence[Sums], drive: Drive, lengths: Floats, limit: Limit) -> ChanceCurve:
    """`sums`: of the motion as it is believed, then with as little and as much of the drive in it
    as may be. Its band: how much the worm's turns differ, and what cannot be told from the air.
    """
    best, *others = (
        [one.chance_within(float(length), limit.arcsec) for length in lengths] for one in sums
    )
    share, low, high = np.array([(one.share, one.low, one.high) for one in best]).T
    calmer, livelier = ([one.share for one in other] for other in others)
    low = share - np.hypot(share - low, np.maximum(share - livelier, 0.0))
    high = share + np.hypot(high - share, np.maximum(calmer - share, 0.0))
    low, high = np.maximum(low, 0.0), np.minimum(high, 1.0)
    longest_s = _longest(lengths, share)
    return ChanceCurve(
        drive,
        lengths,
        share,
        low,
        high,
        longest_s,
        _sentence(drive, lengths, share, longest_s, limit),
    )


def _longest(lengths: Floats, share: Floats) -> float:
    """Where the chance first falls below nine in ten, between two lengths computed."""
    known = np.isfinite(share)
    lengths, share = lengths[known], share[known]
    if share.size == 0 or share[0] < SURE:
        return 0.0
    below = np.flatnonzero(share < SURE)
    if below.size == 0:
        return float(lengths[-1])
    at = int(below[0])
    part = (share[at - 1] - SURE) / (share[at - 1] - share[at])
    return float(np.exp(np.log(lengths[at - 1]) + part * np.log(lengths[at] / lengths[at - 1])))


def _sentence(drive: Drive, lengths: Floats, share: Floats, longest_s: float, limit: Limit) -> str:
    known = lengths[np.isfinite(share)]
    what, allowed = say(_TITLES[drive]), pixels(limit.part_px)
    if known.size == 0:
        return say("{what}: the run is too short to say; track longer.", what=what)
    if longest_s == 0.0:
        return say(
            "{what}: no exposure of {length} or more keeps {allowed} surely.",
            what=what,
            length=duration(float(known[0])),
            allowed=allowed,
        )
    if longest_s >= known[-1]:
        return say(
            "{what}: nine in ten exposures keep {allowed} up to {length}, as far as this "
            "run can tell.",
            what=what,
            allowed=allowed,
            length=duration(longest_s),
        )
    return say(
        "{what}: nine in ten exposures of {length} keep {allowed}.",
        what=what,
        length=duration(longest_s),
        allowed=allowed,
    )
