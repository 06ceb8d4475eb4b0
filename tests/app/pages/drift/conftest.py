"""The Drift page with a real session behind it."""

import itertools
from collections.abc import Iterator

import pytest

from app.night.activenight import ActiveNight
from app.night.session import Session
from app.pages.drift.page import DriftPage
from app.pagetable import drift_parts
from app.workers.sound import Sounds
from tests.app.pages.drift.surroundings import NOW_S, seen_by


@pytest.fixture
def session() -> Iterator[Session]:
    made = Session()
    yield made
    made.close()


@pytest.fixture
def shown(session: Session) -> ActiveNight:
    return ActiveNight(session)


@pytest.fixture
def page(qtbot, theme, settings, shown: ActiveNight) -> Iterator[DriftPage]:
    seconds = itertools.count()
    made = DriftPage(
        shown,
        theme,
        drift_parts(
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
