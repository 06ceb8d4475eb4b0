"""The steps and cautions a checklist is made of, from the bundled table of texts.

Texts are whole sentences without figures in them, so that each can be translated as it stands.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from enum import Enum
from functools import cache
from pathlib import Path
from typing import Any, TypeVar

from core.language import marked, say
from core.mount.equipment import MountKind, Purpose

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


class Part(Enum):
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


class Fact(Enum):
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
class Step:
    """One thing to do. `why` in one line; `page` that does it, or empty; `minutes` it takes."""

    key: str
    part: Part
    text: str
    why: str
    minutes: float
    page: str = ""
    done_when: Fact | None = None
    cautions: tuple[Caution, ...] = ()
    when: When = field(default_factory=When)
    applies: Applies = field(default_factory=Applies)
    is_own: bool = False

    @property
    def words(self) -> str:
        """The text in the person's language; an own step as the person wrote it."""
        return self.text if self.is_own else say(self.text)


@cache
def load() -> tuple[Step, ...]:
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


def read(table: Mapping[str, Any]) -> tuple[Step, ...]:
    """The steps of a table of the bundled form; ValueError or KeyError for what has no meaning."""
    cautions = {key: Caution(key, text) for key, text in table["cautions"].items()}
    return tuple(_step(row, cautions) for row in table["steps"])


def source_texts() -> tuple[str, ...]:
    """Every text a person may read in a checklist, once each, for translators."""
    texts = [text for step in load() for text in (step.text, step.why)]
    texts += [caution.text for step in load() for caution in step.cautions]
    return tuple(dict.fromkeys([*(part.value for part in Part), *texts]))


def _step(row: Mapping[str, Any], cautions: Mapping[str, Caution]) -> Step:
    done_when = row.get("done_when")
    return Step(
        key=row["key"],
        part=Part(row["part"]),
        text=row["text"],
        why=row["why"],
        minutes=float(row["minutes"]),
        page=row.get("page", ""),
        done_when=None if done_when is None else Fact(done_when),
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
