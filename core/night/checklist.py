"""The steps and cautions a checklist is made of, from the bundled table of texts.

Texts are whole sentences without figures in them, so that each can be translated as it stands.
"""

from __future__ import annotations

import json
import math
from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import asdict, dataclass, field, fields, replace
from enum import Enum
from functools import cache
from pathlib import Path
from typing import Any, TypeVar

from core.language import marked, say
from core.mount.equipment import MountKind, Purpose
from core.night.darkness import Night, Span
from core.sky.almanac import Light

TABLE = Path(__file__).parents[2] / "resources" / "checklist.json"

Member = TypeVar("Member", bound=Enum)


class Power(Enum):
    """Where tonight's electricity comes from."""

    MAINS = "mains"
    BATTERY = "battery"


class Hemisphere(Enum):
    """Which pole is above the horizon."""

    NORTH = "north"
    SOUTH = "south"


class NightPart(Enum):
    """The headings, in the order of the night."""

    BEFORE_LEAVING = marked("before you leave")
    DAYLIGHT = marked("by daylight")
    DUSK = marked("at dusk")
    DARK = marked("in the dark")
    THROUGH_THE_NIGHT = marked("through the night")
    CLOSING = marked("closing down")


class Moment(Enum):
    """What times are tied to. First stars: Sun 6° down; faint stars: Sun 12° down."""

    SUNSET = "sunset"
    FIRST_STARS = "first stars"
    FAINT_STARS = "faint stars"
    TARGET = "target"
    FLIP = "flip"
    END = "end"


class KnownFact(Enum):
    """What the program itself can see to be so."""

    SITE_CONFIRMED = "site confirmed"
    CLOCK_CHECKED = "clock checked"
    EQUIPMENT_CHOSEN = "equipment chosen"
    LOAD_CHECKED = "load checked"
    TARGET_CHOSEN = "target chosen"
    FLIP_PLANNED = "flip planned"
    FLIP_DONE = "flip done"  # or not needed tonight
    ALIGNMENT_WITHIN_BUDGET = "alignment within budget"
    TRACKING_MEASURED = "tracking measured"
    NOTE_WRITTEN = "note written"


@dataclass(frozen=True)
class Caution:
    """What can hurt somebody, and what to do about it. Nothing takes it off the list."""

    key: str
    text: str


@dataclass(frozen=True)
class When:
    """How a step's time follows from the night.

    Before the target: `by` it must be finished, `not_before` it cannot begin, and it has to begin
    `ahead_min` minutes ahead of the step `ahead_of`. Later on: `at` a moment, `after_min` after it.
    """

    by: Moment | None = None
    not_before: Moment | None = None
    ahead_of: str | None = None
    ahead_min: float = 0.0
    at: Moment | None = None
    after_min: float = 0.0


@dataclass(frozen=True)
class Applies:
    """On which nights a step stands; empty or None: on all of them.

    `flip`: when one is needed; `flip_asked`: also when a target is chosen that needs none.
    """

    purposes: frozenset[Purpose] = frozenset()
    mounts: frozenset[MountKind] = frozenset()
    power: Power | None = None
    hemisphere: Hemisphere | None = None
    below_c: float | None = None
    moon: bool = False
    flip: bool = False
    flip_asked: bool = False
    guided: bool = False


@dataclass(frozen=True)
class ChecklistStep:
    """One thing to do. `why` in one line; `page` that does it, or empty; `minutes` it takes."""

    key: str
    part: NightPart
    text: str
    why: str
    minutes: float
    page: str = ""
    done_when: KnownFact | None = None
    cautions: tuple[Caution, ...] = ()
    when: When = field(default_factory=When)
    applies: Applies = field(default_factory=Applies)
    is_own: bool = False

    @property
    def words(self) -> str:
        """The text in the person's language; an own step as the person wrote it."""
        return self.text if self.is_own else say(self.text)


@cache
def load() -> tuple[ChecklistStep, ...]:
    """All steps there are, in the order they are done. RuntimeError, a sentence, if unreadable."""
    try:
        return read(json.loads(TABLE.read_text(encoding="utf-8")))
    except (OSError, ValueError, KeyError, TypeError) as error:
        raise RuntimeError(
            say(
                "The checklist's texts {file} cannot be read ({error}). Install Poleward again.",
                file=TABLE,
                error=error,
            )
        ) from error


def read(table: Mapping[str, Any]) -> tuple[ChecklistStep, ...]:
    """The steps of a table of the bundled form; ValueError or KeyError for what has no meaning."""
    cautions = {key: Caution(key, text) for key, text in table["cautions"].items()}
    return tuple(_step(row, cautions) for row in table["steps"])


