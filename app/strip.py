"""The strip along the top: where, when, and how it looks."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.theme.theme import SCALES, Theme
from app.widgets.choice import Choice
from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.text import Text
from app.widgets.utcclock import UtcClock
from core.sky.coordinates import format_latitude, format_longitude
from core.sky.site import Site


class Strip(QWidget):
    """`help_wanted`: on the page in view, or no longer."""

    help_wanted = Signal()

    def __init__(
        self, theme: Theme, now: Callable[[], float], parent: QWidget | None = None
    ) -> None:
        """`now`: seconds since 1970-01-01 UTC."""
        super().__init__(parent)
        self.setObjectName("strip")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._theme = theme
        self._place = Text()
        self._looks = Choice(
            self.tr("Look"),
            [("day", self.tr("Day")), ("dark", self.tr("Dark")), ("night", self.tr("Night"))],
        )
        self._size = Key()
        self._size.setToolTip(self.tr("Larger text; after the largest comes the usual size again"))
        self._help = Key(self.tr("Help"))
        self._help.setToolTip(self.tr("Help on this page, words and keys (F1)"))
        self._help.setShortcut("F1")
        self._help.clicked.connect(self.help_wanted)
        self._looks.chosen.connect(theme.choose)
        self._size.clicked.connect(self._next_size)
        theme.changed.connect(self._show_theme)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 6, 12, 6)
        column.addWidget(Reflow((self._where_when(now), self._looking()), 860, (1, 0)))
        self.show_site(None)
        self._show_theme()

    def _where_when(self, now: Callable[[], float]) -> QWidget:
        part = QWidget()
        row = QHBoxLayout(part)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(16)
        row.addWidget(self._place, 1)
        row.addWidget(UtcClock(now))
        return part

    def _looking(self) -> QWidget:
        part = QWidget()
        row = QHBoxLayout(part)
        row.setContentsMargins(0, 0, 0, 0)
        row.addStretch()
        row.addWidget(self._looks)
        row.addSpacing(8)
        row.addWidget(self._size)
        row.addWidget(self._help)
        return part

    def help_button(self) -> Key:
        return self._help

    def show_site(self, site: Site | None) -> None:
        if site is None:
            self._place.setText(self.tr("No place yet"))
            return
        where = f"{format_latitude(site.latitude_deg)}, {format_longitude(site.longitude_deg)}"
        self._place.setText(f"{site.name}\n{where}" if site.name else where)

    def _next_size(self) -> None:
        after = SCALES.index(self._theme.scale) + 1
        self._theme.enlarge(SCALES[after % len(SCALES)])

    def _show_theme(self) -> None:
        self._looks.show_choice(self._theme.look.name)
        words = self.tr("Text {percent} %").format(percent=round(self._theme.scale * 100))
        self._size.setText(words)
        self._size.setAccessibleName(words)
