"""The division to which offsets were read, found in the readings themselves."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

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
