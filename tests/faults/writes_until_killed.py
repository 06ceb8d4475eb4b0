"""A run of the program without a screen: measures until killed, and says what.

Each line, written before the reading is taken: monotonic time, key of the leg, north offset, and a
mark that the line is whole.
"""

from __future__ import annotations

import random
import sys
import time
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[2]))
from app.store.nights import NightLog

NOW_UTC_S = 1_795_550_400.0


def fail(sentence: str | None) -> None:
    """Nothing may go wrong here."""
    print(sentence, file=sys.stderr, flush=True)


def main(path: Path, seed: int) -> None:
    """Writes legs of random length, some in blocks, at a random pace."""
    chance = random.Random(seed)
    log = NightLog.open(path, lambda: NOW_UTC_S, fail, fail)
    log.resume_or_begin_night(NOW_UTC_S)
    log.flush()
    print("ready", flush=True)
    pace_s = chance.choice([0.0002, 0.002, 0.02])
    value = 0.0
    while True:
        leg = log.add_leg("leg", "star", 10.0, 20.0)
        for _ in range(chance.randrange(1, 60)):
            block = value + np.arange(1.0, 1.0 + chance.choice([1, 1, 1, 30]))
            value = float(block[-1])
            said_at = time.monotonic()
            sys.stdout.writelines(f"{said_at} {leg} {north} .\n" for north in block.tolist())
            sys.stdout.flush()
            log.add_samples(leg, NOW_UTC_S + block, block)
            time.sleep(chance.uniform(0.0, 2.0 * pace_s))
        log.end_leg(leg)
        if chance.random() < 0.2:
            log.begin_axis_state()


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]))
