"""Loading the stars at the start, as a ratio to merely splitting the same file into cells."""

from __future__ import annotations

import time
from collections.abc import Callable

import pytest

from core.sky import catalogues

MOST_TIMES_SLOWER = 15.0


def best_s(work: Callable[[], object]) -> float:
    spans = []
    for _ in range(7):
        start = time.perf_counter()
        work()
        spans.append(time.perf_counter() - start)
    return min(spans)


def split_only() -> list[list[str]]:
    lines = catalogues.STARS.read_text(encoding="utf-8").splitlines()
    return [line.split(",") for line in lines]


@pytest.mark.bench
def test_loading_the_stars() -> None:
    ratio = best_s(lambda: catalogues.read_stars(catalogues.STARS)) / best_s(split_only)
    assert ratio < MOST_TIMES_SLOWER, f"{ratio:.1f} times"
