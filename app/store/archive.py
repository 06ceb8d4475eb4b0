"""A recorded night, from an exported file, as rows for the log."""

from __future__ import annotations

import json
import os
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from dataclasses import asdict, astuple
from pathlib import Path

from app.store import loading, words
from app.store.file import journal_of
from app.store.loading import load_night
from app.store.opening import is_sound
from app.store.records import FoundNight, NightSummary, StoredNight, UnusableFile
from app.store.salvage import Salvage
from app.store.schema import (
    NO_VERSION,
    VERSION,
    AxisStateRow,
    EntryRow,
    LegRow,
    NightRow,
    Write,
    content_json,
    take_in,
    write_samples,
)
from app.store.writer import Writer
from core.language import say
from core.night.record import NightRecord


def writes_of(night: NightRecord) -> Iterator[Write]:
    """Statements that add the night and leave alone what is there of it already."""
    yield Write(take_in("nights"), [astuple(_night_row(night))])
    ordinal = 0
    for number, state in enumerate(night.axis_states):
        state_row = AxisStateRow(state.key, night.key, number, state.began_utc_s)
        yield Write(take_in("axis_states"), [astuple(state_row)])
        for watched in state.legs:
            leg = watched.leg
            leg_row = LegRow(
                watched.key,
                state.key,
                ordinal,
                leg.label,
                watched.star_name,
                leg.ra_deg,
                leg.dec_deg,
                watched.began_utc_s,
                watched.ended_utc_s,
                watched.is_discarded,
                watched.purpose,
            )
            ordinal += 1
            yield Write(take_in("legs"), [astuple(leg_row)])
            columns = (leg.utc_s, leg.north_arcsec, leg.east_arcsec, leg.sigma_arcsec)
            yield write_samples(watched.key, 0, *columns, statement=take_in("samples"))
    for entry in night.entries:
        content = content_json(entry.content)
        entry_row = EntryRow(
            entry.key, night.key, entry.kind, entry.utc_s, content, entry.attachment
        )
        yield Write(take_in("entries"), [astuple(entry_row)])


def _night_row(night: NightRecord) -> NightRow:
    return NightRow(
        night.key,
        night.started_utc_s,
        night.active_utc_s,
        None if night.site is None else json.dumps(asdict(night.site)),
        None if night.air is None else json.dumps(asdict(night.air)),
        night.aim_name,
        night.target_arcmin,
    )


# All nights of the log: browsing, searching, backup, and taking in what was saved elsewhere.
#
# Every call waits for the disk; make them in a worker thread. What is being measured meanwhile is
# written between their steps.

NO_PATH = Path()
WAIT_S = 600.0  # for a slow disk to take a large file


