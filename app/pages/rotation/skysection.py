"""The sky as a map of field rotation, with the night of the target beside it."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QWidget

from app.pages.rotation import pictures
from app.pages.rotation.skymaps import rate_words
from app.pages.rotation.skypictures import EXPOSURE, RATE, ZENITH, dome
from app.pages.rotation.study import Study
from app.pages.rotation.verdictwords import never_seen
from app.theme.theme import Theme
from app.widgets.choice import Choice
from app.widgets.dome import Dome
from app.widgets.nightview import NightView
from app.widgets.reflow import Reflow
from app.widgets.spans import limit_words
from app.widgets.text import Panel, Text
from core.imaging.rotation import rate_deg_per_hour
from core.imaging.rotationexposure import longest_map_s
from core.sky.clocks import Zone


class SkySection(QWidget):
    """`picked` carries a moment, Unix seconds."""

    picked = Signal(float)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._study: Study | None = None
        self._zone: Zone | None = None
        self._maps = Choice(
            self.tr("Map"),
            [
                (RATE, self.tr("Rate")),
                (EXPOSURE, self.tr("Exposure")),
                (ZENITH, self.tr("Zenith enlarged")),
            ],
        )
        self._maps.show_choice(RATE)
        self._dome = Dome(self.tr("Map of the sky above"), theme)
        self._told = Text("", "small")
        self._key = Text("", "small")
        self._night = NightView(self.tr("Field rotation through the night"), theme)
        self._maps.chosen.connect(lambda _map: self._show_map())
        self._dome.told.connect(self._tell)
        self._night.picked.connect(self.picked)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(Reflow((self._map_panel(), self._night_panel()), 900, (5, 6)))

    def _map_panel(self) -> Panel:
        panel = Panel()
        panel.column.addWidget(self._maps)
        panel.column.addWidget(self._dome, 1)
        panel.column.addWidget(self._told)
        panel.column.addWidget(self._key)
        return panel

    def _night_panel(self) -> Panel:
        panel = Panel()
        self._empty = Text("", "side")
        panel.column.addWidget(self._empty)
        panel.column.addWidget(self._night, 1)
        return panel

    def dome(self) -> Dome:
        return self._dome

    def maps(self) -> Choice:
        return self._maps

    def night(self) -> NightView:
        return self._night

    def told(self) -> str:
        return self._told.text()

    def show_study(self, study: Study, zone: Zone) -> None:
        self._study, self._zone = study, zone
        self._night.show_picture(pictures.turning(study, zone))
        self._night.show_moment(study.moment_utc_s)
        self._empty.say(self._why_empty(study))
        self._night.setVisible(not self._empty.text())
        self._show_map()

    def _why_empty(self, study: Study) -> str:
        if study.way is None:
            return self.tr(
                "Choose a target above: its path, and how the field turns along it, show here."
            )
        return never_seen(study, study.way)

    def _show_map(self) -> None:
        if self._study is None or self._zone is None:
            return
        kind = self._maps.choice()
        reader = self._exposure_at if kind == EXPOSURE else self._rate_at
        self._dome.show_picture(dome(kind, self._study, self._zone), reader)
        self._key.say(f"{self._lines(kind)} {self._way_round()}")
        self._tell("")

    def _tell(self, sentence: str) -> None:
        """The line stays where it is, so that nothing jumps under the pointer."""
        self._told.setText(sentence or self.tr("Point into the map to read it."))

    def _way_round(self) -> str:
        return self.tr(
            "North is up and east on the right, as on a map of the ground. Hatched at the rim: "
            "obstructions; crossed: too fast for the drive."
        )

    def _lines(self, kind: str) -> str:
        assert self._study is not None
        if kind == EXPOSURE:
            return self.tr(
                "Lines of equal longest exposure for {smear:g} px of smear in the corner."
            ).format(smear=self._study.question.smear_px)
        if not self._study.rates.levels:
            return self.tr("At a pole of the Earth the field does not turn at all.")
        return self.tr(
            "Lines of equal field rotation: whole where the parallactic angle grows (+), broken "
            "where it falls (−)."
        )

    def _rate_at(self, azimuth_deg: float, altitude_deg: float) -> str:
        assert self._study is not None
        around = self._study.question.around
        rate = rate_deg_per_hour(around.site.latitude_deg, azimuth_deg, altitude_deg, around.air)
        return self.tr("the field turns {rate}").format(rate=rate_words(float(rate)))

    def _exposure_at(self, azimuth_deg: float, altitude_deg: float) -> str:
        assert self._study is not None
        latitude = self._study.question.around.site.latitude_deg
        longest = longest_map_s(latitude, azimuth_deg, altitude_deg, self._study.allowed_deg)
        return self.tr("expose {time} at most").format(time=limit_words(float(longest)))
