"""Fits a run again and again as gusts, bumps and a lost phase come to light."""

from __future__ import annotations

from contextlib import suppress
from dataclasses import dataclass, replace
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray
from scipy.special import chdtrc

from core.alignment.drift.noise import set_aside
from core.finding import Code, Finding
from core.tracking.run import (
    FEWEST_READINGS,
    Counts,
    Readings,
    Run,
    UnusableRun,
    bumps,
    long_gaps,
    piece_numbers,
)
from core.tracking.wormfit import WormFit, estimate, fit_worm, harmonic_columns
from core.tracking.wormperiod import (
    KeepGoing,
    Sine,
    ask,
    beside_the_worm,
    check_length,
    find_period_s,
)


class Stretch(Code):
    """What was left out of a run, and why."""

    FEW_READINGS = "few readings"
    BEFORE = "before"
    AFTER = "after"
    FLIP_WITH_CAMERA = "flip with camera"
    FLIP = "meridian flip"
    PHASE_LOST = "phase lost"
    GAP = "gap"
    GAPS = "gaps"
    GUSTS = "gusts"
    BUMPS = "bumps"
    BUMP = "bump"


# Whether the worm kept its phase across a gap: after a meridian flip it usually has not.

Floats = NDArray[np.float64]

_CHANCE = 1e-5
_SHARE = 0.25  # of the curve's amplitude; a smaller change is left to the scatter between turns
_ORDERS = 2


@dataclass(frozen=True)
class PhaseBreak:
    """Reading at which the periodic curve changes, and whether it came back upside down."""

    reading: int
    is_reversed: bool


def phase_break(readings: Readings, period_s: float, gaps: Counts) -> PhaseBreak | None:
    """The first of the long gaps (indices of readings) across which the curve does not go on."""
    for gap in gaps.tolist():
        before_s = float(readings.utc_s[gap - 1] - readings.utc_s[0])
        after_s = float(readings.utc_s[-1] - readings.utc_s[gap])
        if min(before_s, after_s) < period_s:
            continue
        found = _change(readings, period_s, gap)
        if found is not None:
            return found
    return None


def _change(readings: Readings, period_s: float, gap: int) -> PhaseBreak | None:
    bins = readings.bins
    waves = bins.means(harmonic_columns(readings.utc_s, period_s, _ORDERS, readings.epoch_s))
    after = (bins.utc_s >= readings.utc_s[gap])[:, np.newaxis] * waves
    smooth = readings.smooth_columns()
    columns = np.column_stack([smooth, waves, after])
    found = estimate(bins.utc_s, bins.count, columns, readings.binned_lead())
    first = smooth.shape[1]
    base = found.coefficients[first : first + 2 * _ORDERS]
    change = found.coefficients[first + 2 * _ORDERS :]
    block = found.covariance[first + 2 * _ORDERS :, first + 2 * _ORDERS :]
    chance = float(chdtrc(change.size, change @ np.linalg.solve(block, change)))
    if chance > _CHANCE or np.linalg.norm(change) < _SHARE * np.linalg.norm(base):
        return None
    turned = float(np.linalg.norm(2.0 * base + change))
    return PhaseBreak(gap, turned < 0.3 * float(np.linalg.norm(base)))


# Fits a run again and again as gusts, bumps and a lost phase come to light.

_BINS_OF_A_WAVE = 4.0
_MERIDIAN_DEG = 20.0  # a flip is made within an hour or so of the meridian


@dataclass(frozen=True, eq=False)
class Settled:
    """The readings kept, their pieces, and the fit through them, `fast` sines taken out first."""

    readings: Readings
    fit: WormFit
    fast: tuple[Sine, ...]
    notes: tuple[Finding, ...]


def settle(
    run: Run, worm_period_s: float | None, orders: int, keep_going: KeepGoing | None
) -> Settled:
    """The fit once everything that is not tracking has been set apart. Raises UnusableRun."""
    order = 1 if run.axis_is_known else 2
    gaps = long_gaps(run.utc_s)
    readings = Readings.of(run.utc_s, run.lead_arcsec, _pieces(run.utc_s, gaps), order)
    period_s = worm_period_s or _period_s(run, readings, gaps)
    ask(keep_going, 0.2)
    chosen, notes = _one_phase(run, readings, period_s, gaps)
    part = slice(*chosen)
    utc_s, lead = run.utc_s[part], run.lead_arcsec[part]
    _check_part(utc_s, period_s)
    inner = tuple(gap - chosen[0] for gap in gaps if chosen[0] < gap < chosen[1])
    readings = Readings.of(utc_s, lead, _pieces(utc_s, inner), order)
    fit = fit_worm(readings, period_s, orders, worm_period_s is not None)
    ask(keep_going, 0.4)
    readings, more = _cleaned(readings, fit, inner)
    found = beside_the_worm(readings, fit.period_s, orders, worm_period_s is not None)
    fast, slow = _by_speed(readings, found)
    if more or found:
        quiet = _without(readings, fast)
        fit = fit_worm(quiet, period_s, orders, worm_period_s is not None, slow)
    return Settled(readings, fit, fast, (*_gap_notes(utc_s, inner), *notes, *more))


