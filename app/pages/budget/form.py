"""Finding tonight's target by its name."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.night.budget import Wanted
from app.ui.form import Choice, Field, Figure, Named
from app.ui.text import Panel, Text
from core.language import marked
from core.mount.equipment import Camera, Quantity, Telescope, quantities
from core.sky import catalogues
from core.sky.coordinates import UnusableCoordinates, parse_declination
from core.sky.places import apparent_place_rad


@dataclass(frozen=True)
class FoundDeclination:
    """`declination_deg` of date."""

    name: str
    declination_deg: float


def find(text: str, utc_s: float) -> FoundDeclination | None:
    """A cluster, nebula, galaxy or bright star of that name or number."""
    thing = catalogues.load_deep_sky().find(text)
    if thing is not None:
        _, declination = apparent_place_rad(thing.ra_deg, thing.dec_deg, utc_s)
        return FoundDeclination(thing.title, math.degrees(declination))
    star = catalogues.load_stars().find(text)
    if star is None:
        return None
    _, declination = apparent_place_rad(*catalogues.load_stars().at_epoch(star, utc_s), utc_s)
    return FoundDeclination(star.name, math.degrees(declination))


# With which telescope and camera: those of the set in use, or typed figures.

SET, TYPED = "set", "typed"
WHOLE = ("width_px", "height_px")


class OpticsForm(Panel):
    """`changed` fires when the person has changed something."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("With what"), parent)
        self.sources = Choice(
            self.tr("Optics"),
            [(SET, self.tr("The set in use")), (TYPED, self.tr("Type figures"))],
        )
        self._of_set = Text("", "quiet")
        known = quantities(Telescope) | quantities(Camera)
        names = ("focal_length_mm", "pixel_um", *WHOLE)
        labels = {
            "width_px": self.tr("Width, in pixels"),
            "height_px": self.tr("Height, in pixels"),
        }
        self.figures = {
            name: Figure(known[name], name=labels.get(name, ""), is_whole=name in WHOLE)
            for name in names
        }
        self.column.addWidget(self.sources)
        self.column.addWidget(self._of_set)
        for figure in self.figures.values():
            self.column.addWidget(figure)
            figure.submitted.connect(self.changed)
            figure.left.connect(self.changed)
        self.sources.chosen.connect(lambda _name: self.changed.emit())

    def of_set(self) -> str:
        return self._of_set.text()

    def show_wanted(self, wanted: Wanted, of_set: str) -> None:
        self.sources.show_choice(TYPED if wanted.has_own_optics else SET)
        self._of_set.say("" if wanted.has_own_optics else of_set)
        for name, figure in self.figures.items():
            figure.setVisible(wanted.has_own_optics)
            if figure.is_free():
                figure.show_figure(getattr(wanted, name))

    def taken(self, wanted: Wanted) -> Wanted:
        """`wanted` with what stands here; what cannot be used is left as it was."""
        figures: dict[str, Any] = {"has_own_optics": self.sources.choice() == TYPED}
        for name, figure in self.figures.items():
            value = figure.read()
            if not figure.is_wrong():
                figures[name] = int(value) if name in WHOLE and value is not None else value
        return replace(wanted, **figures)


# What is to be photographed tonight, and how.

FIGURES = {
    "first_hour_angle_h": Quantity(
        marked("The hour angle to begin at"), marked(" hours"), -24.0, 24.0
    ),
    "last_hour_angle_h": Quantity(
        marked("The hour angle to end at"), marked(" hours"), -24.0, 24.0
    ),
    "exposure_s": Quantity(
        marked("The length of one exposure"), marked(" seconds"), 0.001, 21_600.0
    ),
    "guide_star_arcmin": Quantity(
        marked("The distance from guide star to farthest corner"), " ′", 0.0, 3600.0
    ),
    "limit_px": Quantity(marked("The smear allowed"), marked(" pixels"), 0.01, 100.0),
}
GUIDED, UNGUIDED = "guided", "unguided"


