"""Nothing a person does keeps the window from answering for more than 50 ms."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

PAUSES = Path(__file__).with_name("window_pauses.py")
LONGEST_MS = 50.0
TRIES = 3  # the best of some: what is left is not the machine's


def _pauses() -> dict[str, tuple[float, float]]:
    """In ms, at the machine's usual pace and as it was."""
    done = subprocess.run(
        [sys.executable, str(PAUSES)], capture_output=True, text=True, timeout=300, check=False
    )
    assert done.returncode == 0, done.stderr
    return {name: tuple(ms) for name, ms in map(json.loads, done.stdout.splitlines())}


@pytest.mark.bench
def test_the_window_is_never_busy_for_long() -> None:
    best: dict[str, tuple[float, float]] = {}
    for _ in range(TRIES):
        best = {name: min(ms, best.get(name, ms)) for name, ms in _pauses().items()}
        longest_ms = max(own_ms for own_ms, _ in best.values())
        if longest_ms < LONGEST_MS:
            break
    for name, (own_ms, took_ms) in best.items():
        print(f"{name:20} {own_ms:5.1f} ms, as it was {took_ms:5.1f}")
    assert longest_ms < LONGEST_MS
