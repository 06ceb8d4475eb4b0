"""One line of readings: from its fields to numbers, or to the reason why not."""

from __future__ import annotations

import io
import math
from array import array
from bisect import bisect_left
from collections.abc import Callable, Iterable, Sequence
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from core.alignment.driftlog import table
from core.alignment.driftlog.header import HeadLines
from core.alignment.driftlog.records import (
    BadRow,
    DriftLog,
    Extras,
    Floats,
    Leg,
    ReadingCancelled,
    Rejected,
    Remark,
    UnusableLog,
)
from core.alignment.driftlog.table import (
    DRIFT,
    ColumnNames,
    ColumnPlaces,
    announces_separator,
    check_readable,
    is_remark,
    number,
    sexagesimal,
    shown,
)
from core.language import say
from core.sky.clocks import format_utc, parse_utc

ABSENT = float("nan")
LARGEST_OFFSET_ARCSEC = 648_000.0  # half a turn
LEAST_STATED_ARCSEC = 1e-4  # no instrument that watches a star drift reads as finely
# UTC began in 1960 (IERS); the far end only keeps typing errors out.
EARLIEST_UTC_S = -315_619_200.0  # 1960-01-01
LATEST_UTC_S = 7_258_118_400.0  # 2200-01-01


class ReadingRow(NamedTuple):
    """One reading; `east_arcsec` and `sigma_arcsec` are NaN where unread."""

    label: str
    utc_s: float
    ra_deg: float
    dec_deg: float
    north_arcsec: float
    east_arcsec: float
    sigma_arcsec: float


class RowReader:
    """Turns fields into rows. A star's place is read once for all lines that repeat its text."""

    def __init__(self, columns: ColumnPlaces) -> None:
        self._comma = columns.decimal_comma
        place = columns.place
        self._leg, self._utc = place["leg"], place["utc"]
        self._ra, self._dec = place["ra_deg"], place["dec_deg"]
        self._north = place.get("north_arcsec")
        self._east = place.get("east_arcsec")
        self._sigma = place.get("sigma_arcsec")
        self._star_text = ("", "")
        self._star_deg = (0.0, 0.0)

    def row(self, fields: list[str]) -> ReadingRow:
        """The reading in `fields`, one for each column; north is 0 where no column is its own.

        Raises BadRow.
        """
        label = " ".join(fields[self._leg].split())
        if not label:
            raise BadRow(say("The leg is empty; give every reading the label of its leg."))
        ra_deg, dec_deg = self._star(fields[self._ra], fields[self._dec])
        return ReadingRow(
            label,
            _utc(fields[self._utc]),
            ra_deg,
            dec_deg,
            0.0 if self._north is None else self._offset("north_arcsec", fields[self._north]),
            self._east_of(fields),
            self._stated_error(fields),
        )

    def _star(self, ra_text: str, dec_text: str) -> tuple[float, float]:
        if (ra_text, dec_text) != self._star_text:
            ra_deg = self._angle("ra_deg", ra_text, 0.0, 360.0)
            dec_deg = self._angle("dec_deg", dec_text, -90.0, 90.0)
            self._star_text, self._star_deg = (ra_text, dec_text), (ra_deg % 360.0, dec_deg)
        return self._star_deg

    def _angle(self, name: str, text: str, low: float, high: float) -> float:
        try:
            value = number(text, self._comma)
        except ValueError as error:
            reason = _angle_reason(name, text) or _named(name, error)
            raise BadRow(reason) from None
        if not low <= value <= high:
            raise BadRow(
                say(
                    "{name} {value:g} is outside {low:g} to {high:g} degrees.",
                    name=name,
                    value=value,
                    low=low,
                    high=high,
                )
            )
        return value

    def _offset(self, name: str, text: str) -> float:
        try:
            value = float(text)
            if "_" not in text and abs(value) <= LARGEST_OFFSET_ARCSEC:
                return value
        except ValueError:
            pass
        return self._offset_with_care(name, text)

    def _offset_with_care(self, name: str, text: str) -> float:
        try:
            value = number(text, self._comma)
        except ValueError as error:
            raise BadRow(_named(name, error)) from None
        if abs(value) > LARGEST_OFFSET_ARCSEC:
            raise BadRow(
                say(
                    "{name} {value:g} is more than half the sky; it must be in arcseconds.",
                    name=name,
                    value=value,
                )
            )
        return value

    def _east_of(self, fields: Sequence[str]) -> float:
        """Absent where it is not read; but a row must hold one offset, north or east."""
        if self._north is None and self._east is not None:
            return self._offset("east_arcsec", fields[self._east])
        return self._optional("east_arcsec", fields, self._east)

    def _optional(self, name: str, fields: Sequence[str], place: int | None) -> float:
        if place is None or not fields[place].strip():
            return ABSENT
        return self._offset(name, fields[place])

    def _stated_error(self, fields: Sequence[str]) -> float:
        sigma = self._optional("sigma_arcsec", fields, self._sigma)
        if sigma <= 0.0:
            raise BadRow(
                say(
                    "sigma_arcsec {sigma:g} is not above zero; leave it empty if unknown.",
                    sigma=sigma,
                )
            )
        if sigma < LEAST_STATED_ARCSEC:
            raise BadRow(
                say(
                    "sigma_arcsec {sigma:g} is finer than any instrument reads ({least:g}″ at "
                    "best); correct it, or leave it empty if unknown.",
                    sigma=sigma,
                    least=LEAST_STATED_ARCSEC,
                )
            )
        return sigma


