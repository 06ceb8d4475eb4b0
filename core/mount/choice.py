"""Which mount: candidates side by side for a purpose, each with why, and what would change it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from core.mount.choicewords import change_words, reason_words
from core.mount.equipment import Mount
from core.mount.musts import Finding, findings
from core.mount.scores import Mark, marks
from core.mount.wishes import Wishes


class Outcome(Enum):
    """Whether a candidate is in the running."""

    IN = "in the running"
    OPEN = "something it must have is not known"
    OUT = "out"


@dataclass(frozen=True)
class Candidate:
    """`rank` from 1; None when out. `total` 0 to 1, unknown figures counting nothing;
    `total_at_best` if they all were as good as can be. `reason`, `change`: sentences.
    """

    mount: Mount
    outcome: Outcome
    rank: int | None
    total: float
    total_at_best: float
    marks: tuple[Mark, ...]
    findings: tuple[Finding, ...]
    reason: str
    change: str


def choose(mounts: Sequence[Mount], wishes: Wishes) -> tuple[Candidate, ...]:
    """Those in the running, best first, then those with open musts, then those out."""
    found = [_Judged.of(mount, mounts, wishes) for mount in mounts]
    order = list(Outcome)
    found.sort(key=lambda one: (order.index(one.outcome), -one.total))
    return tuple(_candidate(number, found, wishes) for number in range(len(found)))


@dataclass(frozen=True)
class _Judged:
    mount: Mount
    outcome: Outcome
    marks: tuple[Mark, ...]
    findings: tuple[Finding, ...]

    @classmethod
    def of(cls, mount: Mount, mounts: Sequence[Mount], wishes: Wishes) -> _Judged:
        told = findings(mount, wishes)
        passes = [one.passes for one in told]
        outcome = Outcome.OUT if False in passes else Outcome.OPEN if None in passes else Outcome.IN
        return cls(mount, outcome, marks(mount, mounts, wishes), told)

    @property
    def total(self) -> float:
        return total(self.marks, 0.0)


def total(given: Sequence[Mark], unknown: float) -> float:
    """Weighted mean of the marks, 0 to 1, with this mark for what is not known."""
    weight = sum(one.weight for one in given)
    summed = sum(one.weight * (unknown if one.mark is None else one.mark) for one in given)
    return summed / weight


def _candidate(number: int, found: Sequence[_Judged], wishes: Wishes) -> Candidate:
    one = found[number]
    is_out = one.outcome is Outcome.OUT
    above = found[number - 1] if number > 0 else None
    below = found[number + 1] if number + 1 < len(found) else None
    if below is not None and below.outcome is not one.outcome:
        below = None
    if above is not None and above.outcome is not one.outcome:
        above = None
    return Candidate(
        mount=one.mount,
        outcome=one.outcome,
        rank=None if is_out else number + 1,
        total=one.total,
        total_at_best=total(one.marks, 1.0),
        marks=one.marks,
        findings=one.findings,
        reason=reason_words(one.marks, one.findings, one.total, wishes),
        change=change_words(
            one.marks,
            one.findings,
            None if above is None else (above.mount.name, above.marks),
            None if below is None else (below.mount.name, below.marks),
        ),
    )
