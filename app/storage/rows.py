"""The rows of the tables, and the statements that put them there.

Every statement replaces the whole row, so writing it again changes nothing.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import astuple, dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from app.storage.writer import Write

Floats = NDArray[np.float64]

_SAMPLE = "INSERT OR REPLACE INTO samples VALUES (?, ?, ?, ?, ?, ?)"
_MANY = 16  # from here on arrays take less room than tuples


@dataclass(frozen=True)
class NightRow:
    """A row of `nights`; `site` and `air` are JSON."""

    night_id: int
    started_utc_s: float
    active_utc_s: float
    site: str | None = None
    air: str | None = None
    aim: str | None = None
    target_arcmin: float | None = None

    def write(self) -> Write:
        """Puts the row in its table."""
        return Write("INSERT OR REPLACE INTO nights VALUES (?, ?, ?, ?, ?, ?, ?)", [astuple(self)])


@dataclass(frozen=True)
class AxisStateRow:
    """A row of `axis_states`."""

    axis_state_id: int
    night_id: int
    ordinal: int
    began_utc_s: float

    def write(self) -> Write:
        """Puts the row in its table."""
        return Write("INSERT OR REPLACE INTO axis_states VALUES (?, ?, ?, ?)", [astuple(self)])


@dataclass(frozen=True)
class LegRow:
    """A row of `legs`."""

    leg_id: int
    axis_state_id: int
    ordinal: int
    label: str
    star_name: str
    ra_deg: float
    dec_deg: float
    began_utc_s: float
    ended_utc_s: float | None = None
    discarded: bool = False

    def write(self) -> Write:
        """Puts the row in its table."""
        marks = "?, ?, ?, ?, ?, ?, ?, ?, ?, ?"
        return Write(f"INSERT OR REPLACE INTO legs VALUES ({marks})", [astuple(self)])


@dataclass(frozen=True, eq=False)
class _SampleColumns:
    """Rows of `samples` as arrays (n,), turned into tuples only in the writing thread."""

    leg_id: int
    first_position: int
    columns: tuple[Floats, ...]

    def __iter__(self) -> Iterator[tuple[Any, ...]]:
        listed = (column.tolist() for column in self.columns)
        for position, values in enumerate(zip(*listed, strict=True), start=self.first_position):
            yield (self.leg_id, position, *values)


def write_samples(
    leg_id: int,
    first_position: int,
    utc_s: Floats,
    north_arcsec: Floats,
    east_arcsec: Floats | None,
    sigma_arcsec: Floats | None,
) -> Write:
    """Puts readings (n,) in `samples`; NaN becomes NULL there."""
    absent = np.full(utc_s.size, np.nan)
    given = (utc_s, north_arcsec, east_arcsec, sigma_arcsec)
    columns = tuple(absent if column is None else column.copy() for column in given)
    rows = _SampleColumns(leg_id, first_position, columns)
    return Write(_SAMPLE, list(rows) if utc_s.size < _MANY else rows)


def delete_sample(leg_id: int, position: int) -> Write:
    """Takes one reading out of `samples`."""
    return Write("DELETE FROM samples WHERE leg = ? AND position = ?", [(leg_id, position)])


def write_setting(key: str, value: Any) -> Write:
    """Puts a setting, anything JSON can hold, in `settings`."""
    row = (key, json.dumps(value, allow_nan=False))
    return Write("INSERT OR REPLACE INTO settings VALUES (?, ?)", [row])
