"""Which legs can be solved, and in a sentence why the others cannot."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from core.alignment.driftlog import Leg
from core.alignment.speed import too_fast
from core.language import say

_FEWEST_UNSTATED = 4  # readings needed before their own scatter can earn a ±
_SHORTEST_S = 10.0
CONTRADICTION = "contradiction"  # the code of the note on legs that cannot be right together


@dataclass(frozen=True)
class Note:
    """Something the person should know. `code` names the kind, `text` is the sentence.

    `leg`: the label of the leg it is about, empty where it is about all or none.
    """

    code: str
    text: str
    leg: str = ""


class UnusableLegs(ValueError):
    """No leg can be solved; the message is a sentence for the person."""


def usable(legs: Sequence[Leg]) -> tuple[list[Leg], tuple[Note, ...]]:
    """Legs that can be solved, and notes on the others. Raises `UnusableLegs` if none is left."""
    good, notes = [], []
    for leg in legs:
        reason = _reason_against(leg)
        if reason is None:
            good.append(leg)
        else:
            notes.append(
                Note(
                    "leg left out",
                    say("Leg “{label}” is left out: {reason}", label=leg.label, reason=reason),
                    leg=leg.label,
                )
            )
    if not good:
        if not notes:
            raise UnusableLegs(say("There is no leg yet: watch a star, or import a drift log."))
        raise UnusableLegs(" ".join(note.text for note in notes))
    return good, tuple(notes)


def _reason_against(leg: Leg) -> str | None:
    number = leg.utc_s.size
    if number < 2:
        return say("it has a single reading; a drift needs at least two, some minutes apart.")
    if not (np.isfinite(leg.north_arcsec).all() and np.isfinite(leg.utc_s).all()):
        return say("a reading or a time in it is not a number.")
    if np.any(np.diff(leg.utc_s) < 0.0):
        return say("its times run backwards; was the clock set while it was watched?")
    if leg.utc_s[-1] - leg.utc_s[0] < _SHORTEST_S:
        return say(
            "it lasts under {seconds:.0f} seconds; watch the star for some minutes.",
            seconds=_SHORTEST_S,
        )
    if number < _FEWEST_UNSTATED and leg.sigma_arcsec is None:
        return say(
            "it has {number} readings and no reading error; take at least {fewest} "
            "readings, or state how well you can read the offset.",
            number=number,
            fewest=_FEWEST_UNSTATED,
        )
    return too_fast(leg)
