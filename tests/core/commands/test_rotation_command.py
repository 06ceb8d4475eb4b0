"""Field rotation in a terminal: the promised names, both ways of asking, sentences for mistakes."""

from __future__ import annotations

import json

import pytest

from core.__main__ import main
from core.imaging.rotation import turning

NOW_UTC_S = 1.795e9
PROMISED = {
    "rate_deg_per_hour",
    "parallactic_angle_deg",
    "azimuth_rate_deg_per_hour",
    "altitude_rate_deg_per_hour",
}


def asked(capsys: pytest.CaptureFixture[str], *words: str) -> dict[str, float]:
    assert main(["rotation", *words, "--json"], NOW_UTC_S) == 0
    answer = json.loads(capsys.readouterr().out)
    assert set(answer) >= PROMISED
    return answer


def test_place_by_azimuth_and_altitude(capsys: pytest.CaptureFixture[str]) -> None:
    answer = asked(capsys, "--latitude", "43.7917", "--azimuth", "92.755", "--altitude", "45.507")
    expected = turning(43.7917, 92.755, 45.507)
    assert answer["rate_deg_per_hour"] == pytest.approx(float(expected.rate_deg_per_hour))
    assert answer["rate_deg_per_hour"] == pytest.approx(0.745, abs=0.002)


@pytest.mark.parametrize(
    ("ra", "dec"),
    [("279.2347", "38.7837"), ("279,2347", "38,7837"), ("18h36m56.33s", "38 47 01.3")],
)
def test_place_by_star_and_time_agrees_with_the_place_it_names(
    capsys: pytest.CaptureFixture[str], ra: str, dec: str
) -> None:
    where = ("--latitude", "48.1", "--longitude", "11.6", "--pressure", "950")
    star = asked(capsys, *where, "--ra", ra, "--dec", dec, "--utc", "2026-08-01T23:00Z")
    aside = "--azimuth", str(star["azimuth_deg"]), "--altitude", str(star["altitude_deg"])
    place = asked(capsys, *where, *aside)
    for name in PROMISED:
        assert place[name] == pytest.approx(star[name], abs=1e-9)
    assert star["parallactic_angle_deg"] > 0.0  # Vega at 1h local time in August: in the west


def test_words(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["rotation", "--latitude=-33", "--azimuth=300", "--altitude=40"], NOW_UTC_S) == 0
    said = capsys.readouterr().out
    assert "per hour" in said
    assert "west of the meridian" in said


@pytest.mark.parametrize(
    ("words", "sentence"),
    [
        (["--latitude", "48"], "Give --azimuth and --altitude"),
        (["--latitude", "48", "--azimuth", "10"], "belong together"),
        (["--latitude", "48", "--azimuth", "10", "--altitude", "91"], "between −90° and 90°"),
        (["--latitude", "48", "--azimuth", "10", "--altitude", "90"], "zenith"),
        (["--latitude", "95", "--azimuth", "10", "--altitude", "50"], "beyond ±90"),
        (["--latitude", "48", "--azimuth", "1e308", "--altitude", "5"], "between 0° and 360°"),
        (["--azimuth", "10", "--altitude", "50"], "place is not known"),
        (["--latitude", "48", "--longitude", "1", "--ra", "10"], "belong together"),
        (["--latitude", "48", "--ra", "10", "--dec", "5"], "place is not known"),
        (["--latitude=48", "--longitude=1", "--ra=400", "--dec=5"], "right ascension lies between"),
        (["--latitude=48", "--longitude=1", "--ra", "-5", "--dec=5"], "ascension lies between"),
        (["--latitude=48", "--longitude=1", "--ra=4", "--dec=5", "--utc=noon"], "not a date"),
        (["--latitude=48", "--longitude=1", "--ra=4", "--dec=99"], "declination lies between"),
        (["--latitude=48", "--azimuth=1", "--altitude=4", "--utc=noon"], "--utc belongs to --ra"),
    ],
)
def test_mistakes_are_answered_in_sentences(
    capsys: pytest.CaptureFixture[str], words: list[str], sentence: str
) -> None:
    assert main(["rotation", *words], NOW_UTC_S) == 2
    captured = capsys.readouterr()
    assert sentence in captured.err
    assert captured.out == ""
    assert len(captured.err.splitlines()) == 1


@pytest.mark.parametrize(
    ("latitude", "azimuth", "angle_deg"), [("48", "180", 0.0), ("-34", "0", 180.0)]
)
def test_on_the_meridian_it_is_neither_east_nor_west(
    capsys: pytest.CaptureFixture[str], latitude: str, azimuth: str, angle_deg: float
) -> None:
    where = ("--latitude", latitude, "--azimuth", azimuth, "--altitude", "30")
    assert asked(capsys, *where)["parallactic_angle_deg"] == angle_deg
    assert main(["rotation", *where], NOW_UTC_S) == 0
    assert "(on the meridian)" in capsys.readouterr().out


@pytest.mark.parametrize("azimuth", ["nan", "inf"])
def test_an_azimuth_that_is_no_number_is_named(
    capsys: pytest.CaptureFixture[str], azimuth: str
) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["rotation", "--latitude", "48", "--azimuth", azimuth, "--altitude", "3"], 0.0)
    assert ended.value.code == 2
    assert f"argument --azimuth: “{azimuth}” is not a finite number" in capsys.readouterr().err


def test_air_that_changes_nothing_is_said(capsys: pytest.CaptureFixture[str]) -> None:
    words = ["rotation", "--latitude=48", "--azimuth=90", "--altitude=30", "--temperature=-5"]
    for more, is_said in (([], True), (["--pressure=950", "--elevation=500"], False)):
        assert main([*words, *more], NOW_UTC_S) == 0
        assert ("change nothing" in capsys.readouterr().out) is is_said


def test_no_turning_at_all_has_no_sign(capsys: pytest.CaptureFixture[str]) -> None:
    """At the equator a star due east rises straight up: neither field nor azimuth turns."""
    assert main(["rotation", "--latitude=0", "--azimuth=90", "--altitude=30"], NOW_UTC_S) == 0
    assert "-0.000" not in capsys.readouterr().out
