"""Reference stars: where they may stand, what they are worth, and how they are described."""

from __future__ import annotations

from itertools import combinations

import numpy as np
import pytest

from core.mount.equipment import MountKind
from core.night.flip import PierSide
from core.night.setupstars import (
    HIGHEST_DEG,
    LEVEL_FIRST,
    LOWEST_DEG,
    NEAREST_MERIDIAN_DEG,
    NEAREST_MOON_DEG,
    NEAREST_POLE_DEG,
    NoReferenceStars,
    choose,
    recognise,
)
from core.sky import catalogues
from core.sky.bodies import Body, BodyNow
from core.sky.catalogues import Star, StarNow
from core.sky.clocks import parse_utc
from core.sky.places import separation_deg
from core.sky.site import Air, Site

UTC_S = parse_utc("2026-11-24T20:00Z")
AIR = Air(960.0)
SITES = [Site(48.0, 11.0, 500.0), Site(-33.0, 18.0), Site(0.0, 0.0), Site(70.0, 20.0)]


@pytest.mark.parametrize("site", SITES)
@pytest.mark.parametrize("kind", list(MountKind))
@pytest.mark.parametrize("count", [2, 3])
def test_stars_stand_where_they_should(site: Site, kind: MountKind, count: int) -> None:
    moon = BodyNow(Body.MOON, 200.0, 40.0, 40.0, 0.0)
    done = choose(catalogues.load_stars(), site, AIR, UTC_S, kind, count, bodies=[moon])
    assert len(done.stars) == count
    for one in done.stars:
        assert LOWEST_DEG <= one.now.altitude_deg <= HIGHEST_DEG
        assert abs(one.now.star.dec_deg) <= 90.0 - NEAREST_POLE_DEG
        place = one.now.azimuth_deg, one.now.altitude_deg
        assert separation_deg(200.0, 40.0, *place) > NEAREST_MOON_DEG
        if kind is MountKind.GERMAN_EQUATORIAL:
            assert abs(one.now.hour_angle_deg) > NEAREST_MERIDIAN_DEG
            assert one.side is (PierSide.EAST if one.now.hour_angle_deg > 0.0 else PierSide.WEST)
        else:
            assert one.side is None
    turns = [abs((a.now.azimuth_deg - b.now.azimuth_deg + 180.0) % 360.0 - 180.0)
             for a, b in combinations(done.stars, 2)]  # fmt: skip
    assert min(turns) >= 45.0
    assert np.ptp([one.now.altitude_deg for one in done.stars]) >= 10.0
    by_chance_as_good = "do as well" in done.sentence
    assert done.error_arcmin < done.careless_arcmin / 1.14 or by_chance_as_good
    assert site.latitude_deg == 0.0 or not by_chance_as_good
    assert done.worst_arcmin == pytest.approx(np.max(done.map_error_arcmin))
    assert (LEVEL_FIRST in done.notes) is (not kind.is_equatorial)


def test_german_mount_takes_one_side_after_the_other() -> None:
    for site in SITES:
        done = choose(catalogues.load_stars(), site, AIR, UTC_S, MountKind.GERMAN_EQUATORIAL)
        sides = [one.side for one in done.stars]
        assert sides == sorted(sides, key=lambda side: side is PierSide.EAST)
        assert len(set(sides)) == 2


def test_obstructed_sky_is_left_out() -> None:
    def clear(azimuth: np.ndarray, altitude: np.ndarray) -> np.ndarray:
        return (azimuth < 180.0) & (altitude > 0.0)

    done = choose(catalogues.load_stars(), SITES[0], AIR, UTC_S, MountKind.ALT_AZIMUTH, clear=clear)
    assert all(one.now.azimuth_deg < 180.0 for one in done.stars)


def test_no_clear_sky_is_a_sentence() -> None:
    def clear(azimuth: np.ndarray, altitude: np.ndarray) -> np.ndarray:
        return np.zeros_like(azimuth + altitude, dtype=bool)

    with pytest.raises(NoReferenceStars, match="Only 0 fit stars are up"):
        choose(catalogues.load_stars(), SITES[0], AIR, UTC_S, MountKind.ALT_AZIMUTH, clear=clear)


def test_by_day_no_star_is_chosen() -> None:
    sun = BodyNow(Body.SUN, 180.0, 10.0, 10.0, 0.0)
    with pytest.raises(NoReferenceStars, match="The Sun is up"):
        choose(catalogues.load_stars(), SITES[0], AIR, UTC_S, MountKind.ALT_AZIMUTH, bodies=[sun])


def test_sentence_names_both_choices() -> None:
    done = choose(catalogues.load_stars(), SITES[0], AIR, UTC_S, MountKind.ALT_AZIMUTH)
    for name in (*(one.now.star.name for one in done.stars), *done.careless_names):
        assert name in done.sentence


def star(name: str, magnitude: float, azimuth_deg: float, altitude_deg: float) -> StarNow:
    entry = Star(1, name, 0.0, 0.0, 0.0, 0.0, 0.0, magnitude, "Lyra")
    return StarNow(entry, azimuth_deg, altitude_deg, 0.0)


@pytest.mark.parametrize(
    ("neighbour", "words"),
    [
        (star("Bright", 0.0, 100.0, 40.0), "right as you face it"),
        (star("Bright", 0.0, 80.0, 40.0), "left as you face it"),
        (star("Bright", 0.0, 90.0, 60.0), "above as you face it"),
        (star("Bright", 0.0, 97.0, 33.0), "lower right as you face it"),
        (star("Faint", 3.0, 100.0, 40.0), "No brighter star stands within three fists"),
        (star("Far", 0.0, 200.0, 40.0), "No brighter star stands within three fists"),
    ],
)
def test_words_to_recognise_a_star(neighbour: StarNow, words: str) -> None:
    one = star("Vega", 1.0, 90.0, 40.0)
    said = recognise(one, [neighbour, one])
    assert said.startswith("Vega, in Lyra: 40° high in the east, 4 fists at arm's length")
    assert words in said


def test_overhead() -> None:
    one = star("Vega", 1.0, 180.0, 84.0)
    assert "almost overhead, 84° high towards the south" in recognise(one, [one])


def test_planets_are_pointed_out_where_they_could_be_mistaken() -> None:
    one = star("Vega", 1.0, 90.0, 40.0)
    near = BodyNow(Body.MARS, 100.0, 40.0, 40.0, 0.0)
    far, set_already = (
        BodyNow(Body.VENUS, 180.0, 40.0, 40.0, 0.0),
        BodyNow(Body.JUPITER, 90.0, -1.0, -1.0, 0.0),
    )
    said = recognise(one, [one], [near, far, set_already])
    assert "Do not take the planet Mars for it, 8° away (right)." in said
    assert "Venus" not in said
    assert "Jupiter" not in said


def test_a_careless_star_near_the_zenith_is_named_where_it_would_serve() -> None:
    """An evening of September at 48° north: Vega and Deneb stand overhead."""
    evening = parse_utc("2026-09-21T19:00Z")
    done = choose(catalogues.load_stars(), SITES[0], AIR, evening, MountKind.ALT_AZIMUTH)
    overhead = {
        now.star.name for now in catalogues.load_stars().up_now(SITES[0], AIR, evening, 70.0, 9)
    }
    assert done.careless_overhead in overhead & set(done.careless_names)
    assert f"if {done.careless_overhead} were easy to centre" in done.sentence