class Archive:
    """The nights of one log. Calls that read give nothing back while no file can be read."""

    def __init__(self, writer: Writer) -> None:
        self._writer = writer

    @property
    def is_open(self) -> bool:
        """Whether a file can be read: else nothing given back does not mean that there is none."""
        return self._writer.can_read

    def age(self) -> object:
        """Something that is equal again as long as nothing was written, by whomever; None while no
        file can be read.
        """
        return self._writer.read(loading.age)

    def overview(self, most: int = loading.ALL) -> tuple[NightSummary, ...]:
        """The newest nights, at most so many, the newest first, with figures for comparing."""
        return self._writer.read(lambda connection: loading.overview(connection, most)) or ()

    def search(self, text: str) -> tuple[FoundNight, ...]:
        """Nights in which every word stands somewhere, the newest first."""
        return self._writer.read(lambda connection: loading.search(connection, text)) or ()

    def night(self, night_id: int) -> StoredNight | None:
        """A night with its legs, to look at and to solve again with other choices."""
        loaded = self._writer.read(lambda connection: load_night(connection, night_id))
        return None if loaded is None else loaded.as_night()

    def record(self, night_id: int) -> NightRecord | None:
        """A night with everything, pictures included, for a report or an exported file."""
        loaded = self._writer.read(
            lambda connection: load_night(connection, night_id, with_attachments=True)
        )
        return None if loaded is None else loaded.as_record()

    def attachment(self, entry_id: int) -> bytes | None:
        """The bytes of a picture."""
        return self._writer.read(lambda connection: loading.attachment(connection, entry_id))

    def back_up(self, path: Path) -> str:
        """Saves all nights and settings in one file, in place of any there, and reads it back.

        Returns a sentence; raises UnusableFile, a sentence. Until it is whole it has another name.
        """
        self.check_may_write(path)
        unfinished = path.with_name(path.name + ".unfinished")
        try:
            nights = self._copied(unfinished)
            is_ours = not self._writer.is_read_only
            if nights is None and is_ours and not self._writer.mend():  # the log itself was damaged
                nights = self._copied(unfinished)
            if nights is None:
                raise sqlite3.DatabaseError(say("reading it back found a fault"))
            _to_disk(unfinished)
            unfinished.replace(path)
        except (sqlite3.Error, OSError) as error:
            unfinished.unlink(missing_ok=True)
            raise UnusableFile(words.cannot_back_up(path, error)) from error
        return words.backed_up(path, nights)

    def check_may_write(self, path: Path) -> None:
        """UnusableFile, a sentence, where a log in use stands: writing there would destroy it."""
        try:
            is_own = self._writer.is_own(path)
        except OSError:  # where one may not even look, writing fails and is told of
            return
        if is_own:
            raise UnusableFile(words.own_file(path))

    def _copied(self, unfinished: Path) -> int | None:
        """The number of nights in a copy that SQLite finds no fault with; None if it finds one."""
        unfinished.unlink(missing_ok=True)
        with closing(sqlite3.connect(unfinished, isolation_level=None)) as copy:
            self._writer.copy_into(copy)
            copy.execute("PRAGMA journal_mode = DELETE")  # one file, readable from anywhere
            if not is_sound(copy):
                return None
            (nights,) = copy.execute("SELECT count(*) FROM nights").fetchone()
            return int(nights)

    def take_in(self, path: Path) -> str:
        """Adds what a backup, or a damaged file that was set aside, holds to this log.

        This is how a backup is restored: into the new, empty log of another computer, or into one
        that has lost nights. Nothing here is replaced. Returns a sentence; raises UnusableFile, a
        sentence.
        """
        self._check_writable(path)
        if self._writer.is_at(path):
            return self._mended(path)
        _check_readable(path)
        salvage = Salvage(path)
        try:
            with closing(salvage.writes()) as pieces:
                for write in pieces:
                    self._writer.put(write)
                    self._writer.flush(WAIT_S)  # keeps memory flat
        except (OSError, sqlite3.Error) as error:
            raise UnusableFile(words.no_log(path)) from error
        if not salvage.rows.total():
            raise UnusableFile(words.no_log(path))
        return words.took_in(path, salvage.taken, salvage.is_whole)

    def _check_writable(self, path: Path) -> None:
        if self._writer.is_read_only:
            raise UnusableFile(words.read_only(path))

    def _mended(self, path: Path) -> str:
        """The log in use, looked through, and salvaged where it is damaged."""
        try:
            was_sound = self._writer.mend()
        except (sqlite3.Error, OSError) as error:
            raise UnusableFile(words.cannot_write(path, error)) from error
        return words.is_whole(path) if was_sound else words.salvaged_in_use(path)

    def take_in_record(self, night: NightRecord, path: Path = NO_PATH) -> None:
        """Adds an exported night, from `path`; what is here of it already stays as it is.

        UnusableFile, a sentence, while another copy of the program writes the log.
        """
        self._check_writable(path)
        for write in writes_of(night):
            self._writer.put(write)
        self._writer.flush(WAIT_S)


def _to_disk(path: Path) -> None:
    with path.open("rb+") as file:
        os.fsync(file.fileno())


def _check_readable(path: Path) -> None:
    """UnusableFile for what holds nothing, or what only a newer program understands.

    The version of the tables stands in the header's bytes 60 to 63.
    """
    try:
        with path.open("rb") as file:
            head = file.read(64)
    except OSError as error:
        raise UnusableFile(words.no_log(path)) from error
    if not head and not journal_of(path).exists():
        raise UnusableFile(words.hollow_file(path))
    is_log = head.startswith(b"SQLite format 3\0") and len(head) == 64
    if is_log and VERSION < int.from_bytes(head[60:64], "big") < NO_VERSION:
        raise UnusableFile(words.newer_file(path))
