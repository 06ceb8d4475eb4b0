"""The screen is kept on only while it has to be, by whatever the system offers."""

import os

from app.signals.awake import Awake, MacHolder


class Holder:
    def __init__(self) -> None:
        self.told: list[str] = []

    def hold(self) -> None:
        self.told.append("hold")

    def release(self) -> None:
        self.told.append("release")


def test_it_asks_once_and_lets_go_once() -> None:
    holder = Holder()
    awake = Awake(lambda: holder)
    for wanted in (False, True, True, False, False):
        awake.keep(wanted)
    assert holder.told == ["hold", "release"]


def test_a_system_that_offers_nothing_is_no_trouble() -> None:
    awake = Awake(lambda: None)
    awake.keep(True)
    awake.keep(False)


class Process:
    def __init__(self) -> None:
        self.is_over = False

    def terminate(self) -> None:
        self.is_over = True

    def wait(self) -> int:
        assert self.is_over
        return 0


def test_the_helper_of_the_system_is_ended_again() -> None:
    started: list[list[str]] = []
    process = Process()

    def start(command: list[str]) -> Process:
        started.append(command)
        return process

    holder = MacHolder(start)
    holder.hold()
    holder.release()
    holder.release()
    assert started == [["caffeinate", "-d", "-w", str(os.getpid())]]
    assert process.is_over
