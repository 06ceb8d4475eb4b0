"""A run log taken line by line says what the whole file would."""

import math

import pytest

from core.alignment.driftlog.records import BadRow, UnusableLog
from core.tracking.runlog import LiveLog, ScaleNeeded, read_run

HEAD = "leg,utc,ra_deg,dec_deg,north_arcsec,east_arcsec"
LINES = [
    "# latitude_deg: 48",
    HEAD,
    "run,2026-09-21T20:00:00Z,200.0,4.0,0.1,1.5",
    "",
    "run,2026-09-21T20:00:03Z,200.0,4.0,0.2,1.75",
]


def test_line_by_line_as_in_one_go() -> None:
    live = LiveLog("a.csv")
    rows = [row for row in map(live.take, LINES) if row is not None]
    leg = read_run(LINES).legs[0]
    assert [row.utc_s for row in rows] == leg.utc_s.tolist()
    assert [row.east_arcsec for row in rows] == leg.east_arcsec.tolist()
    assert (rows[0].label, rows[0].dec_deg) == ("run", 4.0)


def test_pixels_need_a_scale_and_take_it_from_a_remark_or_the_person() -> None:
    names = HEAD.replace("arcsec", "px")
    with pytest.raises(ScaleNeeded, match="pixels"):
        LiveLog("a.csv").take(names)
    told = LiveLog("a.csv", 2.0)
    written = LiveLog("a.csv")
    written.take("# scale_arcsec_per_px: 2")
    for live in (told, written):
        live.take(names)
        assert live.take(LINES[2]).east_arcsec == 3.0


def test_north_may_be_missing() -> None:
    live = LiveLog("a.csv")
    live.take("leg;utc;ra_deg;dec_deg;east_arcsec")
    row = live.take("run;2026-09-21T20:00:00Z;200,0;4,0;1,5")
    assert (row.north_arcsec, row.east_arcsec) == (0.0, 1.5)


def test_a_line_that_cannot_be_used_does_not_spoil_the_next() -> None:
    live = LiveLog("a.csv")
    live.take(HEAD)
    with pytest.raises(BadRow):
        live.take("run,yesterday,200.0,4.0,0.1,1.5")
    assert live.take(LINES[2]).east_arcsec == 1.5
    assert math.isnan(live.take("run,2026-09-21T20:00:09Z,200.0,4.0,0.1,").east_arcsec)


@pytest.mark.parametrize(
    ("line", "words"),
    [
        ("run,2026-09-21T20:00:06Z,210.0,4.0,0.1,1.5", "give each star a leg of its own"),
        ("run,2026-09-21T20:00:06Z,200.0,4.0,0.1,1.5\0", "NUL bytes"),
        ("run\ufffd,2026-09-21T20:00:06Z,200.0,4.0,0.1,1.5", "not UTF-8"),
        ("run,2026-09-21T20:00:06Z,200,0,4,0,0,1,1,5", "10 fields for 6"),
        ('"run,2026-09-21T20:00:06Z,200.0,4.0,0.1,1.5', "quotation marks"),
        ("#1,2026-09-21T20:00:06Z,200.0,4.0,0.1,1.5", "begins with #"),
    ],
    ids=["another star", "NUL", "not UTF-8", "decimal commas", "open quote", "label like a remark"],
)
def test_what_the_drift_reader_rejects_is_left_out_here_too(line: str, words: str) -> None:
    live = LiveLog("a.csv")
    for one in LINES:
        live.take(one)
    with pytest.raises(BadRow, match=words):
        live.take(line)
    assert live.line_number == len(LINES) + 1
    assert [one.line_number for one in read_run([*LINES, line]).rejected] == [len(LINES) + 1]


def test_a_star_written_with_other_digits_is_the_same_star() -> None:
    live = LiveLog("a.csv")
    rows = [row for row in map(live.take, LINES) if row is not None]
    other = live.take("run,2026-09-21T20:00:06Z,200.0001,4.0001,0.1,1.5")
    assert (other.ra_deg, other.dec_deg) == (rows[0].ra_deg, rows[0].dec_deg)


def test_an_empty_first_field_between_tabs_moves_no_other() -> None:
    live = LiveLog("a.csv")
    live.take("note\tleg\tutc\tra_deg\tdec_deg\teast_arcsec\tcount")
    assert live.take("\trun\t2026-09-21T20:00:00Z\t200\t4\t1.5\t7").east_arcsec == 1.5


def test_a_file_of_something_else_is_refused() -> None:
    with pytest.raises(UnusableLog, match=r"a\.csv cannot be followed"):
        LiveLog("a.csv").take("these,are,no,columns")
