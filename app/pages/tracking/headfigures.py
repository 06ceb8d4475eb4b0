"""What the head of the Tracking page shows of a study in figures and bars."""

from __future__ import annotations

from typing import TYPE_CHECKING

from app.pages.tracking.headwords import tr
from app.widgets.causebars import Cause
from app.widgets.facts import Fact
from app.widgets.spans import limit_words

if TYPE_CHECKING:
    from app.pages.tracking.study import Study


def facts(study: Study) -> list[Fact]:
    """In the order of the names in the head."""
    drive, guiding = study.drive, study.guiding.value
    found, trained, curves = drive.periodic.value, drive.training.value, drive.curves.value
    facts = [Fact("—", tr("not measured"))] * 4
    if found is not None:
        size = f"{found.size.peak_to_peak_arcsec:.1f}″"
        facts[0] = Fact(size, tr("peak to peak"))
        if study.question.figures.scale_arcsec_per_px is None:
            facts[2] = Fact("—", tr("needs the image scale"))
    if trained is not None:
        facts[1] = Fact(f"{trained.residual_rms_arcsec:.1f}″", tr("rms, predicted"))
    if curves is not None and curves[0].longest_s > 0.0:
        facts[2] = Fact(limit_words(curves[0].longest_s), tr("nine in ten are sharp"))
    elif curves is not None:
        facts[2] = Fact(tr("none"), tr("is surely sharp"))
    if guiding is not None:
        facts[3] = Fact(f"{guiding.total_rms_arcsec:.2f}″", tr("rms"))
    return facts


def causes(study: Study) -> tuple[list[Cause], Cause]:
    """What each cause smears, in pixels, and what is allowed; no causes without a verdict."""
    figures, verdict = study.question.figures, study.verdict.value
    scale = figures.scale_arcsec_per_px or 1.0
    is_guided = study.guiding.value is not None
    allowed = (figures.guided_allowed_px if is_guided else None) or figures.allowed_px or 0.5
    found = [
        Cause(
            _cause_name(share.cause.name),
            share.smear_arcsec / scale,
            tr("{size:.1f} px").format(size=share.smear_arcsec / scale),
        )
        for share in ([] if verdict is None else verdict.shares)
    ]
    return found, Cause(tr("allowed"), allowed, tr("{size:g} px").format(size=allowed))


def _cause_name(cause: str) -> str:
    return {
        "WORM": tr("periodic error"),
        "UNEVEN": tr("uneven drive"),
        "ALIGNMENT": tr("polar alignment"),
        "AIR": tr("air"),
        "GUIDING": tr("guiding"),
    }[cause]
