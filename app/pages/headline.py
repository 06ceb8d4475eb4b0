"""The question of a page, and whether its times are the place's own or UTC."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QWidget

from app.session.evening import Evening
from app.widgets.text import Text
from app.widgets.tick import Tick


class Headline(QWidget):
    def __init__(self, question: str, evening: Evening, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._evening = evening
        self._zone = Text("", "small")
        self._zone.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._clock = Tick(self.tr("UTC"), self.tr("Show times in UTC"))
        self._clock.ticked.connect(evening.show_utc)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(10)
        row.addWidget(Text(question, "question"), 1)
        row.addWidget(self._zone, 1)
        row.addWidget(self._clock)
        evening.changed.connect(self._show)
        self._show()

    def clock_key(self) -> Tick:
        return self._clock

    def zone_words(self) -> str:
        return self._zone.text()

    def _show(self) -> None:
        around = self._evening.around()
        self._clock.setVisible(around is not None)
        self._clock.show_tick(self._evening.shows_utc())
        self._zone.say(self._words())

    def _words(self) -> str:
        around = self._evening.around()
        if around is None:
            return ""
        if self._evening.shows_utc():
            return self.tr("Times are in UTC.")
        if around.zone_note:
            return around.zone_note
        zone = around.zone
        return self.tr("Times of {zone}, {offset}.").format(
            zone=zone.name, offset=zone.offset_words(self._evening.now())
        )
