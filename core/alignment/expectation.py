"""How much a leg that is yet to be watched will tell of the axis, for planning only.

The noise of a drift rate from T minutes of readings with correlated image motion is
σ_rate² = 12 σ² c / T³, with c = Δt (1 + ρ)/(1 − ρ), ρ = exp(−Δt/τ): a straight line through many
readings, elementary. Image motion grows as the square root of the air mass (Sarazin & Roddier,
A&A 227, 294, 1990: variance ∝ r0^(−5/3) ∝ sec z). The slow motions of
`core.alignment.axis.nuisances` come on top, and the tube's flexure, which no watching lowers.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.alignment.axis.nuisances import slow_rate_variance
from core.alignment.axis.priors import USUAL, Priors
from core.alignment.geometry import (
    ARCMIN_PER_RAD,
    ARCSEC_PER_RAD,
    SIDEREAL_RATE_RAD_PER_S,
    hemisphere_sign,
)

Floats = NDArray[np.float64]

ARCSEC_PER_MIN_PER_ARCMIN = SIDEREAL_RATE_RAD_PER_S * 60.0 * ARCSEC_PER_RAD / ARCMIN_PER_RAD
_COVERAGE = 2.0  # 95 % half-width over sigma for legs of many readings


@dataclass(frozen=True)
class Watching:
    """How stars are read tonight. Defaults are common practice for 2.5″ seeing, no source."""

    noise_arcsec: float = 0.7
    correlation_time_s: float = 2.0
    interval_s: float = 2.0
    priors: Priors = USUAL
    east_is_seen: bool = False

    def rate_variance(self, minutes: ArrayLike, altitude_deg: ArrayLike) -> Floats:
        """Variance of the drift rate, (arcsec/min)², after so many minutes at this altitude."""
        memory = float(np.exp(-self.interval_s / max(self.correlation_time_s, 1e-3)))
        correlated_min = self.interval_s / 60.0 * (1.0 + memory) / (1.0 - memory)
        air_mass = 1.0 / np.sin(np.deg2rad(np.clip(altitude_deg, 5.0, 90.0)))
        variance = self.noise_arcsec**2 * air_mass
        quick = 12.0 * variance * correlated_min / np.asarray(minutes) ** 3
        return np.asarray(quick + slow_rate_variance(minutes, self.priors, self.east_is_seen))


def direction_shown(hour_angle_deg: ArrayLike, latitude_deg: float) -> Floats:
    """Drift (…, 2), arcsec/min per arcmin on the sky of azimuth × cos latitude and of altitude."""
    hour_angle = np.deg2rad(hour_angle_deg)
    sign = hemisphere_sign(latitude_deg)
    return -ARCSEC_PER_MIN_PER_ARCMIN * np.stack(
        [np.cos(hour_angle), sign * np.sin(hour_angle)], axis=-1
    )


def leg_information(
    hour_angle_deg: ArrayLike,
    altitude_deg: ArrayLike,
    latitude_deg: float,
    minutes: ArrayLike,
    watching: Watching,
) -> Floats:
    """Information (…, 2, 2), arcmin⁻², of such a leg on the displacement of the axis on the sky."""
    shown = direction_shown(hour_angle_deg, latitude_deg)
    variance = watching.rate_variance(minutes, altitude_deg)
    outer = shown[..., :, np.newaxis] * shown[..., np.newaxis, :]
    return np.asarray(outer / variance[..., np.newaxis, np.newaxis])


def flexure_arcmin(priors: Priors, latitude_deg: float) -> float:
    """Standard deviation of each displacement of the axis that a yielding tube feigns.

    In the tube's frame gravity turns about the pole at the sidereal rate times cos latitude, and a
    drift of the axis' own comes at the sidereal rate times its displacement.
    """
    return priors.flexure_arcsec_per_g * abs(float(np.cos(np.deg2rad(latitude_deg)))) / 60.0


def half_width_arcmin(information: Floats, flexure_arcmin: float = 0.0) -> Floats:
    """The larger 95 % half-width (…,) of the two displacements; very large where one is unknown."""
    a, b, c = information[..., 0, 0], information[..., 0, 1], information[..., 1, 1]
    determinant = np.maximum(a * c - b * b, 1e-12)
    return np.asarray(_COVERAGE * np.sqrt(np.maximum(a, c) / determinant + flexure_arcmin**2))
