"""The readings a worm is fitted to: their pieces, their bins, their trend."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.tracking.bins import Bins, Counts

Floats = NDArray[np.float64]

_MOST_IN_SPECTRUM = 24_000  # bins
_SHORTEST_S = 6.0
_INTERVALS = 3.0  # readings in the shortest period shown
_BINS = 10.0  # bins in it where readings are gathered; a ninth of what is faster folds back


@dataclass(frozen=True, eq=False)
class Readings:
    """What is fitted: times and leads (n,), gathered into bins. `trend_order`: 1 line, 2 curve."""

    utc_s: Floats
    lead_arcsec: Floats
    bins: Bins
    trend_order: int

    @classmethod
    def of(cls, utc_s: Floats, lead_arcsec: Floats, piece: Counts, trend_order: int) -> Readings:
        """`piece` (n,) counts stretches with origins of their own."""
        _, consecutive = np.unique(piece, return_inverse=True)
        bins = Bins.of(utc_s, consecutive.astype(np.intp))
        return cls(utc_s, lead_arcsec, bins, trend_order)

    @property
    def epoch_s(self) -> float:
        """Middle of the run, where period and phases disturb each other least."""
        return 0.5 * float(self.utc_s[0] + self.utc_s[-1])

    @property
    def duration_s(self) -> float:
        """From the first reading to the last."""
        return float(self.utc_s[-1] - self.utc_s[0])

    def smooth_columns(self) -> Floats:
        """Origins and trend (k, pieces + order) at the bins."""
        place = (self.bins.utc_s - self.epoch_s) / (0.5 * self.duration_s)
        trend = [place**power for power in range(1, self.trend_order + 1)]
        return np.column_stack([self.bins.origins(), *trend])

    def smooth_part(self, smooth: Floats) -> Floats:
        """Origins and trend (n,) at every reading, of coefficients as of `smooth_columns`."""
        place = (self.utc_s - self.epoch_s) / (0.5 * self.duration_s)
        powers = np.arange(1, self.trend_order + 1)
        trend = (place[:, np.newaxis] ** powers) @ smooth[self.bins.pieces :]
        return np.asarray(smooth[self.piece()] + trend)

    def piece(self) -> Counts:
        """Piece (n,) of every reading."""
        return np.repeat(self.bins.piece, self.bins.count.astype(np.intp))

    def binned_lead(self) -> Floats:
        """Means (k,) of the readings."""
        return self.bins.means(self.lead_arcsec)

    def for_spectrum(self) -> tuple[Bins, float]:
        """Bins of whole readings, a single one each unless the run is very long, and the shortest
        period in seconds that they show."""
        each = -(-self.utc_s.size // _MOST_IN_SPECTRUM)
        interval_s = float(np.median(np.diff(self.utc_s)))
        fewest = _INTERVALS if each == 1 else _BINS * each
        bins = Bins.of_readings(self.utc_s, self.piece(), each)
        return bins, max(_SHORTEST_S, fewest * interval_s)

    def without_trend(self) -> Floats:
        """Binned leads (k,) less origins and trend, by plain least squares."""
        columns, lead = self.smooth_columns(), self.binned_lead()
        solution, *_ = np.linalg.lstsq(columns, lead, rcond=None)
        return np.asarray(lead - columns @ solution)
