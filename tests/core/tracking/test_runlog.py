"""Run logs as people and other programs write them: which columns, in which unit, in which text."""

import codecs

import numpy as np
import pytest

from core.alignment.driftlog.records import UnusableLog
from core.tracking.runlog import ScaleNeeded, read_run, read_run_file

HEAD = "leg,utc,ra_deg,dec_deg,"


def stamped(second: int, rest: str) -> str:
    return f"a,2026-11-24T20:00:{second:02d}Z,10,20,{rest}\n"


def rows(*rests: str) -> str:
    return "".join(stamped(3 * number, rest) for number, rest in enumerate(rests))


def test_a_short_row_is_a_row() -> None:
    log = read_run(HEAD + "east_arcsec,note\n" + rows("1,good", "2", "3,"))
    assert log.rejected == ()
    assert log.legs[0].east_arcsec.tolist() == [1.0, 2.0, 3.0]
    assert log.legs[0].north_arcsec.tolist() == [0.0, 0.0, 0.0]
    assert log.extras[0]["note"] == ("good", "", "")


def test_a_row_without_any_offset_is_told() -> None:
    log = read_run(HEAD + "east_arcsec\n" + rows("1", "", "3"))
    assert log.legs[0].east_arcsec.tolist() == [1.0, 3.0]
    assert [(one.line_number, one.reason) for one in log.rejected] == [(3, "east_arcsec is empty.")]


def test_a_long_row_is_told_by_its_line() -> None:
    log = read_run("# seen through thin cloud\n" + HEAD + "east_arcsec\n" + rows("1", "0,5", "2"))
    assert log.legs[0].east_arcsec.tolist() == [1.0, 2.0]
    assert [(one.line_number, "6 fields for 5" in one.reason) for one in log.rejected] == [
        (4, True)
    ]


@pytest.mark.parametrize(
    "head",
    [
        '"leg","utc","ra_deg","dec_deg","east_px","north_px"',
        "Leg, UTC, Ra deg, Dec deg, East px, North PX",
        "leg,utc,ra_deg,dec_deg,EAST_PX,north_px",
    ],
    ids=["quoted", "spaced", "capitals"],
)
def test_names_are_read_as_the_drift_reader_reads_them(head: str) -> None:
    log = read_run(f"{head}\n" + rows("1,0.5", "2,0.25"), scale_arcsec_per_px=2.0)
    assert log.legs[0].east_arcsec.tolist() == [2.0, 4.0]
    assert log.legs[0].north_arcsec.tolist() == [1.0, 0.5]
    assert log.in_pixels == frozenset()


@pytest.mark.parametrize(
    ("names", "east", "north"),
    [
        ("east_px,north_arcsec", [2.0, 6.0], [2.0, 4.0]),
        ("east_arcsec,north_px", [1.0, 3.0], [4.0, 8.0]),
        ("east_px,north_px", [2.0, 6.0], [4.0, 8.0]),
    ],
)
def test_each_column_has_a_unit_of_its_own(names: str, east, north) -> None:
    log = read_run(HEAD + names + "\n" + rows("1,2", "3,4"), scale_arcsec_per_px=2.0)
    assert log.legs[0].east_arcsec.tolist() == east
    assert log.legs[0].north_arcsec.tolist() == north


def test_arcseconds_go_before_pixels_and_need_no_scale() -> None:
    log = read_run(HEAD + "east_px,east_arcsec\n" + rows("1,2", "3,4"))
    assert log.legs[0].east_arcsec.tolist() == [2.0, 4.0]
    assert log.extras[0]["east_px"] == ("1", "3")


def test_a_stated_error_in_arcseconds_is_not_scaled_with_the_pixels() -> None:
    text = HEAD + "east_px,north_px,sigma_{}\n" + rows("1,1,0.5", "2,2,0.5")
    sigma = {
        unit: read_run(text.format(unit), scale_arcsec_per_px=2.0).legs[0].sigma_arcsec[0]
        for unit in ("arcsec", "px")
    }
    assert sigma == {"arcsec": 0.5, "px": 1.0}


@pytest.mark.parametrize("names", ["east_px,north_px", "east_arcsec", "east_px"])
def test_sixteen_bits_a_character_are_read_too(tmp_path, names: str) -> None:
    text = HEAD.replace(",", "\t") + names.replace(",", "\t") + "\n"
    fields = names.count(",") + 1
    text += rows(*(",".join([value] * fields) for value in "12")).replace(",", "\t")
    path = tmp_path / "run.txt"
    path.write_bytes(codecs.BOM_UTF16_LE + text.encode("utf-16-le"))
    log = read_run_file(path, scale_arcsec_per_px=2.0)
    scale = 2.0 if "px" in names else 1.0
    np.testing.assert_allclose(log.legs[0].east_arcsec, [scale, 2.0 * scale])


def test_a_scale_is_asked_for_by_name_when_any_column_needs_it(tmp_path) -> None:
    path = tmp_path / "run.csv"
    path.write_text(HEAD + "east_px,north_arcsec\n" + rows("1,2", "3,4"), encoding="utf-8")
    with pytest.raises(ScaleNeeded, match=r"run\.csv gives its offsets in pixels"):
        read_run_file(path)


def test_a_log_without_any_offset_is_told_which_a_run_needs() -> None:
    with pytest.raises(UnusableLog, match="lacks the column east_arcsec"):
        read_run("leg,utc,ra_deg,dec_deg\na,2026-11-24T20:00:00Z,10,20")


def test_a_drift_log_without_east_is_read_and_left_to_the_analysis() -> None:
    log = read_run(HEAD + "north_arcsec\n" + rows("1", "2"))
    assert log.legs[0].east_arcsec is None
