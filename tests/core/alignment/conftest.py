"""A night of our own invention, drifted by the exact model, for tests of what comes after it."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
import pytest

from core.alignment.drift.path import ApparentTrack
from core.alignment.driftlog.records import Leg
from core.sky.places import hour_angle_and_declination
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD
from tests.truth.night import wandering

START_S = 1.795e9

MakeLeg = Callable[..., Leg]


@pytest.fixture
def air() -> Air:
    return Air(950.0)


@pytest.fixture
def make_leg(air: Air) -> MakeLeg:
    """Builds a leg whose star has the wanted hour angle at its start."""

    def make(
        site: Site,
        hour_angle_deg: float,
        azimuth_arcmin: float,
        altitude_arcmin: float,
        *,
        dec_deg: float = 10.0,
        minutes: float = 6.0,
        interval_s: float = 2.0,
        noise_arcsec: float = 0.7,
        seed: int = 1,
        label: str = "",
    ) -> Leg:
        now, _ = hour_angle_and_declination(0.0, dec_deg, site, np.array([START_S]))
        ra_deg = float(np.rad2deg(now[0]) - hour_angle_deg) % 360.0
        utc_s = START_S + np.arange(0.0, minutes * 60.0, interval_s)
        leg = Leg(label or f"{hour_angle_deg:g}", ra_deg, dec_deg, utc_s, np.zeros_like(utc_s))
        axis = np.array([azimuth_arcmin, altitude_arcmin]) / ARCMIN_PER_RAD
        north = ApparentTrack.of(leg, site, air).north_arcsec(utc_s, axis)
        noise = wandering(np.random.default_rng(seed), utc_s.size, interval_s, 2.0, noise_arcsec)
        return Leg(leg.label, ra_deg, dec_deg, utc_s, north + noise)

    return make
