"""A leg made ready for the solution: its star's path, gusts set aside, steps found, groups made."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.alignment.axis.nuisances import nuisance_columns
from core.alignment.axis.priors import Priors
from core.alignment.axis.readingstep import (
    FEWEST_READINGS,
    NEVER_CHANGED_ARCSEC,
    reading_step_arcsec,
)
from core.alignment.driftlog import Leg
from core.alignment.groups import Groups, group
from core.alignment.gusts import set_aside
from core.alignment.steps import Step, find_breaks, measure
from core.alignment.track import Path, Track
from core.sky.site import Air, Site

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class PreparedLeg:
    """`kept` (n,) flags the readings used; `steps` lie between the groups' pieces.

    `reading_step_arcsec`: the division to which it was read, 0 where there is none to speak of.
    """

    leg: Leg
    track: Track
    kept: NDArray[np.bool_]
    groups: Groups
    path: Path  # at the groups
    reading_step_arcsec: float = 0.0
    steps: tuple[Step, ...] = ()

    @classmethod
    def of(cls, leg: Leg, site: Site, air: Air, reading_step_arcsec: float = 0.0) -> PreparedLeg:
        """Gusts set aside; steps wait until the drift is roughly known."""
        kept = ~set_aside(leg.utc_s, leg.north_arcsec, reading_step_arcsec)
        track, groups = Track.of(leg, site, air), group(leg, kept, ())
        return cls(leg, track, kept, groups, track.path(groups.utc_s), reading_step_arcsec)

    def with_steps(self, axis_rad: Floats, priors: Priors) -> PreparedLeg:
        """Steps found in what the drift of this axis and the nuisances leave over."""
        predicted = self.track.north_arcsec(self.leg.utc_s, axis_rad)

        def nuisances(groups: Groups) -> Floats:
            return nuisance_columns(groups, self.track.path(groups.utc_s), axis_rad, priors)

        breaks = find_breaks(self.leg, self.kept, predicted, self.reading_step_arcsec, nuisances)
        if not breaks:
            return self
        steps = measure(self.leg, self.kept, predicted, breaks, nuisances)
        groups = group(self.leg, self.kept, breaks)
        return replace(self, groups=groups, path=self.track.path(groups.utc_s), steps=steps)


def _may_be_rounded(leg: Leg) -> bool:
    """A few readings show no division, and what is stated of their error then has to do."""
    return leg.sigma_arcsec is None or leg.utc_s.size >= FEWEST_READINGS


def reading_steps_arcsec(legs: Sequence[Leg], priors: Priors) -> list[float]:
    """The division each leg was read to: as stated, else as found in its readings.

    Where a leg never changed, the coarsest of the others tells, else the usual reticle.
    """
    if priors.reading_step_arcsec is not None:
        return [priors.reading_step_arcsec] * len(legs)
    found = [reading_step_arcsec(leg.north_arcsec) if _may_be_rounded(leg) else 0.0 for leg in legs]
    told = [step for step in found if step is not None]
    otherwise = max(told) if told and max(told) > 0.0 else NEVER_CHANGED_ARCSEC
    return [otherwise if step is None else step for step in found]
