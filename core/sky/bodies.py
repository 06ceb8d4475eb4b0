"""The Sun, the Moon and the bright planets: where they are, and as they stand over a site."""

from __future__ import annotations

import atexit
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.finding import BrokenInstallation, Code, Finding
from core.sky import clocks
from core.sky.places import Observer, azimuth_altitude_rad, hour_angle_declination_rad
from core.sky.refraction import Refraction
from core.sky.site import Air, Site


class Ephemeris(Code):
    """What is wrong with the table of Sun, Moon and planets."""

    OUTSIDE_ITS_YEARS = "outside its years"
    UNREADABLE = "unreadable"


# Where the Sun, the Moon and the bright planets are: JPL's DE421, and shorter series beyond it.
#
# DE421 comes with the package skyfield-data and runs from 1899-07-29 to 2053-10-09. It is read from
# that package's folder; nothing is downloaded. Outside those years ERFA's series stand in.

Floats = NDArray[np.float64]
Dates = tuple[Floats, Floats]

AU_KM = 149597870.7
_LIGHT_DAYS_PER_AU = 499.004783836 / 86400.0
_LIGHT_ROUNDS = 2  # a third would move the Moon by a centimetre and Saturn by metres
_FIRST_JD, _LAST_JD = 2414866.0, 2471183.0  # a day inside DE421, for the time light takes


class Body(Code):
    """A body one can align by; the value is its name."""

    SUN = "Sun"
    MOON = "Moon"
    MERCURY = "Mercury"
    VENUS = "Venus"
    MARS = "Mars"
    JUPITER = "Jupiter"
    SATURN = "Saturn"


# NAIF numbers of the segments that lead from the barycentre of the solar system to a body.
_TO_EARTH = ((0, 3), (3, 399))
_SEGMENTS = {
    Body.SUN: ((0, 10),),
    Body.MOON: ((0, 3), (3, 301)),
    Body.MERCURY: ((0, 1), (1, 199)),
    Body.VENUS: ((0, 2), (2, 299)),
    Body.MARS: ((0, 4), (4, 499)),
    Body.JUPITER: ((0, 5),),
    Body.SATURN: ((0, 6),),
}
# Numbers of eraPlan94.
_PLANETS = {Body.MERCURY: 1, Body.VENUS: 2, Body.MARS: 4, Body.JUPITER: 5, Body.SATURN: 6}


def from_site_au(body: Body, tt: Dates, site_au: Floats) -> Floats:
    """Vectors (…, 3), GCRS axes, from a site to where the light that arrives left the body.

    `tt`: Julian dates in two parts, shaped (…); TT stands for TDB (2 ms). `site_au` (…, 3): the
    site from the Earth's centre. Raises RuntimeError, a sentence, when DE421 cannot be read.
    """
    if is_covered(tt):
        here = _kernel_au(_TO_EARTH, tt) + site_au
        return _seen(lambda then: _kernel_au(_SEGMENTS[body], then), here, tt)
    here = _earth_and_sun_au(tt)[0] + site_au
    return _seen(lambda then: _series_au(body, then), here, tt)


def is_covered(tt: Dates) -> bool:
    """Whether DE421 covers all these dates."""
    days = tt[0] + tt[1]
    return bool(np.min(days) > _FIRST_JD and np.max(days) < _LAST_JD)


def loss(tt: Dates) -> Finding | None:
    """What is lost outside DE421's years; None inside them.

    The figures are the largest differences from DE421 itself from 1990 to 2053, rounded up.
    """
    if is_covered(tt):
        return None
    return Finding.of(Ephemeris.OUTSIDE_ITS_YEARS)


def _seen(place_au: Callable[[Dates], Floats], here_au: Floats, tt: Dates) -> Floats:
    """From `here_au` at `tt` to the place at the earlier time when the light set out."""
    way = place_au(tt) - here_au
    for _ in range(_LIGHT_ROUNDS):
        distance_au = np.linalg.norm(way, axis=-1)
        way = place_au((tt[0], tt[1] - distance_au * _LIGHT_DAYS_PER_AU)) - here_au
    return way


def _kernel_au(segments: tuple[tuple[int, int], ...], tt: Dates) -> Floats:
    """Barycentric places (…, 3) by DE421."""
    spk = _kernel()
    legs_km = np.array([spk[pair].compute(*tt) for pair in segments])
    return np.asarray(np.moveaxis(legs_km.sum(axis=0), 0, -1) / AU_KM, dtype=np.float64)


