"""What a person changed of the usual figures for a purpose: capacity used, musts, weights."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any

from core.mount.choice import Criterion, Must, Wishes
from core.mount.equipment import ImpossibleValue, Purpose
from core.mount.payload import Practice


@dataclass(frozen=True)
class Adjusted:
    """`share`: part of the listed capacity to use. `price_limit`: None without one. `load_kg`: the
    person's own figure instead of the load of the set in use.
    """

    share: float
    musts: tuple[Must, ...]
    weights: Mapping[Criterion, float]
    price_limit: float | None = None
    load_kg: float | None = None

    @classmethod
    def usual(cls, purpose: Purpose) -> Adjusted:
        """As `core.mount` suggests."""
        wishes = Wishes.usual(purpose, None)
        return cls(wishes.practice_share, wishes.musts, wishes.weights)

    def wishes(self, purpose: Purpose, set_kg: float | None) -> Wishes:
        """`set_kg`: load of the set in use. Raises `ImpossibleValue` on a contradiction."""
        load_kg = set_kg if self.load_kg is None else self.load_kg
        return Wishes(purpose, load_kg, self.share, self.musts, self.weights, self.price_limit)

    def practice(self, purpose: Purpose) -> Practice:
        """The part of the capacity, for judging a load."""
        name = {
            Purpose.DEEP_SKY: "deep_sky",
            Purpose.PLANETARY: "planetary",
            Purpose.OBSERVING: "observing",
        }[purpose]
        return replace(Practice(), **{name: self.share})


def adjusted_to(own: Adjusted) -> dict[str, Any]:
    """As plain JSON values."""
    return {
        "share": own.share,
        "musts": [must.name for must in own.musts],
        "weights": {criterion.name: weight for criterion, weight in own.weights.items()},
        "price_limit": own.price_limit,
        "load_kg": own.load_kg,
    }


def adjusted_from(given: Any, purpose: Purpose) -> Adjusted:
    """From what was kept; the usual figures where it cannot be used."""
    usual = Adjusted.usual(purpose)
    try:
        limit, load = given["price_limit"], given["load_kg"]
        own = Adjusted(
            float(given["share"]),
            tuple(Must[name] for name in given["musts"]),
            {Criterion[name]: float(weight) for name, weight in given["weights"].items()},
            None if limit is None else float(limit),
            None if load is None else float(load),
        )
        own.wishes(purpose, None)
    except (KeyError, TypeError, ValueError, AttributeError, ImpossibleValue):
        return usual
    return own
