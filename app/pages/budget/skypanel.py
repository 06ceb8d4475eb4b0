"""Smear over the whole sky, and the target's way through it."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.budget.question import Answer, Floats
from app.theme.theme import Theme
from app.widgets.choice import Choice
from app.widgets.skydisc import SkyDisc
from app.widgets.text import Text
from core.sky.compass import direction_words

CORNER, CENTRE = "corner", "centre"


class SkyPanel(QWidget):
    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._answer: Answer | None = None
        self.places = Choice(
            self.tr("Place in the picture"),
            [(CORNER, self.tr("Corner")), (CENTRE, self.tr("Centre"))],
        )
        self.places.show_choice(CORNER)
        self.disc = SkyDisc(theme, self.tr("Smear over the sky"))
        self._readout = Text(self.tr("Point at the sky, or use the arrow keys."), "small")
        self._legend = Text("", "small")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Text(self.tr("Smear over the sky"), "title"))
        column.addWidget(self.places)
        column.addWidget(self.disc, 1)
        column.addWidget(self._readout)
        column.addWidget(self._legend)
        self.places.chosen.connect(lambda _place: self._show())
        self.disc.pointed.connect(self._read)

    def readout(self) -> str:
        return self._readout.text()

    def show_answer(self, answer: Answer) -> None:
        self._answer = answer
        self._show()

    def _show(self) -> None:
        answer = self._answer
        if answer is None:
            return
        limit = answer.task.limit_px
        self.disc.show_sky(
            self._values(answer), limit, answer.sky.lowest_altitude_deg, answer.track
        )
        form = self.tr(
            "North on top, east on the right; down to {low:g}°. Hatched: more than {limit:g} "
            "pixels. Each shade is {step:.2g} of a pixel more. The thick line: the target, from "
            "the dot on."
        )
        words = form.format(low=answer.sky.lowest_altitude_deg, limit=limit, step=limit / 3.0)
        self._legend.say(words)
        cursor = self.disc.cursor_place()
        if cursor is not None:
            self._read(*cursor)

    def _values(self, answer: Answer) -> Floats:
        sky = answer.sky
        return sky.corner_px if self.places.choice() == CORNER else sky.centre_px

    def _read(self, azimuth_deg: float, altitude_deg: float) -> None:
        """Worked out for that very place: about the axis it changes within a pixel of the map."""
        answer = self._answer
        if answer is None or answer.sky.cell(azimuth_deg, altitude_deg) is None:
            return
        centre_px, corner_px = answer.sky.at(azimuth_deg, altitude_deg)
        form = self.tr("{direction}, {altitude:.0f}° high: {size:.2f} pixels")
        self._readout.setText(
            form.format(
                direction=direction_words(azimuth_deg),
                altitude=altitude_deg,
                size=corner_px if self.places.choice() == CORNER else centre_px,
            )
        )
