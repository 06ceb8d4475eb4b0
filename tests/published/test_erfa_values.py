"""ERFA's own test values (t_erfa_c.c), through our functions where they stand between.

They guard the sign conventions we take from ERFA: hour angle west positive, azimuth from north
through east.
"""

from __future__ import annotations

import erfa
import pytest

from core.sky import clocks
from core.sky.clocks import UNIX_EPOCH_MJD
from core.units import SECONDS_PER_DAY

SAME_NUMBER = 1e-12


def test_earth_rotation_angle() -> None:
    """t_era00: UT1 MJD 54388.0."""
    utc_s = (54388.0 - UNIX_EPOCH_MJD) * SECONDS_PER_DAY
    angle = clocks.earth_rotation_angle_rad(utc_s, 0.0)
    assert angle == pytest.approx(0.4022837240028158102, abs=SAME_NUMBER)


def test_horizontal_from_hour_angle() -> None:
    """t_hd2ae: h 1.1, d 1.2, φ 0.3."""
    expected = (5.916889243730066194, 0.4472186304990486228)
    assert erfa.hd2ae(1.1, 1.2, 0.3) == pytest.approx(expected, abs=SAME_NUMBER)


def test_hour_angle_from_horizontal() -> None:
    """t_ae2hd: a 5.5, e 1.1, φ 0.7."""
    expected = (0.5933291115507309663, 0.9613934761647817620)
    assert erfa.ae2hd(5.5, 1.1, 0.7) == pytest.approx(expected, abs=SAME_NUMBER)


def test_parallactic_angle() -> None:
    """t_hd2pa: h 1.1, d 1.2, φ 0.3."""
    assert erfa.hd2pa(1.1, 1.2, 0.3) == pytest.approx(1.906227428001995580, abs=SAME_NUMBER)
