"""Options of every command: commas and minus signs are read alike, what is no number is named."""

from __future__ import annotations

import json

import pytest

from core.__main__ import main
from core.commands.options import joined

NOW_UTC_S = 1.795e9
PLACE = ("--latitude=48,1", "--longitude=11,6")


@pytest.mark.parametrize(
    ("given", "tied"),
    [
        (["--latitude", "-33,9"], ["--latitude=-33,9"]),
        (["--dec", "-8d12m"], ["--dec=-8d12m"]),
        (["--from-hours", "-2,5", "--json"], ["--from-hours=-2,5", "--json"]),
        (["--altitude-error", "-.5"], ["--altitude-error=-.5"]),
        (["drift", "-5", "--json"], ["drift", "-5", "--json"]),
        (["--latitude=1", "-5"], ["--latitude=1", "-5"]),
        (["--json", "-h"], ["--json", "-h"]),
    ],
)
def test_a_negative_value_is_tied_to_its_option(given: list[str], tied: list[str]) -> None:
    assert joined(given) == tied


def test_commas_and_minus_signs_are_read_as_points_and_ties_are(capsys) -> None:
    answers = []
    for words in (
        ("--latitude", "-33,9", "--azimuth", "120,5", "--altitude", "40,25"),
        ("--latitude=-33.9", "--azimuth=120.5", "--altitude=40.25"),
    ):
        assert main(["rotation", *words, "--json"], NOW_UTC_S) == 0
        answers.append(json.loads(capsys.readouterr().out))
    assert answers[0] == answers[1]
    assert answers[0]["azimuth_deg"] == 120.5


def test_a_declination_below_the_equator_needs_no_equals_sign(capsys) -> None:
    words = [*PLACE, "--ra", "5h14m32s", "--dec", "-8d12m", "--utc", "2026-12-24T22:00Z"]
    assert main(["rotation", *words], NOW_UTC_S) == 0
    assert "below the horizon" not in capsys.readouterr().out


@pytest.mark.parametrize("text", ["nan", "inf", "-inf", "1e999"])
@pytest.mark.parametrize(
    "words",
    [
        ("tracking", "run.csv", "--azimuth-error"),
        ("tracking", "run.csv", "--worm-period"),
        ("tracking", "run.csv", "--scale"),
        ("budget", "--altitude-error"),
        ("pole", "--latitude"),
        ("rotation", "--altitude"),
    ],
)
def test_what_is_no_finite_number_is_named_with_its_option(capsys, words, text) -> None:
    with pytest.raises(SystemExit) as ended:
        main([*words, text], NOW_UTC_S)
    assert ended.value.code == 2
    complaint = capsys.readouterr().err
    assert f"argument {words[-1]}: “{text}” is not a finite number" in complaint


@pytest.mark.parametrize("command", [("pole",), ("rotation", "--ra=5h", "--dec=10")])
@pytest.mark.parametrize(
    ("utc", "words"),
    [
        ("9999-12-31T10:00:00Z", "not within the years 1000 to 2999"),
        ("0001-01-01T00:00:00+14:00", "not within the years 1000 to 2999"),
        ("yesterday", "not a date and time"),
    ],
)
def test_a_time_no_sky_is_known_for_is_refused(capsys, command, utc, words) -> None:
    assert main([*command, *PLACE, "--utc", utc], NOW_UTC_S) == 2
    printed = capsys.readouterr()
    assert printed.out == ""
    assert words in printed.err


@pytest.mark.parametrize("utc", ["1000-01-01T00:00Z", "2999-12-31T23:59:59Z"])
def test_the_first_and_the_last_time_can_be_computed(capsys, utc) -> None:
    assert main(["pole", *PLACE, "--utc", utc, "--json"], NOW_UTC_S) == 0
    assert json.loads(capsys.readouterr().out)["utc"].startswith(utc[:10])
