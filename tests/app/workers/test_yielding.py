"""A worker waits while the window works, and no longer."""

import threading

import pytest

from app.workers import yielding
from app.workers.yielding import let_the_window_pass, window_works

GIVEN_UP_S = 20.0


def _worker() -> threading.Thread:
    thread = threading.Thread(target=let_the_window_pass)
    thread.start()
    return thread


@pytest.fixture(autouse=True)
def _patient(monkeypatch):
    """So that only the end of the window's work lets a worker go on."""
    monkeypatch.setattr(yielding, "LONGEST_WAIT_S", GIVEN_UP_S)


def test_a_worker_waits_while_the_window_works():
    with window_works():
        with window_works():
            worker = _worker()
        worker.join(0.05)
        assert worker.is_alive()  # the inner work has ended, the outer has not
    worker.join(GIVEN_UP_S / 2)
    assert not worker.is_alive()


def test_work_that_fails_lets_workers_go_on_too():
    with pytest.raises(ZeroDivisionError), window_works():
        _ = 1 / 0
    worker = _worker()
    worker.join(GIVEN_UP_S / 2)
    assert not worker.is_alive()


def test_a_window_that_never_rests_stops_no_worker(monkeypatch):
    monkeypatch.setattr(yielding, "LONGEST_WAIT_S", 0.01)
    with window_works():
        worker = _worker()
        worker.join(GIVEN_UP_S)
        assert not worker.is_alive()
