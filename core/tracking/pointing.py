"""One star in the middle of the field: where the mount said it was, and where it was."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.special import stdtrit

from core.alignment.axis.solution import Solution
from core.alignment.drift.geometry import (
    altitude_azimuth_rad,
    axis_north_end,
    direction,
    observed_direction,
)
from core.finding import Code, Finding, Refused
from core.sky.clocks import local_sidereal_time_hours
from core.sky.places import hour_angle_and_declination
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD


class TermTold(Code):
    """What is told of the parts and of the whole."""

    UNKNOWN = "unknown"
    NOTHING = "nothing"
    ERROR = "error"
    OPEN = "parts not told"
    WHOLE = "whole"


class AxisCompared(Code):
    """Pointing against drift."""

    UNKNOWN = "unknown"
    AGREE = "agree"
    DISAGREE = "disagree"


class PointingFault(Code):
    """Why stars pointed at tell little or nothing."""

    LOW_STARS = "low stars"
    FEW_STARS = "few stars"
    NO_NUMBER = "no number"
    FAR_OFF = "far off"
    STAR_NUMBER = "star number"
    TOO_LOW = "too low"
    FEW = "rather few stars"


EAST_OF_PIER, WEST_OF_PIER = 1, -1


@dataclass(frozen=True)
class PointedStar:
    """Degrees; hour angles west positive. `star_*`: apparent place without refraction.

    `side`: +1 with the tube east of the pier (looking west), −1 west of it; a fork has +1 always.
    """

    star_hour_angle_deg: float
    star_declination_deg: float
    mount_hour_angle_deg: float
    mount_declination_deg: float
    side: int = EAST_OF_PIER
    label: str = ""


def sighting_of(
    star_deg: tuple[float, float],
    mount_deg: tuple[float, float],
    utc_s: float,
    site: Site,
    *,
    mount_is_of_date: bool,
    side: int = EAST_OF_PIER,
    label: str = "",
) -> PointedStar:
    """From right ascensions and declinations, degrees. `star_deg`: ICRS, as catalogues and plate
    solutions give it; `mount_deg`: ICRS too, or of date as most hand controls show it."""
    hour_angle, declination = hour_angle_and_declination(*star_deg, site, [utc_s])
    if mount_is_of_date:
        sidereal_deg = 15.0 * float(local_sidereal_time_hours(utc_s, site))
        mount = (sidereal_deg - mount_deg[0], mount_deg[1])
    else:
        angle, dec = hour_angle_and_declination(*mount_deg, site, [utc_s])
        mount = (math.degrees(angle[0]), math.degrees(dec))
    return PointedStar(
        math.degrees(hour_angle[0]),
        math.degrees(declination),
        (mount[0] + 180.0) % 360.0 - 180.0,
        mount[1],
        side,
        label,
    )


# What an imperfect equatorial mount reads when a star is in the middle of the field.
#
# The steps are exact rotations where angles may be large (the polar axis, as in
# `core.alignment.drift.geometry`) and first order where they are minutes of arc (all others).
# Terms, in the order of `TERMS`, radians inside:
#
# - zero of the hour circle: readings too far west by this angle,
# - zero of the declination circle: readings too far north on the east side of the pier, too far
# south
#   on the other, where the circle runs the other way,
# - azimuth and altitude error of the polar axis, signs as in `core.alignment.drift.geometry`,
# - tube not square to the declination axis: the tube looks this far east of where it should when it
#   stands on the east side of the pier, as far west on the other,
# - axes not square to each other: the same, growing as the tangent of declination,
# - sag of the tube: it looks this angle times the cosine of altitude too low.

Floats = NDArray[np.float64]

TERMS = 7
ZERO_HOUR, ZERO_DECLINATION, AZIMUTH, ALTITUDE, TUBE, AXES, SAG = range(TERMS)
_STEP_RAD = 1e-5
_NEAR_POLE_COSINE = 0.01


@dataclass(frozen=True, eq=False)
class StarDirections:
    """Where the stars were: true hour angle west positive and declination (n,), side of the pier
    +1 east, −1 west (n,)."""

    hour_angle_rad: Floats
    declination_rad: Floats
    side: Floats
    latitude_rad: float
    refraction: Refraction

    def seen(self) -> Floats:
        """Unit vectors (n, 3) north, east, up, refraction included."""
        rows = [
            observed_direction(one, float(dec), self.latitude_rad, self.refraction)
            for one, dec in zip(self.hour_angle_rad, self.declination_rad, strict=True)
        ]
        return np.stack(rows)


def readings(sky: StarDirections, terms_rad: Floats) -> Floats:
    """Hour angle and declination (n, 2) the mount reads, radians."""
    aimed = _raised(sky.seen(), float(terms_rad[SAG]))
    axis = axis_north_end(sky.latitude_rad, float(terms_rad[AZIMUTH]), float(terms_rad[ALTITUDE]))
    own = aimed @ _to_pole(axis, axis_north_end(sky.latitude_rad, 0.0, 0.0)).T
    hour_angle, declination = _equatorial(own, sky.latitude_rad)
    cosine = np.maximum(np.cos(declination), _NEAR_POLE_COSINE)
    sided = (terms_rad[TUBE] + terms_rad[AXES] * np.sin(declination)) / cosine
    return np.stack(
        [
            hour_angle + terms_rad[ZERO_HOUR] + sky.side * sided,
            declination + terms_rad[ZERO_DECLINATION] * sky.side,
        ],
        axis=-1,
    )


def sensitivity(sky: StarDirections, terms_rad: Floats) -> Floats:
    """Derivatives (n, 2, 7) of the readings by the terms."""
    columns = []
    for step in _STEP_RAD * np.eye(TERMS):
        apart = _wrapped(readings(sky, terms_rad + step) - readings(sky, terms_rad - step))
        columns.append(apart / (2.0 * _STEP_RAD))
    return np.stack(columns, axis=-1)


def on_sky(sky: StarDirections, apart_rad: Floats) -> Floats:
    """Differences of readings (n, 2, …) with the hour angle's times cos declination."""
    scale = np.stack([np.cos(sky.declination_rad), np.ones_like(sky.declination_rad)], axis=-1)
    return np.asarray(apart_rad * scale.reshape(*scale.shape, *(1,) * (apart_rad.ndim - 2)))


