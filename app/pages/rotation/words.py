"""The answer of the Field rotation page in figures and words."""

from __future__ import annotations

from app.pages.rotation.study import RotationStudy, Way
from app.ui.text import Fact, limit_words
from app.ui.timeline import clock_words
from core.language import say
from core.sky.clocks import Zone
from core.sky.words import direction_words


def facts(study: RotationStudy | None, zone: Zone) -> tuple[Fact, Fact, Fact]:
    """Rate, longest exposure, place: all at the moment picked."""
    if study is None or study.way is None:
        return Fact("–"), Fact("–"), Fact("–")
    way, moment = study.way, study.moment_utc_s
    if way.at(way.track.altitude_deg, moment) <= 0.0:
        return Fact("–"), Fact("–"), _below(way, moment, zone)
    return _turning(way, moment), _exposure(study, way, moment), _place(way, moment, zone)


def never_seen(study: RotationStudy, way: Way) -> str:
    """Why a target is not seen in the whole night; empty when it is."""
    name = "" if study.question.target is None else study.question.target.name
    if way.highest_deg <= 0.0:
        return say(
            "{target} does not rise tonight: it stays at least {depth:.1f}° below the horizon.",
            target=name,
            depth=-way.highest_deg,
        )
    if not way.is_seen.any():
        return say("{target} stays behind your obstructions all night.", target=name)
    return ""


def _turning(way: Way, moment: float) -> Fact:
    rate = way.at(way.track.rate_deg_per_hour, moment)
    turned = (way.at(way.track.field_angle_deg, moment) + 180.0) % 360.0 - 180.0
    angle = f"{turned:.0f}".replace("-", "−")
    if rate > 0.0:
        words = say("an hour; parallactic angle {angle}°, growing", angle=angle)
    else:
        words = say("an hour; parallactic angle {angle}°, falling", angle=angle)
    size = abs(rate)
    return Fact(f"{size:.2g}°" if size < 9.95 else f"{size:,.0f}°", words)


def _exposure(study: RotationStudy, way: Way, moment: float) -> Fact:
    words = say("before the corner smears by {smear:g} px", smear=study.question.smear_px)
    return Fact(limit_words(way.at(way.longest_s, moment)), words)


def _below(way: Way, moment: float, zone: Zone) -> Fact:
    if way.highest_deg <= 0.0:
        return Fact(say("never"), say("up: it stays below the horizon all night"))
    return Fact(say("below"), say("the horizon at {time}", time=clock_words(zone, moment)))


def _place(way: Way, moment: float, zone: Zone) -> Fact:
    index = int(abs(way.track.utc_s - moment).argmin())
    words = say(
        "high in the {direction} at {time}",
        direction=direction_words(float(way.track.azimuth_deg[index])),
        time=clock_words(zone, moment),
    )
    if not way.is_seen[index]:
        words = say("{place}, behind an obstruction", place=words)
    return Fact(f"{way.at(way.track.altitude_deg, moment):.0f}°", words)
