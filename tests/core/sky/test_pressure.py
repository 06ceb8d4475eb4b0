from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.sky.pressure import elevation_offer, pressure_offer, station_pressure_hpa
from core.sky.refraction import standard_pressure_hpa


# ISO 2533:1975 (International Standard Atmosphere), table of pressure: metres, hPa.
@pytest.mark.parametrize(
    ("elevation_m", "hpa"),
    [(0, 1013.25), (500, 954.61), (1000, 898.76), (1500, 845.59), (2000, 795.01), (3000, 701.21),
     (-300, 1049.81)],
)  # fmt: skip
def test_standard_atmosphere(elevation_m: float, hpa: float) -> None:
    """The table goes by geometric height where both formulas take it as geopotential: 0.1 hPa."""
    assert station_pressure_hpa(1013.25, elevation_m) == pytest.approx(hpa, abs=0.15)
    assert standard_pressure_hpa(elevation_m) == pytest.approx(hpa, abs=0.15)


@given(st.floats(950.0, 1050.0), st.floats(-400.0, 5000.0))
def test_more_at_sea_level_is_more_at_the_station(sea_level_hpa: float, elevation_m: float) -> None:
    station = station_pressure_hpa(sea_level_hpa, elevation_m)
    assert station < station_pressure_hpa(sea_level_hpa + 1.0, elevation_m)
    assert (station < sea_level_hpa) == (elevation_m > 0.0) or abs(elevation_m) < 1e-6


@pytest.mark.parametrize(
    ("typed", "elevation_m", "guess", "words"),
    [
        (29.92, 100.0, 1013.2, "inches of mercury"),
        (760.0, 0.0, 1013.3, "millimetres of mercury"),
        (101.3, 50.0, 1013.0, "kilopascals"),
        (24.9, 1500.0, 843.2, "inches of mercury"),
        (29.92, 1500.0, 845.6, "inches of mercury reduced to sea level"),
        (1013.0, 2400.0, 756.1, "reduced to sea level"),
        (1030.0, 1500.0, 860.1, "reduced to sea level"),
    ],
)
def test_likely_mix_ups_are_asked_about(
    typed: float, elevation_m: float, guess: float, words: str
) -> None:
    offer = pressure_offer(typed, elevation_m)
    assert offer is not None
    assert (offer.typed, offer.guess) == (typed, pytest.approx(guess, abs=0.3))
    assert words in str(offer.question)
    assert f"{typed:g}" in str(offer.question)
    assert "?" in str(offer.question)


@pytest.mark.parametrize(
    ("typed", "elevation_m"),
    [(1013.25, 0.0), (760.0, 2400.0), (0.0, 0.0), (960.0, 0.0), (700.0, 3000.0), (-5.0, 0.0),
     (300.0, 0.0)],
)  # fmt: skip
def test_what_fits_or_fits_nothing_is_left_alone(typed: float, elevation_m: float) -> None:
    assert pressure_offer(typed, elevation_m) is None


@pytest.mark.parametrize(
    ("typed", "station_hpa", "guess_m"),
    [(7200.0, 785.0, 2194.6), (9500.0, None, 2895.6), (29000.0, 1000.0, 8839.2)],
)
def test_feet_are_asked_about(typed: float, station_hpa: float | None, guess_m: float) -> None:
    offer = elevation_offer(typed, station_hpa)
    assert offer is not None
    assert offer.guess == guess_m
    assert "feet?" in str(offer.question)


@pytest.mark.parametrize(
    ("typed", "station_hpa"), [(500.0, None), (2200.0, 785.0), (300.0, 1000.0), (3000.0, 1013.0)]
)
def test_plain_metres_are_left_alone(typed: float, station_hpa: float | None) -> None:
    assert elevation_offer(typed, station_hpa) is None
