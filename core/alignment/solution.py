"""The legs of one axis state solved for the azimuth and altitude error of the polar axis."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import TypeVar

import numpy as np
from numpy.typing import NDArray

from core.alignment.aim import Aim
from core.alignment.axis.priors import USUAL, Priors
from core.alignment.axisfit import AxisFit, azimuth_has_meaning, joint_fit, rough_axis, to_sky
from core.alignment.combination import Combination, combination
from core.alignment.driftlog import Leg
from core.alignment.geometry import ARCMIN_PER_RAD, sky_error_rad
from core.alignment.knowledge import AxisKnowledge
from core.alignment.noise import NoiseGrid, weights
from core.alignment.prepared import PreparedLeg
from core.alignment.track import one_direction
from core.alignment.trend import LegTrend, fit_leg, trend
from core.alignment.usable import Note, UnusableLegs, usable
from core.alignment.weakness import weaknesses
from core.language import marked, say
from core.sky.refraction import Refraction
from core.sky.site import Air, Site

__all__ = ["Note", "Solution", "UnusableLegs", "solve"]

Floats = NDArray[np.float64]
_Part = TypeVar("_Part")

_TOLD_ARCMIN = 15.0  # an axis error whose 95 % half-width on the sky is larger is not told
_FARTHEST_AZIMUTH_ARCMIN = 180.0 * 60.0  # beyond, the ± goes round the whole horizon
_START = AxisKnowledge.about_the_pole(3.0)  # where to begin, not what to believe
_NOTHING_GRANTED = AxisKnowledge.about_the_pole(
    30.0
)  # keeps one star's equations solvable, no more
_SET_UP_WITH_CARE = AxisKnowledge.about_the_pole(2.0)  # by latitude scale and compass
_UNEXPECTED = "unexpected axis"  # the code of a note
_CONTRADICTED = marked(
    "The axis is not where the last turn of the bolts should have brought it (turned the other "
    "way, or the tripod was moved?); what was measured before the turn is no longer used."
)
_CONTRADICTION = 20.0  # χ² with two degrees of freedom; short legs have longer tails than normal


@dataclass(frozen=True, eq=False)
class Solution:
    """Axis errors with their standard deviations; signs as in `core.alignment.geometry`.

    Azimuth is measured in the horizontal plane, as the azimuth bolts turn it; altitude from the
    true pole, and from the refracted pole beside it. A quantity the legs cannot tell is NaN and
    marked undetermined. `interval_factor` times sigma is the half-width of the 95 % interval.
    `information_arcmin2[i]` is what leg i alone knows of (azimuth × cos latitude, altitude), and
    `before_information_arcmin2` what was known before; `knowledge` is all of it together.
    """

    azimuth_error_arcmin: float
    azimuth_sigma_arcmin: float
    azimuth_interval_factor: float
    azimuth_determined: bool
    altitude_error_arcmin: float
    altitude_sigma_arcmin: float
    altitude_interval_factor: float
    altitude_determined: bool
    altitude_error_refracted_arcmin: float
    correlation: float
    sky_error_arcmin: float
    sky_sigma_arcmin: float
    combination: Combination | None
    legs: tuple[LegTrend, ...]
    notes: tuple[Note, ...]
    latitude_deg: float
    information_arcmin2: tuple[Floats, ...]
    before_information_arcmin2: Floats
    knowledge: AxisKnowledge

    def altitude_error_from(self, aim: Aim) -> float:
        """Altitude error from the place aimed at, arcmin."""
        lift = self.altitude_error_arcmin - self.altitude_error_refracted_arcmin
        return self.altitude_error_arcmin - aim.share * lift

    @property
    def determined(self) -> bool:
        """Both axis errors are known."""
        return self.azimuth_determined and self.altitude_determined


def _never() -> None:
    """No breath is taken."""


def solve(
    legs: Sequence[Leg],
    site: Site,
    air: Air,
    before: AxisKnowledge | None = None,
    breathe: Callable[[], None] = _never,
    priors: Priors = USUAL,  # noqa: ARG001
) -> Solution:
    """Solve all legs of one axis state together by least squares on the exact drift model.

    Only the north offsets enter: right ascension carries the drive's periodic error. `before` is
    what an earlier axis state and the turn of the bolts since say of the axis; where the legs
    contradict it, it is dropped and said. Stars that stand alike fix one combination of the errors:
    their slight bend would name both, but a yielding tube bends a leg just as much. `breathe` is
    called between the steps of each leg, so that a thread can let others pass. Raises
    `UnusableLegs` with a sentence when no leg can be used.
    """
    good, notes = usable(legs)
    scale = to_sky(float(np.deg2rad(site.latitude_deg)))
    prepared = [PreparedLeg.of(leg, site, air) for leg in _each(good, breathe)]
    axis, stepped = _start(prepared, scale, before or _START, breathe)
    grid = NoiseGrid.for_durations([float(np.ptp(leg.groups.utc_s)) for leg in stepped])
    fits = [fit_leg(leg, axis, grid) for leg in _each(stepped, breathe)]
    alike = one_direction([leg.track for leg in stepped])
    axis_fit = joint_fit(fits, axis, scale, _NOTHING_GRANTED, alike)
    if before is not None:
        if before.disagreement(_widened(axis_fit)) > _CONTRADICTION:
            alone = solve(legs, site, air, None, breathe)
            return replace(alone, notes=(Note(_UNEXPECTED, say(_CONTRADICTED)), *alone.notes))
        axis_fit = joint_fit(fits, axis, scale, before, alike)
    known = bool(_half_widths_arcmin(axis_fit).max() < _TOLD_ARCMIN)
    if not known and before is None:
        axis_fit = joint_fit(fits, axis, scale, _SET_UP_WITH_CARE, alike)
    weight = weights([fit.noise for fit in fits])
    trends = tuple(trend(fit, weight, grid) for fit in _each(fits, breathe))
    return _solution(axis_fit, known, trends, notes, site, air, before)


def _each(parts: Iterable[_Part], breathe: Callable[[], None]) -> Iterator[_Part]:
    for part in parts:
        breathe()
        yield part


def _start(
    legs: list[PreparedLeg], scale: Floats, before: AxisKnowledge, breathe: Callable[[], None]
) -> tuple[Floats, list[PreparedLeg]]:
    """Axis to linearise about, and the legs with their steps found."""
    axis = rough_axis(legs, scale, before, breathe)
    stepped = [leg.with_steps(axis) for leg in _each(legs, breathe)]
    if any(leg.steps for leg in stepped):
        axis = rough_axis(stepped, scale, before, breathe)
    return axis, stepped


def _knowledge(fit: AxisFit) -> AxisKnowledge:
    """The fit as a statement on the axis, in arcmin on the sky."""
    return AxisKnowledge(fit.sky_rad * ARCMIN_PER_RAD, fit.covariance * ARCMIN_PER_RAD**2)


def _widened(fit: AxisFit) -> AxisKnowledge:
    """The same with the few degrees of freedom of short legs in its covariance."""
    widening = fit.interval_factor / 1.96
    known = _knowledge(fit)
    return AxisKnowledge(known.sky_arcmin, known.covariance_arcmin2 * np.outer(widening, widening))


def _half_widths_arcmin(fit: AxisFit) -> Floats:
    """95 % half-widths (2,) of the displacements on the sky."""
    return np.asarray(fit.interval_factor * np.sqrt(np.diag(fit.covariance)) * ARCMIN_PER_RAD)


def _solution(
    fit: AxisFit,
    known: bool,
    trends: tuple[LegTrend, ...],
    notes: tuple[Note, ...],
    site: Site,
    air: Air,
    before: AxisKnowledge | None,
) -> Solution:
    latitude = float(np.deg2rad(site.latitude_deg))
    azimuth, altitude = fit.sky_rad / to_sky(latitude) * ARCMIN_PER_RAD
    sigma = np.sqrt(np.diag(fit.covariance))
    azimuth_sigma, altitude_sigma = sigma / to_sky(latitude) * ARCMIN_PER_RAD
    told = np.full(2, True) if known else _half_widths_arcmin(fit) < _TOLD_ARCMIN
    reach = abs(azimuth) + fit.interval_factor[0] * azimuth_sigma
    told[0] &= azimuth_has_meaning(latitude) and bool(reach < _FARTHEST_AZIMUTH_ARCMIN)
    refracted = float(altitude) - pole_refraction_arcmin(site, air)
    correlation = float(fit.covariance[0, 1] / np.prod(sigma))
    both = bool(told.all())
    sky, sky_sigma = _sky_error(fit, latitude)
    nothing = float("nan")
    return Solution(
        azimuth_error_arcmin=float(azimuth) if told[0] else nothing,
        azimuth_sigma_arcmin=float(azimuth_sigma) if told[0] else nothing,
        azimuth_interval_factor=float(fit.interval_factor[0]),
        azimuth_determined=bool(told[0]),
        altitude_error_arcmin=float(altitude) if told[1] else nothing,
        altitude_sigma_arcmin=float(altitude_sigma) if told[1] else nothing,
        altitude_interval_factor=float(fit.interval_factor[1]),
        altitude_determined=bool(told[1]),
        altitude_error_refracted_arcmin=refracted if told[1] else nothing,
        correlation=correlation if both else nothing,
        sky_error_arcmin=sky if both else nothing,
        sky_sigma_arcmin=sky_sigma if both else nothing,
        combination=None
        if known
        else combination(fit.sky_rad, fit.covariance, float(fit.interval_factor.max()), latitude),
        legs=trends,
        notes=notes + weaknesses(trends, correlation if known else None, site, air),
        latitude_deg=site.latitude_deg,
        information_arcmin2=tuple(part / ARCMIN_PER_RAD**2 for part in fit.information),
        before_information_arcmin2=np.zeros((2, 2))
        if before is None
        else before.information / ARCMIN_PER_RAD**2,
        knowledge=_knowledge(fit),
    )


def _sky_error(fit: AxisFit, latitude_rad: float) -> tuple[float, float]:
    """Angle between axis and true pole, arcmin, and its standard deviation."""
    azimuth, altitude = fit.sky_rad / to_sky(latitude_rad)
    size = sky_error_rad(latitude_rad, float(azimuth), float(altitude))
    towards = fit.sky_rad / max(float(np.linalg.norm(fit.sky_rad)), 1e-12)
    sigma = float(np.sqrt(towards @ fit.covariance @ towards))
    return size * ARCMIN_PER_RAD, sigma * ARCMIN_PER_RAD


def pole_refraction_arcmin(site: Site, air: Air) -> float:
    """How far the air lifts the elevated pole."""
    pole = abs(np.deg2rad(site.latitude_deg))
    lifted = Refraction.of(air).observed_altitude_rad(pole)
    return float(lifted - pole) * ARCMIN_PER_RAD
