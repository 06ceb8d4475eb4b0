"""Where the window stood and how large it was, from one night to the next."""

from __future__ import annotations

from PySide6.QtCore import QByteArray, QSettings

from app.window import Window

KEY = "window"


class Remembered:
    """Puts the window where it was; `keep` remembers where it is."""

    def __init__(self, window: Window, settings: QSettings) -> None:
        self._window = window
        self._settings = settings
        kept = settings.value(KEY)
        if isinstance(kept, QByteArray):
            window.restoreGeometry(kept)

    def keep(self) -> None:
        self._settings.setValue(KEY, self._window.saveGeometry())
