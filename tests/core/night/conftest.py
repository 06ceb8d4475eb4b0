"""Legs of a displaced axis, as the tests of the alignment make them."""

from tests.core.alignment.conftest import air, make_leg

__all__ = ["air", "make_leg"]
