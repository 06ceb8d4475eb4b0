"""What the spectrum shows of a drive turned part by part, however its star was read.

Reference: sines fitted one frequency after the other, by least squares, to what air and wander
alone did at the very readings.
"""

import numpy as np
import pytest

from core.tracking.periodic import analyse
from core.tracking.run import Bins, Readings, run_without_place
from core.tracking.wormperiod import spectrum
from tests.truth.wormdrive import FINE_S, drawn, made_of_waves, reading_times, watched

LONGEST_S = 40.0
MINUTES = 50.0


def every_nth_lost(time_s, lost):
    """As a camera does that stores a picture after so many."""
    return time_s[np.arange(time_s.size) % lost != 0]


CADENCES = {
    "every second": {"interval_s": 1.0},
    "every two seconds": {"interval_s": 2.0},
    "three readings, then two, in eight seconds": {"interval_s": 3.0},
    "every five seconds": {"interval_s": 5.0},
    "jittered": {"interval_s": 3.0, "jitter_s": 0.6},
    "a fifth lost": {"interval_s": 2.0, "dropped": 0.2},
    "jittered and a third lost": {"interval_s": 1.5, "jitter_s": 0.4, "dropped": 0.33},
}


def taken(name, lost=0, **drive):
    rng = np.random.default_rng(4)
    made = drawn(rng, pitch_arcsec=0.0, **drive)
    time_s = reading_times(rng, 60.0 * MINUTES, **CADENCES[name])
    time_s = every_nth_lost(time_s, lost) if lost else time_s
    return made, time_s, watched(rng, made, time_s, air_rms=0.5, wander_rms=0.1)


def amplitudes(time_s, values, period_s):
    found = []
    for period in period_s:
        turn = 2.0 * np.pi * time_s / period
        columns = np.column_stack([np.sin(turn), np.cos(turn), np.ones_like(turn)])
        found.append(np.hypot(*np.linalg.lstsq(columns, values, rcond=None)[0][:2]))
    return np.array(found)


def shown_and_held(made, time_s, leg):
    """Largest amplitude at short periods: in the spectrum, and in what the drive did not do."""
    seen = analyse(run_without_place(leg), made.period_s).spectrum
    short = seen.period_s < LONGEST_S
    rest = leg.east_arcsec - made.lead_arcsec(time_s + 0.5)
    rest = rest - np.polyval(np.polyfit(time_s, rest, 2), time_s)
    held = amplitudes(time_s, rest, seen.period_s[short])
    return seen.amplitude_arcsec[short].max(), held.max()


@pytest.mark.parametrize("name", CADENCES)
def test_no_cadence_makes_a_peak_of_its_own(name):
    shown, held = shown_and_held(*taken(name))
    assert shown < 1.3 * held + 0.02
    assert shown > 0.7 * held


@pytest.mark.parametrize("lost", [5, 12, 16])
def test_nor_does_a_reading_lost_at_even_intervals(lost):
    shown, held = shown_and_held(*taken("every two seconds", lost=lost))
    assert shown < 1.3 * held + 0.02


@pytest.mark.parametrize("name", [name for name in CADENCES if "five" not in name])
def test_a_fast_wave_stands_where_it_is_with_its_size(name):
    made, time_s, leg = taken(name)
    leg.east_arcsec[:] += 0.8 * np.sin(2.0 * np.pi * (time_s + 0.5) / 11.3)
    seen = analyse(run_without_place(leg), made.period_s).spectrum
    short = seen.period_s < LONGEST_S
    peak = int(np.argmax(np.where(short, seen.amplitude_arcsec, 0.0)))
    assert seen.period_s[peak] == pytest.approx(11.3, rel=0.005)
    assert seen.amplitude_arcsec[peak] == pytest.approx(0.8, abs=0.08)
    elsewhere = short & (np.abs(seen.period_s / 11.3 - 1.0) > 0.05)
    assert seen.amplitude_arcsec[elsewhere].max() < 0.25


@pytest.mark.parametrize("name", CADENCES)
def test_the_worm_stands_where_it_is_with_its_size(name):
    made, _, leg = taken(name)
    found = analyse(run_without_place(leg), made.period_s)
    seen = found.spectrum
    peak = int(np.argmax(seen.amplitude_arcsec))
    turn = np.linspace(0.0, 1.0, 2000, endpoint=False)
    size = 2.0 * abs(np.mean(made.worm_arcsec(turn) * np.exp(-2j * np.pi * turn)))
    assert seen.period_s[peak] == pytest.approx(made.period_s, rel=0.03)
    assert seen.amplitude_arcsec[peak] == pytest.approx(size, rel=0.06)


def test_readings_of_a_long_run_are_gathered_by_whole_numbers():
    rng = np.random.default_rng(2)
    time_s = reading_times(rng, 8.0 * 3600.0, interval_s=0.4, jitter_s=0.1)
    air = made_of_waves(rng, 8.0 * 3600.0 + 1.0, 0.3, lambda hz: 1.0 / (1.0 + (hz / 0.1) ** 2))
    fast = np.sin(2.0 * np.pi * time_s / 0.83)  # beats slowly with two readings
    lead = fast + np.interp(time_s, FINE_S * np.arange(air.size), air)
    readings = Readings.of(time_s, lead, np.zeros(time_s.size, dtype=np.intp), 1)
    bins, shortest_s = readings.for_spectrum()
    assert set(bins.count[:-1]) == {3.0}
    np.testing.assert_allclose(bins.utc_s[0], time_s[:3].mean())
    seen = spectrum(bins.utc_s, bins.means(lead), shortest_s)
    assert seen.amplitude_arcsec.max() < 0.12


def test_no_bin_reaches_over_a_break():
    time_s = np.arange(11.0)
    piece = (time_s >= 4).astype(np.intp)
    bins = Bins.of_readings(time_s, piece, 3)
    assert bins.starts.tolist() == [0, 3, 4, 7, 10]
    assert bins.count.tolist() == [3, 1, 3, 3, 1]
