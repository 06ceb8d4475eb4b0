"""What makes a set of legs weak: stars too alike, too low, too near the pole."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

import numpy as np

from core.alignment.axis.evidence import azimuth_has_meaning
from core.alignment.axis.legrate import LegTrend
from core.alignment.drift.prepared import Note, note
from core.finding import Code
from core.sky.site import Air, Site
from core.units import SIDEREAL_ARCSEC_PER_MIN


class Weakness(Code):
    """What makes a set of legs weak."""

    STARS_ALIKE = "stars alike"
    UPRIGHT_AXIS = "upright axis"
    POLAR_SITE = "polar site"
    EQUATORIAL_SITE = "equatorial site"
    NO_REFRACTION = "no refraction"
    BELOW_HORIZON = "below horizon"
    LOW_STAR = "low star"
    NEAR_THE_POLE = "near the pole"
    FAST_STAR = "fast star"
    TURNED_RETICLE = "turned reticle"
    BENDS = "bends"
    STEP = "step"
    SET_ASIDE = "set aside"


_ALIKE_DEG = 25.0
_LOW_ALTITUDE_DEG = 20.0
_POLAR_DECLINATION_DEG = 75.0
_POLAR_SITE_DEG = 85.0
_UNLIKELY_AXIS_DEG = 8.0  # the eye sees that a mount points so far beside the pole
_BENT_SIGMAS = 5.0
_TURNED_SIGMAS, _TURNED_DEG, _NORMAL_95 = 3.3, 0.7, 1.96
_EQUATORIAL_SITE_DEG = 5.0


def geometry_warnings(
    legs: Sequence[LegTrend], by_legs_alone: bool, site: Site, air: Air
) -> tuple[Note, ...]:
    """Notes on the geometry; `by_legs_alone`: they tell both errors of the axis, nothing else."""
    notes = [*(_of_pair(legs) if by_legs_alone else ()), *_of_site(site, air)]
    for leg in legs:
        notes += [*_of_star(leg), *_of_readings(leg)]
    return tuple(notes)


def _of_pair(legs: Sequence[LegTrend]) -> Iterator[Note]:
    """Hour angles twelve hours apart show the same as equal ones."""
    angles = np.array([leg.hour_angle_deg for leg in legs])
    if float(np.ptp((angles - angles[0] + 90.0) % 180.0)) > _ALIKE_DEG:
        return
    yield note(Weakness.STARS_ALIKE, hour_angles_deg=tuple(leg.hour_angle_deg for leg in legs))


def _of_site(site: Site, air: Air) -> Iterator[Note]:
    latitude = abs(site.latitude_deg)
    if not azimuth_has_meaning(math.radians(latitude)):
        yield note(Weakness.UPRIGHT_AXIS, latitude=site.latitude_deg)
    elif latitude > _POLAR_SITE_DEG:
        yield note(Weakness.POLAR_SITE, latitude=site.latitude_deg)
    if latitude < _EQUATORIAL_SITE_DEG:
        yield note(Weakness.EQUATORIAL_SITE, latitude=site.latitude_deg)
    if air.pressure_hpa <= 0.0:
        yield note(Weakness.NO_REFRACTION)


def _of_star(leg: LegTrend) -> Iterator[Note]:
    if leg.altitude_deg <= 0.0:
        yield note(Weakness.BELOW_HORIZON, leg.label, depth=-leg.altitude_deg)
    elif leg.altitude_deg < _LOW_ALTITUDE_DEG:
        yield note(Weakness.LOW_STAR, leg.label, altitude=leg.altitude_deg)
    if abs(leg.declination_deg) > _POLAR_DECLINATION_DEG:
        yield note(Weakness.NEAR_THE_POLE, leg.label, distance=90.0 - abs(leg.declination_deg))


def _of_readings(leg: LegTrend) -> Iterator[Note]:
    least_deg = math.degrees(math.asin(min(_turning_share(leg), 1.0)))
    if least_deg > _UNLIKELY_AXIS_DEG:
        yield note(
            Weakness.FAST_STAR, leg.label, rate=abs(leg.drift_arcsec_per_min), least=least_deg
        )
    if abs(leg.angle_deg) > max(_TURNED_SIGMAS * leg.angle_sigma_deg, _TURNED_DEG):
        yield note(
            Weakness.TURNED_RETICLE,
            leg.label,
            angle=abs(leg.angle_deg),
            width=_NORMAL_95 * leg.angle_sigma_deg,
        )
    if leg.bend_sigmas > _BENT_SIGMAS:
        yield note(
            Weakness.BENDS,
            leg.label,
        )
    for step in leg.steps:
        after = (step.utc_s - float(leg.curve_utc_s[0])) / 60.0
        yield note(Weakness.STEP, leg.label, size_arcsec=step.size_arcsec, after=after)
    aside = int(np.count_nonzero(leg.rejected))
    if aside:
        yield note(
            Weakness.SET_ASIDE,
            leg.label,
            aside=aside,
            count=leg.sample_count,
        )


def _turning_share(leg: LegTrend) -> float:
    """The sine of the least angle between axis and pole that makes a star drift so fast."""
    return abs(leg.drift_arcsec_per_min) / SIDEREAL_ARCSEC_PER_MIN
