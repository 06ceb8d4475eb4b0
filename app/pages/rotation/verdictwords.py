"""The answer of the Field rotation page in figures and words."""

from __future__ import annotations

from app.pages.rotation.study import Study, Way
from app.widgets.facts import Fact
from app.widgets.nightpicture import clock_words
from app.widgets.spans import limit_words
from core.sky.compass import direction_words
from core.sky.zones import Zone


def facts(study: Study | None, zone: Zone) -> tuple[Fact, Fact, Fact]:
    """Rate, longest exposure, place: all at the moment picked."""
    if study is None or study.way is None:
        return Fact("–"), Fact("–"), Fact("–")
    way, moment = study.way, study.moment_utc_s
    return _turning(way, moment), _exposure(study, way, moment), _place(way, moment, zone)


def _turning(way: Way, moment: float) -> Fact:
    rate = way.at(way.track.rate_deg_per_hour, moment)
    angle = way.at(way.track.field_angle_deg, moment)
    angle = (angle + 180.0) % 360.0 - 180.0
    trend = "growing" if rate > 0.0 else "falling"
    words = f"an hour; parallactic angle {angle:.0f}°, {trend}".replace("-", "−")
    size = abs(rate)
    return Fact(f"{size:.2g}°" if size < 9.95 else f"{size:,.0f}°", words)


def _exposure(study: Study, way: Way, moment: float) -> Fact:
    longest = way.at(way.longest_s, moment)
    words = f"before the corner smears by {study.question.smear_px:g} px"
    return Fact(limit_words(longest), words)


def _place(way: Way, moment: float, zone: Zone) -> Fact:
    altitude = way.at(way.track.altitude_deg, moment)
    index = int(abs(way.track.utc_s - moment).argmin())
    azimuth = float(way.track.azimuth_deg[index])
    time = clock_words(zone, moment)
    if altitude <= 0.0:
        return Fact("below", f"the horizon at {time}")
    words = f"high in the {direction_words(azimuth)} at {time}"
    if not way.is_seen[index]:
        words += ", behind an obstruction"
    return Fact(f"{altitude:.0f}°", words)