class BudgetForm(QWidget):
    """`changed` carries the Wanted as it stands now; what cannot be used is left as it was."""

    changed = Signal(object)

    def __init__(self, now: Callable[[], float], parent: QWidget | None = None) -> None:
        """`now`: seconds since 1970-01-01 UTC."""
        super().__init__(parent)
        self._now = now
        self._wanted = Wanted()
        self.name = Field(self.tr("Name or number"), "M 31")
        self.declination = Field(self.tr("Declination, of date"), "+41 30")
        hints = self._hints()
        self.figures = {name: Figure(one, hints[name]) for name, one in FIGURES.items()}
        self.guiding = Choice(
            self.tr("Guiding"),
            [(GUIDED, self.tr("Guided")), (UNGUIDED, self.tr("Not guided"))],
        )
        self.optics = OpticsForm()
        self._arrange()
        self._connect()
        self.setFocusProxy(self.name)

    def _hints(self) -> dict[str, str]:
        return {
            "first_hour_angle_h": self.tr("−3 is three hours before it crosses the meridian."),
            "last_hour_angle_h": self.tr("3 is three hours after."),
            "exposure_s": "",
            "guide_star_arcmin": self.tr("Empty: the guide star in the middle of the field."),
            "limit_px": self.tr("Half a pixel cannot be seen; 1 can just be seen (our figures)."),
        }

    def _arrange(self) -> None:
        target = Panel(self.tr("Tonight's target"))
        fields: tuple[Field, ...] = (
            self.name,
            self.declination,
            self.figures["first_hour_angle_h"],
            self.figures["last_hour_angle_h"],
        )
        for field in fields:
            target.column.addWidget(field)
        exposure = Panel(self.tr("One exposure"))
        for part in (
            self.figures["exposure_s"],
            Named(self.tr("Guiding"), self.guiding),
            self.figures["guide_star_arcmin"],
            self.figures["limit_px"],
        ):
            exposure.column.addWidget(part)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        for panel in (target, exposure, self.optics):
            column.addWidget(panel)
        column.addStretch()

    def _connect(self) -> None:
        self.guiding.chosen.connect(lambda _name: self._take())
        self.optics.changed.connect(self._take)
        for field in (self.name, self.declination, *self.figures.values()):
            field.submitted.connect(self._take)
            field.left.connect(self._take)
        self.name.edited.connect(lambda _text: self.name.note(""))

    def show_wanted(self, wanted: Wanted, of_set: str) -> None:
        """`of_set`: the optics of the set in use, in words.

        What is being typed, or is wrong, is left alone.
        """
        self._wanted = wanted
        if self.name.is_free():
            self.name.show_text(wanted.name)
        if self.declination.is_free():
            self.declination.show_text(_degrees(wanted.declination_deg))
        for name, figure in self.figures.items():
            if figure.is_free():
                figure.show_figure(getattr(wanted, name))
        self.guiding.show_choice(GUIDED if wanted.is_guided else UNGUIDED)
        self.figures["guide_star_arcmin"].setVisible(wanted.is_guided)
        self.optics.show_wanted(wanted, of_set)

    def _take(self) -> None:
        figures: dict[str, Any] = {}
        for name, figure in self.figures.items():
            value = figure.read()
            if not figure.is_wrong():
                figures[name] = value
        figures["is_guided"] = self.guiding.choice() == GUIDED
        taken = self.optics.taken(replace(self._wanted, **figures))
        taken = self._with_target(taken)
        if taken != self._wanted:
            self._wanted = taken
            self.changed.emit(taken)

    def _with_target(self, wanted: Wanted) -> Wanted:
        """A new name brings its declination along; a new declination stands as it is."""
        name = self.name.text()
        found = find(name, self._now()) if name and name != wanted.name else None
        if found is not None:
            self.name.show_text(found.name)
            self.declination.show_text(_degrees(found.declination_deg))
            self.name.note("")
            self.declination.note("")
            return replace(wanted, name=found.name, declination_deg=found.declination_deg)
        if name and name != wanted.name:
            self.name.note(self.tr("Not in the tables: type its declination."))
        declination = self._declination()
        if self.declination.is_wrong():
            return replace(wanted, name=name)
        if _degrees(declination) == _degrees(wanted.declination_deg):
            declination = wanted.declination_deg
        return replace(wanted, name=name, declination_deg=declination)

    def _declination(self) -> float | None:
        self.declination.note("")
        if not self.declination.text():
            return None
        try:
            return parse_declination(self.declination.text())
        except UnusableCoordinates as reason:
            self.declination.complain(str(reason))
            return None


def _degrees(value: float | None) -> str:
    return "" if value is None else f"{value:+.3f}".replace("-", "−")
