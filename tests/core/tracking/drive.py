"""Invented drives with known harmonics under air that remembers itself, for tests only."""

from __future__ import annotations

import numpy as np
from scipy.signal import lfilter

from core.alignment.driftlog.records import Leg

START_S = 1.795e9


def wandering(rng, number, interval_s, memory_s, rms):
    """An Ornstein–Uhlenbeck process by its exact transition."""
    keep = np.exp(-interval_s / memory_s)
    first = rng.normal()
    shock = rng.normal(size=number) * np.sqrt(1.0 - keep * keep)
    values, _ = lfilter([1.0], [1.0, -keep], shock, zi=[keep * first])
    return rms * values


def worm(utc_s, period_s, waves):
    """Lead of a worm; `waves`: pairs of amplitude and phase (degrees) at START_S."""
    turn = 2.0 * np.pi * (utc_s - START_S) / period_s
    return sum(
        size * np.sin(order * turn + np.deg2rad(phase))
        for order, (size, phase) in enumerate(waves, start=1)
    )


def star(lead, utc_s, *, dec_deg=0.0, north=None, label="run"):
    """A leg whose star shows this lead of the drive."""
    east = lead * np.cos(np.deg2rad(dec_deg))
    return Leg(label, 30.0, dec_deg, utc_s, np.zeros_like(utc_s) if north is None else north, east)


def times(minutes, interval_s=2.0):
    return START_S + np.arange(0.0, 60.0 * minutes, interval_s)


WAVES = ((8.0, 20.0), (2.5, 100.0), (1.0, 250.0))


def noisy_run(seed, *, minutes=40.0, interval_s=2.0, period_s=479.0, waves=WAVES, slow=0.4, **more):
    """A leg: worm, air (0.7″, forgets in 2 s) in both axes, and a slow wander of the drive."""
    rng = np.random.default_rng(seed)
    utc_s = times(minutes, interval_s)
    air = [wandering(rng, utc_s.size, interval_s, 2.0, 0.7) for _ in range(2)]
    lead = worm(utc_s, period_s, waves) + air[0]
    lead = lead + wandering(rng, utc_s.size, interval_s, 100.0, slow)
    return star(lead, utc_s, north=air[1], **more)
