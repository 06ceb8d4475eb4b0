"""What the Tonight page says: times, states and pages in words."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

from app.ui.text import span_words
from app.ui.timeline import clock_words
from core.language import say
from core.night.checklist import NightPart, Planned, State, StepMark
from core.night.progress import AlignmentState, AxisNow, NightNow
from core.sky.almanac import Light
from core.sky.clocks import Zone

SOON_S = 120.0


def tr(text: str) -> str:
    """From the catalogue of translations of this page."""
    return QCoreApplication.translate("Tonight", text)


def part_words(part: NightPart) -> str:
    """The heading of a part of the night."""
    words = tr(part.value)
    return words[:1].upper() + words[1:]


def time_words(planned: Planned, zone: Zone) -> str:
    """When it has to begin; a dash where the night has no such time."""
    return "–" if planned.begin_utc_s is None else clock_words(zone, planned.begin_utc_s)


def state_words(state: State, mark: StepMark | None, zone: Zone) -> str:
    """What has become of a step; nothing of an open one."""
    if state is State.OPEN:
        return ""
    if state is State.SKIPPED and mark is not None:
        return tr("Skipped: {reason}").format(reason=mark.reason)
    if state is State.SEEN and mark is not None and mark.reason:
        return tr("Not needed: {reason}").format(reason=mark.reason)
    if mark is None:
        return tr("The program saw it done.") if state is State.SEEN else tr("Done.")
    when = clock_words(zone, mark.utc_s)
    if state is State.SEEN:
        return tr("The program saw it done, {when}.").format(when=when)
    return tr("Done at {when}.").format(when=when)


def due_words(now: NightNow) -> str:
    """How long until the next step must begin."""
    if now.next_in_s is None:
        return tr("no time set")
    if now.next_in_s < -SOON_S:
        return tr("should have begun {span} ago").format(span=span_words(-now.next_in_s))
    if now.next_in_s < SOON_S:
        return tr("begin now")
    return tr("begin within {span}").format(span=span_words(now.next_in_s))


def darkness(now: NightNow) -> tuple[str, str]:
    """A figure and its words."""
    light, darkest = _plain(now.light), _plain(now.darkest)
    if now.darker_in_s is not None:
        words = tr("until {darkest}; now: {light}")
        return span_words(now.darker_in_s), words.format(darkest=darkest, light=light)
    return light, now.light_sentence


def _plain(light: Light) -> str:
    return say("dark") if light is Light.NIGHT else str(light)


def alignment(now: NightNow, axis: AxisNow) -> tuple[str, str]:
    """The axis error where it is known, and what it means."""
    sentence = now.alignment_sentence
    if now.alignment in (AlignmentState.NOT_NEEDED, AlignmentState.NOT_MEASURED):
        return "–", sentence
    size = f"{axis.error_arcmin:.1f}′ ± {axis.half_width_arcmin:.1f}′"
    allowed = "" if axis.budget_arcmin is None else f"{axis.budget_arcmin:.1f}′"
    words = {
        AlignmentState.WITHIN: tr("good enough, {allowed} is the target"),
        AlignmentState.BEYOND: tr("turn the bolts again, {allowed} is the target"),
        AlignmentState.NOT_CLEAR: tr("watch longer to be sure, {allowed} is the target"),
    }
    return size, words.get(now.alignment, sentence).format(allowed=allowed)
