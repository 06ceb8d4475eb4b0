"""The form of the Site page: the place and its air, checked and asked about."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.pages.site.reading import SiteEntry, Typed, read_site
from app.ui.form import Asking, Choice, Field, Key
from app.ui.text import Panel, Reflow, Text
from core.sky.coordinates import UnusableCoordinates, format_latitude, format_longitude, parse_pair
from core.sky.site import Air, Site

STATION, SEA_LEVEL = "station", "sea level"
ASKED = ("elevation", "temperature", "pressure")
ROW_PX = 380  # two fields stand side by side from here on


class SiteForm(QWidget):
    """`site_given` carries a Site and an Air, both checked. `edited`: something is being typed."""

    site_given = Signal(object, object)
    edited = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._meant: set[tuple[str, str]] = set()
        self._fields = self._made_fields()
        self._askings = {name: Asking() for name in ASKED}
        self._levels = Choice(
            self.tr("The pressure is"),
            [
                (STATION, self.tr("Pressure at the station")),
                (SEA_LEVEL, self.tr("Reduced to sea level")),
            ],
        )
        self._levels.show_choice(STATION)
        self._use = Key(self.tr("Use this site"), "primary")
        self._answer = Text()
        self._answer.hide()
        self._connect()
        self._arrange()

    def _made_fields(self) -> dict[str, Field]:
        return {
            "name": Field(self.tr("Name, as you like it")),
            "elevation": Field(self.tr("Elevation, in metres"), "520"),
            "latitude": Field(self.tr("Latitude"), self.tr("48.137  or  48 08 14 N")),
            "longitude": Field(self.tr("Longitude"), self.tr("11.575  or  11 34 30 E")),
            "temperature": Field(self.tr("Temperature, in °C"), self.tr("empty: 10 assumed")),
            "pressure": Field(self.tr("Pressure, in hPa"), self.tr("empty: default")),
        }

    def _connect(self) -> None:
        self._use.clicked.connect(self.submit)
        self._levels.chosen.connect(lambda _level: self._look_over())
        for name, field in self._fields.items():
            field.edited.connect(lambda _text, name=name: self._edited(name))
            field.left.connect(self._look_over)
            field.submitted.connect(self.submit)
        for name, asking in self._askings.items():
            asking.answered.connect(lambda is_yes, name=name: self._answered(name, is_yes))

    def _arrange(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        place = Panel(self.tr("Place"))
        place.column.addWidget(self._row("name", "elevation"))
        place.column.addWidget(self._askings["elevation"])
        place.column.addWidget(self._row("latitude", "longitude"))
        air = Panel(self.tr("Air"))
        air.column.addWidget(self._row("temperature", "pressure"))
        for part in (self._askings["temperature"], self._askings["pressure"]):
            air.column.addWidget(part)
        air.column.addWidget(self._levels)
        air.column.addWidget(Text(self._pressure_words(), "small"))
        column.addWidget(place)
        column.addWidget(air)
        column.addLayout(self._last_row())

    def _row(self, *names: str) -> Reflow:
        return Reflow([self._fields[name] for name in names], ROW_PX, at_top=True)

    def _pressure_words(self) -> str:
        return self.tr(
            "Air lifts the stars and the pole. A barometer shows the pressure at the station; "
            "weather reports give it reduced to sea level."
        )

    def _last_row(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(16)
        row.addWidget(self._use, 0, Qt.AlignmentFlag.AlignTop)
        row.addWidget(self._answer, 1)
        row.addStretch()
        return row

    def show_site(self, site: Site, air: Air | None) -> None:
        """The site in use; without air, that is left to be assumed."""
        self._fields["name"].show_text(site.name)
        self._fields["latitude"].show_text(format_latitude(site.latitude_deg))
        self._fields["longitude"].show_text(format_longitude(site.longitude_deg))
        # Never three decimals, which would be asked about as thousands.
        self._fields["elevation"].show_text(f"{round(site.elevation_m, 2):g}")
        measured = air is not None and not air.pressure_is_assumed
        self._fields["temperature"].show_text("" if air is None else f"{air.temperature_c:g}")
        self._fields["pressure"].show_text(f"{air.pressure_hpa:.5g}" if measured and air else "")
        self._levels.show_choice(STATION)
        self._answer.say("")
        self._tell(self._read())

    def field(self, name: str) -> Field:
        return self._fields[name]

    def asking(self, name: str) -> Asking:
        """What is asked about one of the fields."""
        return self._askings[name]

    def levels(self) -> Choice:
        return self._levels

    def use_button(self) -> Key:
        return self._use

    def answer(self) -> str:
        return self._answer.text()

    def _typed(self) -> Typed:
        texts = {name: field.text() for name, field in self._fields.items()}
        at_sea_level = self._levels.choice() == SEA_LEVEL
        return Typed(**texts, at_sea_level=at_sea_level, meant=frozenset(self._meant))

    def _read(self) -> SiteEntry:
        return read_site(self._typed())

    def _edited(self, name: str) -> None:
        """While a field is being typed only what is understood shows; complaints wait for Enter."""
        self._answer.say("")
        self.edited.emit()
        if name in self._askings:
            self._askings[name].clear()
        reading = self._read()
        for other, field in self._fields.items():
            if other not in reading.wrong and other not in reading.offers:
                field.note(reading.understood.get(other, ""))

    def _look_over(self) -> None:
        """A field was left: share a pasted pair, and ask about what looks like another unit."""
        self._share_pair()
        reading = self._read()
        self._ask(reading)
        for name, field in self._fields.items():
            if name not in reading.wrong:
                field.note(reading.understood.get(name, ""))

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
            return

    def submit(self) -> None:
        """Give the site, or say what is missing."""
        self._share_pair()
        reading = self._read()
        self._tell(reading)
        if reading.site is not None and reading.air is not None:
            self.site_given.emit(reading.site, reading.air)
            return
        if reading.offers and not reading.wrong:
            self.wait_for_answer()
            self._askings[next(iter(reading.offers))].yes().setFocus()
            return
        self._answer.say(self.tr("Not yet: see the dashed fields."))
        first = next(name for name in self._fields if name in reading.wrong)
        self._fields[first].setFocus()
        self._fields[first].select_all()

    def wait_for_answer(self) -> None:
        """Something is asked."""
        self._answer.say(self.tr("Not yet: answer the question first."))

    def say_answer(self, sentence: str) -> None:
        """What has become of the site that was given."""
        self._answer.say(sentence)

    def _tell(self, reading: SiteEntry) -> None:
        self._ask(reading)
        for name, field in self._fields.items():
            if name in reading.wrong:
                field.complain(reading.wrong[name])
            else:
                field.note(reading.understood.get(name, ""))

    def _ask(self, reading: SiteEntry) -> None:
        for name, asking in self._askings.items():
            offer = reading.offers.get(name)
            if offer is None:
                asking.clear()
                continue
            no = self.tr("No, it is {typed:g}").format(typed=offer.typed)
            yes = self.tr("Yes, use {guess:g}").format(guess=offer.guess)
            asking.ask(str(offer.question), yes, no)

    def _answered(self, name: str, is_yes: bool) -> None:
        offer = self._read().offers.get(name)
        field = self._fields[name]
        if is_yes and offer is not None:
            field.show_text(f"{offer.guess:g}")
            if name == "pressure":
                self._levels.show_choice(STATION)
        else:
            if offer is not None:  # without the unit or the thousands that were denied
                field.show_text(f"{offer.typed:.10g}")
            self._meant.add((name, field.text()))
        self._answer.say("")
        self._tell(self._read())
        field.setFocus()
