"""The Tonight page: what is next, what ticks itself, what is skipped, own steps, cautions."""

from __future__ import annotations

from types import SimpleNamespace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel

from app.pages.tonight import page as page_module
from app.pages.tonight.page import TonightPage
from app.ui.style import SCALES
from core.night.checklist import KnownFact, NightPart, State, StepMark
from core.night.progress import AxisNow
from core.night.record import Kind
from tests.app.pages import reach
from tests.app.pages.tonight.conftest import NORTH, NOW_S, SOUTH, BookMemory


def answered(qtbot, page: TonightPage, do) -> None:
    do()
    qtbot.waitUntil(page.is_up_to_date, timeout=20_000)


def words(page: TonightPage) -> str:
    return " ".join(label.text() for label in page.findChildren(QLabel) if label.isVisibleTo(page))


def test_without_a_place_it_says_what_it_is_for(make_page, qtbot) -> None:
    page = make_page(None)
    with qtbot.waitSignal(page.site_wanted):
        QTest.keyClick(page.site_button(), Qt.Key.Key_Space)
    assert "coming home" in words(page)
    assert not page.steps().isVisible()


def test_the_next_step_and_the_dark_are_told(make_page) -> None:
    page = make_page()
    assert page.next_band().what().startswith("Look at the forecast")
    dark, axis = page.facts().told()
    # Equinox at 47° N, 20° W: the Sun sets at about 19:10 UTC and is 18° down near 21:00; the
    # sunset is 6 h local time + the equation of time of 7 min (from memory), the rest the slope.
    hours = int(dark.split(" h")[0])
    assert 6 <= hours <= 7
    assert axis.startswith("– The axis error has not been measured")


def test_a_step_is_ticked_by_key_and_kept(make_page, memory: BookMemory, qtbot) -> None:
    page = make_page()
    tick = page.steps().row("forecast").tick()
    answered(qtbot, page, lambda: QTest.keyClick(tick, Qt.Key.Key_Space))
    assert page.next_band().what() == "Choose tonight's equipment."
    (entry,) = [one for one in memory.entries if one.content.get("step") == "forecast"]
    assert entry.kind == Kind.TICK
    assert entry.content["state"] == State.DONE.value
    again = make_page()
    assert again.next_band().what() == "Choose tonight's equipment."


def test_what_the_program_saw_ticks_itself(make_page, memory: BookMemory) -> None:
    page = make_page(facts=frozenset({KnownFact.EQUIPMENT_CHOSEN}))
    row = page.steps().row("set")
    assert row.tick().isChecked()
    assert "The program saw it done" in row.said()
    page.steps().show_part(NightPart.DAYLIGHT)
    assert page.steps().row("site").tick().isChecked()
    assert not page.steps().row("clock").tick().isChecked()
    seen = [one.content["step"] for one in memory.entries if one.content.get("state") != "open"]
    assert sorted(seen) == ["set", "site"]


def test_a_clock_called_right_ticks_its_step(make_page, qtbot) -> None:
    page = make_page()
    answered(qtbot, page, page.book.confirm_clock)
    page.steps().show_part(NightPart.DAYLIGHT)
    assert page.steps().row("clock").tick().isChecked()


@pytest.mark.parametrize(
    ("error", "half_width", "said", "is_ticked"),
    [
        (0.5, 0.3, "good enough", True),
        (0.9, 0.3, "watch longer", False),
        (3.0, 0.3, "turn the bolts", False),
    ],
)
def test_the_alignment_stands_against_the_target(
    make_page, monkeypatch, error, half_width, said, is_ticked
) -> None:
    known = AxisNow(error, half_width, 1.0)
    monkeypatch.setattr(page_module, "axis_now", lambda *_: known)
    page = make_page()
    assert f"{error:.1f}′ ± {half_width:.1f}′ {said}" in page.facts().told()[1]
    page.steps().show_part(NightPart.DARK)
    assert page.steps().row("drift").tick().isChecked() is is_ticked


def test_nothing_is_claimed_while_a_new_solution_is_worked_out() -> None:
    guide = SimpleNamespace(
        off_arcmin=(0.5, 0.2), judgement=SimpleNamespace(chance_within_target=0.99)
    )
    stale = SimpleNamespace(guide=guide, solution_is_stale=True, target_arcmin=2.0)
    assert page_module.axis_now(stale, True) == AxisNow(None, None, 2.0)
    fresh = SimpleNamespace(guide=guide, solution_is_stale=False, target_arcmin=2.0)
    assert page_module.axis_now(fresh, True) == AxisNow(0.5, 0.2, 2.0, True, 0.99)


def test_a_step_is_skipped_with_a_reason_and_its_caution_stays(make_page, qtbot) -> None:
    page = make_page()
    page.steps().show_part(NightPart.DAYLIGHT)
    qtbot.waitUntil(page.steps().is_whole)
    row = page.steps().row("tube")
    before = [label.text() for label in row.findChildren(QLabel) if "⚠" in label.text()]
    assert len(before) == 2
    QTest.keyClick(row.skip_button(), Qt.Key.Key_Space)
    asked = row.skipping()
    QTest.keyClick(asked.sure_button(), Qt.Key.Key_Space)
    assert asked.reason().is_wrong()
    asked.reason().line().setText("it is on already")
    answered(qtbot, page, lambda: QTest.keyClick(asked.reason().line(), Qt.Key.Key_Return))
    assert row.said() == "Skipped: it is on already"
    assert [
        label.text()
        for label in row.findChildren(QLabel)
        if "⚠" in label.text() and label.isVisibleTo(page)
    ] == before


