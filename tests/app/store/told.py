"""What the log of nights says, a night to measure in it, and what of it is on disk."""

from __future__ import annotations

import sqlite3
import threading
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import numpy as np

from app.store.nights import NightLog
from app.store.opening import connect

NOW_UTC_S = 1_795_550_400.0


class Told:
    """What the log says, with a way to wait for it."""

    def __init__(self) -> None:
        self.troubles: list[str | None] = []
        self.notices: list[str] = []
        self._changed = threading.Condition()

    def trouble(self, sentence: str | None) -> None:
        with self._changed:
            self.troubles.append(sentence)
            self._changed.notify_all()

    def wait(self, condition: Callable[[str | None], bool]) -> None:
        with self._changed:
            assert self._changed.wait_for(
                lambda: bool(self.troubles) and condition(self.troubles[-1]), 10.0
            ), self.troubles

    def open(self, path: Path, connect=connect) -> NightLog:
        return NightLog.open(
            path, lambda: NOW_UTC_S, self.trouble, self.notices.append, connect, retry_s=0.02
        )


def measure(log: NightLog, count: int) -> None:
    leg = log.add_leg("east", "Bellatrix", 81.28, 6.35)
    log.add_samples(leg, NOW_UTC_S + np.arange(float(count)), np.ones(count))


def readings_in(path: Path) -> int:
    with closing(sqlite3.connect(path)) as connection:
        (count,) = connection.execute("SELECT count(*) FROM samples").fetchone()
    return int(count)


def night_of(path: Path, count: int) -> None:
    log = Told().open(path)
    log.resume_or_begin_night(NOW_UTC_S)
    measure(log, count)
    assert log.close()
