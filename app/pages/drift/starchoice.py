"""Choosing the star to watch: in the order of their worth, from those up, or by coordinates."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from app.pages.drift.words import line
from app.ui.form import Choice, Field, Key
from app.ui.skydisc import Dome, DomePicture, Sign, SkyMark
from app.ui.style import Theme
from app.ui.text import Reflow, Text
from core.language import marked, say
from core.sky.coordinates import UnusableCoordinates, parse_declination, parse_right_ascension

if TYPE_CHECKING:
    from app.night.starchoice import Proposal, Proposals
    from core.sky.catalogues import StarNow


# Which bright stars are good for a leg now, and for which direction of the axis.

# A star crossing the meridian shows the azimuth of the axis, one six hours off it the altitude;
# these limits keep at least 90 % of either effect.
NEAR_MERIDIAN_DEG = 25.0
FAR_FROM_MERIDIAN_DEG = 65.0
LOWEST_DEG = 15.0  # below, the air is too restless
LOWEST_ON_MERIDIAN_DEG = 30.0
FARTHEST_FROM_EQUATOR_DEG = 70.0  # nearer the pole an east or west offset mixes in

ANY, MERIDIAN, EAST, WEST = "any", "meridian", "east", "west"
COMPASS = (
    marked("north"),
    marked("north-east"),
    marked("east"),
    marked("south-east"),
    marked("south"),
    marked("south-west"),
    marked("west"),
    marked("north-west"),
)


@dataclass(frozen=True)
class StarLine:
    """`use` is one of MERIDIAN, EAST, WEST, or ANY when it suits neither."""

    now: StarNow
    use: str
    title: str
    where: str


def star_line(now: StarNow) -> StarLine:
    """Two lines of text for the list of stars."""
    use = suits(now)
    bright = say("magnitude {magnitude:.1f}", magnitude=now.star.magnitude)
    title = f"{now.star.name}   {bright}"
    if now.star.constellation not in now.star.name:
        title += f", {now.star.constellation}"
    azimuth = f"{compass(now.azimuth_deg)} ({round(now.azimuth_deg) % 360}°)"
    where = say("{where}, {altitude:.0f}° high", where=azimuth, altitude=now.altitude_deg)
    said = {
        MERIDIAN: say("shows azimuth"),
        EAST: say("shows altitude"),
        WEST: say("shows altitude"),
    }
    return StarLine(now, use, title, f"{where}; {said[use]}" if use in said else where)


def suits(now: StarNow) -> str:
    hour_angle = math.remainder(now.hour_angle_deg, 360.0)
    if abs(now.star.dec_deg) > FARTHEST_FROM_EQUATOR_DEG or now.altitude_deg < LOWEST_DEG:
        return ANY
    if abs(hour_angle) <= NEAR_MERIDIAN_DEG:
        return MERIDIAN if now.altitude_deg >= LOWEST_ON_MERIDIAN_DEG else ANY
    if FAR_FROM_MERIDIAN_DEG <= abs(hour_angle) <= 180.0 - FAR_FROM_MERIDIAN_DEG:
        return WEST if hour_angle > 0 else EAST
    return ANY


def compass(azimuth_deg: float) -> str:
    """One of eight directions in words; azimuth from north through east."""
    return say(COMPASS[round(azimuth_deg / 45.0) % 8])


# Choosing the star to watch: from those up now, or by its coordinates.

COORDINATES = "coordinates"
ROLE = Qt.ItemDataRole.UserRole


@dataclass(frozen=True)
class ChosenStar:
    """ICRS place for the night, degrees."""

    name: str
    ra_deg: float
    dec_deg: float


class StarChoice(QWidget):
    """`chosen` carries a ChosenStar. `stars_up` is asked each time the list is shown afresh."""

    chosen = Signal(object)

    def __init__(
        self,
        stars_up: Callable[[], Sequence[StarNow]],
        place_tonight: Callable[[StarNow], tuple[float, float]],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._stars_up = stars_up
        self._place_tonight = place_tonight
        self._lines: list[StarLine] = []
        self._kinds = Choice(self.tr("Which stars"), self._kind_words())
        self._kinds.show_choice(MERIDIAN)
        self._kinds.chosen.connect(self._show_kind)
        self._list = QListWidget()
        self._list.setAccessibleName(self.tr("Bright stars up now"))
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.itemActivated.connect(lambda _item: self._choose())
        self._nothing = Text("", "quiet")
        self._by_hand = self._coordinate_fields()
        self._watch = Key(self.tr("Watch this star"), "primary")
        self._watch.clicked.connect(self._choose)
        self._is_stale = True
        self._arrange()
        self._show_kind()

    def _kind_words(self) -> list[tuple[str, str]]:
        return [
            (MERIDIAN, self.tr("Meridian")),
            (EAST, self.tr("East")),
            (WEST, self.tr("West")),
            (ANY, self.tr("All")),
            (COORDINATES, self.tr("Type one")),
        ]

    def _coordinate_fields(self) -> QWidget:
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, 0, 0, 0)
        self._name = Field(self.tr("Name, as you like it"))
        self._ra = Field(self.tr("Right ascension, J2000"), "18 36 56")
        self._dec = Field(self.tr("Declination, J2000"), "+38 47 01")
        for field in (self._name, self._ra, self._dec):
            field.submitted.connect(self._choose)
            column.addWidget(field)
        return holder

    def _arrange(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        for part in (self._kinds, self._list, self._nothing, self._by_hand, self._watch):
            column.addWidget(part)
        self._list.setMinimumHeight(240)

    def refresh(self) -> None:
        """The sky has turned, or the place has changed. What is not seen waits until it is."""
        self._is_stale = True
        if self.isVisible():
            self._fill()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self._is_stale:
            self._fill()

    def _fill(self) -> None:
        self._is_stale = False
        self._lines = [star_line(now) for now in self._stars_up()]
        self._show_kind()

    def star_list(self) -> QListWidget:
        return self._list

    def kinds(self) -> Choice:
        return self._kinds

    def fields(self) -> tuple[Field, Field, Field]:
        """Name, right ascension, declination."""
        return self._name, self._ra, self._dec

    def watch_button(self) -> Key:
        return self._watch

    def _show_kind(self) -> None:
        kind = self._kinds.choice()
        typed = kind == COORDINATES
        self._by_hand.setVisible(typed)
        self._list.clear()
        for one in self._lines:
            if kind in (ANY, one.use):
                item = QListWidgetItem(f"{one.title}\n{one.where}")
                item.setData(ROLE, one.now)
                self._list.addItem(item)
        if self._list.count():
            self._list.setCurrentRow(0)
        nothing = not typed and not self._list.count()
        self._list.setVisible(not typed and not nothing)
        self._nothing.say(self._why_nothing() if nothing else "")
        self._watch.setEnabled(not nothing)

    def _why_nothing(self) -> str:
        if self._lines:
            return self.tr("No bright star stands there now.")
        return self.tr(
            "Enter your site: then the bright stars that are up now stand here. A star can be "
            "typed without it."
        )

    def _choose(self) -> None:
        star = self._typed() if self._kinds.choice() == COORDINATES else self._listed()
        if star is not None:
            self.chosen.emit(star)

    def _listed(self) -> ChosenStar | None:
        item = self._list.currentItem()
        if item is None:
            return None
        now = item.data(ROLE)
        return ChosenStar(now.star.name, *self._place_tonight(now))

    def _typed(self) -> ChosenStar | None:
        places: list[float] = []
        for field, parse in ((self._ra, parse_right_ascension), (self._dec, parse_declination)):
            try:
                places.append(parse(field.text()))
                field.note("")
            except UnusableCoordinates as problem:
                field.complain(str(problem))
        if len(places) < 2:
            return None
        return ChosenStar(self._name.text() or self.tr("My star"), *places)


# Choosing the next star: a chart of the sky beside the stars in the order of their worth.

MOST_LISTED = 60
MOST_DRAWN = 12


class Choosing(QWidget):
    """`marked`: another star is marked in the list. `taken`: it is to be watched."""

    marked = Signal()
    taken = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._proposals: Proposals | None = None
        self._title = Text(self.tr("The sky now, and the stars that tell most"), "title")
        self._chart = Dome(self.tr("Chart of the sky"), theme)
        self._list = QListWidget()
        self._list.setUniformItemSizes(True)
        self._list.setAccessibleName(self.tr("Stars to watch, the best first"))
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.setSpacing(3)
        self._list.setMinimumHeight(200)
        self._list.currentRowChanged.connect(self._row_changed)
        self._list.itemActivated.connect(lambda _item: self.taken.emit())
        self._nothing = Text("", "quiet")
        self._nothing.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._nothing.hide()
        beside = QWidget()
        stars = QVBoxLayout(beside)
        stars.setContentsMargins(0, 0, 0, 0)
        stars.addWidget(self._nothing)
        stars.addWidget(self._list, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._title)
        column.addWidget(Reflow((self._chart, beside), 560), 1)

    def show_proposals(self, proposals: Proposals) -> None:
        """The star that was marked stays marked while it is still among them."""
        marked = self.star()
        keeps = "" if marked is None or self._list.currentRow() == 0 else marked.name
        self._proposals = proposals
        self._list.blockSignals(True)
        self._list.clear()
        for star in proposals.stars[:MOST_LISTED]:
            self._list.addItem(QListWidgetItem(line(star, proposals)))
        names = [star.name for star in proposals.stars[:MOST_LISTED]]
        self._list.setCurrentRow(names.index(keeps) if keeps in names else 0)
        self._list.blockSignals(False)
        self._say_why_none(proposals.nothing)
        self._draw()
        self.marked.emit()

    def forget(self) -> None:
        """These stars were another night's."""
        self._proposals = None
        self._list.clear()
        self._say_why_none("")

    def _say_why_none(self, why: str) -> None:
        """In place of the list; empty where there are stars."""
        self._nothing.say(why)
        self._list.setVisible(not why)

    def proposals(self) -> Proposals | None:
        return self._proposals

    def star(self) -> Proposal | None:
        """The one marked in the list; the best until the person marks another."""
        row = self._list.currentRow()
        if self._proposals is None or not 0 <= row < len(self._proposals.stars):
            return None
        return self._proposals.stars[row]

    def star_list(self) -> QListWidget:
        return self._list

    def chart(self) -> Dome:
        return self._chart

    def _row_changed(self) -> None:
        self._draw()
        self.marked.emit()

    def _draw(self) -> None:
        proposals, chosen = self._proposals, self.star()
        if proposals is None:
            return
        marks = [
            _mark(star, star is chosen)
            for star in proposals.stars[:MOST_DRAWN]
            if star is not chosen
        ]
        if proposals.moon is not None:
            moon = proposals.moon
            marks.append(SkyMark(moon.azimuth_deg, moon.altitude_deg, self.tr("Moon"), Sign.RING))
        if chosen is not None:
            marks.append(_mark(chosen, True))
        self._chart.show_picture(DomePicture(horizon=proposals.horizon, marks=tuple(marks)))


def _mark(star: Proposal, is_chosen: bool) -> SkyMark:
    now = star.choice.now
    words = star.name if is_chosen else ""
    sign = Sign.STAR if is_chosen else Sign.DOT
    return SkyMark(now.azimuth_deg, now.altitude_deg, words, sign, is_chosen)
