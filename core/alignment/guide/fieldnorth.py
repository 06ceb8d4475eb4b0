"""Which way north is in the field, when a mirror in the light path leaves it open.

Readings whose north is reversed give an axis error of the other sign, nearly. A turn of the bolts
tells: with north right the error shrinks as the turn was meant to, reversed it grows.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from enum import Enum

from core.alignment.axis.solution import solve
from core.alignment.driftlog.records import Leg
from core.alignment.guide.bolts import Base, BoltTurn, SeenTurn, TurnAccuracy, known_after
from core.alignment.priors import USUAL, Priors
from core.sky.site import Air, Site

_DECISIVE = 12.0  # difference of χ²: 400 to one


class FieldNorth(Enum):
    """How the readings' north stands to the sky's."""

    AS_READ = "north is where the readings have it"
    REVERSED = "north and south are exchanged in the readings"
    UNDECIDED = "the turn was too small to tell"


def reversed_leg(leg: Leg) -> Leg:
    """The same leg with north and south exchanged."""
    return replace(leg, north_arcsec=-leg.north_arcsec)


def find_north(
    before: Sequence[Leg],
    turn: BoltTurn,
    after: Sequence[Leg],
    site: Site,
    air: Air,
    base: Base,
    accuracy: TurnAccuracy | SeenTurn,
    priors: Priors = USUAL,
) -> FieldNorth:
    """Compare both readings of north with what the turn should have done to the axis."""
    as_read = _disagreement(before, turn, after, site, air, base, accuracy, priors)
    exchanged = _disagreement(
        [reversed_leg(leg) for leg in before],
        turn,
        [reversed_leg(leg) for leg in after],
        site,
        air,
        base,
        accuracy,
        priors,
    )
    if abs(as_read - exchanged) < _DECISIVE:
        return FieldNorth.UNDECIDED
    return FieldNorth.AS_READ if as_read < exchanged else FieldNorth.REVERSED


def _disagreement(
    before: Sequence[Leg],
    turn: BoltTurn,
    after: Sequence[Leg],
    site: Site,
    air: Air,
    base: Base,
    accuracy: TurnAccuracy | SeenTurn,
    priors: Priors,
) -> float:
    was = solve(before, site, air, priors=priors).knowledge
    expected = known_after(was, turn, site, base, accuracy)
    return expected.disagreement(solve(after, site, air, priors=priors).knowledge)
