"""Reading nights back from the log."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Sequence
from dataclasses import dataclass, fields
from itertools import chain
from typing import Any, TypeVar

import numpy as np
from numpy.typing import NDArray

from app.storage.records import Night, StoredAxisState, StoredLeg
from app.storage.rows import AxisStateRow, LegRow, NightRow
from core.alignment.driftlog import Leg
from core.sky.site import Air, Site

Floats = NDArray[np.float64]
Record = TypeVar("Record", Site, Air)


@dataclass(frozen=True, eq=False)
class Loaded:
    """The rows of a night; by the key of the leg, its readings and the position of the next."""

    night: NightRow
    axis_states: tuple[AxisStateRow, ...]
    legs: tuple[LegRow, ...]
    readings: dict[int, Leg]
    next_positions: dict[int, int]

    def as_night(self) -> Night:
        """The night as the rest of the program sees it."""
        return Night(
            self.night.night_id,
            self.night.started_utc_s,
            _record(Site, self.night.site),
            _record(Air, self.night.air),
            self.night.aim,
            self.night.target_arcmin,
            tuple(self._axis_state(row.axis_state_id) for row in self.axis_states),
            resumed=True,
        )

    def _axis_state(self, key: int) -> StoredAxisState:
        legs = tuple(self._leg(row) for row in self.legs if row.axis_state_id == key)
        return StoredAxisState(key, legs)

    def _leg(self, row: LegRow) -> StoredLeg:
        leg = self.readings[row.leg_id]
        return StoredLeg(
            row.leg_id, row.star_name, leg, row.ended_utc_s is not None, bool(row.discarded)
        )


def load_last_night(
    connection: sqlite3.Connection, now_utc_s: float, within_s: float
) -> tuple[Loaded, Night] | None:
    """The night active last, if within a span of now on either side: clocks may have been set."""
    row = connection.execute(
        "SELECT * FROM nights WHERE abs(active_utc_s - ?) < ? "
        "ORDER BY active_utc_s DESC, started_utc_s DESC LIMIT 1",
        (now_utc_s, within_s),
    ).fetchone()
    if row is None:
        return None
    night = NightRow(*row)
    states = connection.execute(
        "SELECT * FROM axis_states WHERE night = ? ORDER BY ordinal", (night.night_id,)
    )
    axis_states = tuple(AxisStateRow(*row) for row in states.fetchall())
    legs = tuple(row for state in axis_states for row in _leg_rows(connection, state))
    readings = {row.leg_id: _readings(connection, row) for row in legs}
    positions = {row.leg_id: _next_position(connection, row.leg_id) for row in legs}
    loaded = Loaded(night, axis_states, legs, readings, positions)
    return loaded, loaded.as_night()


def load_settings(connection: sqlite3.Connection) -> dict[str, Any]:
    """All settings by key."""
    rows = connection.execute("SELECT key, value FROM settings").fetchall()
    return {key: json.loads(value) for key, value in rows}


def _leg_rows(connection: sqlite3.Connection, state: AxisStateRow) -> Sequence[LegRow]:
    rows = connection.execute(
        "SELECT * FROM legs WHERE axis_state = ? ORDER BY ordinal", (state.axis_state_id,)
    )
    return [LegRow(*row) for row in rows.fetchall()]


def _readings(connection: sqlite3.Connection, row: LegRow) -> Leg:
    # SQL has no NaN to give back; a number too large for it arrives as infinity in its stead.
    rows = connection.execute(
        "SELECT utc_s, north_arcsec, ifnull(east_arcsec, 9e999), ifnull(sigma_arcsec, 9e999) "
        "FROM samples WHERE leg = ? ORDER BY position",
        (row.leg_id,),
    )
    table = np.fromiter(chain.from_iterable(rows), dtype=np.float64).reshape(-1, 4)
    table[np.isinf(table)] = np.nan
    utc_s, north, east, sigma = np.ascontiguousarray(table.T)
    return Leg(
        row.label,
        row.ra_deg,
        row.dec_deg,
        utc_s,
        north,
        None if np.isnan(east).all() else east,
        None if np.isnan(sigma).any() or not sigma.size else sigma,
    )


def _next_position(connection: sqlite3.Connection, leg_id: int) -> int:
    (last,) = connection.execute(
        "SELECT max(position) FROM samples WHERE leg = ?", (leg_id,)
    ).fetchone()
    return 0 if last is None else int(last) + 1


def _record(kind: type[Record], text: str | None) -> Record | None:
    """A record from its JSON; fields this version does not know are left out."""
    if text is None:
        return None
    known = {field.name for field in fields(kind)}
    return kind(**{key: value for key, value in json.loads(text).items() if key in known})
