"""The figures of the Field rotation page: their bounds and what is usual."""

from __future__ import annotations

import math

from app.session.plans import Plans
from core.imaging.rotationdrive import Derotator
from core.imaging.rotationexposure import Frame
from core.language import marked
from core.mount.equipment import Quantity

EMPTY = math.nan
FIGURES: dict[str, tuple[Quantity, float]] = {
    "frame_width_px": (Quantity(marked("Frame, width"), marked(" px"), 16.0, 100_000.0), 4000.0),
    "frame_height_px": (Quantity(marked("Frame, height"), marked(" px"), 16.0, 100_000.0), 3000.0),
    "smear_px": (Quantity(marked("Smear allowed in the corner"), marked(" px"), 0.05, 20.0), 0.5),
    "stack_min": (Quantity(marked("Exposure in all"), marked(" min"), 0.1, 1440.0), 60.0),
    "rotation_exposure_s": (Quantity(marked("One exposure"), marked(" s"), 0.001, 7200.0), EMPTY),
    "rotation_between_s": (Quantity(marked("Pause after each"), marked(" s"), 0.0, 600.0), 2.0),
    "drive_deg_per_s": (
        Quantity(marked("Fastest turn in azimuth"), marked(" °/s"), 0.005, 60.0),
        3.0,
    ),
    "derotator_low_deg": (Quantity(marked("Derotator, lower stop"), " °", -1080.0, 1080.0), -180.0),
    "derotator_high_deg": (Quantity(marked("Derotator, upper stop"), " °", -1080.0, 1080.0), 180.0),
    "derotator_deg_per_s": (
        Quantity(marked("Derotator, fastest turn"), marked(" °/s"), 0.001, 90.0),
        1.0,
    ),
    "set_latitude_deg": (Quantity(marked("Made or set for latitude"), " °", -90.0, 90.0), EMPTY),
    "set_azimuth_deg": (Quantity(marked("Axis east of the pole by"), " °", -45.0, 45.0), 0.0),
}


def figure(plans: Plans, name: str) -> float:
    """As the person gave it, else the usual one; NaN where it was left open."""
    return plans.number(name, FIGURES[name][1])


def frame(plans: Plans) -> Frame:
    return Frame(figure(plans, "frame_width_px"), figure(plans, "frame_height_px"))


def derotator(plans: Plans) -> Derotator:
    names = ("derotator_low_deg", "derotator_high_deg", "derotator_deg_per_s")
    return Derotator(*(figure(plans, name) for name in names))
