"""Which pole the axis is brought to."""

from __future__ import annotations

from enum import Enum


class Aim(Enum):
    """The true (geometric) pole, or the one the air lifts it to."""

    TRUE_POLE = "true pole"
    REFRACTED_POLE = "refracted pole"
