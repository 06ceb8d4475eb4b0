"""What the Tracking page gets from the rest of the program."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Protocol

import numpy as np
from numpy.typing import NDArray

from app.night.budget import telescopes_and_cameras
from app.night.recorder import EntryLog
from app.pages.tracking.figures import USUAL, Figures
from core.alignment.driftlog.records import Leg
from core.mount.equipment import ImpossibleValue
from core.night.record import Entry, Kind, LegPurpose
from core.tracking.guiding import image_motion_arcsec

if TYPE_CHECKING:
    from app.night.budget import Budget
    from app.night.equipment import Equipment
    from app.night.recorder import RunRecorder
    from app.store.records import StoredLeg
    from core.imaging.task import Optics


Floats = NDArray[np.float64]


class TrackingLog(EntryLog, Protocol):
    """Where runs and results are kept; the log of nights is one."""

    def get_setting(self, key: str, default: Any = None) -> Any: ...

    def put_setting(self, key: str, value: Any) -> None: ...

    def add_leg(
        self, label: str, star_name: str, ra_deg: float, dec_deg: float, purpose: str = ...
    ) -> int: ...

    def add_samples(
        self,
        leg_id: int,
        utc_s: Floats,
        north_arcsec: Floats,
        east_arcsec: Floats | None = None,
        sigma_arcsec: Floats | None = None,
    ) -> None: ...

    def end_leg(self, leg_id: int) -> None: ...

    def discard_leg(self, leg_id: int) -> None: ...


@dataclass(frozen=True, eq=False)
class LiveParts:
    """`interrupted`: the run that was being recorded when the program ended, to go on with."""

    recorder: RunRecorder
    interrupted: StoredLeg | None = None


@dataclass(frozen=True)
class TrackingParts:
    """`now`: seconds since 1970-01-01 UTC. `earlier`: the last run of this night, to go on with.
    `live`: how runs are recorded here, None where they cannot be. `budget` and `equipment`:
    tonight's exposure and what it is taken with. `guided` and `entries`: the last guiding of this
    night, and what was said of it.
    """

    now: Callable[[], float]
    log: TrackingLog
    earlier: StoredLeg | None = None
    budget: Budget | None = None
    equipment: Equipment | None = None
    live: LiveParts | None = None
    guided: StoredLeg | None = None
    entries: Sequence[Entry] = ()

    def usual(self) -> Figures:
        """What stands for figures that are not typed: those of tonight's exposure."""
        if self.budget is None:
            return USUAL
        wanted, optics = self.budget.wanted, self.optics()
        planned = Figures(
            scale_arcsec_per_px=None if optics is None else optics.scale_arcsec_per_px,
            allowed_px=wanted.limit_px,
            exposure_s=wanted.exposure_s,
            declination_deg=wanted.declination_deg,
            seeing_arcsec=wanted.seeing_arcsec,
        )
        return planned.over(USUAL)

    def optics(self) -> Optics | None:
        """The telescope and camera of tonight's exposure, None where they are not known."""
        if self.budget is None:
            return None
        try:
            return self.budget.optics()
        except (ImpossibleValue, ValueError):
            return None

    def air_motion_arcsec(self, seeing_arcsec: float | None) -> float | None:
        """How far the air moves a star in one axis of tonight's telescope, in short exposures."""
        if self.budget is None or self.equipment is None or seeing_arcsec is None:
            return None
        telescopes, _ = telescopes_and_cameras(self.budget.wanted, self.equipment)
        if not telescopes or telescopes[0].aperture_mm is None:
            return None
        return image_motion_arcsec(seeing_arcsec, telescopes[0].aperture_mm / 1000.0)

    def keep_run(self, leg: Leg, purpose: LegPurpose = LegPurpose.TRACKING) -> int:
        """Key under which the log keeps it."""
        key = self.log.add_leg(leg.label, "", leg.ra_deg, leg.dec_deg, purpose)
        self.log.add_samples(key, leg.utc_s, leg.north_arcsec, leg.east_arcsec, leg.sigma_arcsec)
        self.log.end_leg(key)
        return key

    def keep_result(self, content: Mapping[str, Any]) -> None:
        self.log.put_entry(Kind.TRACKING, content)
