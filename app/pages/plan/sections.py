"""The sections of the Night plan page: tonight, the best targets, reference stars, the eyepiece."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from app.night.plan import FIGURES, Plans
from app.pages.plan import pictures
from app.pages.plan.pictures import plainly
from app.pages.plan.study import (
    ALL,
    MESSIER,
    ErrorMap,
    EyeStudy,
    MountChoice,
    PlanStudy,
    arcmin_words,
)
from app.pages.shared import PlanAmounts
from app.ui.drawings import TubeDrawing, place_words
from app.ui.form import Choice, Flow, Key
from app.ui.skydisc import Dome, DomePicture
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Text
from app.ui.timeline import NightView, clock_words, shown_span
from core.language import say
from core.mount.equipment import MountKind
from core.night.plan import PlannedTarget
from core.night.setupstars import ReferenceStar
from core.night.timeline import About, Bar
from core.sky.clocks import Zone

# Everything that happens tonight, as lines in order of time.


def agenda(study: PlanStudy, zone: Zone) -> list[str]:
    """Times, then what happens; of the checklist the steps from an hour before sunset on."""
    begin, end = shown_span(study.night)
    lines = [
        (mark.utc_s, f"{_at(zone, mark.utc_s)}  {_whose(study, mark.about, mark.text)}")
        for mark in study.line.marks
        if begin <= mark.utc_s <= end or mark.about is About.MOON
    ]
    lines += [
        (
            bar.begin_utc_s,
            f"{_span(study, zone, bar)}  {_whose(study, bar.about, bar.text)}",
        )
        for bar in study.line.bars
    ]
    lines += [
        (one.begin_utc_s, f"{_at(zone, one.begin_utc_s)}  ☐ {say(one.step.text)}")
        for one in study.checklist.planned
        if one.begin_utc_s is not None and begin <= one.begin_utc_s <= end
    ]
    return [words for _, words in sorted(lines, key=lambda line: line[0])]


def _span(study: PlanStudy, zone: Zone, bar: Bar) -> str:
    if study.night.is_whole((bar.begin_utc_s, bar.end_utc_s)):
        return say("Noon to noon")
    begin, end = _at(zone, bar.begin_utc_s), _at(zone, bar.end_utc_s)
    return say("{begin} to {end}", begin=begin, end=end)


def _at(zone: Zone, utc_s: float) -> str:
    return clock_words(zone, utc_s)


def _whose(study: PlanStudy, about: About, text: str) -> str:
    """With the target's name where the time line went without it."""
    if about in (About.TARGET, About.MOUNT) and study.aim is not None:
        name = study.aim.curve.target.name.partition(",")[0]
        return f"{name}{text}" if text.startswith(":") else f"{name} {text.lstrip()}"
    return plainly(text)


# The night on one line of time, and as a list.


class TonightSection(QWidget):
    """`picked` carries a moment, Unix seconds."""

    picked = Signal(float)

    def __init__(self, plans: Plans, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._night = NightView(self.tr("The night on one line of time"), theme)
        self._night.picked.connect(self.picked)
        self._list = QListWidget()
        self._list.setAccessibleName(self.tr("What happens tonight, in order of time"))
        self._list.setWordWrap(True)
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.setMinimumHeight(260)
        self._mounts = MountChoice(plans)
        self._notice = Text("", "small")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Reflow((self._line_panel(), self._list_panel()), 940, (5, 3)))

    def _line_panel(self) -> Panel:
        panel = Panel()
        panel.column.addWidget(self._night, 1)
        return panel

    def _list_panel(self) -> Panel:
        panel = Panel(self.tr("In order of time"))
        panel.column.addWidget(self._list, 1)
        panel.column.addWidget(self._notice)
        panel.column.addWidget(self._mounts)
        return panel

    def night(self) -> NightView:
        return self._night

    def lines(self) -> list[str]:
        return [self._list.item(row).text() for row in range(self._list.count())]

    def mounts(self) -> MountChoice:
        return self._mounts

    def show_study(self, study: PlanStudy, zone: Zone) -> None:
        self._night.show_picture(pictures.tonight(study, zone))
        self._night.show_moment(study.moment_utc_s)
        lines = agenda(study, zone)
        if lines != self.lines():
            self._list.clear()
            self._list.addItems(lines)
        self._notice.say(study.checklist.notice)
        self._mounts.show_plans()


# What is best placed tonight.

