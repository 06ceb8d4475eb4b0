"""What a drawing of masses on a beam shows, to scale."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Block:
    """A mass at its place along the beam, mm from the pivot, positive to the right."""

    name: str
    mass_kg: float
    arm_mm: float
    is_weight: bool = False


@dataclass(frozen=True)
class Beam:
    """`rail_mm`: a rail drawn from one place to another (the bar, the tube). `slide_mm`: an arrow
    of that length. `left`, `right`: what lies on either side. `told`: the drawing in a sentence.
    """

    blocks: tuple[Block, ...]
    pivot: str
    left: str
    right: str
    rail_mm: tuple[float, float] | None = None
    rail: str = ""
    slide_mm: float | None = None
    told: str = ""

    @property
    def span_mm(self) -> tuple[float, float]:
        """From the leftmost to the rightmost thing."""
        places = [block.arm_mm for block in self.blocks] + [0.0]
        if self.rail_mm is not None:
            places += self.rail_mm
        return min(places), max(places)

    @property
    def heaviest_kg(self) -> float:
        return max((block.mass_kg for block in self.blocks), default=1.0)


def stacked(blocks: tuple[Block, ...], widths_mm: dict[str, float]) -> dict[str, int]:
    """Blocks that would cover each other, one above the other: the level of each by name."""
    levels: dict[str, int] = {}
    placed: list[tuple[float, float, int]] = []
    for block in sorted(blocks, key=lambda one: -one.mass_kg):
        half = widths_mm[block.name] / 2.0
        low, high = block.arm_mm - half, block.arm_mm + half
        level = 0
        while any(level == own and low < end and begin < high for begin, end, own in placed):
            level += 1
        placed.append((low, high, level))
        levels[block.name] = level
    return levels
