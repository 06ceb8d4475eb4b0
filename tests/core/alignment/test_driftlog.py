"""The form of the drift log: what is read, what is refused and in which words."""

from __future__ import annotations

import numpy as np
import pytest

from core.alignment.driftlog.reader import read
from core.alignment.driftlog.records import ReadingCancelled, UnusableLog

from .logtexts import EVENING_UTC_S, GOOD, NAMES, PLAIN, log_of, reasons


def test_reads_legs_in_order_of_appearance() -> None:
    log = read(PLAIN)
    assert [leg.label for leg in log.legs] == ["east", "south"]
    east = log.legs[0]
    assert (east.ra_deg, east.dec_deg) == (83.8, -5.4)
    np.testing.assert_array_equal(east.utc_s, [EVENING_UTC_S, EVENING_UTC_S + 60.0])
    np.testing.assert_array_equal(east.north_arcsec, [0.0, 0.5])
    assert east.east_arcsec is None
    assert east.sigma_arcsec is None
    assert (log.header.latitude_deg, log.header.longitude_deg) == (48.1, 11.6)
    assert log.rejected == ()
    assert log.remarks == ()


@pytest.mark.parametrize(
    ("change", "meaning"),
    [
        (lambda text: "\ufeff" + text, "byte order mark"),
        (lambda text: text.replace("\n", "\r\n"), "CRLF"),
        (lambda text: text.replace("\n", "\r"), "CR alone"),
        (lambda text: text.replace("\n", "\n\n"), "blank lines"),
        (lambda text: text.replace(",", ";"), "semicolons"),
        (lambda text: text.replace(",", "\t"), "tabs"),
        (lambda text: text.replace(",", ";").replace(".", ","), "decimal commas"),
        (lambda text: "sep=;\n" + text.replace(",", ";"), "separator announced"),
        (lambda text: text.replace(",", " , "), "spaces"),
        (
            lambda text: text.replace("ra_deg", "RA deg").replace("leg,", "Leg,"),
            "capitals",
        ),
        (lambda text: text.replace("east", '"east"'), "quotes"),
        (lambda text: text.replace("48.1", "48.1,,,"), "separators behind the header"),
        (
            lambda text: text.replace("# latitude_deg: 48.1", '"# latitude_deg: 48,1"'),
            "quoted header",
        ),
        (lambda text: text.replace("-5.4", "−5.4"), "minus sign"),
        (lambda text: text.replace("Z,", "+00:00,"), "zero offset"),
        (lambda text: text.replace("T20", " 20").replace("Z,", ","), "space in the time, no zone"),
        (lambda text: text + NAMES + "\n", "column names repeated"),
    ],
)
def test_is_lenient_about_form(change, meaning) -> None:
    plain, changed = read(PLAIN), read(change(PLAIN))
    assert changed.header == plain.header, meaning
    assert changed.rejected == ()
    assert [leg.label for leg in changed.legs] == ["east", "south"]
    for leg, expected in zip(changed.legs, plain.legs, strict=True):
        assert (leg.ra_deg, leg.dec_deg) == (expected.ra_deg, expected.dec_deg)
        np.testing.assert_array_equal(leg.utc_s, expected.utc_s)
        np.testing.assert_array_equal(leg.north_arcsec, expected.north_arcsec)


def test_columns_in_any_order_and_extra_ones_kept() -> None:
    log = read(
        "north_arcsec;note;sigma_arcsec;utc;dec_deg;east_arcsec;leg;ra_deg\n"
        "0,25;first;0,4;2026-11-24T20:00:00Z;-5,4;;a;83,8\n"
        "0,50;;0,5;2026-11-24T20:01:00Z;-5,4;1,5;a;83,8\n"
    )
    (leg,) = log.legs
    np.testing.assert_array_equal(leg.north_arcsec, [0.25, 0.5])
    np.testing.assert_array_equal(leg.east_arcsec, [np.nan, 1.5])
    np.testing.assert_array_equal(leg.sigma_arcsec, [0.4, 0.5])
    assert log.extras == ({"note": ("first", "")},)


def test_an_offset_from_utc_is_converted_and_said() -> None:
    log = read(log_of(*[row.replace("Z", "+01:00") for row in GOOD]))
    assert log.legs[0].utc_s[0] == EVENING_UTC_S - 3600.0
    assert "converted" in log.remarks[0].text
    assert log.remarks[0].line_number == 2


