"""The Site page: where are you, and what is the air like?"""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.pages.sitereading import Reading, Typed, read_site
from app.widgets.field import Field
from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.scrolled import Scrolled
from app.widgets.text import Panel, Text
from core.sky.coordinates import UnusableCoordinates, format_latitude, format_longitude, parse_pair
from core.sky.site import Air, Site

PLACE = ("name", "latitude", "longitude", "elevation")
AIR = ("temperature", "pressure")


class SitePage(QWidget):
    """`site_given` carries a Site and an Air, both checked."""

    site_given = Signal(object, object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._fields = self._made_fields()
        self._use = Key(self.tr("Use this site"), "primary")
        self._use.clicked.connect(self._submit)
        self._answer = Text()
        self._answer.hide()
        for field in self._fields.values():
            field.edited.connect(self._edited)
            field.submitted.connect(self._submit)
        for name in ("latitude", "longitude"):
            self._fields[name].left.connect(self._share_pair)
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(Scrolled(self._arranged()))
        self.setFocusProxy(self._fields["name"])

    def _made_fields(self) -> dict[str, Field]:
        return {
            "name": Field(self.tr("Name, as you like it")),
            "latitude": Field(self.tr("Latitude"), self.tr("48.137  or  48 08 14 N")),
            "longitude": Field(self.tr("Longitude"), self.tr("11.575  or  11 34 30 E")),
            "elevation": Field(self.tr("Elevation above the sea, in metres"), "520"),
            "temperature": Field(self.tr("Temperature, in °C"), self.tr("empty: 10 assumed")),
            "pressure": Field(
                self.tr("Pressure at the station, in hPa"),
                self.tr("empty: from the elevation"),
            ),
        }

    def _arranged(self) -> QWidget:
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(24, 20, 24, 20)
        column.setSpacing(12)
        column.addWidget(Text(self.tr("Where are you?"), "question"))
        column.addWidget(
            Text(
                self.tr(
                    "The pole stands as high as your latitude, and the stars turn by your "
                    "longitude. A hundredth of a degree is good enough."
                ),
                "quiet",
            )
        )
        column.addWidget(Reflow((self._place_panel(), self._air_panel()), 760))
        column.addLayout(self._last_row())
        column.addStretch()
        return content

    def _place_panel(self) -> Panel:
        panel = Panel(self.tr("Place"))
        for name in PLACE:
            panel.column.addWidget(self._fields[name])
        return panel

    def _air_panel(self) -> Panel:
        panel = Panel(self.tr("Air"))
        for name in AIR:
            panel.column.addWidget(self._fields[name])
        panel.column.addWidget(
            Text(
                self.tr(
                    "Air lifts the stars and the pole itself. The pressure is what a barometer "
                    "shows where you stand; forecasts give it reduced to sea level, which is "
                    "too high on a mountain."
                ),
                "small",
            )
        )
        panel.column.addStretch()
        return panel

    def _last_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(16)
        row.addWidget(self._use, 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(self._answer, 1)
        row.addStretch()
        return row

    def show_site(self, site: Site | None, air: Air | None) -> None:
        """The site in use. What is being typed is not overwritten by the same site again."""
        if site is None:
            return
        self._fields["name"].show_text(site.name)
        self._fields["latitude"].show_text(format_latitude(site.latitude_deg))
        self._fields["longitude"].show_text(format_longitude(site.longitude_deg))
        self._fields["elevation"].show_text(f"{site.elevation_m:g}")
        if air is not None:
            self._fields["temperature"].show_text(f"{air.temperature_c:g}")
            known = "" if air.pressure_is_assumed else f"{air.pressure_hpa:g}"
            self._fields["pressure"].show_text(known)
        self._tell(self._read())

    def field(self, name: str) -> Field:
        return self._fields[name]

    def use_button(self) -> Key:
        return self._use

    def answer(self) -> str:
        return self._answer.text()

    def _typed(self) -> Typed:
        return Typed(**{name: field.text() for name, field in self._fields.items()})

    def _read(self) -> Reading:
        return read_site(self._typed())

    def _edited(self) -> None:
        """While a field is being typed only what is understood shows; complaints wait for Enter."""
        self._answer.say("")
        reading = self._read()
        for name, field in self._fields.items():
            if name not in reading.wrong:
                field.note(_unlike(reading.understood.get(name, ""), field.text()))

    def _share_pair(self) -> None:
        """Both coordinates pasted into one field go where they belong."""
        reading = self._read()
        for name in ("latitude", "longitude"):
            if name not in reading.wrong:
                continue
            try:
                latitude_deg, longitude_deg = parse_pair(self._fields[name].text())
            except UnusableCoordinates:
                continue
            self._fields["latitude"].show_text(format_latitude(latitude_deg))
            self._fields["longitude"].show_text(format_longitude(longitude_deg))
            self._edited()
            return

    def _submit(self) -> None:
        self._share_pair()
        reading = self._read()
        self._tell(reading)
        if reading.site is None or reading.air is None:
            first = next(name for name in self._fields if name in reading.wrong)
            self._answer.say(self.tr("Not yet: see the dashed fields."))
            self._fields[first].setFocus()
            self._fields[first].select_all()
            return
        self._answer.say(self.tr("In use. Go on to Drift."))
        self.site_given.emit(reading.site, reading.air)

    def _tell(self, reading: Reading) -> None:
        for name, field in self._fields.items():
            if name in reading.wrong:
                field.complain(reading.wrong[name])
            else:
                field.note(_unlike(reading.understood.get(name, ""), field.text()))


def _unlike(understood: str, typed: str) -> str:
    """What is understood, unless it says the same as what was typed."""
    return "" if understood == typed else understood
