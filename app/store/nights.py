"""The rows of the night that is being written, all but its readings and attachments."""

from __future__ import annotations

import json
import os
from collections.abc import Callable, Mapping
from dataclasses import asdict, dataclass, field, replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from app.store import words
from app.store.archive import Archive
from app.store.loading import Loaded, load_last_night, load_settings
from app.store.opening import Connect, OpenedLog, connect, open_log
from app.store.records import StoredAxisState, StoredNight
from app.store.schema import (
    AxisStateRow,
    EntryRow,
    LegRow,
    NightRow,
    Write,
    content_json,
    delete_entry,
    delete_sample,
    new_key,
    write_samples,
    write_setting,
    write_setting_over,
)
from app.store.writer import RETRY_S, Outside, Writer
from core.night.record import Kind, LegPurpose
from core.sky.site import Air, Site

if TYPE_CHECKING:  # brings scipy along, which the first window must not wait for
    from core.alignment.goal import Aim

    pass


@dataclass
class TonightRows:
    """By key, in the order they were begun; and by leg, the position of its next reading."""

    night: NightRow | None = None
    axis_states: dict[int, AxisStateRow] = field(default_factory=dict)
    legs: dict[int, LegRow] = field(default_factory=dict)
    next_positions: dict[int, int] = field(default_factory=dict)
    entries: dict[int, EntryRow] = field(default_factory=dict)

    @classmethod
    def of(cls, loaded: Loaded) -> TonightRows:
        """Those of a night that goes on."""
        return cls(
            loaded.night,
            {row.axis_state_id: row for row in loaded.axis_states},
            {row.leg_id: row for row in loaded.legs},
            loaded.next_positions,
            {row.entry_id: row for row in loaded.entries},
        )

    def keep_entry(self, row: EntryRow, keeps_time: bool) -> None:
        """Remembers an entry of tonight, but not the bytes that came with it."""
        if self.night is None or row.night_id != self.night.night_id:
            return
        before = self.entries.get(row.entry_id)
        utc_s = before.utc_s if keeps_time and before is not None else row.utc_s
        self.entries[row.entry_id] = replace(row, utc_s=utc_s, attachment=None)

    def writes(self) -> list[Write]:
        """What a fresh file needs to go on with this night."""
        return [
            *([] if self.night is None else [self.night.write()]),
            *(row.write() for row in list(self.axis_states.values())),
            *(row.write() for row in list(self.legs.values())),
            *(row.write() for row in list(self.entries.values())),
        ]


# The night that is being written: every leg, reading and entry of it, on its way to disk.

Floats = NDArray[np.float64]

ACTIVITY_S = 60.0  # how exactly the last activity is kept
MADE_BY_ITSELF = (Kind.TICK, Kind.EQUIPMENT, Kind.PLAN, Kind.OWN_STEPS)


