"""How much exposures started at every moment smear, and the chance that one stays within a limit.

The smear of an exposure is the length of an even, straight trail whose light spreads as far: √12
times the standard deviation of the star's place along the direction where it is largest. For a
steady drift it is the length of the trail itself.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray
from scipy.special import stdtrit

from core.alignment.drift.geometry import offsets_arcsec
from core.finding import Code, Finding
from core.imaging.task import Exposures, Task, Vantage
from core.imaging.tolerance import Alignment, smear_curve
from core.tracking.motion import Drive, Guiding, Motion, guided, motion, step_for
from core.tracking.periodic import PeriodicError
from core.tracking.run import Run, UnusableRun
from core.tracking.wormperiod import KeepGoing, ask
from core.units import ARCSEC_PER_RAD, SIDEREAL_RATE_RAD_PER_S


class ChanceTold(Code):
    """What is told of it."""

    CURVE = "curve"
    READ_SELDOM = "read seldom"


class Exposure(Code):
    """What is told of chances, and why they cannot be."""

    NO_SCALE = "no scale"
    LIMIT = "limit"


Floats = NDArray[np.float64]

_FEWEST_STARTS = 8


@dataclass(frozen=True)
class Chance:
    """Share of starting moments, and its 95 % interval from how much the worm's turns differ.

    NaN where the run is too short for such exposures.
    """

    share: float
    low: float
    high: float


@dataclass(frozen=True)
class SteadyDrift:
    """Drift of the polar axis error on the sky, arcsec a minute, and what turning of the field
    adds in one exposure at the corner, arcsec a minute of exposure."""

    east_arcsec_per_min: float = 0.0
    north_arcsec_per_min: float = 0.0
    corner_arcsec_per_min: float = 0.0


STILL = SteadyDrift()


@dataclass(frozen=True, eq=False)
class Sums:
    """Running sums (5, n + 1) of a motion's moments, once for all lengths of exposure: east, north,
    their squares and their product, integrated along the broken line between the steps.
    """

    motion: Motion
    drift: SteadyDrift
    total: Floats

    @classmethod
    def of(cls, motion: Motion, drift: SteadyDrift = STILL) -> Sums:
        """The steady drift is added to the motion."""
        elapsed_min = motion.step_s / 60.0 * np.arange(motion.east_arcsec.size)
        east = motion.east_arcsec + drift.east_arcsec_per_min * elapsed_min
        north = motion.north_arcsec + drift.north_arcsec_per_min * elapsed_min
        east, north = east - east.mean(), north - north.mean()
        total = np.zeros((5, east.size))
        for row, values in enumerate((east, north)):
            np.cumsum(0.5 * (values[1:] + values[:-1]), out=total[row, 1:])
        for row, (one, other) in enumerate(((east, east), (north, north), (east, north)), start=2):
            # The product of two lines between two steps integrates to the trapezoid less a sixth
            # of the product of their differences.
            trapezoid = 0.5 * (one[1:] * other[1:] + one[:-1] * other[:-1])
            np.cumsum(trapezoid - np.diff(one) * np.diff(other) / 6.0, out=total[row, 1:])
        return cls(motion, drift, total)

    def smears_arcsec(self, exposure_s: float) -> tuple[Floats, NDArray[np.intp]]:
        """Smears (s,) of exposures begun at every step, and the first step (s,) of each.

        The corner's part joins at right angles, as it points in every direction somewhere on the
        field.
        """
        steps = max(round(exposure_s / self.motion.step_s), 1)
        starts = _starts(self.motion, steps)
        if starts.size == 0:
            return np.empty(0), starts
        variance = _largest_variance(self._windows(starts, steps))
        corner = self.drift.corner_arcsec_per_min * exposure_s / 60.0
        return np.sqrt(12.0 * variance + corner**2), starts

    def chance_within(self, exposure_s: float, limit_arcsec: float) -> Chance:
        """Chance that an exposure begun at a random moment smears no more than the limit."""
        smears, starts = self.smears_arcsec(exposure_s)
        if smears.size < _FEWEST_STARTS or exposure_s > 0.5 * self.motion.duration_s:
            return Chance(float("nan"), float("nan"), float("nan"))
        good = smears <= limit_arcsec
        share = float(good.mean())
        half = _half_width(good, self.motion.turn[starts])
        return Chance(share, max(share - half, 0.0), min(share + half, 1.0))

    def _windows(self, starts: NDArray[np.intp], steps: int) -> tuple[Floats, Floats, Floats]:
        """Variances east and north and covariance (s,) within each exposure."""
        mean = (self.total[:, starts + steps] - self.total[:, starts]) / steps
        east, north = mean[0], mean[1]
        return mean[2] - east**2, mean[3] - north**2, mean[4] - east * north


def smears_arcsec(
    motion: Motion, exposure_s: float, drift: SteadyDrift = STILL
) -> tuple[Floats, NDArray[np.intp]]:
    """As `Sums.smears_arcsec`, for a single length."""
    return Sums.of(motion, drift).smears_arcsec(exposure_s)


def chance_within(
    motion: Motion, exposure_s: float, limit_arcsec: float, drift: SteadyDrift = STILL
) -> Chance:
    """As `Sums.chance_within`, for a single length."""
    return Sums.of(motion, drift).chance_within(exposure_s, limit_arcsec)


def _starts(motion: Motion, steps: int) -> NDArray[np.intp]:
    """Steps from which a whole exposure fits before the next break."""
    size = motion.east_arcsec.size
    ends = np.asarray((*motion.breaks, size))
    first = np.asarray((0, *motion.breaks))
    parts = [np.arange(low, high - steps) for low, high in zip(first, ends, strict=True)]
    return np.concatenate(parts).astype(np.intp)


def _largest_variance(moments: tuple[Floats, Floats, Floats]) -> Floats:
    east, north, both = moments
    half = 0.5 * (east + north)
    root = np.hypot(0.5 * (east - north), both)
    return np.asarray(np.maximum(half + root, 0.0))


def _half_width(good: NDArray[np.bool_], turn: NDArray[np.intp]) -> float:
    """95 % half-width of a share: the scatter of the turns' own shares; 1 below two turns."""
    number = turn - turn.min()
    count = np.bincount(number)
    share = np.bincount(number, good) / np.maximum(count, 1)
    weight = count / count.sum()
    full = count >= 0.5 * count.max()
    turns = int(full.sum())
    if turns < 2:
        return 1.0
    mean = float(weight @ share)
    spread = float(np.sum(weight[full] * (share[full] - mean) ** 2) / weight[full].sum())
    return float(stdtrit(turns - 1, 0.975) * np.sqrt(spread / (turns - 1)))