def source_texts() -> tuple[str, ...]:
    """Every text a person may read in a checklist, once each, for translators."""
    texts = [text for step in load() for text in (step.text, step.why)]
    texts += [caution.text for step in load() for caution in step.cautions]
    return tuple(dict.fromkeys([*(part.value for part in NightPart), *texts]))


def _step(row: Mapping[str, Any], cautions: Mapping[str, Caution]) -> ChecklistStep:
    done_when = row.get("done_when")
    return ChecklistStep(
        key=row["key"],
        part=NightPart(row["part"]),
        text=row["text"],
        why=row["why"],
        minutes=float(row["minutes"]),
        page=row.get("page", ""),
        done_when=None if done_when is None else KnownFact(done_when),
        cautions=tuple(cautions[key] for key in row.get("cautions", ())),
        when=_when(row.get("when", {})),
        applies=_applies(row.get("applies", {})),
    )


def _when(row: Mapping[str, Any]) -> When:
    given = dict(row)
    return When(
        by=_member(Moment, given.pop("by", None)),
        not_before=_member(Moment, given.pop("not_before", None)),
        at=_member(Moment, given.pop("at", None)),
        **given,
    )


def _applies(row: Mapping[str, Any]) -> Applies:
    given = dict(row)
    return Applies(
        purposes=_members(Purpose, given.pop("purposes", ())),
        mounts=_members(MountKind, given.pop("mounts", ())),
        power=_member(Power, given.pop("power", None)),
        hemisphere=_member(Hemisphere, given.pop("hemisphere", None)),
        **given,
    )


def _members(kind: type[Member], names: Sequence[str]) -> frozenset[Member]:
    return frozenset(kind(name) for name in names)


def _member(kind: type[Member], name: str | None) -> Member | None:
    return None if name is None else kind(name)


# When each step has to begin, worked back from the target and forward from its beginning.

_MINUTE_S = 60.0


@dataclass(frozen=True)
class Moments:
    """The night's own times and the person's plan, Unix seconds; None for what does not happen.

    `first_stars_utc_s`: from when on the Sun is 6° down; `faint_stars_utc_s`: 12° down.
    """

    sunset_utc_s: float | None = None
    first_stars_utc_s: float | None = None
    faint_stars_utc_s: float | None = None
    target_utc_s: float | None = None
    flip_utc_s: float | None = None
    end_utc_s: float | None = None

    @classmethod
    def of(
        cls,
        night: Night,
        target_utc_s: float | None = None,
        end_utc_s: float | None = None,
        flip_utc_s: float | None = None,
    ) -> Moments:
        """Those of a night. Without a plan it ends when the faint stars fade."""
        faint = night.spans_of(Light.ASTRONOMICAL)
        fades = faint[-1][1] if faint else night.sunrise_utc_s
        return cls(
            sunset_utc_s=night.sunset_utc_s,
            first_stars_utc_s=_begin_of(night.spans_of(Light.NAUTICAL)),
            faint_stars_utc_s=_begin_of(faint),
            target_utc_s=target_utc_s,
            flip_utc_s=flip_utc_s,
            end_utc_s=fades if end_utc_s is None else end_utc_s,
        )

    @property
    def earliest_target_utc_s(self) -> float | None:
        """The target's time, or without one the first that a target could have."""
        times = (
            self.target_utc_s,
            self.faint_stars_utc_s,
            self.first_stars_utc_s,
            self.sunset_utc_s,
        )
        return next((time for time in times if time is not None), None)

    def at(self, moment: Moment) -> float | None:
        """The time of a moment."""
        name = f"{moment.value.replace(' ', '_')}_utc_s"
        time: float | None = getattr(self, name)
        return time


@dataclass(frozen=True)
class Planned:
    """A step with the latest time to begin it so that the rest is still done in time.

    None when the night has no such times. `not_before_utc_s`: it cannot be done earlier.
    """

    step: ChecklistStep
    begin_utc_s: float | None
    not_before_utc_s: float | None


@dataclass(frozen=True)
class Timetable:
    """The steps in order with their times.

    `starts_utc_s`: when the target can begin, which is later than planned when the stars come too
    late for all there is to do; None when the night has no such time. `moments`: with that target.
    """

    planned: tuple[Planned, ...]
    starts_utc_s: float | None
    moments: Moments


