"""Nights compared: one figure of each over the dates, as a plot."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from datetime import UTC, datetime

import numpy as np
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.storage.records import NightSummary
from app.theme.theme import Theme
from app.widgets.choice import Choice
from app.widgets.curveplot import CurvePlot
from app.widgets.curves import Curve, Floats, Ink, Picture
from app.widgets.text import Panel, Text
from core.language import say
from core.night.record import NightFigures

DAY_S = 86400.0
MOST_TICKS = 5
Values = Callable[[NightFigures], Iterable[float]]


def _one(value: float | None) -> tuple[float, ...]:
    return () if value is None else (value,)


class Comparing(Panel):
    """A night without the figure leaves no mark."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Nights compared"), parent)
        self._nights: Sequence[NightSummary] = ()
        self._kinds = Choice(self.tr("What is compared"), list(self._names().items()))
        self._kinds.chosen.connect(lambda _kind: self._show())
        self._plot = CurvePlot(theme)
        self._none = Text("", "quiet")
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._plot)
        for part in (self._kinds, self._none, holder):
            self.column.addWidget(part)
        self._kinds.show_choice("error")
        self._show()

    def _names(self) -> dict[str, str]:
        return {
            "error": self.tr("Error reached"),
            "minutes": self.tr("Minutes spent"),
            "bolts": self.tr("Bolt scale"),
            "periodic": self.tr("Periodic error"),
        }

    def kinds(self) -> Choice:
        return self._kinds

    def plot(self) -> CurvePlot:
        return self._plot

    def said(self) -> str:
        return self._none.text()

    def show_nights(self, nights: Sequence[NightSummary]) -> None:
        self._nights = sorted(nights, key=lambda one: one.started_utc_s)
        self._show()

    def _show(self) -> None:
        kind = self._kinds.choice()
        names = self._names()[kind], self._axis(kind)
        picture = _picture(kind, *names, self._series(kind), self._nights)
        count = sum(curve.x.size for curve in picture.curves)
        self._plot.setVisible(count > 0)
        few = self.tr("No night in the log has this figure yet.")
        self._none.say("" if count else few)
        if count:
            self._plot.show_picture(picture)

    def _axis(self, kind: str) -> str:
        return {
            "error": self.tr("axis error reached, arcminutes"),
            "minutes": self.tr("minutes, first leg to result"),
            "bolts": self.tr("moved over meant"),
            "periodic": self.tr("peak to peak, arcseconds"),
        }[kind]

    def _series(self, kind: str) -> Mapping[str, Values]:
        return {
            "error": {self.tr("error reached"): lambda found: _one(found.error_arcmin)},
            "minutes": {self.tr("minutes spent"): lambda found: _one(found.minutes)},
            "bolts": {
                self.tr("azimuth bolt"): lambda found: found.azimuth_bolt_scales,
                self.tr("altitude bolt"): lambda found: found.altitude_bolt_scales,
            },
            "periodic": {self.tr("periodic error"): lambda found: found.periodic_error_arcsec},
        }[kind]


def _picture(
    kind: str, title: str, axis: str, series: Mapping[str, Values], nights: Sequence[NightSummary]
) -> Picture:
    curves = []
    for number, (name, values) in enumerate(series.items()):
        points = [(one.started_utc_s / DAY_S, y) for one in nights for y in values(one.figures)]
        x = np.array([x for x, _ in points])
        y = np.array([y for _, y in points])
        curves += [Curve(name, x, y, Ink.DOTS), Curve(name, x, y, _ink(number))]
    seen = [curve.x for curve in curves if curve.x.size]
    ticks = _ticks(np.concatenate(seen)) if seen else ()
    low_high = _range(curves)
    levels = ((1.0, say("as it was meant")),) if kind == "bolts" else ()
    drawn = tuple(curves)
    return Picture(
        title, say("night"), axis, drawn, _date, x_ticks=ticks, levels=levels, y_range=low_high
    )


def _ink(number: int) -> Ink:
    return (Ink.THIN, Ink.DASHED)[number]


def _range(curves: Sequence[Curve]) -> tuple[float, float]:
    """From zero, so that a small change looks small."""
    values = [float(curve.y.max()) for curve in curves if curve.y.size]
    return 0.0, 1.1 * max([*values, 0.1])


def _ticks(days: Floats) -> tuple[tuple[float, str], ...]:
    """Some of the nights, evenly among them; dates at the very ends would find no room."""
    unlike = np.unique(days)
    places = (np.arange(MOST_TICKS) + 0.5) / MOST_TICKS * (unlike.size - 1)
    chosen = np.unique(places.round().astype(int))
    return tuple((float(unlike[one]), _date(float(unlike[one]))) for one in chosen)


def _date(day: float) -> str:
    return f"{datetime.fromtimestamp(day * DAY_S, UTC):%Y-%m-%d}"
