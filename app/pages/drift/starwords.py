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
    return f"{star.name} next: {where}, {now.altitude_deg:.0f}° high. It {shows(star)}."


def choose_detail(star: Proposal, proposals: Proposals) -> str:
    """Its worth and its coordinates."""
    worth = f"{after_five(star)}; {price(star, proposals)}."
    return " ".join(part for part in (worth, coordinates(star), star.caution) if part)


def after_five(star: Proposal) -> str:
    """``± 1.2′ after five minutes``."""
    width = star.choice.half_width_arcmin
    figure = f"{width:.1f}′" if width < LONGEST_ARCMIN else "more than a degree"
    return f"± {figure} after five minutes"


def price(star: Proposal, proposals: Proposals) -> str:
    """Minutes to the goal, and how many more than the best star takes."""
    minutes, least = star.choice.minutes, proposals.stars[0].choice.minutes
    if minutes is None:
        return "more than an hour to the goal"
    told = f"about {max(minutes, 1.0):.0f} min to the goal"
    if least is None or minutes - least < FREE_MINUTES:
        return told
    return f"{told}, {max(minutes - least, 1.0):.0f} more than the best"


def coordinates(star: Proposal) -> str:
    """``Azimuth 123°, altitude 52°; right ascension 18 h 37 m, declination +38.8° (Lyr).``"""
    now = star.choice.now
    minutes = round(star.ra_deg * 4.0) % 1440
    return (
        f"Azimuth {now.azimuth_deg:.0f}°, altitude {now.altitude_deg:.0f}°; right ascension "
        f"{minutes // 60} h {minutes % 60:02d} m, declination {_signed(star.dec_deg)}° "
        f"({now.star.constellation})."
    )


def shows(star: Proposal) -> str:
    """Which of the two errors it tells of."""
    told = star.choice.shows
    return "shows azimuth and altitude mixed" if told.endswith("both") else say(told)


def line(star: Proposal, proposals: Proposals) -> str:
    """Three short lines for a list, whatever its width."""
    now = star.choice.now
    where = f"{direction_words(now.azimuth_deg)}, {now.altitude_deg:.0f}° high"
    minutes, least = star.choice.minutes, proposals.stars[0].choice.minutes
    goal = "goal in over an hour" if minutes is None else f"goal in {max(minutes, 1.0):.0f} min"
    if minutes is not None and least is not None and minutes - least >= FREE_MINUTES:
        goal += f" (+{max(minutes - least, 1.0):.0f})"
    width = star.choice.half_width_arcmin
    figure = f"± {width:.1f}′ in 5 min, " if width < LONGEST_ARCMIN else ""
    return f"{star.name}   mag {now.star.magnitude:.1f}\n{where}\n{figure}{goal}"


def _signed(degrees: float) -> str:
    return f"{degrees:+.1f}".replace("-", "−")