def timetable(steps: Sequence[ChecklistStep], moments: Moments) -> Timetable:
    """Times for `steps`, which stand in the order they are done."""
    before = [step for step in steps if step.when.at is None]
    after = [step for step in steps if step.when.at is not None]
    starts = _possible_start(before, moments)
    possible = replace(moments, target_utc_s=starts)
    begins = _back_from(before, possible) | _onward(after, possible)
    planned = tuple(Planned(step, begins[step.key], _earliest(step, moments)) for step in steps)
    return Timetable(planned, starts, possible)


def ready_utc_s(open_steps: Iterable[ChecklistStep], moments: Moments, now_utc_s: float) -> float:
    """When the target could begin if all of `open_steps` that come before it are done from now."""
    before = [step for step in open_steps if step.when.at is None]
    return max(_through(before, moments, now_utc_s), moments.target_utc_s or now_utc_s)


def _possible_start(before: Sequence[ChecklistStep], moments: Moments) -> float | None:
    earliest = moments.earliest_target_utc_s
    return None if earliest is None else max(earliest, _through(before, moments, -math.inf))


def _through(steps: Sequence[ChecklistStep], moments: Moments, begin_utc_s: float) -> float:
    """The end of steps done one after another, none before its time."""
    now, began = begin_utc_s, dict[str, float]()
    leads = [step for step in steps if step.when.ahead_of is not None]
    for step in steps:
        earliest = _earliest(step, moments)
        waits = [
            began[lead.key] + lead.when.ahead_min * _MINUTE_S
            for lead in leads
            if lead.when.ahead_of == step.key and lead.key in began
        ]
        now = max([now, *waits, *([] if earliest is None else [earliest])])
        began[step.key] = now
        now += step.minutes * _MINUTE_S
    return now


def _back_from(before: Sequence[ChecklistStep], moments: Moments) -> dict[str, float | None]:
    latest = moments.target_utc_s
    begins: dict[str, float | None] = {}
    for step in reversed(before):
        deadline = moments.at(step.when.by) if step.when.by is not None else None
        ends = _earlier(latest, deadline)
        begin = None if ends is None else ends - step.minutes * _MINUTE_S
        begins[step.key] = latest = _earlier(begin, _ahead(step, begins))
    return begins


def _ahead(step: ChecklistStep, begins: Mapping[str, float | None]) -> float | None:
    other = None if step.when.ahead_of is None else begins.get(step.when.ahead_of)
    return None if other is None else other - step.when.ahead_min * _MINUTE_S


def _onward(after: Sequence[ChecklistStep], moments: Moments) -> dict[str, float | None]:
    begins: dict[str, float | None] = {}
    free: dict[Moment, float] = {}  # when the step before it at the same moment is done
    for step in after:
        moment = step.when.at
        assert moment is not None
        time = moments.at(moment)
        if time is None:
            begins[step.key] = None
            continue
        begin = max(time + step.when.after_min * _MINUTE_S, free.get(moment, -math.inf))
        free[moment] = begin + step.minutes * _MINUTE_S
        begins[step.key] = begin
    return begins


def _earliest(step: ChecklistStep, moments: Moments) -> float | None:
    return None if step.when.not_before is None else moments.at(step.when.not_before)


def _earlier(one: float | None, other: float | None) -> float | None:
    known = [time for time in (one, other) if time is not None]
    return min(known, default=None)


def _begin_of(spans: Sequence[Span]) -> float | None:
    return spans[0][0] if spans else None


# Steps a person adds to the checklist, for tonight or to keep.

OWN = "own "  # begins the keys of own steps, so that no bundled step can ever share one
_LONGEST_MIN = 24.0 * 60.0


class UnusableStep(ValueError):
    """An own step that cannot be; the text is a sentence."""


@dataclass(frozen=True)
class OwnStep:
    """`after`: key of the step it stands behind. `is_kept`: it comes again on other nights."""

    key: str
    text: str
    part: NightPart
    after: str = ""
    why: str = ""
    minutes: float = 0.0
    is_kept: bool = False

    def __post_init__(self) -> None:
        if not self.text.strip() or not self.key.strip():
            raise UnusableStep(say("The step has no text; write what is to be done."))
        if not 0.0 <= self.minutes <= _LONGEST_MIN:
            raise UnusableStep(
                say(
                    "The step takes {minutes:g} minutes; give 0 to {longest:.0f}.",
                    minutes=self.minutes,
                    longest=_LONGEST_MIN,
                )
            )

    def as_step(self, neighbour: ChecklistStep | None) -> ChecklistStep:
        """The step behind `neighbour`, whose later moment it shares."""
        when = When()
        if neighbour is not None and neighbour.when.at is not None:
            when = When(at=neighbour.when.at, after_min=neighbour.when.after_min)
        part = self.part if neighbour is None or neighbour.key != self.after else neighbour.part
        return ChecklistStep(
            self.key, part, self.text, self.why, self.minutes, when=when, is_own=True
        )


