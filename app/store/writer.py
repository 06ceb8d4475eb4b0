"""Files that belong to a log in use, which nothing else may be written over."""

from __future__ import annotations

import os
import sqlite3
import threading
import time
from collections import deque
from collections.abc import Callable, Iterable
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from typing import TypeVar

from app.store import file, words
from app.store.file import (
    ENDING,
    FileIdentity,
    GoneFromPlace,
    HeldElsewhere,
    hold,
    is_held,
    journal_of,
    shared_of,
)
from app.store.opening import OpenedLog, free_name_beside, is_sound, rescue, set_aside
from app.store.salvage import open_to_read
from app.store.schema import Write, write_all
from core.language import say

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


# A log whose file was deleted, moved or replaced while it was open, written at its path anew.
#
# SQLite still has the old file open, so all of it can be read until then, whatever its name is now.


def bring_back(lost: OpenedLog) -> Path | None:
    """Where another file that had taken the place was put; None when there was none.

    `lost` is closed when all of it is at the path. Raises HeldElsewhere when another copy of the
    program has begun a log there, sqlite3.Error or OSError when nothing can be written; `lost` can
    still be read then, and this may be tried again.
    """
    path = lost.path
    path.parent.mkdir(parents=True, exist_ok=True)
    lost.held.close()  # it may be held by a file that is gone as well
    with closing(hold(path)):
        copy = _copied(lost)
        other = _make_way(lost.place)
        copy.replace(path)
        _forget_journal(path)
        lost.connection.close()
    return other


def _copied(lost: OpenedLog) -> Path:
    """Under a name from which the next start takes it, should the program be killed here."""
    copy = free_name_beside(lost.path)
    try:
        with closing(sqlite3.connect(copy, isolation_level=None)) as receiving:
            lost.connection.backup(receiving)
            receiving.execute("PRAGMA journal_mode = DELETE")  # one file, which can be renamed
    except BaseException:
        copy.unlink(missing_ok=True)
        raise
    return copy


def _make_way(place: FileIdentity) -> Path | None:
    """What is not ours is kept, with what belongs to it and not to us."""
    if place.has_log() or not place.path.exists():
        return None
    if place.has_journal():  # SQLite would put our pages into the other file
        _forget_journal(place.path)
    return set_aside(place.path, "other")


def _forget_journal(path: Path) -> None:
    for beside in (journal_of(path), shared_of(path)):
        beside.unlink(missing_ok=True)


# A log that another copy of the program writes, open here to be read.


class ReadOnlyLog:
    """Opened at the first question, and anew when the other copy had to write the file anew."""

    def __init__(self, path: Path) -> None:
        self._path = path
        self._place: FileIdentity | None = None
        self._open: sqlite3.Connection | None = None

    def connection(self) -> sqlite3.Connection:
        """Raises sqlite3.Error when the file cannot be read."""
        if self._place is not None and not self._place.is_kept() and self._path.exists():
            self.close()
        if self._open is None:
            self._place = FileIdentity.of(self._path)
            self._open = open_to_read(self._path)
        return self._open

    def close(self) -> None:
        """Harmless twice."""
        if self._open is not None:
            self._open.close()
            self._open = None


# The one thread that writes the log of nights.

GATHER_S = 0.1  # rows are gathered this long, then committed together
RETRY_S = 2.0
LOOK_S = 1.0  # so often the file is looked for while nothing is written
PAGES_AT_ONCE = 2000  # copied before others may write
PAUSE_S = 0.001

T = TypeVar("T")


@dataclass(frozen=True)
class Outside:
    """What the writer asks and tells; all of it is called from the writing thread as well.

    `path`: where the log belongs. `reopen` opens the file and is asked again while it fails.
    `rebuild` gives the rows a fresh file needs when a damaged one had to be set aside. `on_trouble`
    gets the error when writing fails and None when it works again; `on_notice` a sentence.
    """

    path: Path
    reopen: Callable[[], OpenedLog]
    rebuild: Callable[[], list[Write]]
    on_trouble: Callable[[Exception | None], None]
    on_notice: Callable[[str], None]


