"""The pole and its star at one moment over one site: what all parts of the Pole page show."""

from __future__ import annotations

from dataclasses import dataclass

from core.alignment.goal import Aim
from core.alignment.polarscope.reading import limits
from core.alignment.polarscope.view import ScopeView, View, scope_view
from core.language import say
from core.sky.horizon import Horizon
from core.sky.pole import Pole, PoleField, PoleStar, elevated_pole, pole_field, pole_star
from core.sky.site import Air, Site


@dataclass(frozen=True, eq=False)
class AimedPole:
    site: Site
    air: Air
    aim: Aim
    utc_s: float
    pole: Pole
    star: PoleStar
    field: PoleField

    @classmethod
    def at(cls, site: Site, air: Air, aim: Aim, utc_s: float) -> AimedPole:
        """Takes about two milliseconds."""
        pole, star = elevated_pole(site, air), pole_star(site, air, utc_s)
        return cls(site, air, aim, utc_s, pole, star, pole_field(site, air, utc_s))

    @property
    def is_north(self) -> bool:
        return self.site.latitude_deg >= 0.0

    @property
    def aim_altitude_deg(self) -> float:
        """Of the pole that is aimed at."""
        lift_deg = self.pole.refracted_altitude_deg - self.pole.true_altitude_deg
        return self.pole.true_altitude_deg + self.aim.share * lift_deg

    def star_in_sight(self, view: View) -> ScopeView:
        """Where the pole star belongs in the sight of an axis on the pole aimed at."""
        return self.in_sight(self.star.azimuth_deg, self.star.altitude_deg, view)

    def in_sight(self, azimuth_deg: object, altitude_deg: object, view: View) -> ScopeView:
        """Places about the pole aimed at."""
        axis = self.pole.azimuth_deg, self.aim_altitude_deg
        return scope_view(azimuth_deg, altitude_deg, *axis, view)  # type: ignore[arg-type]

    def cautions(self, horizon: Horizon) -> tuple[str, ...]:
        """What this latitude and this horizon do to sighting the pole star, in sentences."""
        height_deg = float(horizon.limit_deg(self.pole.azimuth_deg))
        found = list(map(str, limits(self.site)))
        name = self.star.star.name
        if self.star.altitude_deg <= 0.0:
            found.append(
                say("{star} is below the horizon now: it cannot be seen from here.", star=name)
            )
        elif not horizon.is_clear(self.star.azimuth_deg, self.star.altitude_deg):
            found.append(
                say(
                    "By your horizon {star} is hidden now: what stands there reaches "
                    "{height:.0f}° high. Use the ways for a hidden pole.",
                    star=name,
                    height=height_deg,
                )
            )
        return tuple(found)
