"""What a single star can tell: one combination of the two axis errors, and what star adds most."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.drift.geometry import hemisphere_sign
from core.finding import Code, Finding

Floats = NDArray[np.float64]

_PLAIN_SHARE = 0.2  # of the best-known direction: less of an error, and nothing is said of it


@dataclass(frozen=True)
class IfRight:
    """What one error is, with its 95 % half-width, arcmin, if the other is exactly zero."""

    error_arcmin: float
    half_width_arcmin: float


@dataclass(frozen=True)
class SingleStarConstraint:
    """`azimuth_weight` × azimuth error × cos latitude + `altitude_weight` × altitude error = value.

    `if_altitude_right`, `if_azimuth_right`: the one error if the other is zero, None where the legs
    hardly show it. `latitude_rad` and `legs`: of the site, and how many there are.
    """

    azimuth_weight: float
    altitude_weight: float
    value_arcmin: float
    half_width_arcmin: float
    second_star_hour_angle_deg: float
    if_altitude_right: IfRight | None
    if_azimuth_right: IfRight | None
    latitude_rad: float
    legs: int


def single_star_constraint(
    sky_arcmin: Floats,
    covariance_arcmin2: Floats,
    factor: float,
    latitude_rad: float,
    if_altitude_right: IfRight,
    if_azimuth_right: IfRight,
    number_of_legs: int,
) -> SingleStarConstraint:
    """The best-known direction of the displacement, and the hour angle that shows the other."""
    _, vectors = np.linalg.eigh(covariance_arcmin2)
    known, unknown = vectors[:, 0], vectors[:, 1]
    if known[np.argmax(np.abs(known))] < 0.0:
        known = -known
    value = float(known @ sky_arcmin)
    half_width = factor * float(np.sqrt(known @ covariance_arcmin2 @ known))
    turned = np.arctan2(hemisphere_sign(latitude_rad) * unknown[1], unknown[0])
    hour_angle_deg = float((np.rad2deg(turned) + 90.0) % 180.0 - 90.0)
    return SingleStarConstraint(
        float(known[0]),
        float(known[1]),
        value,
        half_width,
        hour_angle_deg,
        if_altitude_right if abs(known[0]) > _PLAIN_SHARE else None,
        if_azimuth_right if abs(known[1]) > _PLAIN_SHARE else None,
        latitude_rad,
        number_of_legs,
    )


class SecondStar(Code):
    """Where to look for the star that shows what is still unknown."""

    NEAR_THE_MERIDIAN = "near the meridian"
    SIX_HOURS_AWAY = "six hours away"
    HOURS_WEST = "hours west"
    HOURS_EAST = "hours east"


def second_star(hour_angle_deg: float) -> Finding:
    """The one for an hour angle at which the rest would show."""
    away = abs(hour_angle_deg)
    if away < 25.0:
        return Finding.of(SecondStar.NEAR_THE_MERIDIAN)
    if away > 65.0:
        return Finding.of(SecondStar.SIX_HOURS_AWAY)
    # Twelve hours on it would do as well, but few stars are up there.
    code = SecondStar.HOURS_WEST if hour_angle_deg > 0.0 else SecondStar.HOURS_EAST
    return Finding.of(code, hours=away / 15.0)
