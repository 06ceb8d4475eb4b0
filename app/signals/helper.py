"""Keeping the screen on by a program of the system that does it as long as it runs."""

from __future__ import annotations

import subprocess
from collections.abc import Callable, Sequence

from PySide6.QtCore import QTimer

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
