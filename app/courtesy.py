"""Threads that compute let the thread of the window pass first.

Python runs one thread at a time. While a worker computes, the window waits for it at each call into
Qt, so that an update of 15 ms can take 60. A worker that looks up now and then avoids that.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from threading import Event

LONGEST_WAIT_S = 0.05  # then it is the worker's turn, however busy the window
_window_is_free = Event()
_window_is_free.set()


@contextmanager
def window_works() -> Iterator[None]:
    """For the window's thread: what is done inside should not be held up."""
    was_free = _window_is_free.is_set()
    _window_is_free.clear()
    try:
        yield
    finally:
        if was_free:
            _window_is_free.set()


def let_the_window_pass() -> None:
    """For a worker, every few milliseconds; returns at once when the window is free."""
    _window_is_free.wait(LONGEST_WAIT_S)
