"""The Tracking page with a real session and real computations behind it."""

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
from app.pages.tracking.practice import practice_guiding, practice_run
from app.pages.tracking.question import Given
from app.session.budget import Budget, telescopes_and_cameras
from app.session.equipment import Equipment
from app.sources.source import Reading
from app.storage.records import StoredLeg
from core.mount.exampleset import INVENTED_INVENTORY
from core.sky.site import Air, Site
from tests.app.pages import reach

from .conftest import DONE_MS, NOW_S, PERIOD_S, SWING, invented_run

HILL, AIR = Site(48.1, 11.6, 520.0, "Hill"), Air(952.0, 10.0)
SECTIONS = (PERIODIC, TRAINING, EXPOSURE, GUIDING, POINTING, VIBRATION)


def _rng() -> np.random.Generator:
    return np.random.default_rng(3)


def _file(tmp_path, text: str, name: str = "run.csv"):
    path = tmp_path / name
    path.write_text(text, encoding="utf-8")
    return path


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


def test_a_run_from_a_file_shows_its_known_swing(page, wait, tmp_path, log) -> None:
    """Truth: one sine of 6″, peak to peak 12″, every 480 s."""
    box = page.show_section(PERIODIC).box
    wait(lambda: box.read(_file(tmp_path, invented_run())))
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
    box.read(_file(tmp_path, invented_run("px")))
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
    section.box.read(_file(tmp_path, text))
    qtbot.waitUntil(lambda: word in section.box.said() + section.sentence.text(), timeout=DONE_MS)
    assert page.head.practice_key.isVisible() or "cannot" in page.head.headline.text()


def test_the_verdict_asks_for_the_image_scale_and_leads_to_it(page, wait, tmp_path) -> None:
    wait(lambda: page.show_section(PERIODIC).box.read(_file(tmp_path, invented_run())))
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
    wait(lambda: page.show_section(PERIODIC).box.read(_file(tmp_path, invented_run())))
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
    wait(lambda: section.box.read(_file(tmp_path, invented_run())))
    wait(lambda: section.sheet.given.emit(4.0))
    assert "3.0 times as much" in section.compared.text()
    wait(section.plus_minus.click)
    assert "1.5 times as much" in section.compared.text()


def test_guiding_says_what_to_change(page, wait) -> None:
    section = page.show_section(GUIDING)
    page.bench.want(scale_arcsec_per_px=1.2)
    wait(section.box.practice_key.click)
    assert "swings to and fro" in section.findings.text()
    assert "guiding" in page.head.headline.text()
    assert section.north.isVisible()


def test_dither_and_backlash_are_told(page, wait) -> None:
    """Truth: 4″ of play, then the star answers one for one."""
    section = page.show_section(GUIDING)
    asked = np.arange(0.0, 22.0, 2.0)
    lines = [f"{a:g} {max(a - 4.0, 0.0):g}" for a in asked]
    wait(lambda: section.reversal.setPlainText("\n".join(lines)))
    assert page.bench.study.backlash.value.arcsec == pytest.approx(4.0, abs=0.1)
    assert "4.0″" in section.play.text()
    section.reversal.setPlainText("2 0.1\nfour")
    assert "Line 2" in section.wrong.text()
    assert page.bench.reversal is not None


def test_stars_typed_by_hand_are_kept_and_can_be_removed(page, wait, session, log) -> None:
    section = page.show_section(POINTING)
    with pytest.raises(AssertionError):
        assert section.bench.here() is not None
    session.set_site(HILL, AIR)
    for name, dec in (("one", "+10"), ("two", "+40"), ("three", "+70")):
        texts = {
            "name": name,
            "ra": "18 00 00",
            "dec": dec,
            "mount_ra": "18 01 20",
            "mount_dec": dec,
            "utc": "2026-09-21 20:00",
        }
        for field, text in texts.items():
            section.form.fields[field].show_text(text)
        wait(lambda: QTest.keyClick(section.form.fields["ra"].line(), Qt.Key.Key_Return))
    assert section.stars.count() == 3
    assert len(log.settings["tracking stars"]) == 3
    assert "3 stars" in section.sentence.text()
    wait(section.remove_key.click)
    assert section.stars.count() == 2
    assert "too few" in section.sentence.text()


