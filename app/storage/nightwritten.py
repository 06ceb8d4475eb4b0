"""The night that is being written: every leg, reading and entry of it, on its way to disk."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import asdict, replace
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

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
)
from app.storage.tonightrows import TonightRows
from app.storage.writer import Writer
from app.storage.writes import Write
from core.night.record import Kind, Purpose
from core.sky.site import Air, Site

if TYPE_CHECKING:  # brings scipy along, which the first window must not wait for
    from core.alignment.aim import Aim

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
