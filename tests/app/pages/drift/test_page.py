"""The Drift page with a real session behind it."""

from PySide6.QtWidgets import QAbstractButton, QApplication, QLineEdit

from app.night.session import Session
from app.night.snapshot import NorthSet
from app.pages.drift.page import DriftPage
from app.pages.drift.sources import Importing
from app.pages.drift.typed import ByHand
from app.ui.form import Key
from app.ui.text import VerdictBand
from core.alignment.driftlog.reader import read
from core.alignment.goal import Aim
from core.alignment.priors import ANGLE_NUDGED_DEG
from core.mount.equipment import Telescope
from core.sky.site import Site
from tests.app.night.heard import heard
from tests.app.pages.drift.surroundings import (
    AIR,
    HILL,
    SOLVED_MS,
    drifting_log,
    verdict,
    wait_for_answer,
)


def test_empty_it_explains_itself_and_asks_where_you_are(page: DriftPage, qtbot) -> None:
    assert page.ways_in().isVisible()
    assert not page.work().isVisible()
    with qtbot.waitSignal(page.site_wanted):
        page.ways_in().site_button().click()


def test_with_a_site_it_no_longer_asks(page: DriftPage, session: Session) -> None:
    session.set_site(HILL, AIR)
    assert not page.ways_in().site_button().isVisible()


def test_without_a_site_the_reason_is_said_beside_the_readings(page, session) -> None:
    page.take_way("hand")
    session.begin_leg("Vega", 279.2, 38.8)
    assert "Site page" in page.problem()


def test_a_log_becomes_an_answer_with_its_bad_lines_told(page, session, qtbot, tmp_path) -> None:
    session.set_site(HILL, AIR)
    path = tmp_path / "night.csv"
    lines = drifting_log()
    lines.insert(5, "m,yesterday,245.0,8.0,1.0,0.5")
    path.write_text("\n".join(lines), encoding="utf-8")
    page.take_way("log")
    controls = page.ways().panel.controls("log")
    assert isinstance(controls, Importing)
    controls.read(path)
    qtbot.waitUntil(lambda: controls.said().startswith("Taken"))
    assert "240 readings in 2 legs" in controls.said()
    assert "1 line was not used" in controls.said()
    assert "Line 6: " in controls.account()
    wait_for_answer(page, session, qtbot)
    assert "of the pole" in verdict(page)
    assert len(heard(session).legs) == 2


def test_a_log_from_elsewhere_or_read_before_is_not_taken(page, session, qtbot, tmp_path) -> None:
    session.set_site(HILL, AIR)
    path = tmp_path / "night.csv"
    path.write_text("\n".join(drifting_log()), encoding="utf-8")
    page.take_way("log")
    controls = page.ways().panel.controls("log")
    controls.read(path)
    qtbot.waitUntil(lambda: controls.said().startswith("Taken"))
    controls.read(path)
    qtbot.waitUntil(lambda: "here already" in controls.said())
    head = ["# latitude_deg: -33", "# longitude_deg: 18"]
    path.write_text("\n".join(head + drifting_log()), encoding="utf-8")
    controls.read(path)
    qtbot.waitUntil(lambda: "wrong place" in controls.said())
    assert "latitude -33.00°" in controls.said()
    assert len(heard(session).legs) == 2


def test_a_file_that_is_no_log_is_said_and_takes_nothing(page, session, qtbot, tmp_path) -> None:
    path = tmp_path / "picture.csv"
    path.write_bytes(bytes(range(256)) * 50)
    page.take_way("log")
    controls = page.ways().panel.controls("log")
    controls.read(path)
    qtbot.waitUntil(lambda: controls.said().startswith("picture.csv"))
    assert controls.choose_button().isVisible()
    assert heard(session).legs == ()


def test_readings_are_copied_as_a_drift_log(page, session) -> None:
    session.set_site(HILL, AIR)
    session.take_log(read(drifting_log()))
    page.work().plot().copy_wanted.emit()
    again = read(QApplication.clipboard().text())
    assert [leg.label for leg in again.legs] == [leg.label for leg in heard(session).legs]
    assert again.header.site() == Site(48.1, 11.6, 520.0)
    assert again.header.pressure_hpa == 952.0


def test_readings_by_hand_are_a_leg(page, session) -> None:
    session.set_site(HILL, AIR)
    page.take_way("hand")
    controls = page.ways().panel.controls("hand")
    assert isinstance(controls, ByHand)
    controls.own_button().click()
    controls.stars().watch_button().click()
    for text in ("0", "1", "2"):
        controls.pad().offset().show_text(text)
        controls.pad().press()
    assert controls.pad().said() == "Taken: 2 north."
    controls.pad().undo_wanted.emit()
    assert "taken back" in controls.pad().said()
    (leg,) = heard(session).legs
    assert leg.north_arcsec.tolist() == [0.0, 1.0]
    controls.pad().done.emit()
    assert heard(session).watching is None
    controls.own_button().click()
    assert controls.stars().isVisible()


