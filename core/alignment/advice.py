"""The correction in words: how far the axis is off, on which side, and which way to turn it."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from core.alignment.axis.evidence import azimuth_has_meaning, to_sky
from core.alignment.axis.solution import Solution, pole_refraction_arcmin
from core.alignment.goal import USUAL_ARCMIN, Aim, SideConfidence, side_confidence
from core.alignment.words import AxisSide, altitude_side, azimuth_side, figure
from core.language import marked, say
from core.sky.site import Air, Site


@dataclass(frozen=True)
class _Sentences:
    """What is said of one axis: nothing known, too little, right within the ±, or wrong."""

    unknown: str
    open: str
    right: str
    wrong: str


_AZIMUTH = _Sentences(
    marked("Azimuth error: not known yet; these readings cannot tell it."),
    marked("Azimuth: {size}; whether it is off, and to which side, is not clear yet: watch on."),
    marked("Azimuth: {size}, at the pole within the ±: leave it."),
    marked("The axis points {size} {where}: {turn}."),
)
_AZIMUTH_AT_A_POLE = replace(
    _AZIMUTH,
    unknown=marked("Azimuth means nothing at a pole of the Earth, so no error of it is given."),
)
_ALTITUDE = _Sentences(
    marked("Altitude error: not known yet; these readings cannot tell it."),
    marked("Altitude: {size}; whether it is off, and which way, is not clear yet: watch on."),
    marked("Altitude: {size}, at the pole within the ±: leave it."),
    marked("The axis is {size} {where}: {turn}."),
)


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
        return say("The true pole: least field rotation, the usual choice when guiding.")
    if aim is not Aim.REFRACTED_POLE:
        return say(
            "The {aim}, {above:.1f}′ above the true one: chosen for the target, whose "
            "drift and rotation together are least there.",
            aim=say(aim.value),
            above=aim.share * lift,
        )
    return say(
        "The refracted pole, {lift:.1f}′ above the true one here: least drift for "
        "unguided exposures near the pole and high up.",
        lift=lift,
    )


def advise(solution: Solution, aim: Aim, goal_arcmin: float = USUAL_ARCMIN) -> Advice:
    """Advice towards the chosen pole; says east and west, high and low, never plus and minus.

    `goal_arcmin`: on the sky. A bolt is only left alone where the ± is no wider than that.
    """
    latitude_rad = math.radians(solution.latitude_deg)
    azimuth_error = solution.azimuth_error_arcmin
    azimuth_half = solution.azimuth_interval_factor * solution.azimuth_sigma_arcmin
    altitude_error = solution.altitude_error_from(aim)
    altitude_half = solution.altitude_interval_factor * solution.altitude_sigma_arcmin
    azimuth_said, altitude_said = _sentences(solution, latitude_rad)
    azimuth = _piece(
        azimuth_error,
        azimuth_half,
        azimuth_side(azimuth_error, latitude_rad),
        solution.azimuth_interval_factor,
        solution.azimuth_determined,
        goal_arcmin / float(to_sky(latitude_rad)[0]),
        azimuth_said,
    )
    altitude = _piece(
        altitude_error,
        altitude_half,
        altitude_side(altitude_error),
        solution.altitude_interval_factor,
        solution.altitude_determined,
        goal_arcmin,
        altitude_said,
    )
    limits = tuple(note.text for note in solution.notes)
    if solution.combination is not None:
        limits = (solution.combination.sentence, *limits)
    return Advice(*azimuth, *altitude, limits)


def _sentences(solution: Solution, latitude_rad: float) -> tuple[_Sentences, _Sentences]:
    """For azimuth and altitude."""
    if solution.is_contradictory:
        azimuth = marked("Azimuth error: not told while the legs contradict one another.")
        altitude = marked("Altitude error: not told while the legs contradict one another.")
        return replace(_AZIMUTH, unknown=azimuth), replace(_ALTITUDE, unknown=altitude)
    if not azimuth_has_meaning(latitude_rad):
        return _AZIMUTH_AT_A_POLE, _ALTITUDE
    return _AZIMUTH, _ALTITUDE


def _piece(
    error_arcmin: float,
    half_width_arcmin: float,
    side: AxisSide,
    interval_factor: float,
    determined: bool,
    goal_arcmin: float,
    said: _Sentences,
) -> tuple[str, str, str, str]:
    """Sentence, figure, side and turn for one axis; `goal_arcmin` as the bolt turns it."""
    if not determined:
        where = say("not known yet")
        return say(said.unknown), "", where, ""
    size = figure(error_arcmin, half_width_arcmin)
    claimed = side_confidence(error_arcmin, half_width_arcmin, interval_factor)
    if claimed is SideConfidence.OPEN and half_width_arcmin > goal_arcmin:
        where, turn = say("side not clear yet"), say("watch on")
        return say(said.open, size=size), size, where, turn
    if claimed is SideConfidence.OPEN:
        where, turn = say("at the pole within the ±"), say("leave it")
        return say(said.right, size=size), size, where, turn
    if claimed is SideConfidence.PROBABLE:
        side = AxisSide(
            say("probably {where}", where=side.where), say("probably {turn}", turn=side.turn)
        )
    sentence = say(said.wrong, size=size, where=side.where, turn=side.turn)
    return sentence, size, side.where, side.turn
