"""Nothing a person does keeps the window from answering for more than 50 ms."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

PAUSES = Path(__file__).with_name("window_pauses.py")
LONGEST_MS = 50.0
TRIES = 3  # the best of some: what is left is not the machine's


def _pauses() -> dict[str, float]:
    done = subprocess.run(
        [sys.executable, str(PAUSES)], capture_output=True, text=True, timeout=300, check=False
    )
    assert done.returncode == 0, done.stderr
    return dict(json.loads(line) for line in done.stdout.splitlines())


@pytest.mark.bench
def test_the_window_is_never_busy_for_long() -> None:
    best: dict[str, float] = {}
    for _ in range(TRIES):
        best = {name: min(ms, best.get(name, ms)) for name, ms in _pauses().items()}
        if max(best.values()) < LONGEST_MS:
            break
    print("\n".join(f"{name:20} {ms:5.1f} ms" for name, ms in best.items()))
    assert max(best.values()) < LONGEST_MS
