"""Refraction near the horizon against the tests' own ray trace: cold and warm, at sea and high up.

The trace is Hohenkerk & Sinclair's (NAO Technical Note 63, 1985), held to published values in
tests/published/test_ray_trace.py: another integral through another model of the air than ours.
"""

from __future__ import annotations

from itertools import product

import numpy as np
import pytest

from core.alignment.axis.solution import pole_refraction_arcmin
from core.sky.pole import elevated_pole
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from tests.truth.raytrace import RayTrace

ARCSEC = np.rad2deg(1.0) * 3600.0
ARCMIN = np.rad2deg(1.0) * 60.0

# Largest errors as the refraction's own page states them, by observed altitude in degrees.
STATED_ARCSEC = {
    60.0: 0.05, 30.0: 0.05, 20.0: 0.05, 16.0: 0.05, 15.0: 0.05, 14.0: 0.05, 13.0: 0.1, 12.0: 0.1,
    10.0: 0.1, 8.0: 0.2, 6.0: 0.35, 5.0: 0.5, 4.0: 0.8, 2.0: 2.6, 0.5: 9.0,
}  # fmt: skip
PRESSURES_AT_M = [(1030.0, 0.0), (1010.0, 0.0), (850.0, 1500.0), (700.0, 3000.0)]
TEMPERATURES_C = [-20.0, -5.0, 10.0, 30.0]
HUMIDITIES = [0.0, 0.5, 1.0]
LATITUDES_DEG = [5.0, 45.0]
ANY_AIR = [
    Air(1010.0), Air(1030.0, -40.0), Air(700.0, -20.0, 1.0), Air(1030.0, 30.0, 1.0),
    Air(500.0, -50.0, 0.0), Air(1085.0, 55.0, 0.2), Air(1.0), Air(1010.0, 10.0, 0.5, 0.35),
]  # fmt: skip


def traced(air: Air, latitude_deg: float, elevation_m: float) -> RayTrace:
    parts = air.pressure_hpa, air.temperature_c, air.relative_humidity, air.wavelength_um
    return RayTrace(*parts, latitude_deg, elevation_m)


@pytest.mark.parametrize("temperature_c", TEMPERATURES_C)
@pytest.mark.parametrize(("pressure_hpa", "elevation_m"), PRESSURES_AT_M)
def test_the_lift_keeps_to_the_trace_as_is_said(pressure_hpa, elevation_m, temperature_c) -> None:
    altitude_rad = np.deg2rad(list(STATED_ARCSEC))
    for humidity, latitude_deg in product(HUMIDITIES, LATITUDES_DEG):
        air = Air(pressure_hpa, temperature_c, humidity)
        truth = traced(air, latitude_deg, elevation_m).refraction_rad(np.pi / 2 - altitude_rad)
        error = np.abs(Refraction.of(air).lift_rad(altitude_rad) - truth) * ARCSEC
        assert np.all(error <= list(STATED_ARCSEC.values()))


@pytest.mark.parametrize("wavelength_um", [0.4, 0.7, 0.9])
def test_other_colours_are_bent_as_the_trace_has_them(wavelength_um: float) -> None:
    air = Air(1010.0, 10.0, 0.5, wavelength_um)
    altitude_rad = np.deg2rad([5.0, 8.0, 12.0])
    truth = traced(air, 45.0, 0.0).refraction_rad(np.pi / 2 - altitude_rad)
    assert Refraction.of(air).lift_rad(altitude_rad) * ARCSEC == pytest.approx(
        truth * ARCSEC, abs=0.5
    )


@pytest.mark.parametrize("latitude_deg", [4.0, 5.0, 8.0, -5.0, -12.0, 20.0])
@pytest.mark.parametrize("temperature_c", [-20.0, 10.0, 30.0])
def test_the_pole_of_a_low_latitude_is_lifted_as_the_trace_has_it(
    latitude_deg: float, temperature_c: float
) -> None:
    site, air = Site(latitude_deg, 0.0, 0.0), Air(1010.0, temperature_c)
    trace, true_rad = traced(air, latitude_deg, 0.0), np.deg2rad(abs(latitude_deg))
    bend = 0.0
    for _ in range(20):
        bend = float(trace.refraction_rad(np.pi / 2 - true_rad - bend)[0])
    assert elevated_pole(site, air).refraction_arcsec == pytest.approx(bend * ARCSEC, abs=0.5)
    assert pole_refraction_arcmin(site, air) == pytest.approx(bend * ARCMIN, abs=0.5 / 60.0)


@pytest.mark.parametrize("air", ANY_AIR)
def test_it_falls_evenly_from_below_the_horizon_to_the_zenith(air: Air) -> None:
    """In steps of 3.6″: no jump, no bump, never so steep that two heights look alike."""
    altitude_rad = np.deg2rad(np.arange(-1.0, 90.0, 1e-3))
    lift, slope = Refraction.of(air).lift_and_slope(altitude_rad)
    step = np.diff(lift) / np.diff(altitude_rad)
    assert np.all(np.isfinite(lift))
    assert np.all((step < 0.0) & (step > -0.95))
    assert step == pytest.approx(0.5 * (slope[1:] + slope[:-1]), abs=1e-6)
    assert np.all(np.diff(slope) > -1e-9)  # ever slower


@pytest.mark.parametrize("air", ANY_AIR)
def test_below_the_floor_it_is_held(air: Air) -> None:
    refraction = Refraction.of(air)
    lift, slope = refraction.lift_and_slope(np.deg2rad([-1.0, -1.001, -20.0, -90.0]))
    assert lift[1:] == pytest.approx(lift[0], rel=1e-3)
    assert np.all(slope[1:] == 0.0)


@pytest.mark.parametrize("air", ANY_AIR)
def test_there_and_back_from_the_nadir_to_the_zenith(air: Air) -> None:
    refraction = Refraction.of(air)
    true_rad = np.deg2rad(np.concatenate([np.linspace(-90.0, 90.0, 3601), [-1.6, -0.6, 14.0]]))
    observed_rad = refraction.observed_altitude_rad(true_rad)
    back_rad = observed_rad - refraction.lift_rad(observed_rad)
    assert back_rad * ARCSEC == pytest.approx(true_rad * ARCSEC, abs=1e-5)
    one = refraction.observed_altitude_rad(true_rad[1700])
    assert float(one) == observed_rad[1700]
