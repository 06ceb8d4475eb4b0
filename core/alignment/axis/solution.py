"""The legs of one axis state solved for the azimuth and altitude error of the polar axis."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import TypeVar

import numpy as np
from numpy.typing import NDArray

from core.alignment.axis.evidence import PriorAxis, azimuth_has_meaning, rough_axis, to_sky
from core.alignment.axis.geometrywarnings import geometry_warnings
from core.alignment.axis.legrate import LegTrend, leg_rate, trend
from core.alignment.axis.legset import AxisFit, Contradiction, LegSet
from core.alignment.axis.singlestar import SingleStarConstraint, single_star_constraint
from core.alignment.drift.geometry import sky_error_rad
from core.alignment.drift.noise import NoiseGrid
from core.alignment.drift.path import one_direction
from core.alignment.drift.prepared import (
    Note,
    PreparedLeg,
    note,
    reading_steps_arcsec,
    screened_legs,
)
from core.alignment.driftlog.records import Leg
from core.alignment.goal import Aim
from core.alignment.priors import USUAL, Priors
from core.finding import Code
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD

Floats = NDArray[np.float64]
_Part = TypeVar("_Part")

_TOLD_ARCMIN = 15.0  # an axis error whose 95 % half-width on the sky is larger is not told
_FARTHEST_AZIMUTH_ARCMIN = 180.0 * 60.0  # beyond, the ± goes round the whole horizon
_START = PriorAxis.about_the_pole(3.0)  # where to begin, not what to believe
_NOTHING_GRANTED = PriorAxis.about_the_pole(30.0)  # keeps one star's equations solvable, no more
_SET_UP_WITH_CARE = PriorAxis.about_the_pole(2.0)  # by latitude scale and compass
_CONTRADICTION = 20.0  # χ² with two degrees of freedom; short legs have longer tails than normal
_RATHER = 7.0  # of χ²: one turn in thirty goes the other way (common practice, no source)


class AxisNote(Code):
    """What is wrong with the legs of an axis state together."""

    UNEXPECTED = "unexpected axis"
    CONTRADICTION = "contradiction"


@dataclass(frozen=True, eq=False)
class Solution:
    """Axis errors with their standard deviations; signs as in `core.alignment.drift.geometry`.

    Azimuth is measured in the horizontal plane, as the azimuth bolts turn it; altitude from the
    true pole, and from the refracted pole beside it. A quantity the legs cannot tell is NaN and
    marked undetermined. `interval_factor` times sigma is the half-width of the 95 % interval.
    `information_arcmin2[i]` is what leg i alone knows of (azimuth × cos latitude, altitude), were
    the tube rigid, and `before_information_arcmin2` what was known before; `knowledge` is all of it
    together, flexure included.
    `contradiction`: numbers of the legs that cannot be right together, None where all agree; while
    nothing settles which of them is wrong no error is told.
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
    combination: SingleStarConstraint | None
    legs: tuple[LegTrend, ...]
    notes: tuple[Note, ...]
    latitude_deg: float
    information_arcmin2: tuple[Floats, ...]
    before_information_arcmin2: Floats
    knowledge: PriorAxis
    priors: Priors = USUAL
    contradiction: Contradiction | None = None

    def altitude_error_from(self, aim: Aim) -> float:
        """Altitude error from the place aimed at, arcmin."""
        lift = self.altitude_error_arcmin - self.altitude_error_refracted_arcmin
        return self.altitude_error_arcmin - aim.share * lift

    @property
    def determined(self) -> bool:
        """Both axis errors are known."""
        return self.azimuth_determined and self.altitude_determined

    @property
    def is_contradictory(self) -> bool:
        """Legs contradict one another and nothing settles which of them is wrong."""
        return self.contradiction is not None and not self.contradiction.left_out

    @property
    def contradicting_labels(self) -> tuple[str, ...]:
        """Labels of the legs that may be wrong; empty where all agree."""
        named = () if self.contradiction is None else self.contradiction.named
        return tuple(self.legs[number].label for number in named)


def _never() -> None:
    """No breath is taken."""


