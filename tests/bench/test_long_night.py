"""Twelve hours at five readings a second: memory stays flat and the window stays free."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
NIGHT = Path(__file__).with_name("long_night.py")
GROWTH_MB = 100.0
LONGEST_UPDATE_MS = 50.0
TRIES = 3  # the best of some: what is left is not the machine's


def night(minutes_per_leg: float, log: Path) -> dict[str, float]:
    environment = os.environ | {"PYTHONPATH": str(ROOT), "OPENBLAS_NUM_THREADS": "1"}
    done = subprocess.run(
        [sys.executable, str(NIGHT), str(minutes_per_leg), str(log)],
        env=environment,
        capture_output=True,
        text=True,
        timeout=300,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    told: dict[str, float] = json.loads(done.stdout)
    print(f"{minutes_per_leg:g} min legs: " + ", ".join(f"{k} {v:.3g}" for k, v in told.items()))
    return told


@pytest.mark.bench
@pytest.mark.skipif(not Path("/proc/self/statm").exists(), reason="reads memory where Linux tells")
@pytest.mark.parametrize("minutes_per_leg", [15.0, 12 * 60.0])
def test_a_long_night(tmp_path: Path, minutes_per_leg: float) -> None:
    longest_ms = float("inf")
    for attempt in range(TRIES):
        told = night(minutes_per_leg, tmp_path / f"{attempt}.sqlite")
        assert told["growth_mb"] < GROWTH_MB
        longest_ms = min(longest_ms, told["longest_update_ms"])
        if longest_ms < LONGEST_UPDATE_MS:
            return
    pytest.fail(f"the longest update took {longest_ms:.0f} ms in the best of {TRIES} nights")
