"""A Pole page over a session that only remembers."""

from collections.abc import Callable
from types import SimpleNamespace
from typing import Any

import pytest

from app.pages.pole.page import PolePage
from app.pages.pole.parts import PoleParts
from core.alignment.goal import Aim
from core.practice.simulation import MEADOW_AIR, NORTHERN_MEADOW
from core.sky.horizon import Horizon
from core.sky.site import Air, Site
from tests.app.night.heard import FollowedFake

NIGHT_S = 1_795_484_000.0  # 2026-11-24T01:33:20Z, by `date -u -d @1795484000`
AIR = Air(1000.0, 5.0)
NORTH, SOUTH = Site(47.0, -20.0, 300.0, "Heron Rock"), Site(-33.0, -20.0, 300.0, "Kelp Bank")


class FakeSession(FollowedFake):
    """Keeps site, air and aim, and tells when they change."""

    def __init__(self, site: Site | None) -> None:
        super().__init__()
        self.now = SimpleNamespace(site=site, air=AIR if site else None, aim=Aim.TRUE_POLE)

    def set_site(self, site: Site) -> None:
        self._change(site=site, air=AIR)

    def set_aim(self, aim: Aim) -> None:
        self._change(aim=aim)

    def _change(self, **changes: object) -> None:
        self.now = SimpleNamespace(**{**vars(self.now), **changes})
        self.changed.emit(self.now)


class Outside:
    """Time, horizon and memory, to be set by a test."""

    def __init__(self) -> None:
        self.utc_s = NIGHT_S
        self.horizon = Horizon.flat()
        self.kept: dict[str, Any] = {}

    def get_setting(self, key: str, default: Any = None) -> Any:
        return self.kept.get(key, default)

    def put_setting(self, key: str, value: Any) -> None:
        self.kept[key] = value

    def parts(self) -> PoleParts:
        meadow = (NORTHERN_MEADOW, MEADOW_AIR)
        return PoleParts(lambda: self.utc_s, lambda _site: self.horizon, self, meadow)


@pytest.fixture
def outside() -> Outside:
    return Outside()


@pytest.fixture
def make_page(qtbot, theme, outside) -> Callable[[Site | None], PolePage]:
    made: list[PolePage] = []

    def make(site: Site | None) -> PolePage:
        session = FakeSession(site)
        page = PolePage(session, theme, outside.parts())
        page.session, page.theme = session, theme  # kept alive as long as the page
        qtbot.addWidget(page)
        page.resize(1100, 740)
        page.show()
        made.append(page)
        return page

    yield make
    for page in made:
        page.stop()


@pytest.fixture
def page(make_page) -> PolePage:
    return make_page(NORTH)
