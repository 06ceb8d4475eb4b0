"""The best star to watch next, from what all legs so far know and each star would add."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.alignment.expectation import Watching, flexure_arcmin, half_width_arcmin, leg_information
from core.language import marked
from core.sky.catalogue import StarNow
from core.sky.site import Site

Floats = NDArray[np.float64]

MINUTES = 5.0
LOWEST_DEG = 20.0
_POLAR_DECLINATION_DEG = 75.0
_HIGHEST_DEG = 80.0  # nearer the zenith a German equatorial mount may touch its pier
_SINGULAR_ARCMIN = 60.0  # with more than this left open, a second star must follow anyway
_LONGEST_MIN = 60.0
_HALVINGS = 12

Clear = Callable[[Floats, Floats], NDArray[np.bool_]]


@dataclass(frozen=True)
class Choice:
    """A star and its worth.

    `half_width_arcmin`: the larger 95 % half-width on the sky after `MINUTES` on it and, where one
    star cannot fix both errors, as long on the best partner. `minutes`: until the target is met
    likewise, `None` beyond an hour.
    """

    now: StarNow
    half_width_arcmin: float
    minutes: float | None
    shows: str


def rank(
    stars: Sequence[StarNow],
    site: Site,
    known: Floats,
    watching: Watching,
    target_arcmin: float,
    clear: Clear | None = None,
) -> list[Choice]:
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
        Choice(
            fit[i],
            float(after[i]),
            float(minutes[i]) if minutes[i] < _LONGEST_MIN else None,
            shows(fit[i].hour_angle_deg),
        )
        for i in order
    ]


def shows(hour_angle_deg: float) -> str:
    """Which error a star at this hour angle shows."""
    share = abs(np.cos(np.deg2rad(hour_angle_deg)))
    if share > 0.9:
        return marked("shows azimuth")
    if share < 0.45:
        return marked("shows altitude")
    return marked("shows a mixture of both")


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
