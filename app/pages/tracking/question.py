"""What the Tracking page knows, as it is handed to the thread that works it out."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from app.pages.tracking.figures import Figures
from core.alignment.driftlog.records import Leg
from core.sky.site import Air, Site

if TYPE_CHECKING:
    from core.alignment.axis.solution import Solution
    from core.imaging.task import Optics
    from core.imaging.tolerance import Alignment
    from core.tracking.pointing import Sighting

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class Place:
    """`alignment`: None while the axis is not known there."""

    site: Site
    air: Air
    alignment: Alignment | None = None

    def without_axis(self) -> Place:
        """For what was recorded when the axis stood nobody knows how."""
        return Place(self.site, self.air)


@dataclass(frozen=True, eq=False)
class Given:
    """Readings to look at. `origin`: where they come from, in words for the person. `place`: where
    they were taken, None when nobody knows. `is_practice`: invented, and in no report. `is_kept`:
    the log of nights has it already, `kept_as` under this key. `is_tonight`: the axis stood as it
    does now, as long as nobody has turned the bolts. `account`: which lines were left out, and why.
    """

    leg: Leg
    origin: str
    place: Place | None = None
    is_practice: bool = False
    is_kept: bool = False
    is_tonight: bool = False
    kept_as: int | None = None
    account: str = ""

    def placed(self, here: Place) -> Given:
        """With what is known of the place, and of the axis if it is the same; else as it is."""
        mine = self.place
        if self.is_practice:
            return self
        if mine is None:
            return replace(self, place=here if self.is_tonight else here.without_axis())
        if not self.is_tonight or mine.site != here.site or here.alignment is None:
            return self
        return replace(self, place=Place(mine.site, mine.air, here.alignment))


@dataclass(frozen=True, eq=False)
class Tap:
    """A record after a tap: seconds and offset (n,), any origin."""

    time_s: Floats
    offset_arcsec: Floats
    origin: str
    is_practice: bool = False


@dataclass(frozen=True, eq=False)
class Reversal:
    """Motion asked for since the reversal and motion seen (n,), arcsec."""

    asked_arcsec: Floats
    seen_arcsec: Floats


@dataclass(frozen=True, eq=False)
class Question:
    """`here`: tonight's place; `pointed_from`: where the stars were pointed at."""

    figures: Figures
    here: Place | None = None
    optics: Optics | None = None
    solution: Solution | None = None
    run: Given | None = None
    guided: Given | None = None
    reversal: Reversal | None = None
    sightings: tuple[Sighting, ...] = ()
    pointed_from: Place | None = None
    before: Tap | None = None
    after: Tap | None = None
