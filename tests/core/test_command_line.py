"""The terminal: from a log file to the answer in text or JSON, and what it says to bad input."""

from __future__ import annotations

import json
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from core.__main__ import main
from core.alignment.driftlog.files import write
from core.alignment.driftlog.records import Header, Leg
from core.sky.site import Site
from tests.truth.night import Night, random_night, wandering

ROOT = Path(__file__).parents[2]
LATER_UTC_S = 2.0e9
# The names other programs rely on.
PROMISED_KEYS = {
    "azimuth_error_arcmin",
    "azimuth_sigma_arcmin",
    "altitude_error_arcmin",
    "altitude_sigma_arcmin",
    "correlation",
    "altitude_error_refracted_arcmin",
    "sky_error_arcmin",
    "legs",
    "azimuth_interval_factor",
    "altitude_interval_factor",
    "sky_sigma_arcmin",
    "combination",
    "advice",
    "notes",
    "rejected_lines",
    "remarks",
    "site",
    "air",
    "priors",
    "contradicting_legs",
}
PROMISED_LEG_KEYS = {
    "drift_arcsec_per_min",
    "drift_sigma_arcsec_per_min",
    "hour_angle_deg",
    "altitude_deg",
}


@pytest.fixture(scope="module")
def night() -> Night:
    """Its truth comes from other places, rotation and refraction than the code under test."""
    rng = np.random.default_rng(11)
    night = random_night(rng, minutes=(8.0, 12.0))
    night.legs = [
        Leg(
            leg.label,
            leg.ra_deg,
            leg.dec_deg,
            leg.utc_s,
            leg.north_arcsec + wandering(rng, leg.utc_s.size, 2.0, 2.0, 0.3),
        )
        for leg in night.legs
    ]
    return night


def header(night: Night) -> Header:
    site, air = night.site, night.air
    return Header(
        site.latitude_deg,
        site.longitude_deg,
        site.elevation_m,
        air.pressure_hpa,
        air.temperature_c,
    )


def place_options(site: Site) -> list[str]:
    return [
        f"--latitude={site.latitude_deg}",
        f"--longitude={site.longitude_deg}",
        f"--elevation={site.elevation_m}",
    ]


@pytest.fixture
def log_file(tmp_path: Path, night: Night) -> Path:
    path = tmp_path / "night.csv"
    path.write_text(write(header(night), night.legs), encoding="utf-8")
    return path


def run(capsys: pytest.CaptureFixture[str], *arguments: object) -> tuple[int, str, str]:
    code = main([str(argument) for argument in arguments], LATER_UTC_S)
    printed = capsys.readouterr()
    return code, printed.out, printed.err


def test_json_has_the_promised_keys_and_recovers_the_truth(capsys, log_file, night) -> None:
    code, out, err = run(capsys, "drift", log_file, "--json")
    assert (code, err) == (0, "")
    answer = json.loads(out)
    assert set(answer) >= PROMISED_KEYS
    assert len(answer["legs"]) == 2
    assert all(set(leg) >= PROMISED_LEG_KEYS for leg in answer["legs"])
    for name in ("azimuth", "altitude"):
        miss = answer[f"{name}_error_arcmin"] - getattr(night, f"{name}_error_arcmin")
        assert abs(miss) < 4.0 * answer[f"{name}_sigma_arcmin"] < 8.0
    lift = answer["altitude_error_arcmin"] - answer["altitude_error_refracted_arcmin"]
    assert 0.2 < lift < 4.0
    assert answer["rejected_lines"] == []
    assert answer["air"]["pressure_is_assumed"] is False


def test_options_stand_before_the_header_and_fill_its_gaps(capsys, tmp_path, night) -> None:
    path = tmp_path / "night.csv"
    path.write_text(write(Header(latitude_deg=-1.0), night.legs))
    code, out, _ = run(capsys, "drift", path, *place_options(night.site), "--json")
    answer = json.loads(out)
    assert code == 0
    assert answer["site"]["latitude_deg"] == night.site.latitude_deg
    assert answer["air"]["pressure_is_assumed"] is True
    miss = answer["azimuth_error_arcmin"] - night.azimuth_error_arcmin
    assert abs(miss) < 4.0 * answer["azimuth_sigma_arcmin"]


