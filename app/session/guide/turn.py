"""One turn of the bolts between two axis states, and what it lets one go on knowing."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum

from core.alignment.axis.estimate import AxisKnowledge
from core.alignment.guide.bolts import SEEN_TURN, Base, SeenTurn, Turn, TurnAccuracy, known_after
from core.sky.site import Site

# Of a hand that turns as it was told, without seeing what it does: common practice, no source.
ADVISED_TURN = TurnAccuracy(0.1, 0.5)
# Counted turns of a bolt whose scale has been learned.
COUNTED_TURN = TurnAccuracy(0.07, 0.5)
_TINY_ARCMIN = 1.0  # a bolt turned less is not worth asking which way


class How(Enum):
    """What the turn is known from."""

    SEEN = "seen"  # the star in view showed it
    COUNTED = "counted"  # turns of a bolt whose scale is known
    ADVISED = "advised"  # the person says: as advised
    UNKNOWN = "unknown"  # turned, nobody knows how far


ACCURACY = {How.SEEN: SEEN_TURN, How.COUNTED: COUNTED_TURN, How.ADVISED: ADVISED_TURN}


@dataclass(frozen=True, eq=False)
class TurnMade:
    """`turn`: how far the axis is believed to have moved. `azimuth_turns`, `altitude_turns`: of the
    bolts, as counted, None where not. `was`: what was known before it, None for nothing. `mount`:
    key of the mount whose bolts they were, "" where none was chosen, None where it was not kept.
    `seen`: how well the star in view showed it, None where none did.
    """

    utc_s: float
    how: How
    turn: Turn | None
    azimuth_turns: float | None = None
    altitude_turns: float | None = None
    was: AxisKnowledge | None = None
    base: Base = field(default_factory=Base)
    mount: str | None = None
    seen: SeenTurn | None = None

    @property
    def accuracy(self) -> TurnAccuracy | SeenTurn | None:
        """How well the turn is known; None for one that nobody knows."""
        return self.seen if self.seen is not None else ACCURACY.get(self.how)

    def expected(self, site: Site) -> AxisKnowledge | None:
        """What is known of the axis after it without looking again."""
        return self.expected_of(self.turn, site)

    def expected_of(self, turn: Turn | None, site: Site) -> AxisKnowledge | None:
        """The same, had it been another turn."""
        accuracy = self.accuracy
        if turn is None or self.was is None or accuracy is None:
            return None
        return known_after(self.was, turn, site, self.base, accuracy)

    def other_ways(self, site: Site) -> list[tuple[str, AxisKnowledge]]:
        """What would be known, had both bolts ("") or the one named gone the other way.

        Empty where a star showed the turn or nothing was known before it.
        """
        if self.turn is None or self.seen is not None:
            return []
        expected = [(bolt, self.expected_of(turn, site)) for bolt, turn in _opposites(self.turn)]
        return [(bolt, known) for bolt, known in expected if known is not None]


def _opposites(turn: Turn) -> list[tuple[str, Turn]]:
    """As far as they were turned."""
    azimuth, altitude = turn.azimuth_arcmin, turn.altitude_arcmin
    found = [("", Turn(-azimuth, -altitude))]
    if min(abs(azimuth), abs(altitude)) > _TINY_ARCMIN:
        found += [("azimuth", Turn(-azimuth, altitude)), ("altitude", Turn(azimuth, -altitude))]
    return found
