"""Numbers as people and spreadsheets write them, and what to say when they are not numbers."""

from __future__ import annotations

import math
import re

from core.language import say

_SEXAGESIMAL = re.compile(
    r"""\s*([+\-−]?)\s*(\d{1,3})\s*[:h°d\s]\s*(\d{1,2})\s*
        (?:[:m'′\s]\s*(\d{1,2}(?:[.,]\d*)?)?\s*(?:s|"|″|'')?)?\s*""",
    re.VERBOSE | re.IGNORECASE,
)
_SHOWN = 30


def shown(text: str) -> str:
    """The text as quoted in a sentence: shortened, unprintable characters replaced."""
    clean = "".join(c if c.isprintable() else "·" for c in text.strip())
    return say("“{text}”", text=f"{clean[:_SHOWN]}…" if len(clean) > _SHOWN else clean)


def number(text: str, decimal_comma: bool) -> float:
    """The finite number written in `text`; ValueError with the rest of a sentence if none is.

    `decimal_comma`: a comma may stand for the decimal point.
    """
    written = text.strip().replace("−", "-")
    if decimal_comma and "," in written:
        if "." in written or written.count(",") > 1:
            raise ValueError(
                say("{text} mixes commas and points; write it without thousands.", text=shown(text))
            )
        written = written.replace(",", ".")
    try:
        value = float("none" if "_" in written else written)
    except ValueError:
        raise ValueError(_why_not(text)) from None
    if not math.isfinite(value):
        raise ValueError(
            say("{text} is not a finite number; leave such readings out.", text=shown(text))
        )
    return value


def _why_not(text: str) -> str:
    if not text.strip():
        return say("is empty.")
    if "," in text:
        return say(
            "{text} is not a number; with a decimal comma separate the columns by “;”.",
            text=shown(text),
        )
    return say("{text} is not a number.", text=shown(text))


def sexagesimal(text: str) -> float | None:
    """The value of `05:35:17`, `5h35m17s` or `5 35 17` in units of its first part, else None."""
    match = _SEXAGESIMAL.fullmatch(text)
    if match is None:
        return None
    sign, whole, minutes, seconds = match.groups()
    rest_s = float((seconds or "0").replace(",", "."))
    value = int(whole) + int(minutes) / 60.0 + rest_s / 3600.0
    return -value if sign and sign != "+" else value
