"""Numbers with or without a unit, as typed on the Site page."""

from __future__ import annotations

import re
from dataclasses import dataclass

from core.language import say
from core.sky.pressure import METRES_PER_FOOT, Offer

_NUMBER = re.compile(r"([+\-−]?\d+(?:[.,]\d*)?)\s*(.*)", re.DOTALL)
# One to three digits and then three: what stands between may part thousands or decimals.
_THOUSANDS = re.compile(r"\+?([1-9]\d{0,2})[.,](\d{3})\s*(.*)", re.DOTALL)
FEET = ("ft", "ft.", "feet", "foot", "'")
FAHRENHEIT = ("f", "°f", "fahrenheit")
# What may be written behind a pressure; which of them is meant, the size of the number tells.
OTHER_PRESSURES = ("inhg", "in", '"', "mmhg", "mm", "torr", "kpa")
_PLAIN = {
    "m": ("", "m", "m.", "metres", "meters"),
    "°C": ("", "c", "°c", "celsius"),
    "hPa": ("", "hpa", "mbar", "mb"),
}


@dataclass(frozen=True)
class Quantity:
    """`unit` in small letters, empty when none was typed."""

    value: float
    unit: str

    def is_in(self, unit: str) -> bool:
        """Whether it is in that unit of the page, said or not."""
        return self.unit in _PLAIN[unit]


def quantity(text: str) -> Quantity | None:
    """None when there is no number. A decimal comma is understood."""
    found = _NUMBER.fullmatch(text.strip())
    if found is None:
        return None
    number, unit = found.groups()
    return Quantity(float(number.replace(",", ".").replace("−", "-")), unit.strip().casefold())


def in_thousands(text: str) -> Quantity | None:
    """“1,520 m” read as 1520 m; None when that is no way of reading it."""
    found = _THOUSANDS.fullmatch(text.strip())
    if found is None:
        return None
    thousands, rest, unit = found.groups()
    return Quantity(float(thousands + rest), unit.strip().casefold())


def thousands_offer(text: str, typed: Quantity, in_thousands: Quantity) -> Offer:
    """Metres that can be read in two ways."""
    question = say(
        "“{text}” can be read as {thousands:g} m or as {decimals:g} m. Use {thousands:g} m?",
        text=text.strip(),
        thousands=in_thousands.value,
        decimals=typed.value,
    )
    return Offer(typed.value, in_thousands.value, question)


def feet_offer(typed: Quantity) -> Offer:
    """Feet said outright are asked about all the same."""
    metres = round(typed.value * METRES_PER_FOOT, 1)
    question = say(
        "{feet:g} feet are {metres:.0f} m. Use {metres:.0f} m?", feet=typed.value, metres=metres
    )
    return Offer(typed.value, metres, question)


def fahrenheit_offer(typed: Quantity) -> Offer:
    """A temperature on the other scale."""
    celsius = round((typed.value - 32.0) / 1.8, 1)
    question = say(
        "Is that {fahrenheit:g} °F? It makes {celsius:.1f} °C.",
        fahrenheit=typed.value,
        celsius=celsius,
    )
    return Offer(typed.value, celsius, question)
