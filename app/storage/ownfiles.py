"""Files that belong to a log in use, which nothing else may be written over."""

from __future__ import annotations

import os
from collections.abc import Iterable
from pathlib import Path

from app.storage.holding import ENDING, is_held

ENDINGS = ("", "-wal", "-shm", ENDING)


def belongs_to_a_log_in_use(path: Path, logs: Iterable[Path]) -> bool:
    """Whether `path`, however it is spelled, is one of `logs`, a file kept beside one of them, or
    likewise of a log that some copy of the program holds.
    """
    own = (log.with_name(log.name + ending) for log in logs for ending in ENDINGS)
    return any(_is_same(path, one) for one in own) or _is_of_a_held_log(_real(path))


def _is_same(path: Path, other: Path) -> bool:
    if path.exists() and other.exists():
        return path.samefile(other)  # through symbolic and hard links as well
    path, other = _real(path), _real(other)
    # Names that differ only in capitals are one file on some systems: that is not risked.
    return path.name.casefold() == other.name.casefold() and _is_one(path.parent, other.parent)


def _real(path: Path) -> Path:
    return Path(os.path.realpath(path))  # unlike `resolve`, it bears links in a circle


def _is_one(folder: Path, other: Path) -> bool:
    return folder == other or (folder.exists() and other.exists() and folder.samefile(other))


def _is_of_a_held_log(path: Path) -> bool:
    names = (path.name.removesuffix(end) for end in ENDINGS if path.name.endswith(end))
    return any(is_held(path.with_name(name)) for name in names if name)
