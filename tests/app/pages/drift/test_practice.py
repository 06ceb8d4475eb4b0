"""The practice sky on the Drift page: run, turned, revealed, and apart from the real night."""

import pytest

from app.pages.drift.page import DriftPage
from app.pages.drift.practice import PracticePanel
from core.alignment.driftlog.reader import read
from core.alignment.guide.procedure import Stage
from tests.app.night.heard import heard
from tests.app.pages.drift.surroundings import AIR, HILL, drifting_log, wait_for_answer


def _practise(page: DriftPage, qtbot) -> PracticePanel:
    page.take_way("practice")
    controls = page.ways().panel.controls("practice")
    assert isinstance(controls, PracticePanel)
    controls.set_speed("60")
    qtbot.waitUntil(lambda: bool(controls.star_buttons()))
    controls.star_buttons()[0].click()
    return controls


def test_practice_runs_turns_and_reveals(page, shown, qtbot) -> None:
    controls = _practise(page, qtbot)
    assert "invented" in heard(shown).site.name
    wait_for_answer(page, shown, qtbot)
    before = heard(shown).axis_state
    controls.bolts().button("east").click()
    assert heard(shown).guide.stage is Stage.TURN  # whoever reaches for the bolts turns them
    controls.set_speed("0")
    page.leading().act("turned")
    snapshot = heard(shown)
    assert (snapshot.axis_state, snapshot.legs) == (before + 1, ())
    controls.reveal_button().click()
    assert "of the pole and is" in controls.truth()


def test_practice_leaves_the_real_night_alone(page, session, shown, qtbot) -> None:
    session.set_site(HILL, AIR)
    session.take_log(read(drifting_log()))
    page.take_way("hand")
    by_hand = page.ways().panel.controls("hand")
    by_hand.own_button().click()
    by_hand.stars().watch_button().click()
    before = heard(session)
    controls = _practise(page, qtbot)
    qtbot.waitUntil(lambda: len(heard(shown).legs[0].utc_s) > 2)
    assert "practice" in heard(shown).legs[0].label
    assert "nothing here is kept" in page.practice_band().said()
    controls.bolts().button("raise").click()
    page.work().goal().targets().button("5").click()
    controls.again.emit()
    assert heard(shown).legs == ()
    page.practice_band().back_button().click()
    after = heard(session)
    assert not page.practice_band().isVisible()
    assert [leg.label for leg in after.legs] == [leg.label for leg in before.legs]
    assert (after.site, after.target_arcmin) == (before.site, before.target_arcmin)
    assert (after.axis_state, after.watching) == (before.axis_state, before.watching)
    assert page.ways().panel.controls("practice") is None


@pytest.mark.parametrize(("way", "leads"), [("hand", True), ("log", False)])
def test_leaving_practice_by_another_way_shows_that_way(page, session, way, leads) -> None:
    session.set_site(HILL, AIR)
    page.take_way("practice")
    _choose(page, way)
    assert not page.practice_band().isVisible()
    assert not page.ways_in().isVisible()
    assert page.ways().panel.controls(way).isVisible()
    assert page.leading().band.isVisible() is leads


def test_the_guide_is_there_again_when_practice_is_left_in_the_middle_of_a_leg(
    page, session
) -> None:
    session.set_site(HILL, AIR)
    page.take_way("hand")
    controls = page.ways().panel.controls("hand")
    controls.own_button().click()
    controls.stars().watch_button().click()
    _choose(page, "practice")
    _choose(page, "hand")
    assert page.leading().band.isVisible()
    assert heard(session).watching is not None


def test_the_guide_goes_when_a_log_is_looked_at_instead(page, session) -> None:
    session.set_site(HILL, AIR)
    page.take_way("hand")
    assert page.leading().band.isVisible()
    _choose(page, "log")
    assert not page.leading().band.isVisible()
    _choose(page, "hand")
    assert page.leading().band.isVisible()


def test_what_is_watched_by_hand_goes_on_after_practice(page, session) -> None:
    session.set_site(HILL, AIR)
    page.take_way("hand")
    controls = page.ways().panel.controls("hand")
    controls.own_button().click()
    controls.stars().watch_button().click()
    page.take_way("practice")
    page.practice_band().back_button().click()
    controls.pad().offset().show_text("3")
    controls.pad().press()
    (leg,) = heard(session).legs
    assert leg.north_arcsec.tolist() == [3.0]


def test_practice_without_a_site_gives_the_real_night_none(page, session) -> None:
    page.take_way("practice")
    assert heard(session).site is None
    page.practice_band().back_button().click()
    assert page.ways_in().site_button().isVisible()


def _choose(page: DriftPage, way: str) -> None:
    """By the keys of the panel, as a person does."""
    page.ways().panel.choice().button(way).click()
