"""Reading nights back from the log, and looking through all of them without their samples."""

from __future__ import annotations

import json
import sqlite3
from collections import defaultdict
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, fields
from itertools import chain
from typing import Any, TypeVar

import numpy as np
from numpy.typing import NDArray

from app.store.records import FoundNight, NightSummary, StoredAxisState, StoredLeg, StoredNight
from app.store.schema import COLUMNS, AxisStateRow, EntryRow, LegRow, NightRow
from core.alignment.driftlog.records import Leg
from core.night.record import (
    AxisState,
    Entry,
    EntryOfNight,
    Kind,
    LegPurpose,
    NightRecord,
    WatchedLeg,
    figures,
)
from core.sky.site import Air, Site

# Reading nights back from the log.

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
    entries: tuple[EntryRow, ...]

    def as_night(self) -> StoredNight:
        """The night as the rest of the program sees it."""
        night = self.night
        return StoredNight(
            night.night_id,
            night.started_utc_s,
            _record(Site, night.site),
            _record(Air, night.air),
            night.aim,
            night.target_arcmin,
            tuple(self._axis_state(row.axis_state_id) for row in self.axis_states),
            resumed=True,
            tracking_runs=tuple(self._leg(row) for row in self.legs if not _is_alignment(row)),
            entries=self._entries(),
        )

    def as_record(self) -> NightRecord:
        """The night for a report or an exported file."""
        night = self.night
        return NightRecord(
            night.night_id,
            night.started_utc_s,
            night.active_utc_s,
            _record(Site, night.site),
            _record(Air, night.air),
            night.aim,
            night.target_arcmin,
            tuple(self._recorded(row) for row in self.axis_states),
            self._entries(),
        )

    def _entries(self) -> tuple[Entry, ...]:
        return tuple(
            Entry(row.entry_id, row.kind, row.utc_s, _object(row.content), row.attachment)
            for row in self.entries
        )

    def _axis_state(self, key: int) -> StoredAxisState:
        rows = (row for row in self.legs if row.axis_state_id == key and _is_alignment(row))
        return StoredAxisState(key, tuple(self._leg(row) for row in rows))

    def _leg(self, row: LegRow) -> StoredLeg:
        ended = row.ended_utc_s is not None
        leg, discarded = self.readings[row.leg_id], bool(row.discarded)
        return StoredLeg(row.leg_id, row.star_name, leg, ended, discarded, row.purpose)

    def _recorded(self, state: AxisStateRow) -> AxisState:
        legs = tuple(
            WatchedLeg(
                row.leg_id,
                row.star_name,
                row.purpose,
                row.began_utc_s,
                row.ended_utc_s,
                bool(row.discarded),
                self.readings[row.leg_id],
            )
            for row in self.legs
            if row.axis_state_id == state.axis_state_id
        )
        return AxisState(state.axis_state_id, state.began_utc_s, legs)


def load_last_night(
    connection: sqlite3.Connection, now_utc_s: float, within_s: float
) -> tuple[Loaded, StoredNight] | None:
    """The night active last, if within a span of now on either side: clocks may have been set.

    One with a leg comes before one without: a second copy of the program leaves one of those.
    """
    row = connection.execute(
        "SELECT id FROM nights WHERE abs(active_utc_s - ?) < ? "
        "ORDER BY EXISTS (SELECT 1 FROM axis_states JOIN legs ON axis_state = axis_states.id "
        "WHERE night = nights.id) DESC, active_utc_s DESC, started_utc_s DESC LIMIT 1",
        (now_utc_s, within_s),
    ).fetchone()
    loaded = None if row is None else load_night(connection, row[0])
    return None if loaded is None else (loaded, loaded.as_night())


