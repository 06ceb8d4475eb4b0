"""What the Pole page says before there is a site."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.pole.charts import field_chart
from app.pages.pole.standing import Standing
from app.theme.theme import Theme
from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.roundchart import RoundChart
from app.widgets.text import Panel, Text
from core.alignment.polarscope.view import View


class Empty(QWidget):
    """Beside the first step, the stars round the pole of an invented site."""

    site_wanted = Signal()
    practice_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._chart = RoundChart(theme, self.tr("Example: the stars around the pole"))
        self._to_site = Key(self.tr("Enter your site"), "primary")
        self._practice = Key(self.tr("Look round at an invented site"))
        self._to_site.clicked.connect(self.site_wanted)
        self._practice.clicked.connect(self.practice_wanted)
        words = self.tr(
            "How high to set the axis, where the pole star stands in a polar-axis sight, and how "
            "to come near the pole when it is hidden: all that follows from where you are."
        )
        panel = Panel()
        panel.column.addWidget(Text(words))
        for key in (self._to_site, self._practice):
            panel.column.addWidget(key, 0, Qt.AlignmentFlag.AlignLeft)
        example = QWidget()
        column = QVBoxLayout(example)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._chart)
        words = self.tr("Example: the stars round the pole at an invented site.")
        column.addWidget(Text(words, "small"))
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(Reflow((panel, example), 760, at_top=True))

    def show_example(self, standing: Standing) -> None:
        self._chart.show_chart(field_chart(standing, View.ERECT, 180.0, 0))

    def site_button(self) -> Key:
        return self._to_site

    def practice_button(self) -> Key:
        return self._practice
