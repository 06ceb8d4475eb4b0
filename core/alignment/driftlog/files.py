"""A drift log on disk: written, and read with protection against files that are something else."""

from __future__ import annotations

import codecs
import io
import math
import os
import stat
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import BinaryIO

from core.alignment.driftlog.header import RANGES
from core.alignment.driftlog.reader import read
from core.alignment.driftlog.records import DriftLog, Extras, Floats, Header, Leg, UnusableLog
from core.alignment.driftlog.table import (
    DRIFT,
    MAX_LINE_CHARACTERS,
    OPTIONAL,
    REQUIRED,
    ColumnNames,
)
from core.language import say
from core.sky.clocks import format_utc

# Whether a path leads to an ordinary file: a pipe makes who opens it wait, a device never ends.


def size_if_ordinary(file: Path) -> int | None:
    """Its size in bytes; None for a folder, a pipe or a device. OSError when there is nothing."""
    status = file.stat()
    return status.st_size if stat.S_ISREG(status.st_mode) else None


# A drift log on disk: its encoding, and protection against files that are something else.

# As many readings as a log may hold, at 128 bytes a line; a plain line has 60.
MAX_BYTES = 256_000_000
_HEAD_BYTES = 65_536
_BYTES_WITHOUT_NUL = 256  # a text may have lost its tail to NULs, but not its beginning
_MOST_ODD = 0.1  # share of undecodable or control characters in the head of a text
_MARKS = (
    (codecs.BOM_UTF8, "utf-8"),
    (codecs.BOM_UTF32_LE, "utf-32"),  # before UTF-16, whose mark begins alike
    (codecs.BOM_UTF32_BE, "utf-32"),
    (codecs.BOM_UTF16_LE, "utf-16"),
    (codecs.BOM_UTF16_BE, "utf-16"),
)

KeepGoing = Callable[[float], bool]


def read_file(
    path: str | os.PathLike[str], keep_going: KeepGoing | None = None, form: ColumnNames = DRIFT
) -> DriftLog:
    """The log in the file at `path`.

    `keep_going(share_read)` is asked now and then with a number from 0 to 1; when it returns
    False, ReadingCancelled is raised. `form`: the columns it must have. Raises UnusableLog, a
    sentence, for everything else.
    """
    file = Path(path)
    name = file.name or str(path)
    try:
        size = _size_of_ordinary_file(file, name)
        with file.open("rb") as raw, _as_text(raw, _encoding(raw, name)) as text:
            going = _by_share(raw, size, keep_going)
            return read(_lines(text), name=name, keep_going=going, form=form)
    except (OSError, ValueError) as error:
        if isinstance(error, UnusableLog):
            raise
        raise UnusableLog(_disk_sentence(name, error)) from error


def _size_of_ordinary_file(file: Path, name: str) -> int:
    size = size_if_ordinary(file)
    if size is None:
        raise UnusableLog(not_ordinary(name))
    if size > MAX_BYTES:
        raise UnusableLog(
            say(
                "{name} has {size:,.0f} MB; a drift log of the longest night has less than "
                "{most:.0f} MB. Choose another file, or split it into one a night.",
                name=name,
                size=size / 1e6,
                most=MAX_BYTES / 1e6,
            )
        )
    if size == 0:
        raise UnusableLog(say("{name} is empty; choose another file.", name=name))
    return size


def not_ordinary(name: str) -> str:
    """What to say of a folder, a pipe or a device in place of a log."""
    return say("{name} is not a file that can be read as a log; choose a CSV file.", name=name)


def _by_share(
    raw: BinaryIO, size: int, keep_going: KeepGoing | None
) -> Callable[[int], bool] | None:
    if keep_going is None:
        return None
    return lambda _lines_read: keep_going(min(1.0, raw.tell() / size))


def _encoding(raw: BinaryIO, name: str) -> str:
    """Leaves `raw` behind its byte order mark, if any; UnusableLog when it is not text."""
    head = raw.read(_HEAD_BYTES)
    raw.seek(0)
    for mark, encoding in _MARKS:
        if head.startswith(mark):
            return "utf-8-sig" if encoding == "utf-8" else encoding
    if head.startswith(b"PK\x03\x04"):
        raise UnusableLog(
            say("{name} is a workbook or an archive; export the sheet as CSV.", name=name)
        )
    text = head.rstrip(b"\0")
    if not text or b"\0" in text[:_BYTES_WITHOUT_NUL]:
        raise UnusableLog(
            say("{name} is a binary file, not text; choose a CSV file in UTF-8.", name=name)
        )
    characters = text.decode("utf-8", "replace")
    odd = sum(c == "\ufffd" or (c < " " and c not in "\t\r\n\f") for c in characters)
    if odd > max(3.0, _MOST_ODD * len(characters)):
        raise UnusableLog(
            say("{name} is not text in UTF-8; choose a CSV file, or save it as UTF-8.", name=name)
        )
    return "utf-8"


