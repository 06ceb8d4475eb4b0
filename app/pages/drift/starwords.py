"""A star to watch, in words: where it is, what it shows, what it costs."""

from __future__ import annotations

from typing import TYPE_CHECKING

from core.language import say
from core.sky.compass import direction_words

if TYPE_CHECKING:
    from app.session.guide.stars import Proposal, Proposals

FREE_MINUTES = 0.5  # a smaller difference is not worth a word
LONGEST_ARCMIN = 60.0


def choose_sentence(star: Proposal) -> str:
    """``Vega next: south-east, 52° high.``"""
    now = star.choice.now
    where = direction_words(now.azimuth_deg)
    return say(
        "{star} next: {where}, {altitude:.0f}° high. It {shows}.",
        star=star.name,
        where=where,
        altitude=now.altitude_deg,
        shows=shows(star),
    )


def choose_detail(star: Proposal, proposals: Proposals) -> str:
    """Its worth and its coordinates."""
    worth = f"{after_five(star)}; {price(star, proposals)}."
    return " ".join(part for part in (worth, coordinates(star), star.caution) if part)


def after_five(star: Proposal) -> str:
    """``± 1.2′ after five minutes``."""
    width = star.choice.half_width_arcmin
    figure = f"{width:.1f}′" if width < LONGEST_ARCMIN else say("more than a degree")
    return say("± {width} after five minutes", width=figure)


def price(star: Proposal, proposals: Proposals) -> str:
    """Minutes to the goal, and how many more than the best star takes."""
    minutes, least = star.choice.minutes, proposals.stars[0].choice.minutes
    if minutes is None:
        return say("more than an hour to the goal")
    shown = max(minutes, 1.0)
    if least is None or minutes - least < FREE_MINUTES:
        return say("about {minutes:.0f} min to the goal", minutes=shown)
    return say(
        "about {minutes:.0f} min to the goal, {more:.0f} more than the best",
        minutes=shown,
        more=max(minutes - least, 1.0),
    )


def coordinates(star: Proposal) -> str:
    """``Azimuth 123°, altitude 52°; right ascension 18 h 37 m, declination +38.8° (Lyr).``"""
    now = star.choice.now
    minutes = round(star.ra_deg * 4.0) % 1440
    return say(
        "Azimuth {azimuth:.0f}°, altitude {altitude:.0f}°; right ascension {hours} h "
        "{minutes:02d} m, declination {declination}° ({constellation}).",
        azimuth=now.azimuth_deg,
        altitude=now.altitude_deg,
        hours=minutes // 60,
        minutes=minutes % 60,
        declination=_signed(star.dec_deg),
        constellation=now.star.constellation,
    )


def shows(star: Proposal) -> str:
    """Which of the two errors it tells of."""
    told = star.choice.shows
    return say("shows azimuth and altitude mixed") if told.endswith("both") else say(told)


def line(star: Proposal, proposals: Proposals) -> str:
    """Three short lines for a list, whatever its width."""
    now = star.choice.now
    where = say(
        "{where}, {altitude:.0f}° high",
        where=direction_words(now.azimuth_deg),
        altitude=now.altitude_deg,
    )
    minutes, least = star.choice.minutes, proposals.stars[0].choice.minutes
    if minutes is None:
        goal = say("goal in over an hour")
    else:
        goal = say("goal in {minutes:.0f} min", minutes=max(minutes, 1.0))
    if minutes is not None and least is not None and minutes - least >= FREE_MINUTES:
        goal += f" (+{max(minutes - least, 1.0):.0f})"
    width = star.choice.half_width_arcmin
    if width < LONGEST_ARCMIN:
        goal = say("± {width:.1f}′ in 5 min, {goal}", width=width, goal=goal)
    bright = say("mag {magnitude:.1f}", magnitude=now.star.magnitude)
    return f"{star.name}   {bright}\n{where}\n{goal}"


def _signed(degrees: float) -> str:
    return f"{degrees:+.1f}".replace("-", "−")
