"""What the person says of tonight: steps done or skipped, own steps, weather, notes, pictures."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import replace
from typing import Any, Protocol

from PySide6.QtCore import QObject, Signal

from app.session.entrylog import EntryLog
from core.night.checklist import (
    Fact,
    Mark,
    OwnStep,
    Part,
    State,
    Step,
    from_objects,
    load,
    moved,
    new_key,
    newest,
    to_objects,
)
from core.night.record import Entry, Kind

KEPT_STEPS = "own steps"  # setting: those that come again on other nights


class BookLog(EntryLog, Protocol):
    """What is needed of the log of nights; every call returns at once."""

    def get_setting(self, key: str, default: Any = None) -> Any: ...

    def put_setting(self, key: str, value: Any) -> None: ...

    def kinds_of_entries(self) -> frozenset[str]: ...


class NightBook(QObject):
    """Kept at every change; `changed` follows each. `entries`: those of tonight so far."""

    changed = Signal()

    def __init__(
        self,
        log: BookLog,
        entries: Sequence[Entry],
        now: Callable[[], float],
        parent: QObject | None = None,
    ) -> None:
        """`now`: seconds since 1970-01-01 UTC."""
        super().__init__(parent)
        self._log = log
        self._now = now
        self._marks = _marks(entries)
        self._own_entry: int | None = None
        self._own = _unlike(from_objects(_list(log.get_setting(KEPT_STEPS))))
        self._take_own(entries)
        self._around = {
            Kind(one.kind): (one.key, one.content)
            for one in entries
            if one.kind in (Kind.EQUIPMENT, Kind.PLAN)
        }
        self._said = {
            kind: [one.content for one in entries if one.kind == kind]
            for kind in (Kind.NOTE, Kind.WEATHER)
        }

    def marks(self) -> Mapping[str, Mark]:
        """The newest of each step."""
        return dict(self._marks)

    def own(self) -> tuple[OwnStep, ...]:
        """Tonight's own steps, the kept ones among them."""
        return self._own

    def weather(self) -> Mapping[str, Any] | None:
        """The newest that was noted."""
        said = self._said[Kind.WEATHER]
        return said[-1] if said else None

    def facts(self) -> frozenset[Fact]:
        """What can be told from the log alone."""
        kinds = self._log.kinds_of_entries()
        seen = {
            Fact.TRACKING_MEASURED: Kind.TRACKING in kinds,
            Fact.NOTE_WRITTEN: Kind.NOTE in kinds,
            Fact.CLOCK_CHECKED: self._clock_is_checked(),
        }
        return frozenset(fact for fact, is_so in seen.items() if is_so)

    def keep_around(self, around: Mapping[Kind, Mapping[str, Any]]) -> None:
        """Equipment and plan as they are now, one entry of each; what is so already is left."""
        for kind, content in around.items():
            key, before = self._around.get(kind, (None, None))
            if content != before:
                key = self._log.put_entry(kind, content, entry_id=key)
                self._around[kind] = key, content

    def has_begun(self) -> bool:
        """Whether the person has said anything of this night."""
        by_hand = any(mark.state in (State.DONE, State.SKIPPED) for mark in self._marks.values())
        return by_hand or any(self._said.values())

    def mark(self, *marks: Mark) -> None:
        for one in marks:
            self._marks[one.key] = one
            self._log.put_entry(Kind.TICK, one.as_object())
        if marks:
            self.changed.emit()

    def confirm_clock(self) -> None:
        """The person compared the clock with one that can be trusted."""
        step = _step_of(Fact.CLOCK_CHECKED)
        self.mark(Mark(step.key, State.SEEN, self._now(), text=step.words))

    def add_step(self, text: str, part: Part, behind: str, is_kept: bool) -> None:
        """Raises UnusableStep, a sentence."""
        step = OwnStep(new_key(self._own), " ".join(text.split()), part, behind, is_kept=is_kept)
        self._put_own((*self._own, step))

    def remove_step(self, key: str) -> None:
        self._put_own(tuple(one for one in self._own if one.key != key))

    def move_step(self, key: str, behind: Step) -> None:
        """Puts an own step behind another step."""
        self._put_own(moved(self._own, key, behind))

    def keep_step(self, key: str, is_kept: bool) -> None:
        """Whether an own step comes again on other nights."""
        self._put_own(
            tuple(replace(one, is_kept=is_kept) if one.key == key else one for one in self._own)
        )

    def note(self, text: str) -> None:
        """Writes a note; an empty one is none."""
        if text.strip():
            self._say(Kind.NOTE, {"text": text.strip()})

    def note_weather(self, read: Mapping[str, Any]) -> None:
        """`read` by names that end in their units, and `text`."""
        self._say(Kind.WEATHER, dict(read))

    def _say(self, kind: Kind, content: dict[str, Any]) -> None:
        self._log.put_entry(kind, content)
        self._said[kind].append(content)
        self.changed.emit()

    def _clock_is_checked(self) -> bool:
        mark = self._marks.get(_step_of(Fact.CLOCK_CHECKED).key)
        return mark is not None and mark.state is State.SEEN

    def _put_own(self, own: tuple[OwnStep, ...]) -> None:
        """Kept ones as a setting, all others as an entry of the night."""
        self._own = own
        kept = [one for one in own if one.is_kept]
        of_tonight = [one for one in own if not one.is_kept]
        self._log.put_setting(KEPT_STEPS, to_objects(kept))
        content = {"steps": to_objects(of_tonight)}
        self._own_entry = self._log.put_entry(Kind.OWN_STEPS, content, entry_id=self._own_entry)
        self.changed.emit()

    def _take_own(self, entries: Iterable[Entry]) -> None:
        for entry in entries:
            if entry.kind == Kind.OWN_STEPS:
                self._own_entry = entry.key
                steps = from_objects(_list(entry.content.get("steps")))
                self._own = _unlike((*self._own, *steps))


def _marks(entries: Iterable[Entry]) -> dict[str, Mark]:
    read = [Mark.from_object(one.content, one.utc_s) for one in entries if one.kind == Kind.TICK]
    return newest([mark for mark in read if mark is not None])


def _unlike(steps: Sequence[OwnStep]) -> tuple[OwnStep, ...]:
    """Each under a key of its own: one of last night may have got that of a kept one."""
    found: list[OwnStep] = []
    for one in steps:
        if any(one.key == other.key for other in found):
            if any(one.text == other.text for other in found):
                continue
            one = replace(one, key=new_key(found))
        found.append(one)
    return tuple(found)


def _step_of(fact: Fact) -> Step:
    return next(step for step in load() if step.done_when is fact)


def _list(given: Any) -> list[Any]:
    return given if isinstance(given, list) else []
