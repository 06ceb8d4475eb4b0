"""Putting the style sheet on the parts of the window: on what is seen at once, on the rest later.

A sheet on the whole application is laid again on every widget there is at each change of the look,
which takes longer the more pages there are. On the parts, only those seen have to be waited for.
"""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QWidget
from shiboken6 import isValid


class Dressing(QObject):
    """Whatever is not in one of the parts has the palette alone."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._sheet = ""
        self._parts: list[QWidget] = []
        self._stale: list[QWidget] = []
        self._idle = QTimer(self)
        self._idle.setInterval(0)
        self._idle.setSingleShot(True)
        self._idle.timeout.connect(self._dress_one)

    def add(self, part: QWidget) -> None:
        """A part to be dressed from now on, for as long as it exists."""
        self._parts.append(part)
        part.installEventFilter(self)
        part.setStyleSheet(self._sheet)

    def change(self, sheet: str) -> None:
        """What is seen changes before this returns, the rest one by one when there is time."""
        self._sheet = sheet
        self._parts = [part for part in self._parts if isValid(part)]
        self._stale = [part for part in self._parts if not part.isVisible()]
        for part in self._parts:
            if part not in self._stale:
                part.setStyleSheet(sheet)
        self._idle.start()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """A part that comes into view earlier is dressed then."""
        if event.type() == QEvent.Type.Show and watched in self._stale:
            self._dress(self._stale.index(watched))
        return super().eventFilter(watched, event)

    def _dress_one(self) -> None:
        if self._stale:
            self._dress(0)
            self._idle.start()

    def _dress(self, index: int) -> None:
        part = self._stale.pop(index)
        if isValid(part):
            part.setStyleSheet(self._sheet)
