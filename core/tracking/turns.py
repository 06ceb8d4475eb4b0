"""A run laid turn upon turn of the worm: the mean curve, and how far the turns differ."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.stats import f as f_distribution

from core.tracking.waves import wave_columns
from core.tracking.wormfit import WormFit

Floats = NDArray[np.float64]
Counts = NDArray[np.intp]

MOST_PLACES = 60  # in one turn of the worm
_FEWEST_PLACES = 8
_ENOUGH = 0.75  # share of a turn's places that must be filled for it to count as whole
_FEWEST_TURNS = 4
_SUSPICION = 0.01


@dataclass(frozen=True, eq=False)
class FoldedCurve:
    """One turn of the worm, arrays (m,): place in seconds from the epoch's phase zero.

    `mean_arcsec`: over whole turns; `scatter_arcsec`: standard deviation between turns, the air
    included; `turns`: how many contribute. `table_arcsec` (turns, m): each turn, NaN where unread.
    """

    place_s: Floats
    mean_arcsec: Floats
    scatter_arcsec: Floats
    turns: Counts
    table_arcsec: Floats


def turn_numbers(utc_s: Floats, period_s: float, epoch_s: float) -> tuple[Counts, Floats]:
    """Turn of the worm (n,), counted from the epoch, and the phase (n,) within it, 0 to 1."""
    turns = (utc_s - epoch_s) / period_s
    whole = np.floor(turns)
    return whole.astype(np.intp), turns - whole


def fold(utc_s: Floats, lead_arcsec: Floats, period_s: float, epoch_s: float) -> FoldedCurve:
    """Mean and scatter of leads (n,) without trend."""
    places = _places(utc_s, period_s)
    turn, phase = turn_numbers(utc_s, period_s, epoch_s)
    number = turn - turn.min()
    cell = number * places + np.minimum((phase * places).astype(np.intp), places - 1)
    size = (int(number.max()) + 1) * places
    count = np.bincount(cell, minlength=size).reshape(-1, places)
    total = np.bincount(cell, lead_arcsec, size).reshape(-1, places)
    table = np.where(count > 0, total / np.maximum(count, 1), np.nan)
    table = table[(count > 0).mean(axis=1) >= _ENOUGH]
    filled = np.isfinite(table).sum(axis=0)
    level = np.where(np.isfinite(table), table, 0.0).sum(axis=0) / np.maximum(filled, 1)
    apart = np.where(np.isfinite(table), table - level, 0.0)
    variance = (apart**2).sum(axis=0) / np.maximum(filled - 1, 1)
    return FoldedCurve(
        place_s=(np.arange(places) + 0.5) / places * period_s,
        mean_arcsec=np.where(filled > 0, level, np.nan),
        scatter_arcsec=np.where(filled > 1, np.sqrt(variance), np.nan),
        turns=filled.astype(np.intp),
        table_arcsec=table,
    )


def _places(utc_s: Floats, period_s: float) -> int:
    """As many places as hold about two readings each in every turn."""
    interval_s = float(np.median(np.diff(utc_s)))
    return int(np.clip(period_s / (2.0 * interval_s), _FEWEST_PLACES, MOST_PLACES))


def widening(fit: WormFit, utc_s: Floats, residual_arcsec: Floats) -> Floats:
    """Factors (2·orders,) ≥ 1 on the errors where the turns differ more than the noise explains.

    The harmonics of each turn's residual scatter; their mean over the turns should be as uncertain
    as the fit says. Where an F test at 1 % denies it, the scatter between turns decides.
    """
    turn, _ = turn_numbers(utc_s, fit.period_s, fit.epoch_s)
    number = turn - turn.min()
    count = np.bincount(number)
    waves = wave_columns(utc_s, fit.period_s, fit.orders, fit.epoch_s)
    shares = [np.bincount(number, waves[:, i] * residual_arcsec) for i in range(waves.shape[1])]
    whole = count >= _ENOUGH * np.median(count[count > 0])
    turns = int(whole.sum())
    if turns < _FEWEST_TURNS:
        return np.ones(2 * fit.orders)
    apart = 2.0 * np.asarray(shares)[:, whole] / count[whole]
    between = np.var(apart, axis=1, ddof=1) / turns
    stated = np.diag(fit.covariance)
    ratio = (between[0::2] + between[1::2]) / (stated[0::2] + stated[1::2])
    limit = f_distribution.isf(_SUSPICION, 2 * (turns - 1), 200)
    return np.repeat(np.sqrt(np.where(ratio > limit, ratio, 1.0)), 2)
