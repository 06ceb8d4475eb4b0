"""Places in a polar-axis sight: from the sky to the clock face of the sight and back.

A polar-axis sight looks along the mount's axis towards the elevated pole; its middle is the axis.
A place in it is a clock angle (degrees clockwise from 12 o'clock, as the eye sees the field) and a
distance from the middle. In an erect view 12 o'clock is towards the zenith and 3 o'clock towards
greater azimuth: east in the north, west in the south. So with growing hour angle (west positive)
the stars turn anticlockwise in the north and clockwise in the south. The sight's own 12 o'clock
must have been set upright.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.alignment.drift.geometry import altitude_azimuth_rad, direction, hemisphere_sign
from core.finding import Code, Refused
from core.units import ARCMIN_PER_RAD


class Sighting(Code):
    """Why what was read in a polar scope cannot be."""

    NO_CLOCK_PLACE = "no place on a clock"
    NO_AXIS = "no axis"


Floats = NDArray[np.float64]

_HALF_DAY_MIN = 720  # minutes round a clock face


class View(Code):
    """How the sight shows the sky."""

    ERECT = "erect"
    INVERTED = "inverted"  # turned by half a turn
    # Left and right exchanged, as behind one mirror or a simple prism.
    MIRRORED = "mirrored"


class UnusableSighting(Refused):
    """What was read in the polar scope cannot be."""


@dataclass(frozen=True, eq=False)
class ScopeView:
    """Places in the sight, both of one shape: degrees clockwise from 12 o'clock in [0, 360)."""

    clock_angle_deg: Floats
    distance_arcmin: Floats


def dial_angle_deg(hour_angle_deg: ArrayLike, latitude_deg: float, view: View) -> Floats:
    """Clock angle of a star by its hour angle alone, about the true pole and without air.

    Degrees clockwise from 12 o'clock in [0, 360), shaped as `hour_angle_deg`.
    """
    erect = -hemisphere_sign(latitude_deg) * np.asarray(hour_angle_deg, dtype=np.float64)
    return _viewed_deg(erect, view)


def clock_text(clock_angle_deg: float) -> str:
    """The place of an hour hand there: 310° is "10:20"."""
    minutes = round((clock_angle_deg % 360.0) * 2.0) % _HALF_DAY_MIN
    return f"{minutes // 60 or 12}:{minutes % 60:02d}"


def clock_angle_of_text(text: str) -> float:
    """Degrees clockwise from 12 of "10:20", "10.20" or "10"; raises UnusableSighting."""
    hours, _, minutes = text.strip().replace(".", ":").partition(":")
    if hours.isdecimal() and (minutes or "0").isdecimal() and int(minutes or 0) < 60:
        whole = int(hours)
        if 0 <= whole <= 12:
            return ((whole % 12) * 60 + int(minutes or 0)) / 2.0
    raise UnusableSighting(Sighting.NO_CLOCK_PLACE, text=text.strip()[:20])


def scope_view(
    azimuth_deg: ArrayLike,
    altitude_deg: ArrayLike,
    axis_azimuth_deg: float,
    axis_altitude_deg: float,
    view: View,
) -> ScopeView:
    """Where stars seen at these azimuths and altitudes sit in the sight of such an axis.

    Observed places in; the first two arguments broadcast. The axis is a plain direction: the
    refracted pole for an axis aimed there. Exact at any distance.
    """
    turned = np.radians(np.asarray(azimuth_deg, dtype=np.float64) - axis_azimuth_deg)
    star = direction(turned, np.radians(altitude_deg))
    tilt = np.radians(axis_altitude_deg)
    along = star[..., 0] * np.cos(tilt) + star[..., 2] * np.sin(tilt)
    upward = star[..., 2] * np.cos(tilt) - star[..., 0] * np.sin(tilt)
    rightward = star[..., 1]
    distance = np.arctan2(np.hypot(upward, rightward), along)
    erect_deg = np.degrees(np.arctan2(rightward, upward))
    return ScopeView(_viewed_deg(erect_deg, view), distance * ARCMIN_PER_RAD)


def axis_under(
    azimuth_deg: float,
    altitude_deg: float,
    place: ScopeView,
    view: View,
    pole_azimuth_deg: float,
) -> tuple[float, float]:
    """Azimuth [0, 360) and altitude, degrees, of the axis in whose sight a star sits at `place`.

    The inverse of `in_sight`: `azimuth_deg`, `altitude_deg` are where the star is seen. Close to
    the zenith two axes may fit; the one nearer the azimuth of the pole is taken. Raises
    UnusableSighting when none fits.
    """
    angle = np.radians(_viewed_deg(place.clock_angle_deg, view))
    distance = np.asarray(place.distance_arcmin) / ARCMIN_PER_RAD
    rightward, upward = np.sin(distance) * np.sin(angle), np.sin(distance) * np.cos(angle)
    # Height of the star: sin h = cos d · sin a + upward · cos a, solved for the axis altitude a.
    sine = np.sin(np.radians(altitude_deg)) / np.hypot(np.cos(distance), upward)
    if not abs(sine) <= 1.0:
        raise UnusableSighting(Sighting.NO_AXIS)
    either = np.array([np.arcsin(sine), np.pi - np.arcsin(sine)])
    altitude = either - np.arctan2(upward, np.cos(distance))
    altitude = altitude[np.abs(altitude) <= 0.5 * np.pi]
    forward = np.cos(distance) * np.cos(altitude) - upward * np.sin(altitude)
    azimuth_from_pole = np.radians(azimuth_deg - pole_azimuth_deg) - np.arctan2(rightward, forward)
    nearest = int(np.argmax(np.cos(azimuth_from_pole)))
    azimuth = azimuth_from_pole[nearest] + np.radians(pole_azimuth_deg)
    altitude_rad, azimuth_rad = altitude_azimuth_rad(direction(azimuth, altitude[nearest]))
    return float(np.degrees(azimuth_rad)), float(np.degrees(altitude_rad))


def _viewed_deg(clock_angle_deg: ArrayLike, view: View) -> Floats:
    """From erect to the view, and back again: each view undoes itself."""
    angle = np.asarray(clock_angle_deg, dtype=np.float64)
    if view is View.INVERTED:
        angle = angle + 180.0
    elif view is View.MIRRORED:
        angle = -angle
    return np.asarray(np.mod(angle, 360.0), dtype=np.float64)
