"""What the Budget page asks of the computation, and what comes back; runs beside the window."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray

from core.alignment.drift.geometry import observed_direction
from core.alignment.goal import Aim
from core.imaging.skymap import SmearMap, sky_map
from core.imaging.task import LONGEST_EXPOSURE_S, Task, UnusableTask, Vantage
from core.imaging.tolerance import (
    Alignment,
    BestAim,
    LongestExposure,
    SmearCurve,
    Tolerance,
    best_aim,
    longest_exposure,
    smear_curve,
    tolerance,
)
from core.imaging.verdict import Smear, judge
from core.imaging.words import arc
from core.language import say
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD

if TYPE_CHECKING:
    from core.alignment.axis.solution import Solution

Floats = NDArray[np.float64]

LOOKED_AT = 40  # lengths of exposure on the curve
TIMES_LONGER = 3.0  # than the exposure, the curve goes on
TRACK_POINTS = 25
UNLIMITED_ARCMIN = 600.0


class Axis(Enum):
    """Which error of the axis map and curve are drawn for."""

    SOLVED = "solved"
    EDGE = "edge"
    TYPED = "typed"


@dataclass(frozen=True, eq=False)
class BudgetQuestion:
    """`typed_arcmin`: azimuth and altitude error from the true pole."""

    task: Task
    site: Site
    air: Air
    aim: Aim
    solution: Solution | None
    axis: Axis
    typed_arcmin: tuple[float, float]


@dataclass(frozen=True, eq=False)
class BudgetAnswer:
    """`track`: azimuth and altitude, degrees, over the span. `axis_words`: what is drawn."""

    task: Task
    tolerance: Tolerance
    best: BestAim
    smear: Smear
    longest: LongestExposure
    curve: SmearCurve
    sky: SmearMap
    track: list[tuple[float, float]]
    axis_words: str


def work_out(question: BudgetQuestion) -> BudgetAnswer | str:
    """All answers, or the sentence that says why there are none."""
    try:
        return _answered(question)
    except UnusableTask as reason:
        return str(reason)


def _answered(question: BudgetQuestion) -> BudgetAnswer:
    task, vantage = question.task, Vantage.of(question.site, question.air)
    lift = question.aim.share * vantage.pole_lift_rad
    allowed = tolerance(task, vantage, lift, str(question.aim))
    alignment = None if question.solution is None else Alignment.of(question.solution)
    axis, words = _axis(question, allowed, alignment, lift)
    last = min(TIMES_LONGER * task.exposure_s, LONGEST_EXPOSURE_S)
    return BudgetAnswer(
        task=task,
        tolerance=allowed,
        best=best_aim(task, vantage),
        smear=judge(task, vantage, alignment),
        longest=longest_exposure(task, vantage, axis),
        curve=smear_curve(task, vantage, axis, np.linspace(last / LOOKED_AT, last, LOOKED_AT)),
        sky=sky_map(task, vantage, axis),
        track=_track(task, vantage),
        axis_words=words,
    )


def _axis(
    question: BudgetQuestion, allowed: Tolerance, alignment: Alignment | None, lift_rad: float
) -> tuple[Floats, str]:
    """Azimuth and altitude error (2,), radians, and what they are called."""
    if question.axis is Axis.SOLVED and alignment is not None:
        return alignment.axis_rad, say("for the axis as solved now")
    if question.axis is Axis.TYPED:
        azimuth, altitude = question.typed_arcmin
        words = say(
            "for an axis {azimuth:g}′ off in azimuth and {altitude:g}′ in altitude",
            azimuth=azimuth,
            altitude=altitude,
        )
        return np.array([azimuth, altitude]) / ARCMIN_PER_RAD, words
    size = min(allowed.azimuth_arcmin, UNLIMITED_ARCMIN)
    if allowed.possible:
        words = say("for an axis {size} off in azimuth, the most that is allowed", size=arc(size))
    else:
        words = say("for an axis exactly on the {aim}", aim=question.aim)
    return np.array([size / ARCMIN_PER_RAD, lift_rad]), words


def _track(task: Task, vantage: Vantage) -> list[tuple[float, float]]:
    """Where the target goes during the span."""
    target = task.target
    hours = np.linspace(target.first_hour_angle_deg, target.last_hour_angle_deg, TRACK_POINTS)
    seen = observed_direction(
        np.deg2rad(hours),
        math.radians(target.declination_deg),
        vantage.latitude_rad,
        vantage.refraction,
    )
    azimuth = np.rad2deg(np.arctan2(seen[:, 1], seen[:, 0])) % 360.0
    altitude = np.rad2deg(np.arcsin(np.clip(seen[:, 2], -1.0, 1.0)))
    return list(zip(azimuth.tolist(), altitude.tolist(), strict=True))
