"""The Drift page with a real session behind it."""

import itertools
from collections.abc import Iterator

import pytest

from app.driftparts import drift_parts
from app.pages.drift.page import DriftPage
from app.session.session import Session
from app.session.shown import Shown
from app.signals.sounds import Sounds
from tests.app.pages.drift.surroundings import NOW_S, seen_by


@pytest.fixture
def session() -> Iterator[Session]:
    made = Session()
    yield made
    made.close()


@pytest.fixture
def shown(session: Session) -> Shown:
    return Shown(session)


@pytest.fixture
def page(qtbot, theme, settings, session: Session, shown: Shown) -> Iterator[DriftPage]:
    seconds = itertools.count()
    made = DriftPage(
        shown,
        theme,
        drift_parts(
            session,
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
