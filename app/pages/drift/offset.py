"""Numbers as a person types them at the telescope."""

from __future__ import annotations

import re

from core.language import say


class UnusableNumber(ValueError):
    """The message is a sentence for the person who typed."""


def parse_size(text: str, what: str) -> float:
    """A plain number with a decimal point or comma; `what` names it in the sentence."""
    plain = text.strip().rstrip("″′\"'").strip().replace(",", ".").replace("−", "-")
    if not plain:
        raise UnusableNumber(say("The {what} is empty.", what=what))
    if not re.fullmatch(r"[+-]?\d{1,7}(\.\d*)?", plain):
        raise UnusableNumber(
            say("“{typed}” is not a number; the {what} needs one.", typed=text.strip(), what=what)
        )
    return float(plain)
