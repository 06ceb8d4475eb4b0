"""What a mount is wanted for: what it must have, and how much the rest counts."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from enum import Enum

from core.language import marked, say
from core.mount.equipment import ImpossibleValue, Mount, Purpose
from core.mount.payload import LoadPractice


class Must(Enum):
    """What knocks a mount out when it fails."""

    CARRIES = marked("carries the load")
    DRIVEN_OR_GOTO = marked("driven or goto")
    AUTOGUIDER_PORT = marked("autoguider port")
    EQUATORIAL = marked("equatorial")
    PRICE = marked("within the price")


class Criterion(Enum):
    """What ranks those that are left."""

    EASE = marked("ease of use")
    OWN_WEIGHT = marked("own weight")
    DRIVE = marked("drive and goto")
    POINTING = marked("pointing accuracy")
    CAPACITY = marked("capacity")
    PERIODIC_ERROR = marked("periodic error")
    ERROR_TRAINING = marked("error training")
    PRICE = marked("price")


# Common practice, no source; the planetary line and all numbers are this program's suggestion.
_MUSTS = {
    Purpose.OBSERVING: (Must.CARRIES,),
    Purpose.PLANETARY: (Must.CARRIES, Must.DRIVEN_OR_GOTO),
    Purpose.DEEP_SKY: (
        Must.CARRIES,
        Must.DRIVEN_OR_GOTO,
        Must.AUTOGUIDER_PORT,
        Must.EQUATORIAL,
    ),
}
_WEIGHTS = {
    Purpose.OBSERVING: {
        Criterion.EASE: 5.0,
        Criterion.OWN_WEIGHT: 5.0,
        Criterion.DRIVE: 3.0,
        Criterion.POINTING: 2.0,
        Criterion.CAPACITY: 1.0,
    },
    Purpose.PLANETARY: {
        Criterion.CAPACITY: 4.0,
        Criterion.DRIVE: 3.0,
        Criterion.PERIODIC_ERROR: 2.0,
        Criterion.POINTING: 2.0,
        Criterion.OWN_WEIGHT: 1.0,
    },
    Purpose.DEEP_SKY: {
        Criterion.CAPACITY: 5.0,
        Criterion.PERIODIC_ERROR: 3.0,
        Criterion.ERROR_TRAINING: 2.0,
        Criterion.POINTING: 1.0,
    },
}


@dataclass(frozen=True)
class Wishes:
    """`load_kg`: what it is to carry, gear still to be bought included; None when not known.

    `weights`: none below zero, at least one above; what is not named does not count.
    `price_limit` is needed with `Must.PRICE`.
    """

    purpose: Purpose
    load_kg: float | None
    practice_share: float
    musts: tuple[Must, ...]
    weights: Mapping[Criterion, float]
    price_limit: float | None = None

    def __post_init__(self) -> None:
        given = self.weights.values()
        if not all(math.isfinite(one) and one >= 0.0 for one in given) or sum(given) <= 0.0:
            raise ImpossibleValue(
                say("The weights are zero or above, and at least one is above zero.")
            )
        if self.load_kg is not None and not 0.0 <= self.load_kg <= 5000.0:
            raise ImpossibleValue(
                say(
                    "The load is given as {load:g} kg; it lies between 0 and 5000 kg.",
                    load=self.load_kg,
                )
            )
        if not 0.05 <= self.practice_share <= 1.0:
            raise ImpossibleValue(say("The part of the capacity to use lies between 5 and 100 %."))
        if Must.PRICE in self.musts and not (self.price_limit or 0.0) > 0.0:
            raise ImpossibleValue(say("To stay within a price, enter the price."))

    @classmethod
    def usual(
        cls, purpose: Purpose, load_kg: float | None, practice: LoadPractice | None = None
    ) -> Wishes:
        """The usual order for a purpose, to be adjusted."""
        share = (practice or LoadPractice()).share(purpose)
        return cls(purpose, load_kg, share, _MUSTS[purpose], _WEIGHTS[purpose])


# What knocks a mount out, why, and what would keep it in.


@dataclass(frozen=True)
class RequirementCheck:
    """`passes` is None when the data sheet does not tell. Then `remedy` says what to find out."""

    must: Must
    passes: bool | None
    reason: str
    remedy: str


def findings(mount: Mount, wishes: Wishes) -> tuple[RequirementCheck, ...]:
    """One for each must."""
    return tuple(_CHECKS[must](mount, wishes) for must in wishes.musts)


def _carries(mount: Mount, wishes: Wishes) -> RequirementCheck:
    capacity, load = mount.capacity_kg, wishes.load_kg
    if capacity is None:
        return RequirementCheck(
            Must.CARRIES,
            None,
            say("the listed capacity is not known"),
            say("find out the listed capacity"),
        )
    if load is None:
        return RequirementCheck(
            Must.CARRIES,
            None,
            say("the load it is to carry is not known"),
            say("find out the load it is to carry"),
        )
    return RequirementCheck(
        Must.CARRIES,
        load <= capacity,
        say(
            "{load:g} kg is more than the {capacity:g} kg it is listed to carry",
            load=load,
            capacity=capacity,
        ),
        say(
            "it were listed for {load:g} kg, or the load were {capacity:g} kg or less",
            load=load,
            capacity=capacity,
        ),
    )


def _driven(mount: Mount, _: Wishes) -> RequirementCheck:
    either = (mount.is_driven, mount.has_goto)
    if True not in either and None in either:
        reason = say("whether it is driven is not known")
        return RequirementCheck(
            Must.DRIVEN_OR_GOTO, None, reason, say("find out whether it is driven")
        )
    return RequirementCheck(
        Must.DRIVEN_OR_GOTO,
        True in either,
        say("it has neither drive nor goto"),
        say("it were driven"),
    )


def _autoguider(mount: Mount, _: Wishes) -> RequirementCheck:
    passes = mount.has_autoguider_port
    if passes is None:
        reason = say("whether it has an autoguider port is not known")
        return RequirementCheck(
            Must.AUTOGUIDER_PORT, None, reason, say("find out whether it has one")
        )
    return RequirementCheck(
        Must.AUTOGUIDER_PORT,
        passes,
        say("it has no autoguider port"),
        say("it had an autoguider port"),
    )


def _equatorial(mount: Mount, wishes: Wishes) -> RequirementCheck:
    return RequirementCheck(
        Must.EQUATORIAL,
        mount.kind.is_equatorial,
        say("it is {kind}, and the field turns during exposures", kind=say(mount.kind.value)),
        say(
            "it stood on a wedge, or {purpose} did not have to be equatorial",
            purpose=say(wishes.purpose.value),
        ),
    )


def _price(mount: Mount, wishes: Wishes) -> RequirementCheck:
    limit = wishes.price_limit or 0.0
    if mount.price is None:
        return RequirementCheck(
            Must.PRICE, None, say("its price is not entered"), say("enter its price")
        )
    return RequirementCheck(
        Must.PRICE,
        mount.price <= limit,
        say("its price of {price:g} is above {limit:g}", price=mount.price, limit=limit),
        say("it cost {limit:g} or less", limit=limit),
    )


_CHECKS = {
    Must.CARRIES: _carries,
    Must.DRIVEN_OR_GOTO: _driven,
    Must.AUTOGUIDER_PORT: _autoguider,
    Must.EQUATORIAL: _equatorial,
    Must.PRICE: _price,
}


# Marks from 0 to 1 for each thing that ranks mounts: the best of the candidates against each.
#
# Half as good as the best is 0.5. Yes-or-no counts 1 or 0. Capacity counts full once the practice
# figure of it holds the load. What is not known gets no mark.

_DRIVEN_ONLY = 0.5  # a drive without goto; our own figure
_NOTHING_BELOW = 1e-3  # a figure of zero would make all others worthless


@dataclass(frozen=True)
class ChoiceMark:
    """`mark` None: not known. `figure`: in words. `best`: the figure the mark compares with."""

    criterion: Criterion
    weight: float
    mark: float | None
    figure: str
    value: float | None
    best: float | None


@dataclass(frozen=True)
class _MeasuredFigure:
    """A measured figure: the less the better, and how to write it."""

    of: Callable[[Mount], float | None]
    unit: str
    floor: float


_LESS_IS_BETTER = {
    Criterion.OWN_WEIGHT: _MeasuredFigure(
        lambda mount: mount.own_mass_kg, marked(" kg"), _NOTHING_BELOW
    ),
    Criterion.POINTING: _MeasuredFigure(
        lambda mount: mount.pointing_accuracy_arcmin, "′", _NOTHING_BELOW
    ),
    Criterion.PERIODIC_ERROR: _MeasuredFigure(lambda mount: mount.periodic_error_arcsec, "″", 1.0),
    Criterion.PRICE: _MeasuredFigure(lambda mount: mount.price, "", _NOTHING_BELOW),
}


def marks(mount: Mount, candidates: Sequence[Mount], wishes: Wishes) -> tuple[ChoiceMark, ...]:
    """Marks of one candidate, in order of weight."""
    ordered = sorted(wishes.weights.items(), key=lambda pair: -pair[1])
    return tuple(
        _mark(criterion, weight, mount, candidates, wishes)
        for criterion, weight in ordered
        if weight > 0.0
    )


def _mark(
    criterion: Criterion,
    weight: float,
    mount: Mount,
    candidates: Sequence[Mount],
    wishes: Wishes,
) -> ChoiceMark:
    if criterion in _LESS_IS_BETTER:
        return _least(criterion, weight, mount, candidates)
    if criterion is Criterion.CAPACITY:
        return _capacity(weight, mount, candidates, wishes)
    if criterion is Criterion.EASE:
        value = mount.ease_of_use
        known = None if value is None else (value - 1.0) / 4.0
        return ChoiceMark(criterion, weight, known, _of_five(value), value, 5.0)
    if criterion is Criterion.DRIVE:
        return ChoiceMark(criterion, weight, *_drive(mount), None, None)
    trains = mount.has_error_training
    words = {True: say("yes"), False: say("no"), None: say("not known")}[trains]
    return ChoiceMark(
        criterion, weight, None if trains is None else float(trains), words, None, None
    )


def _least(
    criterion: Criterion, weight: float, mount: Mount, candidates: Sequence[Mount]
) -> ChoiceMark:
    figure = _LESS_IS_BETTER[criterion]
    value = figure.of(mount)
    known = [one for one in map(figure.of, candidates) if one is not None]
    if value is None:
        return ChoiceMark(criterion, weight, None, say("not known"), None, min(known, default=None))
    best = max(min(known), figure.floor)
    mark = best / max(value, figure.floor)
    return ChoiceMark(criterion, weight, mark, _written(value, figure.unit), value, best)


def _capacity(
    weight: float, mount: Mount, candidates: Sequence[Mount], wishes: Wishes
) -> ChoiceMark:
    known = [one.capacity_kg for one in candidates if one.capacity_kg is not None]
    enough = wishes.load_kg / wishes.practice_share if wishes.load_kg else None
    best = enough if enough is not None else max(known, default=None)
    value = mount.capacity_kg
    mark = None if value is None or best is None else min(value / best, 1.0)
    return ChoiceMark(Criterion.CAPACITY, weight, mark, _written(value, marked(" kg")), value, best)


def _drive(mount: Mount) -> tuple[float | None, str]:
    if mount.has_goto:
        return 1.0, say("goto")
    if mount.has_goto is None:
        return None, say("driven, goto not known") if mount.is_driven else say("not known")
    if mount.is_driven is None:
        return None, say("no goto, drive not known")
    return (_DRIVEN_ONLY, say("driven")) if mount.is_driven else (0.0, say("by hand"))


def _written(value: float | None, unit: str) -> str:
    return say("not known") if value is None else f"{value:g}{say(unit) if unit else unit}"


def _of_five(value: float | None) -> str:
    return say("not known") if value is None else say("{mark:g} of 5", mark=value)


# Why a mount stands where it stands, and what would move it, in sentences.

_UNITS = {
    Criterion.OWN_WEIGHT: " kg",
    Criterion.POINTING: "′",
    Criterion.PERIODIC_ERROR: "″",
    Criterion.CAPACITY: " kg",
    Criterion.PRICE: "",
}
_STRONG, _WEAK = 0.8, 0.5

Rival = tuple[str, Sequence[ChoiceMark]]


def reason_words(
    marks: Sequence[ChoiceMark], findings: Sequence[RequirementCheck], total: float, wishes: Wishes
) -> str:
    """What knocks it out or leaves it open; else what speaks for and against it."""
    purpose = say(wishes.purpose.value)
    failed = [one.reason for one in findings if one.passes is False]
    if failed:
        return say("Out for {purpose}: {reasons}.", purpose=purpose, reasons="; ".join(failed))
    parts = [say("{total:.2f} of 1 for {purpose}", total=total, purpose=purpose)]
    strong = [_named(one) for one in marks if (one.mark or 0.0) >= _STRONG]
    weak = [_named(one) for one in marks if one.mark is not None and one.mark < _WEAK]
    unknown = [_named(one) for one in marks if one.mark is None]
    if strong:
        parts.append(say("strong in {qualities}", qualities=", ".join(strong)))
    if weak:
        parts.append(say("weak in {qualities}", qualities=", ".join(weak)))
    if unknown:
        parts.append(say("not judged: {qualities}", qualities=", ".join(unknown)))
    open_musts = [one.reason for one in findings if one.passes is None]
    if open_musts:
        parts.append(say("but {reasons}", reasons="; ".join(open_musts)))
    return f"{'; '.join(parts)}."


def _named(mark: ChoiceMark) -> str:
    criterion = say(mark.criterion.value)
    return criterion if mark.mark is None else f"{criterion} ({mark.figure})"


def change_words(
    marks: Sequence[ChoiceMark],
    findings: Sequence[RequirementCheck],
    above: Rival | None,
    below: Rival | None,
) -> str:
    """What would bring it back, up, or down."""
    failed = [one.remedy for one in findings if one.passes is False]
    if failed:
        return say("It would be in if {changes}.", changes=say(" and ").join(failed))
    unknown = [one.remedy for one in findings if one.passes is None]
    if unknown:
        return say("To judge it, {tasks}.", tasks=say(" and ").join(unknown))
    if above is not None:
        return _to_pass(marks, *above)
    if below is not None:
        return _to_be_passed(marks, *below)
    return say("There is nothing to compare it with.")


def _points(marks: Sequence[ChoiceMark]) -> dict[Criterion, float]:
    return {one.criterion: one.weight * (one.mark or 0.0) for one in marks}


def _gap(ahead: Sequence[ChoiceMark], behind: Sequence[ChoiceMark]) -> float:
    """By how many weighted points the first leads."""
    return sum(_points(ahead).values()) - sum(_points(behind).values())


def _to_pass(marks: Sequence[ChoiceMark], name: str, rival: Sequence[ChoiceMark]) -> str:
    """A figure of its own that would do it: the weightiest that can."""
    gap = _gap(rival, marks)
    if gap < 1e-9:
        return say("It is level with “{name}”.", name=name)
    for mark in marks:
        wanted = (mark.mark or 0.0) + gap / mark.weight
        if wanted <= 1.0 + 1e-9:
            change = _with(mark, min(wanted, 1.0))
            return say("It would draw level with “{name}” {change}.", name=name, change=change)
    return say("No single figure would bring it level with “{name}”.", name=name)


def _with(mark: ChoiceMark, wanted: float) -> str:
    criterion, is_known = mark.criterion, mark.mark is not None
    if criterion is Criterion.ERROR_TRAINING:
        if is_known:
            return say("if it had error training")
        return say("if it has error training, not known")
    if criterion is Criterion.DRIVE:
        return say("if it had goto")
    name, figure = say(criterion.value), _figure(mark, wanted)
    if is_known:
        return say("if its {criterion} were {figure}", criterion=name, figure=figure)
    return say(
        "if its {criterion}, which is not known, were {figure}", criterion=name, figure=figure
    )


def _figure(mark: ChoiceMark, wanted: float) -> str:
    """The figure that earns the wanted mark."""
    if mark.criterion is Criterion.EASE:
        return say("{mark:.1f} of 5", mark=1.0 + 4.0 * wanted)
    unit, best = _UNITS[mark.criterion], mark.best
    if best is None:
        return say("as good as the others'")
    if mark.criterion is Criterion.CAPACITY:
        return f"{best * wanted:.3g}{unit}"
    return f"{best / wanted:.3g}{unit}" if wanted > 0.0 else say("any")


def _to_be_passed(marks: Sequence[ChoiceMark], name: str, rival: Sequence[ChoiceMark]) -> str:
    """The smallest change of a weight that lets the next one draw level."""
    gap = _gap(marks, rival)
    changes = []
    for own, other in zip(marks, rival, strict=True):
        lead = (other.mark or 0.0) - (own.mark or 0.0)
        if lead > 1e-9:
            changes.append((gap / lead, own))
    at_best = sum(one.weight for one in rival if one.mark is None)
    hopes = [say(one.criterion.value) for one in rival if one.mark is None]
    if hopes and at_best > gap:
        return say(
            "“{name}” could pass it once its {qualities} is known.",
            name=name,
            qualities=say(" and ").join(hopes),
        )
    if not changes:
        return say(
            "Nothing here speaks for “{name}” against it; no weights would change that.", name=name
        )
    more, mark = min(changes, key=lambda change: change[0])
    return say(
        "“{name}” would draw level if {criterion} counted {weight:.3g} instead of {present:g}.",
        name=name,
        criterion=say(mark.criterion.value),
        weight=mark.weight + more,
        present=mark.weight,
    )


# Which mount: candidates side by side for a purpose, each with why, and what would change it.


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
    marks: tuple[ChoiceMark, ...]
    findings: tuple[RequirementCheck, ...]
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
    marks: tuple[ChoiceMark, ...]
    findings: tuple[RequirementCheck, ...]

    @classmethod
    def of(cls, mount: Mount, mounts: Sequence[Mount], wishes: Wishes) -> _Judged:
        told = findings(mount, wishes)
        passes = [one.passes for one in told]
        outcome = Outcome.OUT if False in passes else Outcome.OPEN if None in passes else Outcome.IN
        return cls(mount, outcome, marks(mount, mounts, wishes), told)

    @property
    def total(self) -> float:
        return total(self.marks, 0.0)


def total(given: Sequence[ChoiceMark], unknown: float) -> float:
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
