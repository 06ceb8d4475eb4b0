"""A Mount page over settings in memory and a session that only remembers."""

from collections.abc import Callable
from types import SimpleNamespace

import pytest

from app.night.budget import Budget
from app.night.equipment import Equipment
from app.night.session import Session
from app.pages.mount.page import MountPage
from core.mount.examples import INVENTED_INVENTORY
from core.sky.site import Air, Site
from tests.app.night.heard import FollowedFake
from tests.app.night.memory import Memory

ROCK, AIR = Site(47.0, -20.0, 300.0, "Heron Rock"), Air(980.0, 5.0)


class FakeSession(FollowedFake):
    """Knows a place, or none."""

    def __init__(self, site: Site | None) -> None:
        super().__init__()
        self.now = SimpleNamespace(site=site, air=AIR if site else None, solution=None)


@pytest.fixture
def memory() -> Memory:
    return Memory()


@pytest.fixture
def equipment(memory: Memory) -> Equipment:
    made = Equipment(memory)
    made.memory = memory
    return made


@pytest.fixture
def filled(equipment: Equipment) -> Equipment:
    """The invented set."""
    equipment.take(INVENTED_INVENTORY)
    return equipment


@pytest.fixture
def make_page(qtbot, theme, equipment: Equipment) -> Callable[..., MountPage]:
    made: list[MountPage] = []

    def make(site: Site | None = ROCK) -> MountPage:
        session: Session = FakeSession(site)
        budget = Budget(equipment.memory, equipment)
        page = MountPage(session, theme, equipment, budget)
        page.kept_alive = (session, budget, theme)
        page.budget = budget
        qtbot.addWidget(page)
        page.resize(1100, 740)
        page.show()
        made.append(page)
        return page

    yield make
    for page in made:
        page.stop()