def _as_text(raw: BinaryIO, encoding: str) -> io.TextIOWrapper:
    """Text in which what cannot be decoded is marked, so that only its line is lost."""
    errors = "surrogateescape" if encoding.startswith("utf-8") else "replace"
    return io.TextIOWrapper(raw, encoding=encoding, errors=errors, newline=None)


def _lines(text: io.TextIOWrapper) -> Iterator[str]:
    """Lines of bounded length, so that a file without line ends cannot fill memory."""
    while line := text.readline(MAX_LINE_CHARACTERS):
        yield line
        while len(line) == MAX_LINE_CHARACTERS and not line.endswith("\n"):
            line = text.readline(MAX_LINE_CHARACTERS)


def _disk_sentence(name: str, error: OSError | ValueError) -> str:
    if isinstance(error, FileNotFoundError):
        return say("{name} does not exist; was it moved or renamed?", name=name)
    if isinstance(error, PermissionError):
        return say(
            "{name} may not be read; change its permissions or copy it elsewhere.", name=name
        )
    if isinstance(error, OSError):
        return say(
            "{name} could not be read ({problem}); is the drive still there?",
            name=name,
            problem=error.strerror or error,
        )
    return say(
        "{name} could not be read as text ({problem}); save it as CSV in UTF-8.",
        name=name,
        problem=error,
    )


# Writes legs as a drift log, so that reading it back gives the same legs.


def write(header: Header, legs: Sequence[Leg], extras: Sequence[Extras] = ()) -> str:
    """The text of a log. Times are kept to the microsecond, numbers exactly.

    `extras`: texts (n,) of further columns for each leg, as `DriftLog.extras` has them. Raises
    UnusableLog, a sentence, when legs lack a label or share one.
    """
    labels = [_one_line(leg.label) for leg in legs]
    if not all(labels) or len(set(labels)) < len(labels):
        raise UnusableLog(say("The legs were not written: each needs a label of its own."))
    form = _Form(
        tuple(name for name in OPTIONAL if any(getattr(leg, name) is not None for leg in legs)),
        tuple(dict.fromkeys(name for texts in extras for name in texts)),
    )
    text = io.StringIO()
    text.writelines(f"# {line}\n" for line in _head_lines(header))
    text.write(",".join([*REQUIRED, *form.optional, *map(_field, form.extra)]) + "\n")
    for index, leg in enumerate(legs):
        texts = extras[index] if index < len(extras) else {}
        text.writelines(f"{row}\n" for row in form.rows(leg, texts))
    return text.getvalue()


@dataclass(frozen=True)
class _Form:
    """Names of the columns beyond the required ones."""

    optional: tuple[str, ...]
    extra: tuple[str, ...]

    def rows(self, leg: Leg, texts: Extras) -> Iterator[str]:
        star = f"{float(leg.ra_deg)!r},{float(leg.dec_deg)!r}"
        label = _field(_one_line(leg.label))
        blank = ("",) * leg.utc_s.size
        columns = (
            map(format_utc, leg.utc_s.tolist()),
            map(repr, leg.north_arcsec.tolist()),
            *(_numbers(getattr(leg, name), leg.utc_s.size) for name in self.optional),
            *(map(_field, texts.get(name, blank)) for name in self.extra),
        )
        for utc, *rest in zip(*columns, strict=True):
            yield ",".join([label, utc, star, *rest])


def _numbers(values: Floats | None, count: int) -> Iterator[str]:
    if values is None:
        return iter([""] * count)
    return ("" if math.isnan(value) else repr(value) for value in values.tolist())


def _head_lines(header: Header) -> Iterator[str]:
    values = {**vars(header), **header.stated_priors}
    for name in RANGES:
        value = values.get(name)
        if value is not None:
            yield f"{name}: {float(value)!r}"
    for key, value in header.other:
        yield f"{_one_line(key)}: {_one_line(value)}"
    yield from map(_one_line, header.notes)


def _field(text: str) -> str:
    plain = " ".join(text.splitlines())
    if plain.startswith("#") or any(mark in plain for mark in ',"'):
        return '"' + plain.replace('"', '""') + '"'
    return plain


def _one_line(text: str) -> str:
    return " ".join(text.split())