class NightWritten:
    """Every call returns at once. Use it from one thread. `clock` tells Unix seconds."""

    def __init__(self, writer: Writer, clock: Callable[[], float]) -> None:
        self._writer = writer
        self._clock = clock
        self._rows = TonightRows()
        self._has_said = False

    @property
    def is_read_only(self) -> bool:
        """Whether another copy of the program writes the log; what is put waits in memory then."""
        return self._writer.is_read_only

    @property
    def has_said(self) -> bool:
        """Whether words or pictures of the person were put: they must not be lost unasked."""
        return self._has_said

    @property
    def axis_state_id(self) -> int:
        """Key of the newest axis state, for entries that belong to it."""
        self._tonight()
        return next(reversed(self._rows.axis_states))

    def begin_axis_state(self) -> int:
        """The bolts were turned: legs from now on belong together. Key of the axis state."""
        night = self._tonight()
        now = self._clock()
        state = AxisStateRow(new_key(), night.night_id, len(self._rows.axis_states), now)
        self._rows.axis_states[state.axis_state_id] = state
        self._put(state.write())
        return state.axis_state_id

    def add_leg(
        self,
        label: str,
        star_name: str,
        ra_deg: float,
        dec_deg: float,
        purpose: str = LegPurpose.ALIGNMENT,
    ) -> int:
        """Begins a leg in the newest axis state, for alignment or tracking. Key of the leg."""
        leg = LegRow(
            new_key(),
            self.axis_state_id,
            len(self._rows.legs),
            label,
            star_name,
            float(ra_deg),
            float(dec_deg),
            self._clock(),
            purpose=str(purpose),
        )
        self._rows.next_positions[leg.leg_id] = 0
        self._put_leg(leg)
        return leg.leg_id

    def add_samples(
        self,
        leg_id: int,
        utc_s: Floats,
        north_arcsec: Floats,
        east_arcsec: Floats | None = None,
        sigma_arcsec: Floats | None = None,
    ) -> None:
        """Appends readings (n,) to a leg; ValueError when a time or north offset is not finite."""
        if not (np.isfinite(utc_s).all() and np.isfinite(north_arcsec).all()):
            raise ValueError("A reading without a finite time and offset cannot be kept.")
        first = self._rows.next_positions[leg_id]
        self._rows.next_positions[leg_id] = first + utc_s.size
        columns = (utc_s, north_arcsec, east_arcsec, sigma_arcsec)
        self._put(write_samples(leg_id, first, *columns))

    def delete_last_sample(self, leg_id: int) -> None:
        """Takes the newest reading of a leg back; LookupError when there is none."""
        if self._rows.next_positions[leg_id] == 0:
            raise LookupError("The leg has no reading to take back.")
        self._rows.next_positions[leg_id] -= 1
        self._put(delete_sample(leg_id, self._rows.next_positions[leg_id]))

    def end_leg(self, leg_id: int) -> None:
        """The star is no longer watched."""
        self._put_leg(replace(self._rows.legs[leg_id], ended_utc_s=self._clock()))

    def discard_leg(self, leg_id: int) -> None:
        """The person leaves a leg out; its readings stay on disk."""
        self._put_leg(replace(self._rows.legs[leg_id], discarded=True))

    def put_entry(
        self,
        kind: str,
        content: Mapping[str, Any],
        attachment: bytes | None = None,
        entry_id: int | None = None,
        utc_s: float | None = None,
        night_id: int | None = None,
    ) -> int:
        """Keeps anything else of a night: a tick, a note, a result, a picture. Key of the entry.

        `kind` and `content` as in `core.night.record.Kind`. With an `entry_id` it takes that
        entry's place, whose time and attachment stay unless others are given. The time of a new one
        is now and the night is tonight unless said otherwise. TypeError or ValueError for what JSON
        cannot hold.
        """
        tonight = self._tonight().night_id
        row = EntryRow(
            new_key() if entry_id is None else entry_id,
            tonight if night_id is None else night_id,
            str(kind),
            self._clock() if utc_s is None else float(utc_s),
            content_json(content),
            attachment,
        )
        keeps_time = utc_s is None and entry_id is not None
        self._has_said |= kind not in MADE_BY_ITSELF
        self._rows.keep_entry(row, keeps_time)
        self._put(row.write(keeps_time))
        return row.entry_id

    def remove_entry(self, entry_id: int) -> None:
        """Takes an entry back, whichever night it belongs to."""
        self._has_said = True
        self._rows.entries.pop(entry_id, None)
        self._put(delete_entry(entry_id))

    def kinds_of_entries(self) -> frozenset[str]:
        """Of which kinds tonight has entries."""
        return frozenset(row.kind for row in self._rows.entries.values())

    def set_site(self, site: Site, air: Air) -> None:
        """Where the mount stands tonight."""
        self._put_night(
            replace(self._tonight(), site=json.dumps(asdict(site)), air=json.dumps(asdict(air)))
        )

    def set_aim(self, aim: Aim) -> None:
        """Which pole to align on."""
        self._put_night(replace(self._tonight(), aim=aim.name))

    def set_target(self, arcmin: float) -> None:
        """How small the error bars should become."""
        self._put_night(replace(self._tonight(), target_arcmin=float(arcmin)))

    def _tonight(self) -> NightRow:
        if self._rows.night is None:
            raise RuntimeError("resume_or_begin_night comes first")
        return self._rows.night

    def _put_leg(self, leg: LegRow) -> None:
        self._rows.legs[leg.leg_id] = leg
        self._put(leg.write())

    def _put_night(self, night: NightRow) -> None:
        self._rows.night = replace(night, active_utc_s=self._clock())
        self._writer.put(self._rows.night.write())

    def _put(self, write: Write) -> None:
        """Hands a step to the writer, and says now and then that the night is still alive."""
        self._writer.put(write)
        night = self._tonight()
        if abs(self._clock() - night.active_utc_s) > ACTIVITY_S:
            self._put_night(night)


# The log of nights: every reading, step and setting, on disk within a moment.

SAME_NIGHT_S = 18 * 3600.0
FLUSH_S = 5.0


