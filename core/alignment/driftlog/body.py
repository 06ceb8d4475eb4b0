"""The readings of a log, below its column names."""

from __future__ import annotations

from core.alignment.driftlog.columns import Columns
from core.alignment.driftlog.gather import LegRows
from core.alignment.driftlog.numerals import shown
from core.alignment.driftlog.records import Extras, Leg, Rejected, Remark, UnusableLog
from core.alignment.driftlog.rows import Row, RowReader
from core.language import say

# The longest night at 60° lasts 18 hours: 1.6 million readings at 25 a second.
MAX_SAMPLES = 2_000_000
MAX_LEGS = 1_000  # more means that the leg column counts lines


class Body:
    """Sorts lines of readings into legs. `columns`: where their fields stand."""

    def __init__(self, columns: Columns, name: str) -> None:
        self.columns = columns
        self._name = name
        self._reader = RowReader(columns)
        self._utc_place = columns.place["utc"]
        self._extra_places = tuple(columns.extra.values())
        self._legs: dict[str, LegRows] = {}
        self._last_label = ""
        self._returned: set[str] = set()
        self._offset_seen = False
        self.remarks: list[Remark] = []
        self.samples = 0

    def take(self, text: str, line_number: int) -> None:
        """Files one line; BadRow tells why it cannot be used, UnusableLog why none can."""
        fields = self.columns.fields(text)
        if self.columns.are_repeated(fields):
            return  # logs strung together repeat their column names
        row = self._reader.row(fields)
        leg = self._leg(row, line_number)
        leg.add(row, line_number, [fields[place].strip() for place in self._extra_places])
        self._last_label = row.label
        self.samples += 1
        if self.samples > MAX_SAMPLES:
            raise UnusableLog(
                say(
                    "{name} holds more than {most:,} readings, more than a night can give; "
                    "split it into one file a night.",
                    name=self._name,
                    most=MAX_SAMPLES,
                )
            )
        if not self._offset_seen:
            self._note_offset(fields[self._utc_place], line_number)

    def finish(self) -> tuple[list[Leg], list[Extras], list[Rejected]]:
        """The legs, the texts of their extra columns, and lines that fit no leg after all."""
        legs: list[Leg] = []
        extras: list[Extras] = []
        left_out: list[Rejected] = []
        for rows in self._legs.values():
            leg, texts, rejected, remarks = rows.finish()
            left_out += rejected
            self.remarks += remarks
            if leg is not None:
                legs.append(leg)
                extras.append(texts)
        return legs, extras, left_out

    def _leg(self, row: Row, line_number: int) -> LegRows:
        leg = self._legs.get(row.label)
        if leg is not None:
            if row.label != self._last_label and row.label not in self._returned:
                self._note_return(row.label, line_number)
            return leg
        if len(self._legs) >= MAX_LEGS:
            raise UnusableLog(
                say(
                    "{name} names more than {most} legs; does its leg column count lines? "
                    "All readings of one star, without touching the bolts, share one label.",
                    name=self._name,
                    most=MAX_LEGS,
                )
            )
        leg = self._legs[row.label] = LegRows(row, tuple(self.columns.extra))
        return leg

    def _note_return(self, label: str, line_number: int) -> None:
        self._returned.add(label)
        text = say(
            "Leg “{label}” goes on here after leg “{other}”. If the bolts were turned "
            "in between, give the later readings a label of their own.",
            label=label,
            other=self._last_label,
        )
        self.remarks.append(Remark(line_number, text))

    def _note_offset(self, text: str, line_number: int) -> None:
        if "+" in text or text.find("-", 11) > 0:
            self._offset_seen = True
            said = say(
                "Times with an offset from UTC, like {text}, were converted.", text=shown(text)
            )
            self.remarks.append(Remark(line_number, said))
