"""What is taken for granted: from an option, else from the log, else as usual; never silently."""

from __future__ import annotations

import json
import re
from dataclasses import asdict, replace
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from core.__main__ import main
from core.alignment.driftlog.files import write
from core.alignment.driftlog.records import Header, Leg
from core.alignment.priors import RANGES, USUAL, Priors
from core.commands import drift

ROOT = Path(__file__).parents[3]
NOW_UTC_S = 2.0e9
# option: key of a log, a value that is not the usual one, one below and one above what can be meant
OPTIONS = {
    "--reading-step": ("reading_step_arcsec", "5", "-0,1", "121"),
    "--angle": ("angle_sigma_deg", "2,5", "-3", "46"),
    "--periodic-error": ("periodic_error_arcsec", "15", "-1e-3", "301"),
    "--slow-wander": ("slow_wander_arcsec", "0.3", "-2", "10,5"),
    "--slow-wander-time": ("slow_wander_s", "200", "9", "3601"),
    "--flexure": ("flexure_arcsec_per_g", "20", "-10", "1e3"),
}
STATED = Priors(4.0, 0.5, 3.0, 0.1, 60.0, 7.0)


def legs() -> list[Leg]:
    """Two invented stars, drifting evenly."""
    utc_s = 1_795_550_400.0 + np.arange(0.0, 400.0, 10.0)
    scatter = np.random.default_rng(5).normal(0.0, 0.5, (2, utc_s.size))
    return [
        Leg("south", 30.5, 10.2, utc_s, 0.02 * (utc_s - utc_s[0]) + scatter[0]),
        Leg("east", 100.0, 5.0, utc_s + 900.0, 0.01 * (utc_s - utc_s[0]) + scatter[1]),
    ]


def log_file(folder: Path, **stated_priors: float | None) -> Path:
    said = {name: value for name, value in stated_priors.items() if value is not None}
    header = Header(48.1, 11.6, 520.0, 950.0, 5.0, stated_priors=said)
    path = folder / "night.csv"
    path.write_text(write(header, legs()), encoding="utf-8")
    return path


def answer(capsys: pytest.CaptureFixture[str], *words: object) -> dict[str, Any]:
    assert main([*map(str, ("drift", *words)), "--json"], NOW_UTC_S) == 0
    return dict(json.loads(capsys.readouterr().out))


def told_words(capsys: pytest.CaptureFixture[str], *words: object) -> str:
    assert main([*map(str, ("drift", *words))], NOW_UTC_S) == 0
    return capsys.readouterr().out


def test_what_is_granted_is_said_in_words(capsys, tmp_path) -> None:
    log = log_file(tmp_path)
    usual = told_words(capsys, log)
    assert "good to 1.25°; a periodic error of 10″" in usual
    assert "a wander of 0.17″ that changes in 150 s; a tube that yields 10″ per g." in usual
    assert "was read to divisions" not in usual
    other = told_words(capsys, log, "--angle", "0", "--flexure", "20", "--reading-step", "12.5")
    assert "reticle" not in other
    assert "periodic error" not in other
    assert "yields 20″ per g" in other
    assert other.count("was read to divisions of 12.5″.") == 2
    nothing = ("--angle", "0", "--flexure", "0", "--slow-wander", "0")
    assert "granted" not in told_words(capsys, log, *nothing)


def test_nobody_says_anything(capsys, tmp_path) -> None:
    used = answer(capsys, log_file(tmp_path))["priors"]
    assert used == asdict(USUAL)
    assert used["reading_step_arcsec"] is None
    assert set(used) == set(RANGES) == {name for name, *_ in OPTIONS.values()}


@pytest.mark.parametrize("option", OPTIONS)
def test_an_option_stands_before_the_log_and_the_log_before_the_usual(
    capsys, tmp_path, option
) -> None:
    name, text, _, _ = OPTIONS[option]
    value = float(text.replace(",", "."))
    log = log_file(tmp_path, **asdict(STATED))
    assert answer(capsys, log)["priors"] == asdict(STATED)
    assert answer(capsys, log, option, text)["priors"] == asdict(replace(STATED, **{name: value}))
    log = log_file(tmp_path)
    assert answer(capsys, log, option, text)["priors"] == asdict(replace(USUAL, **{name: value}))


