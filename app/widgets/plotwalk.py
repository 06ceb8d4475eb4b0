"""One reading of a plot singled out: by walking from one to the next, or by the pointer."""

from __future__ import annotations

from collections.abc import Sequence

from app.widgets.driftseries import DriftSeries
from app.widgets.plotreading import PlotReading, reading_at


class PlotWalk:
    """Stays on its leg and reading while more readings come; forgets a leg that is gone."""

    def __init__(self) -> None:
        self._label = ""
        self._at = -1

    def point_at(self, found: PlotReading) -> None:
        """Go on from a reading that was pointed at."""
        self._label, self._at = found.label, found.index

    def step(self, legs: Sequence[DriftSeries], readings: int) -> PlotReading | None:
        """The reading so many on, at most to the end of the leg; the newest one to begin with."""
        leg = self._leg(legs)
        if leg is None:
            return None
        last = len(leg.minutes) - 1
        begins = leg.label != self._label
        self._label = leg.label
        self._at = last if begins else min(max(self._at + readings, 0), last)
        return reading_at(leg, self._at)

    def next_leg(self, legs: Sequence[DriftSeries]) -> PlotReading | None:
        """The newest reading of the leg after the present one, round the legs."""
        filled = [leg for leg in legs if len(leg.minutes)]
        if not filled:
            return None
        labels = [leg.label for leg in filled]
        at = labels.index(self._label) + 1 if self._label in labels else 0
        leg = filled[at % len(filled)]
        self._label, self._at = leg.label, len(leg.minutes) - 1
        return reading_at(leg, self._at)

    def _leg(self, legs: Sequence[DriftSeries]) -> DriftSeries | None:
        filled = [leg for leg in legs if len(leg.minutes)]
        same = [leg for leg in filled if leg.label == self._label]
        if same:
            return same[0]
        return filled[-1] if filled else None
