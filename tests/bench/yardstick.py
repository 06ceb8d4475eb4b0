"""How long the window's thread was busy, less what the machine itself was slower at the moment.

A virtual machine whose processor is shared, and a processor that wakes from rest, can take eight
times as long over the same work for some tens of milliseconds. A fixed piece of arithmetic, timed
by the thread's own clock before and after each stretch, tells: a stretch counts as long as it would
have been had the arithmetic taken its usual time. Of the two the faster is believed, and a stretch
is never counted longer than it was.
"""

from __future__ import annotations

import statistics
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass

COUNT = 2_500  # about a fifth of a millisecond


@dataclass(frozen=True)
class Stretch:
    """All in ms; `yard_ms` is the faster of the two yardsticks beside it."""

    took_ms: float
    yard_ms: float


class Yardstick:
    """Times stretches and remembers how long the arithmetic beside them took."""

    def __init__(self) -> None:
        self._yards_ms: list[float] = []

    def stretch(self, act: Callable[[], object]) -> Stretch:
        before_ms = self._yard_ms()
        began = time.perf_counter()
        act()
        took_ms = 1000.0 * (time.perf_counter() - began)
        return Stretch(took_ms, min(before_ms, self._yard_ms()))

    def usual_ms(self) -> float:
        """What the arithmetic took usually in this process."""
        return statistics.median(self._yards_ms)

    def slowest(self) -> float:
        """How many times the usual it took at worst."""
        return max(self._yards_ms) / self.usual_ms()

    def own_ms(self, stretches: Sequence[Stretch]) -> list[float]:
        """How long each stretch would have taken at the usual pace."""
        usual_ms = self.usual_ms()
        return [one.took_ms / max(1.0, one.yard_ms / usual_ms) for one in stretches]

    def _yard_ms(self) -> float:
        # The thread's own time: waiting for another thread of the program is the program's fault.
        began = time.thread_time()
        total = 0
        for number in range(COUNT):
            total += number * number
        spent_ms = 1000.0 * (time.thread_time() - began)
        self._yards_ms.append(spent_ms)
        return spent_ms