def test_text_begins_with_the_words_and_shows_every_leg(capsys, log_file, night) -> None:
    code, out, err = run(capsys, "drift", log_file)
    assert (code, err) == (0, "")
    words, figures, legs, *_ = out.split("\n\n")
    east = night.azimuth_error_arcmin * (1 if night.site.latitude_deg >= 0 else -1) > 0
    assert ("east of the pole: turn it west" if east else "west of the pole: turn it east") in words
    assert ("too high: lower it" if night.altitude_error_arcmin > 0 else "raise it") in words
    assert "±" in words
    assert "from the refracted pole" in figures
    assert "Correlation" in figures
    assert [line.split()[0] for line in legs.splitlines()] == ["leg", "1", "2"]
    assert "nan" not in out
    north_south = "north" if night.site.latitude_deg >= 0 else "south"
    assert f"{abs(night.site.latitude_deg):.4f}° {north_south}" in out


def test_one_leg_gives_null_and_says_what_it_fixes(capsys, tmp_path, night) -> None:
    path = tmp_path / "one.csv"
    path.write_text(write(header(night), night.legs[:1]))
    code, out, _ = run(capsys, "drift", path, "--json")
    answer = json.loads(out)
    assert code == 0
    assert None in (answer["azimuth_error_arcmin"], answer["altitude_error_arcmin"])
    assert answer["sky_error_arcmin"] is None
    assert answer["correlation"] is None
    assert "combination" in answer["combination"]["sentence"]
    code, out, _ = run(capsys, "drift", path)
    assert code == 0
    assert "these legs cannot tell" in out
    assert "One star alone" in out
    assert "nan" not in out


def test_rejected_lines_are_listed_below(capsys, log_file) -> None:
    bad = "".join(f"1,nonsense {number},1,2,3\n" for number in range(25))
    log_file.write_text(log_file.read_text() + bad)
    code, out, _ = run(capsys, "drift", log_file)
    assert code == 0
    assert "Not used: 25 lines of the log." in out
    assert "nonsense 19" in out
    assert "and 5 more" in out
    _, out, _ = run(capsys, "drift", log_file, "--json")
    assert len(json.loads(out)["rejected_lines"]) == 25


def test_the_aim_changes_the_words_only(capsys, log_file) -> None:
    answers = [
        json.loads(run(capsys, "drift", log_file, "--json", "--aim", aim)[1])
        for aim in ("true", "refracted")
    ]
    assert answers[0]["altitude_error_arcmin"] == answers[1]["altitude_error_arcmin"]
    assert answers[0]["advice"]["altitude"] != answers[1]["advice"]["altitude"]


@pytest.mark.parametrize(
    ("options", "words"),
    [
        ([], "The place is not known: give --latitude and --longitude"),
        (["--latitude=48.1"], "The place is not known"),
        (["--latitude=95", "--longitude=150"], "--latitude 95 is outside -90 to 90"),
        (["--latitude=121.5", "--longitude=48.1"], "the two may be swapped"),
        (["--latitude=48.1", "--longitude=11.6", "--pressure=101325"], "outside 0 to 1100"),
    ],
)
def test_a_place_that_cannot_be_is_refused_in_a_sentence(
    capsys, tmp_path, night, options, words
) -> None:
    path = tmp_path / "night.csv"
    path.write_text(write(Header(), night.legs))
    code, out, err = run(capsys, "drift", path, *options)
    assert (code, out) == (2, "")
    assert words in err


def test_a_place_in_the_log_that_cannot_be_is_named_with_its_line(capsys, tmp_path, night) -> None:
    path = tmp_path / "night.csv"
    swapped = "# latitude_deg: 111.6\n# longitude_deg: 48.1\n# clear night\n"
    path.write_text(swapped + write(Header(), night.legs))
    code, out, err = run(capsys, "drift", path)
    assert (code, out) == (2, "")
    assert "The place is not known" in err
    assert "Line 1 was not used: latitude_deg 111.6 is beyond ±90" in err
    assert "may be swapped" in err
    assert len(err.splitlines()) == 2


