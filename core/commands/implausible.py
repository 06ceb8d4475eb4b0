"""Refuses a log that cannot be true, with every reason there is."""

from __future__ import annotations

from collections.abc import Iterable

from core.alignment.plausibility import IMPOSSIBLE
from core.alignment.usable import Note


class Implausible(ValueError):
    """The log cannot be true at this place; the text says why in sentences."""


def refuse_impossible(doubts: Iterable[Note]) -> None:
    """Raises Implausible when any of the doubts leaves nothing to compute."""
    reasons = [doubt.text for doubt in doubts if doubt.code in IMPOSSIBLE]
    if reasons:
        raise Implausible("\n".join([*reasons, "Nothing was computed: the log cannot be right."]))
