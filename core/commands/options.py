"""What sub-commands share: numbers, a place and a time behind options, and the delivery."""

from __future__ import annotations

import argparse
import math
import os
import re
from collections.abc import Iterable, Iterator, Sequence
from typing import TextIO

from core.alignment.axis.plausibility import IMPOSSIBLE, pressure_doubt
from core.alignment.drift.prepared import Note
from core.alignment.driftlog.header import RANGES, looks_swapped
from core.alignment.driftlog.records import Header, Rejected, Remark
from core.alignment.driftlog.table import number, shown
from core.finding import Code
from core.sky.clocks import parse_utc
from core.sky.site import Air, Site

# Numbers behind options: a decimal comma, a minus sign, and a sentence for what cannot be.

_NEGATIVE = re.compile(r"-(?:[.,]?\d|inf|nan)", re.IGNORECASE)


def finite(text: str) -> float:
    """The finite number in `text`, for argparse; its complaint is the rest of a sentence."""
    try:
        value = number(text, decimal_comma=True)
    except ValueError as error:
        raise argparse.ArgumentTypeError(_not_finite(text) or str(error)) from None
    return value


def out_of_range(option: str, value: float, allowed: tuple[float, float, Code]) -> str | None:
    """What to say of a value that cannot be meant. `allowed`: lowest, highest, and the unit."""
    low, high, unit = allowed
    if low <= value <= high:
        return None
    return f"{option} {value:g} is outside {low:g} to {high:g} ({unit}); correct it."


def joined(arguments: Sequence[str]) -> list[str]:
    """The arguments, each negative value tied to its option: `--dec -8d12m` → `--dec=-8d12m`.

    argparse takes whatever begins with a minus sign for an option unless it is a plain number.
    """
    tied: list[str] = []
    for argument in arguments:
        before = tied[-1] if tied else ""
        if _NEGATIVE.match(argument) and before.startswith("--") and "=" not in before:
            tied[-1] = f"{before}={argument}"
        else:
            tied.append(argument)
    return tied


def _not_finite(text: str) -> str | None:
    try:
        value = float(text.replace("−", "-"))
    except ValueError:
        return None
    return None if math.isfinite(value) else f"{shown(text)} is not a finite number; correct it."


# The time a sub-command is asked for: a text behind `--utc`, or now.

# The series for the Sun, the Moon and the planets (ERFA's) are made for these years.
EARLIEST_UTC_S = -30_610_224_000.0  # 1000-01-01
LATEST_UTC_S = 32_503_680_000.0  # 3000-01-01


class UnusableTime(ValueError):
    """The text is a sentence for the person."""


def moment(text: str | None, now_utc_s: float) -> float:
    """Unix time of an ISO 8601 text; now without one. Raises UnusableTime."""
    if text is None:
        return now_utc_s
    try:
        utc_s = parse_utc(text)
    except ValueError as reason:
        raise UnusableTime(str(reason)) from None
    if not EARLIEST_UTC_S <= utc_s < LATEST_UTC_S:
        raise UnusableTime(
            f"--utc “{text.strip()[:40]}” is not within the years 1000 to 2999, for which places "
            "in the sky can be computed; correct it."
        )
    return utc_s


# Options that say where the mount stands, shared by sub-commands.

OPTIONS = {
    "--latitude": ("latitude_deg", "DEGREES", "latitude, north positive"),
    "--longitude": ("longitude_deg", "DEGREES", "longitude, east positive"),
    "--elevation": ("elevation_m", "METRES", "height above the sea"),
    "--pressure": ("pressure_hpa", "HPA", "air pressure at the place, not reduced to sea level"),
    "--temperature": ("temperature_c", "CELSIUS", "air temperature"),
}


class Unplaceable(ValueError):
    """The options and the log do not say where; the text is a sentence for the person."""


def add_options(parser: argparse.ArgumentParser) -> None:
    """Adds the options to a sub-command."""
    place = parser.add_argument_group("place and air, before what a log says of them")
    for option, (name, unit, meaning) in OPTIONS.items():
        place.add_argument(option, dest=name, metavar=unit, type=finite, help=meaning)


