"""Kinds of drives whose periodic error must lie within its ±, for the reduced and the long tests.

Truth: the drives, the wander and the air of `tests.truth.wormdrive`, which share nothing with the
analysis. A row is one kind of drive; its period is given for one run in four and found in the
others.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.tracking.periodic import analyse
from core.tracking.run import UnusableRun, run_without_place
from core.tracking.wormfolding import INTERVAL_FACTOR
from tests.truth.wormdrive import drawn, reading_times, watched

SEED = 20261203
FEWEST_TURNS, MOST_TURNS = 4.0, 9.0
ORDERS = 2  # whose amplitudes are compared; the drives have little beyond


@dataclass(frozen=True)
class Row:
    """A kind of drive as of `drawn`, how many turns are read (None: `FEWEST_TURNS` to
    `MOST_TURNS`), and between which shares those of `ASKED` must be held."""

    what: str
    drive: dict[str, float]
    turns: float | None = None
    least: float = 0.90
    most: float = 1.0


ROWS = (
    Row("turns alike, nothing beside the worm", {}, least=0.93, most=0.97),
    Row(
        "turns that differ by 3 %, a pinion of 0.3″",
        {"scaled": 0.03, "own": 0.03, "pinion_arcsec": 0.3},
    ),
    Row("a pinion of 1.5″ with a period of 50 to 110 s", {"pinion_arcsec": 1.5}),
    Row("turns that differ by 10 % in size", {"scaled": 0.1}),
    Row("turns that differ by 10 % in shape", {"own": 0.1}),
    Row("3.2 turns of the worm", {}, turns=3.2),
)
ASKED = ("peak to peak", "period")


def harmonic_arcsec(drive, order, places=4096):
    """Amplitude of the curve's swing so many times a turn, summed over the turn."""
    turn = np.arange(places) / places
    wave = np.exp(-2j * np.pi * order * turn)
    return 2.0 * abs(np.mean(drive.worm_arcsec(turn) * wave))


def ratios(row, number, seed=SEED):
    """Sizes of errors over half-widths of the 95 % intervals, by name, of one run; none when it is
    refused."""
    rng = np.random.default_rng([seed, ROWS.index(row), number])
    drive = drawn(rng, **row.drive)
    turns = row.turns or rng.uniform(FEWEST_TURNS, MOST_TURNS)
    leg = watched(rng, drive, reading_times(rng, turns * drive.period_s))
    try:
        found = analyse(run_without_place(leg), None if number % 4 else drive.period_s)
    except UnusableRun:
        return {}
    size = found.size
    errors = {
        "peak to peak": (
            size.peak_to_peak_arcsec - drive.peak_to_peak_arcsec(),
            size.peak_to_peak_sigma_arcsec,
        ),
        "rms": (size.rms_arcsec - drive.rms_arcsec(), size.rms_sigma_arcsec),
    }
    for wave in found.harmonics[:ORDERS]:
        truth = harmonic_arcsec(drive, wave.order)
        errors[f"amplitude {wave.order}"] = (
            wave.amplitude_arcsec - truth,
            wave.amplitude_sigma_arcsec,
        )
    size, period_s, _ = drive.pinion
    for other in found.other_periods:
        if abs(turns * drive.period_s * (1.0 / other.period_s - 1.0 / period_s)) < 0.5:
            errors["pinion, if named"] = (
                other.amplitude_arcsec - size,
                other.amplitude_sigma_arcsec,
            )
    if number % 4:
        errors["period"] = (found.period_s - drive.period_s, found.period_sigma_s)
    return {name: abs(error) / (INTERVAL_FACTOR * sigma) for name, (error, sigma) in errors.items()}
