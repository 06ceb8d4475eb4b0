"""Everything the Tracking page shows, worked out beside the window's thread."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from app.pages.tracking.drive import DriveStudy, drive_study, limit_of
from app.pages.tracking.part import Part, part_of
from app.pages.tracking.question import Question, Tap
from core.tracking.guidesteps import Backlash, Settling, backlash_of_reversal, settling_after
from core.tracking.guiding import GuidingCheck, check_guiding
from core.tracking.pointing import Pointing, check_axis, pointing
from core.tracking.verdict import Evidence, Verdict, judge_tracking
from core.tracking.vibration import Vibration, change_sentence, load_sentence, vibration
from core.tracking.wormperiod import AnalysisCancelled, KeepGoing

END_SHARE = 4  # the last quarter of the readings is where the star has come to rest


@dataclass(frozen=True, eq=False)
class Study:
    """One answer to one question, part by part."""

    question: Question
    drive: DriveStudy
    guiding: Part[GuidingCheck]
    settling: Part[Settling]
    backlash: Part[Backlash]
    pointing: Part[Pointing]
    axis: Part[str]
    before: Part[Vibration]
    after: Part[Vibration]
    change: Part[str]
    load: Part[str]
    verdict: Part[Verdict]


def work_out(asked: Question, old: Study | None, keep_going: KeepGoing) -> Study | None:
    """For a worker thread; what has not changed since `old` is kept. None when stopped."""
    try:
        drive = drive_study(asked, None if old is None else old.drive, keep_going)
    except AnalysisCancelled:
        return None
    guiding = _guiding_part(asked, old, drive)
    pointed = part_of(
        None if old is None else old.pointing,
        (asked.sightings, _air_key(asked), asked.figures.centring_arcmin),
        lambda: _pointing(asked),
    )
    settled = asked.figures.settled_arcsec or math.nan
    before = part_of(
        None if old is None else old.before,
        (asked.before, settled),
        lambda: _ringing(asked.before, settled),
    )
    after = part_of(
        None if old is None else old.after,
        (asked.after, settled),
        lambda: _ringing(asked.after, settled),
    )
    return Study(
        asked,
        drive,
        guiding,
        part_of(None, (), lambda: _settling(asked)),
        part_of(None, (), lambda: _backlash(asked)),
        pointed,
        part_of(None, (), lambda: _axis(asked, pointed.value)),
        before,
        after,
        part_of(None, (), lambda: _change(before.value, after.value)),
        part_of(None, (), lambda: _load(asked)),
        part_of(
            None,
            (),
            lambda: _verdict(asked, drive, guiding, pointed, after.value or before.value),
        ),
    )


def _guiding_part(asked: Question, old: Study | None, drive: DriveStudy) -> Part[GuidingCheck]:
    figures, given, found = asked.figures, asked.guided, drive.periodic.value
    period_s = figures.worm_period_s if found is None else found.period_s

    def make() -> GuidingCheck | None:
        if given is None:
            return None
        leg = given.leg
        east = np.full(leg.utc_s.size, np.nan) if leg.east_arcsec is None else leg.east_arcsec
        return check_guiding(
            *(leg.utc_s, east, leg.north_arcsec, limit_of(figures)),
            seeing_fwhm_arcsec=figures.seeing_arcsec,
            worm_period_s=period_s,
        )

    key = (given, figures.scale_arcsec_per_px, figures.allowed_px, figures.seeing_arcsec, period_s)
    return part_of(None if old is None else old.guiding, key, make)


def _settling(asked: Question) -> Settling | None:
    figures, given = asked.figures, asked.guided
    if given is None or figures.dither_s is None or given.leg.east_arcsec is None:
        return None
    leg, east = given.leg, given.leg.east_arcsec
    end = slice(-max(leg.utc_s.size // END_SHARE, 1), None)
    north = leg.north_arcsec - np.nanmedian(leg.north_arcsec[end])
    offset = np.hypot(north, east - np.nanmedian(east[end]))
    dither_utc_s = float(leg.utc_s[0]) + figures.dither_s
    return settling_after(leg.utc_s, offset, dither_utc_s, figures.settled_arcsec or math.nan)


def _backlash(asked: Question) -> Backlash | None:
    reversal = asked.reversal
    if reversal is None:
        return None
    rate = asked.figures.guide_rate_arcsec_per_s or math.nan
    return backlash_of_reversal(reversal.asked_arcsec, reversal.seen_arcsec, rate)


def _air_key(asked: Question) -> tuple[object, ...]:
    place = asked.pointed_from
    return () if place is None else (place.site, place.air)


def _pointing(asked: Question) -> Pointing | None:
    place = asked.pointed_from
    if place is None or not asked.sightings:
        return None
    centring = asked.figures.centring_arcmin or 1.0
    return pointing(asked.sightings, place.site, place.air, centring)


def _axis(asked: Question, found: Pointing | None) -> str | None:
    if found is None or asked.solution is None or asked.pointed_from is not asked.here:
        return None
    return check_axis(found, asked.solution).sentence


def _ringing(tap: Tap | None, settled_arcsec: float) -> Vibration | None:
    if tap is None:
        return None
    return vibration(tap.time_s, tap.offset_arcsec, settled_arcsec=settled_arcsec)


def _change(before: Vibration | None, after: Vibration | None) -> str | None:
    return None if before is None or after is None else change_sentence(before, after)


def _load(asked: Question) -> str | None:
    figures = asked.figures
    if figures.payload_kg is None or figures.capacity_kg is None:
        return None
    return load_sentence(figures.payload_kg, figures.capacity_kg)


def _verdict(
    asked: Question,
    drive: DriveStudy,
    guiding: Part[GuidingCheck],
    pointed: Part[Pointing],
    shaking: Vibration | None,
) -> Verdict | None:
    figures, trained = asked.figures, drive.training.value
    if trained is None and guiding.value is None:
        return None
    is_guided = guiding.value is not None
    drift = drive.polar.value
    return judge_tracking(
        Evidence(
            limit_of(figures, is_guided),
            figures.exposure_s or 1.0,
            math.cos(math.radians(figures.declination_deg or 0.0)),
            trained,
            None if drift is None else drift.of_guided(is_guided),
            guiding.value,
            pointed.value,
            shaking,
            figures.seeing_arcsec,
        )
    )
