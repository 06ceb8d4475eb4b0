"""The rows of the night that is being written, all but its readings and attachments."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from app.storage.loading import Loaded
from app.storage.rows import AxisStateRow, EntryRow, LegRow, NightRow
from app.storage.writes import Write


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
