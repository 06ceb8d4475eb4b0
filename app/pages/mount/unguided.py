"""How long one may expose without guiding, for a given error of the axis."""

from __future__ import annotations

import numpy as np

from core.imaging.task import Optics, Target, Task, UnusableTask, Vantage
from core.imaging.tolerance import longest_exposure
from core.language import say
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD

EQUATOR = Target(0.0, -45.0, 45.0)


def longest_unguided(
    optics: Optics, site: Site, air: Air, target: Target, error_arcmin: float, limit_px: float
) -> str:
    """A sentence, for the worse of the two directions in which the axis may be off."""
    where = target.name or say("declination {declination:g}°", declination=target.declination_deg)
    try:
        task = Task(target, optics, 1.0, limit_px=limit_px)
        vantage = Vantage.of(site, air)
        axes = np.eye(2) * error_arcmin / ARCMIN_PER_RAD
        found = [longest_exposure(task, vantage, axis) for axis in axes]
    except UnusableTask as reason:
        return f"{say('The longest exposure cannot be told.')} {reason}"
    shortest = min(found, key=lambda one: one.seconds)
    told = say("Unguided, {where}, the axis {error:g}′ off.", where=where, error=error_arcmin)
    return f"{told} {shortest.sentence}"
