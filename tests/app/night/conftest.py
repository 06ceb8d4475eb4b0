"""Sessions that are closed when their test ends."""

from collections.abc import Callable, Iterator

import pytest

from app.night.question import AxisAnswer, AxisQuestion
from app.night.session import Session

from .scripted import ScriptedLog, counting_answer

Begin = Callable[..., Session]


@pytest.fixture
def begin() -> Iterator[Begin]:
    """Make a session; by default its computation counts readings and nothing is kept."""
    begun: list[Session] = []

    def make(
        compute: Callable[[AxisQuestion], AxisAnswer] = counting_answer,
        log: ScriptedLog | None = None,
    ) -> Session:
        begun.append(Session(compute, log))
        return begun[-1]

    yield make
    for session in begun:
        session.close()
