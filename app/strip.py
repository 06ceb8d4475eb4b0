"""The strip along the top: where, when, and how it looks."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtWidgets import QHBoxLayout, QPushButton, QWidget

from app.theme.theme import SCALES, Theme
from app.widgets.choice import Choice
from app.widgets.text import Text
from app.widgets.utcclock import UtcClock
from core.sky.coordinates import format_latitude, format_longitude
from core.sky.site import Site


class Strip(QWidget):
    def __init__(
        self, theme: Theme, now: Callable[[], float], parent: QWidget | None = None
    ) -> None:
        """`now`: seconds since 1970-01-01 UTC."""
        super().__init__(parent)
        self.setObjectName("strip")
        self._theme = theme
        self._place = Text()
        looks = [("day", self.tr("Day")), ("dark", self.tr("Dark")), ("night", self.tr("Night"))]
        self._looks = Choice(self.tr("Look"), looks)
        self._looks.show_choice(theme.look.name)
        self._looks.chosen.connect(theme.choose)
        self._size = QPushButton()
        self._size.setToolTip(self.tr("Larger text; after the largest comes the usual size again"))
        self._size.clicked.connect(self._next_size)
        row = QHBoxLayout(self)
        row.setContentsMargins(16, 6, 12, 6)
        row.setSpacing(16)
        row.addWidget(self._place, 1)
        row.addWidget(UtcClock(now))
        row.addWidget(self._looks)
        row.addWidget(self._size)
        self.show_site(None)
        self._name_size()

    def show_site(self, site: Site | None) -> None:
        if site is None:
            self._place.setText(self.tr("No place yet"))
            return
        where = f"{format_latitude(site.latitude_deg)}, {format_longitude(site.longitude_deg)}"
        self._place.setText(f"{site.name}  {where}" if site.name else where)

    def _next_size(self) -> None:
        after = SCALES.index(self._theme.scale) + 1
        self._theme.enlarge(SCALES[after % len(SCALES)])
        self._name_size()

    def _name_size(self) -> None:
        words = self.tr("Text {percent} %").format(percent=round(self._theme.scale * 100))
        self._size.setText(words)
        self._size.setAccessibleName(words)
