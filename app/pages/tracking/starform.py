"""A star pointed at, typed by hand: where the mount said it was, and where it was."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.widgets.choice import Choice
from app.widgets.field import Field
from app.widgets.key import Key
from app.widgets.named import Named
from app.widgets.text import Panel
from core.sky.clocks import format_utc, parse_utc
from core.sky.coordinates import UnusableCoordinates, parse_declination, parse_right_ascension
from core.sky.site import Site
from core.tracking.pointing import EAST_OF_PIER, WEST_OF_PIER, sighting_of

EAST, WEST = "east", "west"
DATE, J2000 = "date", "j2000"


class StarForm(Panel):
    """`added` carries a `Sighting`. `site`: None while it is not known, and then `site_wanted`."""

    added = Signal(object)
    site_wanted = Signal()

    def __init__(
        self,
        now: Callable[[], float],
        site: Callable[[], Site | None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(self.tr("A star in the middle of the field"), parent)
        self._now = now
        self._site = site
        self.fields = {
            "name": Field(self.tr("Name, as you like it")),
            "ra": Field(self.tr("Right ascension of the star, J2000"), "18 36 56"),
            "dec": Field(self.tr("Declination of the star, J2000"), "+38 47 01"),
            "mount_ra": Field(self.tr("Right ascension the mount shows"), "18 37 50"),
            "mount_dec": Field(self.tr("Declination the mount shows"), "+38 51"),
            "utc": Field(self.tr("When, in UTC; empty is now"), "2026-09-21 21:40:00"),
        }
        self.epoch = Choice(
            self.tr("The mount shows places"),
            [(DATE, self.tr("of tonight")), (J2000, self.tr("of J2000"))],
        )
        self.side = Choice(
            self.tr("The tube stands"),
            [(EAST, self.tr("east of the pier")), (WEST, self.tr("west of the pier"))],
        )
        self.epoch.show_choice(DATE)
        self.side.show_choice(EAST)
        self.add_key = Key(self.tr("Add this star"), "primary")
        self.add_key.clicked.connect(self.submit)
        for field in self.fields.values():
            field.submitted.connect(self.submit)
            self.column.addWidget(field)
        self.column.addWidget(Named(self.tr("The mount shows places"), self.epoch))
        self.column.addWidget(Named(self.tr("The tube stands"), self.side))
        self.column.addWidget(self.add_key)

    def submit(self) -> None:
        site = self._site()
        if site is None:
            self.site_wanted.emit()
            return
        star = self._read("ra", parse_right_ascension), self._read("dec", parse_declination)
        mount = (
            self._read("mount_ra", parse_right_ascension),
            self._read("mount_dec", parse_declination),
        )
        utc_s = self._time()
        if None in (*star, *mount, utc_s):
            return
        self.added.emit(
            sighting_of(
                star,  # type: ignore[arg-type]
                mount,  # type: ignore[arg-type]
                utc_s,  # type: ignore[arg-type]
                site,
                mount_is_of_date=self.epoch.choice() == DATE,
                side=EAST_OF_PIER if self.side.choice() == EAST else WEST_OF_PIER,
                label=self.fields["name"].text(),
            )
        )
        self._clear()

    def _read(self, name: str, parse: Callable[[str], float]) -> float | None:
        field = self.fields[name]
        try:
            value = parse(field.text())
        except UnusableCoordinates as reason:
            field.complain(str(reason))
            return None
        field.note("")
        return value

    def _time(self) -> float | None:
        field = self.fields["utc"]
        if not field.text():
            return self._now()
        try:
            value = parse_utc(field.text())
        except ValueError as reason:
            field.complain(str(reason))
            return None
        field.note(format_utc(value))
        return value

    def _clear(self) -> None:
        for field in self.fields.values():
            field.show_text("")
            field.note("")
        self.fields["name"].setFocus()
