"""Whatever the input, the reader answers with a log or a sentence; what is written reads back."""

from __future__ import annotations

import tempfile
from pathlib import Path

import numpy as np
from hypothesis import given, settings
from hypothesis import strategies as st

from core.alignment.driftlog.files import read_file, write
from core.alignment.driftlog.reader import read
from core.alignment.driftlog.records import DriftLog, Header, Leg, UnusableLog
from core.alignment.priors import RANGES

NAMES = "leg,utc,ra_deg,dec_deg,north_arcsec,east_arcsec,sigma_arcsec"
pieces = st.sampled_from(
    [
        *"a,;\t\"'#:\n\r\0 −-+.0189eEnNTZ",
        "\ufeff",
        "\ud800",
        NAMES + "\n",
        NAMES.replace(",", ";") + "\n",
        "# latitude_deg: ",
        "# pressure_hpa:",
        "# flexure_arcsec_per_g: ",
        "# slow_wander_s = 20",
        "# angle_sigma_deg:",
        "a,2026-11-24T20:00:00Z,83.8,-5.4,0.0\n",
        "a,2026-11-24T20:01:00+01:00,83.8,-5.4,0.5,1,1\n",
        "a;2026-11-24T20:02:00;83,8;-5,4;0,5\n",
        "0001-01-01T00:00+23:59",
        "9999-12-31T23:59:59-23:59",
        "05:35:17",
        "nan",
        "1e400",
    ]
)
texts = st.one_of(st.text(), st.lists(pieces, max_size=40).map("".join))


def answer(text: str) -> DriftLog | None:
    try:
        return read(text)
    except UnusableLog as error:
        sentence = str(error)
    assert sentence.endswith((".", "?"))
    return None


@given(texts)
@settings(max_examples=400, deadline=None)
def test_any_text_gives_a_log_or_a_sentence(text: str) -> None:
    log = answer(text)
    if log is not None:
        for leg in log.legs:
            assert leg.utc_s.size >= 2
            assert np.all(np.diff(leg.utc_s) > 0.0)
            assert np.all(np.isfinite(leg.north_arcsec))
        assert all(line.reason.endswith((".", "?")) for line in log.rejected)


@given(texts.map(lambda text: NAMES + "\n" + text))
@settings(max_examples=200, deadline=None)
def test_no_line_below_the_names_disappears(text: str) -> None:
    """Every line is a reading, a remark, a repeated heading, blank, or reported."""
    log = answer(text)
    if log is None:
        return
    lines = text.replace("\r\n", "\n").replace("\r", "\n").split("\n")
    silent = sum(
        not line.strip() or line.strip().lstrip('"').startswith("#") or line.strip() == NAMES
        for line in lines
    )
    readings = sum(leg.utc_s.size for leg in log.legs)
    assert readings + len(log.rejected) + silent >= len(lines)


@given(st.one_of(st.binary(), texts.map(lambda text: text.encode("utf-8", "surrogatepass"))))
@settings(max_examples=200, deadline=None)
def test_any_bytes_give_a_log_or_a_sentence(content: bytes) -> None:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder, "x.csv")
        path.write_bytes(content)
        try:
            sentence = None if read_file(path).legs else ""
        except UnusableLog as error:
            sentence = str(error)
        assert sentence is None or "x.csv" in sentence


offsets = st.floats(-3600.0, 3600.0)
plain_text = st.text(
    st.characters(exclude_categories=["C", "Z"], exclude_characters="\ufffd"), min_size=1
)


@st.composite
def legs(draw: st.DrawFn, label: str) -> tuple[Leg, dict[str, tuple[str, ...]]]:
    steps_us = draw(st.lists(st.integers(2, 10**10), min_size=2, max_size=8))
    start_us = draw(st.integers(0, 4 * 10**15))
    count = len(steps_us)

    def column(values: st.SearchStrategy[float]) -> np.ndarray:
        return np.array(draw(st.lists(values, min_size=count, max_size=count)))

    east = column(st.one_of(offsets, st.just(float("nan"))))
    leg = Leg(
        label,
        draw(st.floats(0.0, 360.0, exclude_max=True)),
        draw(st.floats(-90.0, 90.0)),
        (start_us + np.cumsum(steps_us)) / 1e6,
        column(offsets),
        None if np.isnan(east).all() else east,
        draw(st.sampled_from([None, column(st.floats(1e-4, 60.0))])),
    )
    notes = draw(st.lists(plain_text, min_size=count, max_size=count))
    return leg, {"a note": tuple(notes)}


PRIORS = {name: st.floats(low, high) for name, (low, high, _) in RANGES.items()}


@st.composite
def logs(draw: st.DrawFn) -> tuple[Header, list[Leg], list[dict[str, tuple[str, ...]]]]:
    labels = draw(st.lists(plain_text, min_size=1, max_size=4, unique=True))
    header = Header(
        latitude_deg=draw(st.none() | st.floats(-90.0, 90.0)),
        longitude_deg=draw(st.none() | st.floats(-180.0, 360.0)),
        elevation_m=draw(st.none() | st.floats(-500.0, 9000.0)),
        pressure_hpa=draw(st.none() | st.floats(0.0, 1100.0)),
        temperature_c=draw(st.none() | st.floats(-90.0, 60.0)),
        stated_priors=draw(st.fixed_dictionaries({}, optional=PRIORS)),
        other=draw(st.sampled_from([(), (("camera", "b: 2"), ("camera", ""))])),
        notes=draw(st.sampled_from([(), ("clear, then cloud",)])),
    )
    drawn = [draw(legs(label)) for label in labels]
    return header, [leg for leg, _ in drawn], [extra for _, extra in drawn]


def same_legs(found: Leg, expected: Leg) -> None:
    assert (found.label, found.ra_deg, found.dec_deg) == (
        expected.label,
        expected.ra_deg,
        expected.dec_deg,
    )
    np.testing.assert_allclose(found.utc_s, expected.utc_s, rtol=0, atol=1e-6)
    np.testing.assert_array_equal(found.north_arcsec, expected.north_arcsec)
    for name in ("east_arcsec", "sigma_arcsec"):
        was, now = getattr(expected, name), getattr(found, name)
        assert (was is None) == (now is None)
        if was is not None:
            np.testing.assert_array_equal(now, was)


@given(logs())
@settings(max_examples=150, deadline=None)
def test_what_is_written_reads_back_the_same(log) -> None:
    header, written, extras = log
    found = read(write(header, written, extras))
    assert found.header == header
    assert found.rejected == ()
    for leg, expected in zip(found.legs, written, strict=True):
        same_legs(leg, expected)
    assert [dict(extra) for extra in found.extras] == [
        {"a_note": texts["a note"]} for texts in extras
    ]


@given(texts)
@settings(max_examples=200, deadline=None)
def test_writing_what_was_read_changes_nothing(text: str) -> None:
    log = answer(text)
    if log is not None:
        again = read(write(log.header, log.legs, log.extras))
        assert again.header == log.header
        assert again.extras == log.extras
        for leg, expected in zip(again.legs, log.legs, strict=True):
            same_legs(leg, expected)
