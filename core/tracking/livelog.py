"""A tracking run read line by line while another program still writes it."""

from __future__ import annotations

from core.alignment.driftlog import UnusableLog
from core.alignment.driftlog.columns import Columns, find
from core.alignment.driftlog.forms import RUN
from core.alignment.driftlog.gather import check_same_star
from core.alignment.driftlog.lines import announces_separator, check_readable, is_remark
from core.alignment.driftlog.records import BadRow
from core.alignment.driftlog.rows import Row, RowReader
from core.language import say
from core.tracking.runlog import ScaleNeeded, scale_in_remark, scale_of

__all__ = ["BadRow", "LiveLog", "Row", "ScaleNeeded", "UnusableLog"]


class LiveLog:
    """Takes the lines of a run log in order. `scale_arcsec_per_px`: for offsets in pixels."""

    def __init__(self, name: str, scale_arcsec_per_px: float | None = None) -> None:
        self._name = name
        self._scale = scale_arcsec_per_px
        self._columns: Columns | None = None
        self._reader: RowReader | None = None
        self._first_rows: dict[str, Row] = {}  # of each leg, for its star
        self.line_number = 0

    def take(self, line: str) -> Row | None:
        """The reading in a line, in arcseconds; None for a line that holds none.

        Raises BadRow for a line to leave out, UnusableLog or ScaleNeeded when none can be used.
        `line_number`, from 1, is then that of the line.
        """
        self.line_number += 1
        text = line.strip("\r\n").removeprefix("\ufeff" if self.line_number == 1 else "")
        if not text or text.isspace():
            return None
        check_readable(text)
        if is_remark(text):
            self._take_remark(text)
            return None
        if self._columns is None or self._reader is None:
            self._take_names(text)
            return None
        fields = self._columns.fields(text)
        if self._columns.are_repeated(fields):
            return None
        return self._in_arcsec(self._of_one_star(self._reader.row(fields)), self._columns)

    def _take_remark(self, text: str) -> None:
        if self._columns is not None:
            self._columns.check_remark(text)
        if self._scale is None:
            self._scale = scale_in_remark(text)

    def _of_one_star(self, row: Row) -> Row:
        """With the star's place as its leg began, from which later lines may differ by rounding."""
        first = self._first_rows.setdefault(row.label, row)
        check_same_star(first, row)
        return row._replace(ra_deg=first.ra_deg, dec_deg=first.dec_deg)

    def _take_names(self, text: str) -> None:
        if announces_separator(text):
            return
        try:
            self._columns = find(text, self.line_number, RUN)
        except UnusableLog as error:
            raise UnusableLog(
                say("{name} cannot be followed. {problem}", name=self._name, problem=error)
            ) from None
        self._reader = RowReader(self._columns)
        if self._columns.in_pixels:
            scale_of(self._scale, self._name)

    def _in_arcsec(self, row: Row, columns: Columns) -> Row:
        if not columns.in_pixels:
            return row
        scale = scale_of(self._scale, self._name)
        return row._replace(**{name: getattr(row, name) * scale for name in columns.in_pixels})
