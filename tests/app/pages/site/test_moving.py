"""Another place while stars are measured: put right, or moved there, or neither."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.devices.source import Reading
from app.night.session import Session
from app.night.snapshot import Snapshot
from app.pages.site.page import SitePage
from app.ui.style import SCALES
from app.ui.text import Scrolled
from core.sky.site import Air, Site
from tests.app.night.heard import heard
from tests.app.pages import reach
from tests.app.pages.site.conftest import NOW_S

HILL, AIR = Site(48.1, 11.6, 520.0, "Hill"), Air(952.0, 8.0)
ROCK = Site(-33.0, 20.0, 300.0, "Rock")
VEGA = ("Vega", 279.2, 38.8)


@pytest.fixture
def joined(page: SitePage, tonight: Session) -> SitePage:
    """As in the program, with a leg under way that was read."""
    tonight.set_site(HILL, AIR)
    page.show_site(HILL, AIR)
    page.mount_moved.connect(tonight.tripod_moved)
    page.site_given.connect(tonight.set_site)
    tonight.begin_leg(*VEGA)
    for second in range(0, 60, 5):
        tonight.add_reading(Reading(NOW_S + second, 0.1 * second, 0.0))
    return page


def test_far_away_is_asked_about_and_nothing_changes_before_the_answer(joined, tonight) -> None:
    _give(joined, ROCK)
    assert "81." in joined.moving().question()  # 81.5° along the great circle
    assert "answer the question" in joined.answer()
    assert QApplication.focusWidget() is joined.moving().yes()
    assert _state(heard(tonight)) == (HILL, 1, 1)


def test_the_question_comes_into_view_when_a_kept_place_is_pressed_above(joined, qtbot) -> None:
    joined.resize(1050, 400)
    _give(joined, ROCK)
    joined.moving().yes().click()
    _give(joined, HILL)
    joined.moving().yes().click()
    joined.kept().button("Rock").setFocus()
    scrolled = joined.findChild(Scrolled)
    scrolled.verticalScrollBar().setValue(0)
    joined.kept().button("Rock").click()
    key = joined.moving().yes()
    qtbot.waitUntil(lambda: key.visibleRegion().boundingRect() == key.rect())


def test_a_wrong_place_is_put_right_and_the_legs_stay(joined, tonight) -> None:
    _give(joined, ROCK)
    QTest.keyClick(joined.moving().yes(), Qt.Key.Key_Space)
    assert _state(heard(tonight)) == (ROCK, 1, 1)
    assert heard(tonight).watching is not None
    assert "computed anew" in joined.answer()
    assert joined.kept().button("Rock").isVisible()


def test_a_mount_that_was_moved_is_measured_anew(joined, tonight) -> None:
    _give(joined, ROCK)
    joined.moving().no().click()
    snapshot = heard(tonight)
    assert _state(snapshot) == (ROCK, 2, 0)
    assert (snapshot.watching, snapshot.guide.last_turn) == (None, None)
    assert "counts as moved" in joined.answer()
    _give(joined, HILL)  # nothing is measured here yet
    assert not joined.moving().question()
    assert heard(tonight).site == HILL


def test_neither_keeps_the_place_in_use(joined, tonight) -> None:
    _give(joined, ROCK)
    joined.moving().neither().click()
    assert _state(heard(tonight)) == (HILL, 1, 1)
    assert joined.field("latitude").text() == "48.1000° N"
    assert joined.field("temperature").text() == "8"
    assert not joined.moving().isVisible()


def test_a_few_kilometres_are_put_right_without_a_question(joined, tonight) -> None:
    near = Site(48.1, 11.7, 520.0, "Hill")  # 0.07° of arc
    _give(joined, near)
    assert _state(heard(tonight)) == (near, 1, 1)
    assert "computed anew" in joined.answer()


def test_after_a_turn_its_outcome_is_asked_about_though_no_leg_is_read(joined, tonight) -> None:
    tonight.bolts_turned()
    _give(joined, ROCK)
    assert joined.moving().question()


def test_the_same_place_again_is_no_change(joined) -> None:
    joined.use_button().click()
    assert joined.answer() == "In use."


def test_typing_on_withdraws_the_question(joined, tonight) -> None:
    _give(joined, ROCK)
    QTest.keyClicks(joined.field("longitude").line(), "1")
    assert not joined.moving().isVisible()
    assert heard(tonight).site == HILL


@pytest.mark.parametrize("scale", SCALES)
def test_the_question_is_named_large_enough_and_whole(joined, theme, scale: float) -> None:
    theme.enlarge(scale)
    joined.resize(1050, 640)
    _give(joined, ROCK)
    for _ in range(3):
        QApplication.processEvents()
    assert reach.nameless(joined) == []
    assert reach.small(joined) == []
    assert reach.clipped(joined) == []


def _state(snapshot: Snapshot) -> tuple[Site | None, int, int]:
    return snapshot.site, snapshot.axis_state, len(snapshot.legs)


def _give(page: SitePage, site: Site) -> None:
    page.form().show_site(site, None)
    page.use_button().click()
