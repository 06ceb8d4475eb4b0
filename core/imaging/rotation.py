"""What the sky does in an alt-azimuth mount: field rotation and the speed of both axes."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.language import say
from core.sky import places
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.units import SIDEREAL_DEG_PER_HOUR

Floats = NDArray[np.float64]

NO_AIR = Air(0.0)
_CHUNK, _CORES = 32768, 2
_SMALLEST_COSINE = 1e-12  # of the altitude: at the zenith the rates have no bound


@dataclass(frozen=True, eq=False)
class FieldTurning:
    """Angles and rates at each place; shapes broadcast from azimuth and altitude.

    Nearer than 1e-12 rad to the zenith the two rates without bound stay at their value there.
    """

    parallactic_angle_deg: Floats  # in (−180, 180], west positive
    rate_deg_per_hour: Floats  # field rotation
    azimuth_rate_deg_per_hour: Floats
    altitude_rate_deg_per_hour: Floats  # of the observed altitude


def turning(
    latitude_deg: float, azimuth_deg: ArrayLike, altitude_deg: ArrayLike, air: Air = NO_AIR
) -> FieldTurning:
    """All four quantities for observed places that move with the stars.

    Give a map as a row of azimuths and a column of altitudes: they broadcast, and a million cells
    cost little more than writing them. Meeus, Astronomical Algorithms, ch. 14, differentiated:
    dq/dH = −cos φ cos A / cos h, dA/dH = sin φ − cos φ tan h cos A, dh/dH = cos φ sin A.
    """
    azimuth, altitude = np.asarray(azimuth_deg, float), np.asarray(altitude_deg, float)
    if azimuth.shape == altitude.shape and azimuth.size > _CHUNK:
        return _in_chunks(latitude_deg, azimuth, altitude, air)
    return _turning(latitude_deg, azimuth, altitude, air)


def _in_chunks(
    latitude_deg: float, azimuth_deg: Floats, altitude_deg: Floats, air: Air
) -> FieldTurning:
    """Places in no order: in pieces that stay in the processor's cache, on two of its cores."""
    azimuth, altitude = azimuth_deg.ravel(), altitude_deg.ravel()
    found = np.empty((4, azimuth.size))

    def work(begin: int) -> None:
        piece = slice(begin, begin + _CHUNK)
        part = _turning(latitude_deg, azimuth[piece], altitude[piece], air)
        found[0, piece] = part.parallactic_angle_deg
        found[1, piece] = part.rate_deg_per_hour
        found[2, piece] = part.azimuth_rate_deg_per_hour
        found[3, piece] = part.altitude_rate_deg_per_hour

    with ThreadPoolExecutor(_CORES) as pool:
        list(pool.map(work, range(0, azimuth.size, _CHUNK)))
    return FieldTurning(*found.reshape(4, *azimuth_deg.shape))


def _turning(
    latitude_deg: float, azimuth_deg: Floats, altitude_deg: Floats, air: Air
) -> FieldTurning:
    latitude = np.radians(latitude_deg)
    azimuth = np.radians(azimuth_deg)
    altitude, slope = _true_altitude_rad(np.radians(altitude_deg), air)
    sin_lat, cos_lat = np.sin(latitude), np.cos(latitude)
    sin_alt, cos_alt = np.sin(altitude), np.cos(altitude)
    north, east = cos_lat * np.cos(azimuth), cos_lat * np.sin(azimuth)
    per_cosine = SIDEREAL_DEG_PER_HOUR / np.maximum(cos_alt, _SMALLEST_COSINE)
    return FieldTurning(
        np.degrees(np.arctan2(-east, sin_lat * cos_alt - sin_alt * north)),
        -north * per_cosine,
        SIDEREAL_DEG_PER_HOUR * sin_lat - north * (sin_alt * per_cosine),
        SIDEREAL_DEG_PER_HOUR * east * slope,
    )


def rate_deg_per_hour(
    latitude_deg: float, azimuth_deg: ArrayLike, altitude_deg: ArrayLike, air: Air = NO_AIR
) -> Floats:
    """Field rotation alone, as `turning` gives it."""
    altitude, _ = _true_altitude_rad(np.radians(altitude_deg), air)
    north = np.cos(np.radians(latitude_deg)) * np.cos(np.radians(azimuth_deg))
    cos_alt = np.maximum(np.cos(altitude), _SMALLEST_COSINE)
    return np.asarray(north * (-SIDEREAL_DEG_PER_HOUR / cos_alt))


def turning_of_star(
    ra_deg: float, dec_deg: float, site: Site, air: Air, utc_s: ArrayLike
) -> tuple[Floats, Floats, FieldTurning]:
    """Observed azimuth and altitude, degrees, and the turning there; shaped as `utc_s`.

    `ra_deg`, `dec_deg`: ICRS as seen from the Earth at that time.
    """
    azimuth, altitude = places.horizontal_deg(ra_deg, dec_deg, site, air, utc_s)
    return azimuth, altitude, turning(site.latitude_deg, azimuth, altitude, air)


