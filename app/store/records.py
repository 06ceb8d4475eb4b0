"""What the log of nights gives back."""

from __future__ import annotations

from dataclasses import dataclass

from core.alignment.driftlog.records import Leg
from core.night.record import Entry, LegPurpose, NightFigures
from core.sky.site import Air, Site


@dataclass(frozen=True, eq=False)
class StoredLeg:
    """A leg with all its readings. `discarded`: left out by the person, kept on disk.

    `purpose`: a member of `core.night.record.Purpose`.
    """

    leg_id: int
    star_name: str
    leg: Leg
    ended: bool
    discarded: bool
    purpose: str = LegPurpose.ALIGNMENT


@dataclass(frozen=True, eq=False)
class StoredAxisState:
    """The alignment legs between two turns of the bolts, in the order they were begun."""

    axis_state_id: int
    legs: tuple[StoredLeg, ...]


@dataclass(frozen=True, eq=False)
class StoredNight:
    """One night; None for what was never set. Times are Unix seconds.

    `aim_name`: name of the member of `core.alignment.words.Aim`. `resumed`: whether it was begun
    by an earlier run of the program. There is always at least one axis state. `tracking_runs`: the
    legs watched for the drive, practice among them. `entries`: everything else, in order of time,
    without attachments.
    """

    night_id: int
    started_utc_s: float
    site: Site | None
    air: Air | None
    aim_name: str | None
    target_arcmin: float | None
    axis_states: tuple[StoredAxisState, ...]
    resumed: bool
    tracking_runs: tuple[StoredLeg, ...] = ()
    entries: tuple[Entry, ...] = ()


@dataclass(frozen=True)
class NightSummary:
    """A night in a list. `equipment`: the set's name, `target`: what was planned last, or empty."""

    night_id: int
    started_utc_s: float
    active_utc_s: float
    site: Site | None
    legs: int
    tracking_runs: int
    entries: int
    equipment: str
    target: str
    figures: NightFigures

    @property
    def is_empty(self) -> bool:
        """The program was opened, and nothing was done."""
        return not (self.legs or self.tracking_runs or self.entries)


@dataclass(frozen=True)
class FoundNight:
    """A night in which all words were found, and the texts that hold one of them."""

    night_id: int
    texts: tuple[str, ...]


class UnusableFile(ValueError):
    """A file that cannot be taken in or written; the text is a sentence for the person."""
