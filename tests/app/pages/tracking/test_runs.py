"""Runs on the Tracking page: from a file, from tonight, from before; with gaps, without a place."""

import math

import numpy as np
import pytest
from PySide6.QtTest import QTest

from app.devices.source import Reading
from app.pages.tracking.figures import Given
from app.pages.tracking.page import (
    PERIODIC,
    TrackingPage,
)
from app.pages.tracking.parts import TrackingParts
from app.pages.tracking.practice import practice_run
from app.store.records import StoredLeg
from core.sky.site import Air, Site

from .conftest import DONE_MS, NOW_S, PERIOD_S, SWING, invented_run, written

HILL, AIR = Site(48.1, 11.6, 520.0, "Hill"), Air(952.0, 10.0)


def _rng() -> np.random.Generator:
    return np.random.default_rng(3)


def test_a_run_from_a_file_shows_its_known_swing(page, wait, tmp_path, log) -> None:
    """Truth: one sine of 6″, peak to peak 12″, every 480 s."""
    box = page.show_section(PERIODIC).box
    wait(lambda: box.read(written(tmp_path, invented_run())))
    found = page.bench.study.drive.periodic.value
    assert found.size.peak_to_peak_arcsec == pytest.approx(2.0 * SWING, abs=0.3)
    assert found.period_s == pytest.approx(PERIOD_S, abs=2.0)
    assert page.head.facts.told()[0] == f"{found.size.peak_to_peak_arcsec:.1f}″ peak to peak"
    rows = page.show_section(PERIODIC).waves.rows()
    assert rows[0][0] == "one turn of the worm"
    assert float(rows[0][2].split("″")[0]) == pytest.approx(SWING, abs=0.2)
    assert log.legs == [("run", "tracking")]
    assert log.samples == {1: 1000}
    kind, content = log.entries[0]
    assert kind == "tracking"
    assert content["leg"] == 1
    assert content["worm_period_s"] == found.period_s


def test_pixels_without_a_scale_are_asked_for(page, qtbot, wait, tmp_path) -> None:
    box = page.show_section(PERIODIC).box
    box.read(written(tmp_path, invented_run("px")))
    qtbot.waitUntil(box.scale.isVisible, timeout=DONE_MS)
    assert "pixels" in box.said()
    QTest.keyClicks(box.scale.line(), "2")
    wait(box.again_key.click)
    found = page.bench.study.drive.periodic.value
    assert found.size.peak_to_peak_arcsec == pytest.approx(4.0 * SWING, abs=0.6)
    assert not box.scale.isVisible()


@pytest.mark.parametrize(
    ("text", "word"),
    [
        ("", "empty"),
        ("these,are,no\ncolumns,at,all", "column"),
        (invented_run(minutes=9.0), "track longer"),
    ],
    ids=["empty", "not a run", "too short"],
)
def test_what_cannot_be_used_is_said_in_a_sentence(page, qtbot, tmp_path, text, word) -> None:
    section = page.show_section(PERIODIC)
    section.box.read(written(tmp_path, text))
    qtbot.waitUntil(lambda: word in section.box.said() + section.sentence.text(), timeout=DONE_MS)
    assert page.head.practice_key.isVisible() or "cannot" in page.head.headline.text()


def test_a_leg_of_tonight_can_be_taken(page, wait, session, log) -> None:
    session.set_site(HILL, AIR)
    session.begin_leg("star", 200.0, 0.0)
    for number in range(700):
        time = 4.0 * number
        east = 5.0 * math.sin(2.0 * math.pi * time / 400.0) + 0.2 * math.sin(1.7 * number)
        session.add_reading(Reading(NOW_S + time, 0.1 * math.cos(2.3 * number), east))
    section = page.show_section(PERIODIC)
    page.bench.run = practice_run(NOW_S, _rng())  # the keys of the box are there
    section._show()
    label = section.box.tonight.keys().options()[0]
    wait(section.box.tonight.keys().button(label).click)
    assert page.bench.study.drive.periodic.value.size.peak_to_peak_arcsec > 9.0
    assert log.legs == []  # the log has that leg already
    assert log.entries[0][1]["leg"] is None


def test_the_last_run_of_the_night_is_there_again(qtbot, theme, session, log) -> None:
    stored = StoredLeg(7, "", practice_run(NOW_S, _rng()).leg, True, False)
    made = TrackingPage(session, theme, TrackingParts(lambda: NOW_S, log, earlier=stored))
    qtbot.addWidget(made)
    qtbot.waitUntil(lambda: made.bench.study is not None, timeout=DONE_MS)
    assert made.bench.study.drive.periodic.value is not None
    assert log.legs == []
    made.bench.leave_run_out()
    assert log.discarded == [7]
    made.stop()


def test_a_run_resumed_after_the_bolts_were_turned_knows_no_axis(
    qtbot, theme, session, log
) -> None:
    session.set_site(HILL, AIR)
    session.bolts_turned()
    stored = StoredLeg(7, "", practice_run(NOW_S, _rng()).leg, True, False)
    made = TrackingPage(session, theme, TrackingParts(lambda: NOW_S, log, earlier=stored))
    qtbot.addWidget(made)
    assert made.bench.run.place.site == HILL
    assert made.bench.run.place.alignment is None
    made.stop()


def test_a_run_left_out_leaves_an_empty_page(page, wait, tmp_path, log) -> None:
    section = page.show_section(PERIODIC)
    wait(lambda: section.box.read(written(tmp_path, invented_run())))
    assert section.box.drop_key.isVisible()
    section.box.drop_key.click()
    page.head._show()
    assert log.discarded == [1]
    assert page.head.practice_key.isVisible()
    assert page.bench.study is None


def test_a_gap_in_the_run_is_no_line(page, wait, tmp_path) -> None:
    """Ten minutes are missing, as at a meridian flip; the star sits elsewhere afterwards."""
    head, *lines = invented_run(minutes=80.0).splitlines()
    del lines[700:900]
    section = page.show_section(PERIODIC)
    wait(lambda: section.box.read(written(tmp_path, "\n".join([head, *lines]))))
    section.views.button("run").click()
    curves = section.plot.picture().curves
    assert [curve.name for curve in curves] == ["readings"] * 2 + ["fitted curve"] * 2
    assert curves[0].x[-1] == pytest.approx(699 * 3 / 60.0, abs=0.1)
    assert curves[1].x[0] == pytest.approx(900 * 3 / 60.0, abs=0.1)


def test_the_site_given_later_reaches_the_run(page, wait, session, tmp_path) -> None:
    wait(lambda: page.show_section(PERIODIC).box.read(written(tmp_path, invented_run())))
    assert page.bench.run.place is None
    wait(lambda: session.set_site(HILL, AIR))
    assert page.bench.run.place.site == HILL


def test_out_of_view_nothing_is_worked_out_until_it_is_looked_at(
    page, wait, session, tmp_path, qtbot
) -> None:
    wait(lambda: page.show_section(PERIODIC).box.read(written(tmp_path, invented_run())))
    page.hide()
    with qtbot.assertNotEmitted(page.bench.job.began):
        session.set_site(HILL, AIR)
    assert page.bench.run.place.site == HILL
    wait(page.show)
    assert page.bench.study.question.run is page.bench.run


def test_a_run_without_east_offsets_is_refused(page, qtbot, tmp_path) -> None:
    text = invented_run().replace("east_arcsec", "other")
    section = page.show_section(PERIODIC)
    section.box.read(written(tmp_path, text))
    qtbot.waitUntil(lambda: "east" in section.sentence.text() + section.box.said(), timeout=DONE_MS)
    assert isinstance(page.bench.run, Given | None)
