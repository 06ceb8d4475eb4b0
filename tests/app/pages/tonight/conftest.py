"""A Tonight page over a log in memory and a session that only remembers."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from types import SimpleNamespace
from typing import Any

import pytest

from app.night.notes import FlipBook, NightBook
from app.night.places import Places
from app.night.plan import Evening, Plans
from app.pages.tonight.page import Books, TonightPage
from core.alignment.goal import Aim
from core.night.checklist import KnownFact
from core.night.record import Entry
from core.sky.site import Air, Site
from tests.app.night.heard import FollowedFake
from tests.app.night.memory import Memory

NOW_S = 1_790_000_000.0  # 2026-09-21T14:13:20Z, by `date -u -d @1790000000`
NORTH, SOUTH = Site(47.0, -20.0, 300.0, "Heron Rock"), Site(-33.0, -20.0, 300.0, "Kelp Bank")


class FakeSession(FollowedFake):
    def __init__(self, site: Site | None) -> None:
        super().__init__()
        self.now = SimpleNamespace(
            site=site,
            air=Air(980.0, 5.0) if site else None,
            solution=None,
            solution_is_stale=False,
            aim=Aim.TRUE_POLE,
            axis_state=1,
            target_arcmin=1.0,
            guide=SimpleNamespace(off_arcmin=None, judgement=None),
        )


class BookMemory(Memory):
    """Entries as well as settings."""

    def __init__(self) -> None:
        super().__init__()
        self.entries: list[Entry] = []

    def put_entry(
        self, kind: str, content: Any, attachment: bytes | None = None, entry_id: int | None = None
    ) -> int:
        key = len(self.entries) + 1 if entry_id is None else entry_id
        self.entries = [one for one in self.entries if one.key != key]
        self.entries.append(Entry(key, str(kind), NOW_S + key, dict(content), attachment))
        return key

    def kinds_of_entries(self) -> frozenset[str]:
        return frozenset(one.kind for one in self.entries)


@pytest.fixture
def memory() -> BookMemory:
    return BookMemory()


@pytest.fixture
def make_page(qtbot, theme, memory: BookMemory) -> Iterator[Callable[..., TonightPage]]:
    made: list[TonightPage] = []

    def make(site: Site | None = NORTH, facts: frozenset[KnownFact] = frozenset()) -> TonightPage:
        session: Any = FakeSession(site)
        evening = Evening(session, Places(memory), Plans(memory), lambda: NOW_S, "UTC")
        book = NightBook(memory, memory.entries, lambda: NOW_S)
        titles = {"site": "Site", "drift": "Drift", "equipment": "Mount", "plan": "Night plan"}
        flips = FlipBook(memory, memory.entries, lambda: NOW_S)
        page = TonightPage(evening, theme, Books(book, flips), session, lambda: facts, titles)
        page.kept_alive = (session, evening, theme)
        page.book = book
        page.flips = flips
        page.evening = evening
        page.session = session
        qtbot.addWidget(page)
        page.resize(1100, 740)
        made.append(page)
        if site is None:
            page.show()
        else:
            page.show()
            qtbot.waitUntil(page.is_up_to_date, timeout=20_000)
        return page

    yield make
    for page in made:
        page.stop()
