"""The one thread that writes the log of nights."""

from __future__ import annotations

import sqlite3
import threading
import time
from collections import deque
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TypeVar

from app.storage import failures, sentences
from app.storage.bringback import bring_back
from app.storage.failures import GoneFromPlace
from app.storage.glance import Glance
from app.storage.holding import HeldElsewhere
from app.storage.opening import Opened, is_sound, rescue, set_aside
from app.storage.ownfiles import belongs_to_a_log_in_use
from app.storage.writes import Write, write_all
from core.language import say

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
    reopen: Callable[[], Opened]
    rebuild: Callable[[], list[Write]]
    on_trouble: Callable[[Exception | None], None]
    on_notice: Callable[[str], None]


class Writer:
    """Commits what it is given within moments; keeps it and tries again when the disk refuses."""

    def __init__(self, outside: Outside, retry_s: float = RETRY_S) -> None:
        self._outside = outside
        self._retry_s = retry_s
        self._opened: Opened | None = None
        self._glance = Glance(outside.path)
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

    def _ask(self, opened: Opened, question: Callable[[sqlite3.Connection], T]) -> T | None:
        try:
            return question(opened.connection)
        except (sqlite3.DatabaseError, ValueError, TypeError) as error:
            if not failures.is_nonsense(error):
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
            if not failures.is_damage(error):
                raise
            fresh = self._replace_damaged(opened)
            write_all(fresh.connection, pending)

    def _in_place(self, opened: Opened) -> Opened:
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
        self._outside.on_notice(sentences.brought_back(opened.path, other))
        return self._reopened()

    def _replace_damaged(self, damaged: Opened) -> Opened:
        damaged = self._in_place(damaged)
        self._opened = None
        damaged.close()
        self._aside = set_aside(damaged.path)
        return self._reopened()

    def _reopened(self) -> Opened:
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
            self._outside.on_notice(sentences.took_over(opened.path))
        return opened

    def _bring_over(self, opened: Opened) -> None:
        if self._aside is not None:
            rows = rescue(self._aside, opened.connection, self._outside.rebuild())
            self._outside.on_notice(sentences.set_aside(opened.path, self._aside, rows))
            self._aside = None

    def _done(self, pending: list[Write]) -> None:
        with self._state:
            self._unwritten -= len(pending)
            self._state.notify_all()
        pending.clear()

    def _wait_to_retry(self) -> None:
        with self._state:
            self._state.wait_for(lambda: self._closing, self._retry_s)
