"""Keeping the screen on while a star is watched, by what each system offers for it."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Callable
from typing import Protocol

# SetThreadExecutionState of the Windows API: until further notice, and the display with it.
ES_CONTINUOUS, ES_DISPLAY_REQUIRED = 0x80000000, 0x00000002


class Holder(Protocol):
    """Keeps the screen on between `hold` and `release`."""

    def hold(self) -> None: ...

    def release(self) -> None: ...


class MacHolder:
    """Runs the system's own `caffeinate`, which ends with this program at the latest."""

    def __init__(self, start: Callable[[list[str]], subprocess.Popen[bytes]]) -> None:
        self._start = start
        self._running: subprocess.Popen[bytes] | None = None

    def hold(self) -> None:
        self._running = self._start(["caffeinate", "-d", "-w", str(os.getpid())])

    def release(self) -> None:
        if self._running is not None:
            self._running.terminate()
            self._running.wait()
            self._running = None


class WindowsHolder:
    """Tells Windows that the display is needed."""

    def hold(self) -> None:
        self._tell(ES_CONTINUOUS | ES_DISPLAY_REQUIRED)

    def release(self) -> None:
        self._tell(ES_CONTINUOUS)

    def _tell(self, state: int) -> None:
        if sys.platform == "win32":
            import ctypes

            ctypes.windll.kernel32.SetThreadExecutionState(state)


def find_holder() -> Holder | None:
    """None where the system offers nothing: then its own settings decide."""
    if sys.platform == "win32":
        return WindowsHolder()
    if sys.platform == "darwin":
        return MacHolder(subprocess.Popen) if shutil.which("caffeinate") else None
    from app.signals.desktopbus import holder_of_session

    return holder_of_session()


class Awake:
    """Looks for a holder when it is first needed."""

    def __init__(self, find: Callable[[], Holder | None] = find_holder) -> None:
        self._find = find
        self._holder: Holder | None = None
        self._is_held = False

    def keep(self, awake: bool) -> None:
        """May be called at every change; asks the system only when something has to change."""
        if awake == self._is_held:
            return
        self._is_held = awake
        if self._holder is None:
            self._holder = self._find()
        if self._holder is not None:
            (self._holder.hold if awake else self._holder.release)()
