"""The legs of a drift plot, made anew a few at a time so that the window never waits for all."""

from __future__ import annotations

from collections.abc import Sequence

import pyqtgraph as pg

from app.theme.theme import Theme
from app.widgets.driftseries import DriftSeries
from app.widgets.legcurves import LegCurves

LEGS_AT_ONCE = 2  # made anew in one picture
Edges = tuple[float, float, int]  # first and last minute of the picture, its width in pixels


class DrawnLegs:
    """Curves of each leg by its label, in the order in which they were made anew last."""

    def __init__(self, plot: pg.PlotItem, theme: Theme) -> None:
        self._plot = plot
        self._theme = theme
        self._curves: dict[str, LegCurves] = {}
        self._style: object = None

    def remove(self) -> None:
        """All of them."""
        for curves in self._curves.values():
            curves.remove()
        self._curves = {}

    def are_styled(self) -> bool:
        """Whether what is drawn is in the present look."""
        return not self._curves or self._style == self._present_style()

    def show(self, legs: Sequence[DriftSeries], edges: Edges) -> bool:
        """Whether nothing is left to do; else call again.

        The newest leg and the one that waited longest are made anew; all of them in another look,
        since nothing bright may stay behind.
        """
        at_once = LEGS_AT_ONCE if self.are_styled() else len(legs)
        self._style = self._present_style()
        self._remove_all_but({leg.label for leg in legs})
        stale = [leg for leg in self._waited_longest(legs) if not self._shows(leg, edges)]
        for leg in stale[:at_once]:
            curves = self._curves.pop(leg.label, None) or LegCurves(self._plot, self._theme)
            self._curves[leg.label] = curves
            curves.show(leg, *edges)
        return len(stale) <= at_once

    def _present_style(self) -> object:
        return self._theme.look, self._theme.scale

    def _remove_all_but(self, labels: set[str]) -> None:
        for gone in [label for label in self._curves if label not in labels]:
            self._curves.pop(gone).remove()

    def _waited_longest(self, legs: Sequence[DriftSeries]) -> list[DriftSeries]:
        """The newest leg, those never drawn, then in the order in which they were drawn."""
        order = {label: place for place, label in enumerate(self._curves)}
        before = sorted(legs[:-1], key=lambda leg: order.get(leg.label, -1))
        return [*legs[-1:], *before]

    def _shows(self, leg: DriftSeries, edges: Edges) -> bool:
        curves = self._curves.get(leg.label)
        return curves is not None and curves.shows(leg, *edges)
