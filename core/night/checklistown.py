"""Steps a person adds to the checklist, for tonight or to keep."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import asdict, dataclass, fields, replace
from typing import Any

from core.language import say
from core.night.checkliststeps import Part, Step, When

OWN = "own "  # begins the keys of own steps, so that no bundled step can ever share one
_LONGEST_MIN = 24.0 * 60.0


class UnusableStep(ValueError):
    """An own step that cannot be; the text is a sentence."""


@dataclass(frozen=True)
class OwnStep:
    """`after`: key of the step it stands behind. `is_kept`: it comes again on other nights."""

    key: str
    text: str
    part: Part
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

    def as_step(self, neighbour: Step | None) -> Step:
        """The step behind `neighbour`, whose later moment it shares."""
        when = When()
        if neighbour is not None and neighbour.when.at is not None:
            when = When(at=neighbour.when.at, after_min=neighbour.when.after_min)
        part = self.part if neighbour is None or neighbour.key != self.after else neighbour.part
        return Step(self.key, part, self.text, self.why, self.minutes, when=when, is_own=True)


def new_key(own: Sequence[OwnStep]) -> str:
    """A key no own step has yet."""
    taken = {one.key for one in own}
    return next(key for n in range(1, len(own) + 2) if (key := f"{OWN}{n}") not in taken)


def moved(own: Sequence[OwnStep], key: str, behind: Step) -> tuple[OwnStep, ...]:
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
        return OwnStep(**{**values, "part": Part(given["part"])})
    except (KeyError, TypeError, ValueError, AttributeError):
        return None
