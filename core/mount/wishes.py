"""What a mount is wanted for: what it must have, and how much the rest counts."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from enum import Enum

from core.language import marked, say
from core.mount.equipment import Purpose
from core.mount.payload import Practice
from core.mount.quantities import ImpossibleValue


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
        cls, purpose: Purpose, load_kg: float | None, practice: Practice | None = None
    ) -> Wishes:
        """The usual order for a purpose, to be adjusted."""
        share = (practice or Practice()).share(purpose)
        return cls(purpose, load_kg, share, _MUSTS[purpose], _WEIGHTS[purpose])
