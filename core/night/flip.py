"""The meridian flip: where a target crosses the meridian, and what the flip interrupts."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

import erfa
import numpy as np
from numpy.typing import NDArray

from core.language import marked, say
from core.mount.equipment import MountKind
from core.sky import places
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.units import SIDEREAL_DEG_PER_HOUR

# Where a target crosses the meridian, and when a German equatorial mount may change sides there.
#
# Such a mount looks east with its tube west of the pier, and west with the tube east of it, in both
# hemispheres. Where a target crosses the meridian the tube has to change sides, above the pole and,
# for a target that never sets, also below it.


class PierSide(Enum):
    """Where the tube is, as seen from the pier."""

    WEST = marked("west of the pier, looking east")
    EAST = marked("east of the pier, looking west")

    @property
    def other(self) -> PierSide:
        return PierSide.EAST if self is PierSide.WEST else PierSide.WEST


@dataclass(frozen=True)
class Limits:
    """What a German equatorial mount allows, and how long its flip takes.

    `past_meridian_deg`: hour angle past the meridian at which it must stop; negative when it has
    to stop before. `flips_from_deg`: how far past the meridian it first agrees to change sides.
    """

    past_meridian_deg: float
    flips_from_deg: float = 0.0
    turning_s: float = 90.0
    recentring_s: float = 180.0


@dataclass(frozen=True)
class Crossing:
    """A passage over the meridian; `upper` between the pole and the far horizon, not below it.

    The flip fits between `earliest_utc_s` and `latest_utc_s`; where the second comes first, the
    mount has to stop at it and wait. `altitude_deg` as seen.
    """

    utc_s: float
    upper: bool
    altitude_deg: float
    earliest_utc_s: float
    latest_utc_s: float
    before: PierSide

    @property
    def after(self) -> PierSide:
        return self.before.other


def crossings(
    ra_deg: float,
    dec_deg: float,
    site: Site,
    air: Air,
    session_utc_s: tuple[float, float],
    limits: Limits,
) -> tuple[Crossing, ...]:
    """Passages over the meridian above the horizon, in order, whose flip can touch the session."""
    margin_s = _seconds(max(abs(limits.past_meridian_deg), limits.flips_from_deg))
    span = session_utc_s[0] - margin_s, session_utc_s[1] + margin_s
    hour_angle, declination = places.hour_angle_and_declination(ra_deg, dec_deg, site, span)
    halves = np.arange(np.ceil(hour_angle[0] / np.pi), np.floor(hour_angle[1] / np.pi) + 1.0)
    times = np.interp(halves * np.pi, hour_angle, span)
    _, altitude = erfa.hd2ae(halves * np.pi, declination, np.radians(site.latitude_deg))
    seen_deg = np.degrees(Refraction.of(air).observed_altitude_rad(altitude))
    rows = zip(times.tolist(), halves.tolist(), seen_deg.tolist(), strict=True)
    return tuple(
        _crossing(utc_s, half % 2.0 == 0.0, height, limits)
        for utc_s, half, height in rows
        if height > 0.0
    )


def _crossing(utc_s: float, upper: bool, altitude_deg: float, limits: Limits) -> Crossing:
    agreed_deg = max(limits.flips_from_deg, -limits.past_meridian_deg)
    return Crossing(
        utc_s=utc_s,
        upper=upper,
        altitude_deg=altitude_deg,
        earliest_utc_s=utc_s + _seconds(agreed_deg),
        latest_utc_s=utc_s + _seconds(limits.past_meridian_deg),
        before=PierSide.WEST if upper else PierSide.EAST,
    )


def _seconds(hour_angle_deg: float) -> float:
    return hour_angle_deg / SIDEREAL_DEG_PER_HOUR * 3600.0


# The meridian flip of a German equatorial mount: whether it is needed, and what it interrupts.

Floats = NDArray[np.float64]

CAUTIONS = (
    marked(
        "Stand by at the first flip of every new set-up, with a hand on the stop: the tube, "
        "the camera or the counterweight can strike the pier or a tripod leg, and fingers can "
        "be caught."
    ),
    marked(
        "Before the night turn the mount to both sides by hand, power off and clutches loose, "
        "and see that every cable reaches without being pulled or caught."
    ),
    marked(
        "Do not trust a limit you have not tried: it depends on this tube, this camera and "
        "this dew shield."
    ),
)


_UPRIGHT = marked(
    "An alt-azimuth mount turns about the vertical and passes the meridian like any other "
    "direction: no flip. Watch for cables winding up over the night, and for the zone "
    "about the zenith that it cannot follow."
)
_NO_FLIP = {
    MountKind.FORK_ON_WEDGE: (
        marked(
            "A fork carries the tube between its arms and passes the meridian without changing "
            "sides: no flip. Near the pole see that the camera clears the base of the fork."
        )
    ),
    MountKind.ALT_AZIMUTH: _UPRIGHT,
    MountKind.DOBSONIAN: marked(
        "A Dobsonian turns about the vertical and passes the meridian like any other direction: "
        "no flip. On an equatorial platform neither; but a platform carries it for about an hour "
        "at a time: wind it back before it reaches its end, and hold the tube while you do."
    ),
}


@dataclass(frozen=True)
class ExposureSeries:
    """Exposures one after another; `between_s` for reading out, dithering, settling."""

    exposure_s: float
    between_s: float = 0.0


@dataclass(frozen=True)
class Interruption:
    """A flip in the series: no light from `stops_utc_s`, turning at `turns_utc_s`."""

    crossing: Crossing
    stops_utc_s: float
    turns_utc_s: float
    resumes_utc_s: float

    @property
    def lost_s(self) -> float:
        return self.resumes_utc_s - self.stops_utc_s


@dataclass(frozen=True, eq=False)
class FlipPlan:
    """The series with its flips. `reason`: why there is one or none, a sentence without times.

    `crossings`: all over the horizon within the session, also those that need no flip because the
    target begins beyond them. `exposure_utc_s` (n, 2): beginning and end of each exposure; none is
    cut. `begins_on`: the side at the start; None for mounts without sides.
    """

    reason: str
    crossings: tuple[Crossing, ...]
    interruptions: tuple[Interruption, ...]
    exposure_utc_s: Floats
    begins_on: PierSide | None
    cautions: tuple[str, ...]

    @property
    def needed(self) -> bool:
        return bool(self.interruptions)


def flip_plan(
    ra_deg: float,
    dec_deg: float,
    site: Site,
    air: Air,
    session_utc_s: tuple[float, float],
    kind: MountKind,
    limits: Limits,
    series: ExposureSeries,
) -> FlipPlan:
    """The flips of one target in a session from its beginning to its end.

    `ra_deg`, `dec_deg`: ICRS as seen from the Earth then. Raises ValueError, a sentence, for a
    session that ends before it begins and for impossible limits or exposures.
    """
    _check(session_utc_s, limits, series)
    if kind is not MountKind.GERMAN_EQUATORIAL:
        exposures, _ = _arranged(session_utc_s, (), limits, series)
        return FlipPlan(say(_NO_FLIP[kind]), (), (), exposures, None, ())
    found = crossings(ra_deg, dec_deg, site, air, session_utc_s, limits)
    to_come = tuple(one for one in found if one.earliest_utc_s > session_utc_s[0])
    needed = tuple(one for one in to_come if one.latest_utc_s < session_utc_s[1])
    exposures, interruptions = _arranged(session_utc_s, needed, limits, series)
    begins_on = _side_at_start(ra_deg, dec_deg, site, session_utc_s[0], found, to_come)
    reason = _reason(len(found) - len(to_come), to_come, needed, interruptions, begins_on)
    cautions = tuple(say(one) for one in CAUTIONS) if needed else ()
    return FlipPlan(reason, found, interruptions, exposures, begins_on, cautions)


def _arranged(
    session_utc_s: tuple[float, float],
    needed: tuple[Crossing, ...],
    limits: Limits,
    series: ExposureSeries,
) -> tuple[Floats, tuple[Interruption, ...]]:
    """Exposures that end before each latest moment, and flips as soon as they are possible."""
    now, end = session_utc_s
    exposures: list[tuple[float, float]] = []
    flips: list[Interruption] = []
    step_s = series.exposure_s + series.between_s
    for crossing in needed:
        stops = now
        while now < crossing.earliest_utc_s and now + series.exposure_s <= crossing.latest_utc_s:
            stops = now + series.exposure_s
            exposures.append((now, stops))
            now += step_s
        turns = max(stops, crossing.earliest_utc_s)
        if turns >= end:
            return _as_array(exposures), tuple(flips)
        now = turns + limits.turning_s + limits.recentring_s
        flips.append(Interruption(crossing, stops, turns, now))
    while now + series.exposure_s <= end:
        exposures.append((now, now + series.exposure_s))
        now += step_s
    return _as_array(exposures), tuple(flips)


def _as_array(exposures: list[tuple[float, float]]) -> Floats:
    return np.array(exposures, dtype=np.float64).reshape(-1, 2)


def _side_at_start(
    ra_deg: float,
    dec_deg: float,
    site: Site,
    begin_utc_s: float,
    found: tuple[Crossing, ...],
    to_come: tuple[Crossing, ...],
) -> PierSide:
    if to_come:
        return to_come[0].before
    if found:
        return found[-1].after
    hour_angle, _ = places.hour_angle_and_declination(ra_deg, dec_deg, site, [begin_utc_s])
    return PierSide.WEST if hour_angle[0] < 0.0 else PierSide.EAST


def _reason(
    passed: int,
    to_come: tuple[Crossing, ...],
    needed: tuple[Crossing, ...],
    flips: tuple[Interruption, ...],
    begins_on: PierSide,
) -> str:
    side = say(begins_on.value)
    if len(flips) == 1 and flips[0].crossing.upper:
        return say(
            "The target crosses the meridian: one flip. Begin with the tube {side}.", side=side
        )
    if len(flips) == 1:
        return say(
            "The target crosses the meridian below the pole: one flip. Begin with the tube {side}.",
            side=side,
        )
    if flips:
        return say(
            "The target crosses the meridian above and below the pole: {count} flips. "
            "Begin with the tube {side}.",
            count=len(flips),
            side=side,
        )
    if needed:
        return say(
            "The mount has to stop before the meridian and the session ends before it may flip: "
            "no flip, and less time. Keep the tube {side}.",
            side=side,
        )
    if to_come:
        return say(
            "The session ends before the mount reaches its limit at the meridian: no flip. "
            "Keep the tube {side}.",
            side=side,
        )
    if passed:
        return say(
            "The target is past the meridian already: no flip. Begin with the tube {side}.",
            side=side,
        )
    return say(
        "The target does not cross the meridian in this session: no flip. Keep the tube {side}.",
        side=side,
    )


def _check(session_utc_s: tuple[float, float], limits: Limits, series: ExposureSeries) -> None:
    if not session_utc_s[0] < session_utc_s[1]:
        raise ValueError(say("The session ends before it begins; exchange or correct its times."))
    if not (series.exposure_s > 0.0 and series.between_s >= 0.0):
        raise ValueError(say("An exposure must be longer than nothing; correct its seconds."))
    if not (abs(limits.past_meridian_deg) < 90.0 and 0.0 <= limits.flips_from_deg < 90.0):
        raise ValueError(
            say("A meridian limit lies between −90° and 90° of hour angle; correct it.")
        )
    if limits.flips_from_deg > max(limits.past_meridian_deg, 0.0):
        raise ValueError(
            say(
                "The mount would stop {stop:g}° past the meridian but flip only from {flip:g}° "
                "on: it could never flip. Correct one of the two.",
                stop=limits.past_meridian_deg,
                flip=limits.flips_from_deg,
            )
        )
