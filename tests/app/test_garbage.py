"""Garbage is collected in the thread of the window, and nowhere else."""

import gc
import threading

import pytest

from app.garbage import WindowGarbage


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
    Loop()
    worker = threading.Thread(target=lambda: [[] for _ in range(100_000)])
    worker.start()
    worker.join()
    assert not Loop.freed_in
    kept = [[] for _ in range(5_000)]
    garbage.look()
    garbage.stop()
    gc.disable()  # as the tests have it
    assert kept
    assert Loop.freed_in == [threading.get_ident()]
