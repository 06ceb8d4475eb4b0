"""Killed at any moment, the program loses nothing older than a second, and the night goes on."""

from __future__ import annotations

import random
import signal
import subprocess
import sys
import time
from collections import defaultdict
from pathlib import Path
from typing import NamedTuple

import numpy as np
import pytest

from app.store.nights import NightLog
from app.store.records import StoredNight

WRITER = Path(__file__).with_name("writes_until_killed.py")
MOST_LOST_S = 1.0
NOW_UTC_S = 1_795_550_400.0
RUNS = 6  # each file is begun once and resumed five times
FILES = 4  # written side by side to save time: 24 kills in all

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="kills by SIGKILL")


class Said(NamedTuple):
    """One reading as the writer announced it; `at_s` on the clock both processes share."""

    at_s: float
    leg_id: int
    north_arcsec: float


class Run:
    """A run of the writing program, started at once, killed when asked."""

    def __init__(self, path: Path, seed: int) -> None:
        self._announced = path.with_suffix(f".{seed}.txt")
        self._wait_s = random.Random(seed).choice([0.3, 0.3, 1.8]) * random.Random(-seed).random()
        with self._announced.open("w") as out:
            self._process = subprocess.Popen(
                [sys.executable, str(WRITER), str(path), str(seed)],
                stdout=out,
                cwd=WRITER.parents[2],
            )

    def kill_soon(self) -> tuple[list[Said], float]:
        """What was announced, and when the kill came."""
        while not self._announced.read_text().startswith("ready\n"):
            assert self._process.poll() is None
            time.sleep(0.002)
        time.sleep(self._wait_s)
        self._process.send_signal(signal.SIGKILL)
        killed_at_s = time.monotonic()
        assert self._process.wait() == -signal.SIGKILL
        lines = [line.split() for line in self._announced.read_text().splitlines()[1:]]
        whole = [line for line in lines if len(line) == 4]
        return [Said(float(at), int(leg), float(n)) for at, leg, n, _ in whole], killed_at_s


def reopen(path: Path) -> StoredNight:
    troubles: list[str | None] = []
    log = NightLog.open(path, lambda: NOW_UTC_S, troubles.append, troubles.append)
    night = log.resume_or_begin_night(NOW_UTC_S)
    assert log.close()
    assert troubles == []
    assert night.resumed
    return night


def readings_of(night: StoredNight) -> dict[int, list[float]]:
    legs = [leg for state in night.axis_states for leg in state.legs]
    return {leg.leg_id: leg.leg.north_arcsec.tolist() for leg in legs}


def check(
    kept: dict[int, list[float]], announced: list[Said], killed_at_s: float, now: StoredNight
) -> None:
    measured = defaultdict(list, {key: list(readings) for key, readings in kept.items()})
    for said in announced:
        measured[said.leg_id].append(said.north_arcsec)
    stored = readings_of(now)
    for key, readings in stored.items():
        # What is there is a beginning of what was measured: in order, without holes.
        np.testing.assert_array_equal(readings, measured[key][: len(readings)])
    lost = [said for said in announced if said.north_arcsec not in stored.get(said.leg_id, [])]
    assert all(said.at_s > killed_at_s - MOST_LOST_S for said in lost)
    assert all(stored[key] == readings for key, readings in kept.items())


def test_nothing_older_than_a_second_is_lost(tmp_path: Path) -> None:
    paths = [tmp_path / f"nights-{number}.sqlite3" for number in "abcd"[:FILES]]
    kept: list[dict[int, list[float]]] = [{} for _ in paths]
    for round_number in range(RUNS):
        seeds = range(FILES * round_number, FILES * (round_number + 1))
        runs = [Run(path, seed) for path, seed in zip(paths, seeds, strict=True)]
        kills = [run.kill_soon() for run in runs]
        for index, (announced, killed_at_s) in enumerate(kills):
            night = reopen(paths[index])
            check(kept[index], announced, killed_at_s, night)
            kept[index] = readings_of(night)