def _true_altitude_rad(observed_rad: ArrayLike, air: Air) -> tuple[Floats, Floats]:
    """The true altitude, and how much the observed one changes with it."""
    observed = np.asarray(observed_rad, dtype=np.float64)
    refraction = Refraction.of(air)
    if refraction.a_rad == 0.0:
        return observed, np.ones_like(observed)
    lift, change = refraction.lift_and_slope(observed)
    return observed - lift, 1.0 / (1.0 - change)


# One target through the night in an alt-azimuth mount: where it is and how the field turns.

TURN_DEG = 360.0


@dataclass(frozen=True, eq=False)
class RotationTrack:
    """A star at (n,) times, in order. Angles in degrees, observed unless said otherwise.

    `field_angle_deg` is the parallactic angle without its jumps: the rotation between two moments
    is the difference of its values.
    """

    site: Site
    utc_s: Floats
    hour_angle_deg: Floats  # continuous, west positive
    declination_deg: float  # apparent
    azimuth_deg: Floats
    altitude_deg: Floats
    field_angle_deg: Floats
    rate_deg_per_hour: Floats
    azimuth_rate_deg_per_hour: Floats
    altitude_rate_deg_per_hour: Floats

    def field_angle_at_deg(self, utc_s: ArrayLike) -> Floats:
        """`field_angle_deg` at any moments of the track, exactly; shaped as `utc_s`."""
        times = np.asarray(utc_s, dtype=np.float64)
        hour_angle = np.interp(times, self.utc_s, self.hour_angle_deg)
        return field_angle_deg(hour_angle, self.declination_deg, self.site.latitude_deg)

    def rotation_deg(self, from_utc_s: float, to_utc_s: float) -> float:
        """By how much the field turns between two moments of the track, with its sign."""
        first, last = self.field_angle_at_deg([from_utc_s, to_utc_s])
        return float(last - first)


def track(ra_deg: float, dec_deg: float, site: Site, air: Air, utc_s: ArrayLike) -> RotationTrack:
    """The star of this ICRS place (as seen from the Earth then) at increasing times (n,).

    Diurnal aberration (0.3″) is left out. Raises ValueError when the times do not increase.
    """
    times = np.atleast_1d(np.asarray(utc_s, dtype=np.float64))
    if times.size == 0 or np.any(np.diff(times) <= 0.0):
        raise ValueError(say("A track needs moments in rising order."))
    hour_angle, declination = places.hour_angle_and_declination(ra_deg, dec_deg, site, times)
    azimuth, true_altitude = erfa.hd2ae(hour_angle, declination, np.radians(site.latitude_deg))
    altitude = np.degrees(Refraction.of(air).observed_altitude_rad(true_altitude))
    azimuth_deg = np.mod(np.degrees(azimuth), TURN_DEG)
    rates = turning(site.latitude_deg, azimuth_deg, altitude, air)
    hour_angle_deg, declination_deg = np.degrees(hour_angle), float(np.degrees(declination))
    return RotationTrack(
        *(site, times, hour_angle_deg, declination_deg, azimuth_deg, altitude),
        field_angle_deg(hour_angle_deg, declination_deg, site.latitude_deg),
        *(rates.rate_deg_per_hour, rates.azimuth_rate_deg_per_hour),
        rates.altitude_rate_deg_per_hour,
    )


def field_angle_deg(
    hour_angle_deg: ArrayLike, declination_deg: float, latitude_deg: float
) -> Floats:
    """Parallactic angle, continuous in a continuous hour angle (n,), west positive.

    A star that passes between the zenith and a pole turns its field once round each day; any other
    swings to and fro. Which of the two is decided exactly, so no jump is missed however coarse the
    steps.
    """
    hour_angle = np.asarray(hour_angle_deg, dtype=np.float64)
    days = np.floor(hour_angle / TURN_DEG)  # each upper transit begins one
    if declination_deg <= -abs(latitude_deg):
        days = np.floor(hour_angle / TURN_DEG + 0.5)  # here it jumps at lower transits instead
    declination, latitude = np.radians(declination_deg), np.radians(latitude_deg)
    within = np.radians(hour_angle - TURN_DEG * days)
    angle = np.degrees(erfa.hd2pa(within, declination, latitude))
    if declination_deg >= abs(latitude_deg):
        angle = angle - TURN_DEG * days
    elif declination_deg <= -abs(latitude_deg):
        angle = angle + TURN_DEG * days
    elif latitude_deg < 0.0:  # swings about 180°: the north pole is below the star
        angle = np.mod(angle, TURN_DEG)
    return np.asarray(angle, dtype=np.float64)


# How far apart the angles of a field come while it turns, and how long they stay within a span.
#
# A star that passes between the zenith and a pole turns its field one way for ever; any other turns
# it back on the prime vertical, of either side. Angles are parallactic, west positive.

_ROUND = 2.0 * np.pi
_AT_ZENITH = 1e-12  # sine of the zenith distance


