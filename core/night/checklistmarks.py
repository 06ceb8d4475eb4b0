"""What has become of the steps: done by hand, seen by the program, skipped with a reason, open."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass
from enum import Enum
from typing import Any

from core.language import marked, say
from core.night.checklist import Checklist
from core.night.checkliststeps import Fact, Step
from core.night.checklisttimes import Planned


class State(Enum):
    """Of one step."""

    OPEN = "open"
    DONE = marked("done")
    SEEN = marked("seen by the program")
    SKIPPED = marked("skipped")


NO_REASONS: Mapping[Fact, str] = {}


class NoReason(ValueError):
    """A step was to be skipped without saying why; the text is a sentence."""


@dataclass(frozen=True)
class Mark:
    """What was said or seen of a step, and when. `text`: its words then, for the report."""

    key: str
    state: State
    utc_s: float
    reason: str = ""
    text: str = ""

    def as_object(self) -> dict[str, Any]:
        """As JSON can hold it, without the time, which every entry of a night has anyway."""
        reason = {"reason": self.reason} if self.reason else {}
        return {"step": self.key, "state": self.state.value, "text": self.text, **reason}

    @classmethod
    def from_object(cls, given: Mapping[str, Any], utc_s: float) -> Mark | None:
        """What `as_object` wrote; None for anything else."""
        key, reason, text = given.get("step"), given.get("reason", ""), given.get("text", "")
        try:
            state = State(given.get("state"))
        except ValueError:
            return None
        if not all(isinstance(one, str) for one in (key, reason, text)):
            return None
        return cls(str(key), state, utc_s, reason, text)


def done(step: Step, utc_s: float) -> Mark:
    """The person did it."""
    return Mark(step.key, State.DONE, utc_s, text=step.words)


def skipped(step: Step, reason: str, utc_s: float) -> Mark:
    """The person leaves it out. Its cautions stay. Raises NoReason, a sentence."""
    if not reason.strip():
        raise NoReason(say("Say in a few words why the step is skipped; it goes into the report."))
    return Mark(step.key, State.SKIPPED, utc_s, " ".join(reason.split()), step.words)


def reopened(step: Step, utc_s: float) -> Mark:
    """Neither done nor skipped after all."""
    return Mark(step.key, State.OPEN, utc_s, text=step.words)


def newly_seen(
    checklist: Checklist,
    marks: Mapping[str, Mark],
    facts: Collection[Fact],
    utc_s: float,
    reasons: Mapping[Fact, str] = NO_REASONS,
) -> list[Mark]:
    """Marks to keep for steps that ticked themselves just now.

    `reasons`: why a fact is so although nothing was done; a step that has another by now is marked
    anew.
    """
    found = []
    for step in checklist.steps:
        fact = step.done_when
        if fact is None or fact not in facts:
            continue
        last, reason = _last(step, marks), reasons.get(fact, "")
        is_stale = last is State.SEEN and marks[step.key].reason != reason
        if last is State.OPEN or is_stale:
            found.append(Mark(step.key, State.SEEN, utc_s, reason, step.words))
    return found


def state_of(step: Step, marks: Mapping[str, Mark], facts: Collection[Fact]) -> State:
    """By the newest marks by key. What the program saw holds only as long as it is so."""
    last = _last(step, marks)
    if last in (State.DONE, State.SKIPPED):
        return last
    return State.SEEN if step.done_when is not None and step.done_when in facts else State.OPEN


def open_steps(
    checklist: Checklist, marks: Mapping[str, Mark], facts: Collection[Fact]
) -> tuple[Planned, ...]:
    """What is left to do, in order."""
    return tuple(one for one in checklist.planned if state_of(one.step, marks, facts) is State.OPEN)


def newest(marks: Sequence[Mark]) -> dict[str, Mark]:
    """By key, of marks in any order, the last one made."""
    return {mark.key: mark for mark in sorted(marks, key=lambda mark: mark.utc_s)}


def _last(step: Step, marks: Mapping[str, Mark]) -> State:
    mark = marks.get(step.key)
    return State.OPEN if mark is None else mark.state
