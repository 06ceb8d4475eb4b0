from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest

from core.sky import catalogues, clocks, places
from core.sky.catalogues import Star
from core.sky.site import Air, Site

NORTH = Site(48.0, 11.0, 500.0)
SOUTH = Site(-34.0, 18.5, 50.0)
AIR = Air(960.0)
NIGHT = clocks.parse_utc("2026-11-24T20:00Z")


@pytest.fixture
def stars() -> catalogues.Catalogue:
    return catalogues.load_stars()


@pytest.mark.parametrize(
    ("text", "hip"),
    [
        ("Polaris", 11767), ("polaris ", 11767), ("HIP 11767", 11767), ("hip11767", 11767),
        ("11767", 11767), ("north star", 11767), ("σ Octantis", 104382), ("Σ OCTANTIS", 104382),
        ("sigma octantis", 104382), ("Deneb-Algedi", 107556), ("rigil  kentaurus", 71683),
        ("Markab", 113963), ("Algenib", 1067), ("Gienah", 59803),
    ],
)  # fmt: skip
def test_find(stars: catalogues.Catalogue, text: str, hip: int) -> None:
    star = stars.find(text)
    assert star is not None
    assert star.hip == hip


@pytest.mark.parametrize("text", ["", " ", "hip", "Nemo", "HIP 1", "0", "9999999999", "Foramen"])
def test_find_nothing(stars: catalogues.Catalogue, text: str) -> None:
    assert stars.find(text) is None


def test_beginning_with(stars: catalogues.Catalogue) -> None:
    offered = stars.beginning_with("Al")
    assert offered[0].name == "Altair"
    assert [star.magnitude for star in offered] == sorted(star.magnitude for star in offered)
    assert len({star.hip for star in offered}) == len(offered)
    assert stars.beginning_with("") == []


@pytest.mark.parametrize(("hip", "name"), [(102488, "Aljanah"), (102422, "HIP 102422 (Cepheus)")])
def test_star_without_a_name_is_called_by_number_and_constellation(
    stars: catalogues.Catalogue, hip: int, name: str
) -> None:
    assert stars.by_hip[hip].name == name


def test_table_is_whole(stars: catalogues.Catalogue) -> None:
    assert len(stars.stars) == 7982
    assert len({star.constellation for star in stars.stars}) == 88
    magnitudes = np.array([star.magnitude for star in stars.stars])
    assert np.all(np.diff(magnitudes) >= 0.0)
    assert np.isfinite(stars.astrometry).all()
    assert stars.stars[0].name == "Sirius"
    row = stars.stars.index(stars.by_hip[91262])
    assert stars.astrometry[0, row] == stars.by_hip[91262].ra_deg


def test_proper_motion_over_a_century(stars: catalogues.Catalogue) -> None:
    """1″ a year eastwards at declination 60° is 2″ a year of right ascension."""
    star = Star(1, "fast", 100.0, 60.0, 1000.0, -500.0, 0.0, 5.0, "Lynx")
    ra_deg, dec_deg = stars.at_epoch(star, clocks.parse_utc("2100-01-01T12:00Z"))
    assert (ra_deg - 100.0) * 3600.0 == pytest.approx(200.0, abs=0.2)
    assert (dec_deg - 60.0) * 3600.0 == pytest.approx(-50.0, abs=0.1)


def test_parallax_swings_through_the_year(stars: catalogues.Catalogue) -> None:
    """A star at the ecliptic pole runs on a circle of its parallax."""
    star = Star(1, "near", 270.0, 66.5607, 0.0, 0.0, 1000.0, 5.0, "Draco")
    offsets = []
    for day in range(0, 365, 30):
        ra_deg, dec_deg = stars.at_epoch(star, NIGHT + day * 86400.0)
        east = (ra_deg - star.ra_deg) * np.cos(np.radians(star.dec_deg))
        offsets.append(3600.0 * np.hypot(east, dec_deg - star.dec_deg))
    assert offsets == pytest.approx([1.0] * len(offsets), abs=0.03)


