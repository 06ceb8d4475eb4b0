"""What a trained correction would bring: the part of the curve that repeats, and what is left."""

from __future__ import annotations

import io
import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.special import stdtrit

from core.finding import Code, Finding
from core.tracking.periodic import PeriodicError
from core.tracking.run import Run, UnusableRun
from core.tracking.wormfolding import INTERVAL_FACTOR, CommonCurve, by_turn, shared


class TrainingTold(Code):
    """What training and the data sheet come to."""

    FEW_TURNS = "few turns"
    KEEPS_PROMISE = "keeps promise"
    BREAKS_PROMISE = "breaks promise"
    TOO_CLOSE = "too close"
    PERIOD_AGREES = "period agrees"
    OTHER_PERIOD = "other period"
    WOULD_BRING = "would bring"


Floats = NDArray[np.float64]

FEWEST_TURNS = 3
_IN_A_TURN = 4.0  # independent differences, where turns are alike


@dataclass(frozen=True)
class Training:
    """Root mean squares in arcseconds of the drive's lead.

    `repeating`: of the mean curve; `changing`: of single turns about the truth, the air taken off
    as far as the north offsets show it; `residual`: predicted after training with the mean of
    the run, which holds `turns` whole ones, with its sigma as of `INTERVAL_FACTOR`. `air_is_known`:
    otherwise the air is still inside and the true residual is smaller.
    """

    repeating_rms_arcsec: float
    changing_rms_arcsec: float
    residual_rms_arcsec: float
    residual_sigma_arcsec: float
    turns: int
    air_is_known: bool
    sentence: Finding


def training(result: PeriodicError, run: Run) -> Training:
    """Predicts from `result`, which came from `run`. Raises UnusableRun below three whole turns."""
    whole = result.folded.table_arcsec.shape[0]
    if whole < FEWEST_TURNS:
        raise UnusableRun(TrainingTold.FEW_TURNS, turns=whole, fewest=FEWEST_TURNS)
    found = _beside_the_curve(result)
    between, turns = found.variance, found.turns
    curve = result.curve_arcsec(result.epoch_utc_s + result.folded.place_s) + found.level
    repeating = math.sqrt(max(float(np.var(curve)) - between / turns, 0.0))
    air = _air_variance(result, run)
    changing = math.sqrt(max(between - (air or 0.0), 0.0))
    residual = changing * math.sqrt(1.0 + 1.0 / turns)
    freedom = _freedom(found)
    shown = max(changing, 0.5 * math.sqrt(between), 1e-9)
    sigma = between / math.sqrt(2.0 * freedom) / shown
    sigma *= float(stdtrit(freedom, 0.975)) / INTERVAL_FACTOR
    return Training(
        repeating,
        changing,
        residual,
        sigma,
        whole,
        air is not None,
        Finding.of(
            TrainingTold.WOULD_BRING,
            repeating=repeating,
            residual=residual,
            air_is_known=air is not None,
        ),
    )


def training_csv(result: PeriodicError) -> str:
    """The mean curve as CSV, one line a place of the turn; heads say signs and phase zero."""
    folded = result.folded
    text = io.StringIO()
    text.write(f"# worm_period_s: {result.period_s:.4f}\n")
    text.write(f"# phase_zero_utc_s: {result.epoch_utc_s:.3f}\n")
    text.write(f"# turns: {result.turns:.2f}\n")
    text.write("# lead_arcsec: drive ahead of the sky, at the equator; the star is seen to move\n")
    text.write("# east. A correction must slow the drive where the lead grows.\n")
    text.write("place_s,curve_arcsec,mean_arcsec,scatter_arcsec,turns\n")
    curve = result.curve_arcsec(result.epoch_utc_s + folded.place_s)
    columns = (folded.place_s, curve, folded.mean_arcsec, folded.scatter_arcsec)
    for place, *values, count in zip(*columns, folded.turns, strict=True):
        cells = ["" if math.isnan(value) else f"{value:.4f}" for value in values]
        text.write(",".join([f"{place:.3f}", *cells, str(int(count))]) + "\n")
    return text.getvalue()


def _beside_the_curve(result: PeriodicError) -> CommonCurve:
    """What stands in the turns beside the fitted curve, which within a place is not level."""
    left = result.lead_arcsec - result.curve_arcsec(result.utc_s)
    return shared(by_turn(result.utc_s, left, result.period_s, result.epoch_utc_s))


def _freedom(found: CommonCurve) -> float:
    """Of the variance between turns: what changes slowly counts a few times a turn, and a turn that
    is unlike the others is so in all its places."""
    differences = found.turns - 1.0
    return differences / (1.0 / _IN_A_TURN + 0.5 * found.unlike)


def _air_variance(result: PeriodicError, run: Run) -> float | None:
    """What the air leaves in one place of one turn, from the north offsets: no drive moves them."""
    if run.north_arcsec is None:
        return None
    minutes = (run.utc_s - run.utc_s[0]) / 60.0
    left = run.north_arcsec - np.polyval(np.polyfit(minutes, run.north_arcsec, 2), minutes)
    table = by_turn(run.utc_s, left, result.period_s, result.epoch_utc_s)
    fast = np.diff(table, axis=1)  # slow declination drift is not air
    cos_dec = math.cos(math.radians(result.declination_deg))
    if not np.isfinite(fast).any():
        return None
    return 0.5 * float(np.nanmean(fast**2)) / cos_dec**2


# The periodic error measured against what the data sheet promises.


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
    """`keeps_promise`: None while the ± still allows both. `findings` for the person."""

    keeps_promise: bool | None
    period_agrees: bool | None
    findings: tuple[Finding, ...]


def compare(result: PeriodicError, sheet: DataSheet) -> Comparison:
    """What was measured against what was promised."""
    keeps, size_words = _size(result, sheet.peak_to_peak_arcsec)
    agrees, period_words = _period(result, sheet.worm_period_s)
    return Comparison(keeps, agrees, (*size_words, *period_words))


def _size(result: PeriodicError, promised: float | None) -> tuple[bool | None, tuple[Finding, ...]]:
    if promised is None:
        return None, ()
    measured = result.size.peak_to_peak_arcsec
    half = INTERVAL_FACTOR * result.size.peak_to_peak_sigma_arcsec
    if measured + half <= promised:
        keeps: bool | None = True
        code = TrainingTold.KEEPS_PROMISE
    elif measured - half > promised:
        keeps = False
        code = TrainingTold.BREAKS_PROMISE
    else:
        keeps = None
        code = TrainingTold.TOO_CLOSE
    times = measured / promised if promised else math.inf
    figures = {"promised": promised, "measured": measured, "half_width": half, "times": times}
    return keeps, (Finding.of(code, **figures),)


def _period(
    result: PeriodicError, promised: float | None
) -> tuple[bool | None, tuple[Finding, ...]]:
    if promised is None or result.period_is_given:
        return None, ()
    half = INTERVAL_FACTOR * result.period_sigma_s
    agrees = abs(result.period_s - promised) <= max(half, 0.003 * promised)
    if agrees:
        return True, (Finding.of(TrainingTold.PERIOD_AGREES, promised=promised),)
    return False, (
        Finding.of(TrainingTold.OTHER_PERIOD, period=result.period_s, half=half, promised=promised),
    )
