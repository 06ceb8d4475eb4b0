"""An invented night for the tests of the checklist."""

from __future__ import annotations

from functools import cache

from core.mount.equipment import MountKind, Purpose
from core.night.checklist import Checklist, Circumstances, Hemisphere, Moments, Power
from core.night.darkness import Night, night_of
from core.sky.clocks import parse_utc
from core.sky.site import Site

EVENING = parse_utc("2026-11-24T15:00:00Z")
SITE = Site(47.0, -20.0, 300.0, "invented")
IMAGING = Circumstances(
    Purpose.DEEP_SKY,
    MountKind.GERMAN_EQUATORIAL,
    Power.MAINS,
    Hemisphere.NORTH,
    temperature_c=-5.0,
    moon_lit=0.9,
    is_guided=True,
    needs_flip=True,
)
SUMMER_LOOK = Circumstances(
    Purpose.OBSERVING, MountKind.DOBSONIAN, Power.BATTERY, Hemisphere.SOUTH, temperature_c=18.0
)


@cache
def invented_night() -> Night:
    return night_of(SITE, EVENING)


@cache
def moments(target_hours_after_sunset: float = 5.0) -> Moments:
    night = invented_night()
    sunset = night.sunset_utc_s
    assert sunset is not None
    target = sunset + 3600.0 * target_hours_after_sunset
    return Moments.of(night, target, flip_utc_s=target + 7200.0)


def keys(checklist: Checklist) -> list[str]:
    return [step.key for step in checklist.steps]
