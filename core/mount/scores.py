"""Marks from 0 to 1 for each thing that ranks mounts: the best of the candidates against each.

Half as good as the best is 0.5. Yes-or-no counts 1 or 0. Capacity counts full once the practice
figure of it holds the load. What is not known gets no mark.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from core.language import marked, say
from core.mount.equipment import Mount
from core.mount.wishes import Criterion, Wishes

_DRIVEN_ONLY = 0.5  # a drive without goto; our own figure
_NOTHING_BELOW = 1e-3  # a figure of zero would make all others worthless


@dataclass(frozen=True)
class Mark:
    """`mark` None: not known. `figure`: in words. `best`: the figure the mark compares with."""

    criterion: Criterion
    weight: float
    mark: float | None
    figure: str
    value: float | None
    best: float | None


@dataclass(frozen=True)
class _Figure:
    """A measured figure: the less the better, and how to write it."""

    of: Callable[[Mount], float | None]
    unit: str
    floor: float


_LESS_IS_BETTER = {
    Criterion.OWN_WEIGHT: _Figure(lambda mount: mount.own_mass_kg, marked(" kg"), _NOTHING_BELOW),
    Criterion.POINTING: _Figure(lambda mount: mount.pointing_accuracy_arcmin, "′", _NOTHING_BELOW),
    Criterion.PERIODIC_ERROR: _Figure(lambda mount: mount.periodic_error_arcsec, "″", 1.0),
    Criterion.PRICE: _Figure(lambda mount: mount.price, "", _NOTHING_BELOW),
}


def marks(mount: Mount, candidates: Sequence[Mount], wishes: Wishes) -> tuple[Mark, ...]:
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
) -> Mark:
    if criterion in _LESS_IS_BETTER:
        return _least(criterion, weight, mount, candidates)
    if criterion is Criterion.CAPACITY:
        return _capacity(weight, mount, candidates, wishes)
    if criterion is Criterion.EASE:
        value = mount.ease_of_use
        known = None if value is None else (value - 1.0) / 4.0
        return Mark(criterion, weight, known, _of_five(value), value, 5.0)
    if criterion is Criterion.DRIVE:
        return Mark(criterion, weight, *_drive(mount), None, None)
    trains = mount.has_error_training
    words = {True: say("yes"), False: say("no"), None: say("not known")}[trains]
    return Mark(criterion, weight, None if trains is None else float(trains), words, None, None)


def _least(criterion: Criterion, weight: float, mount: Mount, candidates: Sequence[Mount]) -> Mark:
    figure = _LESS_IS_BETTER[criterion]
    value = figure.of(mount)
    known = [one for one in map(figure.of, candidates) if one is not None]
    if value is None:
        return Mark(criterion, weight, None, say("not known"), None, min(known, default=None))
    best = max(min(known), figure.floor)
    mark = best / max(value, figure.floor)
    return Mark(criterion, weight, mark, _written(value, figure.unit), value, best)


def _capacity(weight: float, mount: Mount, candidates: Sequence[Mount], wishes: Wishes) -> Mark:
    known = [one.capacity_kg for one in candidates if one.capacity_kg is not None]
    enough = wishes.load_kg / wishes.practice_share if wishes.load_kg else None
    best = enough if enough is not None else max(known, default=None)
    value = mount.capacity_kg
    mark = None if value is None or best is None else min(value / best, 1.0)
    return Mark(Criterion.CAPACITY, weight, mark, _written(value, marked(" kg")), value, best)


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
