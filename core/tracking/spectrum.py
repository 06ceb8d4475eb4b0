"""Which periods a run holds: Lomb–Scargle periodograms, by astropy.

Lomb, Astrophys. Space Sci. 39, 447 (1976); Scargle, Astrophys. J. 263, 835 (1982); several terms:
Palmer, Astrophys. J. 695, 496 (2009).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from astropy.timeseries import LombScargle
from numpy.typing import NDArray

Floats = NDArray[np.float64]

FEWEST_TURNS = 3.0  # a shorter run cannot tell what repeats from what happens once
SHORTEST_WORM_S = 60.0
_TERMS = 3
PER_PEAK = 5.0  # places computed within the width of a peak of a single sine
_PER_HARMONIC_PEAK = 8.0
_OVER = 3.0  # places in the shortest period shown


@dataclass(frozen=True, eq=False)
class Spectrum:
    """Amplitude of the best sine at each period, arrays (m,), periods falling."""

    period_s: Floats
    amplitude_arcsec: Floats


def frequencies_hz(
    duration_s: float, longest_s: float, shortest_s: float, per_peak: float = PER_PEAK
) -> Floats:
    """A grid fine enough for every peak."""
    step = 1.0 / (per_peak * duration_s)
    return np.arange(1.0 / longest_s, 1.0 / shortest_s, step)


def spectrum(utc_s: Floats, values_arcsec: Floats, shortest_s: float) -> Spectrum:
    """Single sines through (n,) values without trend, from half the run's length downwards."""
    duration_s = float(np.ptp(utc_s))
    frequency = frequencies_hz(duration_s, 0.5 * duration_s, shortest_s)
    if not np.any(values_arcsec):
        return Spectrum(1.0 / frequency, np.zeros_like(frequency))
    power = LombScargle(utc_s - utc_s[0], values_arcsec).power(
        frequency, method="fast", assume_regular_frequency=True
    )
    half = np.sqrt(2.0 * np.maximum(power, 0.0)) * float(np.std(values_arcsec))
    return Spectrum(1.0 / frequency, np.asarray(half))


def even_spectrum(
    curve_arcsec: Callable[[Floats], Floats], first_s: float, last_s: float, frequency_hz: Floats
) -> Floats:
    """Amplitude (m,) at each frequency of a curve known at every moment from first to last."""
    places = int(_OVER * (last_s - first_s) * frequency_hz[-1])
    even_s = np.linspace(first_s, last_s, places)
    longer = 2 * int(PER_PEAK) * places
    amplitude = 2.0 / places * np.abs(np.fft.rfft(curve_arcsec(even_s), longer))
    own_hz = np.fft.rfftfreq(longer, float(even_s[1] - even_s[0]))
    return np.interp(frequency_hz, own_hz, amplitude)


def likeliest_period_s(
    utc_s: Floats, values_arcsec: Floats, longest_s: float, shortest_s: float
) -> float:
    """Period whose first harmonics together explain most; a multiple of the true one may win."""
    duration_s = float(np.ptp(utc_s))
    frequency = frequencies_hz(duration_s, longest_s, shortest_s, _PER_HARMONIC_PEAK)
    power = LombScargle(utc_s - utc_s[0], values_arcsec, nterms=_TERMS).power(
        frequency, method="fastchi2", assume_regular_frequency=True
    )
    return float(1.0 / frequency[int(np.argmax(power))])
