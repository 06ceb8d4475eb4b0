"""The Drift page with a real session behind it."""

import itertools
from collections.abc import Iterator

import numpy as np
import pytest
from PySide6.QtWidgets import QAbstractButton, QApplication, QLineEdit

from app.driftparts import drift_parts
from app.pages.drift.byhand import ByHand
from app.pages.drift.importing import Importing
from app.pages.drift.page import DriftPage
from app.pages.drift.practice import Practice
from app.session.session import Session
from app.session.shown import Shown
from app.signals.sounds import Sounds
from app.widgets.key import Key
from app.widgets.verdict import VerdictBand
from core.alignment.advice import Aim
from core.alignment.driftlog import read
from core.alignment.procedure import Stage
from core.sky.site import Air, Site
from tests.app.pages.drift.surroundings import seen_by

NOW_S = 1_790_000_000.0
HILL = Site(48.1, 11.6, 520.0, "Hill")
AIR = Air(952.0, 10.0)
SOLVED_MS = 20_000


@pytest.fixture
def session() -> Iterator[Session]:
    made = Session()
    yield made
    made.close()


@pytest.fixture
def shown(session: Session) -> Shown:
    return Shown(session)


@pytest.fixture
def page(qtbot, theme, settings, session: Session, shown: Shown) -> Iterator[DriftPage]:
    seconds = itertools.count()
    made = DriftPage(
        shown,
        theme,
        drift_parts(
            session,
            lambda: NOW_S + next(seconds),
            Sounds(settings),
            *seen_by(),
        ),
    )
    made.resize(1150, 740)
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    yield made
    made.stop()


def _verdict(page: DriftPage) -> str:
    band = page.findChild(VerdictBand)
    return " ".join(part.accessibleDescription() for part in band.halves())


def _wait_for_answer(page: DriftPage, session: Session, qtbot) -> None:
    qtbot.waitUntil(lambda: session.snapshot().solution is not None, timeout=SOLVED_MS)
    qtbot.waitUntil(lambda: _verdict(page) != "not known yet not known yet")


def _drifting_log(minutes: float = 8.0) -> list[str]:
    """Two invented legs: near the meridian 0.9″ a minute south, in the east 0.5″ north."""
    lines = ["leg,utc,ra_deg,dec_deg,north_arcsec,sigma_arcsec"]
    random = np.random.default_rng(5)
    for name, ra_deg, rate, start_s in (("m", 245.0, -0.9, 0.0), ("e", 330.0, 0.5, 900.0)):
        for second in np.arange(0.0, 60.0 * minutes, 4.0):
            stamp = np.datetime64(int(NOW_S + start_s + second), "s")
            north = rate * second / 60.0 + random.normal(0.0, 0.5)
            lines.append(f"{name},{stamp}Z,{ra_deg},8.0,{north:.3f},0.5")
    return lines


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
    lines = _drifting_log()
    lines.insert(5, "m,yesterday,245.0,8.0,1.0,0.5")
    path.write_text("\n".join(lines), encoding="utf-8")
    page.take_way("log")
    controls = page.ways().panel.controls("log")
    assert isinstance(controls, Importing)
    with qtbot.waitSignal(controls.log_read):
        controls.read(path)
    assert "240 readings in 2 legs" in controls.said()
    assert "1 line was not used" in controls.said()
    assert "Line 6: " in controls.account()
    _wait_for_answer(page, session, qtbot)
    assert "of the pole" in _verdict(page)
    assert len(session.snapshot().legs) == 2


def test_a_file_that_is_no_log_is_said_and_takes_nothing(page, session, qtbot, tmp_path) -> None:
    path = tmp_path / "picture.csv"
    path.write_bytes(bytes(range(256)) * 50)
    page.take_way("log")
    controls = page.ways().panel.controls("log")
    controls.read(path)
    qtbot.waitUntil(lambda: controls.said().startswith("picture.csv"))
    assert controls.choose_button().isVisible()
    assert session.snapshot().legs == ()


def test_readings_are_copied_as_a_drift_log(page, session) -> None:
    session.set_site(HILL, AIR)
    session.take_log(read(_drifting_log()))
    page.work().plot().copy_wanted.emit()
    again = read(QApplication.clipboard().text())
    assert [leg.label for leg in again.legs] == [leg.label for leg in session.snapshot().legs]
    assert again.header.site() == Site(48.1, 11.6, 520.0)
    assert again.header.pressure_hpa == 952.0


def test_readings_by_hand_are_a_leg(page, session) -> None:
    session.set_site(HILL, AIR)
    page.take_way("hand")
    controls = page.ways().panel.controls("hand")
    assert isinstance(controls, ByHand)
    controls.stars().watch_button().click()
    for text in ("0", "1", "2"):
        controls.pad().offset().show_text(text)
        controls.pad().press()
    assert controls.pad().said() == "Taken: 2 north."
    controls.pad().undo_wanted.emit()
    assert "taken back" in controls.pad().said()
    (leg,) = session.snapshot().legs
    assert leg.north_arcsec.tolist() == [0.0, 1.0]
    controls.pad().done.emit()
    assert session.snapshot().watching is None
    controls.own_button().click()
    assert controls.stars().isVisible()


