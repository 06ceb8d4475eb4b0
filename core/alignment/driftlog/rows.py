"""One line of readings: from its fields to numbers, or to the reason why not."""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from core.alignment.driftlog.columns import Columns
from core.alignment.driftlog.numerals import number, sexagesimal, shown
from core.alignment.driftlog.records import BadRow
from core.language import say
from core.sky.clock import parse_utc

ABSENT = float("nan")
LARGEST_OFFSET_ARCSEC = 648_000.0  # half a turn
LEAST_STATED_ARCSEC = 1e-4  # no instrument that watches a star drift reads as finely
# UTC began in 1960 (IERS); the far end only keeps typing errors out.
EARLIEST_UTC_S = -315_619_200.0  # 1960-01-01
LATEST_UTC_S = 7_258_118_400.0  # 2200-01-01


class Row(NamedTuple):
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

    def __init__(self, columns: Columns) -> None:
        self._comma = columns.decimal_comma
        place = columns.place
        self._leg, self._utc = place["leg"], place["utc"]
        self._ra, self._dec = place["ra_deg"], place["dec_deg"]
        self._north = place.get("north_arcsec")
        self._east = place.get("east_arcsec")
        self._sigma = place.get("sigma_arcsec")
        self._star_text = ("", "")
        self._star_deg = (0.0, 0.0)

    def row(self, fields: list[str]) -> Row:
        """The reading in `fields`, one for each column; north is 0 where no column is its own.

        Raises BadRow.
        """
        label = " ".join(fields[self._leg].split())
        if not label:
            raise BadRow(say("The leg is empty; give every reading the label of its leg."))
        ra_deg, dec_deg = self._star(fields[self._ra], fields[self._dec])
        return Row(
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
