"""What the polar axis adds to the smear of tonight's exposures, unguided and guided."""

from __future__ import annotations

from dataclasses import dataclass, replace

from app.pages.tracking.question import Question
from core.imaging.task import Optics, Target, Task, Vantage
from core.language import say
from core.tracking.exposure import SteadyDrift, polar_part
from core.units import ARCMIN_PER_RAD, ARCSEC_PER_RAD

HOURS_DEG = 45.0  # either side of the meridian
_PIXEL_UM, _ACROSS_PX = 4.0, 1000  # of a stand-in sensor; the middle of the field knows no size


@dataclass(frozen=True, eq=False)
class PolarDrift:
    """None where it is not known. `sentence`: what is and what is not in the curves."""

    unguided: SteadyDrift | None
    guided: SteadyDrift | None
    sentence: str

    def of_guided(self, is_guided: bool) -> SteadyDrift | None:
        return self.guided if is_guided else self.unguided


def polar_drift(asked: Question) -> PolarDrift | None:
    """Raises `UnusableTask` when the target is not up. None without a scale or a run."""
    figures, scale = asked.figures, asked.figures.scale_arcsec_per_px
    place = asked.here if asked.run is None else asked.run.place or asked.here
    if scale is None:
        return None
    if place is None or place.alignment is None:
        return PolarDrift(
            None,
            None,
            say(
                "The polar axis is not known yet: what its error adds is counted as part "
                "of the drive when unguided, and left out when guided. Finish an "
                "alignment on the Drift page."
            ),
        )
    declination = figures.declination_deg or 0.0
    target = Target(declination, -HOURS_DEG, HOURS_DEG)
    optics = asked.optics
    if optics is None or abs(optics.scale_arcsec_per_px / scale - 1.0) > 0.01:
        optics = None
    stand_in = Optics(_PIXEL_UM * 1e-3 * ARCSEC_PER_RAD / scale, _PIXEL_UM, _ACROSS_PX, _ACROSS_PX)
    task = Task(target, optics or stand_in, figures.exposure_s or 1.0, None)
    vantage = Vantage.of(place.site, place.air)
    unguided = polar_part(task, vantage, place.alignment)
    if optics is None:
        return PolarDrift(
            unguided,
            None,
            say(
                "The polar axis is in the unguided curves. The turning of the field "
                "about the guide star is not in the guided one: it needs the telescope "
                "and camera of the Mount page."
            ),
        )
    corner = optics.half_diagonal_rad * ARCMIN_PER_RAD
    guided = polar_part(
        replace(task, guide_star_to_far_corner_arcmin=corner), vantage, place.alignment
    )
    return PolarDrift(
        unguided,
        guided,
        say(
            "The polar axis is in all curves: as a drift when unguided, as the "
            "turning of the field about a guide star in its middle when guided."
        ),
    )
