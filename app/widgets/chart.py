"""What a chart of a round field shows: rings, stars and marks by clock angle and distance."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum


class Shape(Enum):
    """Each kind of spot has a shape of its own, so that colour need not tell them apart."""

    STAR = "star"  # a filled disc
    CROSS = "cross"  # an upright cross
    SALTIRE = "saltire"  # a cross on its side
    HOLLOW = "hollow"  # an open circle: here something belongs
    DIAMOND = "diamond"  # where the person has put something


@dataclass(frozen=True)
class Spot:
    """`clock_angle_deg` clockwise from 12; `size` is the radius in pixels at the usual text size.

    `words` stand beside it; `told` is read out for it, else `words`. `is_main`: in the accent.
    """

    clock_angle_deg: float
    distance_arcmin: float
    shape: Shape
    size: float = 5.0
    words: str = ""
    told: str = ""
    is_main: bool = False


@dataclass(frozen=True)
class Chart:
    """`radius_arcmin` of the field; `rings_arcmin` in it; `path`: a line through (clock angle,
    distance) places; `rim`: words just inside the edge, by clock angle.
    """

    radius_arcmin: float
    rings_arcmin: tuple[float, ...] = ()
    spots: tuple[Spot, ...] = ()
    path: tuple[tuple[float, float], ...] = ()
    rim: tuple[tuple[float, str], ...] = field(default=())


# Steps that divide a degree and an hour of arc well.
_STEPS_ARCMIN = (0.5, 1.0, 2.0, 5.0, 10.0, 15.0, 20.0, 30.0, 60.0, 120.0, 180.0, 300.0)


def rings(radius_arcmin: float) -> tuple[float, ...]:
    """One to three round distances within a radius."""
    step = next((step for step in _STEPS_ARCMIN if radius_arcmin / step <= 4.0), 600.0)
    return tuple(step * turn for turn in range(1, 4) if step * turn < 0.98 * radius_arcmin)


def arc_words(arcmin: float) -> str:
    """30 is "30′", 120 is "2°"."""
    return f"{arcmin / 60.0:g}°" if arcmin >= 60.0 and arcmin % 30.0 == 0.0 else f"{arcmin:g}′"


def star_size(magnitude: float) -> float:
    """Brighter stars are larger; the faintest of the table are still seen."""
    return max(1.6, 6.5 - 0.65 * (magnitude - 1.0))
