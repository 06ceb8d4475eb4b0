"""Why a mount stands where it stands, and what would move it, in sentences."""

from __future__ import annotations

from collections.abc import Sequence

from core.language import say
from core.mount.musts import Finding
from core.mount.scores import Mark
from core.mount.wishes import Criterion, Wishes

_UNITS = {
    Criterion.OWN_WEIGHT: " kg",
    Criterion.POINTING: "′",
    Criterion.PERIODIC_ERROR: "″",
    Criterion.CAPACITY: " kg",
    Criterion.PRICE: "",
}
_STRONG, _WEAK = 0.8, 0.5

Rival = tuple[str, Sequence[Mark]]


def reason_words(
    marks: Sequence[Mark], findings: Sequence[Finding], total: float, wishes: Wishes
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


def _named(mark: Mark) -> str:
    criterion = say(mark.criterion.value)
    return criterion if mark.mark is None else f"{criterion} ({mark.figure})"


def change_words(
    marks: Sequence[Mark],
    findings: Sequence[Finding],
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


def _points(marks: Sequence[Mark]) -> dict[Criterion, float]:
    return {one.criterion: one.weight * (one.mark or 0.0) for one in marks}


def _gap(ahead: Sequence[Mark], behind: Sequence[Mark]) -> float:
    """By how many weighted points the first leads."""
    return sum(_points(ahead).values()) - sum(_points(behind).values())


def _to_pass(marks: Sequence[Mark], name: str, rival: Sequence[Mark]) -> str:
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


def _with(mark: Mark, wanted: float) -> str:
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


def _figure(mark: Mark, wanted: float) -> str:
    """The figure that earns the wanted mark."""
    if mark.criterion is Criterion.EASE:
        return say("{mark:.1f} of 5", mark=1.0 + 4.0 * wanted)
    unit, best = _UNITS[mark.criterion], mark.best
    if best is None:
        return say("as good as the others'")
    if mark.criterion is Criterion.CAPACITY:
        return f"{best * wanted:.3g}{unit}"
    return f"{best / wanted:.3g}{unit}" if wanted > 0.0 else say("any")


def _to_be_passed(marks: Sequence[Mark], name: str, rival: Sequence[Mark]) -> str:
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
