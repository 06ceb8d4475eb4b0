"""How much longer to watch the star until the ± is small enough."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

import numpy as np
from numpy.typing import NDArray

from core.alignment.axis.evidence import PriorAxis
from core.alignment.axis.legrate import LegTrend
from core.alignment.axis.singlestar import second_star
from core.alignment.axis.solution import Solution
from core.alignment.drift.geometry import hemisphere_sign
from core.alignment.drift.nuisances import slow_rate_variance
from core.alignment.goal import NORMAL_95, Reached, reached
from core.alignment.guide.bolts import TurnAccuracy
from core.alignment.guide.nextstar import flexure_arcmin
from core.alignment.priors import Priors
from core.finding import Code, Finding


class Outlook(Code):
    """How long to watch on."""

    CONTRADICTION = "contradiction"
    ENOUGH = "enough"
    FLEXURE = "flexure"
    WATCH_ON = "watch on"
    MINUTES = "minutes"
    A_MINUTE = "a minute"
    OTHER_STAR = "other star"


Floats = NDArray[np.float64]

_LONGEST_MIN = 60.0  # beyond an hour the star has moved on and the air has changed
_TOLERANCE_MIN = 0.1
_COVERAGE = 1.96


@dataclass(frozen=True)
class Forecast:
    """Minutes more on the watched star; `None` where it alone will not do."""

    minutes: float | None
    outlook: Finding


def minutes_left(solution: Solution, watching_label: str | None, target_arcmin: float) -> Forecast:
    """Minutes until both 95 % half-widths on the sky are within `target_arcmin`.

    What a leg knows of the axis grows with the cube of its length at constant noise, and slower
    where slow motions set its error; the change of its hour angle meanwhile is left out, which errs
    to the safe side.
    """
    labels = [leg.label for leg in solution.legs]
    if solution.is_contradictory:
        return Forecast(None, Finding.of(Outlook.CONTRADICTION))
    half_width = _half_width_arcmin(
        solution, sum(solution.information_arcmin2, solution.before_information_arcmin2)
    )
    if half_width <= target_arcmin:
        return Forecast(0.0, Finding.of(Outlook.ENOUGH, target=target_arcmin))
    least = _COVERAGE * flexure_arcmin(solution.priors, solution.latitude_deg)
    if least >= target_arcmin:
        return Forecast(
            None,
            Finding.of(
                Outlook.FLEXURE,
                flexure=solution.priors.flexure_arcsec_per_g,
                least=least,
                target=target_arcmin,
            ),
        )
    if watching_label not in labels:
        return Forecast(None, Finding.of(Outlook.WATCH_ON, target=target_arcmin))
    watched = labels.index(watching_label)
    minutes = _minutes(solution, watched, target_arcmin)
    if minutes is None:
        return Forecast(None, _other_star(solution, watched))
    code = Outlook.A_MINUTE if minutes < 1.5 else Outlook.MINUTES
    return Forecast(minutes, Finding.of(code, minutes=minutes, target=target_arcmin))


def _half_width_arcmin(solution: Solution, information: Floats) -> float:
    """The larger of the two 95 % half-widths on the sky; infinite where nothing is known."""
    eigenvalues = np.linalg.eigvalsh(information)
    if eigenvalues[0] <= 1e-12 * max(eigenvalues[1], 1e-300):
        return float("inf")
    flexure = flexure_arcmin(solution.priors, solution.latitude_deg)
    sigma = np.sqrt(np.diag(np.linalg.inv(information)) + flexure**2)
    factors = np.array([solution.azimuth_interval_factor, solution.altitude_interval_factor])
    return float((factors * sigma).max())


def _minutes(solution: Solution, watched: int, target_arcmin: float) -> float | None:
    parts: Sequence[Floats] = solution.information_arcmin2
    others = sum(
        (part for i, part in enumerate(parts) if i != watched), solution.before_information_arcmin2
    )
    leg = solution.legs[watched]

    def half_width(extra_min: float) -> float:
        growth = 1.0 / _variance_left(leg, leg.minutes + extra_min, solution.priors)
        return _half_width_arcmin(solution, others + growth * parts[watched])

    low, high = 0.0, _LONGEST_MIN
    if half_width(high) > target_arcmin:
        return None
    while high - low > _TOLERANCE_MIN:
        middle = 0.5 * (low + high)
        low, high = (middle, high) if half_width(middle) > target_arcmin else (low, middle)
    return high


def _variance_left(leg: LegTrend, minutes: float, priors: Priors) -> float:
    """The share of the variance of its rate that a leg keeps when it is watched for so long."""
    slow, slow_now = (
        float(slow_rate_variance(one, priors, bool(np.isfinite(leg.angle_deg))))
        for one in (minutes, leg.minutes)
    )
    quick = (leg.minutes / minutes) ** 3
    return (1.0 - leg.slow_share) * quick + leg.slow_share * slow / slow_now


def _other_star(solution: Solution, watched: int) -> Finding:
    """The star that adds what the watched one cannot see."""
    _, vectors = np.linalg.eigh(solution.information_arcmin2[watched])
    sign = hemisphere_sign(solution.latitude_deg)
    turned = np.rad2deg(np.arctan2(sign * vectors[1, 0], vectors[0, 0]))
    return Finding.of(Outlook.OTHER_STAR, star=second_star(float((turned + 90.0) % 180.0 - 90.0)))


# Whether to watch on, change the star, turn the bolts, or stop: the rule of the procedure.

_HAND_SHARE = 0.35  # of the target: what the hand may add in the last turn
_FINEST_SHARE = 0.48  # of the target: what the last measurement must reach to be sure of it
_NEAR_FLEXURE = 1.5  # of the variance that flexure leaves: to measure better takes for ever
_LONG_MIN, _ONE_SIDED = 8.0, 25.0  # so long on one star, and of variances: the other comes anyway
_WORTHWHILE = 0.03  # gain in chance that is worth a turn of the bolts
_MANY = 200.0  # degrees of freedom: more, and Student's t is normal for our purpose
_SIZES = 48
_NODES, _WEIGHTS = np.polynomial.hermite_e.hermegauss(24)


class Next(Enum):
    """What the person does next."""

    WATCH_ON = "watch on"
    OTHER_STAR = "watch another star"
    TURN = "turn the bolts"
    GOOD_ENOUGH = "good enough"


@dataclass(frozen=True)
class Judgement:
    """The next thing to do, and how sure it is that the axis is within the target already."""

    next: Next
    chance_within_target: float

    @property
    def reached(self) -> Reached:
        """The verdict on the axis against its goal."""
        return reached(self.chance_within_target)


def chance_within(known: PriorAxis, aim_arcmin: Floats, target_arcmin: float) -> float:
    """Chance that the axis lies within `target_arcmin` of the aim (2,) on the sky.

    Student's t in two dimensions with the freedom of what is known, as the intervals have it: a
    mixture of normal distributions of many sizes.
    """
    sizes = _student_sizes(known.freedom)
    chances = [_normal_chance(known, aim_arcmin, target_arcmin, size) for size in sizes]
    return float(np.mean(chances))


def _student_sizes(freedom: float) -> Floats:
    """Equally likely factors (n,) of the standard deviations; one where the freedom is large."""
    from scipy.special import chdtri  # here, so that the first window need not wait for scipy

    if freedom > _MANY:
        return np.ones(1)
    even = (np.arange(_SIZES) + 0.5) / _SIZES
    return np.asarray(np.sqrt(freedom / chdtri(freedom, even)))


def _normal_chance(
    known: PriorAxis, aim_arcmin: Floats, target_arcmin: float, size: float
) -> float:
    """Normal distribution; Gauss-Hermite over one principal direction, exact over the other."""
    from scipy.special import ndtr

    variances, directions = np.linalg.eigh(known.covariance_arcmin2)
    sigma = size * np.sqrt(np.maximum(variances, 1e-12))
    offset = directions.T @ (known.sky_arcmin - aim_arcmin)
    along = offset[0] + sigma[0] * _NODES
    reach = np.sqrt(np.maximum(target_arcmin**2 - along**2, 0.0))
    inside = ndtr((reach - offset[1]) / sigma[1]) - ndtr((-reach - offset[1]) / sigma[1])
    weight = _WEIGHTS / _WEIGHTS.sum()
    return float(weight @ np.where(np.abs(along) < target_arcmin, inside, 0.0))


def judge(
    known: PriorAxis,
    watched_shows: Floats | None,
    aim_arcmin: Floats,
    target_arcmin: float,
    accuracy: TurnAccuracy,
    flexure_arcmin: float = 0.0,
    watched_min: float = 0.0,
) -> Judgement:
    """The next thing to do.

    `watched_shows` (2,): unit direction on the sky that the star under way shows, `None` between
    legs. `aim_arcmin` (2,): where the axis is wanted on the sky, from the true pole. The hand errs
    by a share of the turn, so an axis far off takes two turns: a quick one, measured just well
    enough to bring the second within what the hand may add, and a fine one. `flexure_arcmin`: what
    a yielding tube leaves of either error however long one watches. `watched_min`: minutes on the
    star under way; one that shows nothing new for long is left for one that shows the other error.
    """
    chance = chance_within(known, aim_arcmin, target_arcmin)
    if reached(chance) is Reached.WITHIN:
        return Judgement(Next.GOOD_ENOUGH, chance)
    error = known.sky_arcmin - aim_arcmin
    covariance = known.covariance_arcmin2 * _widening(known.freedom)
    variance = np.diag(covariance)
    one_go = _HAND_SHARE * target_arcmin / accuracy.relative
    is_far = float(np.sqrt(error @ error + variance.sum())) > one_go
    wanted = (0.7 * one_go if is_far else _FINEST_SHARE * target_arcmin) ** 2
    wanted = max(wanted, _NEAR_FLEXURE * 2.0 * flexure_arcmin**2)
    is_measured = float(variance.sum()) <= wanted
    hand = accuracy.relative**2 * (error**2 + variance) + accuracy.play_arcmin**2
    if is_measured and (is_far or _turn_helps(known, hand, aim_arcmin, target_arcmin, chance)):
        return Judgement(Next.TURN, chance)
    if watched_shows is None:
        return Judgement(Next.OTHER_STAR, chance)
    open_along = float(watched_shows @ covariance @ watched_shows)
    open_across = float(variance.sum()) - open_along
    is_told = open_along <= 0.5 * wanted and open_across > max(open_along, 0.5 * wanted)
    is_long = watched_min > _LONG_MIN and open_across > _ONE_SIDED * open_along
    is_done = is_told or is_long
    return Judgement(Next.OTHER_STAR if is_done else Next.WATCH_ON, chance)


def _widening(freedom: float) -> float:
    """Of variances, so that normal half-widths become Student's."""
    from scipy.special import stdtrit

    return float(stdtrit(freedom, 0.975) / NORMAL_95) ** 2


def _turn_helps(
    known: PriorAxis, hand: Floats, aim_arcmin: Floats, target_arcmin: float, chance: float
) -> bool:
    """Whether turning now raises the chance to be within the target by a worthwhile part."""
    turned = PriorAxis(aim_arcmin, known.covariance_arcmin2 + np.diag(hand), known.freedom)
    return chance_within(turned, aim_arcmin, target_arcmin) > chance + _WORTHWHILE