def site_and_air(
    arguments: argparse.Namespace, header: Header, rejected: Sequence[Rejected] = ()
) -> tuple[Site, Air]:
    """Where, from the options and else from the header of a log. Raises Unplaceable.

    `rejected`: lines of the log that were not used; those on the place are named when it lacks.
    """
    given = {name: getattr(arguments, name) for name, _, _ in OPTIONS.values()}
    for option, (name, _, _) in OPTIONS.items():
        _check(option, name, given)
    merged = {n: getattr(header, n) if value is None else value for n, value in given.items()}
    whole = Header(**merged)
    site = whole.site()
    if site is None:
        raise Unplaceable(
            "The place is not known: give --latitude and --longitude (degrees, north and east "
            "positive), or write “# latitude_deg: …” and “# longitude_deg: …” into the log."
            + about_place(rejected)
        )
    return site, whole.air()


def air_notes(site: Site, air: Air) -> tuple[str, ...]:
    """Sentences on a pressure that is assumed, or that cannot be the station's."""
    if air.pressure_is_assumed:
        return (f"The pressure is not known; {air.pressure_hpa:.0f} hPa was assumed.",)
    doubt = pressure_doubt(site, air)
    return () if doubt is None else (str(doubt),)


def about_place(rejected: Sequence[Rejected]) -> str:
    """What the log tried to say of its place, a line for each attempt; empty without any."""
    return "".join(
        f"\nLine {line.line_number} was not used: {line.reason}"
        for line in rejected
        if any(key in line.reason for key in ("latitude_deg", "longitude_deg"))
    )


def _check(option: str, name: str, given: dict[str, float | None]) -> None:
    value, longitude_deg = given[name], given["longitude_deg"]
    sentence = None if value is None else out_of_range(option, value, RANGES[name])
    if value is None or sentence is None:
        return
    if name == "latitude_deg" and looks_swapped(value, longitude_deg):
        raise Unplaceable(
            f"Latitude {value:g} is beyond ±90; longitude {longitude_deg:g} would fit a latitude, "
            "so the two may be swapped: exchange --latitude and --longitude, or correct them."
        )
    raise Unplaceable(sentence)


# What a sub-command found, brought to whoever asked: a terminal, a file, another program.


class Undelivered(Exception):
    """The text did not arrive; the message is a sentence for the person."""


def deliver(text: str, stream: TextIO | None) -> None:
    """Writes all of `text`; a reader that has seen enough and left is no error.

    `stream`: None where the program was started with it closed. Raises Undelivered.
    """
    if stream is None:
        raise Undelivered(
            "The result could not be shown: the program was started with its output closed. "
            "Start it again with an open one, or send the output to a file."
        )
    try:
        stream.write(text)
        stream.flush()
    except BrokenPipeError:
        _abandon(stream)
    except OSError as error:
        _abandon(stream)
        raise Undelivered(
            f"The result could not be written ({error.strerror or error}); "
            "make room there, or send it elsewhere."
        ) from error


def _abandon(stream: TextIO) -> None:
    """What is left in the stream goes nowhere, or its own last flush would fail aloud."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, stream.fileno())
    os.close(nowhere)


# Refuses a log that cannot be true, with every reason there is.


class Implausible(ValueError):
    """The log cannot be true at this place; the text says why in sentences."""


def refuse_impossible(doubts: Iterable[Note]) -> None:
    """Raises Implausible when any of the doubts leaves nothing to compute."""
    reasons = [str(doubt) for doubt in doubts if doubt.code in IMPOSSIBLE]
    if reasons:
        raise Implausible("\n".join([*reasons, "Nothing was computed: the log cannot be right."]))


# What a command says of the lines of a log: those it did not use, and those with a remark.

LINES_SHOWN = 20


def rejected_words(rejected: Sequence[Rejected]) -> Iterator[str]:
    """How many lines were not used, then the first of them with their reasons."""
    if rejected:
        lines = "line" if len(rejected) == 1 else "lines"
        yield f"Not used: {len(rejected)} {lines} of the log."
    for line in rejected[:LINES_SHOWN]:
        yield f"Line {line.line_number}: {line.reason}"
    if len(rejected) > LINES_SHOWN:
        yield f"… and {len(rejected) - LINES_SHOWN} more; --json lists them all."


def remark_words(remarks: Sequence[Remark]) -> Iterator[str]:
    """Something about used lines that the person should know."""
    for remark in remarks:
        yield f"Line {remark.line_number}: {remark.text}"