def test_sigma_stated_for_some_readings_only_is_not_used_and_said() -> None:
    rows = ["a,2026-11-24T20:00:00Z,83.8,-5.4,0.0,0.5", "a,2026-11-24T20:01:00Z,83.8,-5.4,0.5,"]
    log = read(log_of(*rows, names=NAMES + ",sigma_arcsec"))
    assert log.legs[0].sigma_arcsec is None
    assert log.remarks[0].line_number == 3
    assert "sigma_arcsec" in log.remarks[0].text


@pytest.mark.parametrize(
    ("row", "words"),
    [
        ("a,2026-11-24T20:02:00Z,83.8,-5.4,nan", "north_arcsec “nan” is not a finite number"),
        ("a,2026-11-24T20:02:00Z,83.8,-5.4,inf", "not a finite number"),
        ("a,2026-11-24T20:02:00Z,83.8,-5.4,1e999", "not a finite number"),
        ("a,2026-11-24T20:02:00Z,83.8,-5.4,", "north_arcsec is empty"),
        ("a,2026-11-24T20:02:00Z,83.8,-5.4", "north_arcsec is empty"),
        ("a,2026-11-24T20:02:00Z,83.8", "dec_deg is empty"),
        ("a,2026-11-24T20:02:00Z,83.8,-5.4,1_0", "is not a number"),
        ("a,2026-11-24T20:02:00Z,83.8,-5.4,1e7", "half the sky"),
        ("a,2026-11-24T20:02:00Z,83,8,-5,4,0,5", "separate the columns by “;”"),
        ("a,2026-11-24T20:02:00Z,05:35:17,-5.4,1", "where that is 83.82083"),
        ("a,2026-11-24T20:02:00Z,5h35m17.3s,-5.4,1", "where that is 83.82208"),
        ("a,2026-11-24T20:02:00Z,83.8,-5°23′28″,1", "decimal degrees: -5.39111"),
        ("a,2026-11-24T20:02:00Z,483.8,-5.4,1", "ra_deg 483.8 is outside 0 to 360"),
        ("a,2026-11-24T20:02:00Z,83.8,95,1", "dec_deg 95 is outside -90 to 90"),
        ("a,2026-11-24T20:02:00Z,10.8,-5.4,1", "give each star a leg of its own"),
        ("a,2026-11-24T20:01:00Z,83.8,-5.4,1", "Its time is that of line 3"),
        ("a,2026-11-24T19:00:00Z,83.8,-5.4,1", "out of order"),
        ("a,,83.8,-5.4,1", "utc is empty"),
        ("a,2026-11-24,83.8,-5.4,1", "is not a date and time"),
        ("a,1795550000,83.8,-5.4,1", "is not a date and time"),
        ("a,24.11.2026 20:02,83.8,-5.4,1", "write UTC like"),
        ("a,0026-11-24T20:02:00Z,83.8,-5.4,1", "1960 to 2199"),
        (",2026-11-24T20:02:00Z,83.8,-5.4,1", "The leg is empty"),
        ("b,2026-11-24T20:02:00Z,83.8,-5.4,1", "only usable reading of leg “b”"),
        ('"a,2026-11-24T20:02:00Z,83.8,-5.4,1', "quotation marks"),
        ("#1,2026-11-24T20:02:00Z,83.8,-5.4,1", "begins with #"),
        ("a,2026-11-24T20:02:00Z,83.8,-5.4,\0\0", "power cut"),
        ("ä\udce4,2026-11-24T20:02:00Z,83.8,-5.4,1", "UTF-8"),
        ("a" * 20_000, "longer than"),
    ],
)
def test_a_line_that_cannot_be_used_is_reported_and_costs_no_other(row, words) -> None:
    log = read(log_of(*GOOD, row))
    assert list(reasons(log)) == [4]
    assert words in reasons(log)[4]
    assert log.legs[0].utc_s.size == 2


def test_a_stated_error_must_be_positive() -> None:
    rows = [row + ",0.5" for row in GOOD] + ["a,2026-11-24T20:02:00Z,83.8,-5.4,1,0"]
    log = read(log_of(*rows, names=NAMES + ",sigma_arcsec"))
    assert "not above zero" in reasons(log)[4]