class Writer:
    """Commits what it is given within moments; keeps it and tries again when the disk refuses."""

    def __init__(self, outside: Outside, retry_s: float = RETRY_S) -> None:
        self._outside = outside
        self._retry_s = retry_s
        self._opened: OpenedLog | None = None
        self._glance = ReadOnlyLog(outside.path)
        self._is_held_elsewhere = False
        self._is_astray = False  # the open file is not the one at its path
        self._aside: Path | None = None  # a damaged file not yet salvaged
        self._in_trouble = False
        self._database_lock = threading.Lock()
        self._state = threading.Condition()
        self._waiting: deque[Write] = deque()
        self._unwritten = 0
        self._hurry = self._closing = False
        self._thread = threading.Thread(target=self._run, name="log of nights", daemon=True)

    def start(self) -> None:
        """Opens the file, if that goes, and begins to write."""
        self._commit([])
        self._thread.start()

    @property
    def unwritten(self) -> int:
        """How many statements are not on disk yet."""
        with self._state:
            return self._unwritten

    @property
    def is_read_only(self) -> bool:
        """Whether another copy of the program writes the file, as far as the last attempt saw."""
        return self._is_held_elsewhere

    @property
    def can_read(self) -> bool:
        """Whether there is a file to put questions to, as far as the last attempt saw."""
        return self._opened is not None or self._is_held_elsewhere

    def put(self, write: Write) -> None:
        """Takes a statement for the next commit; returns at once."""
        with self._state:
            self._waiting.append(write)
            self._unwritten += 1
            self._state.notify_all()

    def read(self, question: Callable[[sqlite3.Connection], T]) -> T | None:
        """The answer to a question put to the file, None when no file can answer it."""
        try:
            with self._database_lock:
                if self._opened is not None:
                    return self._ask(self._opened, question)
                return question(self._glance.connection()) if self._is_held_elsewhere else None
        except Exception as error:
            self._in_trouble = True
            self._outside.on_trouble(error)
            return None

    def _ask(self, opened: OpenedLog, question: Callable[[sqlite3.Connection], T]) -> T | None:
        try:
            return question(opened.connection)
        except (sqlite3.DatabaseError, ValueError, TypeError) as error:
            if not file.is_nonsense(error):
                raise
        return question(self._replace_damaged(opened).connection)

    def copy_into(self, copy: sqlite3.Connection) -> None:
        """Copies the whole file, writing what comes in between the steps. Raises sqlite3.Error."""

        def let_others_write(_status: int, _remaining: int, _total: int) -> None:
            self._database_lock.release()
            time.sleep(PAUSE_S)
            self._database_lock.acquire()

        with self._database_lock:
            if self._opened is not None:
                opened = self._opened.connection
                opened.backup(copy, pages=PAGES_AT_ONCE, progress=let_others_write)
            elif self._is_held_elsewhere:  # at one go, or what the other copy writes begins it anew
                self._glance.connection().backup(copy)
            else:
                raise sqlite3.OperationalError(say("the log of nights is not open"))

    def mend(self) -> bool:
        """Looks through the whole file; a damaged one is set aside and salvaged. Whether it was
        sound. Raises sqlite3.Error or OSError where nothing can be written.
        """
        with self._database_lock:
            if self._opened is None:
                raise sqlite3.OperationalError(say("the log of nights is not open"))
            if is_sound(self._opened.connection):
                return True
            self._replace_damaged(self._opened)
            return False

    def is_at(self, path: Path) -> bool:
        """Whether it is this file that is written."""
        opened = self._opened
        return opened is not None and path.exists() and path.samefile(opened.path)

    def is_own(self, path: Path) -> bool:
        """Whether writing there would destroy this log or another one in use."""
        opened = self._opened
        logs = [self._outside.path, *([] if opened is None else [opened.path])]
        return belongs_to_a_log_in_use(path, logs)

    def flush(self, timeout_s: float) -> bool:
        """Waits until all that was put is on disk; whether it is. Waits for no other copy."""
        self._look_for_file()
        with self._state:
            self._hurry = True
            self._state.notify_all()
            self._state.wait_for(lambda: self._is_kept or self._is_held_elsewhere, timeout_s)
            return self._is_kept

    def close(self, timeout_s: float) -> bool:
        """Writes what is left, ends the thread and closes the file; whether all is on disk."""
        with self._state:
            self._closing = True
            self._state.notify_all()
        self._thread.join(timeout_s)
        return self._is_kept and not self._thread.is_alive()

    @property
    def _is_kept(self) -> bool:
        return self._unwritten == 0 and not self._is_astray

    def _run(self) -> None:
        pending: list[Write] = []
        while self._wait_for_work(bool(pending)):
            self._gather(pending)
            is_last_attempt = self._closing
            if self._commit(pending):
                self._done(pending)
            elif is_last_attempt:
                break
            else:
                self._wait_to_retry()
        with self._database_lock:
            if self._opened is not None:
                self._opened.close()
                self._opened = None
            self._glance.close()

    def _wait_for_work(self, has_pending: bool) -> bool:
        """False when there is nothing left to do, ever."""
        while True:
            with self._state:
                self._state.wait_for(lambda: self._has_work(has_pending) or self._closing, LOOK_S)
                is_closing = self._closing
            self._look_for_file()  # unlocked: whoever puts something must not wait for a slow disk
            if self._has_work(has_pending):
                return True
            if is_closing:
                return False

    def _has_work(self, has_pending: bool) -> bool:
        return bool(has_pending or self._waiting or self._is_astray)

    def _look_for_file(self) -> None:
        opened = self._opened
        is_astray = opened is not None and not opened.place.is_kept()
        if opened is self._opened:  # meanwhile it may have been brought back
            self._is_astray = is_astray

    def _gather(self, pending: list[Write]) -> None:
        with self._state:
            self._state.wait_for(lambda: self._hurry or self._closing, GATHER_S)
            self._hurry = False
            pending.extend(self._waiting)
            self._waiting.clear()

    def _commit(self, pending: list[Write]) -> bool:
        try:
            with self._database_lock:
                self._write(pending)
        except Exception as error:  # a thread that dies would lose the night in silence
            self._in_trouble = True
            self._is_held_elsewhere = isinstance(error, HeldElsewhere)
            self._outside.on_trouble(error)
            return False
        if self._in_trouble:
            self._in_trouble = False
            self._outside.on_trouble(None)
        return True

    def _write(self, pending: list[Write]) -> None:
        opened = self._reopened() if self._opened is None else self._in_place(self._opened)
        try:
            write_all(opened.connection, pending)
        except sqlite3.DatabaseError as error:
            if not file.is_damage(error):
                raise
            fresh = self._replace_damaged(opened)
            write_all(fresh.connection, pending)

    def _in_place(self, opened: OpenedLog) -> OpenedLog:
        """The same, or all of it anew where it was opened."""
        if opened.place.is_kept():
            return opened
        self._is_astray = True
        try:
            other = bring_back(opened)
        except HeldElsewhere:
            raise
        except (sqlite3.Error, OSError) as error:
            raise GoneFromPlace from error
        self._opened, self._is_astray = None, False
        self._outside.on_notice(words.brought_back(opened.path, other))
        return self._reopened()

    def _replace_damaged(self, damaged: OpenedLog) -> OpenedLog:
        damaged = self._in_place(damaged)
        self._opened = None
        damaged.close()
        self._aside = set_aside(damaged.path)
        return self._reopened()

    def _reopened(self) -> OpenedLog:
        """Fails with the file set aside still to be salvaged, for the next attempt."""
        opened = self._outside.reopen()
        try:
            self._bring_over(opened)
        except BaseException:
            opened.close()  # or the next attempt would find the file held
            raise
        self._opened = opened
        if self._is_held_elsewhere:
            self._is_held_elsewhere = False
            self._glance.close()
            self._outside.on_notice(words.took_over(opened.path))
        return opened

    def _bring_over(self, opened: OpenedLog) -> None:
        if self._aside is not None:
            rows = rescue(self._aside, opened.connection, self._outside.rebuild())
            self._outside.on_notice(words.set_aside(opened.path, self._aside, rows))
            self._aside = None

    def _done(self, pending: list[Write]) -> None:
        with self._state:
            self._unwritten -= len(pending)
            self._state.notify_all()
        pending.clear()

    def _wait_to_retry(self) -> None:
        with self._state:
            self._state.wait_for(lambda: self._closing, self._retry_s)
