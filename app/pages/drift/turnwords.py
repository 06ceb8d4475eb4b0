"""A turn of one bolt in words: which way, how far, how far so far, and where the star goes."""

from __future__ import annotations

import math
from dataclasses import dataclass

from app.session.guide.view import BoltView, GuideView
from core.alignment.words import altitude_side, azimuth_side

AZIMUTH, ALTITUDE = "azimuth", "altitude"
LEFT_ALONE_ARCMIN = 0.2  # less, a hand cannot turn on purpose
REACHED_ARCMIN = 0.3


@dataclass(frozen=True)
class BoltWords:
    """`way` and `figure` large: ``turn it west``, ``12.4′``; `turns` of the bolt where known.

    `so_far`: what the star in view shows, empty where it shows nothing. `left_arcmin`: what is
    still to turn, signed as the turn, None where unknown. `is_reached`: stop.
    """

    way: str
    figure: str
    turns: str = ""
    so_far: str = ""
    left_arcmin: float | None = None
    is_reached: bool = False


def bolt_words(bolt: str, guide: GuideView, latitude_deg: float) -> BoltWords:
    """Of AZIMUTH or ALTITUDE."""
    if guide.wanted is None:
        return BoltWords("not known yet", "")
    wanted = _of(bolt, guide.wanted.azimuth_arcmin, guide.wanted.altitude_arcmin)
    view = guide.azimuth_bolt if bolt == AZIMUTH else guide.altitude_bolt
    if abs(wanted) < LEFT_ALONE_ARCMIN and guide.seen is None:
        return BoltWords("leave it", "", left_arcmin=0.0)
    turns = turns_words(wanted, view)
    if guide.seen is None:
        return BoltWords(_way(bolt, wanted, latitude_deg), f"{abs(wanted):.1f}′", turns)
    seen = _of(bolt, guide.seen.azimuth_arcmin, guide.seen.altitude_arcmin)
    left = wanted - seen
    so_far = f"so far {abs(seen):.1f}′ of {abs(wanted):.1f}′"
    if seen * wanted < 0.0 and abs(seen) > REACHED_ARCMIN:
        so_far = f"{abs(seen):.1f}′ the other way so far"
    if abs(left) < REACHED_ARCMIN:
        return BoltWords("stop", "there", turns, so_far, left, is_reached=True)
    way = _way(bolt, left, latitude_deg)
    return BoltWords(way, f"{abs(left):.1f}′ left", turns, so_far, left)


def turns_words(wanted_arcmin: float, bolt: BoltView) -> str:
    """``about 1¼ turns ± 0.1, as learned from 3 turns``; empty while nothing is learned."""
    if bolt.scale is None or not bolt.scale.is_known:
        return ""
    turns, sigma = bolt.scale.turns_for(wanted_arcmin, bolt.last_turns)
    way = "the same way as last time" if turns * bolt.last_turns > 0.0 else "the other way round"
    if bolt.last_turns == 0.0:
        way = "turns counted as positive" if turns > 0.0 else "turns counted as negative"
    return (
        f"about {abs(turns):.2f} ± {1.96 * sigma:.2f} turns, {way} "
        f"(learned from {bolt.scale.number} turns; play {bolt.scale.play_arcmin:.1f}′ "
        f"± {1.96 * bolt.scale.play_sigma_arcmin:.1f}′)"
    )


def star_moves(guide: GuideView) -> str:
    """Where the star in view goes while the bolts are turned, to steer it there."""
    if guide.star_moves_arcsec is None:
        return ""
    north, east = guide.star_moves_arcsec
    size = math.hypot(north, east)
    if size < 5.0:
        return "The star in view hardly moves by this turn."
    parts = [
        f"{length(abs(north))} to the {'north' if north > 0.0 else 'south'}",
        f"{length(abs(east))} to the {'east' if east > 0.0 else 'west'}",
    ]
    return (
        f"By the whole turn the star in view moves {' and '.join(parts)}: steer it there "
        "with the bolts."
    )


def length(arcsec: float) -> str:
    """``11.2′`` or ``40″``."""
    return f"{arcsec / 60.0:.1f}′" if arcsec >= 60.0 else f"{arcsec:.0f}″"


def _of(bolt: str, azimuth: float, altitude: float) -> float:
    return azimuth if bolt == AZIMUTH else altitude


def _way(bolt: str, turn_arcmin: float, latitude_deg: float) -> str:
    """The way that takes away an error of the other sign."""
    if bolt == AZIMUTH:
        return azimuth_side(-turn_arcmin, math.radians(latitude_deg)).turn
    return altitude_side(-turn_arcmin).turn
