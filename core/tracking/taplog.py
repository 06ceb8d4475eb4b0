"""Reads the record of a tap from CSV: columns `time_s` and `offset_arcsec`, or `offset_px`.

The scale of pixels comes from a line `# scale_arcsec_per_px: …` or from the person. Where `;` or a
tab separates the fields, a comma may be the decimal sign.
"""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np
from numpy.typing import NDArray

from core.alignment.driftlog.columns import (
    SEPARATORS,
    doubled_sentence,
    fitted,
    names_in,
    split,
)
from core.alignment.driftlog.lines import is_remark
from core.alignment.driftlog.numerals import number, shown
from core.alignment.driftlog.records import BadRow
from core.language import say
from core.tracking.run import UnusableRun
from core.tracking.runlog import SCALE_KEY, ScaleNeeded, scale_in_remark

Floats = NDArray[np.float64]

TIME, ARCSEC, PIXELS = "time_s", "offset_arcsec", "offset_px"
MOST_LINES = 200_000


def read_tap(
    lines: Iterable[str], scale_arcsec_per_px: float | None = None
) -> tuple[Floats, Floats]:
    """Time in seconds and offset in arcsec (n,), in order; lines that are no numbers are refused.

    Raises ScaleNeeded for pixels without a scale, UnusableRun for anything else.
    """
    rows: list[tuple[float, float]] = []
    names: list[str] = []
    separator, scale = ",", scale_arcsec_per_px
    for line_number, line in enumerate(lines, start=1):
        text = line.strip("\r\n").removeprefix("\ufeff")
        if line_number > MOST_LINES:
            raise UnusableRun(say("The record is too long for a tap; take the minute around it."))
        if not text or text.isspace():
            continue
        if is_remark(text):
            scale = scale_in_remark(text) if scale is None else scale
        elif not names:
            separator, names = _names(text, line_number)
        else:
            rows.append(_row(text, separator, names, line_number))
    if not rows:
        raise UnusableRun(
            say(
                "The record holds no readings; write {time},{arcsec} and a line each.",
                time=TIME,
                arcsec=ARCSEC,
            )
        )
    return _scaled(np.array(rows), names, scale)


def _names(text: str, line_number: int) -> tuple[str, list[str]]:
    for separator in SEPARATORS:
        names = names_in(text, separator)
        if TIME in names and (ARCSEC in names or PIXELS in names):
            doubled = doubled_sentence(names, (TIME, ARCSEC, PIXELS), line_number)
            if doubled:
                raise UnusableRun(doubled)
            return separator, names
    raise UnusableRun(
        say(
            "The first line should name the columns {time} and {arcsec} (or {pixels}) but "
            "reads {text}.",
            time=TIME,
            arcsec=ARCSEC,
            pixels=PIXELS,
            text=shown(text),
        )
    )


def _row(text: str, separator: str, names: list[str], line_number: int) -> tuple[float, float]:
    offset = ARCSEC if ARCSEC in names else PIXELS
    try:
        written = split(text, separator)
        cells = fitted(written, len(names), separator != ",")
    except BadRow as reason:
        raise UnusableRun(say("Line {number}: {text}", number=line_number, text=reason)) from None
    if len(written) <= max(names.index(TIME), names.index(offset)):
        raise UnusableRun(
            say("Line {line} is shorter than the line of names; correct it.", line=line_number)
        )
    time, seen = (
        _value(cells[names.index(name)], line_number, separator) for name in (TIME, offset)
    )
    return time, seen


def _value(text: str, line_number: int, separator: str) -> float:
    try:
        return number(text.strip(), separator != ",")
    except ValueError as reason:
        raise UnusableRun(
            say("Line {line}: the value {reason}", line=line_number, reason=reason)
        ) from None


def _scaled(rows: Floats, names: list[str], scale: float | None) -> tuple[Floats, Floats]:
    if ARCSEC in names:
        return rows[:, 0], rows[:, 1]
    if scale is None or not 0.01 <= scale <= 1000.0:
        raise ScaleNeeded(
            say(
                "The record gives its offsets in pixels, but not how large a pixel is. Enter "
                "the image scale in arcseconds per pixel, or write “# {scale_key}: …” into the "
                "file.",
                scale_key=SCALE_KEY,
            )
        )
    return rows[:, 0], rows[:, 1] * scale
