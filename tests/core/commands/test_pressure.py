"""A pressure that is none in hectopascals, or not the station's, is doubted by every command."""

from __future__ import annotations

import json

import pytest

from core.__main__ import main
from core.alignment.driftlog.files import write
from core.alignment.driftlog.records import Header
from tests.core.tracking.drive import noisy_run

PLACE = ("--latitude=48", "--longitude=11")
BUDGET = (
    "budget",
    "--latitude=48",
    "--declination=41",
    "--focal-length=600",
    "--pixel=3.8",
    "--width=6000",
    "--height=4000",
    "--exposure=300",
)
COMMANDS = {
    "pole": ("pole", *PLACE),
    "budget": BUDGET,
    "rotation of a place": ("rotation", *PLACE, "--azimuth=120", "--altitude=40"),
    "rotation of a star": ("rotation", *PLACE, "--ra=5h", "--dec=10", "--utc=2026-12-24T22:00Z"),
    "tracking": ("tracking", "RUN", "--latitude=48", "--longitude=-169"),
}


@pytest.fixture(scope="module")
def run_file(tmp_path_factory: pytest.TempPathFactory) -> str:
    path = tmp_path_factory.mktemp("runs") / "run.csv"
    path.write_text(write(Header(), [noisy_run(1, minutes=50.0)]), encoding="utf-8")
    return str(path)


def answer(capsys, run_file: str, name: str, pressure: str, *more: str) -> str:
    words = [run_file if word == "RUN" else word for word in COMMANDS[name]]
    assert main([*words, f"--pressure={pressure}", *more], 1.8e9) == 0
    return capsys.readouterr().out


@pytest.mark.parametrize("name", COMMANDS)
def test_inches_of_mercury_are_named_in_text_and_json(capsys, run_file, name) -> None:
    words = "29.92 cannot be hPa here. Was it in inches of mercury?"
    assert words in answer(capsys, run_file, name, "29,92")
    notes = json.loads(answer(capsys, run_file, name, "29.92", "--json"))["notes"]
    assert any(words in note for note in notes)


@pytest.mark.parametrize("name", COMMANDS)
def test_the_pressure_of_the_place_and_no_air_at_all_raise_no_doubt(capsys, run_file, name) -> None:
    for pressure in ("1005", "0"):
        notes = json.loads(answer(capsys, run_file, name, pressure, "--json"))["notes"]
        assert not any("hPa" in note for note in notes)