def new_key(own: Sequence[OwnStep]) -> str:
    """A key no own step has yet."""
    taken = {one.key for one in own}
    return next(key for n in range(1, len(own) + 2) if (key := f"{OWN}{n}") not in taken)


def moved(own: Sequence[OwnStep], key: str, behind: ChecklistStep) -> tuple[OwnStep, ...]:
    """The own steps with one of them put behind another step."""
    return tuple(
        replace(one, after=behind.key, part=behind.part)
        if one.key == key and behind.key != key
        else one
        for one in own
    )


def to_objects(own: Sequence[OwnStep]) -> list[dict[str, Any]]:
    """As JSON can hold them, for a setting (kept ones) or an entry of the night."""
    return [{**asdict(one), "part": one.part.value} for one in own]


def from_objects(objects: Sequence[Any]) -> tuple[OwnStep, ...]:
    """What `to_objects` wrote; anything else among it is left out."""
    return tuple(one for one in map(_from_object, objects) if one is not None)


def _from_object(given: Any) -> OwnStep | None:
    if not isinstance(given, Mapping):
        return None
    known = {field.name for field in fields(OwnStep)}
    try:
        values = {key: value for key, value in given.items() if key in known}
        return OwnStep(**{**values, "part": NightPart(given["part"])})
    except (KeyError, TypeError, ValueError, AttributeError):
        return None


# The checklist of one night: only what applies, in the order it is done, with times.

COOL_DOWN = "cool-down"  # the step whose lead depends on the telescope
MOON_MATTERS = 0.3  # illuminated share; common practice, no source


@dataclass(frozen=True)
class Circumstances:
    """What tonight's checklist depends on.

    `temperature_c`: the lowest expected; None when not known, which is treated as cold. `moon_lit`:
    illuminated share of the Moon's disc while it is up during the session, 0 when it is not.
    `spares_flip`: a target is chosen that needs none.
    `cool_down_min`: how long the telescope takes to reach the temperature of the air.
    """

    purpose: Purpose
    mount: MountKind
    power: Power
    hemisphere: Hemisphere
    temperature_c: float | None = None
    moon_lit: float = 0.0
    is_guided: bool = False
    needs_flip: bool = False
    spares_flip: bool = False
    cool_down_min: float = 60.0


@dataclass(frozen=True)
class Checklist:
    """Steps with their times. A step's cautions belong to it whether it is done or skipped.

    `starts_utc_s`: when the target can begin; `moments` has it too. `notice`: a sentence when that
    is later than planned, or when there is no such time, else empty.
    """

    planned: tuple[Planned, ...]
    moments: Moments
    starts_utc_s: float | None
    notice: str

    @property
    def steps(self) -> tuple[ChecklistStep, ...]:
        return tuple(one.step for one in self.planned)

    @property
    def cautions(self) -> tuple[Caution, ...]:
        """Every caution of this night, once each, in the order they come up."""
        return tuple(dict.fromkeys(one for step in self.steps for one in step.cautions))


def hemisphere_of(latitude_deg: float) -> Hemisphere:
    """The equator counts as north, where the north pole's star can at least be looked for."""
    return Hemisphere.NORTH if latitude_deg >= 0.0 else Hemisphere.SOUTH


def build(circumstances: Circumstances, moments: Moments, own: Sequence[OwnStep] = ()) -> Checklist:
    """The checklist for these circumstances, with the person's own steps where they put them."""
    steps = [
        _cooling(step, circumstances.cool_down_min)
        for step in load()
        if applies(step.applies, circumstances)
    ]
    times = timetable(_with_own(steps, own), moments)
    notice = _notice(times, moments.target_utc_s)
    return Checklist(times.planned, times.moments, times.starts_utc_s, notice)


def applies(when: Applies, tonight: Circumstances) -> bool:
    """Whether a step stands on such a night."""
    cold = tonight.temperature_c is None or tonight.temperature_c < (when.below_c or 0.0)
    return all(
        (
            not when.purposes or tonight.purpose in when.purposes,
            not when.mounts or tonight.mount in when.mounts,
            when.power in (None, tonight.power),
            when.hemisphere in (None, tonight.hemisphere),
            when.below_c is None or cold,
            not when.moon or tonight.moon_lit >= MOON_MATTERS,
            not when.flip or tonight.needs_flip,
            not when.flip_asked or tonight.needs_flip or tonight.spares_flip,
            not when.guided or tonight.is_guided,
        )
    )


