"""One whole night as the log keeps it: what a report shows and what an exported file holds."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Any

from core.alignment.driftlog import Leg
from core.sky.site import Air, Site


class Purpose(StrEnum):
    """What a leg was watched for. Practice is kept to go on with, and no report shows it."""

    ALIGNMENT = "alignment"
    TRACKING = "tracking"
    GUIDING = "guiding"
    PRACTICE = "tracking practice"


class Kind(StrEnum):
    """Of an entry, and what its content holds besides (a mapping JSON can hold).

    Names that end in a unit are numbers or null. Every kind may also hold `sentence`, `sentences`
    (what the person read) and anything more, which reports list as it stands.

    | kind | content |
    |---|---|
    | tick | `step`, `state`, `text`, `reason`: a `Mark` of the checklist |
    | own steps | `steps`: those of this night alone |
    | note | `text` |
    | weather | `text` and what was read, such as `temperature_c` |
    | picture | `name`, `media_type`, `caption`; the attachment is the file's bytes |
    | equipment | `name` of the set, `equipment`: the things in it |
    | plan | `target`, `begin_utc_s`, `end_utc_s` |
    | result | as `reportresult.result_content` makes it |
    | flip | `target`, `flips`: of each `flipped_utc_s`, `centred_utc_s` |
    | adjustment | as `reportresult.adjustment_content` makes it |
    | tracking | `leg`: key of the leg, `periodic_error_arcsec` (peak to peak), `worm_period_s` |
    | guiding | `leg`, `right_ascension_rms_arcsec`, `declination_rms_arcsec`, and more |
    | pointing | `stars`, `as_read_rms_arcmin`, `left_rms_arcmin`; `kept`: the stars |
    | vibration | `when`, `frequency_hz`, `settling_s`, and more; `kept`: the readings |
    """

    TICK = "tick"
    OWN_STEPS = "own steps"
    NOTE = "note"
    WEATHER = "weather"
    PICTURE = "picture"
    EQUIPMENT = "equipment"
    PLAN = "plan"
    RESULT = "result"
    FLIP = "flip"
    ADJUSTMENT = "adjustment"
    TRACKING = "tracking"
    GUIDING = "guiding"
    POINTING = "pointing"
    VIBRATION = "vibration"


@dataclass(frozen=True, eq=False)
class WatchedLeg:
    """A leg, why and when it was watched. `is_discarded`: left out by the person."""

    key: int
    star_name: str
    purpose: str
    began_utc_s: float
    ended_utc_s: float | None
    is_discarded: bool
    leg: Leg


@dataclass(frozen=True, eq=False)
class AxisState:
    """The legs between two turns of the bolts."""

    key: int
    began_utc_s: float
    legs: tuple[WatchedLeg, ...]


@dataclass(frozen=True, eq=False)
class Entry:
    """Anything else of a night. `kind`: one of `Kind`, or of a later version's."""

    key: int
    kind: str
    utc_s: float
    content: Mapping[str, Any]
    attachment: bytes | None = None


@dataclass(frozen=True, eq=False)
class NightRecord:
    """A night; None for what was never said. Keys are random and the same wherever it is kept."""

    key: int
    started_utc_s: float
    active_utc_s: float
    site: Site | None
    air: Air | None
    aim_name: str | None
    target_arcmin: float | None
    axis_states: tuple[AxisState, ...]
    entries: tuple[Entry, ...]

    @property
    def legs(self) -> Iterator[WatchedLeg]:
        """All legs in the order they were begun."""
        return (leg for state in self.axis_states for leg in state.legs)

    def of_kind(self, kind: Kind) -> tuple[Entry, ...]:
        """Its entries of a kind, in order of time."""
        found = [entry for entry in self.entries if entry.kind == kind]
        return tuple(sorted(found, key=lambda entry: entry.utc_s))
