"""The ways to get readings, when there are none yet."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.theme.theme import Theme
from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.sketch import Sketch
from app.widgets.text import Panel, Text


class WaysIn(QWidget):
    """Says what the page is for. `chosen` carries "log", "hand" or "practice"."""

    chosen = Signal(str)
    site_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._buttons: dict[str, Key] = {}
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        column.addWidget(
            Text(self.tr("Where does the axis point, and what do I turn?"), "question")
        )
        column.addWidget(Text(self._explanation()))
        self._where = self._where_panel()
        column.addWidget(self._where)
        column.addWidget(Reflow([self._way(*way) for way in self._ways()], 760))
        column.addWidget(Sketch(theme), 1)

    def _explanation(self) -> str:
        return self.tr(
            "A star that is tracked by a mount with a crooked axis creeps slowly north or south. "
            "Watch how far one creeps near the meridian, then another low in the east or west: "
            "from the two, this page works out where the axis points and which bolt to turn."
        )

    def _ways(self) -> tuple[tuple[str, str, str], ...]:
        return (
            (
                "practice",
                self.tr("Practice sky"),
                self.tr("No telescope needed: a made-up mount to align in five minutes."),
            ),
            (
                "hand",
                self.tr("Type readings by hand"),
                self.tr("At a reticle eyepiece or a live view: type the offset, press one key."),
            ),
            (
                "log",
                self.tr("Import a drift log"),
                self.tr("A CSV file with times and offsets of one or more stars."),
            ),
        )

    def _way(self, key: str, title: str, sentence: str) -> Panel:
        panel = Panel()
        button = Key(title)
        button.setProperty("kind", "primary" if key == "practice" else "")
        button.setAccessibleDescription(sentence)
        button.clicked.connect(lambda: self.chosen.emit(key))
        self._buttons[key] = button
        panel.column.addWidget(button)
        panel.column.addWidget(Text(sentence, "quiet"))
        return panel

    def _where_panel(self) -> Panel:
        panel = Panel(self.tr("Where are you?"))
        panel.column.addWidget(
            Text(self.tr("Your latitude and longitude are needed to read the sky."))
        )
        self._to_site = Key(self.tr("Enter your site"))
        self._to_site.clicked.connect(self.site_wanted)
        panel.column.addWidget(self._to_site, 0, Qt.AlignmentFlag.AlignLeft)
        return panel

    def show_site_known(self, known: bool) -> None:
        """Without a site, the first step is to give one."""
        self._where.setVisible(not known)

    def site_button(self) -> Key:
        return self._to_site

    def button(self, key: str) -> Key:
        return self._buttons[key]
