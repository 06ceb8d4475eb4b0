"""The polar axis found by pointing at stars against the one found by drift."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.alignment.solution import Solution
from core.language import say
from core.tracking.pointing import Pointing
from core.tracking.pointingmodel import ALTITUDE, AZIMUTH

_CONTRADICTION = 4.0  # combined standard deviations; few stars have long tails


@dataclass(frozen=True)
class AxisCheck:
    """Pointing less drift, arcmin, azimuth in the horizontal plane; `agrees` None when either side
    does not tell."""

    azimuth_apart_arcmin: float
    altitude_apart_arcmin: float
    agrees: bool | None
    sentence: str


def check_axis(found: Pointing, solution: Solution) -> AxisCheck:
    """Both measure from the true pole, with the same signs."""
    azimuth, altitude = found.terms[AZIMUTH], found.terms[ALTITUDE]
    known = solution.determined and azimuth.is_determined and altitude.is_determined
    if not known:
        nothing = float("nan")
        return AxisCheck(
            nothing,
            nothing,
            None,
            say("The polar axis cannot be compared: one of the two is unknown."),
        )
    apart = (
        azimuth.value_arcmin - solution.azimuth_error_arcmin,
        altitude.value_arcmin - solution.altitude_error_arcmin,
    )
    sigma = (
        float(np.hypot(azimuth.sigma_arcmin, solution.azimuth_sigma_arcmin)),
        float(np.hypot(altitude.sigma_arcmin, solution.altitude_sigma_arcmin)),
    )
    worst = max(abs(one) / size for one, size in zip(apart, sigma, strict=True))
    agrees = worst <= _CONTRADICTION
    return AxisCheck(apart[0], apart[1], agrees, _sentence(apart, agrees))


def _sentence(apart: tuple[float, float], agrees: bool) -> str:
    azimuth, altitude = apart
    if agrees:
        return say("Pointing and drift find the polar axis in the same place, within their errors.")
    return say(
        "Pointing and drift disagree on the polar axis by {azimuth:.1f}′ in azimuth and "
        "{altitude:.1f}′ in altitude: flexure, a moved tripod, coordinates of two epochs "
        "mixed, or a bolt turned in between. Trust the drift, which watches the sky itself.",
        azimuth=abs(azimuth),
        altitude=abs(altitude),
    )
