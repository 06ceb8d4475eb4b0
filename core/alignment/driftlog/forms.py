"""Which columns a log must name: those of a drift, or those of a run of the drive."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field

REQUIRED = ("leg", "utc", "ra_deg", "dec_deg", "north_arcsec")
OPTIONAL = ("east_arcsec", "sigma_arcsec")


@dataclass(frozen=True)
class Form:
    """Names of columns, in the order in which they are usually written.

    `instead`: what will do where a required column is missing. `pixels`: the name under which an
    offset may stand in pixels.
    """

    required: tuple[str, ...]
    optional: tuple[str, ...]
    instead: Mapping[str, str] = field(default_factory=dict)
    pixels: Mapping[str, str] = field(default_factory=dict)

    @property
    def known(self) -> tuple[str, ...]:
        """All that have a meaning, pixels aside."""
        return (*self.required, *self.optional)

    @property
    def example(self) -> str:
        """A line of column names that is enough."""
        return ",".join(self.required)

    def places(self, names: Sequence[str]) -> dict[str, int]:
        """Where each known column stands; one in pixels only where none is in arcseconds."""
        found = {name: names.index(name) for name in self.known if name in names}
        for name, in_pixels in self.pixels.items():
            if name not in found and in_pixels in names:
                found[name] = names.index(in_pixels)
        return found

    def missing(self, place: Mapping[str, int]) -> list[str]:
        """Required columns that stand nowhere, and nothing in their stead."""
        return [
            name
            for name in self.required
            if name not in place and self.instead.get(name) not in place
        ]


DRIFT = Form(REQUIRED, OPTIONAL)
RUN = Form(
    ("leg", "utc", "ra_deg", "dec_deg", "east_arcsec"),
    ("north_arcsec", "sigma_arcsec"),
    # A leg without east offsets is refused later, with words on what the drive is seen in.
    {"east_arcsec": "north_arcsec"},
    {"east_arcsec": "east_px", "north_arcsec": "north_px", "sigma_arcsec": "sigma_px"},
)
