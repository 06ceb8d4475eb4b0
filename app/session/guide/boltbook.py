"""What the person's own turns teach about the two bolts of the mount, kept with the settings."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from app.session.guide.turn import TurnMade
from app.session.places import Settings
from core.alignment.bolts import BoltScale, BoltTurn, learn
from core.alignment.knowledge import AxisKnowledge
from core.alignment.solution import Solution
from core.sky.site import Site

Floats = NDArray[np.float64]

KEY = "bolts"
VERSION = 1
AZIMUTH, ALTITUDE = "azimuth", "altitude"
MOST = 40  # turns remembered of each bolt: old ones were perhaps another mount's
WORST_CONDITION = 1e6  # of the information: beyond, one of the errors is not measured
LEAST_SIGMAS = 3.0  # a turn that hardly shows teaches nothing


class BoltBook:
    """Turns by bolt, oldest first; without settings (None) they are forgotten at the end."""

    def __init__(self, settings: Settings | None) -> None:
        self._settings = settings
        self._entries: list[dict[str, Any]] = _read(settings)

    def note(self, name: str, made: TurnMade, solution: Solution, site: Site) -> bool:
        """Learn from a turn and what was measured after it; `name` tells turns apart.

        The same turn again, better measured, replaces what was noted. True when it taught.
        """
        if made.was is None:
            return False
        after = measured_alone(solution, made.expected(site))
        if after is None:
            return False
        moved, sigma = _moved(made.was, after, site)
        counted = {AZIMUTH: made.azimuth_turns, ALTITUDE: made.altitude_turns}
        has_taught = False
        for index, (bolt, turns) in enumerate(counted.items()):
            if turns and abs(moved[index]) > LEAST_SIGMAS * sigma[index]:
                self._put(name, bolt, turns, float(moved[index]), float(sigma[index]))
                has_taught = True
        return has_taught

    def scale(self, bolt: str) -> BoltScale | None:
        """Of AZIMUTH or ALTITUDE, None before the first turn."""
        made = [
            BoltTurn(entry["turns"], entry["moved_arcmin"], entry["sigma_arcmin"])
            for entry in self._entries
            if entry["bolt"] == bolt
        ]
        return learn(made) if made else None

    def last_turns(self, bolt: str) -> float:
        """The last turn of a bolt, for its play; 0 when unknown."""
        turns = [entry["turns"] for entry in self._entries if entry["bolt"] == bolt]
        return float(turns[-1]) if turns else 0.0

    def _put(self, name: str, bolt: str, turns: float, moved: float, sigma: float) -> None:
        entry = {"name": name, "bolt": bolt, "turns": turns}
        entry |= {"moved_arcmin": moved, "sigma_arcmin": sigma}
        others = [e for e in self._entries if (e["name"], e["bolt"]) != (name, bolt)]
        self._entries = [*others, entry][-2 * MOST :]
        if self._settings is not None:
            self._settings.put_setting(KEY, {"version": VERSION, "turns": self._entries})


def measured_alone(solution: Solution, before: AxisKnowledge | None) -> AxisKnowledge | None:
    """What the legs of this axis state say by themselves; None when they cannot.

    `before`: what went into the solution besides; it is taken out again, for the turn it rests on
    is what is to be measured.
    """
    if not solution.determined:
        return None
    alone = sum(solution.information_arcmin2, np.zeros((2, 2)))
    if np.linalg.cond(alone) > WORST_CONDITION:
        return None
    granted = solution.before_information_arcmin2
    mean: Floats = solution.knowledge.sky_arcmin
    if before is not None and granted.any():
        pulled = (alone + granted) @ mean - granted @ before.sky_arcmin
        mean = np.asarray(np.linalg.solve(alone, pulled), dtype=np.float64)
    return AxisKnowledge(mean, np.asarray(np.linalg.inv(alone), dtype=np.float64))


def _moved(was: AxisKnowledge, now: AxisKnowledge, site: Site) -> tuple[Floats, Floats]:
    """Movement of azimuth and altitude and its standard deviation, arcmin."""
    scale = np.array([max(float(np.cos(np.deg2rad(site.latitude_deg))), 0.02), 1.0])
    variance = np.diag(was.covariance_arcmin2) + np.diag(now.covariance_arcmin2)
    return (now.sky_arcmin - was.sky_arcmin) / scale, np.sqrt(variance) / scale


def _read(settings: Settings | None) -> list[dict[str, Any]]:
    kept = None if settings is None else settings.get_setting(KEY)
    if not isinstance(kept, dict) or kept.get("version") != VERSION:
        return []
    wanted = {"name", "bolt", "turns", "moved_arcmin", "sigma_arcmin"}
    entries = kept.get("turns", [])
    return [e for e in entries if isinstance(e, dict) and wanted <= e.keys()]
