"""What a picture of the sky above shows."""

from __future__ import annotations

from dataclasses import dataclass, field
from enum import Enum

import numpy as np
from numpy.typing import NDArray

from app.widgets.contours import Contour
from app.widgets.skyview import FROM_ZENITH_DEG
from core.sky.horizon import Horizon

Floats = NDArray[np.float64]


class Sign(Enum):
    """How a place is marked."""

    STAR = "star"
    DIAMOND = "diamond"
    RING = "ring"
    DOT = "dot"


@dataclass(frozen=True)
class SkyMark:
    azimuth_deg: float
    altitude_deg: float
    words: str = ""
    sign: Sign = Sign.DOT
    is_loud: bool = False


@dataclass(frozen=True, eq=False)
class SkyPath:
    """A way over the sky, (n,) degrees, in order of time; an arrow tells which way."""

    azimuth_deg: Floats
    altitude_deg: Floats


@dataclass(frozen=True, eq=False)
class SkyZone:
    """An area that a mount cannot reach: its outline (n,), degrees."""

    azimuth_deg: Floats
    altitude_deg: Floats
    words: str


@dataclass(frozen=True, eq=False)
class DomePicture:
    """`bands` (n, n) as `app.widgets.contours` makes them, or None. `rings_deg`: altitudes."""

    rim_deg: float = FROM_ZENITH_DEG
    rings_deg: tuple[float, ...] = (0.0, 30.0, 60.0)
    contours: tuple[Contour, ...] = ()
    bands: Floats | None = None
    horizon: Horizon = field(default_factory=Horizon.flat)
    path: SkyPath | None = None
    marks: tuple[SkyMark, ...] = ()
    zone: SkyZone | None = None