def test_the_solution_is_asked_with_them(capsys, tmp_path, monkeypatch) -> None:
    solve, asked = drift.solve, []

    def solve_and_note(*arguments: Any, priors: Priors) -> Any:
        asked.append(priors)
        return solve(*arguments, priors=priors)

    monkeypatch.setattr(drift, "solve", solve_and_note)
    answer(capsys, log_file(tmp_path, slow_wander_s=60.0), "--angle", "0")
    assert asked == [replace(USUAL, slow_wander_s=60.0, angle_sigma_deg=0.0)]


def test_zero_leaves_out_what_has_a_size(capsys, tmp_path) -> None:
    sizes = [option for option in OPTIONS if option != "--slow-wander-time"]
    used = answer(capsys, log_file(tmp_path), *(f"{option}=0" for option in sizes))["priors"]
    assert {used.pop("slow_wander_s")} == {USUAL.slow_wander_s}
    assert set(used.values()) == {0.0}


@pytest.mark.parametrize("option", OPTIONS)
def test_what_cannot_be_meant_is_refused_in_a_sentence(capsys, tmp_path, option) -> None:
    log, (_, _, *outside) = log_file(tmp_path), OPTIONS[option]
    for text in outside:
        assert main(["drift", str(log), option, text], NOW_UTC_S) == 2
        printed = capsys.readouterr()
        assert printed.out == ""
        value = float(text.replace(",", "."))
        assert printed.err.startswith(f"{option} {value:g} is outside ")
        assert re.search(r"outside \d+ to \d+ \((seconds|degrees).*\); correct it\.$", printed.err)


@pytest.mark.parametrize("option", OPTIONS)
@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("nan", "“nan” is not a finite number; correct it."),
        ("-inf", "“-inf” is not a finite number; correct it."),
        ("5 or so", "“5 or so” is not a number"),
        ("1.000,5", "“1.000,5” mixes commas and points"),
        ("", "is empty"),
    ],
)
def test_what_is_no_number_is_named_with_its_option(capsys, option, text, words) -> None:
    with pytest.raises(SystemExit) as ended:
        main(["drift", "night.csv", option, text], NOW_UTC_S)
    assert ended.value.code == 2
    complaint = capsys.readouterr().err.splitlines()[-1]
    assert f"{option}: " in complaint
    assert words in complaint


def test_a_line_of_the_log_that_cannot_be_meant_is_reported_and_the_usual_is_taken(
    capsys, tmp_path
) -> None:
    found = answer(capsys, log_file(tmp_path, flexure_arcsec_per_g=-5.0, angle_sigma_deg=2.0))
    assert found["priors"] == asdict(replace(USUAL, angle_sigma_deg=2.0))
    assert [line["line_number"] for line in found["rejected_lines"]] == [7]
    assert "flexure_arcsec_per_g -5 is outside" in found["rejected_lines"][0]["reason"]


def test_the_help_gives_each_its_unit_and_its_default(capsys) -> None:
    with pytest.raises(SystemExit):
        main(["drift", "--help"], NOW_UTC_S)
    told = " ".join(capsys.readouterr().out.split())
    for option, (name, *_) in OPTIONS.items():
        unit = "DEGREES" if "deg" in name else "SECONDS" if name.endswith("_s") else "ARCSEC"
        usual = getattr(USUAL, name)
        default = "found in the readings" if usual is None else f"{usual:g}"
        about = rf"{option} {unit}(/G)? (?!--)[^-]*\(default: {re.escape(default)}\)"
        assert re.search(about, told), option
    assert "The ± contains them." in told
    assert "0 leaves it out." in told


def test_the_readme_says_the_same() -> None:
    table = (ROOT / "README.md").read_text(encoding="utf-8")
    for option, (name, *_) in OPTIONS.items():
        usual = getattr(USUAL, name)
        shown = "found in the readings" if usual is None else f"{usual:g}"
        row = rf"\| `# {name}: [\d.]+` \| {re.escape(shown)} \| .* \| `{option}` \|"
        assert re.search(row, table), name
