"""Which lines above the readings state a quantity, and which only seem to."""

from __future__ import annotations

import re
from collections.abc import Collection
from difflib import get_close_matches

from core.language import say

_PAIR = re.compile(r"([^:=]*)([:=])(.*)", re.DOTALL)
_WITH_UNIT = re.compile(
    r"[a-z]\w*_(?:m|km|ft|feet|metres|meters|hpa|pa|kpa|mbar|mb|bar|inhg|mmhg|atm|c|f|k|celsius"
    r"|fahrenheit|deg|degrees|rad)"
)
_QUANTITIES = (
    ("latitude", "longitude", "elevation", "altitude", "height", "pressure", "temperature"),
    ("lat", "lon", "long", "lng", "elev", "alt", "press", "temp", "qnh", "qfe"),
)
_LIKE = 0.8  # of `get_close_matches`: one or two wrong letters in a word of eight
_MOST_WORDS = 2  # more are a sentence with a colon in it


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


def unknown_key_reason(key: str, value: str, known: Collection[str]) -> str | None:
    """Why a pair that seems to state a quantity is not used; None when it seems a comment."""
    if not _states_quantity(key, value):
        return None
    return say(
        "The key “{key}” is not known, so its value is not used. Known are {names}: rename it and "
        "convert its value, or leave out the sign behind it if this is a remark.",
        key=key[:40],
        names=", ".join(known),
    )


def _states_quantity(key: str, value: str) -> bool:
    name = name_of(key)
    if " " not in key.strip() and _WITH_UNIT.fullmatch(name):
        return True
    words = name.split("_")
    if len(words) > _MOST_WORDS or not any(character.isdigit() for character in value):
        return False
    written_out, short = _QUANTITIES
    return words[0] in short or bool(get_close_matches(words[0], written_out, cutoff=_LIKE))