def load_night(
    connection: sqlite3.Connection, night_id: int, with_attachments: bool = False
) -> Loaded | None:
    """All of a night; None when there is none of that key."""
    row = _selected(connection, "nights", "id = ?", night_id).fetchone()
    if row is None:
        return None
    states = _selected(connection, "axis_states", "night = ? ORDER BY ordinal", night_id)
    axis_states = tuple(AxisStateRow(*row) for row in states.fetchall())
    legs = tuple(row for state in axis_states for row in _leg_rows(connection, state))
    return Loaded(
        NightRow(*row),
        axis_states,
        legs,
        readings={row.leg_id: _readings(connection, row) for row in legs},
        next_positions={row.leg_id: _next_position(connection, row.leg_id) for row in legs},
        entries=_entry_rows(connection, night_id, with_attachments),
    )


def site_of(text: str | None) -> Site | None:
    """The site of a row of `nights`."""
    return _record(Site, text)


def load_settings(connection: sqlite3.Connection) -> dict[str, Any]:
    """All settings by key."""
    rows = connection.execute("SELECT key, value FROM settings").fetchall()
    return {key: json.loads(value) for key, value in rows}


def _selected(
    connection: sqlite3.Connection, table: str, condition: str, key: int
) -> sqlite3.Cursor:
    columns = ", ".join(COLUMNS[table])
    return connection.execute(f"SELECT {columns} FROM {table} WHERE {condition}", (key,))


def _leg_rows(connection: sqlite3.Connection, state: AxisStateRow) -> Sequence[LegRow]:
    key = state.axis_state_id
    rows = _selected(connection, "legs", "axis_state = ? ORDER BY ordinal", key)
    return [LegRow(*row) for row in rows.fetchall()]


def _entry_rows(
    connection: sqlite3.Connection, night_id: int, with_attachments: bool
) -> tuple[EntryRow, ...]:
    attachment = "attachment" if with_attachments else "NULL"
    rows = connection.execute(
        f"SELECT id, night, kind, utc_s, content, {attachment} FROM entries WHERE night = ? "
        "ORDER BY utc_s, id",
        (night_id,),
    )
    return tuple(EntryRow(*row) for row in rows.fetchall())


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


def _object(text: str) -> dict[str, Any]:
    content = json.loads(text)
    if not isinstance(content, dict):
        raise ValueError("an entry of the log of nights has no content")
    return content


def _is_alignment(row: LegRow) -> bool:
    return row.purpose == LegPurpose.ALIGNMENT


# Looking through all nights of the log, without reading their samples.

_SUMMED_UP = (Kind.RESULT, Kind.ADJUSTMENT, Kind.TRACKING, Kind.EQUIPMENT, Kind.PLAN)


ALL = -1
_NEWEST = "IN (SELECT id FROM nights ORDER BY started_utc_s DESC LIMIT :most)"


def age(connection: sqlite3.Connection) -> object:
    """Equal as long as neither this connection nor another one changes a row."""
    (others,) = connection.execute("PRAGMA data_version").fetchone()
    return connection, connection.total_changes, others


def overview(connection: sqlite3.Connection, most: int = ALL) -> tuple[NightSummary, ...]:
    """The newest nights, at most so many, the newest first."""
    limit = {"most": most}
    states = _grouped(
        connection.execute(
            f"SELECT night, id FROM axis_states WHERE night {_NEWEST} ORDER BY ordinal", limit
        )
    )
    legs = _grouped(
        connection.execute(
            "SELECT night, purpose, min(legs.began_utc_s), count(*) "
            "FROM axis_states JOIN legs ON axis_state = axis_states.id "
            f"WHERE night {_NEWEST} GROUP BY night, purpose",
            limit,
        )
    )
    entries = _summed_up(connection, most)
    counts = dict(
        connection.execute(
            f"SELECT night, count(*) FROM entries WHERE night {_NEWEST} GROUP BY night", limit
        )
    )
    rows = connection.execute(
        "SELECT id, started_utc_s, active_utc_s, site FROM nights "
        "ORDER BY started_utc_s DESC LIMIT :most",
        limit,
    )
    return tuple(
        NightSummary(
            night,
            started,
            active,
            site_of(site),
            legs=_count(legs[night], LegPurpose.ALIGNMENT),
            tracking_runs=_count(legs[night], LegPurpose.TRACKING),
            entries=counts.get(night, 0),
            equipment=_newest(entries[night], Kind.EQUIPMENT, "name"),
            target=_newest(entries[night], Kind.PLAN, "target"),
            figures=figures(
                _first(legs[night]), [state for (state,) in states[night]], entries[night]
            ),
        )
        for night, started, active, site in rows.fetchall()
    )