def solve(
    legs: Sequence[Leg],
    site: Site,
    air: Air,
    before: PriorAxis | None = None,
    breathe: Callable[[], None] = _never,
    priors: Priors = USUAL,
    rivals: Sequence[PriorAxis] = (),
) -> Solution:
    """Solve all legs of one axis state together by least squares on the exact drift model.

    Only the north offsets tell of the axis: right ascension carries the drive's periodic error;
    east offsets tell how far the reticle is turned. `before` is what an earlier axis state and the
    turn of the bolts since say of the axis, `rivals` what would hold had the turn gone another way;
    where the legs contradict it, or a rival bears them out far better, it is dropped and said.
    Stars that stand alike fix one combination of the errors. `priors`: sizes of what no reading
    can show. `breathe` is called between the steps of each leg, so that a thread can let others
    pass. Raises `UnusableLegs` with a sentence when no leg can be used.
    """
    good, notes = screened_legs(legs)
    scale = to_sky(float(np.deg2rad(site.latitude_deg)))
    prepared = _prepared(good, site, air, priors, breathe)
    alike = one_direction([leg.track for leg in prepared])
    axis, stepped = _start(prepared, scale, before or _START, alike, priors, breathe)
    grid = NoiseGrid.for_durations([float(np.ptp(leg.groups.utc_s)) for leg in stepped])
    rates = [leg_rate(leg, axis, grid, priors) for leg in _each(stepped, breathe)]
    whole = LegSet.of(rates, scale, priors)
    granted = _SET_UP_WITH_CARE if alike else _NOTHING_GRANTED
    start = whole.settled(axis, granted)
    contradiction = whole.contradiction(start.axis_rad)
    chosen = whole if contradiction is None else whole.without(contradiction.left_out)
    fit = start if chosen is whole else chosen.settled(start.axis_rad, granted)
    dropped = False
    if before is not None:
        dropped = _is_contradicted(before, _widened(fit), rivals)
        before = None if dropped else before
    if dropped:
        notes = (note(AxisNote.UNEXPECTED), *notes)
    if before is not None:
        fit = chosen.settled(fit.axis_rad, before)
    is_open = contradiction is not None and not contradiction.left_out
    about = np.zeros(2) if is_open else fit.axis_rad  # such legs tell no axis to bend about
    trends = tuple(trend(rate, about, whole.weight, grid, priors) for rate in _each(rates, breathe))
    if contradiction is not None:
        notes = (_contradiction_note(contradiction, trends), *notes)
    return _Told(site, air, before, priors, trends, notes, contradiction).solution(chosen, fit)


def _contradiction_note(between: Contradiction, legs: Sequence[LegTrend]) -> Note:
    """What contradicts what; its `leg` is the odd one where only one is left out."""
    left_out, named, exchanged = (
        tuple(legs[number].label for number in numbers)
        for numbers in (between.left_out, between.named, between.exchanged)
    )
    values = {"left_out": left_out, "named": named, "exchanged": exchanged}
    return Note(AxisNote.CONTRADICTION, values, left_out[0] if len(left_out) == 1 else "")


def _prepared(
    legs: Sequence[Leg], site: Site, air: Air, priors: Priors, breathe: Callable[[], None]
) -> list[PreparedLeg]:
    steps = reading_steps_arcsec(legs, priors)
    return [
        PreparedLeg.of(leg, site, air, step)
        for leg, step in _each(zip(legs, steps, strict=True), breathe)
    ]


def _each(parts: Iterable[_Part], breathe: Callable[[], None]) -> Iterator[_Part]:
    for part in parts:
        breathe()
        yield part


def _start(
    legs: list[PreparedLeg],
    scale: Floats,
    before: PriorAxis,
    alike: bool,
    priors: Priors,
    breathe: Callable[[], None],
) -> tuple[Floats, list[PreparedLeg]]:
    """Axis to linearise about, and the legs with their steps found."""
    axis = rough_axis(legs, scale, before, alike, breathe)
    stepped = [leg.with_steps(axis, priors) for leg in _each(legs, breathe)]
    if any(leg.steps for leg in stepped):
        axis = rough_axis(stepped, scale, before, alike, breathe)
    return axis, stepped


def _is_contradicted(before: PriorAxis, fit: PriorAxis, rivals: Sequence[PriorAxis]) -> bool:
    unlike = before.disagreement(fit)
    least = min((rival.disagreement(fit) for rival in rivals), default=unlike)
    return unlike > _CONTRADICTION or unlike - least > _RATHER


def _widened(fit: AxisFit) -> PriorAxis:
    """The fit with the few degrees of freedom of short legs in its covariance."""
    widening = fit.interval_factor / 1.96
    return PriorAxis(fit.sky_arcmin, fit.covariance_arcmin2 * np.outer(widening, widening))


