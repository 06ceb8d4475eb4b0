"""Numbers as a person types them at the telescope."""

from __future__ import annotations

import re


class UnusableNumber(ValueError):
    """The message is a sentence for the person who typed."""


def parse_size(text: str, what: str) -> float:
    """A plain number with a decimal point or comma; `what` names it in the sentence."""
    plain = text.strip().rstrip("″′\"'").strip().replace(",", ".").replace("−", "-")
    if not plain:
        raise UnusableNumber(f"The {what} is empty.")
    if not re.fullmatch(r"[+-]?\d{1,7}(\.\d*)?", plain):
        raise UnusableNumber(f"“{text.strip()}” is not a number; the {what} needs one.")
    return float(plain)
