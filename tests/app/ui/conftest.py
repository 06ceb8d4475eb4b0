"""A made-up leg and what a fit says of it."""

from types import SimpleNamespace

import numpy as np
import pytest

from core.alignment.driftlog.records import Leg

START_S = 1_790_000_000.0


@pytest.fixture
def leg() -> Leg:
    """200 readings, one every 2 s, drifting 0.5″ north a minute from an origin at 100″."""
    utc_s = START_S + 2.0 * np.arange(200)
    north = 100.0 + 0.5 * (utc_s - START_S) / 60.0
    return Leg("Vega", 279.2, 38.8, utc_s, north)


@pytest.fixture
def trend(leg: Leg) -> SimpleNamespace:
    """Says what a fit of the first 150 readings says, with reading 3 set aside and a step."""
    utc_s = leg.utc_s[:150]
    line = leg.north_arcsec[:150]
    return SimpleNamespace(
        rejected=np.arange(150) == 3,
        steps=(SimpleNamespace(utc_s=START_S + 120.0, size_arcsec=3.0),),
        curve_utc_s=utc_s,
        curve_arcsec=line,
        curve_low_arcsec=line - 1.0,
        curve_high_arcsec=line + 1.0,
        bin_utc_s=utc_s[::10],
        bin_arcsec=line[::10],
    )
