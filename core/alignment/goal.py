"""Where the axis is brought to, which pole or between them, and how close is close enough."""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum

from core.finding import Code, Finding

# Where the axis is brought to: one of the poles, or a place between them.


class Aim(Code):
    """The true (geometric) pole, the one the air lifts it to, or quarters of the way between.

    The poles lie about an arcminute apart, so a quarter is finer than any alignment.
    """

    TRUE_POLE = "true pole"
    QUARTER_UP = "place a quarter of the way from the true to the refracted pole"
    HALFWAY = "place halfway between the true and the refracted pole"
    THREE_QUARTERS_UP = "place three quarters of the way from the true to the refracted pole"
    REFRACTED_POLE = "refracted pole"

    @property
    def share(self) -> float:
        """Share of the refraction of the pole by which the aim lies above the true pole."""
        return _SHARES[self]

    @classmethod
    def nearest(cls, share: float) -> Aim:
        """The aim whose share is nearest."""
        return min(cls, key=lambda aim: abs(aim.share - share))


_SHARES = {aim: quarter / 4.0 for quarter, aim in enumerate(Aim)}


# What the axis is to reach tonight, and what may be claimed of the side it is on.

# What the axis is to reach tonight, where that figure is from, and when it counts as reached.

USUAL_ARCMIN = 1.0
SURE = 0.97  # chance from which on the axis counts as within
HARDLY = 0.025  # chance below which it counts as beyond


class Origin(Code):
    """Who has set the figure; the first that is there holds."""

    TYPED = "set by you"
    BUDGET = "from tonight's budget"
    USUAL = "the usual figure"


class GoalReason(Code):
    """Where a figure is from that no budget gave."""

    TYPED = "typed"
    USUAL = "usual"


class Reached(Code):
    """The one verdict of the whole program on the axis against its goal."""

    WITHIN = "within"
    NOT_CLEAR = "not clear yet"
    BEYOND = "beyond"


@dataclass(frozen=True)
class Goal:
    """`arcmin` on the sky from the place aimed at; `reason` tells where the figure is from."""

    arcmin: float
    origin: Origin
    reason: Finding | str


@dataclass(frozen=True)
class Allowed:
    """The budget's verdict: the largest error it allows, and for what, in a sentence."""

    arcmin: float
    sentence: str


def goal_of(typed_arcmin: float | None, allowed: Allowed | None) -> Goal:
    """The person's own figure until it is cleared, else the budget's, else the usual one."""
    if typed_arcmin is not None:
        return Goal(typed_arcmin, Origin.TYPED, Finding.of(GoalReason.TYPED, goal=typed_arcmin))
    if allowed is not None:
        return Goal(allowed.arcmin, Origin.BUDGET, allowed.sentence)
    return Goal(USUAL_ARCMIN, Origin.USUAL, Finding.of(GoalReason.USUAL, goal=USUAL_ARCMIN))


def reached(chance_within: float) -> Reached:
    """From the chance that the axis lies within the goal."""
    if chance_within >= SURE:
        return Reached.WITHIN
    return Reached.BEYOND if chance_within <= HARDLY else Reached.NOT_CLEAR


# On which side of the aim the axis lies: what may be claimed, and what only supposed.

# Chance that the wrong side is claimed, even with the axis exactly on its aim: one in two thousand,
# 3.3 standard deviations of a normal distribution.
WRONG_SIDE = 4.8e-4
NORMAL_95 = 1.959964


class SideConfidence(Enum):
    """How much is said of the side."""

    SURE = "sure"
    PROBABLE = "probable"
    OPEN = "open"


def side_confidence(
    error_arcmin: float, half_width_arcmin: float, interval_factor: float = NORMAL_95
) -> SideConfidence:
    """Of an error with its 95 % half-width, which is `interval_factor` standard deviations."""
    if abs(error_arcmin) > sure_half_widths(interval_factor) * half_width_arcmin:
        return SideConfidence.SURE
    return SideConfidence.PROBABLE if abs(error_arcmin) > half_width_arcmin else SideConfidence.OPEN


def sure_half_widths(interval_factor: float) -> float:
    """From how many half-widths on a side is sure: few readings have longer tails (Student's t)."""
    from scipy.special import ndtri, stdtridf, stdtrit  # here: the first window must not wait

    if interval_factor < NORMAL_95 + 1e-4:
        return float(-ndtri(WRONG_SIDE)) / NORMAL_95
    freedom = stdtridf(0.975, interval_factor)
    return float(stdtrit(freedom, 1.0 - WRONG_SIDE)) / interval_factor
