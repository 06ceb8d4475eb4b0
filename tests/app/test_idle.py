"""Slices of work between events."""

from PySide6.QtCore import QTimer

from app.idle import Idle


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
