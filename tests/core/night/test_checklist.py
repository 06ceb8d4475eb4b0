"""The checklist holds what the night calls for, in an order and at times that can be kept.

Which steps belong to a night, and how long they take, is common practice, no source.
"""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.mount.equipment import MountKind, Purpose
from core.night.checklist import (
    Circumstances,
    Hemisphere,
    Moment,
    Moments,
    NightPart,
    Power,
    build,
    hemisphere_of,
    load,
    source_texts,
)
from core.night.darkness import night_of
from core.sky.clocks import parse_utc
from core.sky.site import Site
from tests.core.night.invented import IMAGING, SUMMER_LOOK, invented_night, keys, moments

MINUTE_S = 60.0
any_circumstances = st.builds(
    Circumstances,
    st.sampled_from(Purpose),
    st.sampled_from(MountKind),
    st.sampled_from(Power),
    st.sampled_from(Hemisphere),
    st.none() | st.floats(-40.0, 40.0),
    st.floats(0.0, 1.0),
    st.booleans(),
    st.booleans(),
    st.floats(0.0, 240.0),
)


@pytest.mark.parametrize(
    ("circumstances", "there", "absent"),
    [
        (
            IMAGING,
            ["counterweight", "balance", "mains", "drift", "guiding", "flip", "moon", "ways",
             "tripod-north", "weights-off", "unplug-mains", "warm"],
            ["battery", "board", "pole-south", "rotation", "ladder", "charge"],
        ),
        (
            SUMMER_LOOK,
            ["board", "battery", "ladder", "focus", "finder"],
            ["counterweight", "drift", "mains", "flip", "moon", "ways", "guiding", "level",
             "balance", "site-rough", "dark-frames", "warm", "cables"],
        ),
        (
            replace(IMAGING, mount=MountKind.ALT_AZIMUTH, needs_flip=False),
            ["setup-stars", "rotation", "level-altaz", "balance-altaz"],
            ["drift", "counterweight", "pole-north", "flip", "weights-off"],
        ),
        (
            replace(IMAGING, hemisphere=Hemisphere.SOUTH, mount=MountKind.FORK_ON_WEDGE),
            ["tripod-south", "rough-south", "pole-south", "drift"],
            ["tripod-north", "rough-north", "pole-north", "counterweight", "flip"],
        ),
        (replace(SUMMER_LOOK, temperature_c=None), ["ways", "warm"], []),
    ],
)  # fmt: skip
def test_only_what_applies_is_there(
    circumstances: Circumstances, there: list[str], absent: list[str]
) -> None:
    found = keys(build(circumstances, moments()))
    assert [key for key in there if key not in found] == []
    assert [key for key in absent if key in found] == []


@given(any_circumstances, st.floats(-3.0, 11.0))
@settings(max_examples=150, deadline=None)
def test_the_times_can_be_kept_one_after_another(
    circumstances: Circumstances, hours: float
) -> None:
    when = moments(hours)
    checklist = build(circumstances, when)
    before = [one for one in checklist.planned if one.step.when.at is None]
    begins = {one.step.key: one.begin_utc_s for one in before}
    for one, following in pairwise(before):
        assert one.begin_utc_s is not None
        assert following.begin_utc_s is not None
        assert one.begin_utc_s + one.step.minutes * MINUTE_S <= following.begin_utc_s + 1e-3
    for one in before:
        assert one.begin_utc_s is not None
        if one.step.when.by is not None:
            deadline = when.at(one.step.when.by)
            assert deadline is not None
            assert one.begin_utc_s + one.step.minutes * MINUTE_S <= deadline + 1e-3
        if one.not_before_utc_s is not None:
            assert one.begin_utc_s >= one.not_before_utc_s - 1e-3
    cool, focus = begins["cool-down"], begins["focus"]
    assert cool is not None
    assert focus is not None
    assert focus - cool >= circumstances.cool_down_min * MINUTE_S - 1e-3
    assert checklist.starts_utc_s is not None
    assert checklist.starts_utc_s >= when.at(Moment.TARGET) - 1e-3


def test_nothing_is_put_off_without_need() -> None:
    checklist = build(IMAGING, moments(5.0))
    assert checklist.notice == ""
    assert checklist.starts_utc_s == moments(5.0).target_utc_s
    last = [one for one in checklist.planned if one.step.when.at is None][-1]
    assert last.begin_utc_s == pytest.approx(checklist.starts_utc_s)


