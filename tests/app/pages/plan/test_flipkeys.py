"""Saying on the Night plan page that the mount has flipped, kept with the night."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.night.notes import FlipBook
from app.pages.plan.page import FLIP, PlanPage
from tests.app.pages import reach
from tests.app.pages.eveningpages import ANDROMEDA, HILL, evening
from tests.app.pages.tonight.conftest import BookMemory

NOW_S = 1_790_041_000.0


@pytest.fixture
def log() -> BookMemory:
    return BookMemory()


@pytest.fixture
def page(qtbot, theme, log: BookMemory) -> Iterator[PlanPage]:
    book = FlipBook(log, (), lambda: NOW_S)
    made = PlanPage(evening(HILL, ANDROMEDA), theme, flips=book)
    made.kept_alive = book
    made.resize(1150, 740)
    qtbot.addWidget(made)
    with qtbot.waitSignal(made.worked_out, timeout=20_000):
        made.show()
    yield made
    made.stop()


def kept(log: BookMemory) -> list[dict]:
    return [dict(one.content) for one in log.entries]


def test_looking_at_the_flip_is_seen(page: PlanPage, log: BookMemory) -> None:
    assert kept(log) == []
    page.sections().show_section(FLIP)
    assert kept(log) == [{"target": ANDROMEDA.name, "flips": []}]


def test_flipped_and_centred_by_key_and_taken_back(page: PlanPage, log: BookMemory) -> None:
    page.sections().show_section(FLIP)
    keys = page.sections().section(FLIP).keys
    assert not keys.centred_button().isVisible()
    QTest.keyClick(keys.flipped_button(), Qt.Key.Key_Space)
    assert "Now centre the target" in keys.said()
    assert not keys.flipped_button().isVisible()
    QTest.keyClick(keys.centred_button(), Qt.Key.Key_Space)
    assert "centred and focused again at" in keys.said()
    assert not keys.centred_button().isVisible()
    assert not keys.flipped_button().isVisible()  # one flip is planned, one is done
    (content,) = kept(log)
    assert content["flips"] == [{"flipped_utc_s": NOW_S, "centred_utc_s": NOW_S}]
    again = FlipBook(log, log.entries, lambda: NOW_S + 9.0)
    assert again.flips(ANDROMEDA.name) == page.kept_alive.flips(ANDROMEDA.name)
    QTest.keyClick(keys.back_button(), Qt.Key.Key_Space)
    assert kept(log)[0]["flips"] == [{"flipped_utc_s": NOW_S, "centred_utc_s": None}]
    QTest.keyClick(keys.back_button(), Qt.Key.Key_Space)
    assert kept(log)[0]["flips"] == []
    assert keys.flipped_button().isVisible()
    assert not keys.back_button().isVisible()


def test_the_keys_are_large_and_whole(page: PlanPage, theme) -> None:
    page.sections().show_section(FLIP)
    keys = page.sections().section(FLIP).keys
    keys.flipped_button().click()
    theme.enlarge(2.0)
    assert reach.nameless(keys) == []
    assert reach.small(keys) == []
    assert reach.clipped(keys) == []


@pytest.mark.parametrize("given", [None, "x", [1, {"flipped_utc_s": "x"}, {}]])
def test_entries_nobody_wrote_are_left_out(log: BookMemory, given) -> None:
    log.put_entry("flip", {"target": "M 1", "flips": given})
    assert FlipBook(log, log.entries, lambda: NOW_S).flips("M 1") == ()
