"""Killed at any moment, the procedure goes on at the very step, losing no more than a second."""

from __future__ import annotations

import json
import random
import signal
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import pytest

from app.night.session import Session
from app.store.nights import NightLog
from tests.app.night.scripted import counting_answer
from tests.faults.guided_until_killed import NOW_UTC_S, state

SCRIPT = Path(__file__).with_name("guided_until_killed.py")
MOST_LOST_S = 1.0
ORDINARY, MANY = 4, 100
LONGEST_S = 1.5
Said = list[tuple[float, dict[str, Any]]]

pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="kills by SIGKILL")


def killed(path: Path, seed: int) -> tuple[Said, float]:
    """Runs until a random moment; what it said, and when the kill came."""
    told = path.with_suffix(f".{seed}.txt")
    with told.open("w") as out:
        process = subprocess.Popen(
            [sys.executable, str(SCRIPT), str(path), str(seed)], stdout=out, cwd=SCRIPT.parents[2]
        )
    while not told.read_text().startswith("ready\n"):
        assert process.poll() is None
        time.sleep(0.005)
    time.sleep(LONGEST_S * random.Random(seed).random() ** 2)
    process.send_signal(signal.SIGKILL)
    killed_at_s = time.monotonic()
    assert process.wait() == -signal.SIGKILL
    lines = told.read_text().splitlines(keepends=True)[1:]
    return [tuple(json.loads(line)) for line in lines if line.endswith("\n")], killed_at_s


def resumed(path: Path) -> dict[str, Any]:
    troubles: list[str | None] = []
    log = NightLog.open(path, lambda: NOW_UTC_S, troubles.append, troubles.append)
    session = Session(counting_answer, log)
    session.resume(log.resume_or_begin_night(NOW_UTC_S))
    found = state(session)
    session.close()
    assert log.close()
    assert troubles == []
    return found


def could_be(found: dict[str, Any], said: Said, killed_at_s: float) -> bool:
    """Whether what came back is what was said not longer than a second before the kill.

    Readings come one by one between two lines, so their number may lie between.
    """
    recent = [what for at_s, what in said if at_s > killed_at_s - MOST_LOST_S] or [said[-1][1]]
    earlier = [what for at_s, what in said if at_s <= killed_at_s - MOST_LOST_S][-1:]
    states = earlier + recent
    pairs = zip(states, [*states[1:], states[-1]], strict=True)
    return any(_between(found, one, other) for one, other in pairs)


def _between(found: dict[str, Any], one: dict[str, Any], other: dict[str, Any]) -> bool:
    plain = [{key: what[key] for key in what if key != "legs"} for what in (found, one, other)]
    if plain[0] not in plain[1:]:
        return False
    for label, count in found["legs"].items():
        counts = [what["legs"].get(label) for what in (one, other) if label in what["legs"]]
        if not counts or not min(counts) <= count <= max(counts):
            return False
    return True


def kill_again_and_again(path: Path, seeds: range) -> None:
    for seed in seeds:
        said, killed_at_s = killed(path, seed)
        if not said:
            continue
        found = resumed(path)
        assert could_be(found, said, killed_at_s), (seed, found, said[-3:])


def test_the_procedure_goes_on_where_it_was(tmp_path: Path, qapp) -> None:  # noqa: ARG001
    kill_again_and_again(tmp_path / "nights.sqlite3", range(1, ORDINARY + 1))


@pytest.mark.bench
def test_the_procedure_goes_on_after_a_hundred_kills(tmp_path: Path, qapp) -> None:  # noqa: ARG001
    for part in range(MANY // 10):  # fresh files now and then, for a night grows
        folder = tmp_path / str(part)
        folder.mkdir()
        first = 10 * part + 100
        kill_again_and_again(folder / "nights.sqlite3", range(first, first + 10))
