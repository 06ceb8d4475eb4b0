"""Readings of a watched star, gathered into legs."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class Leg:
    """One star watched without touching the bolts.

    `ra_deg`, `dec_deg`: ICRS place of the star at the time of the night. `utc_s` (n,): seconds
    since 1970-01-01 UTC, increasing. `north_arcsec` (n,): offset of the star relative to where
    the mount keeps pointing, north positive, from any origin fixed within the leg.
    `east_arcsec` (n,): likewise, right ascension times cos declination; absent where unread.
    `sigma_arcsec` (n,): stated reading error, one standard deviation; absent where unstated.
    """

    label: str
    ra_deg: float
    dec_deg: float
    utc_s: Floats
    north_arcsec: Floats
    east_arcsec: Floats | None = None
    sigma_arcsec: Floats | None = None
