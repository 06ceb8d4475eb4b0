"""The Tracking page as a whole, with a real session and real computations behind it."""

import math

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.pages.tracking.page import (
    EXPOSURE,
    GUIDING,
    PERIODIC,
    POINTING,
    TRAINING,
    VIBRATION,
    TrackingPage,
)
from app.pages.tracking.parts import TrackingParts
from app.pages.tracking.practice import practice_guiding
from tests.app.pages import reach

from .conftest import DONE_MS, NOW_S, SWING, invented_run, written

SECTIONS = (PERIODIC, TRAINING, EXPOSURE, GUIDING, POINTING, VIBRATION)


def _rng() -> np.random.Generator:
    return np.random.default_rng(3)


def test_empty_it_says_what_it_is_for_and_offers_the_first_step(page: TrackingPage) -> None:
    assert page.head.practice_key.isVisible()
    assert page.head.import_key.isVisible()
    assert "half an hour" in page.head.paragraph.text()
    assert not page.head.facts.isVisible()
    for name in SECTIONS:
        section = page.show_section(name)
        assert section.sentence.text(), name


def test_practice_gives_a_verdict_and_is_never_kept(page: TrackingPage, wait, log) -> None:
    page.bench.want(scale_arcsec_per_px=1.2)
    wait(page.head.practice_key.click)
    assert "periodic error" in page.head.headline.text()
    assert "invented" in page.head.origin.text()
    assert log.legs == []
    assert log.entries == []


def test_the_verdict_asks_for_the_image_scale_and_leads_to_it(page, wait, tmp_path) -> None:
    wait(lambda: page.show_section(PERIODIC).box.read(written(tmp_path, invented_run())))
    assert page.head.scale_key.isVisible()
    page.head.scale_key.click()
    section = page.sections.section(EXPOSURE)
    assert section.isVisible()
    wait(lambda: QTest.keyClicks(section.scale.line(), "1"))
    assert not page.head.scale_key.isVisible()
    assert "pixels" in page.head.paragraph.text()
    assert section.facts.told()[0].endswith("s")
    assert len(section.plot.picture().curves) == 3


def test_training_tells_what_repeats_and_writes_the_curve(page, wait, qtbot, tmp_path) -> None:
    section = page.show_section(TRAINING)
    wait(lambda: page.show_section(PERIODIC).box.read(written(tmp_path, invented_run())))
    page.show_section(TRAINING)
    repeating = float(section.facts.told()[0].split("″")[0])
    assert repeating == pytest.approx(SWING / math.sqrt(2.0), abs=0.15)
    path = tmp_path / "curve.csv"
    section.export_to(path)
    qtbot.waitUntil(lambda: "Written" in section.said(), timeout=DONE_MS)
    lines = [line for line in path.read_text().splitlines() if not line.startswith("#")]
    curve = [float(line.split(",")[1]) for line in lines[1:]]
    assert max(curve) - min(curve) == pytest.approx(2.0 * SWING, abs=0.3)
    section.export_to(path)
    assert section.asking.isVisible()
    path.write_text("mine")
    section.asking.no().click()
    assert path.read_text() == "mine"


def test_the_data_sheet_is_compared(page, wait, tmp_path) -> None:
    section = page.show_section(PERIODIC)
    wait(lambda: section.box.read(written(tmp_path, invented_run())))
    wait(lambda: section.sheet.given.emit(4.0))
    assert "3.0 times as much" in section.compared.text()
    wait(section.plus_minus.click)
    assert "1.5 times as much" in section.compared.text()


def test_what_makes_a_verdict_doubtful_stands_beside_it(page, wait, tmp_path) -> None:
    section = page.show_section(PERIODIC)
    page.bench.want(scale_arcsec_per_px=1.2)
    wait(lambda: section.box.read(written(tmp_path, invented_run())))
    assert not page.head.doubts.isVisible()
    wait(lambda: page.bench.want(worm_period_s=300.0))
    assert "480 s" in page.head.doubts.text()
    wait(lambda: page.bench.want(worm_period_s=8.0))
    assert "were minutes meant" in page.head.paragraph.text()
    assert not page.head.bars.isVisible()


def test_figures_typed_are_there_again(qtbot, theme, session, log, page) -> None:
    page.show_section(EXPOSURE).scale.given.emit(1.7)
    again = TrackingPage(session, theme, TrackingParts(lambda: NOW_S, log))
    qtbot.addWidget(again)
    assert again.bench.figures().scale_arcsec_per_px == 1.7
    again.stop()


def test_stopping_says_so_and_keeps_what_was_there(page, wait) -> None:
    page.bench.want(scale_arcsec_per_px=1.2)
    wait(page.head.practice_key.click)
    study = page.bench.study
    page.bench.take_guided(practice_guiding(NOW_S, _rng()))
    page.bench.stop()
    page.head._show()
    assert "stopped" in page.head.paragraph.text()
    assert page.bench.study is study


def test_the_plot_is_read_off_by_keys_and_copied(page, wait) -> None:
    wait(page.head.practice_key.click)
    plot = page.show_section(PERIODIC).plot
    plot.setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClick(plot, Qt.Key.Key_Home)
    first = plot.readout()
    QTest.keyClick(plot, Qt.Key.Key_Right)
    assert "″" in first
    assert plot.readout() != first
    plot.copy_key().click()
    assert QApplication.clipboard().text().startswith("curve\tPlace in the turn (seconds)")


@pytest.mark.parametrize("scale", [1.0, 2.0])
def test_every_section_is_named_large_and_not_clipped(page, wait, theme, scale) -> None:
    page.bench.want(scale_arcsec_per_px=1.2)
    wait(page.head.practice_key.click)
    wait(lambda: page.bench.take_guided(practice_guiding(NOW_S, _rng())))
    page.resize(1040, 640)
    theme.enlarge(scale)
    for name in SECTIONS:
        section = page.show_section(name)
        if name in (POINTING, VIBRATION):
            wait(section.practice_key.click)
        section._show()
        for _ in range(4):  # columns settle one inside the other
            QApplication.processEvents()
        assert reach.nameless(page) == [], name
        assert reach.small(page) == [], name
        assert reach.clipped(page) == [], name
        content = page._scrolled.widget()
        assert content.minimumSizeHint().width() <= page._scrolled.viewport().width(), name


def test_the_bars_show_each_cause_in_pixels_against_what_is_allowed(page, wait) -> None:
    page.bench.want(scale_arcsec_per_px=2.0, allowed_px=0.5)
    wait(page.head.practice_key.click)
    shares = page.bench.study.verdict.value.shares
    shown = page.head.bars.causes()
    assert [one.size for one in shown] == [share.smear_arcsec / 2.0 for share in shares]
    assert "allowed 0.5 px" in page.head.bars.accessibleDescription()


def test_an_axis_nobody_knows_is_no_cause(page, wait, tmp_path) -> None:
    page.bench.want(scale_arcsec_per_px=2.0)
    wait(lambda: page.show_section(PERIODIC).box.read(written(tmp_path, invented_run())))
    assert "polar alignment" not in [one.name for one in page.head.bars.causes()]
    assert "not known yet" in page.show_section(EXPOSURE).polar.text()
