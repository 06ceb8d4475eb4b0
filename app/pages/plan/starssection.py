"""Reference stars for setting up a go-to mount, and how well it points after them."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.plan.errormaps import ErrorMap, arcmin_words
from app.pages.plan.mountchoice import MountChoice
from app.pages.plan.study import Study
from app.session.plans import Plans
from app.theme.theme import Theme
from app.widgets.choice import Choice
from app.widgets.dome import Dome
from app.widgets.domepicture import DomePicture
from app.widgets.flow import Flow
from app.widgets.key import Key
from app.widgets.nightpicture import clock_words
from app.widgets.reflow import Reflow
from app.widgets.text import Panel, Text
from core.language import say
from core.night.setupstars import ReferenceStar
from core.sky.clocks import Zone

QUARTER_S = 900.0


class StarsSection(QWidget):
    """`picked` carries the moment for which stars are wanted, Unix seconds."""

    picked = Signal(float)

    def __init__(self, plans: Plans, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._study: Study | None = None
        self._mounts = MountChoice(plans)
        self._counts = Choice(
            self.tr("How many stars"), [("2", self.tr("Two stars")), ("3", self.tr("Three stars"))]
        )
        self._counts.chosen.connect(lambda count: plans.set_word("star_count", count))
        self._when = Text("", "title")
        self._sooner = Key(self.tr("15 min earlier"))
        self._later = Key(self.tr("15 min later"))
        self._sooner.clicked.connect(lambda: self._move(-QUARTER_S))
        self._later.clicked.connect(lambda: self._move(QUARTER_S))
        self._stars = [Text("") for _ in range(3)]
        self._expected = Text("", "side")
        self._notes = Text("", "quiet")
        self._chosen = Dome(self.tr("Pointing error after the stars chosen"), theme)
        self._careless = Dome(self.tr("Pointing error after a careless choice"), theme)
        self._careless_title = Text("", "title")
        self._told = Text("", "small")
        for dome in (self._chosen, self._careless):
            dome.told.connect(self._tell)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Reflow((self._star_panel(), self._map_panel()), 940, (4, 5)))
        self._tell("")

    def _star_panel(self) -> Panel:
        panel = Panel()
        panel.column.addWidget(self._when)
        keys = QWidget()
        row = Flow(keys)
        for key in (self._sooner, self._later):
            row.addWidget(key)
        for part in (self._mounts, self._counts, keys):
            panel.column.addWidget(part)
        for part in (self._notes, *self._stars, self._expected):
            panel.column.addWidget(part)
        panel.column.addStretch()
        return panel

    def _map_panel(self) -> Panel:
        panel = Panel()
        both = Reflow(
            (
                self._one(Text(self.tr("After these stars"), "title"), self._chosen),
                self._one(self._careless_title, self._careless),
            ),
            520,
        )
        panel.column.addWidget(both)
        panel.column.addWidget(self._told)
        panel.column.addWidget(
            Text(
                self.tr(
                    "Lines of equal pointing error, from 20° up; the same tone is the same error "
                    "in both. North is up and east on the right, as on a map of the ground."
                ),
                "small",
            )
        )
        panel.column.addStretch()
        return panel

    def _one(self, title: Text, dome: Dome) -> QWidget:
        part = QWidget()
        column = QVBoxLayout(part)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(title)
        column.addWidget(dome, 1)
        return part

    def mounts(self) -> MountChoice:
        return self._mounts

    def counts(self) -> Choice:
        return self._counts

    def steps(self) -> tuple[Key, Key]:
        return self._sooner, self._later

    def domes(self) -> tuple[Dome, Dome]:
        return self._chosen, self._careless

    def said(self) -> str:
        parts = (self._when, *self._stars, self._expected, self._notes)
        return " ".join(part.text() for part in parts if part.text())

    def show_study(self, study: Study, zone: Zone) -> None:
        self._study = study
        self._mounts.show_plans()
        self._counts.show_choice(str(study.question.star_count))
        time = clock_words(zone, study.moment_utc_s)
        self._when.say(self.tr("Reference stars at {time}").format(time=time))
        stars = () if study.setup is None else study.setup.stars
        for number, text in enumerate(self._stars):
            text.say(self._star_words(number, stars[number]) if number < len(stars) else "")
        self._expected.say(study.setup_problem if study.setup is None else study.setup.sentence)
        self._notes.say("" if study.setup is None else " ".join(study.setup.notes))
        self._show_maps(study)

    def _star_words(self, number: int, star: ReferenceStar) -> str:
        side = (
            "" if star.side is None else self.tr(" Tube {side}.").format(side=say(star.side.value))
        )
        return f"{number + 1}.  {star.words}{side}"

    def _show_maps(self, study: Study) -> None:
        maps = study.errors
        if maps is None or study.setup is None:
            self._careless_title.say(self.tr("After a careless choice"))
            for dome in (self._chosen, self._careless):
                dome.show_picture(DomePicture())
            return
        names = ", ".join(study.setup.careless_names)
        self._careless_title.say(self.tr("After {names}").format(names=names))
        self._chosen.show_picture(maps.chosen_picture, self._reader(maps.chosen))
        self._careless.show_picture(maps.careless_picture, self._reader(maps.careless))

    def _reader(self, errors: ErrorMap) -> Callable[[float, float], str]:
        def read(azimuth_deg: float, altitude_deg: float) -> str:
            error = arcmin_words(float(errors.at(azimuth_deg, altitude_deg)))
            return self.tr("expect to be {error} off").format(error=error)

        return read

    def _tell(self, sentence: str) -> None:
        self._told.setText(sentence or self.tr("Point into a map to read it."))

    def _move(self, seconds: float) -> None:
        if self._study is not None:
            self.picked.emit(self._study.moment_utc_s + seconds)