def test_a_target_too_early_is_said_and_moved() -> None:
    early = build(IMAGING, moments(0.0))
    assert "minutes later" in early.notice
    assert early.starts_utc_s is not None
    # Alone the steps that need stars take more than an hour after the first of them show.
    assert early.starts_utc_s > moments(0.0).first_stars_utc_s + 3600.0
    assert build(IMAGING, Moments.of(invented_night())).notice == ""


def test_steps_after_the_target_follow_their_moments() -> None:
    when = moments(5.0)
    times = {one.step.key: one.begin_utc_s for one in build(IMAGING, when).planned}
    assert times["flip"] == when.flip_utc_s
    assert times["again"] == when.target_utc_s + 3600.0
    closing = [times[key] for key in ("dark-frames", "note", "park", "shut-down", "tube-off")]
    assert closing[0] == when.end_utc_s
    assert closing == sorted(closing)
    assert len(set(closing)) == len(closing)


def test_a_summer_without_evening_has_no_times() -> None:
    night = night_of(Site(75.0, 20.0), parse_utc("2026-06-21T12:00:00Z"))
    checklist = build(IMAGING, Moments.of(night))
    assert "without times" in checklist.notice
    assert {one.begin_utc_s for one in checklist.planned} == {None}


def test_a_polar_night_needs_no_sunset() -> None:
    night = night_of(Site(80.0, 20.0), parse_utc("2026-12-21T12:00:00Z"))
    checklist = build(IMAGING, Moments.of(night))
    assert checklist.starts_utc_s is not None
    assert all(one.begin_utc_s is not None for one in checklist.planned if one.step.when.at is None)


@given(any_circumstances)
@settings(max_examples=100, deadline=None)
def test_the_cautions_of_every_night_are_there(circumstances: Circumstances) -> None:
    said = {caution.key for caution in build(circumstances, moments()).cautions}
    always = {"sun", "sun-at-dawn", "lifting", "trip", "traffic", "alone", "rules", "laser"}
    assert always <= said
    if circumstances.power is Power.MAINS:
        assert "mains" in said
    else:
        assert "batteries" in said
    if circumstances.mount is MountKind.GERMAN_EQUATORIAL:
        assert {"counterweight", "pier", "clutches"} <= said
    if circumstances.temperature_c is None or circumstances.temperature_c < 0.0:
        assert {"cold", "ice"} <= said


@pytest.mark.parametrize(
    ("key", "words"),
    [
        ("sun", ["full aperture", "finder"]),
        ("counterweight", ["toe stop", "before the telescope"]),
        ("mains", ["residual-current device", "licensed electrician"]),
        ("laser", ["law", "aircraft"]),
        ("rules", ["local rules"]),
        ("pier", ["pier", "cables"]),
    ],
)
def test_a_caution_says_what_matters(key: str, words: list[str]) -> None:
    (text,) = {one.text for step in load() for one in step.cautions if one.key == key}
    assert [word for word in words if word not in text] == []


def test_the_weights_come_on_before_the_telescope_and_off_after_it() -> None:
    order = keys(build(IMAGING, moments()))
    assert order.index("counterweight") < order.index("tube") < order.index("balance")
    assert order.index("tube-off") < order.index("weights-off")
    assert order.index("park") < order.index("shut-down") < order.index("unplug-mains")
    assert order.index("drift") < order.index("guiding")


def test_the_table_is_sound() -> None:
    steps = load()
    names = [step.key for step in steps]
    assert len(set(names)) == len(names)
    parts = [list(NightPart).index(step.part) for step in steps]
    assert parts == sorted(parts)
    assert {step.when.ahead_of for step in steps} - {None} <= set(names)
    for step in steps:
        assert step.text.endswith(".")
        assert step.why.endswith(".")
        assert len(step.why) < 140, step.key
        assert not any(letter.isdigit() for letter in step.text + step.why)
        assert math.isfinite(step.minutes)
    assert "by daylight" in source_texts()


def test_the_equator_has_a_pole_too() -> None:
    assert hemisphere_of(0.0) is Hemisphere.NORTH
    assert hemisphere_of(-33.0) is Hemisphere.SOUTH
