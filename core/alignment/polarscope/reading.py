"""What the pole star's place in a polar-axis sight says of the axis, and where it belongs."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.alignment.drift.geometry import sky_error_rad
from core.alignment.polarscope.view import ScopeView, UnusableSighting, View, axis_under, scope_view
from core.alignment.words import altitude_side, azimuth_side
from core.language import say
from core.sky.pole import elevated_pole, pole_star
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD

_WEAK_AZIMUTH_DEG = 85.0
_LOW_POLE_DEG = 5.0
_NO_AZIMUTH_DEG = 89.5


@dataclass(frozen=True)
class ScopeReading:
    """The axis error that a sighting shows; signs as in `core.alignment.drift.geometry`.

    `altitude_error_arcmin` is from the true pole, `altitude_error_refracted_arcmin` from the
    refracted one, `sky_error_arcmin` the whole angle to the true pole. `azimuth_sentence` and
    `altitude_sentence` (towards the true pole) say the same in words; `limits` are sentences.
    """

    azimuth_error_arcmin: float
    altitude_error_arcmin: float
    altitude_error_refracted_arcmin: float
    sky_error_arcmin: float
    azimuth_sentence: str
    altitude_sentence: str
    limits: tuple[str, ...]


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
        raise UnusableSighting(
            say(
                "Within half a degree of the Earth's pole the axis points to the zenith and "
                "has no azimuth. Set it upright with a spirit level, then watch stars "
                "drift."
            )
        )
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
        azimuth_sentence=_azimuth_sentence(60.0 * azimuth_deg, latitude),
        altitude_sentence=_altitude_sentence(60.0 * altitude_deg),
        limits=limits(site),
    )


def limits(site: Site) -> tuple[str, ...]:
    """What a polar-axis sight can and cannot do at this latitude, in sentences."""
    height_deg = abs(site.latitude_deg)
    if height_deg > _WEAK_AZIMUTH_DEG:
        return (
            say(
                "So near the Earth's pole the axis is almost upright: azimuth hardly moves "
                "it, and a small slip in the sight makes a large azimuth error. Trust the "
                "angle on the sky."
            ),
        )
    if height_deg < _LOW_POLE_DEG:
        return (
            say(
                "So near the equator the pole is on the horizon: haze, obstacles and "
                "refraction that changes by arcminutes make its star a poor mark. Watch "
                "stars drift instead."
            ),
        )
    return ()


def _azimuth_sentence(error_arcmin: float, latitude_rad: float) -> str:
    side = azimuth_side(error_arcmin, latitude_rad)
    return say(
        "The axis points {size} {where}: {turn}.",
        size=_size(error_arcmin),
        where=side.where,
        turn=side.turn,
    )


def _altitude_sentence(error_arcmin: float) -> str:
    side = altitude_side(error_arcmin)
    return say(
        "The axis is {size} {where}: {turn}.",
        size=_size(error_arcmin),
        where=side.where,
        turn=side.turn,
    )


def _size(error_arcmin: float) -> str:
    size = abs(error_arcmin)
    return f"{size:.1f}′" if size < 120.0 else f"{size / 60.0:.1f}°"
