"""The two bolts of the practice mount."""

from __future__ import annotations

import math
from collections.abc import Sequence
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from PySide6.QtCore import Signal, SignalInstance
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.devices.practice import PracticeSource
from app.pages.drift.offset import UnusableNumber, parse_size
from app.ui.form import Choice, Field, Flow, Key
from app.ui.redraw import Redraw
from app.ui.text import Text
from core.alignment.drift.geometry import hemisphere_sign
from core.alignment.words import altitude_side, azimuth_side

if TYPE_CHECKING:
    from app.night.session import Session
    from core.alignment.guide.nextstar import Suggestion


STEPS = ("1", "5", "20")


class Bolts(QWidget):
    """`azimuth_turned`: arcmin toward greater azimuth. `altitude_turned`: arcmin upward."""

    azimuth_turned = Signal(float)
    altitude_turned = Signal(float)

    def __init__(self, latitude_deg: float, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        # The elevated end of the axis lies in the north or in the south: east is greater azimuth
        # in the one case and smaller in the other.
        east = hemisphere_sign(math.radians(latitude_deg))
        self._amount = Field(self.tr("Turn by, in ′"), has_name_above=False)
        self._amount.show_text(STEPS[1])
        self._steps = Choice(self.tr("Turn by"), [(step, f"{step}′") for step in STEPS])
        self._steps.show_choice(STEPS[1])
        self._steps.chosen.connect(self._amount.show_text)
        self._buttons = {
            "east": self._button(self.tr("Turn east"), self.azimuth_turned, east),
            "west": self._button(self.tr("Turn west"), self.azimuth_turned, -east),
            "raise": self._button(self.tr("Raise"), self.altitude_turned, 1.0),
            "lower": self._button(self.tr("Lower"), self.altitude_turned, -1.0),
        }
        self._arrange()

    def _arrange(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 8, 0, 8)
        column.addWidget(
            Text(self.tr("Turn the bolts by so many ′; say “turned” when both are done"), "small")
        )
        amount = QHBoxLayout()
        amount.addWidget(self._steps)
        amount.addWidget(self._amount, 1)
        column.addLayout(amount)
        turns = QWidget()
        keys = Flow(turns)
        for button in self._buttons.values():
            keys.addWidget(button)
        column.addWidget(turns)

    def _button(self, words: str, turned: SignalInstance, sign: float) -> Key:
        button = Key(words)
        button.clicked.connect(lambda: self._turn(turned, sign))
        return button

    def _turn(self, turned: SignalInstance, sign: float) -> None:
        try:
            arcmin = parse_size(self._amount.text(), self.tr("amount"))
        except UnusableNumber as problem:
            self._amount.complain(str(problem))
            return
        self._amount.note("")
        turned.emit(sign * arcmin)

    def amount(self) -> Field:
        return self._amount

    def button(self, key: str) -> Key:
        """One of east, west, raise, lower."""
        return self._buttons[key]


# The practice sky: stars to watch, the speed of the night, bolts to turn, and the truth.

STILL = "0"
SPEEDS = (STILL, "1", "10", "30", "60")
FIRST_SPEED = "30"


class PracticePanel(QWidget):
    """`again` asks for a fresh mount with another hidden error."""

    again = Signal()

    def __init__(
        self,
        session: Session,
        source: PracticeSource,
        latitude_deg: float,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._session = session
        self._source = source
        self._latitude_rad = math.radians(latitude_deg)
        self._suggestions: Sequence[Suggestion] = ()
        self._time = Text("", "quiet")
        self._places = self._place_keys()
        self._stars = QWidget()
        self._star_keys = Flow(self._stars)
        self._speeds = Choice(self.tr("Speed of the night"), self._speed_words())
        self._bolts = Bolts(latitude_deg)
        self._truth = Text()
        self._reveal = Key(self.tr("Show how close I came"))
        self._again = Key(self.tr("Another crooked mount"))
        self._sky = Redraw(self, self._show_sky)
        self._arrange()
        self._connect()
        self.set_speed(FIRST_SPEED)
        self.tick()
        self.refresh()

    def _place_keys(self) -> Choice:
        return Choice(
            self.tr("Where to look"),
            [
                ("near the meridian", self.tr("Meridian")),
                ("low in the east", self.tr("East")),
                ("low in the west", self.tr("West")),
            ],
        )

    def _speed_words(self) -> list[tuple[str, str]]:
        return [(key, self.tr("Pause") if key == STILL else f"{key}×") for key in SPEEDS]

    def _arrange(self) -> None:
        self._places.show_choice("near the meridian")
        self._truth.hide()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Text(self.tr("Speed of the night"), "small"))
        for part in (self._speeds, self._time, self._bolts, self._truth):
            column.addWidget(part)
        last = QWidget()
        keys = Flow(last)
        keys.addWidget(self._reveal)
        keys.addWidget(self._again)
        column.addWidget(last)
        column.addWidget(Text(self.tr("Or a star by where it stands, with its altitude"), "small"))
        column.addWidget(self._places)
        column.addWidget(self._stars)

    def _connect(self) -> None:
        self._places.chosen.connect(self._show_stars)
        self._speeds.chosen.connect(self.set_speed)
        self._bolts.azimuth_turned.connect(self._turn_azimuth)
        self._bolts.altitude_turned.connect(self._turn_altitude)
        self._reveal.clicked.connect(self._tell)
        self._again.clicked.connect(self.again)

    def refresh(self) -> None:
        """The simulated sky has turned: other stars are good now, and follow soon."""
        self._sky.mark()

    def _show_sky(self) -> None:
        self._suggestions = self._source.suggestions()
        self._show_stars()

    def tick(self) -> None:
        """The simulated time, for whoever draws."""
        moment = datetime.fromtimestamp(self._source.utc_s, UTC)
        shown = moment.strftime("%Y-%m-%d  %H:%M")
        self._time.say(self.tr("In the practice night it is {time} UTC").format(time=shown))

    def set_speed(self, factor: str) -> None:
        self._speeds.show_choice(factor)
        if factor == STILL:
            self._source.stop()
            return
        self._source.set_speed(float(factor))
        self._source.start()

    def source(self) -> PracticeSource:
        return self._source

    def star_buttons(self) -> list[Key]:
        return self._stars.findChildren(Key)

    def places(self) -> Choice:
        return self._places

    def bolts(self) -> Bolts:
        return self._bolts

    def reveal_button(self) -> Key:
        return self._reveal

    def truth(self) -> str:
        return self._truth.text()

    def _show_stars(self) -> None:
        for button in self.star_buttons():
            self._star_keys.removeWidget(button)
            button.setParent(None)
            button.deleteLater()
        fitting = [star for star in self._suggestions if star.where.value == self._places.choice()]
        for star in fitting:
            self._star_keys.addWidget(self._star_button(star))

    def _star_button(self, star: Suggestion) -> Key:
        words = self.tr("{star} {altitude:.0f}°")
        button = Key(words.format(star=star.name, altitude=star.altitude_deg))
        spoken = self.tr("Watch {star}, {altitude:.0f}° high, {where}")
        button.setAccessibleName(
            spoken.format(star=star.name, altitude=star.altitude_deg, where=star.where)
        )
        button.clicked.connect(lambda: self.watch(star.name, star.ra_deg, star.dec_deg))
        return button

    def watch(self, name: str, ra_deg: float, dec_deg: float) -> None:
        """The practice mount goes to a star, and a leg begins."""
        # The order matters: readings that come belong to the leg that has begun.
        # The name says for ever that these readings are made up, wherever they are copied to.
        told = self.tr("{star}, practice").format(star=name)
        self._session.begin_leg(told, ra_deg, dec_deg)
        self._source.set_star(name, ra_deg, dec_deg)
        self.refresh()

    def _turn_azimuth(self, arcmin: float) -> None:
        self._before_turning()
        self._source.turn_azimuth(arcmin)

    def _turn_altitude(self, arcmin: float) -> None:
        self._before_turning()
        self._source.turn_altitude(arcmin)

    def _before_turning(self) -> None:
        """Whoever reaches for the bolts is turning them, whatever the guide proposed."""
        self._truth.say("")
        self._session.begin_turning()

    def _tell(self) -> None:
        azimuth, altitude = self._source.reveal()
        self._truth.say(
            self.tr(
                "In truth the axis points {azimuth:.1f}′ {east} and is {altitude:.1f}′ {high}."
            ).format(
                azimuth=abs(azimuth),
                east=azimuth_side(azimuth, self._latitude_rad).where,
                altitude=abs(altitude),
                high=altitude_side(altitude).where,
            )
        )
