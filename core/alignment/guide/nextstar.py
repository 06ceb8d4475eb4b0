"""The best star to watch next, and how much it will tell of the axis."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.alignment.drift.geometry import hemisphere_sign
from core.alignment.drift.nuisances import slow_rate_variance
from core.alignment.priors import USUAL, Priors
from core.finding import Code
from core.sky.catalogues import Catalogue, StarNow
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD, ARCSEC_PER_RAD, SIDEREAL_RATE_RAD_PER_S


class Whereabouts(Code):
    """Where a star stands that shows one error well."""

    MERIDIAN = "near the meridian"
    EAST = "low in the east"
    WEST = "low in the west"


class Shows(Code):
    """Which error a star shows."""

    AZIMUTH = "shows azimuth"
    ALTITUDE = "shows altitude"
    BOTH = "shows a mixture of both"


# How much a leg that is yet to be watched will tell of the axis, for planning only.
#
# The noise of a drift rate from T minutes of readings with correlated image motion is
# σ_rate² = 12 σ² c / T³, with c = Δt (1 + ρ)/(1 − ρ), ρ = exp(−Δt/τ): a straight line through many
# readings, elementary. Image motion grows as the square root of the air mass (Sarazin & Roddier,
# A&A 227, 294, 1990: variance ∝ r0^(−5/3) ∝ sec z). The slow motions of
# `core.alignment.drift.nuisances` come on top, and the tube's flexure, which no watching lowers.

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


# Stars worth watching first: one side of the sky shows one axis of the mount.

LOWEST_TO_START_DEG = 18.0  # a star that sets must stay out of the thickest air for the whole leg
CANDIDATES = 2000
PER_PLACE = 3


@dataclass(frozen=True)
class Suggestion:
    """A star and where it stands; ICRS place tonight, azimuth and altitude as seen."""

    name: str
    ra_deg: float
    dec_deg: float
    azimuth_deg: float
    altitude_deg: float
    hour_angle_deg: float
    where: Whereabouts


# Near the meridian a star shows the azimuth error, six hours away from it the altitude error.
PLACES: dict[Whereabouts, Callable[[StarNow], bool]] = {
    Whereabouts.MERIDIAN: lambda now: (
        abs(now.hour_angle_deg) < 12.0 and now.altitude_deg < 75.0 and abs(now.star.dec_deg) < 50.0
    ),
    Whereabouts.EAST: lambda now: _is_low(now) and -120.0 < now.hour_angle_deg < -55.0,
    Whereabouts.WEST: lambda now: _is_low(now) and 55.0 < now.hour_angle_deg < 120.0,
}


def suggestions(catalogue: Catalogue, site: Site, air: Air, utc_s: float) -> list[Suggestion]:
    """Up to three bright stars for each of the three places, in the order of `PLACES`."""
    up = catalogue.up_now(site, air, utc_s, LOWEST_TO_START_DEG, CANDIDATES)
    found = []
    for where, fits in PLACES.items():
        fitting = [now for now in up if fits(now)][:PER_PLACE]
        found += [_suggestion(catalogue, now, utc_s, where) for now in fitting]
    return found


def _is_low(now: StarNow) -> bool:
    return now.altitude_deg < 45.0 and abs(now.star.dec_deg) < 60.0


def _suggestion(catalogue: Catalogue, now: StarNow, utc_s: float, where: Whereabouts) -> Suggestion:
    ra_deg, dec_deg = catalogue.at_epoch(now.star, utc_s)
    return Suggestion(
        now.star.name,
        ra_deg,
        dec_deg,
        now.azimuth_deg,
        now.altitude_deg,
        now.hour_angle_deg,
        where,
    )


# The best star to watch next, from what all legs so far know and each star would add.

MINUTES = 5.0
LOWEST_DEG = 20.0
_POLAR_DECLINATION_DEG = 75.0
_HIGHEST_DEG = 80.0  # nearer the zenith a German equatorial mount may touch its pier
_SINGULAR_ARCMIN = 60.0  # with more than this left open, a second star must follow anyway
_LONGEST_MIN = 60.0
_HALVINGS = 12

Clear = Callable[[Floats, Floats], NDArray[np.bool_]]


@dataclass(frozen=True)
class RankedStar:
    """A star and its worth.

    `half_width_arcmin`: the larger 95 % half-width on the sky after `MINUTES` on it and, where one
    star cannot fix both errors, as long on the best partner. `minutes`: until the target is met
    likewise, `None` beyond an hour.
    """

    now: StarNow
    half_width_arcmin: float
    minutes: float | None
    shows: Shows


def rank(
    stars: Sequence[StarNow],
    site: Site,
    known: Floats,
    watching: Watching,
    target_arcmin: float,
    clear: Clear | None = None,
) -> list[RankedStar]:
    """Stars fit for a leg, the best first.

    `known` (2, 2): information, arcmin⁻², of all that was measured so far; zeros at the start.
    `clear`: tells for azimuths and altitudes in degrees whether nothing stands in the way.
    """
    fit = _fit(stars, clear)
    if not fit:
        return []
    plan = _Plan(
        np.array([now.hour_angle_deg for now in fit]),
        np.array([now.altitude_deg for now in fit]),
        site.latitude_deg,
        watching,
    )
    after = plan.after(known, MINUTES)
    minutes = plan.minutes(known, target_arcmin)
    alone = plan.half_width(known + plan.information(MINUTES))
    order = np.lexsort((alone, np.round(np.log(after), 1)))  # of a pair, the star that adds more
    return [
        RankedStar(
            fit[i],
            float(after[i]),
            float(minutes[i]) if minutes[i] < _LONGEST_MIN else None,
            shows(fit[i].hour_angle_deg),
        )
        for i in order
    ]


def shows(hour_angle_deg: float) -> Shows:
    """Which error a star at this hour angle shows."""
    share = abs(np.cos(np.deg2rad(hour_angle_deg)))
    if share > 0.9:
        return Shows.AZIMUTH
    if share < 0.45:
        return Shows.ALTITUDE
    return Shows.BOTH


def _fit(stars: Sequence[StarNow], clear: Clear | None) -> list[StarNow]:
    """Stars high enough, away from zenith and pole, with a free view."""
    fit = [
        now
        for now in stars
        if LOWEST_DEG <= now.altitude_deg <= _HIGHEST_DEG
        and abs(now.star.dec_deg) <= _POLAR_DECLINATION_DEG
    ]
    if clear is None or not fit:
        return fit
    free = clear(
        np.array([now.azimuth_deg for now in fit]), np.array([now.altitude_deg for now in fit])
    )
    return [now for now, is_free in zip(fit, free, strict=True) if is_free]


@dataclass(frozen=True, eq=False)
class _Plan:
    """Stars (n,) that may be watched, and what watching them would tell."""

    hour_angle_deg: Floats
    altitude_deg: Floats
    latitude_deg: float
    watching: Watching

    def information(self, minutes: Floats | float) -> Floats:
        """Information (n, 2, 2) of so many minutes (n,) on each star."""
        return leg_information(
            self.hour_angle_deg, self.altitude_deg, self.latitude_deg, minutes, self.watching
        )

    def half_width(self, information: Floats) -> Floats:
        """The larger 95 % half-width (…,), flexure included."""
        flexure = flexure_arcmin(self.watching.priors, self.latitude_deg)
        return half_width_arcmin(information, flexure)

    def after(self, known: Floats, minutes: float) -> Floats:
        """Half-width (n,) after so many minutes on each star, and on its best partner if needed."""
        told = self.information(minutes)
        alone = self.half_width(known + told)
        if alone.min() < _SINGULAR_ARCMIN:
            return alone
        pairs = self.half_width((known + told)[:, np.newaxis] + told[np.newaxis])
        return np.asarray(np.minimum(alone, pairs.min(axis=1)))

    def minutes(self, known: Floats, target_arcmin: float) -> Floats:
        """Minutes (n,) on each star (and its partner) until the target, by halving the interval."""
        low, high = np.zeros(self.altitude_deg.size), np.full(self.altitude_deg.size, _LONGEST_MIN)
        told = self.information(MINUTES)
        partner: NDArray[np.intp] | None = None
        if self.half_width(known + told).min() >= _SINGULAR_ARCMIN:
            partner = self._partner(told, int(np.argmin(self.after(known, MINUTES))))
        for _ in range(_HALVINGS):
            middle = 0.5 * (low + high)
            grown = known + self.information(middle)
            if partner is not None:
                grown = grown + self._of(partner).information(middle)
            enough = self.half_width(grown) <= target_arcmin
            low, high = np.where(enough, low, middle), np.where(enough, middle, high)
        return high

    def _partner(self, told: Floats, best: int) -> NDArray[np.intp]:
        """For each star (n,) the best star, or the one that goes best with that."""
        with_best = self.half_width(told + told[best])
        crossed = int(np.argmin(with_best))
        with_crossed = self.half_width(told + told[crossed])
        return np.where(with_best <= with_crossed, best, crossed)

    def _of(self, chosen: NDArray[np.intp]) -> _Plan:
        return replace(
            self,
            hour_angle_deg=self.hour_angle_deg[chosen],
            altitude_deg=self.altitude_deg[chosen],
        )
