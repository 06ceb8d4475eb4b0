"""The drive in words: what runs, taps and stars pointed at tell, and why they cannot."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

from core.alignment.words import altitude_side, azimuth_side, figure
from core.finding import Code, Finding, Wording
from core.imaging.words import duration, pixels
from core.language import marked, say
from core.sky.site import Site
from core.tracking.exposure import ChanceTold, Exposure, Limit
from core.tracking.guidesteps import NOTHING_ARCSEC, BacklashTold, GuideStep
from core.tracking.guiding import GuidedAxis, GuidingFault, GuidingTold
from core.tracking.iterativefit import Stretch
from core.tracking.motion import Drive, Loop
from core.tracking.periodic import PeriodicError, WormFault, WormTold
from core.tracking.plausibility import DriftWay, RunDoubt
from core.tracking.pointing import AxisCompared, PointingFault, PointingPart, TermTold
from core.tracking.pointinglog import PointingList
from core.tracking.run import RunFault
from core.tracking.runlog import RunLog
from core.tracking.training import TrainingTold
from core.tracking.verdict import (
    LONG_SETTLING_S,
    Cause,
    CauseShare,
    Remedy,
    TrackingEvidence,
    VerdictTold,
)
from core.tracking.vibration import ChangeTold, LoadTold, TapFault, TapTold
from core.tracking.wormfolding import INTERVAL_FACTOR
from core.tracking.wormperiod import PeriodFault

Floats = NDArray[np.float64]


# Chances, backlash, guiding, the worm, training, a tap, the verdict.

_TITLES = {
    Drive.UNGUIDED: marked("Unguided"),
    Drive.TRAINED: marked("Trained"),
    Drive.GUIDED: marked("Guided"),
}
_READ_SELDOM = marked(
    "The run was read too seldom or too unevenly for a guider this quick, so that this "
    "may be too hopeful: record a run with a reading every second or two."
)


def _exposure_sentence(
    drive: Drive, lengths: Floats, share: Floats, longest_s: float, limit: Limit
) -> str:
    known = lengths[np.isfinite(share)]
    what, allowed = say(_TITLES[drive]), pixels(limit.part_px)
    if known.size == 0:
        return say("{what}: the run is too short to say; track longer.", what=what)
    if longest_s == 0.0:
        return say(
            "{what}: no exposure of {length} or more keeps {allowed} surely.",
            what=what,
            length=duration(float(known[0])),
            allowed=allowed,
        )
    if longest_s >= known[-1]:
        return say(
            "{what}: nine in ten exposures keep {allowed} up to {length}, as far as this "
            "run can tell.",
            what=what,
            allowed=allowed,
            length=duration(longest_s),
        )
    return say(
        "{what}: nine in ten exposures of {length} keep {allowed}.",
        what=what,
        length=duration(longest_s),
        allowed=allowed,
    )


def _guidesteps_sentence(play: float, half_width: float, rate: float) -> str:
    if play < max(NOTHING_ARCSEC, half_width):
        words = say(
            "No declination backlash beyond {size:.1f}″ shows.",
            size=max(half_width, NOTHING_ARCSEC),
        )
    else:
        words = say(
            "Declination has {play:.1f}″ ± {half_width:.1f}″ of backlash: each reversal "
            "waits that long. Leave the axis slightly out of balance or the alignment "
            "slightly off, so that corrections go one way; or have the worm adjusted.",
            play=play,
            half_width=half_width,
        )
    if not 0.7 <= rate <= 1.4:
        words += " " + say(
            "The star moves {rate:.2f} times as far as asked: the guide rate is not the "
            "one stated, or the calibration was made at another declination.",
            rate=rate,
        )
    return words


def _guiding_sentence(total: float, limit: Limit, growth: float | None, has_findings: bool) -> str:
    pixels = total / limit.scale_arcsec_per_px
    start = say(
        "Guiding holds the star within {total:.2f}″ rms ({pixels:.2f} pixels)",
        total=total,
        pixels=pixels,
    )
    if growth is None:
        return say("{start}; enter the seeing to know what that costs.", start=start)
    if growth < 0.05:
        return say("{start}, which costs nothing one could see.", start=start)
    percent = 100.0 * growth
    if has_findings:
        return say(
            "{start}, which makes the stars {percent:.0f} % wider.", start=start, percent=percent
        )
    return say(
        "{start}, which makes the stars {percent:.0f} % wider; no fault of the guiding shows, so "
        "suspect the air.",
        start=start,
        percent=percent,
    )


def _periodic_sentence(result: PeriodicError) -> str:
    size, half = result.size, INTERVAL_FACTOR * result.size.peak_to_peak_sigma_arcsec
    if not any(wave.stands_out for wave in result.harmonics):
        limit = 2.0 * INTERVAL_FACTOR * max(w.amplitude_sigma_arcsec for w in result.harmonics[:2])
        return say(
            "No periodic error stands out of the noise in {turns:.1f} turns of "
            "{period:.0f} s; peak to peak it is below about {limit:.1f}″.",
            turns=result.turns,
            period=result.period_s,
            limit=limit,
        )
    around = INTERVAL_FACTOR * result.period_sigma_s
    origin = "" if result.period_is_given else f" ± {max(around, 0.1):.1f}"
    return say(
        "The drive swings {size:.1f}″ ± {half_width:.1f}″ peak to peak ({rms:.1f}″ rms) in "
        "each turn of {period:.1f}{origin} s, measured over {turns:.1f} turns.",
        size=size.peak_to_peak_arcsec,
        half_width=max(half, 0.1),
        rms=size.rms_arcsec,
        period=result.period_s,
        origin=origin,
        turns=result.turns,
    )


def _training_sentence(repeating: float, residual: float, air_is_known: bool) -> str:
    before = math.hypot(repeating, residual)
    inside = ""
    if not air_is_known:
        inside = " " + say("(the air is still inside: north offsets would take it out)")
    if before <= 0.0 or residual > 0.8 * before:
        return say(
            "Training would bring little: of {before:.1f}″ rms only {repeating:.1f}″ "
            "repeats from turn to turn{inside}.",
            before=before,
            repeating=repeating,
            inside=inside,
        )
    return say(
        "Training would bring the drive from {before:.1f}″ to about {residual:.1f}″ rms: "
        "{repeating:.1f}″ repeats from turn to turn, the rest does not{inside}.",
        before=before,
        residual=residual,
        repeating=repeating,
        inside=inside,
    )


def _vibration_sentence(
    swing: float, frequency: float, settling: float, settled: float, length_s: float
) -> str:
    words = say(
        "A touch swings the star {swing:.1f}″ to one side, {frequency:.1f} times a second",
        swing=swing,
        frequency=frequency,
    )
    if settling > length_s:
        return say(
            "{words}; it was not still at the end of the record, so record for longer.", words=words
        )
    return say(
        "{words}; after {settling:.1f} s it stays within {settled:.1f}″.",
        words=words,
        settling=settling,
        settled=settled,
    )


def _verdict_paragraph(
    cause: Cause, shares: list[CauseShare], first: Finding, evidence: TrackingEvidence
) -> str:
    scale, limit = evidence.limit.scale_arcsec_per_px, evidence.limit
    length = f"{evidence.exposure_s:.0f} s"
    worst = shares[0]
    if cause is Cause.NONE:
        words = say(
            "In exposures of {length} nothing measured comes near the {allowed:g} pixels "
            "allowed; the largest part is {cause} with {pixels:.2f} pixels.",
            length=length,
            allowed=limit.part_px,
            cause=worst.cause,
            pixels=worst.smear_arcsec / scale,
        )
    else:
        words = say(
            "In exposures of {length} most of the smear comes from {cause}: {smear:.1f}″ "
            "or {pixels:.1f} pixels, where {allowed:g} are allowed.",
            length=length,
            cause=cause,
            smear=worst.smear_arcsec,
            pixels=worst.smear_arcsec / scale,
            allowed=limit.part_px,
        )
    others = [
        f"{share.cause} {share.smear_arcsec:.1f}″"
        for share in shares[1:]
        if share.smear_arcsec > 0.2 * worst.smear_arcsec
    ]
    if others:
        words += " " + say("Beside it: {others}.", others="; ".join(others))
    return " ".join([words, str(first), *_asides(evidence)])


def _asides(evidence: TrackingEvidence) -> list[str]:
    asides = []
    shaking = evidence.vibration
    if shaking is not None and shaking.settling_s > LONG_SETTLING_S:
        asides.append(
            say(
                "The mount shakes for {seconds:.0f} s after a touch: lighten the load or "
                "stiffen the legs, and wait before exposing.",
                seconds=shaking.settling_s,
            )
        )
    found = evidence.pointing
    if found is not None and found.rms_without_zeros_arcmin > 10.0:
        asides.append(
            say(
                "It points only within {size:.0f}′, which does not smear but costs time at "
                "every target.",
                size=found.rms_without_zeros_arcmin,
            )
        )
    return asides


# The parts of a pointing error, each with what a person does about it.


def _part_nothing(part: PointingPart, half_width: float) -> str:
    name = str(part)
    return say(
        "{name}: none to speak of, within {size:.1f}′.",
        name=name[:1].upper() + name[1:],
        size=half_width,
    )


def _part_error(part: PointingPart, value: float, half_width: float, site: Site) -> str:
    size = figure(value, half_width)
    if part is PointingPart.AZIMUTH:
        side = azimuth_side(value, math.radians(site.latitude_deg))
        return say(
            "The polar axis points {size} {where}: {turn}.",
            size=size,
            where=side.where,
            turn=side.turn,
        )
    if part is PointingPart.ALTITUDE:
        side = altitude_side(value)
        return say(
            "The polar axis is {size} {where}: {turn}.", size=size, where=side.where, turn=side.turn
        )
    if part is PointingPart.TUBE:
        if value > 0.0:
            return say(
                "The tube is not square to the declination axis: on the east side of the pier it "
                "looks {size} too far east, on the other as far the other way. Shim the tube or "
                "its rings.",
                size=size,
            )
        return say(
            "The tube is not square to the declination axis: on the east side of the pier it "
            "looks {size} too far west, on the other as far the other way. Shim the tube or its "
            "rings.",
            size=size,
        )
    if part is PointingPart.AXES:
        return say(
            "The two axes miss a right angle by {size}. This is the maker's to correct; a "
            "pointing model allows for it.",
            size=size,
        )
    if part is PointingPart.SAG:
        if value > 0.0:
            return say(
                "The tube hangs low by {size} at the horizon: tighten rings, focuser and the "
                "dovetail, or support the camera.",
                size=size,
            )
        return say(
            "The tube is lifted by {size} at the horizon: tighten rings, focuser and the "
            "dovetail, or support the camera.",
            size=size,
        )
    if part is PointingPart.ZERO_HOUR:
        return say(
            "The hour angle readings are off by {size}: set the circle, or sync on one star.",
            size=size,
        )
    return say(
        "The declination readings are off by {size}: set the circle, or sync on one star.",
        size=size,
    )


def _parts_open(parts: tuple[PointingPart, ...], both_sides: bool) -> str:
    names = list(map(str, parts))
    listed = (
        names[0]
        if len(names) == 1
        else say("{names} and {last}", names=", ".join(names[:-1]), last=names[-1])
    )
    advice = (
        say("Add stars near the pole and near the equator, high and low.")
        if both_sides
        else say(
            "Add stars on the other side of the pier, and near the pole as well as the equator."
        )
    )
    return say("These stars do not tell: {listed}. {advice}", listed=listed, advice=advice)


# The load against the capacity.


def _load(words: str) -> Callable[[float], str]:
    def said(percent: float) -> str:
        start = say("The mount carries {percent:.0f} % of its listed capacity", percent=percent)
        return say(words, words=start)

    return said


# What computations find and refuse, by code.

SENTENCES: dict[Code, Wording] = {
    # exposure
    Exposure.NO_SCALE: marked(
        "The image scale is not known; enter arcseconds per pixel (206.265 times the pixel "
        "size in µm over the focal length in mm)."
    ),
    Exposure.LIMIT: marked("The smear allowed lies between 0.01 and 100 pixels."),
    # guidesteps
    GuideStep.NO_READINGS: marked(
        "No readings follow the dither, or the limit to settle within is not above zero."
    ),
    GuideStep.UNSETTLED: marked(
        "The star did not stay within {within:.1f}″ for {hold:.0f} s after the dither: allow "
        "more, or look for backlash and over-correction."
    ),
    GuideStep.SETTLED_LATE: marked(
        "The star settled within {within:.1f}″ after {seconds:.0f} s, which is long: dither "
        "less far, in right ascension only, or correct a larger share."
    ),
    GuideStep.SETTLED: marked(
        "The star settled within {within:.1f}″ after {seconds:.0f} s; wait that long before "
        "the next exposure."
    ),
    GuideStep.NO_RATE: marked(
        "The guide rate is not known; enter arcseconds a second (half the sidereal rate is 7.5)."
    ),
    GuideStep.FEW_READINGS: marked(
        "A reversal needs at least {fewest} readings while the motion asked for grows in one "
        "direction; repeat it with short, equal pulses."
    ),
    GuideStep.NO_TURN: marked(
        "The star did not turn back within the motion asked for: the backlash is larger than "
        "{asked:.0f}″, or the axis does not answer. Ask for more, and check the cable."
    ),
    # guiding
    GuidingFault.FEW_READINGS: marked(
        "{count} guided readings are too few to judge; {fewest} and some minutes are needed, "
        "in both axes."
    ),
    GuidingFault.TIMES: marked(
        "The times of the guided readings do not increase; check their order."
    ),
    GuidingFault.SWINGS: marked(
        "In {axis} the star swings to and fro about every {period:.0f} s: the corrections are "
        "too strong or come too late. Correct a smaller share each time, or guide less often; "
        "in declination look for backlash too."
    ),
    GuidingFault.LAGS_BEHIND: marked(
        "In {axis} the star stays off to one side for several readings: the corrections are "
        "too weak, too rare, or do not reach the axis. Correct a larger share or more often, "
        "and check that the axis answers."
    ),
    GuidingFault.WORM_LEFT: marked(
        "The worm still shows with {size:.1f}″ under guiding: train the periodic error, or "
        "guide more often."
    ),
    GuidingFault.EAST_WORSE: marked(
        "Right ascension is {ratio:.1f} times worse than declination: the drive, not the air, "
        "since the air moves both alike. Balance the tube slightly heavy towards the east, "
        "check the cables, train the periodic error."
    ),
    GuidingFault.NORTH_WORSE: marked(
        "Declination is {ratio:.1f} times worse than right ascension: backlash, poor balance "
        "in declination or wind. Measure the backlash with a reversal."
    ),
    # iterativefit
    Stretch.FEW_READINGS: marked(
        "The stretch without a break holds too few readings; track longer."
    ),
    Stretch.BEFORE: marked("Only the part before it is used."),
    Stretch.AFTER: marked("Only the part after it is used."),
    Stretch.FLIP_WITH_CAMERA: marked(
        "After the break in the run the curve is upside down: the mount flipped and the camera "
        "with it, so that east offsets read as west. {used}"
    ),
    Stretch.FLIP: marked(
        "The worm lost its phase at a break near the meridian: the mount flipped there. {used}"
    ),
    Stretch.PHASE_LOST: marked(
        "The worm does not keep its phase across a break in the run: the mount was moved, "
        "parked or flipped. {used}"
    ),
    Stretch.GAP: marked(
        "The run has a gap of together {minutes:.0f} minutes; the star may have been centred "
        "anew, so each stretch counts from an origin of its own."
    ),
    Stretch.GAPS: marked(
        "The run has {count} gaps of together {minutes:.0f} minutes; the star may have been "
        "centred anew, so each stretch counts from an origin of its own."
    ),
    Stretch.GUSTS: marked("{count} readings far off their neighbours were set aside."),
    Stretch.BUMPS: marked(
        "The star jumped {count} times (a bump, a re-centring, a slipping clutch); both sides "
        "are used with origins of their own."
    ),
    Stretch.BUMP: marked(
        "The star jumped once (a bump, a re-centring, a slipping clutch); both sides are used "
        "with origins of their own."
    ),
    # motion
    Loop.FEW_TURNS: marked("What training would leave cannot be told from fewer than two turns."),
    Loop.INTERVAL: marked(
        "A guide interval of {interval:g} s cannot be; enter seconds, usually 1 to 10."
    ),
    Loop.DELAY: marked(
        "A guide delay of {delay:g} s does not fit an interval of {interval:g} s; enter both "
        "in seconds (milliseconds taken for seconds?)."
    ),
    Loop.SHARE: marked(
        "The share corrected each time lies above 0 and below 2 (above 1 it overshoots), and "
        "the measurement noise is not negative."
    ),
    # periodic
    WormFault.MINUTES_MEANT: marked(
        "A worm period of {period:g} s is too short; were minutes meant? {period:g} minutes "
        "are {seconds:g} s. Enter it in seconds."
    ),
    WormFault.PERIOD: marked(
        "A worm period of {period:g} s cannot be; enter the seconds of one turn, usually "
        "between 120 and 1200. This run lasts {duration:.0f} s."
    ),
    WormFault.READ_SELDOM: marked(
        "The readings are {interval:.0f} s apart, too far to follow the worm; take one at "
        "least every ten seconds."
    ),
    WormFault.ANOTHER_PERIOD: marked(
        "The strongest period in the run is {found:.0f} s, not the {given:g} s entered or a "
        "part of it; check the data sheet, or let the period be found."
    ),
    # plausibility
    RunDoubt.MINUTES_TAKEN: marked(
        "The worm's period was entered as {given:g} s but {found:.0f} s stands in the run: "
        "minutes taken for seconds?"
    ),
    RunDoubt.SECONDS_TAKEN: marked(
        "The worm's period was entered as {given:g} s but {found:.0f} s stands in the run: "
        "seconds for minutes?"
    ),
    RunDoubt.SOLAR_RATE: marked(
        "The drive falls behind the stars by {rate:.1f}″ a minute, as it does at the solar "
        "rate; choose the sidereal rate."
    ),
    RunDoubt.LUNAR_RATE: marked(
        "The drive falls behind the stars by {rate:.1f}″ a minute, as it does at the lunar "
        "rate; choose the sidereal rate."
    ),
    RunDoubt.GUIDING_UNCLEAR: marked(
        "Whether guiding corrections were left on, this run cannot tell: the star moved as "
        "little as a quiet drive or weak guiding would leave it. Make sure that they were off."
    ),
    RunDoubt.GUIDING_LEFT_ON: marked(
        "The star was held in place more steadily than air and drive alone could leave it: "
        "guiding corrections were probably left on. This shows what guiding leaves over, not "
        "the drive; switch the corrections off and record again."
    ),
    RunDoubt.UNIT: marked(
        "A swing of {size:.0f}″ is more than any worm does: are the offsets really in "
        "arcseconds, and is the image scale right?"
    ),
    RunDoubt.EAST_SIGN: marked(
        "The star drifted {seen} where the alignment says {expected}: the sign of the east "
        "offsets may be reversed (east on the sky is positive)."
    ),
    RunDoubt.NORTH_SIGN: marked(
        "The star drifted {seen} where the alignment says {expected}: the sign of the north "
        "offsets may be reversed."
    ),
    RunDoubt.AHEAD: marked(
        "The drive runs ahead of the stars by {rate:.1f}″ a minute ({percent:.2f} %) beyond "
        "what the axis explains; check the tracking rate and the balance."
    ),
    RunDoubt.BEHIND: marked(
        "The drive runs behind the stars by {rate:.1f}″ a minute ({percent:.2f} %) beyond what "
        "the axis explains; check the tracking rate and the balance."
    ),
    # pointing
    PointingFault.LOW_STARS: marked(
        "Only {count} stars stand higher than {lowest:.0f}°; at least {fewest} are needed, "
        "better {comfortable}, all over the sky."
    ),
    PointingFault.FEW_STARS: marked(
        "{count} stars are too few: {fewest} give zeros and the polar axis at best, "
        "{comfortable} or more on both sides of the pier all parts."
    ),
    PointingFault.NO_NUMBER: marked(
        "Star “{star}” has a coordinate that is not a number, or a declination beyond 90°; "
        "correct or remove it."
    ),
    PointingFault.FAR_OFF: marked(
        "Star {name} is far off the others: another star?; it was left out."
    ),
    PointingFault.TOO_LOW: marked("Star {name} stands too low; it was left out."),
    PointingFault.FEW: marked(
        "{number} stars tell little about the smaller parts; take {comfortable} or more, high "
        "and low, east and west, near the pole and the equator."
    ),
    # pointinglog
    PointingList.COORDINATES: marked(
        "Line {line}: the mount's coordinates {text} are not known here. Write “# "
        "mount_coordinates: of date” (also JNow) or “# mount_coordinates: ICRS” (also J2000), "
        "whichever the hand control shows."
    ),
    PointingList.LONG: marked("The file is too long for a list of stars; choose another."),
    PointingList.NOTHING: marked("No line of the list can be used."),
    PointingList.NOTHING_BUT: marked("No line of the list can be used. Line {line}: {reason}"),
    PointingList.NO_NAMES: marked(
        "The first line should name the columns ({columns}[,side][,star]) but reads {text}."
    ),
    PointingList.NUMBER: marked("{name} {problem}"),
    PointingList.BEYOND: marked("{name} {value:g} is beyond {limit:g} degrees."),
    PointingList.SIDE: marked("side {side} is neither east nor west of the pier."),
    # run
    RunFault.NO_EAST: marked(
        "Leg “{leg}” has no east offsets, and the drive shows in these alone; record them, or "
        "add the column east_arcsec."
    ),
    RunFault.NEAR_THE_POLE: marked(
        "Leg “{leg}” watches a star at declination {declination:.0f}°, where the drive hardly "
        "moves it; choose a star nearer the celestial equator."
    ),
    RunFault.FEW_READINGS: marked(
        "Leg “{leg}” has {count} readings with an east offset; at least {fewest} over three "
        "turns of the worm are needed."
    ),
    RunFault.TIMES: marked(
        "The times of leg “{leg}” do not increase; was the clock set while it was watched? Put "
        "the readings in order of time."
    ),
    RunFault.WITHOUT_EAST: marked(
        "Readings of leg “{leg}” that were not used, since they have no east offset: {count}."
    ),
    RunFault.MANY_NIGHTS: marked(
        "Leg “{leg}” lasts {hours:.0f} hours; a run belongs to one night. Give each night a "
        "leg of its own, and check the unit of the times."
    ),
    RunFault.NEVER_CHANGES: marked(
        "The east offsets of leg “{leg}” never change; was the star measured?"
    ),
    RunFault.AXIS_UNKNOWN: marked(
        "The axis error is not known yet, so a smooth curve was taken for its drift; with a "
        "finished alignment the drift is computed instead."
    ),
    RunFault.FAR_FROM_THE_EQUATOR: marked(
        "At declination {declination:.0f}° the air counts {times:.1f} times as much as at the "
        "equator; a star nearer the equator shows the drive better."
    ),
    # runlog
    RunLog.NO_SCALE: marked(
        "{name} gives its offsets in pixels, but not how large a pixel is. Enter the image "
        "scale in arcseconds per pixel, or write “# {scale_key}: …” into the log."
    ),
    RunLog.UNFOLLOWED: marked("{name} cannot be followed. {problem}"),
    # training
    TrainingTold.FEW_TURNS: marked(
        "The run holds {turns} whole turns of the worm; what training would bring shows from "
        "{fewest} whole turns on."
    ),
    TrainingTold.KEEPS_PROMISE: marked(
        "The data sheet promises {promised:.1f}″ peak to peak, measured {measured:.1f}″: it "
        "keeps its promise."
    ),
    TrainingTold.BREAKS_PROMISE: marked(
        "The data sheet promises {promised:.1f}″ peak to peak, measured {measured:.1f}″: "
        "{times:.1f} times as much."
    ),
    TrainingTold.TOO_CLOSE: marked(
        "The data sheet promises {promised:.1f}″ peak to peak, measured {measured:.1f}″ ± "
        "{half_width:.1f}″: too close to tell; track longer."
    ),
    TrainingTold.PERIOD_AGREES: marked(
        "The worm's period agrees with the {promised:g} s of the data sheet."
    ),
    TrainingTold.OTHER_PERIOD: marked(
        "The run shows a period of {period:.1f} ± {half:.1f} s where the data sheet says "
        "{promised:g} s: another gear, or the sheet is wrong."
    ),
    # verdict
    Remedy.NOTHING_MEASURED: marked(
        "Nothing has been measured yet: record an unguided run, or some minutes of guiding."
    ),
    Remedy.TRAIN: marked("First thing to try: train the periodic error, or guide."),
    Remedy.BALANCE: marked(
        "First thing to try: balance anew, slightly heavy towards the east, lead the cables "
        "free and keep the wind off; then record again."
    ),
    Remedy.ALIGN: marked("First thing to try: improve the polar alignment by drift."),
    Remedy.WAIT: marked("First thing to try: wait for steadier air, or take a higher target."),
    Remedy.GUIDE_SLOWER: marked(
        "First thing to try: a longer guide exposure, then a smaller correction."
    ),
    Remedy.NOTHING: marked("Nothing needs doing for such exposures."),
    # vibration
    TapFault.FEW_READINGS: marked(
        "A tap needs at least {fewest} readings in order of time; take ten or more a second, "
        "from just before the tap until the star is still."
    ),
    TapFault.FEW_AFTER: marked("Too few readings follow the tap; record until the star is still."),
    TapFault.TOO_FAST: marked(
        "The swing is too fast for readings every {interval:.2g} s: fewer than three fall into "
        "one swing. Take more readings a second (a smaller part of the sensor helps)."
    ),
    TapFault.NO_TAP: marked(
        "No tap stands out of the noise: tap harder, or record while the focuser is turned."
    ),
    TapFault.NO_RING: marked("Nothing rings above the noise: tap harder, or the mount is still."),
    TapFault.NO_MASSES: marked("Enter payload and capacity in kilograms, the capacity above zero."),
    ChangeTold.NO_CHANGE: marked(
        "Settling went from {before:.1f} s to {after:.1f} s: no change beyond the errors; tap "
        "several times."
    ),
    ChangeTold.HELPED: marked(
        "The change helped: settling went from {before:.1f} s to {after:.1f} s."
    ),
    ChangeTold.HARMED: marked(
        "The change did harm: settling went from {before:.1f} s to {after:.1f} s."
    ),
    TapFault.LONG: marked("The record is too long for a tap; take the minute around it."),
    TapFault.EMPTY: marked("The record holds no readings; write {time},{arcsec} and a line each."),
    TapFault.NO_NAMES: marked(
        "The first line should name the columns {time} and {arcsec} (or {pixels}) but reads {text}."
    ),
    TapFault.LINE: marked("Line {number}: {text}"),
    TapFault.SHORT_LINE: marked("Line {line} is shorter than the line of names; correct it."),
    TapFault.NO_VALUE: marked("Line {line}: the value {reason}"),
    TapFault.NO_SCALE: marked(
        "The record gives its offsets in pixels, but not how large a pixel is. Enter the image "
        "scale in arcseconds per pixel, or write “# {scale_key}: …” into the file."
    ),
    # wormperiod
    PeriodFault.FEW_TURNS: marked(
        "The run lasts {minutes:.0f} minutes, {turns:.1f} turns of a worm of {period:.0f} s: "
        "too short to tell what repeats from what happened once. Track one star unguided for "
        "at least {least:.0f} minutes."
    ),
    PeriodFault.UNIT: marked(
        "The run lasts {seconds:.0f} s: are its times in seconds, not in minutes or hours? A "
        "worm usually turns once in four to ten minutes and three turns are needed. Track one "
        "star unguided for half an hour or more."
    ),
    PeriodFault.SHORT: marked(
        "The run lasts {minutes:.0f} minutes; a worm usually turns once in four to ten minutes "
        "and three turns are needed. Track one star unguided for half an hour or more."
    ),
    PeriodFault.NONE: marked(
        "No period up to {longest:.0f} s stands out of the noise in {minutes:.0f} minutes: any "
        "periodic error as fast is below about {size:.1f}″, or guiding was left on. A slower "
        "worm shows from three of its turns on: track longer, or enter its period to have it "
        "measured anyway."
    ),
    PeriodFault.TOO_SLOW: marked(
        "What repeats in this run is slower than a third of its {minutes:.0f} minutes: the "
        "worm turns more slowly, or the star drifts unevenly. Track longer, or enter the "
        "worm's period."
    ),
    ChanceTold.CURVE: _exposure_sentence,
    BacklashTold.PLAY: _guidesteps_sentence,
    GuidingTold.HOLDS: _guiding_sentence,
    WormTold.SWING: _periodic_sentence,
    TrainingTold.WOULD_BRING: _training_sentence,
    TapTold.RINGS: _vibration_sentence,
    VerdictTold.PARAGRAPH: _verdict_paragraph,
    PointingPart.ZERO_HOUR: marked("zero of the hour circle"),
    PointingPart.ZERO_DECLINATION: marked("zero of the declination circle"),
    PointingPart.AZIMUTH: marked("azimuth of the polar axis"),
    PointingPart.ALTITUDE: marked("altitude of the polar axis"),
    PointingPart.TUBE: marked("tube against the declination axis"),
    PointingPart.AXES: marked("declination axis against the polar axis"),
    PointingPart.SAG: marked("sag of the tube"),
    PointingList.DOUBLED: lambda doubled: str(doubled),
    TapFault.DOUBLED: lambda doubled: str(doubled),
    TermTold.UNKNOWN: marked("These stars do not tell the {name}."),
    TermTold.NOTHING: _part_nothing,
    TermTold.ERROR: _part_error,
    TermTold.OPEN: _parts_open,
    TermTold.WHOLE: marked(
        "Over {stars} stars the mount points within {rms:.1f}′ rms once its circles are set; "
        "with the parts below taken out {left:.1f}′ would be left on these stars."
    ),
    AxisCompared.UNKNOWN: marked("The polar axis cannot be compared: one of the two is unknown."),
    AxisCompared.AGREE: marked(
        "Pointing and drift find the polar axis in the same place, within their errors."
    ),
    AxisCompared.DISAGREE: marked(
        "Pointing and drift disagree on the polar axis by {azimuth:.1f}′ in azimuth and "
        "{altitude:.1f}′ in altitude: flexure, a moved tripod, coordinates of two epochs "
        "mixed, or a bolt turned in between. Trust the drift, which watches the sky itself."
    ),
    PointingFault.STAR_NUMBER: marked("number {number}"),
    DriftWay.EAST: marked("east"),
    DriftWay.WEST: marked("west"),
    DriftWay.NORTH: marked("north"),
    DriftWay.SOUTH: marked("south"),
    LoadTold.OVERLOADED: _load(
        marked("{words}: it is overloaded, and shakes long at every touch. Take weight off.")
    ),
    LoadTold.HEAVY: _load(
        marked("{words}; for imaging, 60 % or less is common practice: a lighter load rings less.")
    ),
    LoadTold.LIGHT: _load(marked("{words}, within the 60 % that is common practice for imaging.")),
    ChanceTold.READ_SELDOM: lambda curve: f"{curve} {say(_READ_SELDOM)}",
    GuidedAxis.RIGHT_ASCENSION: marked("right ascension"),
    GuidedAxis.DECLINATION: marked("declination"),
    RunLog.THE_LOG: marked("The log"),
    Cause.WORM: marked("the mount's periodic error"),
    Cause.UNEVEN: marked("what the drive does once and not again (balance, cables, wind, dirt)"),
    Cause.ALIGNMENT: marked("the polar alignment"),
    Cause.AIR: marked("the air"),
    Cause.GUIDING: marked("the guiding"),
    Cause.NONE: lambda: "nothing",
}
