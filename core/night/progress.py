"""Where in the night we are: the light, the next step, the alignment against its budget."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass
from enum import Enum

from core.alignment.goal import Reached, reached
from core.language import marked, say
from core.night.checklist import Checklist, KnownFact, Planned, StepMark, open_steps, ready_utc_s
from core.night.darkness import Night
from core.sky.almanac import Light


class AlignmentState(Enum):
    """The axis error with its ± against the largest error allowed tonight."""

    NOT_NEEDED = "not needed"
    NO_BUDGET = "no budget yet"
    NOT_MEASURED = "not measured yet"
    NOT_CLEAR = "not clear yet"
    WITHIN = "within the budget"
    BEYOND = "beyond the budget"


_OF_VERDICT = {
    Reached.WITHIN: AlignmentState.WITHIN,
    Reached.NOT_CLEAR: AlignmentState.NOT_CLEAR,
    Reached.BEYOND: AlignmentState.BEYOND,
}


@dataclass(frozen=True)
class AxisNow:
    """What is known of the axis, arcminutes on the sky: its error from the pole aimed at, the
    half-width of the error's 95 % interval, the largest error allowed; None for not known.
    `chance_within`: that it is within the largest error allowed.

    `is_needed`: False for mounts without a polar axis.
    """

    error_arcmin: float | None = None
    half_width_arcmin: float | None = None
    budget_arcmin: float | None = None
    is_needed: bool = True
    chance_within: float | None = None


@dataclass(frozen=True)
class NightNow:
    """The state of the night at one instant.

    `darker_in_s`: time until the darkest light of tonight begins, None when it has begun, is over
    or never comes. `next_in_s`: time until the next step has to begin, negative when it is late.
    `behind_s`: how much later than planned the target can begin with what is left to do.
    """

    light: Light
    darker_in_s: float | None
    darkest: Light
    light_sentence: str
    next: Planned | None
    next_in_s: float | None
    steps_left: int
    behind_s: float
    alignment: AlignmentState
    alignment_sentence: str


def night_now(
    night: Night,
    checklist: Checklist,
    marks: Mapping[str, StepMark],
    facts: Collection[KnownFact],
    axis: AxisNow,
    utc_s: float,
) -> NightNow:
    """Everything the first page shows, from what is known at `utc_s`."""
    light = _light_at(night, utc_s)
    darkest = night.light.darkest
    darker_in_s = _darker_in_s(night, darkest, utc_s)
    left = open_steps(checklist, marks, facts)
    begin_utc_s = left[0].begin_utc_s if left else None
    state = alignment_state(axis)
    return NightNow(
        light=light,
        darker_in_s=darker_in_s,
        darkest=darkest,
        light_sentence=_light_sentence(night, light, darkest, darker_in_s),
        next=left[0] if left else None,
        next_in_s=None if begin_utc_s is None else begin_utc_s - utc_s,
        steps_left=len(left),
        behind_s=_behind_s(checklist, left, utc_s),
        alignment=state,
        alignment_sentence=_alignment_sentence(state, axis),
    )


def alignment_state(axis: AxisNow) -> AlignmentState:
    """By the chance, as everywhere in the program; without one, within only when the whole 95 %
    interval is within, beyond only when all of it is beyond.
    """
    if not axis.is_needed:
        return AlignmentState.NOT_NEEDED
    if axis.error_arcmin is None or axis.half_width_arcmin is None:
        return AlignmentState.NOT_MEASURED
    if axis.budget_arcmin is None:
        return AlignmentState.NO_BUDGET
    if axis.chance_within is not None:
        return _OF_VERDICT[reached(axis.chance_within)]
    if axis.error_arcmin + axis.half_width_arcmin <= axis.budget_arcmin:
        return AlignmentState.WITHIN
    if axis.error_arcmin - axis.half_width_arcmin > axis.budget_arcmin:
        return AlignmentState.BEYOND
    return AlignmentState.NOT_CLEAR


def _light_at(night: Night, utc_s: float) -> Light:
    light = night.light.at_start
    for change in night.light.changes:
        if change.utc_s <= utc_s:
            light = change.light
    return light


def _darker_in_s(night: Night, darkest: Light, utc_s: float) -> float | None:
    spans = night.spans_of(darkest)
    if not spans or utc_s >= spans[0][0]:
        return None
    return spans[0][0] - utc_s


def _light_sentence(night: Night, light: Light, darkest: Light, darker_in_s: float | None) -> str:
    if light is Light.DAY and night.sun.stays_up:
        return say("The Sun does not set tonight.")
    if darker_in_s is None:
        return say("It is {light}.", light=_in_words(light))
    return say(
        "It is {light}; {darkest} begins in {span}.",
        light=_in_words(light),
        darkest=_in_words(darkest),
        span=_span(darker_in_s),
    )


def _in_words(light: Light) -> str:
    return say("dark") if light is Light.NIGHT else str(light)


def _span(seconds: float) -> str:
    hours, minutes = divmod(max(round(seconds / 60.0), 1), 60)
    return (
        say("{hours} h {minutes:02d} min", hours=hours, minutes=minutes)
        if hours
        else say("{minutes} min", minutes=minutes)
    )


def _behind_s(checklist: Checklist, left: tuple[Planned, ...], utc_s: float) -> float:
    """Nothing when the target's time has no meaning or all that leads to it is done."""
    steps = [one.step for one in left]
    if checklist.starts_utc_s is None or not any(step.when.at is None for step in steps):
        return 0.0
    return max(0.0, ready_utc_s(steps, checklist.moments, utc_s) - checklist.starts_utc_s)


def _alignment_sentence(state: AlignmentState, axis: AxisNow) -> str:
    if state is AlignmentState.NOT_NEEDED:
        return say("This mount has no polar axis to align.")
    if state is AlignmentState.NOT_MEASURED:
        return say("The axis error has not been measured since the bolts were last turned.")
    words = {
        AlignmentState.NO_BUDGET: marked(
            "The axis is {error:.1f}′ ± {half_width:.1f}′ off; how much is allowed follows from "
            "the equipment and the target."
        ),
        AlignmentState.WITHIN: marked(
            "The axis is {error:.1f}′ ± {half_width:.1f}′ off: good enough, {budget:.1f}′ is "
            "allowed tonight."
        ),
        AlignmentState.BEYOND: marked(
            "The axis is {error:.1f}′ ± {half_width:.1f}′ off, {budget:.1f}′ is allowed tonight: "
            "turn the bolts again."
        ),
        AlignmentState.NOT_CLEAR: marked(
            "The axis is {error:.1f}′ ± {half_width:.1f}′ off, {budget:.1f}′ is allowed tonight: "
            "watch longer to be sure."
        ),
    }[state]
    return say(
        words,
        error=axis.error_arcmin,
        half_width=axis.half_width_arcmin,
        budget=axis.budget_arcmin,
    )