def _named(name: str, problem: ValueError) -> str:
    """The column, then the rest of the sentence."""
    return say("{name} {problem}", name=name, problem=problem)


def _utc(text: str) -> float:
    if not text.strip():
        raise BadRow(say("utc is empty."))
    try:
        utc_s = parse_utc(text)
    except (ValueError, OverflowError):
        raise BadRow(
            say(
                "utc {text} is not a date and time; write UTC like 2026-11-24T20:15:30Z.",
                text=shown(text),
            )
        ) from None
    if not EARLIEST_UTC_S <= utc_s < LATEST_UTC_S:
        raise BadRow(say("utc {text} is not within the years 1960 to 2199.", text=shown(text)))
    return utc_s


def _angle_reason(name: str, text: str) -> str | None:
    value = sexagesimal(text)
    if value is None:
        return None
    if name == "ra_deg" and "°" not in text and abs(value) < 24.0:
        return say(
            "ra_deg {text} looks like hours, minutes and seconds; the column is in "
            "decimal degrees, where that is {degrees:.5f}.",
            text=shown(text),
            degrees=value * 15.0,
        )
    return say(
        "{name} {text} must be in decimal degrees: {value:.5f}.",
        name=name,
        text=shown(text),
        value=value,
    )


# Rows gathered into legs: one star each, times increasing, at least two readings.

SAME_STAR_DEG = 0.01  # wider than rounding or a night's proper motion, closer than naked-eye pairs


def check_same_star(first: ReadingRow, row: ReadingRow) -> None:
    """BadRow when a row names another star than the first row of its leg."""
    east_deg = (row.ra_deg - first.ra_deg + 180.0) % 360.0 - 180.0
    cos_dec = math.cos(math.radians(first.dec_deg))
    if math.hypot(east_deg * cos_dec, row.dec_deg - first.dec_deg) > SAME_STAR_DEG:
        raise BadRow(
            say(
                "Leg “{label}” began on the star at {ra:.4f}, {dec:.4f} but this line "
                "names one at {other_ra:.4f}, {other_dec:.4f}; give each star a leg of "
                "its own.",
                label=first.label,
                ra=first.ra_deg,
                dec=first.dec_deg,
                other_ra=row.ra_deg,
                other_dec=row.dec_deg,
            )
        )