def _wrapped(angle_rad: Floats) -> Floats:
    return np.asarray((angle_rad + np.pi) % (2.0 * np.pi) - np.pi)


def _raised(seen: Floats, sag_rad: float) -> Floats:
    """Where the unbent tube points while its hanging end looks at the star."""
    altitude, azimuth = altitude_azimuth_rad(seen)
    return direction(azimuth, altitude + sag_rad * np.cos(altitude))


def _to_pole(axis: Floats, pole: Floats) -> Floats:
    """Smallest rotation (3, 3) that carries the axis onto the pole (Rodrigues' formula)."""
    across, cosine = np.cross(axis, pole), float(axis @ pole)
    skew = np.array(
        [[0.0, -across[2], across[1]], [across[2], 0.0, -across[0]], [-across[1], across[0], 0.0]]
    )
    return np.asarray(np.eye(3) + skew + skew @ skew / (1.0 + cosine))


def _equatorial(own: Floats, latitude_rad: float) -> tuple[Floats, Floats]:
    """Hour angle west positive and declination of unit vectors (n, 3) north, east, up."""
    north, east, up = own.T
    sin_lat, cos_lat = np.sin(latitude_rad), np.cos(latitude_rad)
    declination = np.arcsin(np.clip(north * cos_lat + up * sin_lat, -1.0, 1.0))
    return np.arctan2(-east, up * cos_lat - north * sin_lat), declination


# The parts of a pointing error in words, each with what a person does about it.

Flags = NDArray[np.bool_]


class PointingPart(Code):
    """The parts of a pointing error, in the order of the terms."""

    ZERO_HOUR = "zero of the hour circle"
    ZERO_DECLINATION = "zero of the declination circle"
    AZIMUTH = "azimuth of the polar axis"
    ALTITUDE = "altitude of the polar axis"
    TUBE = "tube against the declination axis"
    AXES = "declination axis against the polar axis"
    SAG = "sag of the tube"


