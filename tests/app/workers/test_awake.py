"""The screen is kept on only while it has to be, by whatever the system offers."""

import os
import subprocess
import sys

import pytest

from app.workers.awake import (
    ES_CONTINUOUS,
    ES_DISPLAY_REQUIRED,
    Awake,
    HelperHolder,
    WindowsHolder,
    holders,
)

pytestmark = pytest.mark.usefixtures("qapp")


class Holder:
    def __init__(self, fails: bool = False) -> None:
        self.told: list[str] = []
        self._fails = fails

    def hold(self, failed) -> None:
        self.told.append("hold")
        if self._fails:
            failed()

    def release(self) -> None:
        self.told.append("release")


def test_it_asks_once_and_lets_go_once() -> None:
    holder = Holder()
    awake = Awake(lambda: [lambda: holder])
    for wanted in (False, True, True, False, False):
        awake.keep(wanted)
    assert holder.told == ["hold", "release"]
    assert awake.note() == ""


def test_the_next_is_taken_where_one_is_missing_or_fails() -> None:
    failing, good = Holder(fails=True), Holder()
    awake = Awake(lambda: [lambda: None, lambda: failing, lambda: good])
    awake.keep(True)
    assert failing.told == ["hold", "release"]
    assert good.told == ["hold"]
    awake.keep(False)
    awake.keep(True)
    assert good.told == ["hold", "release", "hold"]
    assert failing.told == ["hold", "release"]  # asked once


def test_a_system_that_offers_nothing_is_said_once(qtbot) -> None:
    awake = Awake(lambda: [lambda: None])
    with qtbot.waitSignal(awake.changed):
        awake.keep(True)
    assert "switch off screen saver" in awake.note()
    awake.keep(False)
    with qtbot.assertNotEmitted(awake.changed):
        awake.keep(True)


def test_windows_is_told_and_told_again() -> None:
    told: list[int] = []
    failures: list[str] = []

    def tell(state: int) -> int:
        told.append(state)
        return ES_CONTINUOUS

    holder = WindowsHolder(tell)
    holder.hold(lambda: failures.append("failed"))
    holder.release()
    # Values of the Windows API's documentation of SetThreadExecutionState.
    assert told == [0x80000002, 0x80000000] == [ES_CONTINUOUS | ES_DISPLAY_REQUIRED, ES_CONTINUOUS]
    assert failures == []
    WindowsHolder(lambda _state: 0).hold(lambda: failures.append("failed"))
    assert failures == ["failed"]


@pytest.mark.parametrize(
    ("platform", "there", "kinds"),
    [
        ("win32", (), ["WindowsHolder"]),
        ("darwin", ("caffeinate",), ["HelperHolder"]),
        ("darwin", (), [None]),
    ],
)
def test_what_each_system_offers(platform, there, kinds) -> None:
    made = [make() for make in holders(platform, lambda name: name if name in there else None)]
    assert [None if one is None else type(one).__name__ for one in made] == kinds


def test_linux_falls_back_on_a_helper_that_ends_with_this_program(monkeypatch) -> None:
    started: list[list[str]] = []
    monkeypatch.setattr("app.workers.awake.subprocess.Popen", lambda c, **_k: started.append(c))
    _, helper = holders("linux", lambda name: name)
    holder = helper()
    holder.hold(lambda: None)
    holder._look.stop()
    assert started[0][:2] == ["systemd-inhibit", "--what=idle"]
    assert f"--pid={os.getpid()}" in started[0]


def test_a_helper_is_ended_again_and_leaves_nothing() -> None:
    sleeping = [sys.executable, "-c", "import time; time.sleep(60)"]
    holder = HelperHolder(sleeping, subprocess.Popen)
    failures: list[str] = []
    holder.hold(lambda: failures.append("failed"))
    running = holder._running
    holder.release()
    holder.release()
    assert running.poll() is not None
    assert failures == []


def test_a_helper_that_the_system_refuses_has_failed() -> None:
    failures: list[str] = []
    holder = HelperHolder([sys.executable, "-c", "raise SystemExit(1)"], subprocess.Popen)
    holder.hold(lambda: failures.append("refused"))
    holder._running.wait()
    holder.look()
    holder.release()
    missing = HelperHolder(["/nowhere/at-all"], subprocess.Popen)
    missing.hold(lambda: failures.append("missing"))
    assert failures == ["refused", "missing"]