def test_a_star_never_read_leaves_no_leg(page, session) -> None:
    session.set_site(HILL, AIR)
    page.take_way("hand")
    controls = page.ways().panel.controls("hand")
    controls.stars().watch_button().click()
    controls.pad().done.emit()
    assert session.snapshot().legs == ()


def test_one_drift_tells_the_combination_and_the_second_star(page, session, qtbot) -> None:
    session.set_site(HILL, AIR)
    page.take_way("hand")
    controls = page.ways().panel.controls("hand")
    controls.form().button("once").click()
    controls.stars().watch_button().click()
    for name, text in (("moved", "6"), ("minutes", "8")):
        controls.single().fields()[name].show_text(text)
    controls.single().submit()
    qtbot.waitUntil(lambda: session.snapshot().solution is not None, timeout=SOLVED_MS)
    band = page.findChild(VerdictBand)
    qtbot.waitUntil(lambda: "second star" in band.finding())


def _practise(page: DriftPage) -> Practice:
    page.take_way("practice")
    controls = page.ways().panel.controls("practice")
    assert isinstance(controls, Practice)
    controls.set_speed("60")
    controls.star_buttons()[0].click()
    return controls


def test_practice_runs_turns_and_reveals(page, shown, qtbot) -> None:
    controls = _practise(page)
    assert "invented" in shown.snapshot().site.name
    _wait_for_answer(page, shown, qtbot)
    before = shown.snapshot().axis_state
    controls.bolts().button("east").click()
    assert shown.snapshot().guide.stage is Stage.TURN  # whoever reaches for the bolts turns them
    controls.set_speed("0")
    page.leading().act("turned")
    snapshot = shown.snapshot()
    assert (snapshot.axis_state, snapshot.legs) == (before + 1, ())
    controls.reveal_button().click()
    assert "of the pole and is" in controls.truth()


def test_practice_leaves_the_real_night_alone(page, session, shown, qtbot) -> None:
    session.set_site(HILL, AIR)
    session.take_log(read(_drifting_log()))
    page.take_way("hand")
    page.ways().panel.controls("hand").stars().watch_button().click()
    before = session.snapshot()
    controls = _practise(page)
    qtbot.waitUntil(lambda: len(shown.snapshot().legs[0].utc_s) > 2)
    assert "practice" in shown.snapshot().legs[0].label
    assert "nothing here is kept" in page.practice_band().said()
    controls.bolts().button("raise").click()
    page.work().goal().targets().button("5").click()
    controls.again.emit()
    assert shown.snapshot().legs == ()
    page.practice_band().back_button().click()
    after = session.snapshot()
    assert not page.practice_band().isVisible()
    assert [leg.label for leg in after.legs] == [leg.label for leg in before.legs]
    assert (after.site, after.target_arcmin) == (before.site, before.target_arcmin)
    assert (after.axis_state, after.watching) == (before.axis_state, before.watching)
    assert page.ways().panel.controls("practice") is None


def test_what_is_watched_by_hand_goes_on_after_practice(page, session) -> None:
    session.set_site(HILL, AIR)
    page.take_way("hand")
    controls = page.ways().panel.controls("hand")
    controls.stars().watch_button().click()
    page.take_way("practice")
    page.practice_band().back_button().click()
    controls.pad().offset().show_text("3")
    controls.pad().press()
    (leg,) = session.snapshot().legs
    assert leg.north_arcsec.tolist() == [3.0]


def test_practice_without_a_site_gives_the_real_night_none(page, session) -> None:
    page.take_way("practice")
    assert session.snapshot().site is None
    page.practice_band().back_button().click()
    assert page.ways_in().site_button().isVisible()


def test_a_leg_is_discarded_only_when_asked_twice(page, session) -> None:
    session.set_site(HILL, AIR)
    session.take_log(read(_drifting_log()))
    label = session.snapshot().legs[0].label
    ask, sure, keep = page.work().legs().row(label).buttons()
    ask.click()
    keep.click()
    assert len(session.snapshot().legs) == 2
    ask.click()
    sure.click()
    assert [leg.label for leg in session.snapshot().legs] != [label]
    assert len(session.snapshot().legs) == 1


def test_turning_the_bolts_begins_anew(page, session) -> None:
    session.set_site(HILL, AIR)
    session.take_log(read(_drifting_log()))
    page.work().turned_button().click()
    assert session.snapshot().legs == ()


def test_aim_and_target_are_passed_on(page, session) -> None:
    session.set_site(HILL, AIR)
    page.work().goal().aims().button(Aim.REFRACTED_POLE.name).click()
    page.work().goal().targets().button("0.5").click()
    assert session.snapshot().aim is Aim.REFRACTED_POLE
    assert session.snapshot().target_arcmin == 0.5


def test_every_control_has_a_name_and_is_large_enough(page, session) -> None:
    session.set_site(HILL, AIR)
    session.take_log(read(_drifting_log()))
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
    session.take_log(read(_drifting_log()))
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