class LegRows:
    """The rows of one leg as they come, in compact arrays."""

    def __init__(self, row: ReadingRow, extra_names: Sequence[str]) -> None:
        self.label, self.ra_deg, self.dec_deg = row.label, row.ra_deg, row.dec_deg
        self._extra_names = extra_names
        self._utc_s, self._north, self._east, self._sigma = (array("d") for _ in range(4))
        self._line_numbers = array("q")
        self._extra: list[list[str]] = [[] for _ in extra_names]
        self._first = row

    def add(self, row: ReadingRow, line_number: int, extra: Sequence[str]) -> None:
        """Takes a reading of this leg's star; BadRow when it names another star."""
        if row.ra_deg != self.ra_deg or row.dec_deg != self.dec_deg:
            check_same_star(self._first, row)
        self._utc_s.append(row.utc_s)
        self._north.append(row.north_arcsec)
        self._east.append(row.east_arcsec)
        self._sigma.append(row.sigma_arcsec)
        self._line_numbers.append(line_number)
        for texts, text in zip(self._extra, extra, strict=True):
            texts.append(text)

    def finish(self) -> tuple[Leg | None, Extras, list[Rejected], list[Remark]]:
        """The leg, the texts of its extra columns, and an account of what was left out."""
        utc_s = np.array(self._utc_s)
        lines = np.array(self._line_numbers)
        kept, rejected = self._in_order(utc_s, lines)
        if kept.size < 2:
            return None, {}, [*rejected, *self._too_few(lines[kept])], []
        sigma, remarks = self._sigma_of(kept, lines)
        leg = Leg(
            self.label,
            self.ra_deg,
            self.dec_deg,
            utc_s[kept],
            np.array(self._north)[kept],
            _unless_all_absent(np.array(self._east)[kept]),
            sigma,
        )
        extras = {
            name: tuple(texts[index] for index in kept)
            for name, texts in zip(self._extra_names, self._extra, strict=True)
        }
        return leg, extras, rejected, remarks

    def _in_order(
        self, utc_s: Floats, lines: NDArray[np.int64]
    ) -> tuple[NDArray[np.intp], list[Rejected]]:
        if np.all(np.diff(utc_s) > 0.0):
            return np.arange(utc_s.size), []
        if utc_s.size > 2 and np.all(np.diff(utc_s) < 0.0):
            reason = say(
                "The times of leg “{label}” run backwards; put its lines in order of "
                "time, earliest first.",
                label=self.label,
            )
            return np.arange(0), [Rejected(int(line), reason) for line in lines]
        kept = longest_increasing(utc_s)
        left_out = np.setdiff1d(np.arange(utc_s.size), kept, assume_unique=True)
        known = {float(utc_s[index]): int(lines[index]) for index in kept}
        return kept, [self._out_of_order(utc_s[i], lines[i], known) for i in left_out]

    def _out_of_order(self, utc_s: float, line: int, known: dict[float, int]) -> Rejected:
        twin = known.get(float(utc_s))
        if twin is not None:
            reason = say(
                "Its time is that of line {twin}; a leg has one reading at a time.", twin=twin
            )
        else:
            reason = say(
                "Its time {time} is out of order among the neighbouring lines of leg "
                "“{label}”; did the clock jump?",
                time=format_utc(float(utc_s)),
                label=self.label,
            )
        return Rejected(int(line), reason)

    def _too_few(self, lines: NDArray[np.int64]) -> list[Rejected]:
        reason = say(
            "It is the only usable reading of leg “{label}”; a drift needs at least "
            "two, and minutes between them.",
            label=self.label,
        )
        return [Rejected(int(line), reason) for line in lines]

    def _sigma_of(
        self, kept: NDArray[np.intp], lines: NDArray[np.int64]
    ) -> tuple[Floats | None, list[Remark]]:
        sigma = _unless_all_absent(np.array(self._sigma)[kept])
        if sigma is None or not np.isnan(sigma).any():
            return sigma, []
        lacking = int(lines[kept][np.isnan(sigma)][0])
        text = say(
            "sigma_arcsec is empty here though other readings of leg “{label}” state "
            "it; the stated errors of this leg are not used. State all of them or none.",
            label=self.label,
        )
        return None, [Remark(lacking, text)]


def longest_increasing(values: Floats) -> NDArray[np.intp]:
    """Indices of a longest strictly increasing run, so that one wild time costs one line.

    Patience sorting (Fredman, Discrete Mathematics 11, 29, 1975).
    """
    tails: list[float] = []
    tail_index: list[int] = []
    before = np.full(values.size, -1, dtype=np.intp)
    for index, value in enumerate(values.tolist()):
        place = bisect_left(tails, value)
        if tails[place : place + 1] == [value]:
            continue  # of two readings at one time the first stays
        before[index] = tail_index[place - 1] if place else -1
        tails[place : place + 1] = [value]
        tail_index[place : place + 1] = [index]
    chain = []
    index = tail_index[-1] if tail_index else -1
    while index >= 0:
        chain.append(index)
        index = int(before[index])
    return np.array(chain[::-1], dtype=np.intp)


def _unless_all_absent(values: Floats) -> Floats | None:
    return None if np.isnan(values).all() else values


# The readings of a log, below its column names.

# The longest night at 60° lasts 18 hours: 1.6 million readings at 25 a second.
MAX_SAMPLES = 2_000_000
MAX_LEGS = 1_000  # more means that the leg column counts lines


class LegSorter:
    """Sorts lines of readings into legs. `columns`: where their fields stand."""

    def __init__(self, columns: ColumnPlaces, name: str) -> None:
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

    def _leg(self, row: ReadingRow, line_number: int) -> LegRows:
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


