"""The log of nights: every reading, step and setting, on disk within a moment."""

from __future__ import annotations

import os
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from app.storage import sentences
from app.storage.archive import Archive
from app.storage.loading import Loaded, load_last_night, load_settings
from app.storage.nightwritten import NightWritten
from app.storage.opening import Connect, Opened, connect, open_log
from app.storage.records import Night, StoredAxisState
from app.storage.rows import (
    NightRow,
    new_key,
    write_setting,
    write_setting_over,
)
from app.storage.tonightrows import TonightRows
from app.storage.writer import RETRY_S, Outside, Writer
from app.storage.writes import Write

if TYPE_CHECKING:  # brings scipy along, which the first window must not wait for
    pass

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

    def resume_or_begin_night(self, now_utc_s: float) -> Night:
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

    def _begin_night(self, now_utc_s: float) -> Night:
        night = NightRow(new_key(), now_utc_s, now_utc_s)
        self._rows = TonightRows(night)
        self._writer.put(night.write())
        first = StoredAxisState(self.begin_axis_state(), ())
        return Night(night.night_id, now_utc_s, None, None, None, None, (first,), resumed=False)

    def _beside(self, loaded: Loaded, now_utc_s: float) -> Night:
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

    def _resume(self, loaded: Loaded, night: Night) -> Night:
        self._rows = TonightRows.of(loaded)
        if not night.axis_states:  # killed between the first two rows of a night
            night = replace(night, axis_states=(StoredAxisState(self.begin_axis_state(), ()),))
        return night

    def _reopen(self) -> Opened:
        opened = open_log(self._path, self._connect)
        for notice in opened.notices:
            self._on_notice(notice)
        if self.is_read_only:
            self._find_what_the_other_changed(opened)
        return opened

    def _find_what_the_other_changed(self, opened: Opened) -> None:
        now = load_settings(opened.connection)
        self._others = frozenset(
            key for key, value in now.items() if value != self._at_opening.get(key)
        )
        if any(not key.split()[-1].isdigit() for key in self._others):  # not of a night alone
            self._on_notice(sentences.others_settings_stay())

    def _rows_of_tonight(self) -> list[Write]:
        """What a fresh file needs to go on with this night, all but the readings so far."""
        settings = list(self._settings.items())
        return [*self._rows.writes(), *(write_setting(key, value) for key, value in settings)]

    def _tell_trouble(self, error: Exception | None) -> None:
        sentence = None if error is None else sentences.cannot_write(self._path, error)
        self._on_trouble(sentence)