def test_a_coordinate_that_cannot_be_read_is_named_at_its_line(page, session) -> None:
    section = page.show_section(POINTING)
    session.set_site(HILL, AIR)
    section.form.fields["ra"].show_text("north")
    section.form.submit()
    assert section.form.fields["ra"].is_wrong()
    assert page.bench.sightings == ()


def test_without_a_site_stars_ask_for_it(page, qtbot) -> None:
    section = page.show_section(POINTING)
    with qtbot.waitSignal(page.site_wanted):
        section.form.add_key.click()


def test_practice_stars_name_the_largest_part_first(page, wait, log) -> None:
    section = page.show_section(POINTING)
    wait(section.practice_key.click)
    first = section.terms.text().splitlines()[0]
    assert "hour angle" in first  # 14′ in the invented mount, its largest
    assert "tracking stars" not in log.settings


def test_a_list_of_stars_from_a_file(page, wait, session, tmp_path) -> None:
    session.set_site(HILL, AIR)
    section = page.show_section(POINTING)
    rows = ["utc,mount_ra_deg,mount_dec_deg,star_ra_deg,star_dec_deg,side"]
    rows += [f"2026-09-21T20:00:00Z,{ra},{dec},270,{dec},east" for ra, dec in ((270.2, 10),) * 3]
    rows.insert(2, "yesterday,1,2,3,4,east")
    wait(lambda: section.read(_file(tmp_path, "\n".join(rows))))
    assert section.stars.count() == 3
    assert "Line 3" in section.said()


def test_a_tap_before_and_after_a_change(page, wait, qtbot, tmp_path) -> None:
    """Truth: 2 Hz, 10″, falling to a tenth in 2.3 s; then 4 Hz, stiffer."""
    section = page.show_section(VIBRATION)

    def record(frequency_hz: float, damping_s: float) -> str:
        time = np.arange(0.0, 8.0, 0.05)
        noise = np.random.default_rng(2).normal(0.0, 0.1, time.size)
        ring = 10.0 * np.exp(-time / damping_s) * np.cos(2.0 * np.pi * frequency_hz * time)
        rows = [f"{t:.3f},{o:.4f}" for t, o in zip(time, ring + noise, strict=True)]
        return "\n".join(["time_s,offset_arcsec", *rows])

    wait(lambda: section.read(_file(tmp_path, record(2.0, 1.0), "a.csv")))
    assert page.bench.study.before.value.frequency_hz == pytest.approx(2.0, abs=0.02)
    assert page.bench.study.before.value.damping_s == pytest.approx(1.0, abs=0.05)
    wait(lambda: section.read(_file(tmp_path, record(4.0, 0.4), "b.csv"), is_after=True))
    assert "helped" in section.change.text()
    assert len(section.plot.picture().curves) == 2
    section.read(_file(tmp_path, "time_s,offset_arcsec\n1,two", "c.csv"))
    qtbot.waitUntil(lambda: "Line 2" in section.said(), timeout=DONE_MS)


def test_load_is_judged_without_any_record(page, wait) -> None:
    section = page.show_section(VIBRATION)
    page.bench.want(payload_kg=12.0)
    wait(lambda: page.bench.want(capacity_kg=10.0))
    assert "overloaded" in section.load.text()
    assert "Telescope off before the counterweight" in section.caution.text()


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


