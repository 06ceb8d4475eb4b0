"""What the person's own turns teach about the two bolts of the mount in use."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from app.session.guide.boltshelf import BoltShelf
from app.session.guide.turn import TurnMade
from app.session.places import Settings
from core.alignment.axis.estimate import AxisKnowledge
from core.alignment.axis.solution import Solution
from core.alignment.guide.bolts import BoltScale, BoltTurn, as_counted, learn
from core.alignment.guide.nextstar import flexure_arcmin
from core.language import say
from core.mount.equipment import Mount
from core.sky.site import Site

Floats = NDArray[np.float64]

AZIMUTH, ALTITUDE = "azimuth", "altitude"
WORST_CONDITION = 1e6  # of the information: beyond, one of the errors is not measured
LEAST_SIGMAS = 3.0  # a turn that hardly shows teaches nothing


class BoltBook:
    """Turns by bolt, oldest first; without settings (None) they are forgotten at the end."""

    def __init__(self, settings: Settings | None) -> None:
        self._shelf = BoltShelf(settings)
        self._mount: Mount | None = None

    @property
    def key(self) -> str:
        """Of the mount in use, "" for none."""
        return "" if self._mount is None else self._mount.key

    def use(self, mount: Mount | None) -> None:
        """Open the book of this mount; of none, that of turns made with no mount chosen."""
        self._mount = mount
        self._shelf.open(self.key)

    def sentence(self) -> str:
        """Whose bolts these are."""
        if self._mount is not None:
            return say("What turns teach is kept with the mount “{name}”.", name=self._mount.name)
        if not self._shelf.keeps:
            return say("Practice: what these turns teach is forgotten at the end.")
        return say(
            "No mount is chosen on the Mount page: what turns teach is kept in a book of its own, "
            "for no mount. Choose the set you use to keep it with its mount."
        )

    def note(self, name: str, made: TurnMade, solution: Solution, site: Site) -> bool:
        """Learn from a turn and what was measured after it; `name` tells turns apart.

        The same turn again, better measured, replaces what was noted. True when it taught. It goes
        into the book of the mount that was turned, whichever is in use by now.
        """
        if made.was is None:
            return False
        after = measured_alone(solution, made.expected(site))
        if after is None:
            return False
        self._shelf.open(self.key if made.mount is None else made.mount)
        has_taught = self._learn(name, made, _moved(made.was, after, site))
        self._shelf.open(self.key)
        return has_taught

    def _learn(self, name: str, made: TurnMade, movement: tuple[Floats, Floats]) -> bool:
        moved, sigma = movement
        counted = {AZIMUTH: made.azimuth_turns, ALTITUDE: made.altitude_turns}
        has_taught = False
        for index, (bolt, turns) in enumerate(counted.items()):
            if turns and abs(moved[index]) > LEAST_SIGMAS * sigma[index]:
                self._put(name, bolt, turns, float(moved[index]), float(sigma[index]))
                has_taught = True
        return has_taught

    def scale(self, bolt: str) -> BoltScale | None:
        """Of AZIMUTH or ALTITUDE; before the first turn what the data sheet says, or None."""
        made, sheet = self._made(bolt), self._sheet_arcmin_per_turn(bolt)
        return learn(made, sheet) if made or sheet is not None else None

    def last_turns(self, bolt: str) -> float:
        """The last turn of a bolt, for its play, signed as the scale has it; 0 when unknown."""
        counted, _ = as_counted(self._made(bolt))
        return counted[-1].turns if counted else 0.0

    def _made(self, bolt: str) -> list[BoltTurn]:
        return [
            BoltTurn(entry["turns"], entry["moved_arcmin"], entry["sigma_arcmin"])
            for entry in self._shelf.entries
            if entry["bolt"] == bolt
        ]

    def _sheet_arcmin_per_turn(self, bolt: str) -> float | None:
        if self._mount is None:
            return None
        if bolt == AZIMUTH:
            return self._mount.azimuth_bolt_arcmin_per_turn
        return self._mount.altitude_bolt_arcmin_per_turn

    def _put(self, name: str, bolt: str, turns: float, moved: float, sigma: float) -> None:
        entry = {"name": name, "bolt": bolt, "turns": turns}
        entry |= {"moved_arcmin": moved, "sigma_arcmin": sigma}
        kept = self._shelf.entries
        others = [e for e in kept if (e["name"], e["bolt"]) != (name, bolt)]
        self._shelf.keep([*others, entry])


def measured_alone(solution: Solution, before: AxisKnowledge | None) -> AxisKnowledge | None:
    """What the legs of this axis state say by themselves; None when they cannot.

    `before`: what went into the solution besides; it is taken out again, for the turn it rests on
    is what is to be measured. The tube yields alike before the turn and after it, so flexure is
    left out of the covariance.
    """
    if not solution.determined:
        return None
    alone = sum(solution.information_arcmin2, np.zeros((2, 2)))
    if np.linalg.cond(alone) > WORST_CONDITION:
        return None
    granted = solution.before_information_arcmin2
    mean: Floats = solution.knowledge.sky_arcmin
    if before is not None and granted.any():
        flexure = flexure_arcmin(solution.priors, solution.latitude_deg)
        weighed = np.linalg.inv(np.linalg.inv(alone) + flexure**2 * np.eye(2))  # in the solution
        pulled = (weighed + granted) @ mean - granted @ before.sky_arcmin
        mean = np.asarray(np.linalg.solve(weighed, pulled), dtype=np.float64)
    return AxisKnowledge(mean, np.asarray(np.linalg.inv(alone), dtype=np.float64))


def _moved(was: AxisKnowledge, now: AxisKnowledge, site: Site) -> tuple[Floats, Floats]:
    """Movement of azimuth and altitude and its standard deviation, arcmin."""
    scale = np.array([max(float(np.cos(np.deg2rad(site.latitude_deg))), 0.02), 1.0])
    variance = np.diag(was.covariance_arcmin2) + np.diag(now.covariance_arcmin2)
    return (now.sky_arcmin - was.sky_arcmin) / scale, np.sqrt(variance) / scale
