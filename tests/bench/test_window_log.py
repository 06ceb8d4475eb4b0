"""Five hundred nights with five million readings, through the window: opened, browsed, searched."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from tests.bench.large_log import BIG_LEG_READINGS, NOW_UTC_S, fill

LOOK = Path(__file__).with_name("window_log.py")
TRIES = 3  # in turns, the best of each: what is left is not the machine's
MOST_TIMES_SLOWER = 1.5
LONGEST_MS = 50.0
MOST_MS_TO_LIST = 250.0  # hardly noticed as a wait; common practice, no source
MOST_GROWTH_MB = 25.0  # from the second night opened to the twentieth

Done = dict[str, tuple[float, float, float, float]]  # took, pause, worked in ms; used in MB


def look(path: Path) -> Done:
    done = subprocess.run(
        [sys.executable, str(LOOK), str(path), str(NOW_UTC_S)],
        capture_output=True,
        text=True,
        timeout=240,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    lines = [json.loads(line) for line in done.stdout.splitlines() if line.startswith("[")]
    return {name: tuple(figures) for name, *figures in lines}


@pytest.fixture(scope="module")
def runs(tmp_path_factory: pytest.TempPathFactory) -> tuple[list[Done], list[Done]]:
    """Of an empty log, and of a large one."""
    folder = tmp_path_factory.mktemp("logs")
    large = folder / "large.sqlite"
    assert fill(large, has_big_night=True) == 5_000_000 + BIG_LEG_READINGS
    pairs = [(look(folder / f"empty{n}.sqlite"), look(large)) for n in range(TRIES)]
    return [one for one, _ in pairs], [other for _, other in pairs]


def best(runs: list[Done], name: str, column: int) -> float:
    return min(run[name][column] for run in runs)


@pytest.mark.bench
@pytest.mark.parametrize("what", ["ready", "log page", "log page again"])
def test_it_opens_as_fast_as_with_an_empty_log(runs, what: str) -> None:
    names = [name for name in runs[0][0] if name.rstrip(" 0123456789") == what]
    empty, large = (min(best(one, name, 0) for name in names) for one in runs)
    print(f"{what}: empty {empty:.0f} ms, large {large:.0f} ms, {large / empty:.2f}")
    assert large < MOST_TIMES_SLOWER * empty


@pytest.mark.bench
def test_all_nights_are_listed_without_a_wait(runs) -> None:
    took_ms = best(runs[1], "whole list", 0)
    print(f"all nights listed: {took_ms:.0f} ms")
    assert took_ms < MOST_MS_TO_LIST


@pytest.mark.bench
def test_the_window_is_never_busy_for_long(runs) -> None:
    _, large = runs
    pauses = {name: best(large, name, 1) for name in large[0]}
    worked = {name: best(large, name, 2) for name in large[0]}
    print("\n".join(f"{name:16} {pauses[name]:6.1f} ms, worked {worked[name]:5.1f} ms"
                    for name in pauses))  # fmt: skip
    assert max(worked.values()) < LONGEST_MS
    if os.getloadavg()[0] < (os.cpu_count() or 1):  # else the pauses are the machine's
        assert max(pauses.values()) < LONGEST_MS


@pytest.mark.bench
@pytest.mark.skipif(not Path("/proc/self/statm").exists(), reason="the system tells no memory")
def test_memory_stays_flat_while_nights_are_opened(runs) -> None:
    _, large = runs
    grown = min(run["night 19"][3] - run["night 1"][3] for run in large)
    print(f"grew by {grown:.1f} MB")
    assert grown < MOST_GROWTH_MB