PARTS = tuple(PointingPart)


@dataclass(frozen=True)
class Term:
    """One part, arcmin, signs as in `core.tracking.pointing`, with its standard deviation;
    `interval_factor` of them are half the 95 % interval. `is_determined`: the stars tell it;
    `stands_out`: it is not zero by chance.
    """

    part: PointingPart
    value_arcmin: float
    sigma_arcmin: float
    interval_factor: float
    is_determined: bool
    stands_out: bool
    sentence: Finding


def term(
    number: int, value: float, sigma: float, factor: float, is_determined: bool, site: Site
) -> Term:
    """The record of term `number`, values in arcmin."""
    stands_out = is_determined and abs(value) > factor * sigma
    part = PARTS[number]
    half_width = factor * sigma
    if not is_determined:
        told = Finding.of(TermTold.UNKNOWN, name=part)
    elif not stands_out:
        told = Finding.of(TermTold.NOTHING, part=part, half_width=half_width)
    else:
        told = Finding.of(TermTold.ERROR, part=part, value=value, half_width=half_width, site=site)
    return Term(part, value, sigma, factor, is_determined, stands_out, told)


def undetermined(told: Flags, both_sides: bool) -> Finding | None:
    """What the stars leave open and which stars would tell; None when all is told."""
    if told.all():
        return None
    parts = tuple(PARTS[number] for number in np.flatnonzero(~told))
    return Finding.of(TermTold.OPEN, parts=parts, both_sides=both_sides)


# How well the mount finds things, and the systematic parts a person can take out.

FEWEST_STARS = 3
COMFORTABLE_STARS = 8
LOWEST_DEG = 10.0
# What is taken for granted of the terms before the first star, one standard deviation, arcmin: the
# zeros and the axis almost nothing; the others what mounts have by common practice, no source.
PRIOR_ARCMIN = np.array([6000.0, 6000.0, 300.0, 300.0, 20.0, 10.0, 3.0])
_CENTRING_ARCMIN = 1.0
_CENTRING_WEIGHT = 2.0  # the stated centring counts as this many degrees of freedom
_ROUNDS = 6
_TOLD = 1.0  # a term is told when half its 95 % interval is below this part of the prior
_WRONG_STAR = 8.0


class UnusablePointing(Refused):
    """Nothing can be said from these stars."""


@dataclass(frozen=True, eq=False)
class Pointing:
    """Root mean squares on the sky, arcmin: as read, without the circles' zeros, and with all
    parts removed. `terms` are the parts; `used` (n,) flags the stars; `residual_arcmin` (n, 2):
    hour angle times cos declination (west) and declination (north). `covariance_arcmin2` (7, 7).
    """

    rms_arcmin: float
    rms_without_zeros_arcmin: float
    rms_left_arcmin: float
    terms: tuple[Term, ...]
    covariance_arcmin2: Floats
    residual_arcmin: Floats
    used: Flags
    latitude_deg: float
    notes: tuple[Finding, ...]
    sentence: Finding


def pointing(
    sightings: Sequence[PointedStar],
    site: Site,
    air: Air,
    centring_arcmin: float = _CENTRING_ARCMIN,
) -> Pointing:
    """Fit of all parts. `centring_arcmin`: how well a star is put in the middle, 1 sigma.

    `air`: without pressure when the mount itself allows for refraction. Raises UnusablePointing.
    """
    _check(sightings)
    stars = list(sightings)
    sky, read = _sky(stars, site, air), _read(stars)
    low = _low(sky)
    used = ~low
    if int(used.sum()) < FEWEST_STARS:
        raise UnusablePointing(
            PointingFault.LOW_STARS,
            count=int(used.sum()),
            lowest=LOWEST_DEG,
            fewest=FEWEST_STARS,
            comfortable=COMFORTABLE_STARS,
        )
    fit = _fit(sky, read, used, centring_arcmin)
    wrong = used & _wrong_stars(fit, used)
    if wrong.any() and int((used & ~wrong).sum()) >= FEWEST_STARS + 1:
        used = used & ~wrong
        fit = _fit(sky, read, used, centring_arcmin)
    return _record(fit, sky, read, used, stars, site)


