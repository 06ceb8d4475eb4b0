"""What makes a set of legs weak, in sentences: stars too alike, too low, too near the pole."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

import numpy as np

from core.alignment.axis.evidence import azimuth_has_meaning
from core.alignment.axis.legrate import LegTrend
from core.alignment.drift.prepared import Note
from core.language import say
from core.sky.site import Air, Site
from core.units import SIDEREAL_ARCSEC_PER_MIN

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
    hours = ", ".join(hour_angle_words(leg.hour_angle_deg) for leg in legs)
    yield Note(
        "stars alike",
        say(
            "The stars stand at similar hour angles ({hours}), so azimuth and altitude "
            "error are hard to tell apart: add one near the meridian or one six hours from "
            "it, whichever is missing.",
            hours=hours,
        ),
    )


def _of_site(site: Site, air: Air) -> Iterator[Note]:
    latitude = abs(site.latitude_deg)
    if not azimuth_has_meaning(math.radians(latitude)):
        yield Note(
            "polar site",
            say(
                "At latitude {latitude:.1f}° the axis stands upright, where azimuth means "
                "nothing, so no azimuth error is given; level the mount and trust the altitude "
                "error.",
                latitude=site.latitude_deg,
            ),
        )
    elif latitude > _POLAR_SITE_DEG:
        yield Note(
            "polar site",
            say(
                "At latitude {latitude:.1f}° the axis is nearly upright: azimuth error "
                "hardly shows and hardly matters; level the mount and trust the altitude "
                "error.",
                latitude=site.latitude_deg,
            ),
        )
    if latitude < _EQUATORIAL_SITE_DEG:
        yield Note(
            "equatorial site",
            say(
                "At latitude {latitude:.1f}° the pole lies near the horizon, where "
                "refraction is large and uncertain; the altitude error, measured from stars "
                "high up, holds, but the refracted pole is only known to some minutes of "
                "arc.",
                latitude=site.latitude_deg,
            ),
        )
    if air.pressure_hpa <= 0.0:
        yield Note("no refraction", say("Refraction is switched off (no air pressure)."))


def _of_star(leg: LegTrend) -> Iterator[Note]:
    if leg.altitude_deg <= 0.0:
        yield Note(
            "below horizon",
            say(
                "The star of leg “{label}” was {depth:.0f}° below the horizon at the stated "
                "time. Was local time taken for UTC, or are latitude and longitude wrong?",
                label=leg.label,
                depth=-leg.altitude_deg,
            ),
            leg=leg.label,
        )
    elif leg.altitude_deg < _LOW_ALTITUDE_DEG:
        yield Note(
            "low star",
            say(
                "The star of leg “{label}” stood only {altitude:.0f}° high, where the air "
                "is unsteady and refraction uncertain; one above 20° is better.",
                label=leg.label,
                altitude=leg.altitude_deg,
            ),
            leg=leg.label,
        )
    if abs(leg.declination_deg) > _POLAR_DECLINATION_DEG:
        yield Note(
            "near the pole",
            say(
                "The star of leg “{label}” is {distance:.0f}° from a pole of the sky; one "
                "nearer the equator is easier to keep in the field.",
                label=leg.label,
                distance=90.0 - abs(leg.declination_deg),
            ),
            leg=leg.label,
        )


def _of_readings(leg: LegTrend) -> Iterator[Note]:
    least_deg = math.degrees(math.asin(min(_turning_share(leg), 1.0)))
    if least_deg > _UNLIKELY_AXIS_DEG:
        yield Note(
            "fast star",
            say(
                "The star of leg “{label}” drifts {rate:.0f}″ a minute, as if the axis pointed "
                "{least:.0f}° or more beside the pole. If it does not, the offsets are not "
                "seconds of arc (milliarcseconds, pixels?) and nothing said here is right.",
                label=leg.label,
                rate=abs(leg.drift_arcsec_per_min),
                least=least_deg,
            ),
            leg=leg.label,
        )
    if abs(leg.angle_deg) > max(_TURNED_SIGMAS * leg.angle_sigma_deg, _TURNED_DEG):
        yield Note(
            "turned reticle",
            say(
                "North of leg “{label}” is turned by {angle:.1f}° ± {width:.1f}°: motion in east "
                "shows in it. That is taken into account, but turn the camera or reticle until a "
                "star runs along east and west.",
                label=leg.label,
                angle=abs(leg.angle_deg),
                width=_NORMAL_95 * leg.angle_sigma_deg,
            ),
            leg=leg.label,
        )
    if leg.bend_sigmas > _BENT_SIGMAS:
        yield Note(
            "bends",
            say(
                "Leg “{label}” bends in a way this star should not at that time: check "
                "star, time (UTC?) and site; if they are right, something in the mount or "
                "telescope is yielding.",
                label=leg.label,
            ),
            leg=leg.label,
        )
    for step in leg.steps:
        way = say("north") if step.size_arcsec > 0.0 else say("south")
        after = (step.utc_s - float(leg.curve_utc_s[0])) / 60.0
        yield Note(
            "step",
            say(
                "Leg “{label}” jumped {size:.1f}″ {way} after {after:.1f} min (a bump?). "
                "Both sides are used; if the tripod moved, start anew.",
                label=leg.label,
                size=abs(step.size_arcsec),
                way=way,
                after=after,
            ),
            leg=leg.label,
        )
    aside = int(np.count_nonzero(leg.rejected))
    if aside:
        yield Note(
            "set aside",
            say(
                "{aside} of {count} readings of leg “{label}” stand far from their "
                "neighbours (a gust, a touch?) and are set aside.",
                aside=aside,
                count=leg.sample_count,
                label=leg.label,
            ),
            leg=leg.label,
        )


def _turning_share(leg: LegTrend) -> float:
    """The sine of the least angle between axis and pole that makes a star drift so fast."""
    return abs(leg.drift_arcsec_per_min) / SIDEREAL_ARCSEC_PER_MIN


def hour_angle_words(hour_angle_deg: float) -> str:
    """Hours east or west of the meridian: ``2.3 h east``."""
    hours = abs(hour_angle_deg) / 15.0
    if hour_angle_deg > 0.0:
        return say("{hours:.1f} h west", hours=hours)
    return say("{hours:.1f} h east", hours=hours)