ROLE = Qt.ItemDataRole.UserRole


class BestSection(QWidget):
    """`picked` is there for the page's sake; choosing an object makes it the target."""

    picked = Signal(float)

    def __init__(self, plans: Plans, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._plans = plans
        self._list = QListWidget()
        self._list.setAccessibleName(self.tr("Best placed tonight"))
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.setWordWrap(True)
        self._list.setMinimumHeight(300)
        self._list.itemActivated.connect(self._choose)
        self._take = Key(self.tr("Take it as target"), "primary")
        self._take.clicked.connect(lambda: self._choose(self._list.currentItem()))
        self._nothing = Text("", "side")
        self._lists = Choice(
            self.tr("From which list"),
            [(MESSIER, self.tr("Messier's list")), (ALL, self.tr("All to magnitude 9"))],
        )
        self._lists.chosen.connect(lambda name: plans.set_word("list_of", name))
        self._amounts = PlanAmounts(plans, FIGURES, ("lowest_deg",))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Reflow((self._list_panel(), self._wish_panel()), 900, (5, 3)))

    def _list_panel(self) -> Panel:
        panel = Panel()
        panel.column.addWidget(self._nothing, 0, Qt.AlignmentFlag.AlignTop)
        panel.column.addWidget(self._list, 1)
        panel.column.addWidget(self._take, 0, Qt.AlignmentFlag.AlignLeft)
        return panel

    def _wish_panel(self) -> Panel:
        panel = Panel(self.tr("Which objects"))
        panel.column.addWidget(self._lists)
        panel.column.addWidget(self._amounts)
        panel.column.addWidget(
            Text(
                self.tr(
                    "In order of the hours in which they are clear in the dark, each hour counted "
                    "more the higher the object stands and less the nearer and brighter the Moon. "
                    "The order is our own."
                ),
                "small",
            )
        )
        panel.column.addStretch()
        return panel

    def listed(self) -> QListWidget:
        return self._list

    def lists(self) -> Choice:
        return self._lists

    def take_button(self) -> Key:
        return self._take

    def nothing(self) -> str:
        return self._nothing.text()

    def show_study(self, study: PlanStudy, zone: Zone) -> None:
        self._amounts.show_plans()
        self._lists.show_choice(study.question.list_of)
        lines = [self._line(placed, zone) for placed in study.best]
        if lines != [self._list.item(row).text() for row in range(self._list.count())]:
            self._fill(study.best, lines)
        for part in (self._list, self._take):
            part.setVisible(bool(lines))
        self._nothing.say("" if lines else self._why(study))

    def _fill(self, best: tuple[PlannedTarget, ...], lines: list[str]) -> None:
        self._list.clear()
        for placed, line in zip(best, lines, strict=True):
            item = QListWidgetItem(line)
            item.setData(ROLE, placed.target)
            self._list.addItem(item)
        self._list.setCurrentRow(0)

    def _line(self, placed: PlannedTarget, zone: Zone) -> str:
        target = placed.target
        size = (
            ""
            if target.magnitude is None
            else say(", magnitude {magnitude:.1f}", magnitude=target.magnitude)
        )
        return self.tr(
            "{name}   {kind}{size}\n{height:.0f}° high at {time}, clear for {hours:.1f} h, Moon "
            "{moon:.0f}° away"
        ).format(
            name=target.name,
            kind=target.kind,
            size=size,
            height=placed.highest_deg,
            time=clock_words(zone, placed.highest_utc_s),
            hours=placed.clear_hours,
            moon=placed.moon_apart_deg,
        )

    def _why(self, study: PlanStudy) -> str:
        if study.best_problem:
            return study.best_problem
        if not study.night.usable_spans:
            return self.tr("It does not get dark enough tonight for clusters and nebulae.")
        return self.tr("Nothing of this list rises high enough: try a lower altitude.")

    def _choose(self, item: QListWidgetItem | None) -> None:
        if item is not None:
            self._plans.set_target(item.data(ROLE))


# Reference stars for setting up a go-to mount, and how well it points after them.

QUARTER_S = 900.0