@pytest.mark.parametrize("site", [NORTH, SOUTH])
def test_up_now_is_what_each_star_says(stars: catalogues.Catalogue, site: Site) -> None:
    seen = stars.up_now(site, AIR, NIGHT, 25.0, 20)
    assert len(seen) == 20
    brightness = [now.star.magnitude for now in seen]
    assert brightness == sorted(brightness)
    for now in seen:
        place_then = stars.at_epoch(now.star, NIGHT)
        azimuth, altitude = places.horizontal_deg(*place_then, site, AIR, NIGHT)
        hour_angle, _ = places.hour_angle_and_declination(*place_then, site, NIGHT)
        assert now.altitude_deg == pytest.approx(float(altitude), abs=1e-9)
        assert now.altitude_deg >= 25.0
        assert now.azimuth_deg == pytest.approx(float(azimuth), abs=1e-9)
        assert now.hour_angle_deg == pytest.approx(float(np.degrees(hour_angle)), abs=1e-9)
        assert (now.azimuth_deg > 180.0) == (now.hour_angle_deg > 0.0)


def test_up_now_leaves_no_bright_star_out(stars: catalogues.Catalogue) -> None:
    everything = stars.up_now(NORTH, AIR, NIGHT, -90.0, 99999)
    assert len(everything) == len(stars.stars)
    high = [now.star for now in everything if now.altitude_deg >= 30.0]
    assert [now.star for now in stars.up_now(NORTH, AIR, NIGHT, 30.0, 15)] == high[:15]


def test_pole_star_stands_at_the_latitude(stars: catalogues.Catalogue) -> None:
    seen = {now.star.name: now for now in stars.up_now(NORTH, AIR, NIGHT, 20.0, 999)}
    assert seen["Polaris"].altitude_deg == pytest.approx(48.0, abs=0.7)
    assert "σ Octantis" not in seen
    seen = {now.star.name: now for now in stars.up_now(SOUTH, AIR, NIGHT, 20.0, 9999)}
    assert seen["σ Octantis"].altitude_deg == pytest.approx(34.0, abs=1.3)
    assert seen["σ Octantis"].azimuth_deg == pytest.approx(180.0, abs=1.5)


def test_unreadable_table_is_said_in_a_sentence(tmp_path: Path) -> None:
    with pytest.raises(RuntimeError, match="entered by their coordinates"):
        catalogues.read_stars(tmp_path / "absent.csv")
    for content in ("", "hip,name\n1,Vega\n", "\x00\x01"):
        (tmp_path / "stars.csv").write_text(content, encoding="utf-8")
        with pytest.raises(RuntimeError, match=r"stars\.csv cannot be read"):
            catalogues.read_stars(tmp_path / "stars.csv")
    half = catalogues.STARS.read_text(encoding="utf-8")[:50_010]
    (tmp_path / "stars.csv").write_text(half, encoding="utf-8")
    with pytest.raises(RuntimeError, match=r"stars\.csv cannot be read"):
        catalogues.read_stars(tmp_path / "stars.csv")


def test_no_star_that_the_air_lifts_over_the_limit_is_missed() -> None:
    """Dense cold air lifts most; all stars are computed here, one by one in `up_now` only some."""
    site, air, utc_s = Site(50.0, 10.0), Air(1050.0, -40.0), 1_795_569_600.0
    stars = catalogues.load_stars()
    seen = {now.star.hip for now in stars.up_now(site, air, utc_s, 0.0, 10_000)}
    ra_deg, dec_deg = np.array([stars.at_epoch(star, utc_s) for star in stars.stars]).T
    _, altitude_deg = places.horizontal_deg(ra_deg, dec_deg, site, air, utc_s)
    clear = np.abs(altitude_deg) > 0.05  # the two ways differ by diurnal aberration and the like
    for star, altitude, is_clear in zip(stars.stars, altitude_deg, clear, strict=True):
        assert not is_clear or (star.hip in seen) == (altitude > 0.0)
