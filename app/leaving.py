"""Closing the window while something that was measured is not on disk."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QApplication

from app.window import Window


class Leaving(QObject):
    """Asks before anything measured is lost; otherwise the window closes without a word.

    `is_kept` tells whether all is on disk and must not take long. `readings` gives what was
    measured as a drift log.
    """

    def __init__(
        self, window: Window, is_kept: Callable[[], bool], readings: Callable[[], str]
    ) -> None:
        super().__init__(window)
        self._window = window
        self._is_kept = is_kept
        self._readings = readings
        self._gives_up = False
        window.asking().answered.connect(self._answered)

    def may_close(self) -> bool:
        """Whether the window may go now; if not, it has asked."""
        if self._gives_up or self._is_kept():
            return True
        self._window.asking().ask(
            self.tr(
                "What you measured or wrote tonight is not on disk, because the log of nights "
                "cannot be written. If you close now, it is lost. Copied as a drift log, you can "
                "paste your readings into a text file and import them again."
            ),
            self.tr("Copy the readings and stay"),
            self.tr("Close and lose them"),
        )
        return False

    def _answered(self, copies: bool) -> None:
        if copies:
            QApplication.clipboard().setText(self._readings())
            return
        self._gives_up = True
        self._window.close()
