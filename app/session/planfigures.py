"""The figures of the plan of a night: their bounds and what is usual."""

from __future__ import annotations

from app.session.plans import Plans
from core.language import marked
from core.mount.equipment import Quantity
from core.night.eyepiece import Newtonian, Observer
from core.night.flip import Limits, Series

FIGURES: dict[str, tuple[Quantity, float]] = {
    "lowest_deg": (Quantity(marked("Lowest useful altitude"), " °", 0.0, 80.0), 25.0),
    "past_meridian_deg": (Quantity(marked("May pass the meridian by"), " °", -60.0, 60.0), 5.0),
    "flips_from_deg": (Quantity(marked("Flips from, past the meridian"), " °", 0.0, 60.0), 0.0),
    "turning_s": (Quantity(marked("Turning over takes"), marked(" s"), 0.0, 1800.0), 90.0),
    "recentring_s": (Quantity(marked("Centring again takes"), marked(" s"), 0.0, 3600.0), 180.0),
    "plan_exposure_s": (Quantity(marked("One exposure"), marked(" s"), 0.1, 7200.0), 180.0),
    "plan_between_s": (Quantity(marked("Pause after each"), marked(" s"), 0.0, 600.0), 5.0),
    "axes_height_m": (
        Quantity(marked("Crossing of the axes above ground"), marked(" m"), 0.1, 5.0),
        1.1,
    ),
    "tube_offset_m": (
        Quantity(marked("From there to the middle of the tube"), marked(" m"), 0.0, 2.0),
        0.25,
    ),
    "forward_m": (
        Quantity(marked("Eyepiece forward along the tube"), marked(" m"), -3.0, 5.0),
        0.45,
    ),
    "out_m": (Quantity(marked("Eye out from the tube's middle"), marked(" m"), 0.0, 2.0), 0.22),
    "turned_deg": (Quantity(marked("Eyepiece turned in the rings"), " °", -180.0, 180.0), 0.0),
    "eye_low_m": (Quantity(marked("Eye comfortable from"), marked(" m"), 0.0, 3.0), 0.9),
    "eye_high_m": (Quantity(marked("Eye comfortable to"), marked(" m"), 0.2, 4.0), 1.7),
}


def figure(plans: Plans, name: str) -> float:
    """As the person gave it, else the usual one."""
    return plans.number(name, FIGURES[name][1])


def limits(plans: Plans) -> Limits:
    names = ("past_meridian_deg", "flips_from_deg", "turning_s", "recentring_s")
    return Limits(*(figure(plans, name) for name in names))


def series(plans: Plans) -> Series:
    return Series(figure(plans, "plan_exposure_s"), figure(plans, "plan_between_s"))


def newtonian(plans: Plans) -> Newtonian:
    names = ("axes_height_m", "tube_offset_m", "forward_m", "out_m", "turned_deg")
    return Newtonian(*(figure(plans, name) for name in names))


def observer(plans: Plans) -> Observer:
    return Observer(figure(plans, "eye_low_m"), figure(plans, "eye_high_m"))
