"""Whether a path leads to an ordinary file: a pipe makes who opens it wait, a device never ends."""

from __future__ import annotations

import stat
from pathlib import Path


def size_if_ordinary(file: Path) -> int | None:
    """Its size in bytes; None for a folder, a pipe or a device. OSError when there is nothing."""
    status = file.stat()
    return status.st_size if stat.S_ISREG(status.st_mode) else None
