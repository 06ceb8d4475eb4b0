"""`python -m core tracking` prints words or JSON, writes the curve, refuses in a sentence."""

import io
import json
from pathlib import Path

import pytest

from core.__main__ import main
from core.alignment.driftlog.files import write
from core.alignment.driftlog.records import Header
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


def spoiled(log: str, head: str, tail: str) -> int:
    """The log with lines put before and behind it; how many lines it then has."""
    text = head + Path(log).read_text(encoding="utf-8") + tail
    Path(log).write_text(text, encoding="utf-8")
    return len(text.splitlines())


BAD_HEAD = "# latitude: 48\n"
BAD_TAIL = "a,yesterday,0,0,0,0\na,2026-11-24T20:00:00Z,0,0,0,0,7\n"


def test_every_line_not_used_is_told_in_words(capsys, log):
    last = spoiled(log, head=BAD_HEAD, tail=BAD_TAIL)
    code, out, _ = ran(capsys, log)
    assert code == 0
    told = out[out.index("Not used") :].splitlines()
    assert told[0] == "Not used: 3 lines of the log."
    assert told[1].startswith("Line 1: latitude has no unit")
    assert told[2].startswith(f"Line {last - 1}: utc “yesterday”")
    assert told[3].startswith(f"Line {last}: It has 7 fields for")


def test_every_line_not_used_is_told_in_json(capsys, log):
    last = spoiled(log, head=BAD_HEAD, tail=BAD_TAIL * 20)
    found = json.loads(ran(capsys, log, "--json")[1])
    assert [line["line_number"] for line in found["rejected_lines"]] == [
        1,
        *range(last - 39, last + 1),
    ]
    assert "latitude has no unit" in found["rejected_lines"][0]["reason"]
    assert found["remarks"] == []


def test_readings_without_an_east_offset_are_counted(capsys, log):
    lines = Path(log).read_text(encoding="utf-8").splitlines()
    place = lines[0].split(",").index("east_arcsec")
    for number in (20, 40):
        fields = lines[number].split(",")
        lines[number] = ",".join([*fields[:place], "", *fields[place + 1 :]])
    Path(log).write_text("\n".join(lines), encoding="utf-8")
    assert "no east offset: 2." in ran(capsys, log)[1]


def test_when_nothing_can_be_said_the_lines_not_used_are_told_beside_why(capsys, tmp_path):
    path = tmp_path / "short.csv"
    path.write_text(
        "leg,utc,ra_deg,dec_deg,east_arcsec\n"
        "a,2026-11-24T20:00:00Z,1,2,3\na,2026-11-24T20:00:03Z,1,2,4\na,soon,1,2,4\n",
        encoding="utf-8",
    )
    code, out, err = ran(capsys, str(path))
    assert (code, out) == (2, "")
    assert "2 readings" in err
    assert "Line 4: utc “soon”" in err


def test_the_curve_never_replaces_a_file(capsys, log, tmp_path):
    measured = Path(log).read_text(encoding="utf-8")
    code, out, err = ran(capsys, log, "--curve", str(tmp_path / "." / "run.csv"))
    assert (code, out) == (2, "")
    assert "the measurement itself" in err
    assert Path(log).read_text(encoding="utf-8") == measured
    other = tmp_path / "other.csv"
    other.write_text("mine", encoding="utf-8")
    code, out, err = ran(capsys, log, "--curve", str(other))
    assert (code, out) == (2, "")
    assert "there already" in err
    assert other.read_text(encoding="utf-8") == "mine"


def test_a_link_to_nowhere_is_a_file_that_is_there(capsys, log, tmp_path):
    link = tmp_path / "link.csv"
    link.symlink_to(tmp_path / "elsewhere.csv")
    code, _, err = ran(capsys, log, "--curve", str(link))
    assert code == 2
    assert "there already" in err
    assert not (tmp_path / "elsewhere.csv").exists()


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
