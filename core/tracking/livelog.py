"""A tracking run read line by line while another program still writes it."""

from __future__ import annotations

import csv

from core.alignment.driftlog import UnusableLog
from core.alignment.driftlog.columns import Columns, find, split
from core.alignment.driftlog.rows import BadRow, Row, RowReader
from core.tracking.runlog import RunForm, ScaleNeeded, scale_in_remark, scale_of

__all__ = ["BadRow", "LiveLog", "Row", "ScaleNeeded", "UnusableLog"]


class LiveLog:
    """Takes the lines of a run log in order. `scale_arcsec_per_px`: for offsets in pixels."""

    def __init__(self, name: str, scale_arcsec_per_px: float | None = None) -> None:
        self._name = name
        self._scale = scale_arcsec_per_px
        self._form = RunForm()
        self._columns: Columns | None = None
        self._reader: RowReader | None = None
        self._line_number = 0

    def take(self, line: str) -> Row | None:
        """The reading in a line, in arcseconds; None for a line that holds none.

        Raises BadRow for a line to leave out, UnusableLog or ScaleNeeded when none can be used.
        """
        self._line_number += 1
        text = next(self._form.renamed([line])).strip()
        if not text or text.startswith(("#", '"#')):
            if self._scale is None:
                self._scale = scale_in_remark(text)
            return None
        if self._columns is None or self._reader is None:
            self._take_names(text)
            return None
        try:
            fields = split(text, self._columns.separator)
        except csv.Error:
            raise BadRow("Its quotation marks do not match.") from None
        if tuple(field.strip().lower() for field in fields) == self._columns.names:
            return None
        return self._in_arcsec(self._reader.row(fields))

    def _take_names(self, text: str) -> None:
        if text.lower().startswith("sep="):
            return
        try:
            self._columns = find(text, self._line_number)
        except UnusableLog as error:
            raise UnusableLog(f"{self._name} cannot be followed. {error}") from None
        self._reader = RowReader(self._columns)
        if self._form.in_pixels:
            scale_of(self._scale, self._name)

    def _in_arcsec(self, row: Row) -> Row:
        if not self._form.in_pixels:
            return row
        scale = scale_of(self._scale, self._name)
        return row._replace(
            north_arcsec=row.north_arcsec * scale,
            east_arcsec=row.east_arcsec * scale,
            sigma_arcsec=row.sigma_arcsec * scale,
        )
