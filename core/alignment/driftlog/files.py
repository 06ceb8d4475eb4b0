"""A drift log on disk: its encoding, and protection against files that are something else."""

from __future__ import annotations

import codecs
import io
import os
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import BinaryIO

from core.alignment.driftlog.forms import DRIFT, Form
from core.alignment.driftlog.lines import MAX_LINE_CHARACTERS
from core.alignment.driftlog.ordinary import size_if_ordinary
from core.alignment.driftlog.reader import read
from core.alignment.driftlog.records import DriftLog, UnusableLog
from core.language import say

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
    path: str | os.PathLike[str], keep_going: KeepGoing | None = None, form: Form = DRIFT
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
