"""A Log page over a real log of nights on disk."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from app.night.archive import NightFiles
from app.night.notes import NightBook
from app.pages.log.page import LogPage
from app.pages.log.parts import LogParts
from app.store.nights import NightLog
from core.alignment.priors import USUAL
from core.night.words import when
from core.sky.clocks import find
from tests.core.night.recorded import BEGUN, whole_night

LATER_S = BEGUN + 40 * 86400.0


@pytest.fixture
def log(tmp_path: Path) -> Iterator[NightLog]:
    """With one whole invented night in it, and tonight with nothing."""
    made = NightLog.open(
        tmp_path / "nights.sqlite", lambda: LATER_S, lambda _: None, lambda _: None, retry_s=0.05
    )
    made.night = made.resume_or_begin_night(LATER_S)
    made.archive.take_in_record(whole_night())
    yield made
    made.close()


@pytest.fixture
def make_page(qtbot, theme, log: NightLog) -> Iterator[Callable[[], LogPage]]:
    made: list[LogPage] = []

    def make() -> LogPage:
        book = NightBook(log, (), lambda: LATER_S)
        files = NightFiles(log.archive, when)
        parts = LogParts(files, log, book, log.night.night_id, lambda: find("UTC"), lambda: USUAL)
        page = LogPage(theme, parts)
        page.kept_alive = (book, theme)
        page.book = book
        qtbot.addWidget(page)
        page.resize(1100, 740)
        with qtbot.waitSignal(page.listed, timeout=10_000):
            page.show()
        made.append(page)
        return page

    yield make
    for page in made:
        page.stop()


@pytest.fixture
def page(make_page) -> LogPage:
    return make_page()


@pytest.fixture
def opened(page: LogPage, qtbot) -> LogPage:
    """With the invented night open."""
    with qtbot.waitSignal(page.shown, timeout=10_000):
        page.list().list().choose(0)
    return page


def done(qtbot, page: LogPage, do) -> str:
    with qtbot.waitSignal(page.done, timeout=20_000) as got:
        do()
    return got.args[0]
