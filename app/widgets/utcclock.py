"""The date and time in UTC, ticking while it is seen."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

from PySide6.QtWidgets import QWidget

from app.widgets.text import Text
from app.widgets.ticking import Ticking


class UtcClock(Text):
    def __init__(self, now: Callable[[], float], parent: QWidget | None = None) -> None:
        """`now`: seconds since 1970-01-01 UTC."""
        super().__init__("", "quiet", parent)
        self.setWordWrap(False)
        self.setAccessibleName(self.tr("Time in UTC"))
        self._ticking = Ticking(self, now, self._show_time)
        self._show_time(now())

    def _show_time(self, utc_s: float) -> None:
        shown = datetime.fromtimestamp(utc_s, UTC).strftime("%Y-%m-%d  %H:%M:%S")
        self.setText(self.tr("{time} UTC").format(time=shown))
