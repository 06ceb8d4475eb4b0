"""What a drawing of masses on a beam shows, to scale."""

from __future__ import annotations

from dataclasses import dataclass

GAP_PX = 3.0


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
    of that length. `are_named`: names above the blocks instead of numbers in them. `left`, `right`:
    what lies on either side. `told`: the drawing in a sentence.
    """

    blocks: tuple[Block, ...]
    pivot: str
    left: str
    right: str
    rail_mm: tuple[float, float] | None = None
    slide_mm: float | None = None
    are_named: bool = False
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


def stacked(blocks: tuple[Block, ...], sides_px: list[float], px_per_mm: float) -> list[float]:
    """How high each block stands so that none covers another, heavy ones below; pixels."""
    bases = [0.0] * len(blocks)
    placed: list[tuple[float, float, float]] = []
    for number in sorted(range(len(blocks)), key=lambda one: -blocks[one].mass_kg):
        middle, side = blocks[number].arm_mm * px_per_mm, sides_px[number]
        low, high = middle - side / 2.0 - GAP_PX, middle + side / 2.0 + GAP_PX
        under = [top for begin, end, top in placed if low < end and begin < high]
        bases[number] = max(under, default=0.0)
        placed.append((low, high, bases[number] + side + GAP_PX))
    return bases