def rotation_span_deg(track: RotationTrack, exposure_s: ArrayLike) -> Floats:
    """How far apart the field's angles come in exposures begun at each moment; (n,)."""
    begun = track.hour_angle_deg
    ended = begun + np.asarray(exposure_s) / 3600.0 * SIDEREAL_DEG_PER_HOUR
    latitude_deg, declination_deg = track.site.latitude_deg, track.declination_deg
    hours = [begun, ended]
    if abs(declination_deg) < abs(latitude_deg):
        west = _turning_point_rad(*np.radians([declination_deg, latitude_deg]).tolist())
        for turning_point in np.degrees([west, -west]):
            nearest = turning_point + 360.0 * np.ceil((begun - turning_point) / 360.0)
            hours.append(np.minimum(nearest, ended))
    angles = [field_angle_deg(hour, declination_deg, latitude_deg) for hour in hours]
    return np.asarray(np.max(angles, axis=0) - np.min(angles, axis=0))


def turn_within_rad(
    hour_angle_rad: ArrayLike, declination_rad: ArrayLike, latitude_rad: float, span_rad: float
) -> Floats:
    """How far the sky may turn until the field's angles lie `span_rad` (below π) apart.

    Broadcasts; infinite where they never do. In closed form: the field's angle is the direction in
    which the zenith is seen from the star, and the zenith goes round the pole on a small circle.
    """
    begun, declination = np.broadcast_arrays(
        np.asarray(hour_angle_rad, dtype=np.float64), np.asarray(declination_rad, dtype=np.float64)
    )
    swings = np.abs(declination) < abs(latitude_rad)
    back, swing_way = _next_turning_point(begun, declination, latitude_rad)
    way = np.where(swings, swing_way, np.where(declination > 0.0, -1.0, 1.0))
    angle, last = (erfa.hd2pa(hour, declination, latitude_rad) for hour in (begun, back))
    onward = way * ((last - angle + np.pi) % _ROUND - np.pi)
    is_before = ~swings | (onward >= span_rad)
    start = np.where(is_before, begun, back)
    wanted = np.where(is_before, angle + way * span_rad, last - way * span_rad)
    turn = start - begun + _turn_to(wanted, start, declination, latitude_rad)
    return np.where(swings & (_swing_rad(declination, latitude_rad) < span_rad), np.inf, turn)


def _turning_point_rad(declination_rad: Floats | float, latitude_rad: float) -> Floats:
    """Hour angle in the west on the prime vertical: cos H = tan δ / tan φ, without the tangents."""
    squared = np.sin(latitude_rad - declination_rad) * np.sin(latitude_rad + declination_rad)
    south = np.sin(declination_rad) * np.cos(latitude_rad) * np.sign(latitude_rad)
    return np.asarray(np.arctan2(np.sqrt(np.maximum(squared, 0.0)), south))


def _next_turning_point(
    begun: Floats, declination: Floats, latitude_rad: float
) -> tuple[Floats, Floats]:
    """Its hour angle, not before `begun`, and the sign of the rotation until then."""
    west = _turning_point_rad(declination, latitude_rad)
    to_west, to_east = (west - begun) % _ROUND, (-west - begun) % _ROUND
    way = np.where(to_west <= to_east, 1.0, -1.0) * np.sign(latitude_rad)
    return begun + np.minimum(to_west, to_east), way


def _swing_rad(declination: Floats, latitude_rad: float) -> Floats:
    """From one turning point to the other; the star's angle there is a right triangle's."""
    ratio = np.cos(latitude_rad) / np.maximum(np.cos(declination), _AT_ZENITH)
    return np.asarray(2.0 * np.arcsin(np.minimum(ratio, 1.0)))


def _turn_to(angle_rad: Floats, start: Floats, declination: Floats, latitude_rad: float) -> Floats:
    """From hour angle `start` to the next one with this field angle, in [0, 2π); infinite if none.

    Along the great circle from the star in that direction the zenith is where the sine of the
    declination, sin δ cos z + cos δ cos q sin z, is that of the latitude.
    """
    sin_dec, cos_dec = np.sin(declination), np.cos(declination)
    poleward = cos_dec * np.cos(angle_rad)
    middle = np.arctan2(poleward, sin_dec)
    size = np.maximum(np.hypot(poleward, sin_dec), _AT_ZENITH)
    aside = np.arccos(np.clip(np.sin(latitude_rad) / size, -1.0, 1.0))
    turns = []
    for zenith_distance in (middle - aside, middle + aside):
        sine, cosine = np.sin(zenith_distance), np.cos(zenith_distance)
        across = sine * np.sin(angle_rad)
        hour_angle = np.arctan2(across, cos_dec * cosine - sin_dec * np.cos(angle_rad) * sine)
        turns.append(np.where(sine >= -_AT_ZENITH, (hour_angle - start) % _ROUND, np.inf))
    return np.asarray(np.minimum(turns[0], turns[1]))
