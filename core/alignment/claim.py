"""On which side of the aim the axis lies: what may be claimed, and what only supposed."""

from __future__ import annotations

from enum import Enum

# 3.3 standard deviations against the 1.96 of a 95 % half-width: chance brings that to the wrong
# side once in two thousand times, even with the axis exactly on its aim.
SURE_HALF_WIDTHS = 3.3 / 1.96


class Claim(Enum):
    """How much is said of the side."""

    SURE = "sure"
    PROBABLE = "probable"
    OPEN = "open"


def claim(error_arcmin: float, half_width_arcmin: float) -> Claim:
    """Of an error with its 95 % half-width."""
    if abs(error_arcmin) > SURE_HALF_WIDTHS * half_width_arcmin:
        return Claim.SURE
    return Claim.PROBABLE if abs(error_arcmin) > half_width_arcmin else Claim.OPEN
