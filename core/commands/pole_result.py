"""What the pole sub-command found, and its form for other programs."""

from __future__ import annotations

import json
from dataclasses import asdict, dataclass
from typing import Any

from core.alignment.sight import View, dial_angle_deg
from core.sky.clock import format_utc
from core.sky.magnetic import Declination
from core.sky.pole import Pole, PoleStar, PoleStarTurns
from core.sky.site import Air, Site


@dataclass(frozen=True)
class PoleResult:
    """The pole and its star over a site; `declination` is None where no compass helps.

    `notes`: sentences the person should read.
    """

    site: Site
    air: Air
    utc_s: float
    sidereal_hours: float
    pole: Pole
    star: PoleStar
    turns: PoleStarTurns
    declination: Declination | None
    sun_sentence: str
    notes: tuple[str, ...]

    def as_json(self) -> str:
        """JSON; null where there is no value. Angles and signs as in `core.sky.pole`."""
        return json.dumps(self._as_dict(), indent=2, ensure_ascii=False, allow_nan=False)

    def _as_dict(self) -> dict[str, Any]:
        compass = self.declination
        return {
            "utc": format_utc(self.utc_s),
            "true_pole_altitude_deg": self.pole.true_altitude_deg,
            "refracted_pole_altitude_deg": self.pole.refracted_altitude_deg,
            "refraction_arcsec": self.pole.refraction_arcsec,
            "pole_azimuth_deg": self.pole.azimuth_deg,
            "local_sidereal_time_hours": self.sidereal_hours,
            "pole_star": self._star(),
            "magnetic_declination_deg": None if compass is None else compass.declination_deg,
            "magnetic_declination_sigma_deg": None if compass is None else compass.sigma_deg,
            "sun": self.sun_sentence,
            "notes": list(self.notes),
            "site": asdict(self.site),
            "air": asdict(self.air),
        }

    def _star(self) -> dict[str, Any]:
        star = asdict(self.star)
        name = star.pop("star")["name"]
        turns = asdict(self.turns)
        widest_deg = turns.pop("widest_deg")
        times = {
            event.removesuffix("_utc_s"): None if time is None else format_utc(time)
            for event, time in turns.items()
        }
        angles = {
            view.value: float(dial_angle_deg(star["hour_angle_deg"], self.site.latitude_deg, view))
            for view in View
        }
        return {
            **{"name": name, **star},
            "clock_angle_deg": angles,
            "next": times,
            "widest_azimuth_deg": widest_deg,
        }
