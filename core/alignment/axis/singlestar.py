"""What a single star can tell: one combination of the two axis errors, and what star adds most."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.drift.geometry import hemisphere_sign
from core.alignment.words import altitude_side, azimuth_side, figure
from core.language import say

Floats = NDArray[np.float64]

_PLAIN_SHARE = 0.2  # of the best-known direction: less of an error, and nothing is said of it


@dataclass(frozen=True)
class SingleStarConstraint:
    """`azimuth_weight` × azimuth error × cos latitude + `altitude_weight` × altitude error = value.

    `sentence` says it in words with the star that would settle the rest.
    """

    azimuth_weight: float
    altitude_weight: float
    value_arcmin: float
    half_width_arcmin: float
    second_star_hour_angle_deg: float
    sentence: str


@dataclass(frozen=True)
class IfRight:
    """What one error is, with its 95 % half-width, arcmin, if the other is exactly zero."""

    error_arcmin: float
    half_width_arcmin: float


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
    parts = [
        say("One star alone fixes only one combination of the two errors.")
        if number_of_legs == 1
        else say("These stars stand alike: together they fix one combination of the two errors."),
        *_if_other_were_right(known, if_altitude_right, if_azimuth_right, latitude_rad),
        say("To settle it, watch {star}.", star=second_star(hour_angle_deg)),
    ]
    return SingleStarConstraint(
        float(known[0]), float(known[1]), value, half_width, hour_angle_deg, " ".join(parts)
    )


def second_star(hour_angle_deg: float) -> str:
    """Where to look for the star that shows what is still unknown."""
    away = abs(hour_angle_deg)
    if away < 25.0:
        return say("a second star near the meridian, not too close to the pole or the zenith")
    if away > 65.0:
        return say("a second star in the east or the west, about six hours from the meridian")
    hours = away / 15.0  # twelve hours on it would do as well, but few stars are up there
    if hour_angle_deg > 0.0:
        return say("a second star about {hours:.0f} hours west of the meridian", hours=hours)
    return say("a second star about {hours:.0f} hours east of the meridian", hours=hours)


def _if_other_were_right(
    known: Floats, if_altitude_right: IfRight, if_azimuth_right: IfRight, latitude_rad: float
) -> list[str]:
    sentences = []
    if abs(known[0]) > _PLAIN_SHARE:
        error, half_width = if_altitude_right.error_arcmin, if_altitude_right.half_width_arcmin
        sentences.append(
            say(
                "If the altitude were right, the axis would point {size} {side}.",
                size=figure(error, half_width),
                side=azimuth_side(error, latitude_rad).where,
            )
        )
    if abs(known[1]) > _PLAIN_SHARE:
        error, half_width = if_azimuth_right.error_arcmin, if_azimuth_right.half_width_arcmin
        sentences.append(
            say(
                "If the azimuth were right, the axis would be {size} {side}.",
                size=figure(error, half_width),
                side=altitude_side(error).where,
            )
        )
    return sentences
