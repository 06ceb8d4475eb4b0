"""The guided steps of drift alignment, as a table of stages and events that can draw itself."""

from __future__ import annotations

from enum import Enum

from core.alignment.guide.judgement import Next
from core.language import marked, say


class Stage(Enum):
    """Where the person stands; the value, once said, is what the screen calls it."""

    FIND_NORTH = marked("Find north in the field")
    CHOOSE = marked("Choose a star")
    WATCH = marked("Watch it drift")
    TURN = marked("Turn the bolts")
    DONE = marked("Good enough")


class Event(Enum):
    """What takes one from a stage to the next."""

    NORTH_FOUND = marked("north is known")
    NORTH_DOUBTED = marked("north is in doubt")
    STAR_TAKEN = marked("a star is in view")
    STAR_LOST = marked("the star is lost")
    LEG_ENOUGH = marked("this star has told enough")
    TURN_WORTHWHILE = marked("turning helps more than watching")
    TARGET_MET = marked("within the target")
    BOLTS_TURNED = marked("the bolts were turned")
    TRIPOD_MOVED = marked("the tripod was moved")
    LOOK_AGAIN = marked("look again")


class NotNow(ValueError):
    """The event has no place in this stage; the message is a sentence."""


TABLE: dict[tuple[Stage, Event], Stage] = {
    (Stage.FIND_NORTH, Event.NORTH_FOUND): Stage.CHOOSE,
    (Stage.CHOOSE, Event.STAR_TAKEN): Stage.WATCH,
    (Stage.CHOOSE, Event.NORTH_DOUBTED): Stage.FIND_NORTH,
    (Stage.CHOOSE, Event.TURN_WORTHWHILE): Stage.TURN,
    (Stage.CHOOSE, Event.TARGET_MET): Stage.DONE,
    (Stage.CHOOSE, Event.BOLTS_TURNED): Stage.CHOOSE,
    (Stage.CHOOSE, Event.TRIPOD_MOVED): Stage.CHOOSE,
    (Stage.WATCH, Event.LEG_ENOUGH): Stage.CHOOSE,
    (Stage.WATCH, Event.STAR_LOST): Stage.CHOOSE,
    (Stage.WATCH, Event.NORTH_DOUBTED): Stage.FIND_NORTH,
    (Stage.WATCH, Event.TURN_WORTHWHILE): Stage.TURN,
    (Stage.WATCH, Event.TARGET_MET): Stage.DONE,
    (Stage.WATCH, Event.BOLTS_TURNED): Stage.CHOOSE,
    (Stage.WATCH, Event.TRIPOD_MOVED): Stage.CHOOSE,
    (Stage.TURN, Event.BOLTS_TURNED): Stage.CHOOSE,
    (Stage.TURN, Event.TRIPOD_MOVED): Stage.CHOOSE,
    (Stage.TURN, Event.LOOK_AGAIN): Stage.CHOOSE,
    (Stage.DONE, Event.LOOK_AGAIN): Stage.CHOOSE,
    (Stage.DONE, Event.BOLTS_TURNED): Stage.CHOOSE,
    (Stage.DONE, Event.TRIPOD_MOVED): Stage.CHOOSE,
}

_EVENT_OF: dict[Next, Event] = {
    Next.OTHER_STAR: Event.LEG_ENOUGH,
    Next.TURN: Event.TURN_WORTHWHILE,
    Next.GOOD_ENOUGH: Event.TARGET_MET,
}


def after(stage: Stage, event: Event) -> Stage:
    """The stage that follows; raises `NotNow` where the event has no place."""
    try:
        return TABLE[stage, event]
    except KeyError:
        raise NotNow(
            say(
                "“{event}” has no place at “{stage}”; possible now: {events}.",
                event=say(event.value),
                stage=say(stage.value),
                events=", ".join(say(choice.value) for choice in possible(stage)),
            )
        ) from None


def possible(stage: Stage) -> tuple[Event, ...]:
    """The events that have a place in this stage."""
    return tuple(event for at, event in TABLE if at is stage)


def event_for(next_step: Next) -> Event | None:
    """The event a judgement calls for; `None` means: go on watching."""
    return _EVENT_OF.get(next_step)


def diagram() -> str:
    """The table as a Mermaid state diagram (an open text form)."""
    lines = ["stateDiagram-v2", f"    [*] --> {Stage.CHOOSE.name}"]
    lines += [f"    {stage.name}: {stage.value}" for stage in Stage]
    lines += [f"    {at.name} --> {to.name}: {event.value}" for (at, event), to in TABLE.items()]
    return "\n".join(lines) + "\n"
