"""What the pole star's place in a polar-axis sight says of the axis, and where it belongs."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.alignment.drift.geometry import sky_error_rad
from core.alignment.polarscope.view import ScopeView, UnusableSighting, View, axis_under, scope_view
from core.finding import Code, Finding
from core.sky.pole import elevated_pole, pole_star
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD


class SightLimit(Code):
    """What a polar scope cannot do at a latitude."""

    NO_AZIMUTH = "no azimuth"
    UPRIGHT_AXIS = "upright axis"
    LOW_POLE = "low pole"


_WEAK_AZIMUTH_DEG = 85.0
_LOW_POLE_DEG = 5.0
_NO_AZIMUTH_DEG = 89.5


@dataclass(frozen=True)
class ScopeReading:
    """The axis error that a sighting shows; signs as in `core.alignment.drift.geometry`.

    `altitude_error_arcmin` is from the true pole, `altitude_error_refracted_arcmin` from the
    refracted one, `sky_error_arcmin` the whole angle to the true pole. `limits`: what a polar scope
    cannot do at this latitude.
    """

    azimuth_error_arcmin: float
    altitude_error_arcmin: float
    altitude_error_refracted_arcmin: float
    sky_error_arcmin: float
    limits: tuple[Finding, ...]


def expected_in_sight(site: Site, air: Air, utc_s: float, view: View, refracted: bool) -> ScopeView:
    """Where the pole star belongs when the axis is on the pole: the refracted or the true one."""
    pole = elevated_pole(site, air)
    star = pole_star(site, air, utc_s)
    altitude_deg = pole.refracted_altitude_deg if refracted else pole.true_altitude_deg
    return scope_view(star.azimuth_deg, star.altitude_deg, pole.azimuth_deg, altitude_deg, view)


def error_from_sighting(
    place: ScopeView, view: View, site: Site, air: Air, utc_s: float
) -> ScopeReading:
    """The axis error when the pole star sits at `place` in the sight. Raises UnusableSighting.

    For a sight with a ring of known radius the distance is the fraction of it times that radius.
    """
    if abs(site.latitude_deg) > _NO_AZIMUTH_DEG:
        raise UnusableSighting(SightLimit.NO_AZIMUTH)
    star, pole = pole_star(site, air, utc_s), elevated_pole(site, air)
    axis_azimuth_deg, axis_altitude_deg = axis_under(
        star.azimuth_deg, star.altitude_deg, place, view, pole.azimuth_deg
    )
    azimuth_deg = (axis_azimuth_deg - pole.azimuth_deg + 180.0) % 360.0 - 180.0
    altitude_deg = axis_altitude_deg - pole.true_altitude_deg
    latitude = float(np.radians(site.latitude_deg))
    sky = sky_error_rad(latitude, float(np.radians(azimuth_deg)), float(np.radians(altitude_deg)))
    return ScopeReading(
        azimuth_error_arcmin=60.0 * azimuth_deg,
        altitude_error_arcmin=60.0 * altitude_deg,
        altitude_error_refracted_arcmin=60.0 * (axis_altitude_deg - pole.refracted_altitude_deg),
        sky_error_arcmin=sky * ARCMIN_PER_RAD,
        limits=limits(site),
    )


def limits(site: Site) -> tuple[Finding, ...]:
    """What a polar scope can and cannot do at this latitude."""
    height_deg = abs(site.latitude_deg)
    if height_deg > _WEAK_AZIMUTH_DEG:
        return (Finding.of(SightLimit.UPRIGHT_AXIS),)
    if height_deg < _LOW_POLE_DEG:
        return (Finding.of(SightLimit.LOW_POLE),)
    return ()
