"""`python -m core pole`: text and JSON, both hemispheres, and what it says to bad input."""

from __future__ import annotations

import json

import pytest

from core.__main__ import main
from core.sky.clocks import parse_utc

NOW = parse_utc("2026-11-24T20:00Z")
# The names other programs rely on.
PROMISED = {
    "true_pole_altitude_deg", "refracted_pole_altitude_deg", "refraction_arcsec",
    "local_sidereal_time_hours", "pole_star", "magnetic_declination_deg",
}  # fmt: skip
PROMISED_OF_STAR = {
    "name", "right_ascension_deg", "declination_deg", "hour_angle_deg", "polar_distance_arcmin",
    "azimuth_deg", "altitude_deg",
}  # fmt: skip


def run(capsys: pytest.CaptureFixture[str], *options: str) -> tuple[int, str, str]:
    code = main(["pole", *options], NOW)
    printed = capsys.readouterr()
    return code, printed.out, printed.err


def answer(capsys: pytest.CaptureFixture[str], *options: str) -> dict:
    code, out, err = run(capsys, *options, "--json")
    assert (code, err) == (0, "")
    return json.loads(out)


def test_json_of_a_northern_site(capsys) -> None:
    """Polar distance as cross-checked with skyfield: 37.28′ on 2026-11-24."""
    found = answer(
        capsys, "--latitude=48.1", "--longitude=11.6", "--elevation=520", "--pressure=950",
        "--temperature=5", "--utc=2026-11-24T00:00Z",
    )  # fmt: skip
    star = found["pole_star"]
    assert set(found) >= PROMISED
    assert set(star) >= PROMISED_OF_STAR
    assert found["true_pole_altitude_deg"] == 48.1
    lift = 3600.0 * (found["refracted_pole_altitude_deg"] - found["true_pole_altitude_deg"])
    assert found["refraction_arcsec"] == pytest.approx(lift, abs=1e-6)
    assert 45.0 < lift < 55.0
    assert star["name"] == "Polaris"
    assert star["polar_distance_arcmin"] == pytest.approx(37.28, abs=0.02)
    turned = (15.0 * found["local_sidereal_time_hours"] - star["right_ascension_deg"]) % 360.0
    assert turned == pytest.approx(star["hour_angle_deg"] % 360.0, abs=1e-3)
    assert star["clock_angle_deg"]["erect"] == pytest.approx(-star["hour_angle_deg"] % 360.0)
    assert found["magnetic_declination_deg"] == pytest.approx(4.4, abs=0.1)
    assert found["utc"] == "2026-11-24T00:00:00Z"
    assert found["notes"] == []


def test_json_of_a_southern_site_now_with_standard_air(capsys) -> None:
    found = answer(capsys, "--latitude=-34", "--longitude=18,5")
    assert found["utc"] == "2026-11-24T20:00:00Z"
    assert found["pole_star"]["name"] == "σ Octantis"
    assert found["pole_azimuth_deg"] == 180.0
    assert found["air"]["pressure_is_assumed"] is True
    assert found["pole_star"]["polar_distance_arcmin"] == pytest.approx(69.13, abs=0.02)


def test_text_is_for_a_person(capsys) -> None:
    code, out, err = run(capsys, "--latitude=48.1", "--longitude=11.6", "--elevation=520")
    assert (code, err) == (0, "")
    for words in ("The north pole is 48.1000° high", "Polaris stands at azimuth", "erect",
                  "Next upper culmination", "True north is at compass bearing 355.6°",
                  "The Sun should now be", "the standard atmosphere's"):  # fmt: skip
        assert words in out


def test_where_and_when_things_fail_it_is_null_with_a_reason(capsys) -> None:
    found = answer(capsys, "--latitude=86", "--longitude=140", "--utc=2060-06-01T00Z")
    assert found["magnetic_declination_deg"] is None
    said = " ".join(found["notes"])
    for words in ("magnetic model holds", "almost upright", "shorter series", "rotation ends"):
        assert words in said
    found = answer(capsys, "--latitude=90", "--longitude=0")
    assert found["pole_star"]["next"]["eastern_elongation"] is None


@pytest.mark.parametrize(
    ("options", "words"),
    [
        ([], "The place is not known: give --latitude and --longitude"),
        (["--latitude=48"], "The place is not known"),
        (["--latitude=95", "--longitude=150"], "--latitude 95 is outside -90 to 90"),
        (["--latitude=121.5", "--longitude=48.1"], "may be swapped"),
        (["--latitude=48", "--longitude=11", "--utc=yesterday"], "is not a date and time"),
        (["--latitude=48", "--longitude=11", "--pressure=101325"], "outside 0 to 1100"),
    ],
)
def test_bad_input_is_refused_in_a_sentence(capsys, options: list[str], words: str) -> None:
    code, out, err = run(capsys, *options)
    assert (code, out) == (2, "")
    assert words in err