# The longest exposure, as a chance against the length: unguided, trained, guided.

LENGTHS_S = np.geomspace(2.0, 1800.0, 40)


@dataclass(frozen=True)
class Limit:
    """Smear allowed: `part_px` of a pixel at an image scale."""

    scale_arcsec_per_px: float
    part_px: float = 0.5

    def __post_init__(self) -> None:
        """Asks for the scale where it is missing or cannot be, in a sentence."""
        if not 0.01 <= self.scale_arcsec_per_px <= 1000.0:
            raise UnusableRun(Exposure.NO_SCALE)
        if not 0.01 <= self.part_px <= 100.0:
            raise UnusableRun(Exposure.LIMIT)

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
    sentence: Finding


SURE = 0.9
_HALF_WIDTH = 1.96  # of a 95 % interval, in standard deviations
_UNEVEN = 1.5  # times the shortest interval, but for one in ten at either end


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
            doubtful = Finding.of(ChanceTold.READ_SELDOM, curve=curve.sentence)
            curve = replace(curve, sentence=doubtful)
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
        Finding.of(
            ChanceTold.CURVE,
            drive=drive,
            lengths=lengths,
            share=share,
            longest_s=longest_s,
            limit=limit,
        ),
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


# The part of the smear that belongs to the polar axis, from the budget's own exact trails.

_PROBE_S = 60.0


def polar_part(task: Task, vantage: Vantage, alignment: Alignment) -> SteadyDrift:
    """Steady drift for the exposures of `task`, the worst of its span of hour angles.

    Unguided, the centre of the field drifts east and north; guided, the field turns about the guide
    star and the farthest corner moves. Raises `UnusableTask` when the target is not up.
    """
    probe = replace(task, exposure_s=min(task.exposure_s, 5.0 * _PROBE_S))
    if task.is_guided:
        curve = smear_curve(probe, vantage, alignment.axis_rad, [probe.exposure_s])
        corner_arcsec = float(curve.corner_px[0]) * task.optics.scale_arcsec_per_px
        return SteadyDrift(corner_arcsec_per_min=corner_arcsec * 60.0 / probe.exposure_s)
    return _centre_drift(probe, vantage, alignment)


def _centre_drift(task: Task, vantage: Vantage, alignment: Alignment) -> SteadyDrift:
    exposures = Exposures.over_span(task, vantage)
    axis = alignment.axis_rad
    turn = SIDEREAL_RATE_RAD_PER_S * task.exposure_s
    drifts = []
    for start in exposures.hour_angle_rad.tolist():
        north, east = offsets_arcsec(
            np.array([start, start + turn]),
            float(exposures.declination_rad[0]),
            vantage.latitude_rad,
            float(axis[0]),
            float(axis[1]),
            vantage.refraction,
        )
        # A mount run at another rate falls behind the stars: they are seen to move west.
        lag = (
            (task.tracking_rate - 1.0)
            * turn
            * ARCSEC_PER_RAD
            * np.cos(exposures.declination_rad[0])
        )
        drifts.append((float(east[1]) + float(lag), float(north[1])))
    worst = max(drifts, key=lambda drift: float(np.hypot(*drift)))
    per_minute = 60.0 / task.exposure_s
    return SteadyDrift(worst[0] * per_minute, worst[1] * per_minute)
