"""The reading nearest to the pointer."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import UTC, datetime

import numpy as np

from app.widgets.driftseries import DriftSeries

AROUND = 200  # readings looked at on either side of the pointer's time
NEAR = 0.05  # of the picture's width and height together; farther off nothing is meant


@dataclass(frozen=True)
class PlotReading:
    """`index` within the leg; `time`: hours, minutes, seconds of UTC."""

    label: str
    index: int
    minutes: float
    arcsec: float
    time: str


def nearest(
    legs: Sequence[DriftSeries], minutes: float, arcsec: float, width: float, height: float
) -> PlotReading | None:
    """`width` in minutes and `height` in seconds of arc are those of the picture."""
    best, least = None, NEAR
    for leg in legs:
        middle = int(np.searchsorted(leg.minutes, minutes))
        part = slice(max(middle - AROUND, 0), middle + AROUND)
        far = np.hypot((leg.minutes[part] - minutes) / width, (leg.arcsec[part] - arcsec) / height)
        if len(far) and far.min() < least:
            least = float(far.min())
            best = reading_at(leg, part.start + int(far.argmin()))
    return best


def reading_at(leg: DriftSeries, at: int) -> PlotReading:
    """The reading of that index."""
    utc_s = leg.start_utc_s + 60.0 * float(leg.minutes[at])
    time = datetime.fromtimestamp(utc_s, UTC).strftime("%H:%M:%S")
    return PlotReading(leg.label, at, float(leg.minutes[at]), float(leg.arcsec[at]), time)
