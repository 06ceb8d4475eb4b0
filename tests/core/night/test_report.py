"""A night leaves as JSON, CSV and HTML, and comes back from JSON as it was."""

from __future__ import annotations

import json
from dataclasses import replace
from html.parser import HTMLParser
from typing import Any
from xml.etree import ElementTree

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core import language
from core.alignment.axis.solution import solve
from core.alignment.driftlog.reader import read as read_drift_log
from core.alignment.goal import Aim
from core.night import exports
from core.night.exports import UnusableNight, drift_csv
from core.night.record import Kind, NightRecord, adjustment_content, result_content
from core.night.report import drift_arcsec_per_min, figures_of, html, sections
from core.sky.site import Site
from tests.core.night.recorded import BEGUN, whole_night

NIGHT = whole_night()
TEXT = exports.write_json(NIGHT)


def plain(value: Any) -> Any:
    """Everything in a record as nested tuples that compare by value, NaN included."""
    if isinstance(value, np.ndarray):
        return tuple(repr(one) for one in value.tolist())
    if isinstance(value, (list, tuple)):
        return tuple(plain(one) for one in value)
    if hasattr(value, "__dataclass_fields__"):
        return tuple(plain(getattr(value, name)) for name in value.__dataclass_fields__)
    return value


def test_json_gives_the_same_night_back() -> None:
    again = exports.read_json(TEXT.encode("utf-8"))
    assert plain(again) == plain(NIGHT)
    assert exports.write_json(again) == TEXT


def test_an_empty_night_comes_back_too() -> None:
    empty = NightRecord(1, BEGUN, BEGUN, None, None, None, None, (), ())
    assert plain(exports.read_json(exports.write_json(empty).encode())) == plain(empty)
    assert "never said" in html(empty)


@pytest.mark.parametrize(
    ("data", "words"),
    [
        (b"", "not JSON"),
        (b"leg,utc\n", "not JSON"),
        (b"\xff\xfe\x00", "not text"),
        (b"[" * 100_000, "nested too deeply"),
        (b"[]", "not a night exported"),
        (b'{"format": "poleward equipment", "version": 1}', "not a night exported"),
        (b'{"format": "poleward night"}', "which form"),
        (TEXT.replace('"version": 1', '"version": 2', 1).encode(), "newer version"),
        (TEXT.replace('"latitude_deg": 47.0', '"latitude_deg": 470.0').encode(), "outside"),
        (TEXT.replace('"label": "east 1", ', "").encode(), "“label” is missing"),
        (TEXT.replace("[1795550400.0, ", "[null, ", 1).encode(), "without a time or an offset"),
        (TEXT.replace('"key": 11', '"key": "11"').encode(), "no key"),
        (TEXT.replace('"aim": "REFRACTED_POLE"', '"aim": 3').encode(), "text belongs"),
    ],
)
def test_a_file_that_cannot_be_is_refused_in_a_sentence(data: bytes, words: str) -> None:
    with pytest.raises(UnusableNight, match=words) as refusal:
        exports.read_json(data)
    assert str(refusal.value).endswith(".")


def _paths(value: Any, path: tuple = ()) -> list[tuple]:
    inside = value.items() if isinstance(value, dict) else enumerate(value)
    found = []
    for key, one in inside:
        found.append((*path, key))
        if isinstance(one, (dict, list)) and len(found) < 400:
            found += _paths(one, (*path, key))
    return found


WHOLE = json.loads(TEXT)
PATHS = _paths(WHOLE["night"])


@given(st.sampled_from(PATHS), st.none() | st.booleans() | st.integers() | st.floats()
       | st.text(max_size=3) | st.just([]) | st.just({}) | st.just(10**400))  # fmt: skip
@settings(max_examples=200, deadline=None)
def test_whatever_is_changed_the_reader_reads_or_refuses(path: tuple, value: Any) -> None:
    whole = json.loads(TEXT)
    holder = whole["night"]
    for key in path[:-1]:
        holder = holder[key]
    holder[path[-1]] = value
    try:
        night = exports.read_json(json.dumps(whole).encode())
    except UnusableNight:
        return
    exports.write_json(night).encode()
    html(night)


