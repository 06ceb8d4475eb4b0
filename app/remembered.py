"""Where the window stood and how large it was, from one night to the next."""

from __future__ import annotations

from PySide6.QtCore import QByteArray, QSettings, QSize
from PySide6.QtWidgets import QWidget

KEY = "window"
FIRST_SIZE = QSize(1280, 800)  # pixels: every page shows its answer without scrolling
OF_THE_SCREEN = 0.92  # the rest is for the frame, which is not known before it is drawn


def first_size(screen: QSize) -> QSize:
    """How large the window is before anyone has said: as wanted, or what the screen has room for.

    Left to itself, the toolkit would take two thirds of a small screen.
    """
    return FIRST_SIZE.boundedTo(screen * OF_THE_SCREEN)


class Remembered:
    """Puts the window where it was; `keep` remembers where it is."""

    def __init__(self, window: QWidget, settings: QSettings) -> None:
        self._window = window
        self._settings = settings
        kept = settings.value(KEY)
        if not (isinstance(kept, QByteArray) and window.restoreGeometry(kept)):
            window.resize(first_size(window.screen().availableSize()))

    def keep(self) -> None:
        self._settings.setValue(KEY, self._window.saveGeometry())