@dataclass(frozen=True, eq=False)
class _Told:
    """What a solution says beside the fit itself."""

    site: Site
    air: Air
    before: PriorAxis | None
    priors: Priors
    trends: tuple[LegTrend, ...]
    notes: tuple[Note, ...]
    contradiction: Contradiction | None

    def solution(self, legs: LegSet, fit: AxisFit) -> Solution:
        """Of the legs chosen."""
        if self.contradiction is not None and not self.contradiction.left_out:
            return self._solution(legs, fit, np.full(2, False), None)
        alike = self.before is None and one_direction([rate.prepared.track for rate in legs.rates])
        known = not alike and bool(fit.half_widths_arcmin.max() < _TOLD_ARCMIN)
        if not known and self.before is None:
            fit = legs.settled(fit.axis_rad, _SET_UP_WITH_CARE)
        told = np.full(2, True) if known else fit.half_widths_arcmin < _TOLD_ARCMIN
        if alike:  # one of the errors at most, however much a small difference may seem to show
            told[np.argmin(np.abs(legs.main_direction(fit.axis_rad)))] = False
        latitude = float(np.deg2rad(self.site.latitude_deg))
        reach = (abs(fit.sky_arcmin[0]) + fit.half_widths_arcmin[0]) / to_sky(latitude)[0]
        told[0] &= azimuth_has_meaning(latitude) and bool(reach < _FARTHEST_AZIMUTH_ARCMIN)
        return self._solution(legs, fit, told, None if known else self._combination(legs, fit))

    def _combination(self, legs: LegSet, fit: AxisFit) -> SingleStarConstraint:
        return single_star_constraint(
            fit.sky_arcmin,
            fit.covariance_arcmin2,
            float(fit.interval_factor.max()),
            float(np.deg2rad(self.site.latitude_deg)),
            legs.azimuth_if_altitude_is_right(),
            legs.altitude_if_azimuth_is_right(),
            len(legs.rates),
        )

    def _solution(
        self, legs: LegSet, fit: AxisFit, told: NDArray[np.bool_], one: SingleStarConstraint | None
    ) -> Solution:
        latitude = float(np.deg2rad(self.site.latitude_deg))
        azimuth, altitude = fit.sky_arcmin / to_sky(latitude)
        azimuth_sigma, altitude_sigma = fit.sigma_arcmin / to_sky(latitude)
        refracted = float(altitude) - pole_refraction_arcmin(self.site, self.air)
        both = bool(told.all())
        correlation = float(fit.covariance_arcmin2[0, 1] / np.prod(fit.sigma_arcmin))
        sky, sky_sigma = _sky_error(fit, latitude)
        is_open = self.contradiction is not None and not self.contradiction.left_out
        by_legs_alone = both and one is None and self.before is None and len(legs.rates) > 1
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
            combination=one,
            legs=self.trends,
            notes=self.notes + geometry_warnings(self.trends, by_legs_alone, self.site, self.air),
            latitude_deg=self.site.latitude_deg,
            information_arcmin2=self._information(legs, fit),
            before_information_arcmin2=np.zeros((2, 2))
            if self.before is None
            else self.before.information_arcmin2,
            knowledge=_START if is_open else fit.knowledge,
            priors=self.priors,
            contradiction=self.contradiction,
        )

    def _information(self, legs: LegSet, fit: AxisFit) -> tuple[Floats, ...]:
        """Of every leg (2, 2), arcmin⁻²; nothing of those that are not believed."""
        used = dict(zip(legs.numbers, legs.information_arcmin2(fit.axis_rad), strict=True))
        return tuple(used.get(number, np.zeros((2, 2))) for number in range(len(self.trends)))


def _sky_error(fit: AxisFit, latitude_rad: float) -> tuple[float, float]:
    """Angle between axis and true pole, arcmin, and its standard deviation."""
    size = sky_error_rad(latitude_rad, *map(float, fit.axis_rad))
    towards = fit.sky_arcmin / max(float(np.linalg.norm(fit.sky_arcmin)), 1e-12)
    sigma = float(np.sqrt(towards @ fit.covariance_arcmin2 @ towards))
    return size * ARCMIN_PER_RAD, sigma


def pole_refraction_arcmin(site: Site, air: Air) -> float:
    """How far the air lifts the elevated pole."""
    pole = abs(np.deg2rad(site.latitude_deg))
    lifted = Refraction.of(air).observed_altitude_rad(pole)
    return float(lifted - pole) * ARCMIN_PER_RAD
