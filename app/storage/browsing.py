"""Looking through all nights of the log, without reading their samples."""

from __future__ import annotations

import json
import sqlite3
from collections import defaultdict
from collections.abc import Iterable, Iterator
from typing import Any

from app.storage.loading import site_of
from app.storage.records import Found, NightSummary
from core.night.record import EntryOfNight, Kind, Purpose, figures

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
            legs=_count(legs[night], Purpose.ALIGNMENT),
            tracking_runs=_count(legs[night], Purpose.TRACKING),
            entries=counts.get(night, 0),
            equipment=_newest(entries[night], Kind.EQUIPMENT, "name"),
            target=_newest(entries[night], Kind.PLAN, "target"),
            figures=figures(
                _first(legs[night]), [state for (state,) in states[night]], entries[night]
            ),
        )
        for night, started, active, site in rows.fetchall()
    )


def search(connection: sqlite3.Connection, text: str) -> tuple[Found, ...]:
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


def _count(legs: list[tuple[Any, ...]], purpose: Purpose) -> int:
    return sum(count for what, _, count in legs if what == purpose)


def _first(legs: list[tuple[Any, ...]]) -> float | None:
    """When the first alignment leg began."""
    began = (began for what, began, _ in legs if what == Purpose.ALIGNMENT)
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


def _found(night: int, words: list[str], texts: Iterable[str]) -> Found | None:
    folded = [(text, text.casefold()) for text in texts]
    hits = {word: [text for text, low in folded if word in low] for word in words}
    if not all(hits.values()):
        return None
    return Found(night, tuple(dict.fromkeys(text for word in words for text in hits[word])))