@given(st.binary(max_size=200))
def test_any_bytes_are_read_or_refused(data: bytes) -> None:
    with pytest.raises(UnusableNight):
        exports.read_json(data)


def test_the_csv_is_a_drift_log_with_all_legs() -> None:
    log = read_drift_log(drift_csv(NIGHT))
    assert log.rejected == ()
    assert [leg.label for leg in log.legs] == ["east 1", "bumped", "east 2", "run 1"]
    assert (log.header.latitude_deg, log.header.longitude_deg) == (47.0, -20.0)
    assert log.header.pressure_hpa is None  # assumed ones are not passed off as read
    for read, kept in zip(log.legs, NIGHT.legs, strict=True):
        np.testing.assert_allclose(read.utc_s, kept.leg.utc_s, atol=1e-6, rtol=0)
        np.testing.assert_array_equal(read.north_arcsec, kept.leg.north_arcsec)
    assert [set(texts["axis_state"]) for texts in log.extras] == [{"1"}, {"2"}, {"2"}, {"2"}]
    assert set(log.extras[1]["left_out"]) == {"yes"}


def test_legs_that_share_a_label_are_told_apart() -> None:
    state = NIGHT.axis_states[0]
    twice = replace(NIGHT, axis_states=(state, state))
    assert [leg.label for leg in read_drift_log(drift_csv(twice)).legs] == ["east 1", "east 1 (2)"]


def test_guiding_pointing_and_vibration_are_told_without_their_readings() -> None:
    text = html(NIGHT)
    for said in (
        "Guiding holds the star within 0.61″ rms.",
        "In declination the star swings.",
        "Seven stars are missed by 17.5′.",
        "2.25 Hz",
        "before a change",
    ):
        assert said in text, said
    assert "a secret of the file" not in text
    kept = next(one for one in exports.read_json(TEXT.encode()).of_kind(Kind.POINTING))
    assert kept.content["kept"] == {"stars": [{"name": "a secret of the file"}]}


class _Balance(HTMLParser):
    """Whether every element is closed, and where anything is fetched from."""

    EMPTY = ("meta", "img", "br", "rect", "path", "circle", "polyline")

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []
        self.sources: list[str] = []
        self.seen: set[str] = set()

    def handle_starttag(self, tag: str, attrs: list) -> None:
        self.seen.add(tag)
        self.sources += [value for name, value in attrs if name in ("src", "href", "data")]
        if tag not in self.EMPTY:
            self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        if tag not in self.EMPTY:
            assert self.open.pop() == tag


def test_the_report_stands_alone() -> None:
    text = html(NIGHT)
    balance = _Balance()
    balance.feed(text)
    assert balance.open == []
    assert all(source.startswith("data:image/png;base64,") for source in balance.sources)
    assert len(balance.sources) == 1
    assert not balance.seen & {"script", "link", "iframe", "object"}
    assert "url(" not in text
    assert "&lt;script&gt;" in text


def test_the_report_says_what_the_night_held() -> None:
    text = html(NIGHT)
    for words in (
        "Meadow &lt;north&gt; &amp; hill",
        "47.0000° N",
        "20.0000° W",
        "1.7′ ± 0.4′ (95 %)",
        "Level it.",
        "is new",
        "left out",
        "temperature",
        "−3.5 °C",
        "small refractor",
        "M 42",
        "früh",
        "turn it west",
        "periodic error",
        "2026-11-24",
    ):
        assert words in text, words
    titles = [section.title for section in sections(NIGHT)]
    assert titles == ["The night", "Equipment", "Plan", "Weather", "Notes", "Checklist",
                      "Alignment 1", "Alignment 2", "Tracking", "Guiding", "Pointing",
                          "Vibration", "Pictures"]  # fmt: skip


def test_times_are_written_as_the_reader_wants_them() -> None:
    text = html(NIGHT, say_time=lambda utc_s: f"T+{(utc_s - BEGUN) / 60.0:.0f}")
    assert "<td>T+2</td>" in text
    assert "UTC" not in text


