"""`python -m core tracking` prints words or JSON, writes the curve, refuses in a sentence."""

import io
import json

import pytest

from core.__main__ import main
from core.alignment.driftlog import Header, write
from tests.core.tracking.drive import noisy_run


@pytest.fixture
def log(tmp_path):
    path = tmp_path / "run.csv"
    path.write_text(write(Header(), [noisy_run(1, minutes=50.0)]), encoding="utf-8")
    return str(path)


def ran(capsys, *arguments):
    code = main(["tracking", *arguments], 1.8e9)
    return code, *capsys.readouterr()


def test_words_and_figures(capsys, log):
    code, out, err = ran(capsys, log)
    assert (code, err) == (0, "")
    assert "peak to peak" in out
    assert "Training would bring" in out


def test_json_and_the_curve(capsys, log, tmp_path):
    curve = tmp_path / "curve.csv"
    code, out, _ = ran(capsys, log, "--json", "--worm-period", "479", "--curve", str(curve))
    assert code == 0
    found = json.loads(out)
    assert found["worm_period_s"] == 479.0
    assert found["harmonics"][0]["amplitude_arcsec"] == pytest.approx(8.0, abs=0.5)
    assert "place_s,curve_arcsec" in curve.read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("--worm-period", "8"), "minutes meant"),
        (("--leg", "b"), "no leg “b”"),
        (("--azimuth-error", "3", "--altitude-error", "1"), "needs the place"),
        (("--azimuth-error", "5"), "belong together"),
        (("--azimuth-error", "1e308", "--altitude-error", "0"), "at most 1800′"),
        (("--scale", "1,5"), "leave it out"),
        (("--curve", "/nowhere/at/all.csv"), "could not be written"),
    ],
)
def test_what_cannot_be_done_is_said(capsys, log, arguments, words):
    code, out, err = ran(capsys, log, *arguments)
    assert (code, out) == (2, "")
    assert words in err


def test_a_place_in_the_log_that_cannot_be_is_named_with_its_line(capsys, tmp_path):
    path = tmp_path / "swapped.csv"
    text = write(Header(), [noisy_run(1, minutes=50.0)])
    path.write_text(f"# latitude_deg: 111.6\n# longitude_deg: 48.1\n{text}", encoding="utf-8")
    axis = ("--azimuth-error", "1", "--altitude-error", "1")
    code, _, err = ran(capsys, str(path), *axis)
    assert code == 2
    assert "needs the place" in err
    assert "Line 1 was not used: latitude_deg 111.6" in err


def test_a_star_below_the_horizon_of_the_place_is_refused(capsys, log):
    code, out, err = ran(capsys, log, "--latitude=48", "--longitude=11")
    assert (code, out) == (2, "")
    assert "below the horizon" in err
    assert "Nothing was computed" in err


def test_with_a_place_and_an_axis_the_drift_is_computed(capsys, log):
    place = ("--latitude", "48", "--longitude", "-169")
    code, out, _ = ran(capsys, log, *place, "--azimuth-error", "0", "--altitude-error", "0")
    assert code == 0
    assert "axis error is not known" not in out
    assert io.StringIO(out).readline().startswith("The drive swings")
