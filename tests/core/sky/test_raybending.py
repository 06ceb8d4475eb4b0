"""The integral along a ray: its quadrature, and limits in which the bending is elementary."""

import numpy as np
import pytest

from core.sky import refraction
from core.sky.refraction import Layers, Refraction
from core.sky.site import Air

ARCSEC = np.rad2deg(1.0) * 3600.0
ALTITUDE = np.deg2rad(np.array([-1.0, -0.3, 0.0, 0.5, 2.0, 5.0, 10.0, 16.0]))
AIRS = [Layers(2.8e-4, 0.0, 283.0), Layers(3.3e-4, 0.0, 233.0), Layers(2.6e-4, 1.5e-6, 308.0)]


@pytest.mark.parametrize("air", AIRS)
def test_more_nodes_change_nothing(air: Layers, monkeypatch) -> None:
    few = air.bending_rad(ALTITUDE) * ARCSEC
    monkeypatch.setattr(refraction, "_NODES", 60)
    monkeypatch.setattr(refraction, "_ROUNDS", 9)
    assert few == pytest.approx(air.bending_rad(ALTITUDE) * ARCSEC, abs=0.001)


def test_high_up_only_the_air_on_the_ground_counts() -> None:
    """Snell's law through flat layers, whatever they are: n sin z₀ = sin(z₀ + R)."""
    observed = np.deg2rad([3.0, 10.0])
    flat = np.arcsin(1.00028 * np.sin(observed)) - observed
    bent = AIRS[0].bending_rad(np.pi / 2 - observed)
    assert bent == pytest.approx(flat, rel=2e-3)  # the Earth's curve: height of the air over radius


def test_the_polynomial_follows_the_rays() -> None:
    air = Air(1010.0, 10.0, 0.0)
    refraction = Refraction.of(air)
    # n − 1 of dry air by A and B themselves: A − B is it, less half its square.
    dry = refraction.a_rad - refraction.b_rad
    dry += 0.5 * dry * dry
    altitude = np.deg2rad(np.linspace(-1.0, 14.0, 200))
    rays = Layers(dry, 0.0, 283.15).bending_rad(altitude)
    assert refraction.lift_rad(altitude) * ARCSEC == pytest.approx(rays * ARCSEC, abs=0.01)
