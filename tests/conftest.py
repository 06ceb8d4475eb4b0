"""A test that leaves a thread or an unexpected log line behind fails."""

from __future__ import annotations

import gc
import itertools
import logging
import os
import threading
import time
from collections.abc import Iterator

import pytest

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

FULL_COLLECTION_EVERY = 50  # tests; one takes a tenth of a second
_TESTS = itertools.count()
GRACE_S = 2.0  # a thread told to stop may still be on its way out


class _Gatherer(logging.Handler):
    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.lines: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        self.lines.append(f"{record.name}: {record.getMessage()}")


@pytest.fixture(scope="session", autouse=True)
def garbage_by_hand() -> Iterator[None]:
    """As in the program: a collection that strikes in a worker may destroy a window's widgets."""
    gc.disable()
    yield
    gc.enable()


@pytest.fixture(autouse=True)
def garbage_collected_here() -> Iterator[None]:
    yield
    gc.collect(2 if next(_TESTS) % FULL_COLLECTION_EVERY == 0 else 1)


@pytest.fixture(autouse=True)
def no_log_line_left(request: pytest.FixtureRequest) -> Iterator[None]:
    """Warnings and errors in the log fail the test, unless it asks for `caplog` to look itself."""
    gatherer = _Gatherer()
    logging.getLogger().addHandler(gatherer)
    yield
    logging.getLogger().removeHandler(gatherer)
    if "caplog" not in request.fixturenames:
        assert not gatherer.lines, f"left in the log: {gatherer.lines}"


@pytest.fixture(autouse=True)
def no_thread_left() -> Iterator[None]:
    before = set(threading.enumerate())
    yield
    deadline = time.monotonic() + GRACE_S
    left = _left(before)
    while left and time.monotonic() < deadline:
        left[0].join(0.05)
        left = _left(before)
    assert not left, f"threads left running: {left}"


def _left(before: set[threading.Thread]) -> list[threading.Thread]:
    """Threads Qt made show up as dummies for ever and are watched in the tests of the screen."""
    return [
        thread
        for thread in set(threading.enumerate()) - before
        if not isinstance(thread, threading._DummyThread)
    ]
