"""Pointing: how far the mount misses, and the parts of it a person can take out."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QListWidget, QWidget

from app.pages.tracking import pictures
from app.pages.tracking.amounts import BenchAmount
from app.pages.tracking.bench import Bench
from app.pages.tracking.figures import CENTRING
from app.pages.tracking.job import Job, KeepGoing
from app.pages.tracking.question import Place
from app.pages.tracking.runbox import sentences
from app.pages.tracking.section import Section
from app.pages.tracking.starform import StarForm
from app.theme.theme import Theme
from app.widgets.facts import Fact, Facts
from app.widgets.filepicker import file_dialog
from app.widgets.key import Key
from app.widgets.text import Panel, Text
from core.language import say
from core.mount import payload
from core.sky.site import Site
from core.tracking.pointing import EAST_OF_PIER, Sighting

if TYPE_CHECKING:
    from core.tracking.pointing import Pointing

COLUMNS = "utc, mount_ra_deg, mount_dec_deg, star_ra_deg, star_dec_deg, side, star"


class PointingSection(Section):
    site_wanted = Signal()

    def __init__(
        self,
        theme: Theme,
        bench: Bench,
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
            BenchAmount(self.bench, "centring_arcmin", CENTRING),
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
            self.sentence.say("" if study is None else study.pointing.words(lambda p: p.sentence))
        self.notes.say("" if found is None else sentences([note.text for note in found.notes]))
        if found is None or study is None:
            return
        self.facts.show_facts(
            (
                Fact(f"{found.rms_without_zeros_arcmin:.1f}′", self.tr("rms")),
                Fact(f"{found.rms_left_arcmin:.1f}′", self.tr("rms on these stars")),
            ),
            study.axis.value or "",
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
            from app.pages.tracking.reading import left_out, read_stars

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
        elif isinstance(answer[0], Place):
            self._said.say(self.tr("Practice stars, invented; they are not kept."))
            self.bench.take_sightings(answer[1], answer[0])
        else:
            stars, said = answer
            taken = self.tr("Taken: {n} stars.").format(n=len(stars))
            self._said.say(f"{taken}\n{said}".strip())
            self.bench.take_sightings((*self._own(), *stars), None)

    def _own(self) -> tuple[Sighting, ...]:
        """The stars so far, unless they are invented."""
        return self.bench.sightings if self.bench.pointed_from is None else ()

    def _add(self, star: Sighting) -> None:
        self.bench.take_sightings((*self._own(), star), None)

    def _remove(self) -> None:
        at = self.stars.currentRow()
        left = tuple(one for n, one in enumerate(self.bench.sightings) if n != at)
        self.bench.take_sightings(left, self.bench.pointed_from if left else None)

    def _show_list(self, stars: tuple[Sighting, ...]) -> None:
        lines = [self._line(number, star) for number, star in enumerate(stars, start=1)]
        shown = [self.stars.item(row).text() for row in range(self.stars.count())]
        if lines != shown:
            self.stars.clear()
            self.stars.addItems(lines)
            self.stars.setCurrentRow(len(lines) - 1)
        for part in (self.stars, self.remove_key, self.clear_key):
            part.setVisible(bool(lines))

    def _line(self, number: int, star: Sighting) -> str:
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
    return [term.sentence for term in order]
