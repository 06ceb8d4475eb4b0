"""How long one thing kept the window's thread busy."""

import time
from collections.abc import Callable


def spent_ms(act: Callable[[], object]) -> float:
    began = time.perf_counter()
    act()
    return 1000.0 * (time.perf_counter() - began)
