"""The tests' own ray trace against published values, so that it may serve as truth elsewhere."""

import numpy as np
import pytest

from core.sky.refraction import Refraction
from core.sky.site import Air
from tests.truth.raytrace import RayTrace

ARCSEC = np.rad2deg(1.0) * 3600.0


def test_the_trace_meets_the_table_of_hohenkerk_and_sinclair():
    # Tabulated in the notes of SOFA/ERFA refco: 1005 hPa, 280.15 K, 80 %, 574 nm, latitude 50°.
    trace = RayTrace(1005.0, 7.0, 0.8, 0.574, 50.0, 0.0)
    zenith_deg = [10, 20, 30, 40, 45, 50, 55, 60, 65, 70, 72, 74, 76, 78, 80]
    expected = [10.27, 21.19, 33.61, 48.82, 58.16, 69.28, 82.97, 100.51, 124.23, 158.63, 177.32,
                200.35, 229.45, 267.44, 319.13]  # fmt: skip
    traced = trace.refraction_rad(np.deg2rad(zenith_deg)) * ARCSEC
    np.testing.assert_allclose(traced, expected, atol=0.06)


def test_the_trace_meets_the_full_integration_of_pal():
    # Starlink PAL, test t_ref. PAL takes another dispersion formula: 4 parts in 100,000 apart.
    trace = RayTrace(678.9, 280.0 - 273.15, 0.9, 0.55, np.rad2deg(-0.3), 3456.7, 0.006)
    assert trace.refraction_rad(1.4)[0] == pytest.approx(0.00106715763018568, rel=5e-5)


@pytest.mark.parametrize(("pressure_hpa", "temperature_c"), [(1010.0, 10.0), (800.0, -5.0)])
def test_ours_follows_the_trace_down_to_ten_degrees(pressure_hpa, temperature_c):
    air = Air(pressure_hpa, temperature_c)
    trace = RayTrace(pressure_hpa, temperature_c, 0.5, 0.55, 45.0, 0.0)
    altitude_deg = np.array([10.0, 15.0, 20.0, 30.0, 45.0, 60.0, 80.0])
    ours = Refraction.of(air).lift_rad(np.deg2rad(altitude_deg)) * ARCSEC
    traced = trace.refraction_rad(np.deg2rad(90.0 - altitude_deg)) * ARCSEC
    np.testing.assert_allclose(ours, traced, atol=0.8)
    np.testing.assert_allclose(ours[1:], traced[1:], atol=0.15)
