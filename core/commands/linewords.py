"""What a command says of the lines of a log: those it did not use, and those with a remark."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from core.alignment.driftlog import Rejected, Remark

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
