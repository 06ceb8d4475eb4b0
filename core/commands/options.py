"""Numbers behind options: a decimal comma, a minus sign, and a sentence for what cannot be."""

from __future__ import annotations

import argparse
import math
import re
from collections.abc import Sequence

from core.alignment.driftlog.numerals import number, shown

_NEGATIVE = re.compile(r"-(?:[.,]?\d|inf|nan)", re.IGNORECASE)


def finite(text: str) -> float:
    """The finite number in `text`, for argparse; its complaint is the rest of a sentence."""
    try:
        value = number(text, decimal_comma=True)
    except ValueError as error:
        raise argparse.ArgumentTypeError(_not_finite(text) or str(error)) from None
    return value


def out_of_range(option: str, value: float, allowed: tuple[float, float, str]) -> str | None:
    """What to say of a value that cannot be meant. `allowed`: lowest, highest, and the unit."""
    low, high, unit = allowed
    if low <= value <= high:
        return None
    return f"{option} {value:g} is outside {low:g} to {high:g} ({unit}); correct it."


def joined(arguments: Sequence[str]) -> list[str]:
    """The arguments, each negative value tied to its option: `--dec -8d12m` → `--dec=-8d12m`.

    argparse takes whatever begins with a minus sign for an option unless it is a plain number.
    """
    tied: list[str] = []
    for argument in arguments:
        before = tied[-1] if tied else ""
        if _NEGATIVE.match(argument) and before.startswith("--") and "=" not in before:
            tied[-1] = f"{before}={argument}"
        else:
            tied.append(argument)
    return tied


def _not_finite(text: str) -> str | None:
    try:
        value = float(text.replace("−", "-"))
    except ValueError:
        return None
    return None if math.isfinite(value) else f"{shown(text)} is not a finite number; correct it."
