"""Where the eyepiece of a Newtonian is through the session."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.imaging.rotation import Track
from core.night.darkness import Span
from core.night.eyepiece import EyepiecePath, Newtonian, Observer, best_turn_deg, eyepiece_path
from core.night.flip import FlipPlan, Side

Floats = NDArray[np.float64]

_STEP_S = 120.0


@dataclass(frozen=True, eq=False)
class EyeStudy:
    """At times (n,) of the session. `best_deg`: the turn in the rings that is in reach longest,
    with `best`, the path it gives.
    """

    utc_s: Floats
    path: EyepiecePath
    best_deg: float
    best: EyepiecePath


def eye_study(
    track: Track,
    session: Span,
    plan: FlipPlan | None,
    newtonian: Newtonian,
    observer: Observer,
) -> EyeStudy | None:
    """`plan`: of a German mount; None for a fork, whose tube has no offset. None for no time."""
    times = np.arange(session[0], session[1], _STEP_S)
    if times.size < 2:
        return None
    hour_angle = np.interp(times, track.utc_s, track.hour_angle_deg)
    tube = newtonian if plan is not None else replace(newtonian, tube_offset_m=0.0)
    where = hour_angle, track.declination_deg, track.site.latitude_deg
    sides = _sides(times, plan)
    turn = best_turn_deg(*where, tube, sides, observer)
    turned = replace(tube, turned_deg=turn)
    return EyeStudy(
        times,
        eyepiece_path(*where, tube, sides, observer),
        turn,
        eyepiece_path(*where, turned, sides, observer),
    )


def _sides(times: Floats, plan: FlipPlan | None) -> Floats:
    """+1 with the tube west of the pier, −1 east of it."""
    if plan is None or plan.begins_on is None:
        return np.ones_like(times)
    sides = np.full_like(times, 1.0 if plan.begins_on is Side.WEST else -1.0)
    for flip in plan.interruptions:
        sides[times >= flip.turns_utc_s] *= -1.0
    return sides
