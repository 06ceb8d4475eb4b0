"""The Drift page in words: the verdict, legs, stars, what to watch, each step of the guide."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

import numpy as np

from app.night.snapshot import BoltView, GuideView, KnownNorth, Mishap
from app.ui.text import AxisVerdict, Verdict
from core.alignment.axis.geometrywarnings import Weakness
from core.alignment.axis.solution import AxisNote
from core.alignment.driftlog.records import Leg
from core.alignment.goal import SideConfidence, side_confidence
from core.alignment.guide.bolts import BoltScale
from core.alignment.guide.judgement import Next
from core.alignment.guide.nextstar import Shows, flexure_arcmin, half_width_arcmin
from core.alignment.guide.procedure import Stage
from core.alignment.words import altitude_side, azimuth_side, constraint_words
from core.language import marked, say
from core.sky.horizon import Horizon
from core.sky.places import horizontal_deg
from core.sky.site import Air, Site
from core.sky.words import direction_words

if TYPE_CHECKING:
    from app.night.snapshot import Snapshot
    from app.night.starchoice import Proposal, Proposals
    from core.alignment.axis.legrate import LegTrend
    from core.alignment.axis.solution import Solution
    from core.alignment.words import Advice


# What the list of legs says of each.

DEGREES_PER_HOUR = 15.0
ON_THE_MERIDIAN_H = 0.05  # three minutes of time; the motion there is not worth a number


@dataclass(frozen=True)
class LegWords:
    """`rate`: the drift; `place`: where the star stood; `extent`: how long and how often."""

    label: str
    rate: str
    place: str
    extent: str


def leg_words(leg: Leg, trend: LegTrend | None) -> LegWords:
    if trend is None:
        return LegWords(leg.label, say("no drift known yet"), "", _extent(leg))
    return LegWords(leg.label, drift_rate(trend), place(trend), _extent(leg, trend))


def drift_rate(trend: LegTrend) -> str:
    """``0.19″ ± 0.03″ a minute, south``: the ± is the 95 % half-width."""
    half = trend.interval_factor * trend.drift_sigma_arcsec_per_min
    rate = trend.drift_arcsec_per_min
    digits = 2 if not 0 < half < 0.01 else 3
    if abs(rate) <= half:
        side = say("no drift within the ±")
    else:
        side = say("north") if rate > 0 else say("south")
    return say(
        "{rate}″ ± {width}″ a minute, {side}",
        rate=f"{abs(rate):.{digits}f}",
        width=f"{half:.{digits}f}",
        side=side,
    )


def place(trend: LegTrend) -> str:
    """``2.1 h east of the meridian, 45° high``."""
    return say(
        "{where}, {altitude:.0f}° high",
        where=hour_angle(trend.hour_angle_deg),
        altitude=trend.altitude_deg,
    )


def hour_angle(hour_angle_deg: float) -> str:
    hours = math.remainder(hour_angle_deg, 360.0) / DEGREES_PER_HOUR
    if abs(hours) < ON_THE_MERIDIAN_H:
        return say("on the meridian")
    if hours > 0:
        return say("{hours:.1f} h west of the meridian", hours=hours)
    return say("{hours:.1f} h east of the meridian", hours=-hours)


def gap_words(leg: Leg) -> str:
    """``, a gap of 12.0 min``: where readings stopped and went on; empty without any."""
    if not leg.pauses.size:
        return ""
    minutes = float((leg.utc_s[leg.pauses + 1] - leg.utc_s[leg.pauses]).max()) / 60.0
    if leg.pauses.size == 1:
        return say(", a gap of {minutes:.1f} min", minutes=minutes)
    number = int(leg.pauses.size)
    return say(", {number} gaps of up to {minutes:.1f} min", number=number, minutes=minutes)


def _extent(leg: Leg, trend: LegTrend | None = None) -> str:
    count = len(leg.utc_s)
    minutes = (leg.utc_s[-1] - leg.utc_s[0]) / 60.0 if count else 0.0
    if count == 1:
        said = say("1 reading in {minutes:.1f} min", minutes=minutes)
    else:
        said = say("{count:,} readings in {minutes:.1f} min", count=count, minutes=minutes)
    said += gap_words(leg)
    aside = 0 if trend is None else int(trend.rejected.sum())
    return say("{extent}, {aside} set aside", extent=said, aside=aside) if aside else said


# A star to watch, in words: where it is, what it shows, what it costs.

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
    return say("shows azimuth and altitude mixed") if told is Shows.BOTH else str(told)


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


# What to mind while a star is watched: bumps, gaps, the edge of the field, the horizon.

TOLD = (
    *(Weakness.STEP, Weakness.BENDS, Weakness.STARS_ALIKE),
    *(Weakness.LOW_STAR, Weakness.BELOW_HORIZON),
)
GAP_TIMES = 10.0  # the usual interval
LEAST_GAP_S = 30.0
NEAR_EDGE = 0.8  # of the way from the middle to the edge
AHEAD_S = 600.0


@dataclass(frozen=True)
class Warned:
    """`sentences`: the most pressing first; `is_leaving`: one says the star goes out of sight."""

    sentences: tuple[str, ...] = ()
    is_leaving: bool = False


def warnings(
    snapshot: Snapshot, horizon: Horizon, now_utc_s: float, across_arcmin: float
) -> Warned:
    """On the leg under way. `across_arcmin`: of the field."""
    watched = [leg for leg in snapshot.legs if leg.label == snapshot.watching]
    if not watched or watched[0].utc_s.size < 2:
        return Warned()
    leg = watched[0]
    leaves = [leaving(leg, across_arcmin)]
    if snapshot.site is not None and snapshot.air is not None:
        leaves.append(setting(leg, snapshot.site, snapshot.air, horizon))
    said = [sentence for sentence in (gap(leg, now_utc_s), *leaves) if sentence]
    return Warned((*said, *_of_notes(snapshot, leg.label)), any(leaves))


def _of_notes(snapshot: Snapshot, label: str) -> Sequence[str]:
    notes = () if snapshot.solution is None else snapshot.solution.notes
    return [
        str(note)
        for note in notes
        if note.code in TOLD and (note.leg == label or note.code is Weakness.STARS_ALIKE)
    ]


def gap(leg: Leg, now_utc_s: float) -> str:
    """Clouds, or a camera that stopped."""
    usual_s = float(np.median(np.diff(leg.utc_s)))
    silent_s = now_utc_s - float(leg.utc_s[-1])
    if silent_s < max(GAP_TIMES * usual_s, LEAST_GAP_S):
        return ""
    return say(
        "No reading for {minutes:.1f} min (clouds?): what was read still counts.",
        minutes=silent_s / 60.0,
    )


def leaving(leg: Leg, across_arcmin: float) -> str:
    """The star has come far from where it was centred, in a field so wide."""
    north = float(leg.north_arcsec[-1] - leg.north_arcsec[0])
    east = 0.0
    if leg.east_arcsec is not None and np.isfinite(leg.east_arcsec[[0, -1]]).all():
        east = float(leg.east_arcsec[-1] - leg.east_arcsec[0])
    moved_arcmin = float(np.hypot(north, east)) / 60.0
    if moved_arcmin < NEAR_EDGE * across_arcmin / 2.0:
        return ""
    return say(
        "The star has moved {moved:.1f}′ and may leave the field ({across:.3g}′ across): bring it "
        "back and begin a new leg on it; both legs count.",
        moved=moved_arcmin,
        across=across_arcmin,
    )


def setting(leg: Leg, site: Site, air: Air, horizon: Horizon) -> str:
    """The star goes down behind what stands in the way."""
    times = leg.utc_s[-1] + np.array([0.0, AHEAD_S])
    azimuth, altitude = horizontal_deg(leg.ra_deg, leg.dec_deg, site, air, times)
    free = altitude - np.maximum(horizon.limit_deg(azimuth), 0.0)
    if free[0] <= 0.0:
        return say("The star is behind the horizon now: end this leg; what was read still counts.")
    if free[1] > 0.0:
        return ""
    minutes = AHEAD_S / 60.0 * free[0] / (free[0] - free[1])
    return say("The star goes behind the horizon in about {minutes:.0f} min.", minutes=minutes)


# The verdict band of the Drift page, from a snapshot of the night.

NOT_YET = marked("not known yet")


def verdict(snapshot: Snapshot, is_led: bool = False) -> Verdict:
    """Figures where the legs can tell, words where they cannot. `is_led`: the guide says what to
    do, so that this need not say it too.
    """
    if snapshot.advice is None or snapshot.solution is None:
        return _waiting(snapshot)
    return Verdict(
        _azimuth(snapshot.advice),
        _altitude(snapshot.advice),
        tuple(_quiet(snapshot, is_led)),
        _why_not(snapshot.solution),
        snapshot.solution_is_stale,
    )


def _why_not(solution: Solution) -> str:
    """Why the legs do not tell both errors; empty where they do."""
    if solution.is_contradictory:
        return " ".join(str(note) for note in solution.notes if note.code is AxisNote.CONTRADICTION)
    return "" if solution.combination is None else constraint_words(solution.combination)


def _waiting(snapshot: Snapshot) -> Verdict:
    nothing = AxisVerdict("", say(NOT_YET), "")
    if snapshot.site is None and snapshot.legs:
        sentence = say("Enter your site: with it these legs can tell.")
    elif snapshot.watching is None:
        sentence = say("Watch a star to find out.")
    else:
        sentence = say(
            "Watching {star}: the first answer takes about half a minute.", star=snapshot.watching
        )
    return Verdict(nothing, nothing, (sentence,), "", snapshot.solution_is_stale)


def _azimuth(advice: Advice) -> AxisVerdict:
    return AxisVerdict(advice.azimuth_figure, advice.azimuth_side, advice.azimuth_turn)


def _altitude(advice: Advice) -> AxisVerdict:
    return AxisVerdict(advice.altitude_figure, advice.altitude_side, advice.altitude_turn)


def _quiet(snapshot: Snapshot, is_led: bool) -> list[str]:
    said = [say("Aligning on the {aim}. The ± is the 95 % range.", aim=str(snapshot.aim))]
    if snapshot.forecast is not None and not is_led:
        said.append(str(snapshot.forecast.outlook))
    return said


# What the guide says: one stage, one sentence, one thing to do.


@dataclass(frozen=True)
class Action:
    """Something to press. `name` tells the page what is meant, `words`, once said, the person;
    `letter` is its key, "" for none.
    """

    name: str
    words: str
    letter: str


@dataclass(frozen=True)
class Guidance:
    """`detail`: figures below the sentence; `warnings`: what to mind, `is_leaving`: that the star
    goes out of sight; `primary` first of all.
    """

    stage: str
    sentence: str
    detail: str = ""
    warnings: tuple[str, ...] = ()
    primary: Action | None = None
    others: tuple[Action, ...] = ()
    is_leaving: bool = False


WATCH = Action("watch", marked("Watch this star"), "W")
ENOUGH = Action("enough", marked("Next star"), "E")
TURN = Action("turn", marked("Turn the bolts"), "T")
TURNED = Action("turned", marked("Both bolts are turned"), "B")
TURNED_OTHERWISE = Action("turned otherwise", marked("Turned, but otherwise"), "J")
GOOD = Action("good", marked("Good enough"), "G")
AGAIN = Action("again", marked("Look again"), "A")
KICKED = Action("kicked", marked("The tripod was moved"), "")  # loses all legs: no stray letter
WHICH_NORTH = Action("which north", marked("Which way is north?"), "U")
WENT_SOUTH = Action("went south", marked("It went south"), "Q")
WENT_NORTH = Action("went north", marked("It went north"), "P")
CANNOT_TELL = Action("cannot tell", marked("I cannot tell"), "I")
EXCHANGED = Action("exchanged", marked("My view is mirrored"), "M")


# A turn of one bolt in words: which way, how far, how far so far, and where the star goes.

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
    is_sure = side_confidence(wanted, _of(bolt, *guide.wanted_width_arcmin)) is SideConfidence.SURE
    return way if is_sure else say("probably {turn}", turn=way)


def _way(bolt: str, turn_arcmin: float, latitude_deg: float) -> str:
    """The way that takes away an error of the other sign."""
    if bolt == AZIMUTH:
        return azimuth_side(-turn_arcmin, math.radians(latitude_deg)).turn
    return altitude_side(-turn_arcmin).turn


# The words of the guide for every stage, from a snapshot of the night.

FIRST_GLANCE_MIN = 0.45
TURN_TOLD = {
    True: marked("Enough is known: turning the bolts now helps more than watching on."),
    False: marked("Turn the bolts only when the figures above are good enough for you."),
}
NOTHING = Warned()


def guidance(
    snapshot: Snapshot,
    proposals: Proposals | None,
    star: Proposal | None,
    warned: Warned = NOTHING,
) -> Guidance:
    """`star`: the proposal that is marked in the list. `warned` of the leg under way."""
    said = _STAGES[snapshot.guide.stage](snapshot, proposals, star)
    warnings = warned.sentences
    if snapshot.solution is not None and snapshot.solution.is_contradictory:
        said = _contradictory(said, snapshot)
    surprise = snapshot.guide.surprise
    if surprise is not None:
        warnings = (surprise.sentence, *warnings)
        said = _with_ways_out(said, snapshot, surprise.mishap)
    if snapshot.guide.north is KnownNorth.UNKNOWN:
        warnings = (*warnings, say("Which way is north is not known: the first turn will tell."))
    return replace(
        said,
        warnings=(*warnings, *said.warnings),
        others=tuple(action for action in _once(*said.others) if action is not said.primary),
        is_leaving=warned.is_leaving,
    )


def _contradictory(said: Guidance, snapshot: Snapshot) -> Guidance:
    """Before anything else it has to be settled which leg is wrong."""
    if snapshot.guide.stage not in (Stage.CHOOSE, Stage.WATCH):
        return said
    sentence = say(
        "The legs contradict one another: in their list, exchange north and south of the wrong one "
        "or discard it. Another star may show which it is."
    )
    return replace(said, sentence=sentence, detail="")


def _with_ways_out(said: Guidance, snapshot: Snapshot, mishap: Mishap) -> Guidance:
    more = (KICKED,) if mishap is Mishap.MOVED else (EXCHANGED,)
    if snapshot.guide.north is KnownNorth.EXCHANGED:
        more = (KICKED,)
    return replace(said, others=(*said.others, *more))


def _once(*actions: Action) -> tuple[Action, ...]:
    return tuple(dict.fromkeys(actions))


def _choose(snapshot: Snapshot, proposals: Proposals | None, star: Proposal | None) -> Guidance:
    judged = snapshot.guide.judgement
    others = _changed(snapshot)
    if not snapshot.legs and snapshot.axis_state == 1:
        others = (WHICH_NORTH,)
    stage = str(snapshot.guide.stage)
    watch = None if star is None else WATCH
    if judged is not None and judged.next is Next.GOOD_ENOUGH:
        sentence = say("After this turn {chance}.", chance=chance_words(snapshot))
        return Guidance(stage, sentence, "", (), GOOD, _kept(watch, *others))
    if judged is not None and judged.next is Next.TURN and snapshot.legs:
        told = say(TURN_TOLD[True])
        return Guidance(stage, told, "", (), TURN, _kept(watch, *others))
    if star is not None and proposals is not None:
        sentence, detail = choose_sentence(star), choose_detail(star, proposals)
        return Guidance(stage, sentence, detail, (), watch, others)
    nothing = "" if proposals is None else proposals.nothing
    return Guidance(stage, nothing or say("Looking for the best star …"), "", (), None, others)


def _kept(*actions: Action | None) -> tuple[Action, ...]:
    return tuple(action for action in actions if action is not None)


def _changed(snapshot: Snapshot) -> tuple[Action, ...]:
    """Only where there is something to lose is the tripod asked about."""
    turn = (TURN,) if snapshot.guide.wanted is not None and snapshot.legs else ()
    return (*turn, KICKED) if snapshot.legs or snapshot.axis_state > 1 else ()


def _watch(snapshot: Snapshot, _proposals: object, _star: object) -> Guidance:
    stage = f"{snapshot.guide.stage!s}: {snapshot.watching}"
    judged = snapshot.guide.judgement
    others = (ENOUGH, *((TURN,) if snapshot.solution else ()), KICKED)
    if judged is None or not _is_judged(snapshot):
        sentence = say("Go on reading: the first answer takes about half a minute.")
        return Guidance(stage, sentence, "", (), None, others)
    detail = widths_words(snapshot)
    forecast = "" if snapshot.forecast is None else str(snapshot.forecast.outlook)
    primary, sentence = {
        Next.WATCH_ON: (None, forecast or say("Watch on.")),
        Next.OTHER_STAR: (
            ENOUGH,
            say("This star has told enough: another one helps more now."),
        ),
        Next.TURN: (TURN, say(TURN_TOLD[True])),
        Next.GOOD_ENOUGH: (
            GOOD,
            say("Good enough: {chance}.", chance=chance_words(snapshot)),
        ),
    }[judged.next]
    return Guidance(stage, sentence, detail, (), primary, others)


def _is_judged(snapshot: Snapshot) -> bool:
    """Whether the answer already knows this leg, and more of it than a first glance."""
    trends = () if snapshot.solution is None else snapshot.solution.legs
    return any(
        trend.label == snapshot.watching and trend.minutes >= FIRST_GLANCE_MIN for trend in trends
    )


def _turn(snapshot: Snapshot, _proposals: object, _star: object) -> Guidance:
    return Guidance(
        str(snapshot.guide.stage),
        say("Turn both bolts; finish every turn in the same sense, so that the play is taken up."),
        "",
        (snapshot.guide.unseen,) if snapshot.guide.unseen else (),
        TURNED,
        (TURNED_OTHERWISE, AGAIN, KICKED),
    )


def _done(snapshot: Snapshot, _proposals: object, star: Proposal | None) -> Guidance:
    stage = str(snapshot.guide.stage)
    chance = f"{chance_words(snapshot)}."
    sentence = chance[:1].upper() + chance[1:]
    return Guidance(stage, sentence, more_buys(snapshot, star), (), None, (AGAIN, KICKED))


def _find_north(_snapshot: Snapshot, _proposals: object, _star: object) -> Guidance:
    return Guidance(
        str(Stage.FIND_NORTH),
        say(
            "Move the telescope a little north with the mount's own key. Which way did the star go?"
        ),
        say(
            "A telescope that moves north sees the star go south. In a mirrored view it is read "
            "the other way round; then the readings are turned over."
        ),
        (),
        WENT_SOUTH,
        (WENT_NORTH, CANNOT_TELL),
    )


_STAGES = {
    Stage.CHOOSE: _choose,
    Stage.WATCH: _watch,
    Stage.TURN: _turn,
    Stage.DONE: _done,
    Stage.FIND_NORTH: _find_north,
}


def chance_words(snapshot: Snapshot) -> str:
    """``the axis is within 1′ of the true pole with a chance of 97 %``."""
    judged = snapshot.guide.judgement
    aim = str(snapshot.aim)
    if judged is None:
        return say("how near the axis is to the {aim} is not known", aim=aim)
    return say(
        "the axis is within {target:g}′ of the {aim} with a chance of {chance} %",
        target=snapshot.target_arcmin,
        aim=aim,
        chance=min(int(100.0 * judged.chance_within_target), 99),
    )


def widths_words(snapshot: Snapshot) -> str:
    """The ± of the worse direction, which the watching is to bring down."""
    information = snapshot.guide.information
    if not information.any():
        return ""
    width = _half_width_arcmin(snapshot)
    if width > LONGEST_ARCMIN:
        return say("One star alone leaves the other direction open.")
    return say("± {width} now.", width=_figure(width))


def more_buys(snapshot: Snapshot, star: Proposal | None) -> str:
    """How much another five minutes would bring."""
    if star is None or not snapshot.guide.information.any():
        return ""
    now = _half_width_arcmin(snapshot)
    after = star.choice.half_width_arcmin
    if after >= now:
        return ""
    return say(
        "Five more minutes on {star} would bring the ± from {before} to {after}.",
        star=star.name,
        before=_figure(now),
        after=_figure(after),
    )


def _half_width_arcmin(snapshot: Snapshot) -> float:
    latitude_deg = 0.0 if snapshot.site is None else snapshot.site.latitude_deg
    flexure = flexure_arcmin(snapshot.priors, latitude_deg)
    return float(half_width_arcmin(snapshot.guide.information, flexure))


def _figure(arcmin: float) -> str:
    return f"{arcmin:.1f}′" if arcmin < LONGEST_ARCMIN else say("more than a degree")
