"""Why a mount stands where it stands, and what would move it, in sentences."""

from __future__ import annotations

from collections.abc import Sequence

from core.mount.musts import Finding
from core.mount.scores import Mark
from core.mount.wishes import Criterion, Wishes

_UNITS = {
    Criterion.OWN_WEIGHT: " kg",
    Criterion.POINTING: "′",
    Criterion.PERIODIC_ERROR: "″",
    Criterion.CAPACITY: " kg",
    Criterion.PRICE: "",
    Criterion.EASE: " of 5",
}
_STRONG, _WEAK = 0.8, 0.5

Rival = tuple[str, Sequence[Mark]]


def reason_words(
    marks: Sequence[Mark], findings: Sequence[Finding], total: float, wishes: Wishes
) -> str:
    """What knocks it out or leaves it open; else what speaks for and against it."""
    failed = [one.reason for one in findings if one.passes is False]
    if failed:
        return f"Out for {wishes.purpose.value}: {'; '.join(failed)}."
    parts = [f"{total:.2f} of 1 for {wishes.purpose.value}"]
    for title, chosen in (
        ("strong in", [one for one in marks if (one.mark or 0.0) >= _STRONG]),
        ("weak in", [one for one in marks if one.mark is not None and one.mark < _WEAK]),
        ("not judged:", [one for one in marks if one.mark is None]),
    ):
        if chosen:
            parts.append(f"{title} {', '.join(map(_named, chosen))}")
    open_musts = [one.reason for one in findings if one.passes is None]
    if open_musts:
        parts.append(f"but {'; '.join(open_musts)}")
    return f"{'; '.join(parts)}."


def _named(mark: Mark) -> str:
    if mark.mark is None:
        return mark.criterion.value
    return f"{mark.criterion.value} ({mark.figure})"


def change_words(
    marks: Sequence[Mark],
    findings: Sequence[Finding],
    above: Rival | None,
    below: Rival | None,
) -> str:
    """What would bring it back, up, or down."""
    failed = [one.remedy for one in findings if one.passes is False]
    if failed:
        return f"It would be in if {' and '.join(failed)}."
    unknown = [one.remedy for one in findings if one.passes is None]
    if unknown:
        return f"To judge it, {' and '.join(unknown)}."
    if above is not None:
        return _to_pass(marks, *above)
    if below is not None:
        return _to_be_passed(marks, *below)
    return "There is nothing to compare it with."


def _points(marks: Sequence[Mark]) -> dict[Criterion, float]:
    return {one.criterion: one.weight * (one.mark or 0.0) for one in marks}


def _gap(ahead: Sequence[Mark], behind: Sequence[Mark]) -> float:
    """By how many weighted points the first leads."""
    return sum(_points(ahead).values()) - sum(_points(behind).values())


def _to_pass(marks: Sequence[Mark], name: str, rival: Sequence[Mark]) -> str:
    """A figure of its own that would do it: the weightiest that can."""
    gap = _gap(rival, marks)
    if gap < 1e-9:
        return f"It is level with “{name}”."
    for mark in marks:
        wanted = (mark.mark or 0.0) + gap / mark.weight
        if wanted <= 1.0 + 1e-9:
            return f"It would draw level with “{name}” {_with(mark, min(wanted, 1.0))}."
    return f"No single figure would bring it level with “{name}”."


def _with(mark: Mark, wanted: float) -> str:
    criterion = mark.criterion
    known = "" if mark.mark is not None else ", which is not known,"
    if criterion is Criterion.ERROR_TRAINING:
        return "if it had error training" if not known else "if it has error training, not known"
    if criterion is Criterion.DRIVE:
        return "if it had goto"
    return f"if its {criterion.value}{known} were {_figure(mark, wanted)}"


def _figure(mark: Mark, wanted: float) -> str:
    """The figure that earns the wanted mark."""
    unit, best = _UNITS[mark.criterion], mark.best
    if mark.criterion is Criterion.EASE:
        return f"{1.0 + 4.0 * wanted:.1f}{unit}"
    if best is None:
        return "as good as the others'"
    if mark.criterion is Criterion.CAPACITY:
        return f"{best * wanted:.3g}{unit}"
    return f"{best / wanted:.3g}{unit}" if wanted > 0.0 else "any"


def _to_be_passed(marks: Sequence[Mark], name: str, rival: Sequence[Mark]) -> str:
    """The smallest change of a weight that lets the next one draw level."""
    gap = _gap(marks, rival)
    changes = []
    for own, other in zip(marks, rival, strict=True):
        lead = (other.mark or 0.0) - (own.mark or 0.0)
        if lead > 1e-9:
            changes.append((gap / lead, own))
    at_best = sum(one.weight for one in rival if one.mark is None)
    hopes = [one.criterion.value for one in rival if one.mark is None]
    if hopes and at_best > gap:
        return f"“{name}” could pass it once its {' and '.join(hopes)} is known."
    if not changes:
        return f"Nothing here speaks for “{name}” against it; no weights would change that."
    more, mark = min(changes, key=lambda change: change[0])
    return (
        f"“{name}” would draw level if {mark.criterion.value} counted {mark.weight + more:.3g} "
        f"instead of {mark.weight:g}."
    )
