"""Steps inside a leg, as a bumped tripod leaves them: found, measured, and both sides kept."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.drift.linefit import fit_line, minutes_about_middle
from core.alignment.drift.noise import Groups, NoiseGrid, group, weights
from core.alignment.driftlog.records import Leg

Floats = NDArray[np.float64]
Flags = NDArray[np.bool_]
Nuisances = Callable[[Groups], Floats]  # columns (k, m) at the groups, each with a prior of one

_MOST_STEPS = 6
_SHORTEST_PIECE = 4  # groups; fewer cannot tell a step from a gust
_THRESHOLD = 5.0  # in standard deviations, over every place a step might be
_DIVISIONS = 1.6  # rounded readings step by one division by themselves, and a half may be lost
_WORTH_ARCSEC = 0.1  # smaller ones change nothing, and a leap second in a log makes them


@dataclass(frozen=True)
class DriftStep:
    """A sudden northward shift at `utc_s`, with its standard deviation."""

    utc_s: float
    size_arcsec: float
    sigma_arcsec: float


def _nothing(groups: Groups) -> Floats:
    """No nuisances."""
    return np.empty((groups.utc_s.size, 0))


def find_breaks(
    leg: Leg,
    kept: Flags,
    predicted_arcsec: Floats,
    reading_step_arcsec: float = 0.0,
    nuisances: Nuisances = _nothing,
) -> tuple[int, ...]:
    """Indices of readings that begin a new piece; `predicted_arcsec` (n,): drift so far known.

    One step after another is added where it explains most, as long as it stands five standard
    deviations above the correlated noise and the nuisances that are left with the step in place,
    and above a division and a half of the readings.
    """
    least_arcsec = max(_WORTH_ARCSEC, _DIVISIONS * reading_step_arcsec)
    breaks: tuple[int, ...] = ()
    while len(breaks) < _MOST_STEPS:
        groups, residual = _residual(leg, kept, predicted_arcsec, breaks)
        at = _likeliest(groups, residual)
        if at is None:
            break
        reading = _first_reading(leg, kept, predicted_arcsec, groups, at)
        longer = tuple(sorted({*breaks, reading}))
        steps = measure(leg, kept, predicted_arcsec, longer, nuisances)
        if not _all_stand_out(steps, len(longer), least_arcsec):
            break
        breaks = longer
    return breaks


def measure(
    leg: Leg,
    kept: Flags,
    predicted_arcsec: Floats,
    breaks: tuple[int, ...],
    nuisances: Nuisances = _nothing,
) -> tuple[DriftStep, ...]:
    """Sizes of the steps at `breaks`, with the correlated noise of the leg in their errors."""
    groups, residual = _residual(leg, kept, predicted_arcsec, breaks)
    grid = NoiseGrid.for_durations([float(np.ptp(groups.utc_s))])
    fit = fit_line(groups, residual, nuisances(groups), grid)
    weight = weights([fit.log_likelihood])
    steps = []
    for later in range(1, groups.parts):
        contrast = np.zeros(fit.coefficients.shape[1])
        contrast[[later - 1, later]] = -1.0, 1.0
        size = fit.coefficients @ contrast
        variance = np.einsum("i,gij,j->g", contrast, fit.covariance, contrast)
        mean = float(weight @ size)
        spread = float(weight @ (variance + (size - mean) ** 2))
        steps.append(DriftStep(_begin_s(leg, breaks[later - 1]), mean, float(np.sqrt(spread))))
    return tuple(steps)


def _all_stand_out(steps: tuple[DriftStep, ...], expected: int, least_arcsec: float) -> bool:
    stand = all(
        abs(step.size_arcsec) > max(_THRESHOLD * step.sigma_arcsec, least_arcsec) for step in steps
    )
    return stand and len(steps) == expected


def _begin_s(leg: Leg, reading: int) -> float:
    return float(leg.utc_s[reading])


def _residual(
    leg: Leg, kept: Flags, predicted_arcsec: Floats, breaks: tuple[int, ...]
) -> tuple[Groups, Floats]:
    """Groups of what the predicted drift leaves unexplained."""
    remainder = Leg(
        leg.label,
        leg.ra_deg,
        leg.dec_deg,
        leg.utc_s,
        leg.north_arcsec - predicted_arcsec,
        leg.east_arcsec,
        leg.sigma_arcsec,
    )
    groups = group(remainder, kept, breaks)
    return groups, groups.north_arcsec


def _likeliest(groups: Groups, residual: Floats) -> int | None:
    """The group whose being the first of a new piece explains most of the residual."""
    size = residual.size
    position = np.arange(size)
    start = np.searchsorted(groups.part, groups.part, "left")
    end = np.searchsorted(groups.part, groups.part, "right")
    allowed = (position - start >= _SHORTEST_PIECE) & (end - position >= _SHORTEST_PIECE)
    if not allowed.any():
        return None
    design, _ = np.linalg.qr(np.column_stack([groups.part_columns(), minutes_about_middle(groups)]))
    after = np.greater_equal.outer(position, position) & np.equal.outer(groups.part, groups.part)
    candidates = after.astype(float)
    candidates -= design @ (design.T @ candidates)
    left = residual - design @ (design.T @ residual)
    norm = np.einsum("kj,kj->j", candidates, candidates)
    gain = np.where(allowed, (left @ candidates) ** 2 / np.maximum(norm, 1e-9), -1.0)
    best = int(np.argmax(gain))
    independent = (left @ left - gain[best]) / max(size - design.shape[1] - 1, 1)
    # Correlated noise makes a step less certain than independent noise does, never more.
    return best if gain[best] > _THRESHOLD**2 * independent else None


def _first_reading(leg: Leg, kept: Flags, predicted_arcsec: Floats, groups: Groups, at: int) -> int:
    """The reading that begins the piece: the best split of the readings about group `at`."""
    last = groups.utc_s.size - 1
    low_s, high_s = groups.utc_s[max(at - 2, 0)], groups.utc_s[min(at + 1, last)]
    inside = np.flatnonzero(kept & (leg.utc_s >= low_s) & (leg.utc_s <= high_s))
    if groups.count.max() <= 1.0 or inside.size < 3:
        return int(np.searchsorted(leg.utc_s, groups.utc_s[at] - 1e-6))
    level = (leg.north_arcsec - predicted_arcsec)[inside]
    before = np.cumsum(level)[:-1]
    number = np.arange(1, inside.size)
    contrast = before / number - (level.sum() - before) / (inside.size - number)
    gain = contrast**2 * number * (inside.size - number)
    return int(inside[int(np.argmax(gain)) + 1])
