"""Two figures a line, as a person types them."""

from __future__ import annotations

from core.alignment.driftlog.table import number
from core.language import say


class UnusablePairs(ValueError):
    """The text is a sentence for the person."""


def pairs(text: str) -> tuple[list[float], list[float]]:
    """First and second figures; empty lines are passed over. Comma or point, a space between."""
    firsts, seconds = [], []
    for line_number, line in enumerate(text.splitlines(), start=1):
        words = line.replace(";", " ").split()
        if not words:
            continue
        if len(words) != 2:
            raise UnusablePairs(
                say("Line {line} needs two figures with a space between them.", line=line_number)
            )
        try:
            first, second = (number(word, decimal_comma=True) for word in words)
        except ValueError as reason:
            raise UnusablePairs(
                say("Line {number}: {text}", number=line_number, text=reason)
            ) from None
        firsts.append(first)
        seconds.append(second)
    return firsts, seconds
