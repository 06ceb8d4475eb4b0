"""Records of taps as people write them."""

import pytest

from core.tracking.run import UnusableRun
from core.tracking.runlog import ScaleNeeded
from core.tracking.vibration import read_tap


@pytest.mark.parametrize(
    "text",
    [
        "time_s,offset_arcsec\n0.0,1.5\n0.1,-2",
        "\ufefftime_s;offset_arcsec\r\n0,0;1,5\r\n0,1;-2",
        "note\ttime_s\toffset_arcsec\nx\t0\t1.5\ny\t0.1\t−2",
        "# scale_arcsec_per_px: 0.5\ntime_s,offset_px\n0,3\n\n0.1,-4",
        '# scale_arcsec_per_px: 0,5\n"time_s";"offset_px"\n0;3;\n0,1;"-4";;',
        "note\ttime_s\toffset_arcsec\tcount\n\t0\t1.5\t7\n\t0.1\t-2",
    ],
    ids=[
        *("plain", "semicolons and commas", "tabs and other columns", "pixels with their scale"),
        *("quoted, and separators behind", "an empty field first"),
    ],
)
def test_read(text: str) -> None:
    time, offset = read_tap(text.splitlines())
    assert time.tolist() == [0.0, 0.1]
    assert offset.tolist() == [1.5, -2.0]


def test_the_scale_of_the_person_goes_before() -> None:
    text = "# scale_arcsec_per_px: 9\ntime_s,offset_px\n0,3"
    assert read_tap(text.splitlines(), 2.0)[1].tolist() == [6.0]


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "no readings"),
        ("a,b\n1,2", "name the columns"),
        ("time_s,offset_arcsec\n1,two", "Line 2: the value “two”"),
        ("time_s,offset_arcsec\n1", "Line 2 is shorter"),
        ("time_s,offset_arcsec\nnan,1", "not a finite number"),
        ("time_s,offset_arcsec\n0,1,2,5", "Line 2: It has 4 fields for 2 .*decimal comma"),
        ("time_s;offset_arcsec\n0;1;2", "Line 2: It has 3 fields for 2 column names.$"),
        ("time_s,offset_arcsec,time_s\n0,1,2", "Line 1 names the column time_s twice"),
        ('time_s,offset_arcsec\n"0.1,2', "Line 2: Its quotation marks do not match"),
    ],
)
def test_refused_in_a_sentence(text: str, words: str) -> None:
    with pytest.raises(UnusableRun, match=words):
        read_tap(text.splitlines())


def test_pixels_without_a_scale_are_asked_for() -> None:
    with pytest.raises(ScaleNeeded, match="how large a pixel"):
        read_tap(["time_s,offset_px", "0,3"])
