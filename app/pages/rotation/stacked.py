"""The series of exposures on the Field rotation page, and what is left when they are stacked."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from app.pages.rotation.question import Question
from core.imaging.rotation import Track, rotation_span_deg, track
from core.imaging.rotationexposure import (
    CommonField,
    exposure_count,
    longest_s,
    smear_px,
    stacked_field,
)
from core.language import say
from core.sky.targets import Target

Floats = NDArray[np.float64]

MOST = 20_000  # exposures; more than any night holds of any length worth stacking
MOST_EDGES = 720  # frames that enter the drawing; from one to the next the field turns by little
SHORTEST_S = 1e-3
_SAMPLES = 2000
_FINEST_S = 2.0
_ROUNDS = 12
_LONGEST_SPAN_S = 86_400.0


@dataclass(frozen=True, eq=False)
class Stacked:
    """`count` exposures of `exposure_s` from `begin_utc_s` to `end_utc_s`.

    `smear_px`: the worst in the corner of any one. `hidden_utc_s`: from when on the target is not
    seen, None when it is seen throughout. `problem`: a sentence instead of it all, else empty.
    """

    exposure_s: float = 0.0
    count: int = 0
    begin_utc_s: float = 0.0
    end_utc_s: float = 0.0
    smear_px: float = 0.0
    field: CommonField | None = None
    hidden_utc_s: float | None = None
    problem: str = ""


def stacked(asked: Question, target: Target, begin_utc_s: float, allowed_deg: float) -> Stacked:
    """The series on a fixed target from a moment on."""
    plan = asked.stack
    total_s = 60.0 * plan.total_min
    exposure = plan.exposure_s
    if np.isnan(exposure):
        exposure = _longest_throughout(asked, target, begin_utc_s, allowed_deg)
    count = exposure_count(total_s, exposure)
    if count > MOST:
        return Stacked(
            problem=say(
                "That would be {count:,} exposures: the field turns too fast on the way, or the "
                "exposure is too short. Pick another moment, take less exposure in all, or give "
                "the length of one exposure.",
                count=count,
            )
        )
    steps = np.arange(count, dtype=np.float64)
    begins: Floats = begin_utc_s + (exposure + plan.between_s) * steps
    return _worked_out(asked, target, begins, exposure)


def _worked_out(asked: Question, target: Target, begins: Floats, exposure_s: float) -> Stacked:
    begin, end = float(begins[0]), float(begins[-1]) + exposure_s
    path = _path(asked, target, begin, end)
    series = np.stack([begins, begins + exposure_s], axis=1)
    every = max(1, -(-len(series) // MOST_EDGES))
    turned = rotation_span_deg(_track(asked, target, begins), exposure_s)
    return Stacked(
        exposure_s=exposure_s,
        count=len(begins),
        begin_utc_s=begin,
        end_utc_s=end,
        smear_px=float(np.max(smear_px(asked.frame, turned))),
        field=stacked_field(asked.frame, path, np.concatenate([series[::every], series[-1:]])),
        hidden_utc_s=_hidden_utc_s(asked, path),
    )


def _longest_throughout(
    asked: Question, target: Target, begin_utc_s: float, allowed_deg: float
) -> float:
    """What keeps the limit at every moment of the series: the shorter, the later it ends."""
    plan = asked.stack
    total_s = 60.0 * plan.total_min
    exposure, span_s = np.inf, total_s
    for _ in range(_ROUNDS):
        path = _path(asked, target, begin_utc_s, begin_utc_s + span_s)
        shortest = _rounded_down(float(np.min(longest_s(path, allowed_deg))))
        if shortest >= exposure:
            break
        exposure = shortest
        span_s = min(total_s + plan.between_s * total_s / exposure, _LONGEST_SPAN_S)
    return float(exposure)


def _rounded_down(seconds: float) -> float:
    """To two figures: nobody sets 17.38 seconds, and a limit must not be stretched."""
    size = max(seconds, SHORTEST_S)
    unit = 10.0 ** (np.floor(np.log10(size)) - 1.0)
    return float(np.floor(size / unit + 1e-9) * unit)


def _path(asked: Question, target: Target, begin_utc_s: float, end_utc_s: float) -> Track:
    span = end_utc_s - begin_utc_s
    count = int(np.clip(span / _FINEST_S, 2, _SAMPLES))
    return _track(asked, target, np.linspace(begin_utc_s, end_utc_s, count))


def _track(asked: Question, target: Target, utc_s: Floats) -> Track:
    place = target.ra_deg, target.dec_deg
    return track(*place, asked.around.site, asked.around.air, utc_s)


def _hidden_utc_s(asked: Question, path: Track) -> float | None:
    limit = np.maximum(asked.around.horizon.limit_deg(path.azimuth_deg), 0.0)
    hidden = np.flatnonzero(path.altitude_deg <= limit)
    return float(path.utc_s[hidden[0]]) if hidden.size else None
