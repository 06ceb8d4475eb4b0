"""Figures a person types from a data sheet: label, unit and what is possible, in one table."""

from __future__ import annotations

import math
from dataclasses import dataclass, field, fields
from typing import Any

from core.language import marked, say

_KEY = "quantity"


class ImpossibleValue(ValueError):
    """The text is a sentence for the person."""


@dataclass(frozen=True)
class Quantity:
    """A figure of a record. `low` and `high` are possible themselves."""

    label: str
    unit: str
    low: float
    high: float
    advice: str = marked("correct it, or leave it empty if it is not known")


def quantity(label: str, unit: str, low: float, high: float, default: float | None = None) -> Any:
    """A dataclass field for a figure; empty (None) means not known."""
    return field(default=default, metadata={_KEY: Quantity(label, unit, low, high)})


def quantities(record: object) -> dict[str, Quantity]:
    """The figures of a record or its class, by name, in order: what a form shows."""
    return {
        one.name: one.metadata[_KEY]
        for one in fields(record)  # type: ignore[arg-type]
        if _KEY in one.metadata
    }


def check(record: object, name: str) -> None:
    """Raises `ImpossibleValue` for the first figure of `record` that cannot be."""
    for attribute, limits in quantities(record).items():
        value = getattr(record, attribute)
        if value is None or limits.low <= value <= limits.high:
            continue
        raise ImpossibleValue(_sentence(name, limits, value))


def _sentence(name: str, limits: Quantity, value: float) -> str:
    label, unit, advice = say(limits.label), said_unit(limits), say(limits.advice)
    if limits.low > 0.0 and value <= 0.0 and math.isfinite(value):
        return say(
            "{label} of “{name}” is given as {value:g}{unit}; it is above zero: {advice}.",
            label=label,
            name=name,
            value=value,
            unit=unit,
            advice=advice,
        )
    if limits.low > 0.0 and value <= 0.0:
        return say(
            "{label} of “{name}” is not a number; it is above zero: {advice}.",
            label=label,
            name=name,
            advice=advice,
        )
    if not math.isfinite(value):
        return say(
            "{label} of “{name}” is not a number; it lies between {low:g} and {high:g}{unit}: "
            "{advice}.",
            label=label,
            name=name,
            low=limits.low,
            high=limits.high,
            unit=unit,
            advice=advice,
        )
    return say(
        "{label} of “{name}” is given as {value:g}{unit}; it lies between {low:g} and "
        "{high:g}{unit}: {advice}.",
        label=label,
        name=name,
        value=value,
        low=limits.low,
        high=limits.high,
        unit=unit,
        advice=advice,
    )


def said_unit(limits: Quantity) -> str:
    """The unit behind a figure, its gap included; nothing for a bare number."""
    return say(limits.unit) if limits.unit else ""
