"""Directions in words."""

from __future__ import annotations

_WINDS = (
    *("north", "north-north-east", "north-east", "east-north-east"),
    *("east", "east-south-east", "south-east", "south-south-east"),
    *("south", "south-south-west", "south-west", "west-south-west"),
    *("west", "west-north-west", "north-west", "north-north-west"),
)


def direction_words(azimuth_deg: float) -> str:
    """The nearest of sixteen winds: 250° is "west-south-west"."""
    return _WINDS[round(azimuth_deg / 22.5) % len(_WINDS)]
