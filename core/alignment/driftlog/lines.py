"""A line of a log as text: whether it can be trusted, and whether it is a remark."""

from __future__ import annotations

from core.alignment.driftlog.records import BadRow
from core.language import say

MAX_LINE_CHARACTERS = 10_000


def check_readable(text: str) -> None:
    """BadRow when a line cannot be trusted as text."""
    if len(text) >= MAX_LINE_CHARACTERS:
        raise BadRow(say("It is longer than {most} characters.", most=MAX_LINE_CHARACTERS))
    if "\0" in text:
        raise BadRow(say("It holds NUL bytes, as a power cut leaves them."))
    if text.isascii():
        return
    if "\ufffd" in text or any("\ud800" <= character <= "\udfff" for character in text):
        raise BadRow(say("It is not UTF-8 text; save the file as UTF-8."))


def is_remark(text: str) -> bool:
    """Whether a line begins with #, as one above the readings does."""
    bare = text.lstrip()
    if bare.startswith('"#'):  # a spreadsheet quotes a line whose text holds its separator
        return bare.rstrip(",;\t ").count('"') == 2 and bare.rstrip(",;\t ").endswith('"')
    return bare.startswith("#")


def announces_separator(text: str) -> bool:
    """Whether a line is that of a spreadsheet, above the column names."""
    return text.lower().startswith("sep=")