def test_plots_can_be_drawn_by_somebody_else() -> None:
    text = html(NIGHT, draw_plot=lambda plot: f'<img src="plot:{plot.name}">')
    assert "<svg" not in text
    assert 'src="plot:leg-31"' in text
    assert 'src="plot:run-34"' in text


def test_every_plot_is_whole_svg_with_its_words() -> None:
    plots = [plot for section in sections(NIGHT) for plot in section.plots]
    assert len(plots) == 4
    for plot in plots:
        tree = ElementTree.fromstring(plot.svg())
        words = " ".join(tree.itertext())
        assert plot.title in words
        assert "minutes" in words
        assert "offset (″)" in words


def test_an_attachment_that_could_run_is_not_shown() -> None:
    picture = next(one for one in NIGHT.entries if one.kind == Kind.PICTURE)
    bad = replace(picture, content={**picture.content, "media_type": "image/svg+xml"})
    text = html(replace(NIGHT, entries=(bad,)))
    assert "not shown here" in text
    assert "data:" not in text


def test_the_slope_is_that_of_least_squares() -> None:
    legs = [watched.leg for watched in NIGHT.legs]
    for leg in legs[:3]:
        minutes = (leg.utc_s - leg.utc_s.mean()) / 60.0
        by_hand = np.sum(minutes * leg.north_arcsec) / np.sum(minutes**2)
        assert drift_arcsec_per_min(leg) == pytest.approx(by_hand, rel=1e-9)
    assert drift_arcsec_per_min(replace(legs[0], utc_s=legs[0].utc_s[:1])) is None


def test_the_figures_of_a_night() -> None:
    found = figures_of(NIGHT)
    assert (found.error_arcmin, found.half_width_arcmin) == (1.7, 0.4)
    assert found.minutes == 40.0
    assert found.turns_of_the_bolts == 1
    # Meant −10′, moved from 12′ to 1′: 1.1 times as far. The altitude turn was too small to tell.
    assert found.azimuth_bolt_scales == pytest.approx((1.1,))
    assert found.altitude_bolt_scales == ()
    assert found.periodic_error_arcsec == (24.0,)


def test_content_from_elsewhere_may_be_anything() -> None:
    odd = [replace(one, content={"axis_state": [1], "error_arcmin": "x", "state": {}})
           for one in NIGHT.entries]  # fmt: skip
    found = figures_of(replace(NIGHT, entries=tuple(odd)))
    assert found.error_arcmin is None
    assert found.azimuth_bolt_scales == ()
    html(replace(NIGHT, entries=tuple(odd)))


def test_a_result_says_the_distance_from_the_pole_aimed_at(make_leg, air) -> None:
    site = Site(48.0, 11.0, 500.0)
    legs = [make_leg(site, 1.0, 12.0, -9.0), make_leg(site, 75.0, 12.0, -9.0, seed=2)]
    solution = solve(legs, site, air)
    found = result_content(solution, Aim.TRUE_POLE, 21)
    assert found["error_arcmin"] == pytest.approx(solution.sky_error_arcmin, rel=1e-3)
    factor = max(solution.azimuth_interval_factor, solution.altitude_interval_factor)
    assert found["half_width_arcmin"] == pytest.approx(factor * solution.sky_sigma_arcmin, rel=0.01)
    refracted = result_content(solution, Aim.REFRACTED_POLE, 21)
    lift = solution.altitude_error_arcmin - solution.altitude_error_refracted_arcmin
    assert lift > 0.5
    assert refracted["error_arcmin"] == pytest.approx(
        np.hypot(12.0 * np.cos(np.deg2rad(48.0)), -9.0 - lift), abs=1.0
    )
    one_star = result_content(solve(legs[:1], site, air), Aim.TRUE_POLE, 21)
    assert one_star["error_arcmin"] is None
    json.dumps([found, refracted, one_star, adjustment_content(21, 3.0)], allow_nan=False)


def test_the_html_names_the_language_it_is_written_in():
    """HTML Living Standard, 3.2.6.2 "The lang and xml:lang attributes": for reading aloud."""
    assert '<html lang="en">' in html(NIGHT)
    language.use("de", lambda template: template)
    try:
        assert '<html lang="de">' in html(NIGHT)
    finally:
        language.use_english()