def search(connection: sqlite3.Connection, text: str) -> tuple[FoundNight, ...]:
    """Nights in which every word of `text` stands somewhere, the newest first.

    Looked through: names of sites, legs and stars, and every text of an entry.
    """
    words = text.casefold().split()
    if not words:
        return ()
    texts: dict[int, dict[str, None]] = defaultdict(dict)
    for night, said in _texts(connection):
        texts[night][said] = None
    nights = connection.execute("SELECT id FROM nights ORDER BY started_utc_s DESC").fetchall()
    found = (_found(night, words, texts[night]) for (night,) in nights)
    return tuple(one for one in found if one is not None)


def attachment(connection: sqlite3.Connection, entry_id: int) -> bytes | None:
    """The bytes that came with an entry."""
    row = connection.execute("SELECT attachment FROM entries WHERE id = ?", (entry_id,)).fetchone()
    return None if row is None else row[0]


def _grouped(rows: Iterable[tuple[Any, ...]]) -> defaultdict[int, list[tuple[Any, ...]]]:
    """Rows by their first column, which is left out."""
    found: defaultdict[int, list[tuple[Any, ...]]] = defaultdict(list)
    for key, *rest in rows:
        found[key].append(tuple(rest))
    return found


def _summed_up(connection: sqlite3.Connection, most: int) -> defaultdict[int, list[EntryOfNight]]:
    kinds = {f"kind{number}": kind for number, kind in enumerate(_SUMMED_UP)}
    marks = ", ".join(f":{name}" for name in kinds)
    rows = connection.execute(
        "SELECT night, kind, utc_s, content FROM entries "
        f"WHERE night {_NEWEST} AND kind IN ({marks}) ORDER BY utc_s",
        {"most": most} | kinds,
    )
    found: defaultdict[int, list[EntryOfNight]] = defaultdict(list)
    for night, kind, utc_s, content in rows:
        found[night].append(EntryOfNight(kind, utc_s, json.loads(content)))
    return found


def _texts(connection: sqlite3.Connection) -> Iterator[tuple[int, str]]:
    for night, site in connection.execute("SELECT id, site FROM nights WHERE site IS NOT NULL"):
        yield night, str(json.loads(site).get("name", ""))
    rows = connection.execute(
        "SELECT night, label, star_name "
        "FROM legs JOIN axis_states ON axis_state = axis_states.id ORDER BY legs.began_utc_s"
    )
    for night, *names in rows:
        yield from ((night, name) for name in names)
    for night, content in connection.execute("SELECT night, content FROM entries ORDER BY utc_s"):
        yield from ((night, text) for text in _strings(json.loads(content)))


def _count(legs: list[tuple[Any, ...]], purpose: LegPurpose) -> int:
    return sum(count for what, _, count in legs if what == purpose)


def _first(legs: list[tuple[Any, ...]]) -> float | None:
    """When the first alignment leg began."""
    began = (began for what, began, _ in legs if what == LegPurpose.ALIGNMENT)
    return min(began, default=None)


def _newest(entries: list[EntryOfNight], kind: Kind, name: str) -> str:
    values = [entry.content.get(name) for entry in entries if entry.kind == kind]
    return values[-1] if values and isinstance(values[-1], str) else ""


def _strings(value: Any) -> Iterator[str]:
    if isinstance(value, str):
        yield value
    elif isinstance(value, dict):
        for one in value.values():
            yield from _strings(one)
    elif isinstance(value, list):
        for one in value:
            yield from _strings(one)


def _found(night: int, words: list[str], texts: Iterable[str]) -> FoundNight | None:
    folded = [(text, text.casefold()) for text in texts]
    hits = {word: [text for text, low in folded if word in low] for word in words}
    if not all(hits.values()):
        return None
    return FoundNight(night, tuple(dict.fromkeys(text for word in words for text in hits[word])))
