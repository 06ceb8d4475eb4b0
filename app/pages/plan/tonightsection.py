"""The night on one line of time, and as a list."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QListWidget, QVBoxLayout, QWidget

from app.pages.plan import pictures
from app.pages.plan.agenda import agenda
from app.pages.plan.mountchoice import MountChoice
from app.pages.plan.study import Study
from app.session.plans import Plans
from app.theme.theme import Theme
from app.widgets.nightview import NightView
from app.widgets.reflow import Reflow
from app.widgets.text import Panel, Text
from core.sky.clocks import Zone


class TonightSection(QWidget):
    """`picked` carries a moment, Unix seconds."""

    picked = Signal(float)

    def __init__(self, plans: Plans, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._night = NightView(self.tr("The night on one line of time"), theme)
        self._night.picked.connect(self.picked)
        self._list = QListWidget()
        self._list.setAccessibleName(self.tr("What happens tonight, in order of time"))
        self._list.setWordWrap(True)
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.setMinimumHeight(260)
        self._mounts = MountChoice(plans)
        self._notice = Text("", "small")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Reflow((self._line_panel(), self._list_panel()), 940, (5, 3)))

    def _line_panel(self) -> Panel:
        panel = Panel()
        panel.column.addWidget(self._night, 1)
        return panel

    def _list_panel(self) -> Panel:
        panel = Panel(self.tr("In order of time"))
        panel.column.addWidget(self._list, 1)
        panel.column.addWidget(self._notice)
        panel.column.addWidget(self._mounts)
        return panel

    def night(self) -> NightView:
        return self._night

    def lines(self) -> list[str]:
        return [self._list.item(row).text() for row in range(self._list.count())]

    def mounts(self) -> MountChoice:
        return self._mounts

    def show_study(self, study: Study, zone: Zone) -> None:
        self._night.show_picture(pictures.tonight(study, zone))
        self._night.show_moment(study.moment_utc_s)
        lines = agenda(study, zone)
        if lines != self.lines():
            self._list.clear()
            self._list.addItems(lines)
        self._notice.say(study.checklist.notice)
        self._mounts.show_plans()