# Reads a drift log from lines of text; see the package for the form of the log.

MAX_REJECTED = 100_000  # beyond this, and beyond the used lines, it is another kind of file
LINES_BETWEEN_CALLS = 4_096  # some 20 ms of work

KeepGoing = Callable[[int], bool]


def read(
    lines: Iterable[str],
    *,
    name: str = "",
    keep_going: KeepGoing | None = None,
    form: ColumnNames = DRIFT,
) -> DriftLog:
    """The log in `lines` (a text file open for reading, a list of lines, or one string).

    `name`: what to call it in sentences, “The log” where it has none. `keep_going(lines_read)` is
    asked now and then; when it returns False, ReadingCancelled is raised. `form`: the columns it
    must have. Raises UnusableLog when no leg can be made.
    """
    if isinstance(lines, str):
        lines = io.StringIO(lines, newline=None)
    name = name or say("The log")
    reading = _Reading(name, form)
    for line_number, line in enumerate(lines, start=1):
        if line_number % LINES_BETWEEN_CALLS == 0:
            if keep_going is not None and not keep_going(line_number):
                raise ReadingCancelled(
                    say("Reading {name} was stopped at line {line}.", name=name, line=line_number)
                )
            reading.stop_if_hopeless()
        reading.take(line, line_number)
    return reading.finish()


class _Reading:
    """What has been read so far."""

    def __init__(self, name: str, form: ColumnNames) -> None:
        self._name = name
        self._form = form
        self._head = HeadLines()
        self._body: LegSorter | None = None
        self._rejected: list[Rejected] = []

    def take(self, line: str, line_number: int) -> None:
        """Files one line where it belongs."""
        text = line.strip("\r\n")
        if line_number == 1:
            text = text.removeprefix("\ufeff")
        if not text or text.isspace():
            return
        try:
            check_readable(text)
            if is_remark(text):
                self._take_head_line(text, line_number)
            elif self._body is None:
                self._take_names(text, line_number)
            else:
                self._body.take(text, line_number)
        except BadRow as reason:
            self._rejected.append(Rejected(line_number, str(reason)))

    def finish(self) -> DriftLog:
        """The log, or UnusableLog when it has no leg."""
        header = self._head.finish()
        legs, extras, left_out = self._body.finish() if self._body else ([], [], [])
        self._rejected += left_out
        if not legs or self._body is None:
            raise UnusableLog(self._nothing_usable())
        remarks = sorted(self._body.remarks, key=lambda remark: remark.line_number)
        return DriftLog(
            header,
            tuple(legs),
            self._all_rejected(),
            tuple(remarks),
            tuple(extras),
            self._body.columns.in_pixels,
        )

    def stop_if_hopeless(self) -> None:
        """Gives up on a file that is plainly something else, before its faults fill memory."""
        used = 0 if self._body is None else self._body.samples
        rejected = len(self._rejected) + len(self._head.rejected)
        if rejected > max(MAX_REJECTED, used):
            raise UnusableLog(self._nothing_usable())

    def _all_rejected(self) -> tuple[Rejected, ...]:
        rejected = [*self._rejected, *self._head.rejected]
        return tuple(sorted(rejected, key=lambda line: line.line_number))

    def _take_head_line(self, text: str, line_number: int) -> None:
        if self._body is not None:
            self._body.columns.check_remark(text)
        self._head.add(text, line_number)

    def _take_names(self, text: str, line_number: int) -> None:
        if announces_separator(text):
            return
        try:
            self._body = LegSorter(table.find(text, line_number, self._form), self._name)
        except UnusableLog as error:
            raise UnusableLog(
                say("{name} cannot be read. {problem}", name=self._name, problem=error)
            ) from None

    def _nothing_usable(self) -> str:
        rejected = self._all_rejected()
        if self._body is None and not rejected:
            return say(
                "{name} holds no readings; choose a drift log ({example}).",
                name=self._name,
                example=self._form.example,
            )
        if not rejected:
            return say(
                "{name} names its columns but holds no readings below them.", name=self._name
            )
        first, count = rejected[0], len(rejected)
        if count == 1:
            how_many = say("line {line} was rejected", line=first.line_number)
        else:
            how_many = say(
                "{count} lines were rejected, the first of them line {line}",
                count=count,
                line=first.line_number,
            )
        return say(
            "{name} has no usable leg: {how_many}. {reason}",
            name=self._name,
            how_many=how_many,
            reason=first.reason,
        )
