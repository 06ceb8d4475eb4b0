"""Long work: the newest wins, progress arrives, and what is stopped never does."""

import threading
from collections.abc import Iterator

import pytest

from app.workers.latest import Job

DONE_MS = 10_000


@pytest.fixture
def job(qapp) -> Iterator[Job]:
    assert qapp is not None  # signals between threads need it
    made = Job()
    yield made
    made.close()


def test_the_answer_and_the_share_done_arrive(job: Job, qtbot) -> None:
    shares: list[float] = []
    job.progressed.connect(shares.append)

    def work(keep_going) -> str:
        assert keep_going(0.25)
        return "answer"

    with qtbot.waitSignal(job.done, timeout=DONE_MS) as answered:
        job.send(work)
    assert answered.args == ["answer"]
    assert shares == [0.25]


def test_new_work_makes_the_old_give_up(job: Job, qtbot) -> None:
    answers: list[object] = []
    job.done.connect(answers.append)
    began, asked_to_stop = threading.Event(), threading.Event()

    def long_work(keep_going) -> str:
        began.set()
        while keep_going(0.0):
            pass
        asked_to_stop.set()
        return "old"

    job.send(long_work)
    assert began.wait(5.0)
    with qtbot.waitSignal(job.done, timeout=DONE_MS):
        job.send(lambda _keep_going: "new")
    assert asked_to_stop.is_set()
    assert answers == ["new"]


def test_what_is_stopped_never_arrives(job: Job, qtbot) -> None:
    began = threading.Event()

    def work(keep_going) -> str:
        began.set()
        while keep_going(0.0):
            pass
        return "too late"

    job.send(work)
    assert began.wait(5.0)
    with qtbot.assertNotEmitted(job.done):
        with qtbot.waitSignal(job.ended, timeout=DONE_MS):
            job.stop()
        job.close()