def test_what_makes_a_verdict_doubtful_stands_beside_it(page, wait, tmp_path) -> None:
    section = page.show_section(PERIODIC)
    page.bench.want(scale_arcsec_per_px=1.2)
    wait(lambda: section.box.read(_file(tmp_path, invented_run())))
    assert not page.head.doubts.isVisible()
    wait(lambda: page.bench.want(worm_period_s=300.0))
    assert "480 s" in page.head.doubts.text()
    wait(lambda: page.bench.want(worm_period_s=8.0))
    assert "were minutes meant" in page.head.paragraph.text()
    assert not page.head.bars.isVisible()


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
    wait(lambda: section.box.read(_file(tmp_path, invented_run())))
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
    wait(lambda: section.box.read(_file(tmp_path, "\n".join([head, *lines]))))
    section.views.button("run").click()
    curves = section.plot.picture().curves
    assert [curve.name for curve in curves] == ["readings"] * 2 + ["fitted curve"] * 2
    assert curves[0].x[-1] == pytest.approx(699 * 3 / 60.0, abs=0.1)
    assert curves[1].x[0] == pytest.approx(900 * 3 / 60.0, abs=0.1)


def test_the_air_is_told_for_the_telescope_in_use(qtbot, theme, session, log) -> None:
    """Sarazin & Roddier, Astron. Astrophys. 227, 294 (1990): r0 = 0.98 λ / FWHM at 500 nm and
    σ² = 0.179 λ² r0^(−5/3) D^(−1/3).
    """
    equipment = Equipment(log)
    equipment.take(INVENTED_INVENTORY)
    equipment.use(equipment.inventory.sets[0].key)
    budget = Budget(log, equipment)
    parts = TrackingParts(lambda: NOW_S, log, budget=budget, equipment=equipment)
    telescopes, _ = telescopes_and_cameras(budget.wanted, equipment)
    aperture_m = telescopes[0].aperture_mm / 1000.0
    r0_m = 0.98 * 500e-9 / math.radians(2.0 / 3600.0)
    variance = 0.179 * 500e-9**2 * r0_m ** (-5.0 / 3.0) * aperture_m ** (-1.0 / 3.0)
    expected = math.degrees(math.sqrt(variance)) * 3600.0
    assert parts.air_motion_arcsec(2.0) == pytest.approx(expected, rel=1e-3)
    assert parts.usual().scale_arcsec_per_px == budget.optics().scale_arcsec_per_px
    made = TrackingPage(session, theme, parts)
    qtbot.addWidget(made)
    section = made.show_section(GUIDING)
    made.bench.want(seeing_arcsec=2.0)
    section._show()
    assert f"{expected:.1f}″ rms" in section.air.text()
    made.stop()


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


def test_the_site_given_later_reaches_the_run(page, wait, session, tmp_path) -> None:
    wait(lambda: page.show_section(PERIODIC).box.read(_file(tmp_path, invented_run())))
    assert page.bench.run.place is None
    wait(lambda: session.set_site(HILL, AIR))
    assert page.bench.run.place.site == HILL


def test_out_of_view_nothing_is_worked_out_until_it_is_looked_at(
    page, wait, session, tmp_path, qtbot
) -> None:
    wait(lambda: page.show_section(PERIODIC).box.read(_file(tmp_path, invented_run())))
    page.hide()
    with qtbot.assertNotEmitted(page.bench.job.began):
        session.set_site(HILL, AIR)
    assert page.bench.run.place.site == HILL
    wait(page.show)
    assert page.bench.study.question.run is page.bench.run


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
    wait(lambda: page.show_section(PERIODIC).box.read(_file(tmp_path, invented_run())))
    assert "polar alignment" not in [one.name for one in page.head.bars.causes()]
    assert "not known yet" in page.show_section(EXPOSURE).polar.text()


def test_a_run_without_east_offsets_is_refused(page, qtbot, tmp_path) -> None:
    text = invented_run().replace("east_arcsec", "other")
    section = page.show_section(PERIODIC)
    section.box.read(_file(tmp_path, text))
    qtbot.waitUntil(lambda: "east" in section.sentence.text() + section.box.said(), timeout=DONE_MS)
    assert isinstance(page.bench.run, Given | None)
