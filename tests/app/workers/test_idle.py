"""Slices of work between events."""

from PySide6.QtCore import QTimer

from app.workers.yielding import AGAIN, Idle


def test_steps_come_in_order_with_events_between_them(qapp, qtbot) -> None:
    done: list[str] = []
    idle = Idle(qapp)
    idle.do([lambda: done.append("first"), lambda: done.append("second")])
    QTimer.singleShot(0, qapp, lambda: done.append("event"))
    assert done == []
    qtbot.waitUntil(lambda: len(done) == 3)
    assert done[-1] == "second"
    assert done.index("event") < done.index("second")
    idle.deleteLater()


def test_what_has_not_begun_is_left_out_at_the_end(qapp, qtbot) -> None:
    done: list[str] = []
    idle = Idle(qapp)
    idle.do([lambda: done.append("first"), idle.close, lambda: done.append("never")])
    qtbot.waitUntil(lambda: done == ["first"])
    qapp.processEvents()
    qapp.processEvents()
    assert done == ["first"]
    idle.deleteLater()


def test_a_step_that_has_more_to_do_comes_again_before_the_next(qapp, qtbot) -> None:
    done: list[str] = []
    slices = iter(("first", "second", "third"))

    def step() -> str | None:
        done.append(next(slices))
        return AGAIN if done[-1] != "third" else None

    idle = Idle(qapp)
    idle.do([step, lambda: done.append("after")])
    qtbot.waitUntil(lambda: len(done) == 4)
    assert done == ["first", "second", "third", "after"]
    idle.do([lambda: done.append("later")])
    qtbot.waitUntil(lambda: done[-1] == "later")
    idle.deleteLater()
