"""Five hundred nights with five million readings open like none, in as little memory."""

from __future__ import annotations

import os
import sqlite3
import subprocess
import sys
import time
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest

from app.store.nights import NightLog
from tests.bench.large_log import NIGHTS, NOW_UTC_S, fill

ROOT = Path(__file__).parents[2]
ROUNDS = 15
MOST_TIMES_SLOWER = 1.5
MOST_SECONDS_TO_LIST = 0.25  # hardly noticed as a wait; common practice, no source
MOST_GROWTH_MB = 20.0

# Prints the growth of the process in MB while it opens, lists, searches and reads one night.
LOOK = """
import resource, sys
from pathlib import Path
from app.store.nights import NightLog
def used_mb():
    pages = int(Path("/proc/self/statm").read_text().split()[1])
    return pages * resource.getpagesize() / 1e6
def open_and_look(path):
    log = NightLog.open(Path(path), lambda: float(sys.argv[3]), print, print)
    log.resume_or_begin_night(float(sys.argv[3]))
    for night in log.archive.overview()[:20]:
        log.archive.night(night.night_id)
    log.archive.search("dew")
    log.close()
open_and_look(sys.argv[1])
before = used_mb()
for _ in range(3):
    open_and_look(sys.argv[2])
print(used_mb() - before)
"""


@pytest.fixture(scope="module")
def logs(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path]:
    """An empty log and a large one."""
    folder = tmp_path_factory.mktemp("logs")
    empty, large = folder / "empty.sqlite3", folder / "large.sqlite3"
    assert fill(large) == 5_000_000
    return empty, large


def opening_s(path: Path, then: Callable[[NightLog], object] = lambda _log: None) -> float:
    """Until tonight can be written, as at the start of the program."""
    began = time.perf_counter()
    log = NightLog.open(path, lambda: NOW_UTC_S, print, print)
    log.resume_or_begin_night(NOW_UTC_S)
    then(log)
    took = time.perf_counter() - began
    assert log.close()
    return took


@pytest.mark.bench
def test_opening_takes_as_long_as_with_an_empty_log(logs: tuple[Path, Path]) -> None:
    empty, large = logs
    times = [(opening_s(empty), opening_s(large)) for _ in range(ROUNDS)]  # in turns
    empty_s, large_s = (min(one) for one in zip(*times[1:], strict=True))
    print(f"empty {1e3 * empty_s:.1f} ms, large {1e3 * large_s:.1f} ms, {large_s / empty_s:.2f}")
    assert large_s < MOST_TIMES_SLOWER * empty_s


@pytest.mark.bench
def test_listing_and_searching_is_no_wait(logs: tuple[Path, Path]) -> None:
    _, large = logs
    spans = []

    def look(log: NightLog) -> None:
        for question in (log.archive.overview, lambda: log.archive.search("wind dew")):
            began = time.perf_counter()
            found = question()
            spans.append(time.perf_counter() - began)
            assert len(found) >= NIGHTS

    for _ in range(3):
        opening_s(large, look)
    print(f"overview {1e3 * min(spans[::2]):.0f} ms, search {1e3 * min(spans[1::2]):.0f} ms")
    assert min(spans[::2]) < MOST_SECONDS_TO_LIST
    assert min(spans[1::2]) < MOST_SECONDS_TO_LIST


@pytest.mark.bench
@pytest.mark.skipif(not Path("/proc/self/statm").exists(), reason="the system tells no memory")
def test_memory_stays_flat(logs: tuple[Path, Path]) -> None:
    done = subprocess.run(
        [sys.executable, "-c", LOOK, *map(str, logs), str(NOW_UTC_S)],
        cwd=ROOT,
        env=os.environ | {"PYTHONPATH": str(ROOT)},
        capture_output=True,
        text=True,
        check=True,
        timeout=120,
    )
    growth_mb = float(done.stdout.split()[-1])
    print(f"grew by {growth_mb:.1f} MB")
    assert growth_mb < MOST_GROWTH_MB


@pytest.mark.bench
def test_saving_and_restoring_all_of_it(logs: tuple[Path, Path]) -> None:
    _, large = logs
    saved, fresh = large.with_name("saved.sqlite3"), large.with_name("fresh.sqlite3")
    log = NightLog.open(large, lambda: NOW_UTC_S, print, print)
    began = time.perf_counter()
    log.archive.back_up(saved)
    saving_s = time.perf_counter() - began
    assert log.close()
    log = NightLog.open(fresh, lambda: NOW_UTC_S, print, print)
    began = time.perf_counter()
    assert "readings: 5,000,000" in log.archive.take_in(saved)
    restoring_s = time.perf_counter() - began
    assert log.close()
    print(f"saved in {saving_s:.1f} s, restored in {restoring_s:.1f} s")
    with closing(sqlite3.connect(fresh)) as connection:
        assert connection.execute("SELECT count(*) FROM samples").fetchone() == (5_000_000,)