def _cooling(step: ChecklistStep, minutes: float) -> ChecklistStep:
    if step.key != COOL_DOWN:
        return step
    return replace(step, when=replace(step.when, ahead_min=minutes))


def _with_own(steps: Iterable[ChecklistStep], own: Sequence[OwnStep]) -> list[ChecklistStep]:
    """Own steps after the one they were put behind; at the end of their part when it is absent."""
    placed = list(steps)
    for one in own:
        keys = [step.key for step in placed]
        if one.after in keys:
            index = keys.index(one.after) + 1
        else:
            index = sum(_order(step.part) <= _order(one.part) for step in placed)
        neighbour = placed[index - 1] if index else None
        placed.insert(index, one.as_step(neighbour))
    return placed


def _order(part: NightPart) -> int:
    return list(NightPart).index(part)


def _notice(times: Timetable, target_utc_s: float | None) -> str:
    if times.starts_utc_s is None:
        return say("The Sun gives no evening tonight to plan by: the steps stand without times.")
    late_min = 0.0 if target_utc_s is None else (times.starts_utc_s - target_utc_s) / 60.0
    if late_min < 1.0:
        return ""
    return say(
        "What needs stars cannot all be done before the target's time: it can begin "
        "{minutes:.0f} minutes later. Skip a step with a reason, or begin the target later.",
        minutes=late_min,
    )


# What has become of the steps: done by hand, seen by the program, skipped with a reason, open.


class State(Enum):
    """Of one step."""

    OPEN = "open"
    DONE = marked("done")
    SEEN = marked("seen by the program")
    SKIPPED = marked("skipped")


NO_REASONS: Mapping[KnownFact, str] = {}


class NoReason(ValueError):
    """A step was to be skipped without saying why; the text is a sentence."""


@dataclass(frozen=True)
class StepMark:
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
    def from_object(cls, given: Mapping[str, Any], utc_s: float) -> StepMark | None:
        """What `as_object` wrote; None for anything else."""
        key, reason, text = given.get("step"), given.get("reason", ""), given.get("text", "")
        try:
            state = State(given.get("state"))
        except ValueError:
            return None
        if not all(isinstance(one, str) for one in (key, reason, text)):
            return None
        return cls(str(key), state, utc_s, reason, text)


def done(step: ChecklistStep, utc_s: float) -> StepMark:
    """The person did it."""
    return StepMark(step.key, State.DONE, utc_s, text=step.words)


def skipped(step: ChecklistStep, reason: str, utc_s: float) -> StepMark:
    """The person leaves it out. Its cautions stay. Raises NoReason, a sentence."""
    if not reason.strip():
        raise NoReason(say("Say in a few words why the step is skipped; it goes into the report."))
    return StepMark(step.key, State.SKIPPED, utc_s, " ".join(reason.split()), step.words)


def reopened(step: ChecklistStep, utc_s: float) -> StepMark:
    """Neither done nor skipped after all."""
    return StepMark(step.key, State.OPEN, utc_s, text=step.words)


def newly_seen(
    checklist: Checklist,
    marks: Mapping[str, StepMark],
    facts: Collection[KnownFact],
    utc_s: float,
    reasons: Mapping[KnownFact, str] = NO_REASONS,
) -> list[StepMark]:
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
            found.append(StepMark(step.key, State.SEEN, utc_s, reason, step.words))
    return found


def state_of(
    step: ChecklistStep, marks: Mapping[str, StepMark], facts: Collection[KnownFact]
) -> State:
    """By the newest marks by key. What the program saw holds only as long as it is so."""
    last = _last(step, marks)
    if last in (State.DONE, State.SKIPPED):
        return last
    return State.SEEN if step.done_when is not None and step.done_when in facts else State.OPEN


def open_steps(
    checklist: Checklist, marks: Mapping[str, StepMark], facts: Collection[KnownFact]
) -> tuple[Planned, ...]:
    """What is left to do, in order."""
    return tuple(one for one in checklist.planned if state_of(one.step, marks, facts) is State.OPEN)


def newest(marks: Sequence[StepMark]) -> dict[str, StepMark]:
    """By key, of marks in any order, the last one made."""
    return {mark.key: mark for mark in sorted(marks, key=lambda mark: mark.utc_s)}


def _last(step: ChecklistStep, marks: Mapping[str, StepMark]) -> State:
    mark = marks.get(step.key)
    return State.OPEN if mark is None else mark.state
