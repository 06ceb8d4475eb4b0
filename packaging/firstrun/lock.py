"""Lets one start at a time make the environment; a second one waits, a killed one lets go."""

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from time import sleep as pause
from typing import IO

PAUSE_S = 0.5

if os.name == "nt":
    import msvcrt

    def _try(file: IO[str]) -> None:
        file.seek(0)
        msvcrt.locking(file.fileno(), msvcrt.LK_NBLCK, 1)
else:
    import fcntl

    def _try(file: IO[str]) -> None:
        fcntl.flock(file, fcntl.LOCK_EX | fcntl.LOCK_NB)


@contextmanager
def one_at_a_time(path: Path) -> Iterator[None]:
    """Hold the lock file at `path`; the system lets it go when the process ends in any way."""
    with path.open("a", encoding="utf-8") as file:
        said = False
        while True:
            try:
                _try(file)
                break
            except OSError:
                if not said:
                    print("Another start is preparing the libraries: waiting for it.", flush=True)
                said = True
                pause(PAUSE_S)
        yield
