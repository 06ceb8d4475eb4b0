"""What the drift sub-command found, and its form for other programs."""

from __future__ import annotations

import json
import math
from dataclasses import asdict, dataclass
from typing import Any

from core.alignment.advice import Advice
from core.alignment.aim import Aim
from core.alignment.axis.priors import Priors
from core.alignment.driftlog import DriftLog
from core.alignment.solution import Solution
from core.alignment.trend import LegTrend
from core.sky.site import Air, Site

_QUANTITIES = (
    "azimuth_error_arcmin",
    "azimuth_sigma_arcmin",
    "azimuth_interval_factor",
    "altitude_error_arcmin",
    "altitude_sigma_arcmin",
    "altitude_interval_factor",
    "correlation",
    "altitude_error_refracted_arcmin",
    "sky_error_arcmin",
    "sky_sigma_arcmin",
)
_LEG_QUANTITIES = (
    "label",
    "sample_count",
    "minutes",
    "drift_arcsec_per_min",
    "drift_sigma_arcsec_per_min",
    "interval_factor",
    "hour_angle_deg",
    "altitude_deg",
    "azimuth_deg",
    "noise_arcsec",
    "correlation_time_s",
    "reading_step_arcsec",
    "angle_deg",
    "angle_sigma_deg",
)


@dataclass(frozen=True, eq=False)
class DriftResult:
    """A log and what follows from it. `notes`: sentences the person should read."""

    log: DriftLog
    site: Site
    air: Air
    priors: Priors
    aim: Aim
    solution: Solution
    advice: Advice
    notes: tuple[str, ...]

    def as_json(self) -> str:
        """JSON; null where the legs cannot tell. Signs as in `core.alignment.geometry`."""
        return json.dumps(self._as_dict(), indent=2, ensure_ascii=False, allow_nan=False)

    def _as_dict(self) -> dict[str, Any]:
        solution, combination = self.solution, self.solution.combination
        return {
            **{name: _or_null(getattr(solution, name)) for name in _QUANTITIES},
            "legs": [_leg(leg) for leg in solution.legs],
            "combination": None if combination is None else asdict(combination),
            "contradicting_legs": list(solution.contradicting_labels),
            "advice": None
            if solution.is_contradictory
            else {
                "aim": self.aim.value,
                "azimuth": self.advice.azimuth,
                "altitude": self.advice.altitude,
            },
            "notes": list(self.notes),
            "rejected_lines": [asdict(line) for line in self.log.rejected],
            "remarks": [asdict(remark) for remark in self.log.remarks],
            "site": asdict(self.site),
            "air": asdict(self.air),
            "priors": asdict(self.priors),
        }


def _leg(leg: LegTrend) -> dict[str, Any]:
    return {
        **{name: _or_null(getattr(leg, name)) for name in _LEG_QUANTITIES},
        "set_aside_count": int(leg.rejected.sum()),
        "steps": [asdict(step) for step in leg.steps],
    }


def _or_null(value: str | float) -> str | float | None:
    return None if isinstance(value, float) and not math.isfinite(value) else value
