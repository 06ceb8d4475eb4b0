"""A leg made ready for the solution: its star's path, gusts set aside, steps found, groups made."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.alignment.driftlog import Leg
from core.alignment.groups import Groups, group
from core.alignment.gusts import set_aside
from core.alignment.steps import Step, find_breaks, measure
from core.alignment.track import Path, Track
from core.sky.site import Air, Site

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class PreparedLeg:
    """`kept` (n,) flags the readings used; `steps` lie between the groups' pieces."""

    leg: Leg
    track: Track
    kept: NDArray[np.bool_]
    groups: Groups
    path: Path  # at the groups
    steps: tuple[Step, ...] = ()

    @classmethod
    def of(cls, leg: Leg, site: Site, air: Air) -> PreparedLeg:
        """Gusts set aside; steps wait until the drift is roughly known."""
        kept = ~set_aside(leg.utc_s, leg.north_arcsec)
        track, groups = Track.of(leg, site, air), group(leg, kept, ())
        return cls(leg, track, kept, groups, track.path(groups.utc_s))

    def with_steps(self, axis_rad: Floats) -> PreparedLeg:
        """Steps found in what the drift of this axis leaves over."""
        predicted = self.track.north_arcsec(self.leg.utc_s, axis_rad)
        breaks = find_breaks(self.leg, self.kept, predicted)
        if not breaks:
            return self
        steps = measure(self.leg, self.kept, predicted, breaks)
        groups = group(self.leg, self.kept, breaks)
        return replace(self, groups=groups, path=self.track.path(groups.utc_s), steps=steps)
