"""Offsets read to divisions: the division found, and drift coarser than readings scatter."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray
from scipy.special import ndtr

# The division to which offsets were read, found in the readings themselves.

Floats = NDArray[np.float64]

_SAME_ARCSEC = 1e-7  # nearer offsets are one value that arithmetic has blurred
_OFF_LATTICE = 0.04  # of a division: written figures are rounded themselves
_WRITTEN_ARCSEC = 0.006  # half of a hundredth, as figures are mostly written
_COARSER = 2.5
FEWEST_READINGS = 5  # fewer may stand on any lattice by chance
_FEWEST_FOR_PLATEAUS, _MOST_MOVED, _USUAL = 8, 0.55, 0.85
_FEWEST_STRIDES = 2  # from reading to reading, in divisions: an even drift has but one
NEVER_CHANGED_ARCSEC = 10.0  # a reticle nobody told the division of; common practice, no source


def reading_step_arcsec(offset_arcsec: Floats) -> float | None:
    """The division to which offsets (n,), in the order read, were read.

    What their differences are whole numbers of, or the strides between plateaus where those are
    much longer: a person estimates between two lines now and then, and writes rounded figures. 0
    where there is none, also where the offsets run on as evenly as the star does; None where all
    are equal, so that any division would do.
    """
    offsets = np.asarray(offset_arcsec, dtype=float)
    if float(np.ptp(offsets)) <= _SAME_ARCSEC:
        return None
    if offsets.size < FEWEST_READINGS:
        return 0.0
    written, stride = _lattice(offsets), _plateau(offsets)
    return stride if stride > _COARSER * written else written


def _lattice(offsets: Floats) -> float:
    """The largest division of which all differences are whole numbers; 0 where there is none."""
    values = np.unique(offsets)
    apart = np.diff(values)
    step = _common_measure(np.unique(apart[apart > _SAME_ARCSEC]))
    if step is None:
        return 0.0
    strides = np.unique(np.round(np.diff(offsets) / step))
    if strides.size < _FEWEST_STRIDES and not _is_round(step):
        return 0.0
    number = np.round((values - values[0]) / step)
    off = np.abs(values - values[0] - number * step)
    # the step itself is known the worse the more often it is counted
    finer = float(number @ (values - values[0]) / max(float(number @ number), 1.0))
    off = np.minimum(off, np.abs(values - values[0] - number * finer))
    return finer if off.max() <= _OFF_LATTICE * step + _WRITTEN_ARCSEC else 0.0


def _plateau(offsets: Floats) -> float:
    """The usual stride from one plateau to the next, where readings mostly repeat the one before; 0
    where they do not.

    A reading unlike both its neighbours was estimated between two lines and is passed over. On one
    plateau alone it lies half a division off at the most.
    """
    repeats = np.abs(np.diff(offsets)) <= _SAME_ARCSEC
    if offsets.size < _FEWEST_FOR_PLATEAUS or (~repeats).sum() > _MOST_MOVED * repeats.size:
        return 0.0
    dwelt = offsets[np.append(False, repeats) | np.append(repeats, False)]
    stride = np.abs(np.diff(dwelt))
    moved = stride[stride > _SAME_ARCSEC]
    if moved.size == 0:
        return 2.0 * float(np.abs(offsets - dwelt[0]).max())
    return float(np.quantile(moved, _USUAL))


def _is_round(step: float) -> bool:
    """As lines of a reticle are apart, and an even drift hardly ever is from reading to reading."""
    return abs(step - float(f"{step:.2g}")) < 1e-6 * step


def _common_measure(lengths: Floats) -> float | None:
    """The greatest common measure of lengths (n,), rising, by Euclid's algorithm; None: none."""
    measure = float(lengths[0])
    for length in lengths[1:].tolist():
        larger, smaller = float(length), measure
        while smaller > 2.0 * _WRITTEN_ARCSEC:
            rest = abs(larger - round(larger / smaller) * smaller)
            if rest <= _OFF_LATTICE * smaller + 2.0 * _WRITTEN_ARCSEC:
                break
            larger, smaller = smaller, rest
        else:
            return None
        measure = smaller
    return measure


# The drift rate of offsets read to divisions coarser than they scatter.
#
# Between two divisions such a reading stays the same for minutes: its error is no noise but the
# part of a division that was not seen. So each reading only says between which limits the star
# stood, and the rate is what all limits allow: the likelihood of rounded data (Sheppard's
# corrections fail here; Heitjan, Statistical Science 4, 164, 1989), on a grid of origins, rates and
# scatters.

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