class NightLog(NightWritten):
    """Takes everything that happens and keeps it; every call but the waiting ones returns at once.

    Use it from one thread. `clock` tells Unix seconds. `on_trouble` gets a sentence when writing
    fails and None when it works again; nothing is lost in between, it waits in memory.
    `on_notice` gets sentences to be read once: a second copy of the program, a damaged file. Both
    are called from the writing thread too.
    """

    def __init__(
        self,
        path: Path,
        clock: Callable[[], float],
        on_trouble: Callable[[str | None], None],
        on_notice: Callable[[str], None],
        connect: Connect = connect,
        retry_s: float = RETRY_S,
    ) -> None:
        path = Path(os.path.realpath(path))  # the journal and the hold lie beside the file itself
        self._path = path
        self._on_trouble = on_trouble
        self._on_notice = on_notice
        self._connect = connect
        self._settings: dict[str, Any] = {}
        self._at_opening: dict[str, Any] = {}
        self._others: frozenset[str] = frozenset()  # keys the other copy changed since
        outside = Outside(
            path=path,
            reopen=self._reopen,
            rebuild=self._rows_of_tonight,
            on_trouble=self._tell_trouble,
            on_notice=on_notice,
        )
        super().__init__(Writer(outside, retry_s), clock)

    @classmethod
    def open(
        cls,
        path: Path,
        clock: Callable[[], float],
        on_trouble: Callable[[str | None], None],
        on_notice: Callable[[str], None],
        connect: Connect = connect,
        retry_s: float = RETRY_S,
    ) -> NightLog:
        """Opens or begins the file at `path`. Never fails: what is wrong goes to `on_trouble`."""
        log = cls(path, clock, on_trouble, on_notice, connect, retry_s)
        log._writer.start()
        log._settings = log._writer.read(load_settings) or {}
        log._at_opening = dict(log._settings)
        return log

    @property
    def archive(self) -> Archive:
        """All nights, for browsing and carrying; its calls wait for the disk."""
        return Archive(self._writer)

    @property
    def unwritten(self) -> int:
        """How many steps are not on disk yet."""
        return self._writer.unwritten

    def flush(self, timeout_s: float = FLUSH_S) -> bool:
        """Waits until everything is on disk; False when that fails or takes too long."""
        return self._writer.flush(timeout_s)

    def close(self, timeout_s: float = FLUSH_S) -> bool:
        """Writes what is left and closes the file; False when something is not on disk."""
        return self._writer.close(timeout_s)

    def resume_or_begin_night(self, now_utc_s: float) -> StoredNight:
        """The last night if it was active within 18 hours, else a new one with one axis state.

        While another copy of the program writes that night, a new one with its place and settings.
        Reads all readings back: call it where some tenths of a second do no harm.
        """
        loaded = self._writer.read(
            lambda connection: load_last_night(connection, now_utc_s, SAME_NIGHT_S)
        )
        if loaded is None:
            return self._begin_night(now_utc_s)
        return self._beside(loaded[0], now_utc_s) if self.is_read_only else self._resume(*loaded)

    def put_setting(self, key: str, value: Any) -> None:
        """Keeps a setting, anything JSON can hold; TypeError or ValueError for the rest.

        What another copy changed while this one only read stays as it is on disk.
        """
        if (
            self.is_read_only or key in self._others
        ):  # the other copy may have changed it meanwhile: then it stays so
            write = write_setting_over(key, value, self._settings.get(key))
        else:
            write = write_setting(key, value)
        self._settings[key] = value
        self._writer.put(write)

    def get_setting(self, key: str, default: Any = None) -> Any:
        """A setting kept earlier, else `default`."""
        return self._settings.get(key, default)

    def _begin_night(self, now_utc_s: float) -> StoredNight:
        night = NightRow(new_key(), now_utc_s, now_utc_s)
        self._rows = TonightRows(night)
        self._writer.put(night.write())
        first = StoredAxisState(self.begin_axis_state(), ())
        return StoredNight(
            night.night_id, now_utc_s, None, None, None, None, (first,), resumed=False
        )

    def _beside(self, loaded: Loaded, now_utc_s: float) -> StoredNight:
        """A night of this copy's own, so that neither copy writes over what the other measured."""
        begun, like = self._begin_night(now_utc_s), loaded.as_night()
        row = loaded.night
        self._put_night(
            replace(
                self._tonight(),
                site=row.site,
                air=row.air,
                aim=row.aim,
                target_arcmin=row.target_arcmin,
            )
        )
        return replace(
            begun,
            site=like.site,
            air=like.air,
            aim_name=like.aim_name,
            target_arcmin=like.target_arcmin,
        )

    def _resume(self, loaded: Loaded, night: StoredNight) -> StoredNight:
        self._rows = TonightRows.of(loaded)
        if not night.axis_states:  # killed between the first two rows of a night
            night = replace(night, axis_states=(StoredAxisState(self.begin_axis_state(), ()),))
        return night

    def _reopen(self) -> OpenedLog:
        opened = open_log(self._path, self._connect)
        for notice in opened.notices:
            self._on_notice(notice)
        if self.is_read_only:
            self._find_what_the_other_changed(opened)
        return opened

    def _find_what_the_other_changed(self, opened: OpenedLog) -> None:
        now = load_settings(opened.connection)
        self._others = frozenset(
            key for key, value in now.items() if value != self._at_opening.get(key)
        )
        if any(not key.split()[-1].isdigit() for key in self._others):  # not of a night alone
            self._on_notice(words.others_settings_stay())

    def _rows_of_tonight(self) -> list[Write]:
        """What a fresh file needs to go on with this night, all but the readings so far."""
        settings = list(self._settings.items())
        return [*self._rows.writes(), *(write_setting(key, value) for key, value in settings)]

    def _tell_trouble(self, error: Exception | None) -> None:
        sentence = None if error is None else words.cannot_write(self._path, error)
        self._on_trouble(sentence)
