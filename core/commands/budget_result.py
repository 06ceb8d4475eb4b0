"""What the budget sub-command found, in words and for other programs."""

from __future__ import annotations

import json
import math
from collections.abc import Iterator
from dataclasses import asdict, dataclass
from typing import Any

from core.alignment.budget import BestAim, LongestExposure, Share, Smear, Tolerance


@dataclass(frozen=True)
class BudgetResult:
    """`smear` and `longest` are None when no alignment was given."""

    tolerance: Tolerance
    aim: BestAim
    smear: Smear | None
    longest: LongestExposure | None
    notes: tuple[str, ...]

    def as_json(self) -> str:
        """JSON; null for a tolerance beyond 10°."""
        whole = {
            "tolerance": {name: _or_null(value) for name, value in asdict(self.tolerance).items()},
            "aim": asdict(self.aim),
            "smear": None if self.smear is None else _smear(self.smear),
            "longest_exposure": None if self.longest is None else asdict(self.longest),
            "notes": list(self.notes),
        }
        return json.dumps(whole, indent=2, ensure_ascii=False, allow_nan=False)

    def as_text(self) -> str:
        """Sentences, then figures."""
        return "\n".join(self._lines())

    def _lines(self) -> Iterator[str]:
        yield self.tolerance.sentence
        if self.tolerance.possible:
            yield f"Azimuth error alone:  {_arcmin(self.tolerance.azimuth_arcmin)}"
            yield f"Altitude error alone: {_arcmin(self.tolerance.altitude_arcmin)}"
        yield self.aim.sentence
        if self.smear is not None:
            yield ""
            yield self.smear.sentence
            for place, share in (("centre", self.smear.centre), ("corner", self.smear.corner)):
                if share is not None:
                    yield _share(place, share)
        if self.longest is not None:
            yield self.longest.sentence
        yield from self.notes


def _share(place: str, share: Share) -> str:
    return (
        f"{place}: {share.total_px:.2f} pixels; azimuth error {share.azimuth_px:.2f}, "
        f"altitude error {share.altitude_px:.2f}, air {share.air_px:.2f} on their own"
    )


def _smear(smear: Smear) -> dict[str, Any]:
    return {**asdict(smear), "grade": smear.grade.value}


def _or_null(value: float | str) -> float | str | None:
    return None if isinstance(value, float) and not math.isfinite(value) else value


def _arcmin(size: float) -> str:
    return f"{size:.1f}′" if math.isfinite(size) else "any up to 10°"
