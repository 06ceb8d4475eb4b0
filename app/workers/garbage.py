"""Python's garbage is collected in the thread of the window only.

A collection strikes in whichever thread allocates at that moment. In a worker it would destroy
widgets that nobody needs any more while the window's thread works on them: the two then wait for
each other for ever (seen: one holds Python, the other Qt's signal lock).
"""

from __future__ import annotations

import gc

from PySide6.QtCore import QObject, QTimer

_LOOK_EVERY_MS = 500
LOOKS_LEFT_OUT = 20  # at most, while the program loads
_OLDEST = 2


class WindowGarbage(QObject):
    """Takes the collection over from Python; `stop` gives it back."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._left_out = 0
        self._is_set_aside = False  # remembered, since asking takes as long as there is much
        self._timer = QTimer(self)
        self._timer.timeout.connect(self.look)

    def start(self) -> None:
        """From the thread of the window."""
        gc.disable()
        self._timer.start(_LOOK_EVERY_MS)

    def stop(self) -> None:
        """Harmless twice."""
        self._timer.stop()
        gc.enable()

    def look(self) -> None:
        """Collects the oldest generation that is due, as Python itself would have.

        Not before what is loaded has been set aside (`gc.freeze`): going through all libraries
        would stop the window for 50 ms while it fills, and find next to nothing.
        """
        self._is_set_aside = self._is_set_aside or gc.get_freeze_count() > 0
        if not self._is_set_aside and self._left_out < LOOKS_LEFT_OUT:
            self._left_out += 1
            return
        due = [
            generation
            for generation, (count, limit) in enumerate(
                zip(gc.get_count(), gc.get_threshold(), strict=True)
            )
            if limit and count > limit
        ]
        if due:
            gc.collect(min(max(due), _OLDEST))