def test_how_well_north_was_set_is_asked_where_readings_are_typed(page, session) -> None:
    session.set_site(HILL, AIR)
    page.take_way("hand")
    controls = page.ways().panel.controls("hand")
    north = controls.north()
    assert not north.isVisible()
    controls.own_button().click()
    controls.stars().watch_button().click()
    assert north.isVisible()
    assert f"good to {ANGLE_NUDGED_DEG:g}°" in north.said()
    eye = north.choice().button(NorthSet.BY_EYE.name)
    assert "north of the eyepiece or camera" in eye.accessibleName()
    eye.click()
    assert heard(session).priors.angle_sigma_deg == 3.0
    assert "good to 3°" in north.said()
    controls.pad().done.emit()
    assert not north.isVisible()
    controls.form().button("once").click()
    controls.stars().watch_button().click()
    assert north.isVisible()


def test_a_log_counts_with_the_same_answer_on_north(page, session) -> None:
    session.set_north_set(NorthSet.MEASURED)
    page.take_way("log")
    north = page.ways().panel.controls("log").north()
    assert north.choice().choice() == NorthSet.MEASURED.name
    assert "good to 0.3°" in north.said()


def test_what_the_error_contains_is_said_with_the_figures_in_force(page, session) -> None:
    session.set_site(HILL, AIR)
    session.take_log(read(drifting_log()))
    notes = page.work().notes()
    assert f"turned by some {ANGLE_NUDGED_DEG:g}°" in notes.contains()
    assert "yields 10″ per g" in notes.contains()
    session.use_equipment(None, Telescope(key="t", name="T", flexure_arcsec_per_g=2.5))
    session.set_north_set(NorthSet.MEASURED)
    assert "turned by some 0.3°" in notes.contains()
    assert "yields 2.5″ per g" in notes.contains()
    assert "a base that moves" in notes.contains()


def test_a_star_never_read_leaves_no_leg(page, session) -> None:
    session.set_site(HILL, AIR)
    page.take_way("hand")
    controls = page.ways().panel.controls("hand")
    controls.own_button().click()
    controls.stars().watch_button().click()
    controls.pad().done.emit()
    assert heard(session).legs == ()


def test_one_drift_tells_the_combination_and_the_second_star(page, session, qtbot) -> None:
    session.set_site(HILL, AIR)
    page.take_way("hand")
    controls = page.ways().panel.controls("hand")
    controls.form().button("once").click()
    chosen = controls.stars().star_list().currentItem().text()
    controls.stars().watch_button().click()
    assert controls.single().star()
    assert chosen.startswith(controls.single().star())
    for name, text in (("moved", "6"), ("minutes", "8")):
        controls.single().fields()[name].show_text(text)
    controls.single().submit()
    qtbot.waitUntil(lambda: heard(session).solution is not None, timeout=SOLVED_MS)
    band = page.findChild(VerdictBand)
    qtbot.waitUntil(lambda: "second star" in band.finding())


def test_a_leg_is_discarded_only_when_asked_twice(page, session) -> None:
    session.set_site(HILL, AIR)
    session.take_log(read(drifting_log()))
    label = heard(session).legs[0].label
    ask, sure, keep = page.work().legs().row(label).buttons()
    ask.click()
    keep.click()
    assert len(heard(session).legs) == 2
    ask.click()
    sure.click()
    assert [leg.label for leg in heard(session).legs] != [label]
    assert len(heard(session).legs) == 1


def test_turning_the_bolts_begins_anew(page, session) -> None:
    session.set_site(HILL, AIR)
    session.take_log(read(drifting_log()))
    page.work().turned_button().click()
    assert heard(session).legs == ()


def test_aim_and_target_are_passed_on(page, session) -> None:
    session.set_site(HILL, AIR)
    page.work().goal().aims().button(Aim.REFRACTED_POLE.name).click()
    page.work().goal().targets().button("0.5").click()
    assert heard(session).aim is Aim.REFRACTED_POLE
    assert heard(session).target_arcmin == 0.5


def test_every_control_has_a_name_and_is_large_enough(page, session) -> None:
    session.set_site(HILL, AIR)
    session.take_log(read(drifting_log()))
    for way in ("log", "hand", "practice"):
        page.take_way(way)
        for control in page.findChildren(QAbstractButton) + page.findChildren(QLineEdit):
            if not control.isVisible():
                continue
            assert control.accessibleName() or control.text(), control
            assert control.height() >= 44, control
            assert control.width() >= 44, control


def test_nothing_is_clipped_at_twice_the_text(page, session, theme) -> None:
    session.set_site(HILL, AIR)
    session.take_log(read(drifting_log()))
    theme.enlarge(2.0)
    for way in ("log", "hand", "practice"):
        page.take_way(way)
        QApplication.processEvents()
        for key in page.findChildren(Key):
            if key.isVisible():
                assert key.width() >= key.sizeHint().width(), key.text()
                assert key.height() >= key.sizeHint().height(), key.text()
                right = key.mapTo(page, key.rect().bottomRight()).x()
                assert right <= page.width(), key.text()
