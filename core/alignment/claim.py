"""On which side of the aim the axis lies: what may be claimed, and what only supposed."""

from __future__ import annotations

from enum import Enum

# Chance that the wrong side is claimed, even with the axis exactly on its aim: one in two thousand,
# 3.3 standard deviations of a normal distribution.
WRONG_SIDE = 4.8e-4
NORMAL_95 = 1.959964


class Claim(Enum):
    """How much is said of the side."""

    SURE = "sure"
    PROBABLE = "probable"
    OPEN = "open"


def claim(
    error_arcmin: float, half_width_arcmin: float, interval_factor: float = NORMAL_95
) -> Claim:
    """Of an error with its 95 % half-width, which is `interval_factor` standard deviations."""
    if abs(error_arcmin) > sure_half_widths(interval_factor) * half_width_arcmin:
        return Claim.SURE
    return Claim.PROBABLE if abs(error_arcmin) > half_width_arcmin else Claim.OPEN


def sure_half_widths(interval_factor: float) -> float:
    """From how many half-widths on a side is sure: few readings have longer tails (Student's t)."""
    from scipy.special import ndtri, stdtridf, stdtrit  # here: the first window must not wait

    if interval_factor < NORMAL_95 + 1e-4:
        return float(-ndtri(WRONG_SIDE)) / NORMAL_95
    freedom = stdtridf(0.975, interval_factor)
    return float(stdtrit(freedom, 1.0 - WRONG_SIDE)) / interval_factor
