"""The periodic error measured against what the data sheet promises."""

from __future__ import annotations

import math
from dataclasses import dataclass

from core.language import marked, say
from core.tracking.periodic import INTERVAL_FACTOR, PeriodicError


@dataclass(frozen=True)
class DataSheet:
    """`peak_to_peak_arcsec`: twice the figure when the sheet says ±. None where it is silent."""

    peak_to_peak_arcsec: float | None = None
    worm_period_s: float | None = None

    @classmethod
    def plus_minus(cls, half_arcsec: float, worm_period_s: float | None = None) -> DataSheet:
        """From a sheet that promises ± so much."""
        return cls(2.0 * half_arcsec, worm_period_s)


@dataclass(frozen=True)
class Comparison:
    """`keeps_promise`: None while the ± still allows both. Sentences for the person."""

    keeps_promise: bool | None
    period_agrees: bool | None
    sentences: tuple[str, ...]


def compare(result: PeriodicError, sheet: DataSheet) -> Comparison:
    """What was measured against what was promised."""
    keeps, size_words = _size(result, sheet.peak_to_peak_arcsec)
    agrees, period_words = _period(result, sheet.worm_period_s)
    return Comparison(keeps, agrees, (*size_words, *period_words))


def _size(result: PeriodicError, promised: float | None) -> tuple[bool | None, tuple[str, ...]]:
    if promised is None:
        return None, ()
    measured = result.size.peak_to_peak_arcsec
    half = INTERVAL_FACTOR * result.size.peak_to_peak_sigma_arcsec
    if measured + half <= promised:
        keeps: bool | None = True
        words = marked(
            "The data sheet promises {promised:.1f}″ peak to peak, measured {measured:.1f}″: it "
            "keeps its promise."
        )
    elif measured - half > promised:
        keeps = False
        words = marked(
            "The data sheet promises {promised:.1f}″ peak to peak, measured {measured:.1f}″: "
            "{times:.1f} times as much."
        )
    else:
        keeps = None
        words = marked(
            "The data sheet promises {promised:.1f}″ peak to peak, measured {measured:.1f}″ ± "
            "{half_width:.1f}″: too close to tell; track longer."
        )
    times = measured / promised if promised else math.inf
    figures = {"promised": promised, "measured": measured, "half_width": half, "times": times}
    return keeps, (say(words, **figures),)


def _period(result: PeriodicError, promised: float | None) -> tuple[bool | None, tuple[str, ...]]:
    if promised is None or result.period_is_given:
        return None, ()
    half = INTERVAL_FACTOR * result.period_sigma_s
    agrees = abs(result.period_s - promised) <= max(half, 0.003 * promised)
    if agrees:
        return True, (
            say(
                "The worm's period agrees with the {promised:g} s of the data sheet.",
                promised=promised,
            ),
        )
    return False, (
        say(
            "The run shows a period of {period:.1f} ± {half:.1f} s where the data sheet says "
            "{promised:g} s: another gear, or the sheet is wrong.",
            period=result.period_s,
            half=half,
            promised=promised,
        ),
    )
