"""Which lines above the readings state a quantity, and which only seem to."""

from __future__ import annotations

import re
from collections.abc import Collection, Sequence
from difflib import get_close_matches

from core.language import say

_PAIR = re.compile(r"([^:=]*)([:=])(.*)", re.DOTALL)
_WITH_UNIT = re.compile(
    r"([a-z]\w*)_(?:m|km|ft|feet|metres|meters|hpa|pa|kpa|mbar|mb|bar|inhg|mmhg|atm|c|f|k|celsius"
    r"|fahrenheit|deg|degrees|rad|arcsec|arcsecs|arcseconds|arcmin|arcminutes|s|sec|seconds)"
    r"(?:_per_g)?"
)
_ALSO_SAID = ("altitude", "height")  # for what is known by another name
_SHORT = ("lat", "lon", "long", "lng", "elev", "alt", "press", "temp", "qnh", "qfe")
_LIKE = 0.8  # of `get_close_matches`: one or two wrong letters in a word of eight


def pair(line: str) -> tuple[str, str] | None:
    """Key and value as written in `key: value`, or in `word = value`; None in free text."""
    found = _PAIR.fullmatch(line)
    if found is None:
        return None
    key, mark, value = found.groups()
    if mark == "=" and len(key.split()) != 1:
        return None
    return key.strip(), value.strip()


def name_of(key: str) -> str:
    """The key in the spelling of the known ones: ``Latitude-deg`` is ``latitude_deg``."""
    return "_".join(key.lower().replace("-", " ").split())


def without_unit(name: str) -> str:
    """What a name in the spelling of the known ones measures: `elevation` of `elevation_m`."""
    found = _WITH_UNIT.fullmatch(name)
    return name if found is None else found[1]


def unknown_key_reason(key: str, value: str, known: Collection[str]) -> str | None:
    """Why a pair that seems to state a quantity is not used; None when it seems a comment."""
    if not _states_quantity(key, value, [*map(without_unit, known), *_ALSO_SAID]):
        return None
    return say(
        "The key “{key}” is not known, so its value is not used. Known are {names}: rename it and "
        "convert its value, or leave out the sign behind it if this is a remark.",
        key=key[:40],
        names=", ".join(known),
    )


def _states_quantity(key: str, value: str, quantities: Collection[str]) -> bool:
    name = name_of(key)
    if " " not in key.strip() and _WITH_UNIT.fullmatch(name):
        return True
    if not any(character.isdigit() for character in value):
        return False
    words = name.split("_")
    short = words[0] in _SHORT and len(words) <= 2
    return short or any(_begins_like(words, quantity.split("_")) for quantity in quantities)


def _begins_like(words: Sequence[str], quantity: Sequence[str]) -> bool:
    """Whether a key is a quantity and one word at most; more are a sentence with a colon in it."""
    if not len(quantity) <= len(words) <= len(quantity) + 1:
        return False
    pairs = zip(words, quantity, strict=False)
    return all(get_close_matches(word, [meant], cutoff=_LIKE) for word, meant in pairs)
