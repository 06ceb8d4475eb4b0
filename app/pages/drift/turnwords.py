"""A turn of one bolt in words: which way, how far, how far so far, and where the star goes."""

from __future__ import annotations

import math
from dataclasses import dataclass

from app.session.guide.view import BoltView, GuideView
from core.alignment.guide.bolts import BoltScale
from core.alignment.guide.goal import Claim, claim
from core.alignment.words import altitude_side, azimuth_side
from core.language import say

AZIMUTH, ALTITUDE = "azimuth", "altitude"
# Where positive and negative turns move the axis, in words.
Moves = tuple[str, str]
LEFT_ALONE_ARCMIN = 0.2  # less, a hand cannot turn on purpose
REACHED_ARCMIN = 0.3


def _azimuth_moves(latitude_deg: float) -> Moves:
    east, west = say("east"), say("west")
    return (east, west) if latitude_deg >= 0.0 else (west, east)


def _altitude_moves(_latitude_deg: float) -> Moves:
    return say("up"), say("down")


MOVES = {AZIMUTH: _azimuth_moves, ALTITUDE: _altitude_moves}


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
        return BoltWords(say("not known yet"), "")
    wanted = _of(bolt, guide.wanted.azimuth_arcmin, guide.wanted.altitude_arcmin)
    view = guide.azimuth_bolt if bolt == AZIMUTH else guide.altitude_bolt
    if abs(wanted) < LEFT_ALONE_ARCMIN and guide.seen is None:
        return BoltWords(say("leave it"), "", left_arcmin=0.0)
    turns = turns_words(wanted, view, MOVES[bolt](latitude_deg))
    if guide.seen is None:
        return BoltWords(
            _supposed_way(bolt, wanted, guide, latitude_deg), f"{abs(wanted):.1f}′", turns
        )
    seen = _of(bolt, guide.seen.azimuth_arcmin, guide.seen.altitude_arcmin)
    left = wanted - seen
    so_far = say("so far {seen:.1f}′ of {wanted:.1f}′", seen=abs(seen), wanted=abs(wanted))
    if abs(seen) > abs(wanted):
        so_far = say("too far: {seen:.1f}′ of {wanted:.1f}′", seen=abs(seen), wanted=abs(wanted))
    if seen * wanted < 0.0 and abs(seen) > REACHED_ARCMIN:
        so_far = say("{seen:.1f}′ the other way so far", seen=abs(seen))
    if abs(left) < REACHED_ARCMIN:
        return BoltWords(say("stop"), say("there"), turns, so_far, left, is_reached=True)
    way = _way(bolt, left, latitude_deg)
    return BoltWords(way, say("{left:.1f}′ to go", left=abs(left)), turns, so_far, left)


def turns_words(wanted_arcmin: float, bolt: BoltView, moves: Moves) -> str:
    """How many turns and which way, as far as this mount's turns have taught it; empty else."""
    scale = bolt.scale
    if scale is None:
        return ""
    turns, sigma = scale.turns_for(wanted_arcmin, bolt.last_turns if scale.has_sense else 0.0)
    size = {"turns": abs(turns), "width": 1.96 * sigma}
    if scale.number == 0:
        return say(
            "About {turns:.2f} ± {width:.2f} turns by the mount’s data sheet; which way is learned "
            "from the first turn you count.",
            **size,
        )
    parts = []
    if scale.is_measured and (scale.is_known or scale.number > 1 or scale.confirmed):
        parts.append(say("About {turns:.2f} ± {width:.2f} turns.", **size))
    parts.append(_way_to_turn(turns, bolt, scale, moves))
    if scale.is_known:
        parts.append(_learned(scale))
    return " ".join(parts)


def _way_to_turn(turns: float, bolt: BoltView, scale: BoltScale, moves: Moves) -> str:
    if not scale.has_sense:
        return say(
            "Which way is open: the turns counted so far moved the axis now one way, now the "
            "other. Count the other way as minus."
        )
    plus = moves[0] if scale.arcmin_per_turn > 0.0 else moves[1]
    relation = ""
    if bolt.last_turns:
        same = turns * bolt.last_turns > 0.0
        relation = say(", the same way as last time") if same else say(", against the last turn")
    way = say("+ way") if turns > 0.0 else say("− way")
    return say(
        "Turn it the {way}{relation}: on this mount turns counted as + move the axis {plus}.",
        way=way,
        relation=relation,
        plus=plus,
    )


def _learned(scale: BoltScale) -> str:
    return say(
        "Learned: {size:.1f}′ ± {width:.1f}′ a turn, play {play:.1f}′ ± {play_width:.1f}′, from "
        "{number} turns.",
        size=abs(scale.arcmin_per_turn),
        width=1.96 * scale.arcmin_per_turn_sigma,
        play=scale.play_arcmin,
        play_width=1.96 * scale.play_sigma_arcmin,
        number=scale.number,
    )


def star_moves(guide: GuideView, across_arcmin: float) -> str:
    """Where the star in view goes while the bolts are turned, to steer it there."""
    if guide.star_moves_arcsec is None:
        return ""
    north, east = guide.star_moves_arcsec
    size = math.hypot(north, east)
    if size < 5.0:
        return say("The star in view hardly moves by this turn.")
    said = say(
        "By the whole turn the star in view moves {far_north} to the {north} and {far_east} to the "
        "{east}: steer it there with the bolts.",
        far_north=length(abs(north)),
        north=say("north") if north > 0.0 else say("south"),
        far_east=length(abs(east)),
        east=say("east") if east > 0.0 else say("west"),
    )
    if size / 60.0 <= across_arcmin / 2.0:
        return said
    leaves = say(
        "That is beyond the field ({across:.3g}′ across): stop before the star leaves it, say that "
        "the bolts are turned, watch again, and turn the rest.",
        across=across_arcmin,
    )
    return f"{said} {leaves}"


def length(arcsec: float) -> str:
    """``11.2′`` or ``40″``."""
    return f"{arcsec / 60.0:.1f}′" if arcsec >= 60.0 else f"{arcsec:.0f}″"


def _of(bolt: str, azimuth: float, altitude: float) -> float:
    return azimuth if bolt == AZIMUTH else altitude


def _supposed_way(bolt: str, wanted: float, guide: GuideView, latitude_deg: float) -> str:
    """The way is only claimed where the axis lies far enough to one side."""
    way = _way(bolt, wanted, latitude_deg)
    if guide.wanted_width_arcmin is None:
        return way
    is_sure = claim(wanted, _of(bolt, *guide.wanted_width_arcmin)) is Claim.SURE
    return way if is_sure else say("probably {turn}", turn=way)


def _way(bolt: str, turn_arcmin: float, latitude_deg: float) -> str:
    """The way that takes away an error of the other sign."""
    if bolt == AZIMUTH:
        return azimuth_side(-turn_arcmin, math.radians(latitude_deg)).turn
    return altitude_side(-turn_arcmin).turn
