"""What the log of nights gives back."""

from __future__ import annotations

from dataclasses import dataclass

from core.alignment.driftlog import Leg
from core.sky.site import Air, Site


@dataclass(frozen=True, eq=False)
class StoredLeg:
    """A leg with all its readings. `discarded`: left out by the person, kept on disk."""

    leg_id: int
    star_name: str
    leg: Leg
    ended: bool
    discarded: bool


@dataclass(frozen=True, eq=False)
class StoredAxisState:
    """The legs between two turns of the bolts, in the order they were begun."""

    axis_state_id: int
    legs: tuple[StoredLeg, ...]


@dataclass(frozen=True, eq=False)
class Night:
    """One night; None for what was never set. Times are Unix seconds.

    `aim_name`: name of the member of `core.alignment.advice.Aim`. `resumed`: whether it was begun
    by an earlier run of the program. There is always at least one axis state.
    """

    night_id: int
    started_utc_s: float
    site: Site | None
    air: Air | None
    aim_name: str | None
    target_arcmin: float | None
    axis_states: tuple[StoredAxisState, ...]
    resumed: bool
