"""The best star to watch next, from what all legs so far know and each star would add."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.expectation import Watching, half_width_arcmin, leg_information
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
    hour_angle = np.array([now.hour_angle_deg for now in fit])
    altitude = np.array([now.altitude_deg for now in fit])
    unit = leg_information(hour_angle, altitude, site.latitude_deg, 1.0, watching)
    after = _after(known, unit, MINUTES)
    minutes = _minutes(known, unit, target_arcmin)
    alone = half_width_arcmin(known + unit * MINUTES**3)
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


def _after(known: Floats, unit: Floats, minutes: float) -> Floats:
    """Half-width (n,) after so many minutes on each star, and on its best partner if one is needed.

    What a leg knows grows with the cube of its length.
    """
    grown = known + unit * minutes**3
    alone = half_width_arcmin(grown)
    if alone.min() < _SINGULAR_ARCMIN:
        return alone
    pairs = half_width_arcmin(grown[:, np.newaxis] + (unit * minutes**3)[np.newaxis])
    return np.asarray(np.minimum(alone, pairs.min(axis=1)))


def _minutes(known: Floats, unit: Floats, target_arcmin: float) -> Floats:
    """Minutes (n,) on each star (and its partner) until the target, by halving the interval."""
    low, high = np.zeros(unit.shape[0]), np.full(unit.shape[0], _LONGEST_MIN)
    is_pair_needed = half_width_arcmin(known + unit * MINUTES**3).min() >= _SINGULAR_ARCMIN
    best = unit[int(np.argmin(_after(known, unit, MINUTES)))] if is_pair_needed else None
    for _ in range(_HALVINGS):
        middle = 0.5 * (low + high)
        grown = known + unit * (middle**3)[:, np.newaxis, np.newaxis]
        if best is not None:
            grown = grown + _partner(unit, best) * (middle**3)[:, np.newaxis, np.newaxis]
        enough = half_width_arcmin(grown) <= target_arcmin
        low, high = np.where(enough, low, middle), np.where(enough, middle, high)
    return high


def _partner(unit: Floats, best: Floats) -> Floats:
    """For each star the partner that was best for the best star, or that star itself."""
    with_best = half_width_arcmin(unit + best)
    crossed = unit[int(np.argmin(half_width_arcmin(unit + best)))]
    with_crossed = half_width_arcmin(unit + crossed)
    better = (with_best <= with_crossed)[:, np.newaxis, np.newaxis]
    return np.where(better, best, crossed)
