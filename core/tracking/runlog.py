"""Reads a tracking run, from a whole file or line by line while it is still written."""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable
from dataclasses import replace
from pathlib import Path

from core.alignment.driftlog.files import read_file
from core.alignment.driftlog.reader import ReadingRow, RowReader, check_same_star, read
from core.alignment.driftlog.records import DriftLog, Floats, Leg, UnusableLog
from core.alignment.driftlog.table import (
    RUN,
    ColumnPlaces,
    announces_separator,
    check_readable,
    find,
    is_remark,
    number,
)
from core.finding import Code, Finding, Refused


class RunLog(Code):
    """What is wrong with the file of a run."""

    THE_LOG = "the log"
    NO_SCALE = "no scale"
    UNFOLLOWED = "unfollowed"


# Reads a tracking run: a drift log with east offsets, in arcseconds or in pixels with a scale.
#
# Columns `east_px` and `north_px` may stand in place of `east_arcsec` and `north_arcsec`; the scale
# comes from a line `# scale_arcsec_per_px: …` or from the person. North offsets may be missing.

KeepGoing = Callable[[int], bool]
SCALE_KEY = "scale_arcsec_per_px"


class ScaleNeeded(Refused, UnusableLog):
    """The offsets are in pixels and nothing says how large a pixel is; ask the person for it."""


def read_run(
    lines: Iterable[str],
    *,
    name: str | None = None,
    scale_arcsec_per_px: float | None = None,
    keep_going: KeepGoing | None = None,
) -> DriftLog:
    """As `core.alignment.driftlog.read`, offsets turned to arcseconds. Raises ScaleNeeded."""
    name = name or str(RunLog.THE_LOG)
    log = read(lines, name=name, keep_going=keep_going, form=RUN)
    return _in_arcseconds(log, name, scale_arcsec_per_px)


def read_run_file(
    path: str | os.PathLike[str],
    *,
    scale_arcsec_per_px: float | None = None,
    keep_going: Callable[[float], bool] | None = None,
) -> DriftLog:
    """The run in the file at `path`; as `core.alignment.driftlog.read_file`, pixels included."""
    log = read_file(path, keep_going, RUN)
    return _in_arcseconds(log, Path(path).name, scale_arcsec_per_px)


def scale_of(scale_arcsec_per_px: float | None, name: str) -> float:
    """The scale itself. Raises ScaleNeeded when it is unknown or cannot be."""
    if scale_arcsec_per_px is None or not 0.01 <= scale_arcsec_per_px <= 1000.0:
        raise ScaleNeeded(RunLog.NO_SCALE, name=name, scale_key=SCALE_KEY)
    return scale_arcsec_per_px


def scale_in_remark(line: str) -> float | None:
    """The scale in a line `# scale_arcsec_per_px: …`, None in any other."""
    key, _, value = line.strip(' "#;,\t').partition(":")
    return _scale_in(value) if key.strip().lower() == SCALE_KEY else None


def _in_arcseconds(log: DriftLog, name: str, scale_arcsec_per_px: float | None) -> DriftLog:
    if not log.in_pixels:
        return log
    scale = scale_arcsec_per_px
    if scale is None:
        scale = _scale_in({key.lower(): value for key, value in log.header.other}.get(SCALE_KEY))
    scale = scale_of(scale, name)
    legs = tuple(_scaled(leg, scale, log.in_pixels) for leg in log.legs)
    return replace(log, legs=legs, in_pixels=frozenset())


def _scale_in(text: str | None) -> float | None:
    if text is None:
        return None
    try:
        return number(text, decimal_comma=True)
    except ValueError:
        return None


def _scaled(leg: Leg, scale: float, in_pixels: frozenset[str]) -> Leg:
    def scaled(name: str, values: Floats) -> Floats:
        return values * scale if name in in_pixels else values

    east, sigma = leg.east_arcsec, leg.sigma_arcsec
    return replace(
        leg,
        north_arcsec=scaled("north_arcsec", leg.north_arcsec),
        east_arcsec=None if east is None else scaled("east_arcsec", east),
        sigma_arcsec=None if sigma is None else scaled("sigma_arcsec", sigma),
    )


# Whole lines out of bytes that come in pieces.


class LineCutter:
    """Lines end with a line feed, a carriage return, or both. `rest`: the line not yet ended."""

    def __init__(self) -> None:
        self.rest = b""
        self._ended_by_return = False

    def cut(self, piece: bytes) -> list[bytes]:
        """The lines that the piece ends, without their ends."""
        if not piece:
            return []
        if self._ended_by_return:
            piece = piece.removeprefix(b"\n")  # of a pair that was torn apart
        self._ended_by_return = piece.endswith(b"\r")
        piece = piece.replace(b"\r\n", b"\n").replace(b"\r", b"\n")
        *lines, self.rest = (self.rest + piece).split(b"\n")
        return lines


# A tracking run read line by line while another program still writes it.


class LiveLog:
    """Takes the lines of a run log in order. `scale_arcsec_per_px`: for offsets in pixels."""

    def __init__(self, name: str, scale_arcsec_per_px: float | None = None) -> None:
        self._name = name
        self._scale = scale_arcsec_per_px
        self._columns: ColumnPlaces | None = None
        self._reader: RowReader | None = None
        self._first_rows: dict[str, ReadingRow] = {}  # of each leg, for its star
        self.line_number = 0

    def take(self, line: str) -> ReadingRow | None:
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

    def _of_one_star(self, row: ReadingRow) -> ReadingRow:
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
                Finding.of(RunLog.UNFOLLOWED, name=self._name, problem=error)
            ) from None
        self._reader = RowReader(self._columns)
        if self._columns.in_pixels:
            scale_of(self._scale, self._name)

    def _in_arcsec(self, row: ReadingRow, columns: ColumnPlaces) -> ReadingRow:
        if not columns.in_pixels:
            return row
        scale = scale_of(self._scale, self._name)
        return row._replace(**{name: getattr(row, name) * scale for name in columns.in_pixels})
