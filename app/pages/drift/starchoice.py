"""Choosing the star to watch: from those up now, or by its coordinates."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from app.pages.drift.suitability import ANY, EAST, MERIDIAN, WEST, StarLine, star_line
from app.widgets.choice import Choice
from app.widgets.field import Field
from app.widgets.key import Key
from app.widgets.text import Text
from core.sky.coordinates import UnusableCoordinates, parse_declination, parse_right_ascension

if TYPE_CHECKING:
    from core.sky.catalogues import StarNow

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
        for line in self._lines:
            if kind in (ANY, line.use):
                item = QListWidgetItem(f"{line.title}\n{line.where}")
                item.setData(ROLE, line.now)
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