def test_cautions_cannot_be_hidden(make_page, qtbot) -> None:
    page = make_page()
    assert "Never look at the Sun" in page.care().text()
    for part in NightPart:
        page.steps().show_part(part)
        qtbot.waitUntil(page.steps().is_whole)
        for row in page.steps().rows():
            shown = [label.text() for label in row.findChildren(QLabel) if label.isVisibleTo(page)]
            for caution in row.step().cautions:
                assert f"⚠ {caution.text}" in shown, row.step().key


def test_own_steps_are_added_moved_kept_and_removed(make_page, memory: BookMemory, qtbot) -> None:
    page = make_page()
    page.steps().show_part(NightPart.BEFORE_LEAVING)
    line = page.steps().own_field().line()
    QTest.keyClicks(line, "Pack the stool")
    answered(qtbot, page, lambda: QTest.keyClick(line, Qt.Key.Key_Return))
    keys = [row.step().key for row in page.steps().rows()]
    assert keys[-1] == "own 1"
    answered(qtbot, page, lambda: page.steps().row("own 1").moved.emit(-1))
    moved = [row.step().key for row in page.steps().rows()]
    assert moved == [*keys[:-2], "own 1", keys[-2]]
    answered(qtbot, page, lambda: page.steps().row("own 1").kept.emit(True))
    memory.entries.clear()  # another night
    later = make_page()
    assert "Pack the stool" in [row.step().text for row in later.steps().rows()]
    answered(qtbot, later, lambda: later.steps().row("own 1").removed.emit())
    assert "own 1" not in [row.step().key for row in later.steps().rows()]


def test_tab_goes_through_the_rows_as_they_stand(make_page, qtbot) -> None:
    page = make_page()
    with qtbot.waitActive(page):
        page.activateWindow()
    page.steps().show_part(NightPart.DAYLIGHT)
    page.steps().show_part(NightPart.BEFORE_LEAVING)
    qtbot.waitUntil(page.steps().is_whole)
    page.steps().parts().button(NightPart.BEFORE_LEAVING.name).setFocus()
    passed = []
    for _ in range(60):
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        passed.append(QApplication.focusWidget())
    stops = [stop for row in page.steps().rows() for stop in row.stops() if stop.isEnabled()]
    stops = [stop for stop in stops if stop.isVisible()]
    assert len(stops) > 15
    assert passed[: len(stops)] == stops
    assert passed[len(stops)] is page.steps().own_field().line()


def test_an_empty_own_step_is_refused_in_words(make_page) -> None:
    page = make_page()
    page.steps().add_button().click()
    assert "no text" in page.steps().own_field().below()


def test_only_what_applies_stands(make_page, qtbot) -> None:
    page = make_page(SOUTH)
    page.steps().show_part(NightPart.DARK)
    keys = [row.step().key for row in page.steps().rows()]
    assert "pole-south" in keys
    assert "pole-north" not in keys
    answered(qtbot, page, page.form().choice("mount_kind").button("DOBSONIAN").click)
    page.steps().show_part(NightPart.DARK)
    keys = [row.step().key for row in page.steps().rows()]
    assert not {"drift", "pole-south", "guiding"} & set(keys)
    assert "no polar axis" in page.facts().told()[1]


def test_the_target_s_beginning_moves_the_times(make_page, qtbot) -> None:
    page = make_page()
    page.steps().show_part(NightPart.DARK)
    begin = page.form().begin_field()
    begin.line().setText("half past")
    begin.submitted.emit()
    assert begin.is_wrong()
    begin.line().setText("23:45")
    answered(qtbot, page, begin.submitted.emit)
    assert page.steps().row("begin").accessibleDescription().startswith("23:45")


def test_weather_is_noted_and_wrong_figures_are_refused(make_page, memory: BookMemory) -> None:
    page = make_page()
    form = page.weather()
    form.line("humidity_percent").line().setText("140")
    form.submit()
    assert form.line("humidity_percent").is_wrong()
    assert not memory.entries or memory.entries[-1].kind != Kind.WEATHER
    form.line("humidity_percent").line().setText("84")
    form.line("temperature_c").line().setText("-3.5")
    form.submit()
    noted = [one.content for one in memory.entries if one.kind == Kind.WEATHER]
    assert noted == [{"humidity_percent": 84.0, "temperature_c": -3.5}]
    assert form.answer() == "Noted last: -3.5 °C, 84 %."


def test_a_page_is_wanted_by_the_name_the_step_has_for_it(make_page, qtbot) -> None:
    page = make_page()
    page.book.mark(StepMark("forecast", State.DONE, NOW_S))
    qtbot.waitUntil(lambda: page.next_band().open_button().isVisible())
    with qtbot.waitSignal(page.page_wanted) as got:
        QTest.keyClick(page.next_band().open_button(), Qt.Key.Key_Space)
    assert got.args == ["equipment"]


@pytest.mark.parametrize("scale", SCALES)
@pytest.mark.parametrize("place", ["none", "north", "south"])
def test_everything_is_named_large_enough_and_whole(make_page, theme, scale, place, qtbot) -> None:
    theme.enlarge(scale)
    page = make_page({"none": None, "north": NORTH, "south": SOUTH}[place])
    if place != "none":
        page.steps().show_part(NightPart.DAYLIGHT)
        page.steps().row("level").skip_button().click()
        qtbot.waitUntil(page.steps().is_whole)
    for _ in range(8):
        QApplication.processEvents()
    assert reach.nameless(page) == []
    assert reach.small(page) == []
    assert reach.clipped(page) == []