def _series_au(body: Body, tt: Dates) -> Floats:
    """Barycentric places (…, 3) by eraEpv00, eraMoon98 and eraPlan94."""
    earth, sun = _earth_and_sun_au(tt)
    if body is Body.SUN:
        return sun
    if body is Body.MOON:
        return np.asarray(earth + erfa.moon98(*tt)["p"], dtype=np.float64)
    return np.asarray(sun + erfa.plan94(*tt, _PLANETS[body])["p"], dtype=np.float64)


def _earth_and_sun_au(tt: Dates) -> tuple[Floats, Floats]:
    context, _ = erfa.apci13(*tt)  # eraEpv00 within; that one by itself warns of far years
    earth = np.asarray(context["eb"], dtype=np.float64)
    return earth, earth - context["eh"] * context["em"][..., np.newaxis]


@cache
def _kernel() -> Any:
    """DE421, opened once for the life of the program.

    The path is made by hand because the package's own accessor warns of an expired table that
    lies beside this file and is not used.
    """
    import skyfield_data
    from jplephem.spk import SPK

    path = Path(skyfield_data.__file__).parent / "data" / "de421.bsp"
    try:
        spk = SPK.open(str(path))
    except (OSError, ValueError) as error:
        raise BrokenInstallation(Ephemeris.UNREADABLE, path=path, problem=error) from error
    atexit.register(spk.close)
    return spk


# The Sun, the Moon and the bright planets as they stand over a site.


@dataclass(frozen=True, eq=False)
class Course:
    """A body's centre over a site at times (n,), topocentric, without refraction; degrees.

    `azimuth_deg` from north through east in [0, 360), `hour_angle_deg` in [−180, 180), west
    positive; `distance_km` from the site.
    """

    body: Body
    utc_s: Floats
    azimuth_deg: Floats
    true_altitude_deg: Floats
    hour_angle_deg: Floats
    declination_deg: Floats
    distance_km: Floats


@dataclass(frozen=True)
class BodyNow:
    """The centre of a body: azimuth from north through east, altitude as seen and without air.

    `hour_angle_deg` in [−180, 180), west positive.
    """

    body: Body
    azimuth_deg: float
    altitude_deg: float
    true_altitude_deg: float
    hour_angle_deg: float


def course(body: Body, site: Site, utc_s: ArrayLike) -> Course:
    """Places at `utc_s` (n,). Light time, parallax, aberration; no deflection (2″ at the Sun's
    limb, nothing at night), no polar motion (0.5″).
    """
    times = np.atleast_1d(np.asarray(utc_s, dtype=np.float64))
    observer = Observer.at(site, times)
    way = from_site_au(body, clocks.julian_dates_tt(times), observer.from_earth_au)
    distance_au = np.linalg.norm(way, axis=-1)
    light = observer.aberrated(way / distance_au[:, np.newaxis])[..., np.newaxis]
    azimuth, altitude = azimuth_altitude_rad((observer.to_horizon @ light)[..., 0])
    hour_angle, dec = hour_angle_declination_rad((observer.to_equator @ light)[..., 0])
    return Course(
        body=body,
        utc_s=times,
        azimuth_deg=np.degrees(azimuth),
        true_altitude_deg=np.degrees(altitude),
        hour_angle_deg=np.degrees(hour_angle),
        declination_deg=np.degrees(dec),
        distance_km=distance_au * AU_KM,
    )


def body_now(body: Body, site: Site, air: Air, utc_s: float) -> BodyNow:
    """Observed place of one body."""
    now = course(body, site, utc_s)
    seen = Refraction.of(air).observed_altitude_rad(np.radians(now.true_altitude_deg))
    return BodyNow(
        body=body,
        azimuth_deg=float(now.azimuth_deg[0]),
        altitude_deg=float(np.degrees(seen[0])),
        true_altitude_deg=float(now.true_altitude_deg[0]),
        hour_angle_deg=float(now.hour_angle_deg[0]),
    )


def bodies_now(site: Site, air: Air, utc_s: float) -> tuple[BodyNow, ...]:
    """Observed places of them all, in the order of `Body`."""
    return tuple(body_now(body, site, air, utc_s) for body in Body)
