"""The correction in words: how far the axis is off, on which side, and which way to turn it."""

from __future__ import annotations

from dataclasses import dataclass

from core.alignment.aim import Aim
from core.alignment.geometry import ARCMIN_PER_RAD
from core.alignment.solution import Solution, pole_refraction_arcmin
from core.alignment.words import Side, altitude_side, azimuth_side, figure
from core.sky.site import Air, Site

_RAD_PER_DEG = 60.0 / ARCMIN_PER_RAD


@dataclass(frozen=True)
class Advice:
    """Sentences and their pieces. Figures carry the 95 % half-width; empty where undetermined."""

    azimuth: str
    azimuth_figure: str
    azimuth_side: str
    azimuth_turn: str
    altitude: str
    altitude_figure: str
    altitude_side: str
    altitude_turn: str
    limits: tuple[str, ...]


def aim_sentence(aim: Aim, site: Site, air: Air) -> str:
    """Why one would aim there."""
    lift = pole_refraction_arcmin(site, air)
    if aim is Aim.TRUE_POLE:
        return "The true pole: least field rotation, the usual choice when guiding."
    if aim is not Aim.REFRACTED_POLE:
        return (
            f"The {aim.value}, {aim.share * lift:.1f}′ above the true one: chosen for the target, "
            "whose drift and rotation together are least there."
        )
    return (
        f"The refracted pole, {lift:.1f}′ above the true one here: "
        "least drift for unguided exposures near the pole and high up."
    )


def advise(solution: Solution, aim: Aim) -> Advice:
    """Advice towards the chosen pole; says east and west, high and low, never plus and minus."""
    latitude_rad = solution.latitude_deg * _RAD_PER_DEG
    azimuth_error = solution.azimuth_error_arcmin
    azimuth_half = solution.azimuth_interval_factor * solution.azimuth_sigma_arcmin
    altitude_error = solution.altitude_error_from(aim)
    altitude_half = solution.altitude_interval_factor * solution.altitude_sigma_arcmin
    azimuth = _piece(
        azimuth_error,
        azimuth_half,
        azimuth_side(azimuth_error, latitude_rad),
        solution.azimuth_determined,
        "Azimuth",
    )
    altitude = _piece(
        altitude_error,
        altitude_half,
        altitude_side(altitude_error),
        solution.altitude_determined,
        "Altitude",
    )
    limits = tuple(note.text for note in solution.notes)
    if solution.combination is not None:
        limits = (solution.combination.sentence, *limits)
    return Advice(*azimuth, *altitude, limits)


def _piece(
    error_arcmin: float, half_width_arcmin: float, side: Side, determined: bool, axis: str
) -> tuple[str, str, str, str]:
    """Sentence, figure, side and turn for one axis."""
    if not determined:
        where = "not known yet"
        return f"{axis} error: {where}; these readings cannot tell it.", "", where, ""
    size = figure(error_arcmin, half_width_arcmin)
    if abs(error_arcmin) <= half_width_arcmin:
        where, turn = "at the pole within the ±", "leave it"
        return f"{axis}: {size}, {where}: {turn}.", size, where, turn
    if axis == "Azimuth":
        sentence = f"The axis points {size} {side.where}: {side.turn}."
    else:
        sentence = f"The axis is {size} {side.where}: {side.turn}."
    return sentence, size, side.where, side.turn
