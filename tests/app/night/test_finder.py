"""Targets by name, by number, by coordinates."""

import pytest

from app.night.plan import Finder, find_target

NOW_S = 1_790_000_000.0


@pytest.mark.parametrize(
    ("text", "ra_deg", "dec_deg"),
    [
        ("00 42 44 +41 16 09", 10.6833, 41.2692),
        ("0h42m44s -41 16", 10.6833, -41.2667),
        ("00:42:44 +41:16:09", 10.6833, 41.2692),
        ("18 36 56, 38 47 01", 279.2333, 38.7836),
    ],
)
def test_coordinates_are_understood(text: str, ra_deg: float, dec_deg: float) -> None:
    (target,) = find_target(text, NOW_S)
    assert (target.ra_deg, target.dec_deg) == pytest.approx((ra_deg, dec_deg), abs=1e-3)


@pytest.mark.parametrize(
    ("text", "name"), [("m31", "M 31"), ("vega", "Vega"), ("sat", "Saturn"), ("moon", "Moon")]
)
def test_names_are_found(text: str, name: str) -> None:
    assert find_target(text, NOW_S)[0].name.startswith(name)


@pytest.mark.parametrize("text", ["", "zzzz", "12 30", "99 99 99 +99 99 99", "+", ",", "1e9,1e9"])
def test_what_is_no_target_is_nothing(text: str) -> None:
    assert find_target(text, NOW_S) == ()


def test_never_the_sun() -> None:
    assert all(target.name != "Sun" for target in find_target("sun", NOW_S))


def test_answers_come_with_their_text(qtbot) -> None:
    finder = Finder(lambda: NOW_S)
    with qtbot.waitSignal(finder.found, timeout=20_000) as found:
        finder.search("m 31")
    assert found.args[0] == "m 31"
    assert found.args[1][0].name.startswith("M 31")
    finder.close()
