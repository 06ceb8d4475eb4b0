"""What is said of the night as it goes: steps ticked, things remembered, flips made or missed."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import Any, Protocol

from PySide6.QtCore import QObject, Signal

from app.night.observing import ObservingContext
from app.night.recorder import EntryLog
from core.language import say
from core.mount.equipment import MountKind
from core.night.checklist import (
    ChecklistStep,
    KnownFact,
    NightPart,
    OwnStep,
    State,
    StepMark,
    from_objects,
    load,
    moved,
    new_key,
    newest,
    to_objects,
)
from core.night.darkness import Night, Span
from core.night.flip import ExposureSeries, FlipPlan, Limits, flip_plan
from core.night.plan import AltitudeCurve
from core.night.record import Entry, Kind
from core.sky.targets import Target

# What the person says of tonight: steps done or skipped, own steps, weather, notes, pictures.

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

    def marks(self) -> Mapping[str, StepMark]:
        """The newest of each step."""
        return dict(self._marks)

    def own(self) -> tuple[OwnStep, ...]:
        """Tonight's own steps, the kept ones among them."""
        return self._own

    def weather(self) -> Mapping[str, Any] | None:
        """The newest that was noted."""
        said = self._said[Kind.WEATHER]
        return said[-1] if said else None

    def facts(self) -> frozenset[KnownFact]:
        """What can be told from the log alone."""
        kinds = self._log.kinds_of_entries()
        seen = {
            KnownFact.TRACKING_MEASURED: Kind.TRACKING in kinds,
            KnownFact.NOTE_WRITTEN: Kind.NOTE in kinds,
            KnownFact.CLOCK_CHECKED: self._clock_is_checked(),
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

    def mark(self, *marks: StepMark) -> None:
        for one in marks:
            self._marks[one.key] = one
            self._log.put_entry(Kind.TICK, one.as_object())
        if marks:
            self.changed.emit()

    def confirm_clock(self) -> None:
        """The person compared the clock with one that can be trusted."""
        step = _step_of(KnownFact.CLOCK_CHECKED)
        self.mark(StepMark(step.key, State.SEEN, self._now(), text=step.words))

    def add_step(self, text: str, part: NightPart, behind: str, is_kept: bool) -> None:
        """Raises UnusableStep, a sentence."""
        step = OwnStep(new_key(self._own), " ".join(text.split()), part, behind, is_kept=is_kept)
        self._put_own((*self._own, step))

    def remove_step(self, key: str) -> None:
        self._put_own(tuple(one for one in self._own if one.key != key))

    def move_step(self, key: str, behind: ChecklistStep) -> None:
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
        mark = self._marks.get(_step_of(KnownFact.CLOCK_CHECKED).key)
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


def _marks(entries: Iterable[Entry]) -> dict[str, StepMark]:
    read = [
        StepMark.from_object(one.content, one.utc_s) for one in entries if one.kind == Kind.TICK
    ]
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


def _step_of(fact: KnownFact) -> ChecklistStep:
    return next(step for step in load() if step.done_when is fact)


def _list(given: Any) -> list[Any]:
    return given if isinstance(given, list) else []


# What the person did about tonight's meridian flips: seen when, flipped, centred again.


@dataclass(frozen=True)
class Flip:
    """Unix seconds; `centred_utc_s`: None until the target was centred and focused again."""

    flipped_utc_s: float
    centred_utc_s: float | None = None


class FlipBook(QObject):
    """By the name of the target, kept with the night at every change. `changed` follows each."""

    changed = Signal()

    def __init__(
        self,
        log: EntryLog,
        entries: Sequence[Entry],
        now: Callable[[], float],
        parent: QObject | None = None,
    ) -> None:
        """`entries`: those of tonight so far. `now`: seconds since 1970-01-01 UTC."""
        super().__init__(parent)
        self._log, self._now = log, now
        self._keys: dict[str, int] = {}
        self._flips: dict[str, tuple[Flip, ...]] = {}
        for entry in entries:
            target = entry.content.get("target")
            if entry.kind == Kind.FLIP and isinstance(target, str):
                self._keys[target] = entry.key
                self._flips[target] = _flips(entry.content.get("flips"))

    def is_seen(self, target: str) -> bool:
        """Whether the person has looked at when and on which side this target's flip comes."""
        return target in self._flips

    def flips(self, target: str) -> tuple[Flip, ...]:
        """Those done, in order of time."""
        return self._flips.get(target, ())

    def see(self, target: str) -> None:
        """The plan of this target's flip is on the screen."""
        if not self.is_seen(target):
            self._put(target, ())

    def flip(self, target: str) -> None:
        """The mount has changed sides just now."""
        self._put(target, (*self.flips(target), Flip(self._now())))

    def centre(self, target: str) -> None:
        """The target is centred and focused again just now."""
        *before, last = self.flips(target)
        self._put(target, (*before, replace(last, centred_utc_s=self._now())))

    def take_back(self, target: str) -> None:
        """The last thing said was a mistake."""
        *before, last = self.flips(target)
        if last.centred_utc_s is not None:
            before.append(Flip(last.flipped_utc_s))
        self._put(target, tuple(before))

    def _put(self, target: str, flips: tuple[Flip, ...]) -> None:
        self._flips[target] = flips
        done = [
            {"flipped_utc_s": one.flipped_utc_s, "centred_utc_s": one.centred_utc_s}
            for one in flips
        ]
        content = {"target": target, "flips": done}
        self._keys[target] = self._log.put_entry(
            Kind.FLIP, content, entry_id=self._keys.get(target)
        )
        self.changed.emit()


def _flips(given: Any) -> tuple[Flip, ...]:
    """What `_put` kept; anything else is left out."""
    read = []
    for one in given if isinstance(given, list) else ():
        flipped = one.get("flipped_utc_s") if isinstance(one, dict) else None
        centred = one.get("centred_utc_s") if isinstance(one, dict) else None
        if isinstance(flipped, int | float):
            at = float(centred) if isinstance(centred, int | float) else None
            read.append(Flip(float(flipped), at))
    return tuple(read)


# The flip of tonight's target: in which session, and whether the mount has to do it at all.


def session_of(
    seen: AltitudeCurve, tonight: Night, begin_utc_s: float, end_utc_s: float
) -> Span | None:
    """As the person wants it, NaN for not said; else the longest clear span in the dark."""
    spans = seen.clear_spans(tonight.usable_spans)
    usual = max(spans, key=lambda span: span[1] - span[0], default=None)
    begin, end = (_within(utc_s, tonight) for utc_s in (begin_utc_s, end_utc_s))
    if usual is None:
        return None if begin is None or end is None else (begin, end)
    return (usual[0] if begin is None else begin, usual[1] if end is None else end)


def planned_flip(
    fixed: Target,
    around: ObservingContext,
    session: Span | None,
    kind: MountKind,
    limits: Limits,
    series: ExposureSeries,
) -> tuple[FlipPlan | None, str]:
    """The plan of a target that holds still, or a sentence why there is none."""
    if session is None:
        return None, say(
            "{target} is never high enough and clear while it is dark tonight. Choose another "
            "target, or a lower useful altitude.",
            target=fixed.name,
        )
    try:
        plan = flip_plan(
            *(fixed.ra_deg, fixed.dec_deg, around.site, around.air, session),
            *(kind, limits, series),
        )
    except ValueError as problem:
        return None, str(problem)
    return plan, ""


def _within(utc_s: float, tonight: Night) -> float | None:
    """A time of another night says nothing about this one, nor does NaN."""
    return utc_s if tonight.begin_utc_s <= utc_s <= tonight.end_utc_s else None
