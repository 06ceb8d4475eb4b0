"""Reads a drift log from lines of text; see the package for the form of the log."""

from __future__ import annotations

import io
from collections.abc import Callable, Iterable

from core.alignment.driftlog import columns
from core.alignment.driftlog.body import Body
from core.alignment.driftlog.forms import DRIFT, Form
from core.alignment.driftlog.headlines import HeadLines
from core.alignment.driftlog.lines import announces_separator, check_readable, is_remark
from core.alignment.driftlog.records import (
    BadRow,
    DriftLog,
    ReadingCancelled,
    Rejected,
    UnusableLog,
)
from core.language import say

MAX_REJECTED = 100_000  # beyond this, and beyond the used lines, it is another kind of file
LINES_BETWEEN_CALLS = 4_096  # some 20 ms of work

KeepGoing = Callable[[int], bool]


def read(
    lines: Iterable[str],
    *,
    name: str = "",
    keep_going: KeepGoing | None = None,
    form: Form = DRIFT,
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

    def __init__(self, name: str, form: Form) -> None:
        self._name = name
        self._form = form
        self._head = HeadLines()
        self._body: Body | None = None
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
            self._body = Body(columns.find(text, line_number, self._form), self._name)
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
