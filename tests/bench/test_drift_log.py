"""Reading a long drift log, as a ratio to the least any reader of the same text must do."""

from __future__ import annotations

import csv
import time
from collections.abc import Callable
from datetime import datetime

import numpy as np
import pytest

from core.alignment.driftlog.files import write
from core.alignment.driftlog.reader import read
from core.alignment.driftlog.records import Header, Leg

MOST_TIMES_SLOWER = 5.0
READINGS = 10_000


def best_s(work: Callable[[], object]) -> float:
    spans = []
    for _ in range(7):
        start = time.perf_counter()
        work()
        spans.append(time.perf_counter() - start)
    return min(spans)


def least_work(text: str) -> list[tuple[float, float]]:
    """Splits, and turns the two columns that change into numbers; checks nothing."""
    rows = csv.reader(text.splitlines()[1:])
    return [(datetime.fromisoformat(row[1]).timestamp(), float(row[4])) for row in rows]


@pytest.mark.bench
def test_reading_a_long_log() -> None:
    rng = np.random.default_rng(3)
    times = 1.795e9 + np.cumsum(rng.uniform(1.5, 2.5, READINGS).round(3))
    columns = (rng.normal(size=READINGS).round(3) for _ in range(2))
    text = write(Header(), [Leg("east", 83.8, -5.4, times, *columns)])
    ratio = best_s(lambda: read(text)) / best_s(lambda: least_work(text))
    assert ratio < MOST_TIMES_SLOWER, f"{ratio:.1f} times"
