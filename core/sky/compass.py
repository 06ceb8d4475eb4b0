"""Directions in words."""

from __future__ import annotations

from core.language import marked, say

_WINDS = (
    *(marked("north"), marked("north-north-east"), marked("north-east"), marked("east-north-east")),
    *(marked("east"), marked("east-south-east"), marked("south-east"), marked("south-south-east")),
    *(marked("south"), marked("south-south-west"), marked("south-west"), marked("west-south-west")),
    *(marked("west"), marked("west-north-west"), marked("north-west"), marked("north-north-west")),
)


def direction_words(azimuth_deg: float) -> str:
    """The nearest of sixteen winds: 250° is "west-south-west"."""
    return say(_WINDS[round(azimuth_deg / 22.5) % len(_WINDS)])
