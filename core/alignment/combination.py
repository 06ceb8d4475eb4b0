"""What a single star can tell: one combination of the two axis errors, and what star adds more."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.geometry import ARCMIN_PER_RAD, hemisphere_sign
from core.alignment.words import altitude_side, azimuth_side, figure
from core.language import say

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Combination:
    """`azimuth_weight` × azimuth error × cos latitude + `altitude_weight` × altitude error = value.

    `sentence` says it in words with the star that would settle the rest.
    """

    azimuth_weight: float
    altitude_weight: float
    value_arcmin: float
    half_width_arcmin: float
    second_star_hour_angle_deg: float
    sentence: str


def combination(
    sky_rad: Floats, covariance: Floats, factor: float, latitude_rad: float
) -> Combination:
    """The best-known direction of the displacement, and the hour angle that shows the other."""
    _, vectors = np.linalg.eigh(covariance)
    known, unknown = vectors[:, 0], vectors[:, 1]
    if known[np.argmax(np.abs(known))] < 0.0:
        known = -known
    value = float(known @ sky_rad) * ARCMIN_PER_RAD
    half_width = factor * float(np.sqrt(known @ covariance @ known)) * ARCMIN_PER_RAD
    turned = np.arctan2(hemisphere_sign(latitude_rad) * unknown[1], unknown[0])
    hour_angle_deg = float((np.rad2deg(turned) + 90.0) % 180.0 - 90.0)
    parts = [
        say("One star alone fixes only one combination of the two errors."),
        *_if_other_were_right(known, value, half_width, latitude_rad),
        say("To settle it, watch {star}.", star=second_star(hour_angle_deg)),
    ]
    return Combination(
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
    known: Floats, value: float, half_width: float, latitude_rad: float
) -> list[str]:
    sentences = []
    azimuth_share = known[0] * float(np.cos(latitude_rad))
    if abs(known[0]) > 0.2:
        size, error = value / azimuth_share, half_width / abs(azimuth_share)
        side = azimuth_side(size, latitude_rad).where
        sentences.append(
            say(
                "If the altitude were right, the axis would point {size} {side}.",
                size=figure(size, error),
                side=side,
            )
        )
    if abs(known[1]) > 0.2:
        size, error = value / known[1], half_width / abs(known[1])
        side = altitude_side(size).where
        sentences.append(
            say(
                "If the azimuth were right, the axis would be {size} {side}.",
                size=figure(size, error),
                side=side,
            )
        )
    return sentences