@pytest.mark.parametrize("stated", ["1e-162", "1e-100", "0.00009"])
def test_a_stated_error_no_instrument_reaches_is_refused(stated: str) -> None:
    rows = [row + ",0.0001" for row in GOOD] + [f"a,2026-11-24T20:02:00Z,83.8,-5.4,1,{stated}"]
    log = read(log_of(*rows, names=NAMES + ",sigma_arcsec"))
    assert list(reasons(log)) == [4]
    assert "finer than any instrument" in reasons(log)[4]
    assert log.legs[0].sigma_arcsec is not None


def test_one_wild_time_costs_one_line() -> None:
    rows = [f"a,2026-11-24T20:{minute:02d}:00Z,83.8,-5.4,{minute}" for minute in range(10)]
    rows[3] = rows[3].replace("2026", "2027")
    log = read(log_of(*rows))
    assert list(reasons(log)) == [5]
    assert log.legs[0].utc_s.size == 9


def test_a_leg_written_backwards_is_named_as_such() -> None:
    rows = [f"a,2026-11-24T20:{9 - minute:02d}:00Z,83.8,-5.4,1" for minute in range(9)]
    with pytest.raises(UnusableLog, match="run backwards"):
        read(log_of(*rows))


def test_interleaved_legs_are_told_apart_and_said() -> None:
    rows = [
        f"{label},2026-11-24T20:{minute:02d}:00Z,{ra},-5.4,{minute}"
        for minute in range(4)
        for label, ra in (("a", 83.8), ("b", 10.8))
    ]
    log = read(log_of(*rows))
    assert [leg.utc_s.size for leg in log.legs] == [4, 4]
    assert "goes on here after leg “b”" in log.remarks[0].text
    assert len(log.remarks) == 2


def test_right_ascensions_either_side_of_zero_are_one_star() -> None:
    rows = ["a,2026-11-24T20:00:00Z,359.9999,-5.4,0", "a,2026-11-24T20:01:00Z,0.0001,-5.4,1"]
    assert read(log_of(*rows)).rejected == ()


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("", "holds no readings"),
        ("# only: a header\n", "holds no readings"),
        (NAMES + "\n", "names its columns but holds no readings"),
        ("some prose\nin lines\n", "Line 1 should name the columns"),
        ("leg,utc,ra,dec_deg,north_arcsec\n", "lacks the column ra_deg"),
        ("leg,utc,ra_deg,dec_deg,north_arcsec,utc\n", "names the column utc twice"),
        (log_of(GOOD[0]), "only usable reading"),
        (log_of("x", "y"), "2 lines were rejected, the first of them line 2"),
        (log_of(*(f"{n},2026-11-24T20:00:00Z,1,2,3" for n in range(1001))), "count lines"),
    ],
)
def test_a_log_without_a_leg_is_refused_in_a_sentence(text, words) -> None:
    with pytest.raises(UnusableLog) as caught:
        read(text, name="night.csv")
    assert words in str(caught.value)
    assert "night.csv" in str(caught.value)


def test_reading_can_be_stopped_between_lines() -> None:
    asked: list[int] = []

    def keep_going(lines_read: int) -> bool:
        asked.append(lines_read)
        return len(asked) < 2

    with pytest.raises(ReadingCancelled, match="stopped at line 8192"):
        read([NAMES] + ["x"] * 20_000, keep_going=keep_going)
    assert asked == [4096, 8192]


def test_too_many_readings_are_refused(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("core.alignment.driftlog.reader.MAX_SAMPLES", 1)
    with pytest.raises(UnusableLog, match="more than a night can give"):
        read(log_of(*GOOD))


@pytest.mark.parametrize("line", ["x", "# latitude: 5", "# a remark"])
def test_another_kind_of_file_is_given_up_early(monkeypatch: pytest.MonkeyPatch, line) -> None:
    monkeypatch.setattr("core.alignment.driftlog.reader.MAX_REJECTED", 100)
    monkeypatch.setattr("core.alignment.driftlog.header.MAX_REMARKS", 100)
    lines = iter([NAMES] + [line] * 20_000)
    with pytest.raises(UnusableLog, match="no usable leg"):
        read(lines)
    assert len(list(lines)) > 10_000
