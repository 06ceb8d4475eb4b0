"""What an unguided run says of the drive: periodic error, training, longest exposure."""

from __future__ import annotations

import math
from dataclasses import dataclass

from app.pages.tracking.figures import Figures
from app.pages.tracking.part import Part, part_of
from app.pages.tracking.polardrift import PolarDrift, polar_drift
from app.pages.tracking.question import Question
from core.tracking.exposure import STILL, ChanceCurve, Limit, chance_curves
from core.tracking.motion import Drive, Guiding
from core.tracking.periodic import PeriodicError, analyse
from core.tracking.run import Run, run_of, run_without_place
from core.tracking.training import Comparison, DataSheet, Training, compare, training
from core.tracking.wormperiod import KeepGoing

CURVES_FROM = 0.75  # share of the work done when the chances begin


@dataclass(frozen=True, eq=False)
class DriveStudy:
    """Part by part; each stays empty when the one before it says nothing."""

    run: Part[Run]
    periodic: Part[PeriodicError]
    training: Part[Training]
    comparison: Part[Comparison]
    polar: Part[PolarDrift]
    curves: Part[tuple[ChanceCurve, ...]]


def limit_of(figures: Figures, is_guided: bool = False) -> Limit:
    """Raises `UnusableRun` with a sentence when the image scale is not known."""
    scale = math.nan if figures.scale_arcsec_per_px is None else figures.scale_arcsec_per_px
    own = figures.guided_allowed_px if is_guided else None
    return Limit(scale, own or figures.allowed_px or 0.5)


def drive_study(asked: Question, old: DriveStudy | None, keep_going: KeepGoing) -> DriveStudy:
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


def _run(asked: Question) -> Run | None:
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


def _polar_key(asked: Question) -> tuple[object, ...]:
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
