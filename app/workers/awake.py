"""Keeping the screen on by a program of the system that does it as long as it runs."""

from __future__ import annotations

import os
import shutil
import subprocess
import sys
from collections.abc import Callable, Sequence
from typing import Protocol

from PySide6.QtCore import QObject, QTimer, Signal

from core.language import marked, say

LOOK_MS = 1500  # a helper that the system refuses ends within this


class HelperHolder:
    """`command` ends with this program at the latest."""

    def __init__(
        self, command: Sequence[str], start: Callable[..., subprocess.Popen[bytes]]
    ) -> None:
        self._command = list(command)
        self._start = start
        self._running: subprocess.Popen[bytes] | None = None
        self._failed: Callable[[], None] | None = None
        self._look = QTimer()
        self._look.setSingleShot(True)
        self._look.setInterval(LOOK_MS)
        self._look.timeout.connect(self.look)

    def hold(self, failed: Callable[[], None]) -> None:
        """Started, and looked at a little later."""
        quiet = subprocess.DEVNULL
        self._failed = failed
        try:
            self._running = self._start(self._command, stdin=quiet, stdout=quiet, stderr=quiet)
        except OSError:
            failed()
            return
        self._look.start()

    def look(self) -> None:
        """Whether it is still running."""
        if self._running is not None and self._running.poll() is not None:
            self._running = None
            if self._failed is not None:
                self._failed()

    def release(self) -> None:
        self._look.stop()
        if self._running is not None:
            self._running.terminate()
            self._running.wait()
            self._running = None


# Keeping the screen on while a star is watched, by what each system offers for it.

# SetThreadExecutionState of the Windows API: until further notice, and the display with it.
ES_CONTINUOUS, ES_DISPLAY_REQUIRED = 0x80000000, 0x00000002
WHY = marked("A star is being watched")

Failed = Callable[[], None]


class Holder(Protocol):
    """Keeps the screen on between `hold` and `release`; never waits for the system's answer.

    `failed` is called, at once or later, when the system will not do it.
    """

    def hold(self, failed: Failed) -> None: ...

    def release(self) -> None: ...


class WindowsHolder:
    """Tells Windows that the display is needed. `tell` gives 0 when Windows refuses."""

    def __init__(self, tell: Callable[[int], int]) -> None:
        self._tell = tell

    def hold(self, failed: Failed) -> None:
        if self._tell(ES_CONTINUOUS | ES_DISPLAY_REQUIRED) == 0:
            failed()

    def release(self) -> None:
        self._tell(ES_CONTINUOUS)


def _tell_windows(state: int) -> int:
    if sys.platform != "win32":
        return 0
    import ctypes

    return int(ctypes.windll.kernel32.SetThreadExecutionState(state))


def holders(
    platform: str = sys.platform, which: Callable[[str], str | None] = shutil.which
) -> Sequence[Callable[[], Holder | None]]:
    """Makers of what this system may offer, the best first; each gives None where it is not there.

    macOS has `caffeinate`; Linux its desktop's screen saver over D-Bus, or `systemd-inhibit`, which
    keeps the machine from counting as idle.
    """
    if platform == "win32":
        return (lambda: WindowsHolder(_tell_windows),)
    own_id = str(os.getpid())
    if platform == "darwin":
        return (_helper(which, ("caffeinate", "-d", "-w", own_id)),)
    inhibit = (
        "systemd-inhibit",
        "--what=idle",
        "--who=Poleward",
        f"--why={say(WHY)}",
        "--mode=block",
    )
    until_we_end = ("tail", f"--pid={own_id}", "-f", "/dev/null")
    return (_screen_saver, _helper(which, (*inhibit, *until_we_end)))


def _helper(
    which: Callable[[str], str | None], command: Sequence[str]
) -> Callable[[], Holder | None]:
    def make() -> Holder | None:
        return HelperHolder(command, subprocess.Popen) if which(command[0]) else None

    return make


def _screen_saver() -> Holder | None:
    from app.workers.desktopbus import holder_of_session

    return holder_of_session(say(WHY))


class Awake(QObject):
    """Takes the first holder that does it. `changed`: whether the screen is held is different."""

    changed = Signal()

    def __init__(
        self,
        makers: Callable[[], Sequence[Callable[[], Holder | None]]] = holders,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._makers = makers
        self._left: list[Callable[[], Holder | None]] | None = None
        self._holder: Holder | None = None
        self._is_wanted = False
        self._has_failed = False

    def keep(self, awake: bool) -> None:
        """May be called at every change; asks the system only when something has to change."""
        if awake == self._is_wanted:
            return
        self._is_wanted = awake
        if not awake:
            if self._holder is not None:
                self._holder.release()
            return
        if self._holder is not None:
            self._holder.hold(self._failed)
        else:
            self._try_next()

    def note(self) -> str:
        """What the person has to do by hand, empty when all is well."""
        if not self._has_failed:
            return ""
        return say(
            "This computer offers no way to keep its screen on: switch off screen saver and sleep "
            "in its settings while you watch a star."
        )

    def _failed(self) -> None:
        if self._holder is not None:
            self._holder.release()
        self._holder = None
        if self._is_wanted:
            self._try_next()

    def _try_next(self) -> None:
        if self._left is None:
            self._left = list(self._makers())
        while self._left:
            holder = self._left.pop(0)()
            if holder is not None:
                self._holder = holder
                holder.hold(self._failed)
                return
        if not self._has_failed:
            self._has_failed = True
            self.changed.emit()