def _check(sightings: Sequence[PointedStar]) -> None:
    if len(sightings) < FEWEST_STARS:
        raise UnusablePointing(
            PointingFault.FEW_STARS,
            count=len(sightings),
            fewest=FEWEST_STARS,
            comfortable=COMFORTABLE_STARS,
        )
    for one in sightings:
        numbers = (
            *(one.star_hour_angle_deg, one.star_declination_deg),
            *(one.mount_hour_angle_deg, one.mount_declination_deg),
        )
        if not np.isfinite(numbers).all() or max(abs(numbers[1]), abs(numbers[3])) > 90.0:
            raise UnusablePointing(PointingFault.NO_NUMBER, star=one.label)


def _sky(stars: list[PointedStar], site: Site, air: Air) -> StarDirections:
    return StarDirections(
        np.deg2rad([star.star_hour_angle_deg for star in stars]),
        np.deg2rad([star.star_declination_deg for star in stars]),
        np.array([float(star.side) for star in stars]),
        float(np.deg2rad(site.latitude_deg)),
        Refraction.of(air),
    )


def _read(stars: list[PointedStar]) -> Floats:
    return np.deg2rad([(star.mount_hour_angle_deg, star.mount_declination_deg) for star in stars])


def _low(sky: StarDirections) -> Flags:
    return np.asarray(sky.seen()[:, 2] < np.sin(np.deg2rad(LOWEST_DEG)))


@dataclass(frozen=True, eq=False)
class _Fit:
    """Terms and their covariance (arcmin), residuals of all stars (n, 2), degrees of freedom."""

    terms: Floats
    covariance: Floats
    residual: Floats
    freedom: float


def _apart(sky: StarDirections, read: Floats, terms_rad: Floats) -> Floats:
    """Read less modelled (n, 2) on the sky, arcmin."""
    apart = read - readings(sky, terms_rad)
    wrapped = (apart + np.pi) % (2.0 * np.pi) - np.pi
    return on_sky(sky, wrapped) * ARCMIN_PER_RAD


def _fit(sky: StarDirections, read: Floats, used: Flags, centring_arcmin: float) -> _Fit:
    """Gauss–Newton with the prior; the scatter of the stars decides how far they are trusted."""
    prior = np.diag(PRIOR_ARCMIN**-2.0)
    terms = np.zeros(TERMS)
    variance, freedom = centring_arcmin**2, 1.0
    covariance = np.diag(PRIOR_ARCMIN**2)
    for _ in range(_ROUNDS):
        left = _apart(sky, read, terms / ARCMIN_PER_RAD)[used].ravel()
        slopes = on_sky(sky, sensitivity(sky, terms / ARCMIN_PER_RAD))[used].reshape(-1, TERMS)
        normal = slopes.T @ slopes / variance + prior
        covariance = np.linalg.inv(normal)
        terms = terms + covariance @ (slopes.T @ left / variance - prior @ terms)
        left = _apart(sky, read, terms / ARCMIN_PER_RAD)[used].ravel()
        taken = float(np.trace(covariance @ slopes.T @ slopes)) / variance
        freedom = left.size - taken + _CENTRING_WEIGHT
        variance = (float(left @ left) + _CENTRING_WEIGHT * centring_arcmin**2) / freedom
    return _Fit(terms, covariance, _apart(sky, read, terms / ARCMIN_PER_RAD), freedom)


def _wrong_stars(fit: _Fit, used: Flags) -> Flags:
    """Stars far off the fit of the others: probably other stars than thought."""
    distance = np.hypot(*fit.residual.T)
    scale = max(float(np.median(distance[used])), 0.3)
    return np.asarray(distance > _WRONG_STAR * scale)


