"""What the polar axis adds to the smear of tonight's exposures, unguided and guided."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import numpy as np

from app.pages.tracking.figures import Figures, StudyPart, Tap, TrackingQuestion, part_of
from core.finding import Finding
from core.imaging.task import ImagedTarget, Optics, Task, Vantage
from core.language import say
from core.tracking.exposure import STILL, ChanceCurve, Limit, SteadyDrift, chance_curves, polar_part
from core.tracking.guidesteps import Backlash, Settling, backlash_of_reversal, settling_after
from core.tracking.guiding import GuidingCheck, check_guiding
from core.tracking.motion import Drive, Guiding
from core.tracking.periodic import PeriodicError, analyse
from core.tracking.pointing import Pointing, check_axis, pointing
from core.tracking.run import Run, run_of, run_without_place
from core.tracking.training import Comparison, DataSheet, Training, compare, training
from core.tracking.verdict import TrackingEvidence, TrackingVerdict, judge_tracking
from core.tracking.vibration import Vibration, change_told, load_told, vibration
from core.tracking.wormperiod import AnalysisCancelled, KeepGoing
from core.units import ARCMIN_PER_RAD, ARCSEC_PER_RAD

HOURS_DEG = 45.0  # either side of the meridian
_PIXEL_UM, _ACROSS_PX = 4.0, 1000  # of a stand-in sensor; the middle of the field knows no size


@dataclass(frozen=True, eq=False)
class PolarDrift:
    """None where it is not known. `sentence`: what is and what is not in the curves."""

    unguided: SteadyDrift | None
    guided: SteadyDrift | None
    sentence: str

    def of_guided(self, is_guided: bool) -> SteadyDrift | None:
        return self.guided if is_guided else self.unguided


def polar_drift(asked: TrackingQuestion) -> PolarDrift | None:
    """Raises `UnusableTask` when the target is not up. None without a scale or a run."""
    figures, scale = asked.figures, asked.figures.scale_arcsec_per_px
    place = asked.here if asked.run is None else asked.run.place or asked.here
    if scale is None:
        return None
    if place is None or place.alignment is None:
        return PolarDrift(
            None,
            None,
            say(
                "The polar axis is not known yet: what its error adds is counted as part "
                "of the drive when unguided, and left out when guided. Finish an "
                "alignment on the Drift page."
            ),
        )
    declination = figures.declination_deg or 0.0
    target = ImagedTarget(declination, -HOURS_DEG, HOURS_DEG)
    optics = asked.optics
    if optics is None or abs(optics.scale_arcsec_per_px / scale - 1.0) > 0.01:
        optics = None
    stand_in = Optics(_PIXEL_UM * 1e-3 * ARCSEC_PER_RAD / scale, _PIXEL_UM, _ACROSS_PX, _ACROSS_PX)
    task = Task(target, optics or stand_in, figures.exposure_s or 1.0, None)
    vantage = Vantage.of(place.site, place.air)
    unguided = polar_part(task, vantage, place.alignment)
    if optics is None:
        return PolarDrift(
            unguided,
            None,
            say(
                "The polar axis is in the unguided curves. The turning of the field "
                "about the guide star is not in the guided one: it needs the telescope "
                "and camera of the Mount page."
            ),
        )
    corner = optics.half_diagonal_rad * ARCMIN_PER_RAD
    guided = polar_part(
        replace(task, guide_star_to_far_corner_arcmin=corner), vantage, place.alignment
    )
    return PolarDrift(
        unguided,
        guided,
        say(
            "The polar axis is in all curves: as a drift when unguided, as the "
            "turning of the field about a guide star in its middle when guided."
        ),
    )


# What an unguided run says of the drive: periodic error, training, longest exposure.

CURVES_FROM = 0.75  # share of the work done when the chances begin


@dataclass(frozen=True, eq=False)
class DriveStudy:
    """Part by part; each stays empty when the one before it says nothing."""

    run: StudyPart[Run]
    periodic: StudyPart[PeriodicError]
    training: StudyPart[Training]
    comparison: StudyPart[Comparison]
    polar: StudyPart[PolarDrift]
    curves: StudyPart[tuple[ChanceCurve, ...]]


def limit_of(figures: Figures, is_guided: bool = False) -> Limit:
    """Raises `UnusableRun` with a sentence when the image scale is not known."""
    scale = math.nan if figures.scale_arcsec_per_px is None else figures.scale_arcsec_per_px
    own = figures.guided_allowed_px if is_guided else None
    return Limit(scale, own or figures.allowed_px or 0.5)


def drive_study(
    asked: TrackingQuestion, old: DriveStudy | None, keep_going: KeepGoing
) -> DriveStudy:
    """What has not changed since `old` is kept. Raises `AnalysisCancelled`."""
    worm_s = asked.figures.worm_period_s
    run = part_of(None if old is None else old.run, (asked.run,), lambda: _run(asked))
    periodic = part_of(
        None if old is None else old.periodic,
        (run.value, worm_s),
        lambda: None if run.value is None else analyse(run.value, worm_s, _early(keep_going)),
    )
    trained = part_of(
        None if old is None else old.training,
        (run.value, periodic.value),
        lambda: _training(periodic.value, run.value),
    )
    polar = part_of(
        None if old is None else old.polar, _polar_key(asked), lambda: polar_drift(asked)
    )
    return DriveStudy(
        run,
        periodic,
        trained,
        part_of(None, (), lambda: _comparison(asked.figures, periodic.value)),
        polar,
        part_of(
            None if old is None else old.curves,
            (run.value, periodic.value, polar.value, *asked.figures.of_curves()),
            lambda: _curves(asked.figures, run.value, periodic.value, polar.value, keep_going),
        ),
    )


def _early(keep_going: KeepGoing) -> KeepGoing:
    return lambda share: keep_going(CURVES_FROM * share)


def _run(asked: TrackingQuestion) -> Run | None:
    given = asked.run
    if given is None:
        return None
    place = given.place
    if place is None:
        return run_without_place(given.leg)
    return run_of(given.leg, place.site, place.air, place.alignment)


def _training(found: PeriodicError | None, run: Run | None) -> Training | None:
    return None if found is None or run is None else training(found, run)


def _comparison(figures: Figures, found: PeriodicError | None) -> Comparison | None:
    if found is None or figures.sheet_arcsec is None:
        return None
    if figures.sheet_is_plus_minus:
        return compare(found, DataSheet.plus_minus(figures.sheet_arcsec, figures.worm_period_s))
    return compare(found, DataSheet(figures.sheet_arcsec, figures.worm_period_s))


def _polar_key(asked: TrackingQuestion) -> tuple[object, ...]:
    figures = asked.figures
    place = asked.here if asked.run is None else asked.run.place or asked.here
    return (
        None if place is None else (place.site, place.air, place.alignment),
        asked.run is None,
        asked.optics,
        figures.scale_arcsec_per_px,
        figures.declination_deg,
        figures.exposure_s,
    )


def _curves(
    figures: Figures,
    run: Run | None,
    found: PeriodicError | None,
    polar: PolarDrift | None,
    keep_going: KeepGoing,
) -> tuple[ChanceCurve, ...] | None:
    if run is None or found is None:
        return None
    drift = polar or PolarDrift(None, None, "")

    def curves(limit: Limit, drives: tuple[Drive, ...]) -> tuple[ChanceCurve, ...]:
        return chance_curves(
            found,
            run,
            limit,
            declination_deg=figures.declination_deg or 0.0,
            unguided_drift=drift.unguided or STILL,
            guided_drift=drift.guided or STILL,
            guiding=_guiding(figures),
            drives=drives,
            keep_going=lambda share: keep_going(CURVES_FROM + (1.0 - CURVES_FROM) * share),
        )

    free, held = limit_of(figures), limit_of(figures, is_guided=True)
    if held == free:
        return curves(free, tuple(Drive))
    return (*curves(free, (Drive.UNGUIDED, Drive.TRAINED)), *curves(held, (Drive.GUIDED,)))


def _guiding(figures: Figures) -> Guiding:
    return Guiding(
        figures.guide_interval_s or 3.0,
        figures.guide_delay_s or 0.0,
        (figures.guide_share_percent or 60.0) / 100.0,
        figures.guide_noise_arcsec or 0.0,
    )


# Everything the Tracking page shows, worked out beside the window's thread.

END_SHARE = 4  # the last quarter of the readings is where the star has come to rest


@dataclass(frozen=True, eq=False)
class TrackingStudy:
    """One answer to one question, part by part."""

    question: TrackingQuestion
    drive: DriveStudy
    guiding: StudyPart[GuidingCheck]
    settling: StudyPart[Settling]
    backlash: StudyPart[Backlash]
    pointing: StudyPart[Pointing]
    axis: StudyPart[Finding]
    before: StudyPart[Vibration]
    after: StudyPart[Vibration]
    change: StudyPart[Finding]
    load: StudyPart[Finding]
    verdict: StudyPart[TrackingVerdict]


def work_out(
    asked: TrackingQuestion, old: TrackingStudy | None, keep_going: KeepGoing
) -> TrackingStudy | None:
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
    return TrackingStudy(
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


def _guiding_part(
    asked: TrackingQuestion, old: TrackingStudy | None, drive: DriveStudy
) -> StudyPart[GuidingCheck]:
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


def _settling(asked: TrackingQuestion) -> Settling | None:
    figures, given = asked.figures, asked.guided
    if given is None or figures.dither_s is None or given.leg.east_arcsec is None:
        return None
    leg, east = given.leg, given.leg.east_arcsec
    end = slice(-max(leg.utc_s.size // END_SHARE, 1), None)
    north = leg.north_arcsec - np.nanmedian(leg.north_arcsec[end])
    offset = np.hypot(north, east - np.nanmedian(east[end]))
    dither_utc_s = float(leg.utc_s[0]) + figures.dither_s
    return settling_after(leg.utc_s, offset, dither_utc_s, figures.settled_arcsec or math.nan)


def _backlash(asked: TrackingQuestion) -> Backlash | None:
    reversal = asked.reversal
    if reversal is None:
        return None
    rate = asked.figures.guide_rate_arcsec_per_s or math.nan
    return backlash_of_reversal(reversal.asked_arcsec, reversal.seen_arcsec, rate)


def _air_key(asked: TrackingQuestion) -> tuple[object, ...]:
    place = asked.pointed_from
    return () if place is None else (place.site, place.air)


def _pointing(asked: TrackingQuestion) -> Pointing | None:
    place = asked.pointed_from
    if place is None or not asked.sightings:
        return None
    centring = asked.figures.centring_arcmin or 1.0
    return pointing(asked.sightings, place.site, place.air, centring)


def _axis(asked: TrackingQuestion, found: Pointing | None) -> Finding | None:
    if found is None or asked.solution is None or asked.pointed_from is not asked.here:
        return None
    return check_axis(found, asked.solution).sentence


def _ringing(tap: Tap | None, settled_arcsec: float) -> Vibration | None:
    if tap is None:
        return None
    return vibration(tap.time_s, tap.offset_arcsec, settled_arcsec=settled_arcsec)


def _change(before: Vibration | None, after: Vibration | None) -> Finding | None:
    return None if before is None or after is None else change_told(before, after)


def _load(asked: TrackingQuestion) -> Finding | None:
    figures = asked.figures
    if figures.payload_kg is None or figures.capacity_kg is None:
        return None
    return load_told(figures.payload_kg, figures.capacity_kg)


def _verdict(
    asked: TrackingQuestion,
    drive: DriveStudy,
    guiding: StudyPart[GuidingCheck],
    pointed: StudyPart[Pointing],
    shaking: Vibration | None,
) -> TrackingVerdict | None:
    figures, trained = asked.figures, drive.training.value
    if trained is None and guiding.value is None:
        return None
    is_guided = guiding.value is not None
    drift = drive.polar.value
    return judge_tracking(
        TrackingEvidence(
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
