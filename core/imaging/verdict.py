"""Is the alignment as it stands good enough: the smear it leaves on the sensor, with its ±."""

from __future__ import annotations

from dataclasses import dataclass, replace
from enum import Enum

import numpy as np
from numpy.typing import NDArray

from core.imaging.task import Exposures, Task, Vantage
from core.imaging.tolerance import Alignment
from core.imaging.trail import Trails, Watched
from core.imaging.words import between, exposures_at, near
from core.language import say

Floats = NDArray[np.float64]

_DERIVATIVE_STEP_RAD = 1e-4
_FEWER = 4  # samples of the axis where each has its own worst guide star


class Grade(Enum):
    """What can be said of the smear against its limit."""

    GOOD_ENOUGH = "good enough"
    NOT_GOOD_ENOUGH = "not good enough"
    NOT_CLEAR_YET = "not clear yet"
    UNKNOWN = "unknown"


@dataclass(frozen=True)
class SmearShare:
    """Smear in one exposure at one place of the field, pixels, worst of the span.

    `low_px` to `high_px` is its 95 % interval from the alignment's ±. `azimuth_px`, `altitude_px`
    and `air_px` are what the two axis errors and the air (with the tracking rate) do each on its
    own; they point in different directions and do not add up as numbers.
    """

    total_px: float
    low_px: float
    high_px: float
    azimuth_px: float
    altitude_px: float
    air_px: float


@dataclass(frozen=True)
class Smear:
    """The verdict. `centre` and `corner` are None when the alignment is not known."""

    grade: Grade
    centre: SmearShare | None
    corner: SmearShare | None
    limit_px: float
    worst_hour_angle_deg: float | None  # of the exposure's beginning
    sentence: str


def judge(task: Task, vantage: Vantage, alignment: Alignment | None) -> Smear:
    """Judge an alignment for a task. Raises `UnusableTask` when the target is not up."""
    exposures = Exposures.over_span(task, vantage)
    if alignment is None:
        text = say("Smear cannot be told: the legs do not fix both errors of the axis yet.")
        return Smear(Grade.UNKNOWN, None, None, task.limit_px, None, text)
    watched = Watched(exposures, task, vantage)
    here = watched.trails(alignment.axis_rad)
    centre, corner = _shares(watched, here, alignment)
    worst = int(np.argmax(here.smear_px()[1]))
    hour_angle_deg = float(np.rad2deg(exposures.hour_angle_rad[worst]))
    grade = _grade(centre, corner, task.limit_px)
    sentence = _sentence(task, grade, centre, corner)
    return Smear(grade, centre, corner, task.limit_px, hour_angle_deg, sentence)


def _shares(watched: Watched, here: Trails, alignment: Alignment) -> tuple[SmearShare, SmearShare]:
    """At the centre and at the worst corner."""
    axis = alignment.axis_rad
    azimuth, altitude = (_own(watched, axis * part) for part in np.eye(2))
    possible = _over_samples(watched, here, alignment)
    parts = (here, azimuth, altitude, watched.trails(np.zeros(2)))
    columns = [_worst(part) for part in parts]
    shares = []
    for place in range(2):
        total, *others = (column[place] for column in columns)
        low, high = np.quantile(possible[place], [0.025, 0.975])
        shares.append(SmearShare(total, min(float(low), total), max(float(high), total), *others))
    return shares[0], shares[1]


def _own(watched: Watched, axis_rad: Floats) -> Trails:
    """What this error of the axis adds to what the air does."""
    seen = watched.seen(axis_rad)
    return watched.trails_in(seen, axis_rad) - watched.trails_in(seen, np.zeros(2))


def _worst(part: Trails) -> list[float]:
    return [float(smear.max()) for smear in part.smear_px()]


def _over_samples(watched: Watched, here: Trails, alignment: Alignment) -> tuple[Floats, Floats]:
    """Worst smear (s,) at centre and corner over equally likely axis errors."""
    samples = alignment.samples_rad()
    if not watched.is_far(alignment.axis_rad):
        found = [_worst(watched.trails(axis)) for axis in samples[::_FEWER]]
        return np.array(found)[:, 0], np.array(found)[:, 1]
    apart = samples - alignment.axis_rad
    slopes = [_slope(watched, alignment.axis_rad, number) for number in range(2)]
    spread = replace(
        here,
        centre=_displaced(here.centre, [slope.centre for slope in slopes], apart),
        corner=_displaced(here.corner, [slope.corner for slope in slopes], apart),
    )
    centre, corner = spread.smear_px()
    count = apart.shape[0]
    return centre.reshape(count, -1).max(axis=1), corner.reshape(count, -1).max(axis=1)


def _slope(watched: Watched, axis_rad: Floats, number: int) -> Trails:
    """Derivative of the trails, pixels per radian of one axis error."""
    step, seen = _DERIVATIVE_STEP_RAD * np.eye(2)[number], watched.seen(axis_rad)
    beyond, before = (watched.trails_in(seen, axis_rad + side * step) for side in (1.0, -1.0))
    return (beyond - before).times(0.5 / _DERIVATIVE_STEP_RAD)


def _displaced(trail: Floats, slopes: list[Floats], apart: Floats) -> Floats:
    """Trails (s·n, m, k, 2) for axis errors displaced by `apart` (s, 2), every other instant."""
    coarse = trail[:, :, ::2]
    moved = coarse + np.tensordot(apart, np.stack([slope[:, :, ::2] for slope in slopes]), (1, 0))
    return np.reshape(moved, (-1, *coarse.shape[1:]))


def _grade(centre: SmearShare, corner: SmearShare, limit_px: float) -> Grade:
    if max(centre.high_px, corner.high_px) <= limit_px:
        return Grade.GOOD_ENOUGH
    if max(centre.low_px, corner.low_px) > limit_px:
        return Grade.NOT_GOOD_ENOUGH
    return Grade.NOT_CLEAR_YET


def _sentence(task: Task, grade: Grade, centre: SmearShare, corner: SmearShare) -> str:
    is_corner = corner.total_px >= centre.total_px
    smear, share = (say("corner smear"), corner) if is_corner else (say("centre smear"), centre)
    what, limit = exposures_at(task), task.limit_px
    size = near(share.total_px, task.limit_px)
    if grade is Grade.GOOD_ENOUGH:
        return say(
            "Good enough for {what}: {smear} {size} (budget {limit:g}).",
            what=what,
            smear=smear,
            size=size,
            limit=limit,
        )
    if grade is Grade.NOT_CLEAR_YET:
        span = between(share.low_px, share.high_px)
        return say(
            "Not clear yet for {what}: {smear} {span} (budget {limit:g}); watch longer.",
            what=what,
            smear=smear,
            span=span,
            limit=limit,
        )
    return say(
        "Not good enough for {what}: {smear} {size} (budget {limit:g}); {blame}.",
        what=what,
        smear=smear,
        size=size,
        limit=limit,
        blame=_blame(task, share),
    )


def _blame(task: Task, share: SmearShare) -> str:
    """Which part is the largest, and so what to do."""
    parts = {"azimuth": share.azimuth_px, "altitude": share.altitude_px, "air": share.air_px}
    largest = max(parts, key=parts.__getitem__)
    if largest == "air":
        if task.is_guided:
            return say("the air's refraction does most of it: expose shorter")
        return say("the air's refraction does most of it: expose shorter or guide")
    if largest == "azimuth":
        return say("the azimuth error does most of it")
    return say("the altitude error does most of it")
