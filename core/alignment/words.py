"""The alignment in words: how far the axis is off, which way to turn, what was found wrong."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace

from core.alignment.axis.evidence import azimuth_has_meaning, to_sky
from core.alignment.axis.geometrywarnings import Weakness
from core.alignment.axis.plausibility import LegDoubt
from core.alignment.axis.singlestar import SecondStar, SingleStarConstraint, second_star
from core.alignment.axis.solution import AxisNote, Solution, pole_refraction_arcmin
from core.alignment.drift.geometry import hemisphere_sign
from core.alignment.drift.path import DriftFault
from core.alignment.drift.prepared import LegNote
from core.alignment.driftlog.header import HeaderUnit
from core.alignment.goal import (
    USUAL_ARCMIN,
    Aim,
    GoalReason,
    Origin,
    Reached,
    SideConfidence,
    side_confidence,
)
from core.alignment.guide.bolts import Unseen
from core.alignment.guide.judgement import Outlook
from core.alignment.guide.nextstar import Shows, Whereabouts
from core.alignment.guide.procedure import Misplaced, ProcedureEvent, Stage
from core.alignment.polarscope.reading import SightLimit
from core.alignment.polarscope.view import Sighting, View
from core.alignment.priors import PriorUnit
from core.finding import Code, Wording
from core.language import marked, say
from core.sky.site import Air, Site

_DEGREES_FROM_ARCMIN = 120.0  # larger figures read better in degrees


@dataclass(frozen=True)
class AxisSide:
    """Where the axis lies and how to bring it back."""

    where: str
    turn: str


def azimuth_side(azimuth_error: float, latitude_rad: float) -> AxisSide:
    """Greater azimuth is east of the north pole and west of the south pole."""
    if azimuth_error * hemisphere_sign(latitude_rad) > 0.0:
        return AxisSide(say("east of the pole"), say("turn it west"))
    return AxisSide(say("west of the pole"), say("turn it east"))


def altitude_side(altitude_error: float) -> AxisSide:
    """The elevated end of the axis, whichever pole it seeks."""
    if altitude_error > 0.0:
        return AxisSide(say("too high"), say("lower it"))
    return AxisSide(say("too low"), say("raise it"))


def figure(size_arcmin: float, half_width_arcmin: float) -> str:
    """Size with ±, no more digits than the ± earns: ``12.4′ ± 0.8′`` or ``2.31° ± 0.02°``."""
    size, half_width, unit = abs(size_arcmin), half_width_arcmin, "′"
    if max(size, half_width) >= _DEGREES_FROM_ARCMIN:
        size, half_width, unit = size / 60.0, half_width / 60.0, "°"
    digits = 0 if half_width >= 9.95 else 1 if half_width >= 0.0995 else 2
    return f"{size:.{digits}f}{unit} ± {_rounded_up(half_width, digits)}{unit}"


def _rounded_up(half_width: float, digits: int) -> str:
    """A ± too small for the digits shown is given as their smallest step, never as zero."""
    return f"{max(half_width, 10.0**-digits):.{digits}f}"


def hour_angle_words(hour_angle_deg: float) -> str:
    """Hours east or west of the meridian: ``2.3 h east``."""
    hours = abs(hour_angle_deg) / 15.0
    if hour_angle_deg > 0.0:
        return say("{hours:.1f} h west", hours=hours)
    return say("{hours:.1f} h east", hours=hours)


# What to turn: the correction that a solution calls for.


@dataclass(frozen=True)
class _Sentences:
    """What is said of one axis: nothing known, too little, right within the ±, or wrong."""

    unknown: str
    open: str
    right: str
    wrong: str


_AZIMUTH = _Sentences(
    marked("Azimuth error: not known yet; these readings cannot tell it."),
    marked("Azimuth: {size}; whether it is off, and to which side, is not clear yet: watch on."),
    marked("Azimuth: {size}, at the pole within the ±: leave it."),
    marked("The axis points {size} {where}: {turn}."),
)
_AZIMUTH_AT_A_POLE = replace(
    _AZIMUTH,
    unknown=marked("Azimuth means nothing at a pole of the Earth, so no error of it is given."),
)
_ALTITUDE = _Sentences(
    marked("Altitude error: not known yet; these readings cannot tell it."),
    marked("Altitude: {size}; whether it is off, and which way, is not clear yet: watch on."),
    marked("Altitude: {size}, at the pole within the ±: leave it."),
    marked("The axis is {size} {where}: {turn}."),
)


@dataclass(frozen=True)
class Advice:
    """The correction in sentences and their pieces; empty where undetermined.

    Figures carry the 95 % half-width.
    """

    azimuth: str
    azimuth_figure: str
    azimuth_side: str
    azimuth_turn: str
    altitude: str
    altitude_figure: str
    altitude_side: str
    altitude_turn: str
    limits: tuple[str, ...]


def aim_sentence(aim: Aim, site: Site, air: Air) -> str:
    """Why one would aim there."""
    lift = pole_refraction_arcmin(site, air)
    if aim is Aim.TRUE_POLE:
        return say("The true pole: least field rotation, the usual choice when guiding.")
    if aim is not Aim.REFRACTED_POLE:
        return say(
            "The {aim}, {above:.1f}′ above the true one: chosen for the target, whose "
            "drift and rotation together are least there.",
            aim=aim,
            above=aim.share * lift,
        )
    return say(
        "The refracted pole, {lift:.1f}′ above the true one here: least drift for "
        "unguided exposures near the pole and high up.",
        lift=lift,
    )


def advise(solution: Solution, aim: Aim, goal_arcmin: float = USUAL_ARCMIN) -> Advice:
    """Advice towards the chosen pole; says east and west, high and low, never plus and minus.

    `goal_arcmin`: on the sky. A bolt is only left alone where the ± is no wider than that.
    """
    latitude_rad = math.radians(solution.latitude_deg)
    azimuth_error = solution.azimuth_error_arcmin
    azimuth_half = solution.azimuth_interval_factor * solution.azimuth_sigma_arcmin
    altitude_error = solution.altitude_error_from(aim)
    altitude_half = solution.altitude_interval_factor * solution.altitude_sigma_arcmin
    azimuth_said, altitude_said = _sentences(solution, latitude_rad)
    azimuth = _piece(
        azimuth_error,
        azimuth_half,
        azimuth_side(azimuth_error, latitude_rad),
        solution.azimuth_interval_factor,
        solution.azimuth_determined,
        goal_arcmin / float(to_sky(latitude_rad)[0]),
        azimuth_said,
    )
    altitude = _piece(
        altitude_error,
        altitude_half,
        altitude_side(altitude_error),
        solution.altitude_interval_factor,
        solution.altitude_determined,
        goal_arcmin,
        altitude_said,
    )
    limits = tuple(map(str, solution.notes))
    if solution.combination is not None:
        limits = (constraint_words(solution.combination), *limits)
    return Advice(*azimuth, *altitude, limits)


def _sentences(solution: Solution, latitude_rad: float) -> tuple[_Sentences, _Sentences]:
    """For azimuth and altitude."""
    if solution.is_contradictory:
        azimuth = marked("Azimuth error: not told while the legs contradict one another.")
        altitude = marked("Altitude error: not told while the legs contradict one another.")
        return replace(_AZIMUTH, unknown=azimuth), replace(_ALTITUDE, unknown=altitude)
    if not azimuth_has_meaning(latitude_rad):
        return _AZIMUTH_AT_A_POLE, _ALTITUDE
    return _AZIMUTH, _ALTITUDE


def _piece(
    error_arcmin: float,
    half_width_arcmin: float,
    side: AxisSide,
    interval_factor: float,
    determined: bool,
    goal_arcmin: float,
    said: _Sentences,
) -> tuple[str, str, str, str]:
    """Sentence, figure, side and turn for one axis; `goal_arcmin` as the bolt turns it."""
    if not determined:
        where = say("not known yet")
        return say(said.unknown), "", where, ""
    size = figure(error_arcmin, half_width_arcmin)
    claimed = side_confidence(error_arcmin, half_width_arcmin, interval_factor)
    if claimed is SideConfidence.OPEN and half_width_arcmin > goal_arcmin:
        where, turn = say("side not clear yet"), say("watch on")
        return say(said.open, size=size), size, where, turn
    if claimed is SideConfidence.OPEN:
        where, turn = say("at the pole within the ±"), say("leave it")
        return say(said.right, size=size), size, where, turn
    if claimed is SideConfidence.PROBABLE:
        side = AxisSide(
            say("probably {where}", where=side.where), say("probably {turn}", turn=side.turn)
        )
    sentence = say(said.wrong, size=size, where=side.where, turn=side.turn)
    return sentence, size, side.where, side.turn


# What one star, or stars that stand alike, can tell.


def constraint_words(known: SingleStarConstraint) -> str:
    """What is known, and the star that would settle the rest."""
    parts = [
        say("One star alone fixes only one combination of the two errors.")
        if known.legs == 1
        else say("These stars stand alike: together they fix one combination of the two errors.")
    ]
    if known.if_altitude_right is not None:
        error, half_width = (
            known.if_altitude_right.error_arcmin,
            known.if_altitude_right.half_width_arcmin,
        )
        parts.append(
            say(
                "If the altitude were right, the axis would point {size} {side}.",
                size=figure(error, half_width),
                side=azimuth_side(error, known.latitude_rad).where,
            )
        )
    if known.if_azimuth_right is not None:
        error, half_width = (
            known.if_azimuth_right.error_arcmin,
            known.if_azimuth_right.half_width_arcmin,
        )
        parts.append(
            say(
                "If the azimuth were right, the axis would be {size} {side}.",
                size=figure(error, half_width),
                side=altitude_side(error).where,
            )
        )
    second = second_star(known.second_star_hour_angle_deg)
    return " ".join([*parts, say("To settle it, watch {star}.", star=second)])


# Sentences that one template cannot say.


def _stars_alike(hour_angles_deg: tuple[float, ...]) -> str:
    return say(
        "The stars stand at similar hour angles ({hours}), so azimuth and altitude "
        "error are hard to tell apart: add one near the meridian or one six hours from "
        "it, whichever is missing.",
        hours=", ".join(map(hour_angle_words, hour_angles_deg)),
    )


def _step(label: str, size_arcsec: float, after: float) -> str:
    return say(
        "Leg “{label}” jumped {size:.1f}″ {way} after {after:.1f} min (a bump?). "
        "Both sides are used; if the tripod moved, start anew.",
        label=label,
        size=abs(size_arcsec),
        way=say("north") if size_arcsec > 0.0 else say("south"),
        after=after,
    )


def _in_the_future(label: str, ahead_s: float) -> str:
    ahead = (
        say("{hours:.1f} hours", hours=ahead_s / 3600.0)
        if ahead_s < 172_800.0
        else say("{days:.0f} days", days=ahead_s / 86400.0)
    )
    return say(
        "Leg “{label}” ends {ahead} in the future. Either local time was taken for UTC, "
        "or the clock of this computer or of the one that wrote the log is wrong.",
        label=label,
        ahead=ahead,
    )


def _contradiction(
    left_out: tuple[str, ...], named: tuple[str, ...], exchanged: tuple[str, ...]
) -> str:
    names = _names(left_out or named)
    parts = [_left_out(names, len(left_out)) if left_out else _open(names)]
    if exchanged:
        parts.append(
            say(
                "With north and south of leg {names} exchanged all legs agree: if you took one "
                "for the other there, exchange them.",
                names=_names(exchanged, say(" or of leg ")),
            )
        )
    else:
        parts.append(
            say(
                "Was another star in view, or the tripod moved in between? Leave out the leg that "
                "is wrong, or watch a star again."
            )
        )
    return " ".join(parts)


def _left_out(names: str, number: int) -> str:
    if number == 1:
        return say("Leg {names} contradicts all others and is not used.", names=names)
    return say("The legs {names} contradict all others and are not used.", names=names)


def _open(names: str) -> str:
    return say(
        "The legs {names} contradict one another, and nothing tells which of them is wrong: so no "
        "error of the axis is told.",
        names=names,
    )


def _names(labels: Sequence[str], between: str = ", ") -> str:
    return between.join(say("“{label}”", label=label) for label in labels)


def _misplaced(event: Code, stage: Code, possible: tuple[Code, ...]) -> str:
    return say(
        "“{event}” has no place at “{stage}”; possible now: {events}.",
        event=event,
        stage=stage,
        events=", ".join(map(str, possible)),
    )


# What computations find and refuse, by code.

SENTENCES: dict[Code, Wording] = {
    # geometrywarnings
    Weakness.STARS_ALIKE: _stars_alike,
    Weakness.UPRIGHT_AXIS: marked(
        "At latitude {latitude:.1f}° the axis stands upright, where azimuth means nothing, so "
        "no azimuth error is given; level the mount and trust the altitude error."
    ),
    Weakness.POLAR_SITE: marked(
        "At latitude {latitude:.1f}° the axis is nearly upright: azimuth error hardly shows "
        "and hardly matters; level the mount and trust the altitude error."
    ),
    Weakness.EQUATORIAL_SITE: marked(
        "At latitude {latitude:.1f}° the pole lies near the horizon, where refraction is large "
        "and uncertain; the altitude error, measured from stars high up, holds, but the "
        "refracted pole is only known to some minutes of arc."
    ),
    Weakness.NO_REFRACTION: marked("Refraction is switched off (no air pressure)."),
    Weakness.BELOW_HORIZON: marked(
        "The star of leg “{label}” was {depth:.0f}° below the horizon at the stated time. Was "
        "local time taken for UTC, or are latitude and longitude wrong?"
    ),
    Weakness.LOW_STAR: marked(
        "The star of leg “{label}” stood only {altitude:.0f}° high, where the air is unsteady "
        "and refraction uncertain; one above 20° is better."
    ),
    Weakness.NEAR_THE_POLE: marked(
        "The star of leg “{label}” is {distance:.0f}° from a pole of the sky; one nearer the "
        "equator is easier to keep in the field."
    ),
    Weakness.FAST_STAR: marked(
        "The star of leg “{label}” drifts {rate:.0f}″ a minute, as if the axis pointed "
        "{least:.0f}° or more beside the pole. If it does not, the offsets are not seconds of "
        "arc (milliarcseconds, pixels?) and nothing said here is right."
    ),
    Weakness.TURNED_RETICLE: marked(
        "North of leg “{label}” is turned by {angle:.1f}° ± {width:.1f}°: motion in east shows "
        "in it. That is taken into account, but turn the camera or reticle until a star runs "
        "along east and west."
    ),
    Weakness.BENDS: marked(
        "Leg “{label}” bends in a way this star should not at that time: check star, time "
        "(UTC?) and site; if they are right, something in the mount or telescope is yielding."
    ),
    Weakness.STEP: _step,
    Weakness.SET_ASIDE: marked(
        "{aside} of {count} readings of leg “{label}” stand far from their neighbours (a gust, "
        "a touch?) and are set aside."
    ),
    # plausibility
    LegDoubt.BELOW_HORIZON: marked(
        "The star of leg “{label}” was {depth:.0f}° below the horizon at {time}. {cause}"
    ),
    LegDoubt.LOCAL_TIME: marked(
        "Perhaps local time was taken for UTC: by a clock at UTC{hours:+d} it stood "
        "{altitude:.0f}° high. If so, write the times with their offset, like "
        "20:15:30{hours:+03d}:00."
    ),
    LegDoubt.TIME_PLACE_OR_STAR: marked(
        "Check that the times are UTC and not local time, the place (longitude counts east), "
        "and the star."
    ),
    LegDoubt.TOO_FAST: marked("Leg “{label}” cannot be right: {reason}"),
    LegDoubt.IN_THE_FUTURE: _in_the_future,
    LegDoubt.OTHER_PRESSURE: lambda question: str(question),
    LegDoubt.PRESSURE: marked(
        "The pressure of {pressure:.0f} hPa does not fit {elevation:.0f} m, where about "
        "{usual:.0f} hPa is usual. It must be the pressure at the place, not that reduced to "
        "sea level which weather reports give."
    ),
    # path
    DriftFault.TOO_FAST: marked(
        "its star drifts {rate:,.0f}″ a minute, though no polar axis can cause more than "
        "{fastest:.0f}″. The offsets cannot be seconds of arc: are they milliarcseconds or "
        "pixels? Convert them first."
    ),
    # prepared
    LegNote.LEFT_OUT: marked("Leg “{label}” is left out: {reason}"),
    LegNote.NONE: marked("There is no leg yet: watch a star, or import a drift log."),
    LegNote.SINGLE_READING: marked(
        "it has a single reading; a drift needs at least two, some minutes apart."
    ),
    LegNote.NOT_A_NUMBER: marked("a reading or a time in it is not a number."),
    LegNote.BACKWARDS: marked("its times run backwards; was the clock set while it was watched?"),
    LegNote.SHORT: marked("it lasts under {seconds:.0f} seconds; watch the star for some minutes."),
    LegNote.ERROR_UNSTATED: marked(
        "it has {number} readings and no reading error; take at least {fewest} readings, or "
        "state how well you can read the offset."
    ),
    # bolts
    Unseen.STAR_HARDLY_MOVES: marked(
        "This star hardly moves when one of the bolts is turned, so it cannot show how far "
        "they went; take a star lower in the sky, or say how far you turned."
    ),
    # judgement
    Outlook.CONTRADICTION: marked(
        "The legs contradict one another: first settle which of them is wrong."
    ),
    Outlook.ENOUGH: marked("The ± is within {target:g}′: enough watched."),
    Outlook.FLEXURE: marked(
        "A tube that yields {flexure:g}″ per g leaves ±{least:.1f}′ however long you watch, so "
        "the ± will not come within {target:g}′: state a stiffer tube if yours is one."
    ),
    Outlook.WATCH_ON: marked("Watch on: the ± is not yet within {target:g}′."),
    Outlook.MINUTES: marked(
        "About {minutes:.0f} more minutes on this star bring the ± to {target:g}′."
    ),
    Outlook.A_MINUTE: marked("About a minute more on this star brings the ± to {target:g}′."),
    Outlook.OTHER_STAR: marked(
        "This star alone will not bring the ± down: end this leg and watch {star}."
    ),
    # nextstar
    Whereabouts.MERIDIAN: marked("near the meridian"),
    Whereabouts.EAST: marked("low in the east"),
    Whereabouts.WEST: marked("low in the west"),
    Shows.AZIMUTH: marked("shows azimuth"),
    Shows.ALTITUDE: marked("shows altitude"),
    Shows.BOTH: marked("shows a mixture of both"),
    # reading
    SightLimit.NO_AZIMUTH: marked(
        "Within half a degree of the Earth's pole the axis points to the zenith and has no "
        "azimuth. Set it upright with a spirit level, then watch stars drift."
    ),
    SightLimit.UPRIGHT_AXIS: marked(
        "So near the Earth's pole the axis is almost upright: azimuth hardly moves it, and a "
        "small slip in the sight makes a large azimuth error. Trust the angle on the sky."
    ),
    SightLimit.LOW_POLE: marked(
        "So near the equator the pole is on the horizon: haze, obstacles and refraction that "
        "changes by arcminutes make its star a poor mark. Watch stars drift instead."
    ),
    # view
    Sighting.NO_CLOCK_PLACE: marked(
        "“{text}” is no place on a clock face; write it like 10:20 or 3:05."
    ),
    Sighting.NO_AXIS: marked(
        "No axis shows the star at that place. Check the clock position, the distance and "
        "which way round the sight shows the sky."
    ),
    # stages, events, poles, goals
    Aim.TRUE_POLE: marked("true pole"),
    Aim.QUARTER_UP: marked("place a quarter of the way from the true to the refracted pole"),
    Aim.HALFWAY: marked("place halfway between the true and the refracted pole"),
    Aim.THREE_QUARTERS_UP: marked(
        "place three quarters of the way from the true to the refracted pole"
    ),
    Aim.REFRACTED_POLE: marked("refracted pole"),
    Origin.TYPED: marked("set by you"),
    Origin.BUDGET: marked("from tonight's budget"),
    Origin.USUAL: marked("the usual figure"),
    Reached.WITHIN: marked("within"),
    Reached.NOT_CLEAR: marked("not clear yet"),
    Reached.BEYOND: marked("beyond"),
    Stage.FIND_NORTH: marked("Find north in the field"),
    Stage.CHOOSE: marked("Choose a star"),
    Stage.WATCH: marked("Watch it drift"),
    Stage.TURN: marked("Turn the bolts"),
    Stage.DONE: marked("Good enough"),
    ProcedureEvent.NORTH_FOUND: marked("north is known"),
    ProcedureEvent.NORTH_DOUBTED: marked("north is in doubt"),
    ProcedureEvent.STAR_TAKEN: marked("a star is in view"),
    ProcedureEvent.STAR_LOST: marked("the star is lost"),
    ProcedureEvent.LEG_ENOUGH: marked("this star has told enough"),
    ProcedureEvent.TURN_WORTHWHILE: marked("turning helps more than watching"),
    ProcedureEvent.TARGET_MET: marked("within the target"),
    ProcedureEvent.BOLTS_TURNED: marked("the bolts were turned"),
    ProcedureEvent.TRIPOD_MOVED: marked("the tripod was moved"),
    ProcedureEvent.LOOK_AGAIN: marked("look again"),
    View.ERECT: marked("erect"),
    View.INVERTED: marked("inverted"),
    View.MIRRORED: marked("mirrored"),
    Misplaced.EVENT: _misplaced,
    GoalReason.TYPED: marked("{goal:g}′, as you set it."),
    GoalReason.USUAL: marked(
        "{goal:g}′, the usual figure (common practice, no source): the Budget page tells what "
        "tonight’s exposures need."
    ),
    HeaderUnit.DEGREES_NORTH: marked("degrees, north positive"),
    HeaderUnit.DEGREES_EAST: marked("degrees, east positive"),
    HeaderUnit.METRES: marked("metres"),
    HeaderUnit.HECTOPASCALS: marked("hectopascals"),
    HeaderUnit.CELSIUS: marked("degrees Celsius"),
    PriorUnit.ARCSEC: marked("seconds of arc"),
    PriorUnit.DEGREES: marked("degrees"),
    PriorUnit.SECONDS: marked("seconds"),
    PriorUnit.ARCSEC_PER_G: marked("seconds of arc per g"),
    AxisNote.UNEXPECTED: marked(
        "The axis is not where the last turn of the bolts should have brought it (turned the "
        "other way, or the tripod was moved?); what was measured before the turn is no longer "
        "used."
    ),
    AxisNote.CONTRADICTION: _contradiction,
    SecondStar.NEAR_THE_MERIDIAN: marked(
        "a second star near the meridian, not too close to the pole or the zenith"
    ),
    SecondStar.SIX_HOURS_AWAY: marked(
        "a second star in the east or the west, about six hours from the meridian"
    ),
    SecondStar.HOURS_WEST: marked("a second star about {hours:.0f} hours west of the meridian"),
    SecondStar.HOURS_EAST: marked("a second star about {hours:.0f} hours east of the meridian"),
    LegNote.ALL_LEFT_OUT: lambda notes: " ".join(map(str, notes)),
}
