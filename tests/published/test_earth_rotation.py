"""UT1 and leap seconds against the IERS, through astropy's reader and printed bulletins."""

from __future__ import annotations

import astropy_iers_data
import numpy as np
import pytest
from astropy.utils import iers

from core.sky.clocks import UNIX_EPOCH_MJD, bundled, parse_utc, tai_minus_utc_s
from core.units import SECONDS_PER_DAY

# Bulletin A, which we read, against Bulletin B, which astropy prefers where there is one.
BULLETINS_APART_S = 0.007  # in the 1970s
BULLETINS_APART_SINCE_1990_S = 0.001  # 0.015″ of hour angle


def test_ut1_as_astropy_reads_it() -> None:
    table = iers.IERS_A.open(astropy_iers_data.IERS_A_FILE)
    mjd = table["MJD"].value
    known = np.isfinite(table["UT1_UTC"].value)
    utc_s = (mjd[known] - UNIX_EPOCH_MJD) * SECONDS_PER_DAY
    apart = np.abs(bundled().ut1_minus_utc_s(utc_s) - table["UT1_UTC"].value[known])
    assert known.sum() > 18000
    assert apart.max() < BULLETINS_APART_S
    assert apart[utc_s >= parse_utc("1990-01-01T00Z")].max() < BULLETINS_APART_SINCE_1990_S


# First day of a new value of TAI−UTC: IERS Bulletin C and its predecessors at the BIH.
LEAP_SECONDS = [
    ("1972-01-01", 10), ("1990-01-01", 25), ("1996-01-01", 30), ("1999-01-01", 32),
    ("2006-01-01", 33), ("2009-01-01", 34), ("2012-07-01", 35), ("2015-07-01", 36),
    ("2017-01-01", 37),
]  # fmt: skip


@pytest.mark.parametrize(("day", "seconds"), LEAP_SECONDS)
def test_leap_seconds(day: str, seconds: int) -> None:
    midnight_s = parse_utc(f"{day}T00Z")
    assert tai_minus_utc_s(midnight_s) == seconds
    assert tai_minus_utc_s(midnight_s - 1.0) < seconds


def test_ut1_runs_on_through_a_leap_second() -> None:
    """IERS Bulletin D, tenths of a second: DUT1 is −0.4 s to the end of 2016, then +0.6 s."""
    midnight_s = parse_utc("2017-01-01T00Z")
    before, after = bundled().ut1_minus_utc_s([midnight_s - 1.0, midnight_s])
    assert before == pytest.approx(-0.4, abs=0.05)
    assert after == pytest.approx(0.6, abs=0.05)
    assert after - before == pytest.approx(1.0, abs=1e-5)
