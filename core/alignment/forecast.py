"""How much longer to watch the star until the ± is small enough."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.axis.nuisances import slow_rate_variance
from core.alignment.axis.priors import Priors
from core.alignment.combination import second_star
from core.alignment.expectation import flexure_arcmin
from core.alignment.geometry import hemisphere_sign
from core.alignment.solution import Solution
from core.alignment.trend import LegTrend
from core.language import marked, say

Floats = NDArray[np.float64]

_LONGEST_MIN = 60.0  # beyond an hour the star has moved on and the air has changed
_TOLERANCE_MIN = 0.1
_COVERAGE = 1.96


@dataclass(frozen=True)
class Forecast:
    """Minutes more on the watched star; `None` where it alone will not do."""

    minutes: float | None
    sentence: str


def minutes_left(solution: Solution, watching_label: str | None, target_arcmin: float) -> Forecast:
    """Minutes until both 95 % half-widths on the sky are within `target_arcmin`.

    What a leg knows of the axis grows with the cube of its length at constant noise, and slower
    where slow motions set its error; the change of its hour angle meanwhile is left out, which errs
    to the safe side.
    """
    labels = [leg.label for leg in solution.legs]
    if solution.is_contradictory:
        return Forecast(
            None, say("The legs contradict one another: first settle which of them is wrong.")
        )
    half_width = _half_width_arcmin(
        solution, sum(solution.information_arcmin2, solution.before_information_arcmin2)
    )
    if half_width <= target_arcmin:
        return Forecast(
            0.0, say("The ± is within {target:g}′: enough watched.", target=target_arcmin)
        )
    least = _COVERAGE * flexure_arcmin(solution.priors, solution.latitude_deg)
    if least >= target_arcmin:
        return Forecast(
            None,
            say(
                "A tube that yields {flexure:g}″ per g leaves ±{least:.1f}′ however long you "
                "watch, so the ± will not come within {target:g}′: state a stiffer tube if yours "
                "is one.",
                flexure=solution.priors.flexure_arcsec_per_g,
                least=least,
                target=target_arcmin,
            ),
        )
    if watching_label not in labels:
        return Forecast(
            None, say("Watch on: the ± is not yet within {target:g}′.", target=target_arcmin)
        )
    watched = labels.index(watching_label)
    minutes = _minutes(solution, watched, target_arcmin)
    if minutes is None:
        return Forecast(None, _other_star(solution, watched))
    sentence = marked("About {minutes:.0f} more minutes on this star bring the ± to {target:g}′.")
    if minutes < 1.5:
        sentence = marked("About a minute more on this star brings the ± to {target:g}′.")
    return Forecast(minutes, say(sentence, minutes=minutes, target=target_arcmin))


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


def _other_star(solution: Solution, watched: int) -> str:
    """The star that adds what the watched one cannot see."""
    _, vectors = np.linalg.eigh(solution.information_arcmin2[watched])
    sign = hemisphere_sign(solution.latitude_deg)
    turned = np.rad2deg(np.arctan2(sign * vectors[1, 0], vectors[0, 0]))
    return say(
        "This star alone will not bring the ± down: end this leg and watch {star}.",
        star=second_star(float((turned + 90.0) % 180.0 - 90.0)),
    )
