"""What the head of the Tracking page says of a study, in words."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from core.language import say
from core.mount import payload

if TYPE_CHECKING:
    from app.pages.tracking.study import Study

# Codes of notes that do not spoil a verdict; they stand below the run.
HARMLESS = (
    *("axis unknown", "far from the equator", "meridian flip", "gusts", "bumps", "gaps"),
    *("guiding perhaps left on", "without east"),
)


def tr(text: str) -> str:
    return QCoreApplication.translate("TrackingHead", text)


def recording() -> tuple[str, str]:
    """While a run is recorded."""
    return tr("A run is being recorded"), tr(
        "Every reading is kept as it comes. Half an hour to an hour is wanted; the verdict follows "
        "when the recording is stopped."
    )


def answer(study: Study | None) -> tuple[str, str]:
    """What stands large, and the paragraph below it."""
    if study is None or not has_any(study):
        return tr("Nothing is measured yet"), tr(
            "Let the mount track a star without guiding for half an hour, or bring some "
            "minutes of guiding in. This page then says how much the drive swings, what "
            "training or guiding would leave, how long you may expose, and the one thing to "
            "try first. A practice run shows all of it by daylight."
        )
    verdict = study.verdict.value
    if verdict is not None:
        return _headline(verdict.cause.name), verdict.paragraph
    drive = study.drive
    said = drive.run.problem or drive.periodic.words(lambda one: one.sentence)
    found = drive.periodic.value is not None or study.guiding.value is not None
    headline = tr("Measured; the verdict needs one thing more")
    return headline if found else tr("This cannot be judged yet"), "\n".join(
        part for part in (said, _missing(study)) if part
    )


def _missing(study: Study) -> str:
    if study.question.figures.scale_arcsec_per_px is None:
        return tr(
            "Whether that spoils a picture depends on how much sky one pixel sees: enter the "
            "image scale."
        )
    return study.verdict.problem or study.drive.training.problem or study.guiding.problem


def _headline(cause: str) -> str:
    words = {
        "WORM": tr("Mostly the periodic error of the mount"),
        "UNEVEN": tr("Mostly what the drive does once and not again"),
        "ALIGNMENT": tr("Mostly the polar alignment"),
        "AIR": tr("Mostly the air"),
        "GUIDING": tr("Mostly the guiding"),
        "NONE": tr("It tracks well enough for such exposures"),
    }
    return words[cause]


def doubts(study: Study) -> str:
    """What in the run makes the verdict doubtful."""
    found = study.drive.periodic.value
    notes = () if found is None else found.notes
    return " ".join(note.text for note in notes if note.code not in HARMLESS)


def caution(study: Study) -> str:
    """Beside advice to balance anew, how not to get hurt by it."""
    verdict = study.verdict.value
    if verdict is None:
        return ""
    guiding = study.guiding.value
    codes = [] if guiding is None else [note.code for note in guiding.findings]
    if verdict.cause.name == "UNEVEN" or "right ascension worse" in codes:
        return " ".join([tr("Balancing:"), *map(say, payload.BALANCING), say(payload.FIRST)])
    return ""


def has_any(study: Study) -> bool:
    """Whether there are readings a verdict could be about."""
    return study.question.run is not None or study.question.guided is not None
