"""The budget in the terminal."""

import json

import pytest

from core.__main__ import main

USUAL = [
    "budget",
    "--latitude=48",
    "--pressure=950",
    "--declination=41",
    "--focal-length=600",
    "--pixel=3,8",
    "--width=6000",
    "--height=4000",
    "--exposure=300",
]
GUIDED = [*USUAL, "--guide-star=120"]


def run(capsys, *arguments):
    code = main(arguments, 1.8e9)
    printed = capsys.readouterr()
    return code, printed.out, printed.err


def test_text_gives_the_tolerance_the_aim_and_the_verdict(capsys):
    code, out, err = run(capsys, *GUIDED, "--azimuth-error=3", "--altitude-error=-2")
    assert (code, err) == (0, "")
    assert "keep the axis within" in out
    assert "Good enough for 5-minute exposures at 600 mm: corner smear" in out
    assert "Longest exposure" in out
    assert "nan" not in out


def test_json_has_the_same(capsys):
    code, out, _ = run(capsys, *GUIDED, "--azimuth-error=3", "--altitude-error=-2", "--json")
    answer = json.loads(out)
    assert code == 0
    assert 1.0 < answer["tolerance"]["largest_error_arcmin"] < 60.0
    assert answer["smear"]["grade"] == "good enough"
    assert answer["smear"]["corner"]["azimuth_px"] > 0.0
    assert answer["longest_exposure"]["seconds"] > 300.0
    alone = json.loads(run(capsys, *GUIDED, "--json")[1])
    assert alone["smear"] is None
    assert alone["tolerance"] == answer["tolerance"]
    easy = json.loads(run(capsys, *GUIDED, "--json", "--smear=50")[1])
    assert easy["tolerance"]["largest_error_arcmin"] is None


@pytest.mark.parametrize(
    ("options", "words"),
    [
        (["--declination=-60"], "never above"),
        (["--exposure=-5"], "exposure is given as -5"),
        (["--azimuth-error=3"], "belong together"),
        (["--azimuth-error=3000", "--altitude-error=0"], "align roughly first"),
        (["--guide-star=2"], "from the middle of the field"),
        (["--latitude=95"], "outside -90 to 90"),
        (["--from-hours=3", "--to-hours=-3"], "order of time"),
    ],
)
def test_what_cannot_be_is_refused_in_a_sentence(capsys, options, words):
    code, out, err = run(capsys, *USUAL, *options)
    assert (code, out) == (2, "")
    assert words in err


def test_an_assumed_pressure_is_said(capsys):
    arguments = [one for one in GUIDED if not one.startswith("--pressure")]
    assert "The pressure is not known" in run(capsys, *arguments)[1]