def _record(
    fit: _Fit, sky: StarDirections, read: Floats, used: Flags, stars: list[PointedStar], site: Site
) -> Pointing:
    factor = float(stdtrit(max(fit.freedom, 1.0), 0.975))
    sigma = np.sqrt(np.diag(fit.covariance))
    told = factor * sigma < _TOLD * PRIOR_ARCMIN
    terms = tuple(
        term(
            number, float(fit.terms[number]), float(sigma[number]), factor, bool(told[number]), site
        )
        for number in range(TERMS)
    )
    zeros = fit.terms.copy()
    zeros[2:] = 0.0
    rms = _rms(_apart(sky, read, np.zeros(TERMS))[used])
    without = _apart(sky, read, np.zeros(TERMS))[used]
    without = without - on_sky(sky, _zero_effect(sky, fit.terms))[used]
    left = _rms(fit.residual[used])
    return Pointing(
        rms,
        _rms(without),
        left,
        terms,
        fit.covariance,
        fit.residual,
        used,
        site.latitude_deg,
        _notes(sky, used, stars, told),
        Finding.of(TermTold.WHOLE, rms=_rms(without), left=left, stars=int(used.sum())),
    )


def _zero_effect(sky: StarDirections, terms_arcmin: Floats) -> Floats:
    """What the zeros of the circles do to the readings (n, 2), arcmin."""
    hour = np.full(sky.side.size, terms_arcmin[0])
    return np.stack([hour, terms_arcmin[1] * sky.side], axis=-1)


def _rms(apart: Floats) -> float:
    """Root mean square distance on the sky of (n, 2)."""
    return float(np.sqrt((apart**2).sum(axis=1).mean()))


def _notes(
    sky: StarDirections, used: Flags, stars: list[PointedStar], told: Flags
) -> tuple[Finding, ...]:
    notes = []
    for index in np.flatnonzero(~used).tolist():
        unnamed = Finding.of(PointingFault.STAR_NUMBER, number=index + 1)
        code = PointingFault.TOO_LOW if _low(sky)[index] else PointingFault.FAR_OFF
        notes.append(Finding.of(code, name=stars[index].label or unnamed))
    number = int(used.sum())
    if number < COMFORTABLE_STARS:
        notes.append(Finding.of(PointingFault.FEW, number=number, comfortable=COMFORTABLE_STARS))
    missing = undetermined(told, both_sides=bool(np.ptp(sky.side[used]) > 0.0))
    if missing is not None:
        notes.append(missing)
    return tuple(notes)


# The polar axis found by pointing at stars against the one found by drift.

_CONTRADICTION = 4.0  # combined standard deviations; few stars have long tails


@dataclass(frozen=True)
class AxisCheck:
    """Pointing less drift, arcmin, azimuth in the horizontal plane; `agrees` None when either side
    does not tell."""

    azimuth_apart_arcmin: float
    altitude_apart_arcmin: float
    agrees: bool | None
    sentence: Finding


def check_axis(found: Pointing, solution: Solution) -> AxisCheck:
    """Both measure from the true pole, with the same signs."""
    azimuth, altitude = found.terms[AZIMUTH], found.terms[ALTITUDE]
    known = solution.determined and azimuth.is_determined and altitude.is_determined
    if not known:
        nothing = float("nan")
        return AxisCheck(
            nothing,
            nothing,
            None,
            Finding.of(AxisCompared.UNKNOWN),
        )
    apart = (
        azimuth.value_arcmin - solution.azimuth_error_arcmin,
        altitude.value_arcmin - solution.altitude_error_arcmin,
    )
    sigma = (
        float(np.hypot(azimuth.sigma_arcmin, solution.azimuth_sigma_arcmin)),
        float(np.hypot(altitude.sigma_arcmin, solution.altitude_sigma_arcmin)),
    )
    worst = max(abs(one) / size for one, size in zip(apart, sigma, strict=True))
    agrees = worst <= _CONTRADICTION
    code = AxisCompared.AGREE if agrees else AxisCompared.DISAGREE
    told = Finding.of(code, azimuth=abs(apart[0]), altitude=abs(apart[1]))
    return AxisCheck(apart[0], apart[1], agrees, told)
