"""The list of nights: the newest are read first, and whoever looks at it keeps place and choice."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from contextlib import closing

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.pages.log.nightlist import SEEN_AT_ONCE
from app.pages.log.page import LogPage
from app.store.nights import NightLog
from core.night.record import Entry, Kind, NightRecord
from tests.app.pages.log.conftest import LATER_S

DAY_S = 86400.0
MANY = 3 * SEEN_AT_ONCE


def add_nights(log: NightLog, count: int, first: int = 1) -> None:
    for number in range(first, first + count):
        began_s = LATER_S - (number + 1) * DAY_S
        note = Entry(5000 + number, Kind.NOTE, began_s, {"text": f"dew of night {number}"}, None)
        log.archive.take_in_record(
            NightRecord(1000 + number, began_s, began_s, None, None, None, None, (), (note,))
        )


def test_the_newest_nights_are_there_before_all_are_read(
    make_page: Callable[[], LogPage], log: NightLog, qtbot
) -> None:
    page = make_page()
    add_nights(log, MANY)
    counts: list[int] = []
    for signal in (page.newest, page.listed):
        signal.connect(lambda: counts.append(page.list().list().count()))
    with qtbot.waitSignal(page.listed, timeout=10_000):
        page.refresh()
    assert counts[-1] == MANY + 1  # and the one of the page's own
    assert SEEN_AT_ONCE - 1 <= counts[0] < MANY
    assert page.list().said() == f"{MANY + 1} nights."


def test_all_nights_are_read_again_only_after_something_was_written(
    make_page: Callable[[], LogPage], log: NightLog, qtbot, monkeypatch, tmp_path
) -> None:
    add_nights(log, MANY)
    page = make_page()
    reads: list[int] = []
    archive = page.files().archive
    overview = archive.overview
    monkeypatch.setattr(archive, "overview", lambda *most: (reads.append(1), overview(*most))[1])
    with qtbot.waitSignal(page.listed, timeout=10_000):
        page.refresh()
    assert reads == []
    assert page.list().list().count() == MANY + 1
    log.put_entry(Kind.NOTE, {"text": "wind"}, night_id=1001)
    with qtbot.waitSignal(page.listed, timeout=10_000):
        page.refresh()
    assert reads == [1, 1]  # the newest, then all
    with closing(sqlite3.connect(tmp_path / "nights.sqlite")) as other:  # as another program does
        other.execute("UPDATE nights SET active_utc_s = active_utc_s + 1 WHERE id = 1001")
        other.commit()
    with qtbot.waitSignal(page.listed, timeout=10_000):
        page.refresh()
    assert reads == [1, 1, 1, 1]


def test_an_arrow_key_opens_the_only_night_of_a_list_read_before_one_came(
    page: LogPage, qtbot
) -> None:
    view = page.list().list()
    assert view.count() == 1
    page.list().search_field().line().setFocus()
    view.setFocus()
    qtbot.waitUntil(view.hasFocus)
    with qtbot.waitSignal(page.shown, timeout=10_000):
        QTest.keyClick(view, Qt.Key.Key_Down)


def test_looking_far_down_one_keeps_place_and_choice(
    make_page: Callable[[], LogPage], log: NightLog, qtbot
) -> None:
    add_nights(log, MANY)
    page = make_page()
    view = page.list().list()
    bar = view.verticalScrollBar()
    qtbot.waitUntil(lambda: bar.maximum() > MANY // 2, timeout=10_000)  # all is laid out
    with qtbot.waitSignal(page.shown, timeout=10_000):
        view.choose(MANY - 10)
    before, text = bar.value(), view.currentIndex().data()
    assert before > 0
    log.put_entry(Kind.NOTE, {"text": "wind"}, night_id=1001)
    with qtbot.waitSignal(page.listed, timeout=10_000):
        page.refresh()
    view.doItemsLayout()
    assert view.count() == MANY + 1
    assert bar.value() == before
    assert view.currentIndex().data() == text
    assert view.selectedIndexes() == [view.currentIndex()]


def test_a_night_that_is_not_found_leaves_no_other_marked(
    make_page: Callable[[], LogPage], log: NightLog, qtbot
) -> None:
    add_nights(log, 3)
    page = make_page()
    view = page.list().list()
    with qtbot.waitSignal(page.shown, timeout=10_000):
        view.choose(0)
    opened = view.currentIndex().data()
    with qtbot.waitSignal(page.found, timeout=10_000):
        page.list().searched.emit("dew of night 3")
    assert view.count() == 1
    assert view.selectedIndexes() == []
    with qtbot.waitSignal(page.listed, timeout=10_000):
        page.list().searched.emit("")
        page.refresh()
    assert view.currentIndex().data() == opened
