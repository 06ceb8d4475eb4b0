"""Legs that cannot be right together, in a sentence that says what to do."""

from __future__ import annotations

from collections.abc import Sequence

from core.alignment.axis.legrate import LegTrend
from core.alignment.axis.legset import Contradiction
from core.alignment.drift.prepared import CONTRADICTION, Note
from core.language import say


def contradiction_note(found: Contradiction, legs: Sequence[LegTrend]) -> Note:
    """What contradicts what; its `leg` is the odd one where only one is left out."""
    names = _names(found.left_out or found.named, legs)
    parts = [_left_out(names, len(found.left_out)) if found.left_out else _open(names)]
    if found.exchanged:
        parts.append(
            say(
                "With north and south of leg {names} exchanged all legs agree: if you took one "
                "for the other there, exchange them.",
                names=_names(found.exchanged, legs, say(" or of leg ")),
            )
        )
    else:
        parts.append(
            say(
                "Was another star in view, or the tripod moved in between? Leave out the leg that "
                "is wrong, or watch a star again."
            )
        )
    label = legs[found.left_out[0]].label if len(found.left_out) == 1 else ""
    return Note(CONTRADICTION, " ".join(parts), leg=label)


def _left_out(names: str, number: int) -> str:
    if number == 1:
        return say("Leg {names} contradicts all others and is not used.", names=names)
    return say("The legs {names} contradict all others and are not used.", names=names)


def _open(names: str) -> str:
    return say(
        "The legs {names} contradict one another, and nothing tells which of them is wrong: so no "
        "error of the axis is told.",
        names=names,
    )


def _names(numbers: Sequence[int], legs: Sequence[LegTrend], between: str = "") -> str:
    between = between or ", "
    return between.join(say("“{label}”", label=legs[number].label) for number in numbers)
