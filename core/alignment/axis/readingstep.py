"""The division to which offsets were read, found in the readings themselves."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

_SAME_ARCSEC = 1e-7  # nearer offsets are one value that arithmetic has blurred
_OFF_LATTICE = 0.04  # of a division: written figures are rounded themselves
_WRITTEN_ARCSEC = 0.006  # half of a hundredth, as figures are mostly written
_FEWEST_STRIDES = 2  # from reading to reading, in divisions: an even drift has but one
NEVER_CHANGED_ARCSEC = 10.0  # a reticle nobody told the division of; common practice, no source


def reading_step_arcsec(offset_arcsec: Floats) -> float | None:
    """The largest division of which all differences of the offsets (n,) are whole numbers.

    `offset_arcsec` in the order read. 0 where there is none, also where the offsets run on as
    evenly as the star does; None where all are equal, so that any division would do.
    """
    values = np.unique(np.asarray(offset_arcsec, dtype=float))
    apart = np.diff(values)
    apart = apart[apart > _SAME_ARCSEC]
    if apart.size == 0:
        return None
    step = _common_measure(np.unique(apart))
    if step is None:
        return 0.0
    if np.unique(np.round(np.diff(offset_arcsec) / step)).size < _FEWEST_STRIDES:
        return 0.0
    number = np.round((values - values[0]) / step)
    off = np.abs(values - values[0] - number * step)
    # the step itself is known the worse the more often it is counted
    finer = float(number @ (values - values[0]) / max(float(number @ number), 1.0))
    off = np.minimum(off, np.abs(values - values[0] - number * finer))
    return finer if off.max() <= _OFF_LATTICE * step + _WRITTEN_ARCSEC else 0.0


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
