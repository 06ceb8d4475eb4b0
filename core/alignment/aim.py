"""Where the axis is brought to: one of the poles, or a place between them."""

from __future__ import annotations

from enum import Enum

from core.language import marked


class Aim(Enum):
    """The true (geometric) pole, the one the air lifts it to, or quarters of the way between.

    The poles lie about an arcminute apart, so a quarter is finer than any alignment.
    """

    TRUE_POLE = marked("true pole")
    QUARTER_UP = marked("place a quarter of the way from the true to the refracted pole")
    HALFWAY = marked("place halfway between the true and the refracted pole")
    THREE_QUARTERS_UP = marked(
        "place three quarters of the way from the true to the refracted pole"
    )
    REFRACTED_POLE = marked("refracted pole")

    @property
    def share(self) -> float:
        """Share of the refraction of the pole by which the aim lies above the true pole."""
        return _SHARES[self]

    @classmethod
    def nearest(cls, share: float) -> Aim:
        """The aim whose share is nearest."""
        return min(cls, key=lambda aim: abs(aim.share - share))


_SHARES = {aim: quarter / 4.0 for quarter, aim in enumerate(Aim)}
