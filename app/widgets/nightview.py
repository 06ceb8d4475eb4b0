"""A picture of the night with the values of a moment below it, and a key to copy them all."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QApplication, QHBoxLayout, QVBoxLayout, QWidget

from app.theme.theme import Theme
from app.widgets.key import Key
from app.widgets.nightchart import NightChart
from app.widgets.nightpicture import NightPicture
from app.widgets.text import Text


class NightView(QWidget):
    """`picked` carries the moment a person picks, Unix seconds."""

    picked = Signal(float)

    def __init__(self, name: str, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._chart = NightChart(name, theme)
        self._told = Text(self.tr("Press on the picture, or use the arrow keys."), "small")
        self._copy = Key(self.tr("Copy values"))
        self._copy.setAccessibleName(self.tr("Copy the values of: {name}").format(name=name))
        self._copy.setToolTip(self.tr("All values on the clipboard, for a table program"))
        self._chart.picked.connect(self.picked)
        self._chart.told.connect(self._told.say)
        self._copy.clicked.connect(self._copied)
        foot = QHBoxLayout()
        foot.addWidget(self._told, 1)
        foot.addWidget(self._copy)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addWidget(self._chart, 1)
        column.addLayout(foot)
        policy = self.sizePolicy()  # what stands above it stays where it is
        policy.setRetainSizeWhenHidden(True)
        self.setSizePolicy(policy)

    def chart(self) -> NightChart:
        return self._chart

    def told(self) -> str:
        return self._told.text()

    def copy_button(self) -> Key:
        return self._copy

    def show_picture(self, picture: NightPicture | None) -> None:
        self._chart.show_picture(picture)
        self._copy.setEnabled(picture is not None and picture.has_values)

    def show_moment(self, utc_s: float) -> None:
        self._chart.show_moment(utc_s)

    def _copied(self) -> None:
        picture = self._chart.picture()
        if picture is not None:
            QApplication.clipboard().setText(picture.as_text())
