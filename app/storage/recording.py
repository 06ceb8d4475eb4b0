"""A recorded night, from an exported file, as rows for the log."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import asdict, astuple

from app.storage.rows import (
    AxisStateRow,
    EntryRow,
    LegRow,
    NightRow,
    content_json,
    take_in,
    write_samples,
)
from app.storage.writes import Write
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
