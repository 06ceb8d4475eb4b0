"""Nights of the log for the page that shows them: looked at, solved again, carried out and in."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable
from dataclasses import dataclass, replace
from enum import Enum
from pathlib import Path
from typing import TYPE_CHECKING

from app.store.records import FoundNight, NightSummary, UnusableFile
from core.alignment.driftlog.records import Leg
from core.alignment.goal import Aim
from core.alignment.priors import Priors
from core.language import say
from core.night import exports
from core.night.exports import drift_csv
from core.night.record import NightRecord
from core.night.report import html
from core.night.words import SayTime
from core.sky.site import Air, Site

if TYPE_CHECKING:
    from app.store.archive import Archive
    from core.alignment.axis.singlestar import SingleStarConstraint
    from core.alignment.words import Advice


# The legs of a night that is over, solved again with other choices; the night stays as it is.


@dataclass(frozen=True, eq=False)
class Again:
    """What to solve, and what is granted of reticle, tube and drive."""

    legs: tuple[Leg, ...]
    site: Site
    air: Air
    aim: Aim
    priors: Priors


@dataclass(frozen=True, eq=False)
class SolvedAgain:
    """`problem`: a sentence when the legs cannot be solved; then there is no advice."""

    advice: Advice | None
    combination: SingleStarConstraint | None
    notes: tuple[str, ...]
    problem: str = ""


def solve_again(question: Again) -> SolvedAgain:
    """For a worker thread."""
    from core.alignment.axis.solution import solve
    from core.alignment.drift.prepared import UnusableLegs
    from core.alignment.words import advise

    if not question.legs:
        return SolvedAgain(None, None, (), say("No leg is chosen: choose at least one."))
    try:
        solution = solve(question.legs, question.site, question.air, priors=question.priors)
    except UnusableLegs as reason:
        return SolvedAgain(None, None, (), str(reason))
    notes = tuple(map(str, solution.notes))
    return SolvedAgain(advise(solution, question.aim), solution.combination, notes)


# All nights of the log, for the page that shows them: looked through, carried out and in.
#
# Every call waits for the disk; make them in a worker thread.

LARGEST_PICTURE_B = 30_000_000
MEDIA_TYPES = {
    ".png": "image/png",
    ".jpg": "image/jpeg",
    ".jpeg": "image/jpeg",
    ".gif": "image/gif",
    ".webp": "image/webp",
    ".bmp": "image/bmp",
}


class ExportForm(Enum):
    """How a night can leave; the value is the end of the file's name."""

    HTML = ".html"
    PDF = ".pdf"
    CSV = ".csv"
    JSON = ".json"


@dataclass(frozen=True)
class Listed:
    """Nights of the log, the newest first. `is_rest`: their newest were listed before. `is_open`:
    else no file could be read.
    """

    nights: tuple[NightSummary, ...]
    is_all: bool
    is_rest: bool = False
    is_open: bool = True


@dataclass(frozen=True)
class PictureFile:
    """A picture read from disk."""

    name: str
    media_type: str
    data: bytes


class NightFiles:
    """`say_time` writes a Unix time for the reader of a report."""

    def __init__(self, archive: Archive, say_time: SayTime) -> None:
        self.archive = archive
        self._say_time = say_time
        self._whole = Listed((), is_all=False)
        self._age: object = None  # of the log when all nights were listed

    def newest(self, most: int) -> Listed:
        """As `all`, of the newest nights only."""
        if self._age is not None and self.archive.age() == self._age:
            return replace(self._whole, is_rest=False)
        is_open = self.archive.is_open
        nights = self.archive.overview(most)
        return Listed(_used(nights), is_all=len(nights) < most, is_open=is_open)

    def all(self) -> Listed:
        """All nights in which something was done, the newest first."""
        age = self.archive.age()  # before reading: what is written meanwhile makes it another
        self._whole = Listed(_used(self.archive.overview()), is_all=True, is_rest=True)
        self._age = age
        return self._whole

    def search(self, text: str) -> tuple[FoundNight, ...]:
        return self.archive.search(text)

    def record(self, night_id: int) -> NightRecord | None:
        """A night with everything."""
        return self.archive.record(night_id)

    def export(self, night_id: int, form: ExportForm, path: Path) -> str:
        """Writes one night. Returns a sentence; raises UnusableFile, a sentence."""
        self.archive.check_may_write(path)
        night = self.archive.record(night_id)
        if night is None:
            raise UnusableFile(say("The night cannot be read from the log; nothing was written."))
        _whole(path, lambda unfinished: self._write(night, form, unfinished))
        return say(
            "Saved as {name} in {folder}, {size:.0f} kB.",
            name=path.name,
            folder=path.parent,
            size=path.stat().st_size / 1e3,
        )

    def back_up(self, path: Path) -> str:
        """All nights and settings in one file. A sentence; raises UnusableFile, a sentence."""
        return self.archive.back_up(path)

    def take_in(self, path: Path) -> str:
        """A backup, a damaged log or an exported night. As `back_up`."""
        if path.suffix.casefold() != ExportForm.JSON.value:
            return self.archive.take_in(path)
        try:
            night = exports.read_json(_read(path, exports.MAX_BYTES))
        except exports.UnusableNight as reason:
            raise UnusableFile(str(reason)) from reason
        self.archive.take_in_record(night, path)
        return say("The night of {when} is in the log.", when=self._say_time(night.started_utc_s))

    def _write(self, night: NightRecord, form: ExportForm, path: Path) -> None:
        if form is ExportForm.PDF:
            from app.night.reportpdf import write_pdf

            write_pdf(night, path, self._say_time)
            return
        texts = {
            ExportForm.HTML: lambda: html(night, self._say_time),
            ExportForm.CSV: lambda: drift_csv(night),
            ExportForm.JSON: lambda: exports.write_json(night),
        }
        path.write_text(texts[form](), encoding="utf-8")


def _used(nights: Iterable[NightSummary]) -> tuple[NightSummary, ...]:
    return tuple(one for one in nights if not one.is_empty)


def picture_from(path: Path) -> PictureFile:
    """Raises UnusableFile, a sentence."""
    media_type = MEDIA_TYPES.get(path.suffix.casefold())
    if media_type is None:
        kinds = ", ".join(sorted(MEDIA_TYPES))
        raise UnusableFile(
            say(
                "{name} is not a picture that can be kept: {kinds} can.",
                name=path.name,
                kinds=kinds,
            )
        )
    return PictureFile(path.name, media_type, _read(path, LARGEST_PICTURE_B))


def _read(path: Path, most: int) -> bytes:
    try:
        size = path.stat().st_size
        if size > most:
            raise UnusableFile(
                say(
                    "{name} has {size:.0f} MB; more than {most:.0f} cannot be taken.",
                    name=path.name,
                    size=size / 1e6,
                    most=most / 1e6,
                )
            )
        return path.read_bytes()
    except OSError as error:
        why = error.strerror or error
        raise UnusableFile(
            say("{path} cannot be read ({why}); choose another file.", path=path, why=why)
        ) from error


def _whole(path: Path, write: Callable[[Path], None]) -> None:
    """Under another name until all of it is on disk."""
    unfinished = path.with_name(path.name + ".unfinished")
    try:
        write(unfinished)
        with unfinished.open("rb+") as file:
            os.fsync(file.fileno())
        unfinished.replace(path)
    except OSError as error:
        unfinished.unlink(missing_ok=True)
        why = error.strerror or error
        raise UnusableFile(
            say(
                "{path} could not be written ({why}): choose another folder or make "
                "room. What was there before is unchanged.",
                path=path,
                why=why,
            )
        ) from error
