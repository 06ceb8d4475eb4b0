"""The drift rate of offsets read to divisions coarser than they scatter.

Between two divisions such a reading stays the same for minutes: its error is no noise but the part
of a division that was not seen. So each reading only says between which limits the star stood, and
the rate is what all limits allow: the likelihood of rounded data (Sheppard's corrections fail here;
Heitjan, Statistical Science 4, 164, 1989), on a grid of origins, rates and scatters.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray
from scipy.special import ndtr

Floats = NDArray[np.float64]
Parts = NDArray[np.intp]

COARSE_SHARE = 0.42  # of a division: readings that scatter more are told by ordinary noise
WORTH_ARCSEC = 0.3  # finer divisions are lost in the slow wander of the field
_SCATTERS = np.array([0.02, 0.05, 0.1, 0.2, 0.35])  # of a division
_STRAYS = 5e-3  # share of readings that say nothing
_RATES, _ORIGINS = 61, 41
_FINE, _FAR = 400, 3  # places a division in the table of likelihoods, and how many divisions it has
_MOST, _APART_S = 120, 4.0  # readings: nearer ones share the motion of the air
_NEGLIGIBLE = 1e-4


def is_coarse(minutes: Floats, offsets_arcsec: Floats, part: Parts, step_arcsec: float) -> bool:
    """Whether a line leaves less scatter than readings (n,) to this division would need.

    `part` (n,): the piece of the leg each reading belongs to.
    """
    if step_arcsec < WORTH_ARCSEC:
        return False
    origins = np.equal.outer(part, np.unique(part)).astype(float)
    design = np.column_stack([origins, minutes])
    rest = offsets_arcsec - design @ np.linalg.lstsq(design, offsets_arcsec, rcond=None)[0]
    freedom = max(minutes.size - design.shape[1], 1)
    return float(np.sqrt(rest @ rest / freedom)) < COARSE_SHARE * step_arcsec


def rate_of_rounded(
    minutes: Floats, offsets_arcsec: Floats, predicted_arcsec: Floats, part: Parts, step: float
) -> tuple[float, float]:
    """Mean and variance of the rate, arcsec/min, beside what is predicted (n,).

    `part` (n,): the piece of the leg each reading belongs to, with an origin of its own; `step`:
    the division, arcsec.
    """
    kept = _apart(minutes)
    pieces = _pieces(minutes[kept], offsets_arcsec[kept], predicted_arcsec[kept], part[kept])
    squares = sum(float(piece.minutes @ piece.minutes) for piece in pieces)
    rate = sum(float(piece.minutes @ piece.deviation) for piece in pieces) / max(squares, 1e-12)
    width = 3.0 * step / max(max(float(np.ptp(piece.minutes)) for piece in pieces), 1e-6)
    for _ in range(4):  # narrower each time, until the grid fits what is likely
        rates = rate + width * np.linspace(-1.0, 1.0, _RATES)
        log = np.sum([_log_likelihood(rates, piece, step) for piece in pieces], axis=0)
        likely = np.exp(log - log.max()).sum(axis=0)
        likely /= likely.sum()
        near = rates[likely > _NEGLIGIBLE * likely.max()]
        mean = float(likely @ rates)
        variance = float(likely @ (rates - mean) ** 2) + (rates[1] - rates[0]) ** 2 / 12.0
        narrower = 0.6 * float(near[-1] - near[0]) + 2.0 * float(rates[1] - rates[0])
        if narrower > 0.6 * width:
            break
        rate, width = 0.5 * float(near[0] + near[-1]), narrower
    return mean, variance


@dataclass(frozen=True, eq=False)
class _Piece:
    """Readings between two steps: minutes from their middle, offsets beside what is predicted."""

    minutes: Floats
    deviation: Floats


def _pieces(minutes: Floats, offsets: Floats, predicted: Floats, part: Parts) -> list[_Piece]:
    pieces = []
    for number in np.unique(part):
        own = part == number
        pieces.append(_Piece(minutes[own] - minutes[own].mean(), (offsets - predicted)[own]))
    return pieces


def _apart(minutes: Floats) -> NDArray[np.intp]:
    """Indices of readings far enough apart, and not too many."""
    step = max(1, -(-minutes.size // _MOST))
    usual_s = 60.0 * float(np.median(np.diff(minutes))) if minutes.size > 1 else _APART_S
    if usual_s > 0.0:
        step = max(step, int(np.ceil(_APART_S / usual_s - 1e-9)))
    return np.unique(np.append(np.arange(0, minutes.size, step), minutes.size - 1))


def _log_likelihood(rates: Floats, piece: _Piece, step: float) -> Floats:
    """Of scatters and rates (s, r), the origin of the piece summed over."""
    middle = rates[rates.size // 2]
    level = piece.deviation - middle * piece.minutes
    slopes = np.outer(rates - middle, piece.minutes)
    origins = float(level.mean()) + 1.5 * step * np.linspace(-1.0, 1.0, _ORIGINS)
    apart = level - slopes[:, np.newaxis] - origins[:, np.newaxis]
    place = np.clip(np.rint((apart / step + _FAR) * _FINE), 0, 2 * _FAR * _FINE).astype(np.intp)
    log = np.stack([table[place].sum(axis=2) for table in _tables()])
    top = log.max(axis=2)
    return np.asarray(top + np.log(np.exp(log - top[:, :, np.newaxis]).sum(axis=2)))


@cache
def _tables() -> Floats:
    """Log likelihood (scatters, places) of a reading so many divisions beside the star."""
    apart = np.arange(-_FAR * _FINE, _FAR * _FINE + 1) / _FINE
    inside = [ndtr((apart + 0.5) / share) - ndtr((apart - 0.5) / share) for share in _SCATTERS]
    return np.asarray(np.log(np.maximum(inside, 0.0) + _STRAYS))