def _by_speed(readings: Readings, found: tuple[Sine, ...]) -> tuple[tuple[Sine, ...], list[float]]:
    """Those too fast for the bins of the fit to follow, and the periods of the others."""
    shortest_s = _BINS_OF_A_WAVE * readings.duration_s / readings.bins.count.size
    fast = tuple(sine for sine in found if sine.period_s < shortest_s)
    return fast, [sine.period_s for sine in found if sine.period_s >= shortest_s]


def _without(readings: Readings, fast: tuple[Sine, ...]) -> Readings:
    """Fast sines would come back as slow ones in the means of the bins."""
    lead = readings.lead_arcsec.copy()
    for sine in fast:
        waves = harmonic_columns(readings.utc_s, sine.period_s, 1, readings.epoch_s)
        lead -= waves @ sine.coefficients
    return replace(readings, lead_arcsec=lead)


def _period_s(run: Run, readings: Readings, gaps: tuple[int, ...]) -> float:
    """From the longest stretch without a gap if it suffices: a phase lost in a gap bends the period
    of the whole, and then the loss is not seen."""
    edges = [0, *gaps, run.utc_s.size]
    spans = [(run.utc_s[end - 1] - run.utc_s[start], start, end) for start, end in pairwise(edges)]
    _, start, end = max(spans)
    if gaps and end - start >= FEWEST_READINGS:
        part = slice(start, end)
        utc_s, lead = run.utc_s[part], run.lead_arcsec[part]
        with suppress(UnusableRun):
            return find_period_s(Readings.of(utc_s, lead, _pieces(utc_s, ()), readings.trend_order))
    return find_period_s(readings)


def _pieces(utc_s: Floats, breaks: tuple[int, ...]) -> Counts:
    return piece_numbers(utc_s.size, breaks)


def _check_part(utc_s: Floats, period_s: float) -> None:
    if utc_s.size < FEWEST_READINGS:
        raise UnusableRun(Stretch.FEW_READINGS)
    check_length(float(utc_s[-1] - utc_s[0]), period_s)


def _one_phase(
    run: Run, readings: Readings, period_s: float, gaps: tuple[int, ...]
) -> tuple[tuple[int, int], list[Finding]]:
    """The stretch (first reading, one past the last) over which the curve keeps its phase."""
    found = phase_break(readings, period_s, np.asarray(gaps, dtype=np.intp))
    size = run.utc_s.size
    if found is None:
        return (0, size), []
    before_s = float(run.utc_s[found.reading - 1] - run.utc_s[0])
    after_s = float(run.utc_s[-1] - run.utc_s[found.reading])
    is_first = before_s >= after_s
    chosen = (0, found.reading) if is_first else (found.reading, size)
    return chosen, [_break_note(run, found.reading, found.is_reversed, is_first)]


def _break_note(run: Run, reading: int, is_reversed: bool, is_first: bool) -> Finding:
    used = Stretch.BEFORE if is_first else Stretch.AFTER
    if is_reversed:
        return Finding.of(Stretch.FLIP_WITH_CAMERA, used=used)
    if run.hour_angle_deg is not None and abs(run.hour_angle_deg[reading]) < _MERIDIAN_DEG:
        return Finding.of(Stretch.FLIP, used=used)
    return Finding.of(Stretch.PHASE_LOST, used=used)


def _gap_notes(utc_s: Floats, gaps: tuple[int, ...]) -> list[Finding]:
    if not gaps:
        return []
    lost_min = sum(float(utc_s[gap] - utc_s[gap - 1]) for gap in gaps) / 60.0
    code = Stretch.GAP if len(gaps) == 1 else Stretch.GAPS
    return [Finding.of(code, count=len(gaps), minutes=lost_min)]


def _cleaned(
    readings: Readings, fit: WormFit, gaps: tuple[int, ...]
) -> tuple[Readings, list[Finding]]:
    """Gusts set aside and bumps given origins of their own; notes on both, none if none."""
    residual = readings.lead_arcsec - readings.smooth_part(fit.smooth)
    residual -= fit.curve_arcsec(readings.utc_s)
    kept = ~set_aside(readings.utc_s, residual)
    jumps = bumps(readings.utc_s, residual, kept)
    notes = []
    if not kept.all():
        lost = int((~kept).sum())
        notes.append(Finding.of(Stretch.GUSTS, count=lost))
    if jumps:
        code = Stretch.BUMP if len(jumps) == 1 else Stretch.BUMPS
        notes.append(Finding.of(code, count=len(jumps)))
    pieces = _pieces(readings.utc_s, (*gaps, *jumps))[kept]
    utc_s, lead = readings.utc_s[kept], readings.lead_arcsec[kept]
    return Readings.of(utc_s, lead, pieces, readings.trend_order), notes
