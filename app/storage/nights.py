"""The log of nights: every reading, step and setting, on disk within a moment."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import asdict, replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from app.storage import sentences
from app.storage.archive import Archive
from app.storage.loading import Loaded, load_last_night, load_settings
from app.storage.opening import Connect, Opened, connect, open_log
from app.storage.records import Night, StoredAxisState
from app.storage.rows import (
    AxisStateRow,
    EntryRow,
    LegRow,
    NightRow,
    content_json,
    delete_entry,
    delete_sample,
    new_key,
    write_samples,
    write_setting,
)
from app.storage.tonightrows import TonightRows
from app.storage.writer import RETRY_S, Outside, Writer
from app.storage.writes import Write
from core.night.reportnight import Purpose
from core.sky.site import Air, Site

if TYPE_CHECKING:  # brings scipy along, which the first window must not wait for
    from core.alignment.aim import Aim

Floats = NDArray[np.float64]

SAME_NIGHT_S = 18 * 3600.0
ACTIVITY_S = 60.0  # how exactly the last activity is kept
FLUSH_S = 5.0


class NightLog:
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
        self._path = path
        self._clock = clock
        self._on_trouble = on_trouble
        self._on_notice = on_notice
        self._connect = connect
        self._rows = TonightRows()
        self._settings: dict[str, Any] = {}
        outside = Outside(self._reopen, self._rows_of_tonight, self._tell_trouble, on_notice)
        self._writer = Writer(outside, retry_s)

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
        return log

    @property
    def archive(self) -> Archive:
        """All nights, for browsing and carrying; its calls wait for the disk."""
        return Archive(self._writer)

    @property
    def axis_state_id(self) -> int:
        """Key of the newest axis state, for entries that belong to it."""
        self._tonight()
        return next(reversed(self._rows.axis_states))

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

    def resume_or_begin_night(self, now_utc_s: float) -> Night:
        """The last night if it was active within 18 hours, else a new one with one axis state.

        Reads all readings back: call it where some tenths of a second do no harm.
        """
        loaded = self._writer.read(
            lambda connection: load_last_night(connection, now_utc_s, SAME_NIGHT_S)
        )
        return self._begin_night(now_utc_s) if loaded is None else self._resume(*loaded)

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
        purpose: str = Purpose.ALIGNMENT,
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

        `kind` and `content` as in `core.night.reportnight.Kind`. With an `entry_id` it takes that
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
        self._rows.keep_entry(row, keeps_time)
        self._put(row.write(keeps_time))
        return row.entry_id

    def remove_entry(self, entry_id: int) -> None:
        """Takes an entry back, whichever night it belongs to."""
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

    def put_setting(self, key: str, value: Any) -> None:
        """Keeps a setting, anything JSON can hold; TypeError or ValueError for the rest."""
        write = write_setting(key, value)
        self._settings[key] = value
        self._writer.put(write)

    def get_setting(self, key: str, default: Any = None) -> Any:
        """A setting kept earlier, else `default`."""
        return self._settings.get(key, default)

    def _tonight(self) -> NightRow:
        if self._rows.night is None:
            raise RuntimeError("resume_or_begin_night comes first")
        return self._rows.night

    def _begin_night(self, now_utc_s: float) -> Night:
        night = NightRow(new_key(), now_utc_s, now_utc_s)
        self._rows = TonightRows(night)
        self._writer.put(night.write())
        first = StoredAxisState(self.begin_axis_state(), ())
        return Night(night.night_id, now_utc_s, None, None, None, None, (first,), resumed=False)

    def _resume(self, loaded: Loaded, night: Night) -> Night:
        self._rows = TonightRows.of(loaded)
        if not night.axis_states:  # killed between the first two rows of a night
            night = replace(night, axis_states=(StoredAxisState(self.begin_axis_state(), ()),))
        return night

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

    def _reopen(self) -> Opened:
        opened = open_log(self._path, self._connect)
        for notice in opened.notices:
            self._on_notice(notice)
        return opened

    def _rows_of_tonight(self) -> list[Write]:
        """What a fresh file needs to go on with this night, all but the readings so far."""
        settings = list(self._settings.items())
        return [*self._rows.writes(), *(write_setting(key, value) for key, value in settings)]

    def _tell_trouble(self, error: Exception | None) -> None:
        sentence = None if error is None else sentences.cannot_write(self._path, error)
        self._on_trouble(sentence)
