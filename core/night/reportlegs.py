"""Watched legs in a night's report: what they come to as a table, and each as a picture."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from core.alignment.driftlog import Leg
from core.language import say
from core.night.reportnight import WatchedLeg
from core.night.reportparts import Table
from core.night.reportplot import Plot, Series
from core.night.reportwords import SayTime


def drift_arcsec_per_min(leg: Leg) -> float | None:
    """Slope of a straight line through the north offsets; None for fewer than two times."""
    if leg.utc_s.size < 2 or np.ptp(leg.utc_s) == 0.0:
        return None
    minutes = (leg.utc_s - leg.utc_s[0]) / 60.0
    return float(np.polynomial.Polynomial.fit(minutes, leg.north_arcsec, 1).convert().coef[-1])


def drift_words(arcsec_per_min: float | None) -> str:
    """To a hundredth of an arcsecond a minute, finer than any seeing allows."""
    if arcsec_per_min is None:
        return "–"
    return f"{round(arcsec_per_min, 2) + 0.0:.2f}".replace("-", "−")


def legs_table(legs: Sequence[WatchedLeg], say_time: SayTime) -> Table:
    """A line for each leg; `say_time` writes a Unix time for the reader."""
    header = (
        say("leg"),
        say("star"),
        say("begun"),
        say("minutes"),
        say("readings"),
        say("drift ″/min"),
        say("used"),
    )
    lines = []
    for one in legs:
        leg = one.leg
        minutes = float(np.ptp(leg.utc_s)) / 60.0 if leg.utc_s.size else 0.0
        lines.append(
            (
                leg.label,
                one.star_name,
                say_time(one.began_utc_s),
                f"{minutes:.1f}",
                str(leg.utc_s.size),
                drift_words(drift_arcsec_per_min(leg)),
                say("left out") if one.is_discarded else say("yes"),
            )
        )
    return Table(header, tuple(lines))


def north_plot(watched: WatchedLeg) -> Plot:
    """Declination drift, with a straight line through the readings."""
    leg = watched.leg
    minutes = (leg.utc_s - leg.utc_s[0]) / 60.0
    series = [Series(minutes, leg.north_arcsec, say("readings"))]
    if np.ptp(minutes) > 0.0:
        line = np.polynomial.Polynomial.fit(minutes, leg.north_arcsec, 1)
        ends = np.array([minutes.min(), minutes.max()])
        series.append(Series(ends, line(ends), say("straight line through them"), is_line=True))
    return Plot(
        f"leg-{watched.key}",
        say("{leg}: declination drift", leg=leg.label),
        say("minutes"),
        say("north offset (″)"),
        tuple(series),
    )


def has_east(leg: Leg) -> bool:
    """Whether anything was read to the east."""
    return leg.east_arcsec is not None and bool(np.isfinite(leg.east_arcsec).any())


def east_plot(watched: WatchedLeg) -> Plot:
    """Offsets in right ascension; only for a leg that `has_east`."""
    leg = watched.leg
    assert leg.east_arcsec is not None
    readings = Series((leg.utc_s - leg.utc_s[0]) / 60.0, leg.east_arcsec, say("readings"))
    title = say("{leg}: tracking in right ascension", leg=leg.label)
    return Plot(f"run-{watched.key}", title, say("minutes"), say("east offset (″)"), (readings,))
