"""The guided steps of drift alignment, as a table of stages and events that can draw itself."""

from __future__ import annotations

from core.alignment.guide.judgement import Next
from core.finding import Code, Refused


class Stage(Code):
    """Where the person stands; the words are what the screen calls it."""

    FIND_NORTH = "Find north in the field"
    CHOOSE = "Choose a star"
    WATCH = "Watch it drift"
    TURN = "Turn the bolts"
    DONE = "Good enough"


class ProcedureEvent(Code):
    """What takes one from a stage to the next."""

    NORTH_FOUND = "north is known"
    NORTH_DOUBTED = "north is in doubt"
    STAR_TAKEN = "a star is in view"
    STAR_LOST = "the star is lost"
    LEG_ENOUGH = "this star has told enough"
    TURN_WORTHWHILE = "turning helps more than watching"
    TARGET_MET = "within the target"
    BOLTS_TURNED = "the bolts were turned"
    TRIPOD_MOVED = "the tripod was moved"
    LOOK_AGAIN = "look again"


class Misplaced(Code):
    """What has no place in a stage."""

    EVENT = "event without a place"


class NotNow(Refused):
    """The event has no place in this stage."""


TABLE: dict[tuple[Stage, ProcedureEvent], Stage] = {
    (Stage.FIND_NORTH, ProcedureEvent.NORTH_FOUND): Stage.CHOOSE,
    (Stage.CHOOSE, ProcedureEvent.STAR_TAKEN): Stage.WATCH,
    (Stage.CHOOSE, ProcedureEvent.NORTH_DOUBTED): Stage.FIND_NORTH,
    (Stage.CHOOSE, ProcedureEvent.TURN_WORTHWHILE): Stage.TURN,
    (Stage.CHOOSE, ProcedureEvent.TARGET_MET): Stage.DONE,
    (Stage.CHOOSE, ProcedureEvent.BOLTS_TURNED): Stage.CHOOSE,
    (Stage.CHOOSE, ProcedureEvent.TRIPOD_MOVED): Stage.CHOOSE,
    (Stage.WATCH, ProcedureEvent.LEG_ENOUGH): Stage.CHOOSE,
    (Stage.WATCH, ProcedureEvent.STAR_LOST): Stage.CHOOSE,
    (Stage.WATCH, ProcedureEvent.NORTH_DOUBTED): Stage.FIND_NORTH,
    (Stage.WATCH, ProcedureEvent.TURN_WORTHWHILE): Stage.TURN,
    (Stage.WATCH, ProcedureEvent.TARGET_MET): Stage.DONE,
    (Stage.WATCH, ProcedureEvent.BOLTS_TURNED): Stage.CHOOSE,
    (Stage.WATCH, ProcedureEvent.TRIPOD_MOVED): Stage.CHOOSE,
    (Stage.TURN, ProcedureEvent.BOLTS_TURNED): Stage.CHOOSE,
    (Stage.TURN, ProcedureEvent.TRIPOD_MOVED): Stage.CHOOSE,
    (Stage.TURN, ProcedureEvent.LOOK_AGAIN): Stage.CHOOSE,
    (Stage.DONE, ProcedureEvent.LOOK_AGAIN): Stage.CHOOSE,
    (Stage.DONE, ProcedureEvent.BOLTS_TURNED): Stage.CHOOSE,
    (Stage.DONE, ProcedureEvent.TRIPOD_MOVED): Stage.CHOOSE,
}

_EVENT_OF: dict[Next, ProcedureEvent] = {
    Next.OTHER_STAR: ProcedureEvent.LEG_ENOUGH,
    Next.TURN: ProcedureEvent.TURN_WORTHWHILE,
    Next.GOOD_ENOUGH: ProcedureEvent.TARGET_MET,
}


def after(stage: Stage, event: ProcedureEvent) -> Stage:
    """The stage that follows; raises `NotNow` where the event has no place."""
    try:
        return TABLE[stage, event]
    except KeyError:
        raise NotNow(Misplaced.EVENT, event=event, stage=stage, possible=possible(stage)) from None


def possible(stage: Stage) -> tuple[ProcedureEvent, ...]:
    """The events that have a place in this stage."""
    return tuple(event for at, event in TABLE if at is stage)


def event_for(next_step: Next) -> ProcedureEvent | None:
    """The event a judgement calls for; `None` means: go on watching."""
    return _EVENT_OF.get(next_step)


def diagram() -> str:
    """The table as a Mermaid state diagram (an open text form)."""
    lines = ["stateDiagram-v2", f"    [*] --> {Stage.CHOOSE.name}"]
    lines += [f"    {stage.name}: {stage.value}" for stage in Stage]
    lines += [f"    {at.name} --> {to.name}: {event.value}" for (at, event), to in TABLE.items()]
    return "\n".join(lines) + "\n"
