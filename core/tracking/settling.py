"""How long the star takes to settle after a dither or a slew."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.language import marked, say
from core.tracking.run import UnusableRun

Floats = NDArray[np.float64]

_LONG_S = 30.0  # common practice, no source


@dataclass(frozen=True)
class Settling:
    """`seconds`: from the dither until the star stays within the limit; None when it never did."""

    seconds: float | None
    first_offset_arcsec: float
    sentence: str


def settling_after(
    utc_s: Floats,
    offset_arcsec: Floats,
    dither_utc_s: float,
    within_arcsec: float,
    hold_s: float = 10.0,
) -> Settling:
    """`offset_arcsec` (n,): distance from the new place. Settled once it stays inside for `hold_s`.

    Raises UnusableRun when no reading follows the dither.
    """
    after = (utc_s >= dither_utc_s) & np.isfinite(offset_arcsec)
    if int(after.sum()) < 2 or not within_arcsec > 0.0:
        raise UnusableRun(
            say("No readings follow the dither, or the limit to settle within is not above zero.")
        )
    elapsed, offset = utc_s[after] - dither_utc_s, np.abs(offset_arcsec[after])
    first = float(offset[0])
    for start in np.flatnonzero(offset <= within_arcsec).tolist():
        inside = (elapsed >= elapsed[start]) & (elapsed <= elapsed[start] + hold_s)
        if elapsed[-1] - elapsed[start] < hold_s:
            break
        if np.all(offset[inside] <= within_arcsec):
            seconds = float(elapsed[start])
            return Settling(seconds, first, _sentence(seconds, within_arcsec))
    return Settling(
        None,
        first,
        say(
            "The star did not stay within {within:.1f}″ for {hold:.0f} s after the dither: "
            "allow more, or look for backlash and over-correction.",
            within=within_arcsec,
            hold=hold_s,
        ),
    )


def _sentence(seconds: float, within_arcsec: float) -> str:
    words = marked(
        "The star settled within {within:.1f}″ after {seconds:.0f} s, which is long: dither less "
        "far, in right ascension only, or correct a larger share."
    )
    if seconds <= _LONG_S:
        words = marked(
            "The star settled within {within:.1f}″ after {seconds:.0f} s; wait that long before "
            "the next exposure."
        )
    return say(words, within=within_arcsec, seconds=seconds)