class StarsSection(QWidget):
    """`picked` carries the moment for which stars are wanted, Unix seconds."""

    picked = Signal(float)

    def __init__(self, plans: Plans, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._study: PlanStudy | None = None
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

    def show_study(self, study: PlanStudy, zone: Zone) -> None:
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

    def _show_maps(self, study: PlanStudy) -> None:
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


# Where the eyepiece of a Newtonian on an equatorial mount ends up.

FIELDS = (
    *("axes_height_m", "tube_offset_m", "forward_m", "out_m", "turned_deg"),
    *("eye_low_m", "eye_high_m"),
)


class EyeSection(QWidget):
    """`picked` carries a moment, Unix seconds."""

    picked = Signal(float)

    def __init__(self, plans: Plans, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._mounts = MountChoice(plans)
        self._amounts = PlanAmounts(
            plans,
            FIGURES,
            FIELDS,
            hints={"turned_deg": self.tr("0: away from the mount; clockwise from behind.")},
        )
        self._sentence = Text("", "side")
        self._advice = Text("")
        self._now = Text("", "quiet")
        self._drawing = TubeDrawing(theme)
        self._view = NightView(self.tr("Height and place of the eyepiece"), theme)
        self._view.picked.connect(self.picked)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Reflow((self._settings(), self._result()), 940, (4, 5)))

    def _settings(self) -> Panel:
        panel = Panel(self.tr("Newtonian and mount"))
        panel.column.addWidget(self._mounts)
        panel.column.addWidget(self._amounts)
        panel.column.addStretch()
        return panel

    def _result(self) -> Panel:
        panel = Panel(self.tr("Where the eyepiece ends up"))
        panel.column.addWidget(self._sentence)
        row = QHBoxLayout()
        row.addWidget(self._drawing, 0, Qt.AlignmentFlag.AlignTop)
        words = QVBoxLayout()
        for part in (self._advice, self._now):
            words.addWidget(part)
        words.addStretch()
        row.addLayout(words, 1)
        panel.column.addLayout(row)
        panel.column.addWidget(self._view, 1)
        return panel

    def mounts(self) -> MountChoice:
        return self._mounts

    def amounts(self) -> PlanAmounts:
        return self._amounts

    def view(self) -> NightView:
        return self._view

    def said(self) -> str:
        parts = (self._sentence, self._advice, self._now)
        return " ".join(part.text() for part in parts if part.text())

    def show_study(self, study: PlanStudy, zone: Zone) -> None:
        self._mounts.show_plans()
        self._amounts.show_plans()
        seen = study.eye
        for part in (self._drawing, self._view):
            part.setVisible(seen is not None)
        if seen is None:
            self._sentence.say(self._why(study))
            self._advice.say("")
            self._now.say("")
            return
        self._sentence.say(seen.path.sentence)
        self._advice.say(self._advice_words(seen))
        self._show_moment(study, seen, zone)
        self._view.show_picture(pictures.eye(study, seen, zone))
        self._view.show_moment(study.moment_utc_s)

    def _why(self, study: PlanStudy) -> str:
        if not study.question.kind.is_equatorial:
            return self.tr(
                "On an alt-azimuth mount the eyepiece stays on the same side of the tube all "
                "night; only its height changes. This is about equatorial mounts."
            )
        if study.aim is None:
            return self.tr("Choose a target above to see where the eyepiece goes.")
        if study.question.kind is MountKind.GERMAN_EQUATORIAL and study.aim.problem:
            return study.aim.problem
        return self.tr("The target gives no session tonight.")

    def _advice_words(self, seen: EyeStudy) -> str:
        before = float(np.mean(seen.path.is_comfortable))
        after = float(np.mean(seen.best.is_comfortable))
        if after <= before + 0.005:
            return self.tr("No other turn in the rings does better.")
        return (
            self.tr(
                "Turned to {turn:.0f}° in its rings it is in reach for {after:.0f} % of the "
                "session instead of {before:.0f} %."
            )
            .format(turn=seen.best_deg, after=100.0 * after, before=100.0 * before)
            .replace("-", "−")
        )

    def _show_moment(self, study: PlanStudy, seen: EyeStudy, zone: Zone) -> None:
        at = int(np.argmin(np.abs(seen.utc_s - study.moment_utc_s)))
        angle = float(seen.path.round_tube_deg[at])
        self._drawing.show_eyepiece(angle)
        self._now.say(
            self.tr(
                "At {time} it is {place}, {height:.1f} m up; drawn as seen from behind."
            ).format(
                time=clock_words(zone, float(seen.utc_s[at])),
                place=place_words(angle),
                height=float(seen.path.height_m[at]),
            )
        )
