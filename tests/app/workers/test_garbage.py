"""Garbage is collected in the thread of the window, and nowhere else."""

import gc
import threading

import pytest

from app.workers.garbage import LOOKS_LEFT_OUT, WindowGarbage


class Loop:
    """Garbage that only a collection frees, and that tells where it was freed."""

    freed_in: list[int] = []  # noqa: RUF012  shared on purpose

    def __init__(self) -> None:
        self.itself = self

    def __del__(self) -> None:
        self.freed_in.append(threading.get_ident())


@pytest.mark.usefixtures("qapp")
def test_a_worker_never_collects():
    Loop.freed_in.clear()
    garbage = WindowGarbage()
    garbage.start()
    gc.freeze()
    Loop()
    worker = threading.Thread(target=lambda: [[] for _ in range(100_000)])
    worker.start()
    worker.join()
    assert not Loop.freed_in
    kept = [[] for _ in range(5_000)]
    garbage.look()
    garbage.stop()
    gc.unfreeze()
    gc.disable()  # as the tests have it
    assert kept
    assert Loop.freed_in == [threading.get_ident()]


@pytest.fixture
def collected(monkeypatch: pytest.MonkeyPatch) -> list[int]:
    """The generations collected, one entry each time; every generation is due."""
    found: list[int] = []
    monkeypatch.setattr(gc, "get_count", lambda: (5000, 50, 50))
    monkeypatch.setattr(gc, "get_threshold", lambda: (700, 10, 10))
    monkeypatch.setattr(gc, "collect", found.append)
    return found


def test_the_oldest_that_is_due_is_collected(collected, monkeypatch, qapp):
    monkeypatch.setattr(gc, "get_freeze_count", lambda: 1000)
    garbage = WindowGarbage(qapp)
    garbage.look()
    monkeypatch.setattr(gc, "get_count", lambda: (5000, 5, 50))
    monkeypatch.setattr(gc, "get_threshold", lambda: (700, 10, 0))  # the oldest never, from 3.14 on
    garbage.look()
    monkeypatch.setattr(gc, "get_count", lambda: (5, 5, 5))
    garbage.look()
    assert collected == [2, 0]


def test_nothing_is_collected_while_the_program_loads_but_that_may_not_go_on(
    collected, monkeypatch, qapp
):
    monkeypatch.setattr(gc, "get_freeze_count", lambda: 0)
    garbage = WindowGarbage(qapp)
    for _ in range(LOOKS_LEFT_OUT):
        garbage.look()
    assert collected == []
    garbage.look()
    assert collected == [2]


def test_what_is_set_aside_is_counted_once(collected, monkeypatch, qapp):
    counted: list[int] = []
    monkeypatch.setattr(gc, "get_freeze_count", lambda: counted.append(1) or 1000)
    garbage = WindowGarbage(qapp)
    for _ in range(5):
        garbage.look()
    assert counted == [1]
    assert len(collected) == 5