def test_a_place_on_the_wrong_side_is_refused_because_the_stars_are_down(
    capsys, log_file, night
) -> None:
    wrong = Site(-night.site.latitude_deg, night.site.longitude_deg + 180.0)
    code, out, err = run(capsys, "drift", log_file, *place_options(wrong)[:2])
    assert (code, out) == (2, "")
    assert "below the horizon" in err
    assert "Nothing was computed" in err


def test_offsets_a_thousand_times_too_large_are_refused(capsys, tmp_path, night) -> None:
    legs = [replace(leg, north_arcsec=leg.north_arcsec * 5000.0) for leg in night.legs]
    path = tmp_path / "night.csv"
    path.write_text(write(header(night), legs))
    code, out, err = run(capsys, "drift", path, "--json")
    assert (code, out) == (2, "")
    assert "cannot be seconds of arc" in err
    assert "Nothing was computed" in err


def test_a_stated_error_that_vanishes_gives_no_figures_that_are_none(
    capsys, tmp_path, night
) -> None:
    legs = [
        replace(leg, sigma_arcsec=np.full(leg.utc_s.size, 1e-4), north_arcsec=0.0 * leg.utc_s)
        for leg in night.legs
    ]
    path = tmp_path / "night.csv"
    path.write_text(write(header(night), legs))
    code, out, _ = run(capsys, "drift", path, "--json")
    assert code == 0
    assert json.loads(out)["azimuth_sigma_arcmin"] >= 0.0
    path.write_text(path.read_text().replace("0.0001", "1e-162"))
    code, out, err = run(capsys, "drift", path, "--json")
    assert (code, out) == (2, "")
    assert "finer than any instrument" in err


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"", "is empty"),
        (b"\x00\x01\x02" * 100, "binary file"),
        (b"prose\n", "should name the columns"),
        (b"leg,utc,ra_deg,dec_deg,north_arcsec\nx\n", "has no usable leg"),
    ],
)
def test_a_file_that_is_no_log_is_refused_in_a_sentence(capsys, tmp_path, content, words) -> None:
    path = tmp_path / "night.csv"
    path.write_bytes(content)
    code, out, err = run(capsys, "drift", path, "--latitude=48", "--longitude=11")
    assert (code, out) == (2, "")
    assert words in err
    assert "night.csv" in err


def test_legs_too_short_to_solve_are_refused_in_a_sentence(capsys, tmp_path, night) -> None:
    leg = night.legs[0]
    short = Leg("1", leg.ra_deg, leg.dec_deg, leg.utc_s[:3], leg.north_arcsec[:3])
    path = tmp_path / "night.csv"
    path.write_text(write(header(night), [short]))
    code, out, err = run(capsys, "drift", path)
    assert (code, out) == (2, "")
    assert "is left out" in err


def test_a_number_in_an_option_may_have_a_decimal_comma_and_nonsense_is_named(
    capsys, log_file
) -> None:
    assert run(capsys, "drift", log_file, "--temperature=-4,5")[0] == 0
    with pytest.raises(SystemExit) as exit_info:
        run(capsys, "drift", log_file, "--latitude", "48 north")
    assert exit_info.value.code == 2
    assert "“48 north” is not a number" in capsys.readouterr().err


def test_a_reader_that_leaves_early_is_no_error(log_file) -> None:
    process = subprocess.Popen(
        [sys.executable, "-m", "core", "drift", str(log_file), "--json"],
        cwd=ROOT,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )
    assert process.stdout is not None
    process.stdout.close()
    _, err = process.communicate(timeout=60)
    assert (process.returncode, err) == (0, b"")


def test_it_runs_as_a_module_even_where_the_terminal_knows_few_characters(log_file) -> None:
    finished = subprocess.run(
        [sys.executable, "-X", "utf8=0", "-m", "core", "drift", str(log_file)],
        cwd=ROOT,
        env={"PYTHONIOENCODING": "ascii", "PATH": ""},
        capture_output=True,
        timeout=60,
    )
    assert finished.returncode == 0, finished.stderr
    assert finished.stderr == b""
    assert b"pole" in finished.stdout
