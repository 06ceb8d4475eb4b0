"""The part of the smear that belongs to the polar axis, from the budget's own exact trails."""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from core.alignment.budget.alignment import Alignment
from core.alignment.budget.curve import smear_curve
from core.alignment.budget.field import Exposures
from core.alignment.budget.task import Task, Vantage
from core.alignment.geometry import SIDEREAL_RATE_RAD_PER_S, offsets_arcsec
from core.tracking.smear import SteadyDrift

_PROBE_S = 60.0


def polar_part(task: Task, vantage: Vantage, alignment: Alignment) -> SteadyDrift:
    """Steady drift for the exposures of `task`, the worst of its span of hour angles.

    Unguided, the centre of the field drifts east and north; guided, the field turns about the guide
    star and the farthest corner moves. Raises `UnusableTask` when the target is not up.
    """
    probe = replace(task, exposure_s=min(task.exposure_s, 5.0 * _PROBE_S))
    if task.is_guided:
        curve = smear_curve(probe, vantage, alignment.axis_rad, [probe.exposure_s])
        corner_arcsec = float(curve.corner_px[0]) * task.optics.scale_arcsec_per_px
        return SteadyDrift(corner_arcsec_per_min=corner_arcsec * 60.0 / probe.exposure_s)
    return _centre_drift(probe, vantage, alignment)


def _centre_drift(task: Task, vantage: Vantage, alignment: Alignment) -> SteadyDrift:
    exposures = Exposures.over_span(task, vantage)
    axis = alignment.axis_rad
    turn = SIDEREAL_RATE_RAD_PER_S * task.exposure_s
    drifts = []
    for start in exposures.hour_angle_rad.tolist():
        north, east = offsets_arcsec(
            np.array([start, start + turn]),
            float(exposures.declination_rad[0]),
            vantage.latitude_rad,
            float(axis[0]),
            float(axis[1]),
            vantage.refraction,
        )
        # A mount run at another rate falls behind the stars: they are seen to move west.
        lag = (task.tracking_rate - 1.0) * turn * 206264.806 * np.cos(exposures.declination_rad[0])
        drifts.append((float(east[1]) + float(lag), float(north[1])))
    worst = max(drifts, key=lambda drift: float(np.hypot(*drift)))
    per_minute = 60.0 / task.exposure_s
    return SteadyDrift(worst[0] * per_minute, worst[1] * per_minute)
