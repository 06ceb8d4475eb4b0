"""A star pointed at, typed by hand: where the mount said it was, and where it was."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QListWidget, QWidget

from app.pages.tracking import pictures
from app.pages.tracking.figures import CENTRING, TrackingPlace
from app.pages.tracking.model import TrackingModel
from app.pages.tracking.runs import sentences
from app.pages.tracking.section import ModelAmount, TrackingSection
from app.ui.filepicker import file_dialog
from app.ui.form import Choice, Field, Key, Named
from app.ui.style import Theme
from app.ui.text import Fact, Facts, Panel, Text
from app.workers.latest import Job, KeepGoing
from core.language import say
from core.mount import payload
from core.sky.clocks import format_utc, parse_utc
from core.sky.coordinates import UnusableCoordinates, parse_declination, parse_right_ascension
from core.sky.site import Site
from core.tracking.pointing import EAST_OF_PIER, WEST_OF_PIER, PointedStar, sighting_of

if TYPE_CHECKING:
    from core.tracking.pointing import Pointing


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


# Pointing: how far the mount misses, and the parts of it a person can take out.

COLUMNS = "utc, mount_ra_deg, mount_dec_deg, star_ra_deg, star_dec_deg, side, star"


class PointingSection(TrackingSection):
    site_wanted = Signal()

    def __init__(
        self,
        theme: Theme,
        bench: TrackingModel,
        rng: np.random.Generator,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, bench, parent=parent)
        self._rng = rng
        self.sentence = Text("", "side")
        self.facts = Facts(
            self.tr("How far the mount misses"),
            (self.tr("Once its circles are set"), self.tr("With all parts taken out")),
        )
        self.terms, self.notes = Text(), Text("", "quiet")
        capped = self.tr("Before you loosen anything: cap the tube and have somebody hold it.")
        cautions = (capped, say(payload.BALANCING[-1]), say(payload.FIRST))
        self.caution = Text(" ".join(cautions), "quiet")
        self.form = StarForm(bench.parts.now, self._site)
        self.form.added.connect(self._add)
        self.form.site_wanted.connect(self.site_wanted)
        self.stars = QListWidget()
        self.stars.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.stars.setAccessibleName(self.tr("Stars pointed at"))
        self.remove_key = Key(self.tr("Remove the chosen star"))
        self.clear_key = Key(self.tr("Remove all"))
        self.import_key = Key(self.tr("Import stars (CSV) …"))
        self.practice_key = Key(self.tr("Practice stars"))
        self._said = Text("", "quiet")
        self._said.hide()
        self._job = Job(self)
        self._join()
        self.arrange(
            (self.sentence, self.facts, self.terms, self.caution, self.plot, self.notes),
            (self._list_panel(), self.form),
        )

    def _join(self) -> None:
        self.remove_key.clicked.connect(self._remove)
        self.clear_key.clicked.connect(lambda: self.bench.take_sightings((), None))
        self.import_key.clicked.connect(self._choose)
        self.practice_key.clicked.connect(self.practise)
        self._job.done.connect(self._answered)

    def _list_panel(self) -> Panel:
        panel = Panel(self.tr("Stars pointed at"))
        how = self.tr(
            "Send the mount to a star, bring it into the middle by hand, and note what the mount "
            "shows. Eight or more, high and low, on both sides of the pier."
        )
        self.stars.setMinimumHeight(220)
        for part in (
            Text(how),
            self.practice_key,
            self.import_key,
            Text(COLUMNS, "small"),
            self._said,
            self.stars,
            self.remove_key,
            self.clear_key,
            ModelAmount(self.bench, "centring_arcmin", CENTRING),
        ):
            panel.column.addWidget(part)
        return panel

    def show_bench(self) -> None:
        study, stars = self.bench.study, self.bench.sightings
        found = None if study is None else study.pointing.value
        self._show_list(stars)
        for part in (self.facts, self.terms, self.plot, self.caution):
            part.setVisible(found is not None)
        if not stars:
            self.sentence.say(self.tr("No star yet. From three stars on something can be said."))
        elif self.bench.pointed_from is None and self.bench.here() is None:
            self.sentence.say(self.tr("Where were they seen from? Enter your site first."))
        else:
            self.sentence.say(
                "" if study is None else study.pointing.words(lambda p: str(p.sentence))
            )
        self.notes.say("" if found is None else sentences(list(map(str, found.notes))))
        if found is None or study is None:
            return
        self.facts.show_facts(
            (
                Fact(f"{found.rms_without_zeros_arcmin:.1f}′", self.tr("rms")),
                Fact(f"{found.rms_left_arcmin:.1f}′", self.tr("rms on these stars")),
            ),
            str(study.axis.value or ""),
        )
        self.terms.say(sentences(_terms(found)))
        self.plot.show_picture(pictures.stars_left(found))

    def read(self, path: Path) -> None:
        """A file of stars."""
        site = self._site()
        if site is None:
            self._said.say(self.tr("Enter your site first; the stars are placed over it."))
            self.site_wanted.emit()
            return

        def work(_keep_going: KeepGoing) -> object:
            from app.pages.tracking.runs import left_out, read_stars

            found = read_stars(path, site)
            return found if hasattr(found, "sentence") else (found.sightings, left_out(found))

        self._job.send(work)

    def practise(self) -> None:
        def work(_keep_going: KeepGoing) -> object:
            from app.pages.tracking.practice import practice_place, practice_sightings

            return practice_place(), practice_sightings(self._rng)

        self._job.send(work)

    def said(self) -> str:
        return self._said.text()

    def close_jobs(self) -> None:
        self._job.close()

    def _site(self) -> Site | None:
        here = self.bench.here()
        return None if here is None else here.site

    def _answered(self, answer: object) -> None:
        if not isinstance(answer, tuple):
            sentence = getattr(answer, "sentence", "")
            broken = self.tr("The file could not be used because of a fault in the program.")
            self._said.say(sentence or broken)
        elif isinstance(answer[0], TrackingPlace):
            self._said.say(self.tr("Practice stars, invented; they are not kept."))
            self.bench.take_sightings(answer[1], answer[0])
        else:
            stars, said = answer
            taken = self.tr("Taken: {n} stars.").format(n=len(stars))
            self._said.say(f"{taken}\n{said}".strip())
            self.bench.take_sightings((*self._own(), *stars), None)

    def _own(self) -> tuple[PointedStar, ...]:
        """The stars so far, unless they are invented."""
        return self.bench.sightings if self.bench.pointed_from is None else ()

    def _add(self, star: PointedStar) -> None:
        self.bench.take_sightings((*self._own(), star), None)

    def _remove(self) -> None:
        at = self.stars.currentRow()
        left = tuple(one for n, one in enumerate(self.bench.sightings) if n != at)
        self.bench.take_sightings(left, self.bench.pointed_from if left else None)

    def _show_list(self, stars: tuple[PointedStar, ...]) -> None:
        lines = [self._line(number, star) for number, star in enumerate(stars, start=1)]
        shown = [self.stars.item(row).text() for row in range(self.stars.count())]
        if lines != shown:
            self.stars.clear()
            self.stars.addItems(lines)
            self.stars.setCurrentRow(len(lines) - 1)
        for part in (self.stars, self.remove_key, self.clear_key):
            part.setVisible(bool(lines))

    def _line(self, number: int, star: PointedStar) -> str:
        is_east = star.side == EAST_OF_PIER
        side = self.tr("tube east of the pier") if is_east else self.tr("tube west of the pier")
        hours = star.star_hour_angle_deg / 15.0
        where = self.tr("{h:.1f} h west") if hours > 0.0 else self.tr("{h:.1f} h east")
        declination = self.tr("declination {dec:+.0f}°").format(dec=star.star_declination_deg)
        name = star.label or self.tr("star {number}").format(number=number)
        return f"{name}; {side}\n{where.format(h=abs(hours))}, {declination}"

    def _choose(self) -> None:
        filters = [self.tr("Stars (*.csv *.txt *.tsv)"), self.tr("All files (*)")]
        title = self.tr("Choose a list of stars")
        file_dialog(self, self.theme, title, filters, self.read).open()


def _terms(found: Pointing) -> list[str]:
    """What stands out first, the largest before the smaller."""
    order = sorted(found.terms, key=lambda term: (not term.stands_out, -abs(term.value_arcmin)))
    return [str(term.sentence) for term in order]
