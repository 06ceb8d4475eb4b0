"""The parts of a pointing error in words, each with what a person does about it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.words import altitude_side, azimuth_side, figure
from core.sky.site import Site
from core.tracking.pointingmodel import ALTITUDE, AXES, AZIMUTH, SAG, TUBE, ZERO_HOUR

Flags = NDArray[np.bool_]

NAMES = (
    "zero of the hour circle",
    "zero of the declination circle",
    "azimuth of the polar axis",
    "altitude of the polar axis",
    "tube against the declination axis",
    "declination axis against the polar axis",
    "sag of the tube",
)


@dataclass(frozen=True)
class Term:
    """One part, arcmin, signs as in `core.tracking.pointingmodel`, with its standard deviation;
    `interval_factor` of them are half the 95 % interval. `is_determined`: the stars tell it;
    `stands_out`: it is not zero by chance.
    """

    name: str
    value_arcmin: float
    sigma_arcmin: float
    interval_factor: float
    is_determined: bool
    stands_out: bool
    sentence: str


def term(
    number: int, value: float, sigma: float, factor: float, is_determined: bool, site: Site
) -> Term:
    """The record of term `number`, values in arcmin."""
    stands_out = is_determined and abs(value) > factor * sigma
    if not is_determined:
        words = f"These stars do not tell the {NAMES[number]}."
    elif not stands_out:
        words = f"{_capital(number)}: none to speak of, within {factor * sigma:.1f}′."
    else:
        words = _words(number, value, figure(value, factor * sigma), site)
    return Term(NAMES[number], value, sigma, factor, is_determined, stands_out, words)


def _capital(number: int) -> str:
    return NAMES[number][0].upper() + NAMES[number][1:]


def _words(number: int, value: float, size: str, site: Site) -> str:
    if number == AZIMUTH:
        side = azimuth_side(value, float(np.deg2rad(site.latitude_deg)))
        return f"The polar axis points {size} {side.where}: {side.turn}."
    if number == ALTITUDE:
        side = altitude_side(value)
        return f"The polar axis is {size} {side.where}: {side.turn}."
    if number == TUBE:
        way = "east" if value > 0.0 else "west"
        return (
            f"The tube is not square to the declination axis: on the east side of the pier it "
            f"looks {size} too far {way}, on the other as far the other way. Shim the "
            "tube or its rings."
        )
    if number == AXES:
        return (
            f"The two axes miss a right angle by {size}. This is the maker's to correct; a "
            "pointing model allows for it."
        )
    if number == SAG:
        way = "hangs low" if value > 0.0 else "is lifted"
        return (
            f"The tube {way} by {size} at the horizon: tighten rings, focuser and the dovetail, or "
            "support the camera."
        )
    which = "hour angle" if number == ZERO_HOUR else "declination"
    return f"The {which} readings are off by {size}: set the circle, or sync on one star."


def undetermined_sentence(told: Flags, both_sides: bool) -> str | None:
    """What the stars leave open and which stars would tell; None when all is told."""
    if told.all():
        return None
    names = [NAMES[number] for number in np.flatnonzero(~told)]
    listed = names[0] if len(names) == 1 else f"{', '.join(names[:-1])} and {names[-1]}"
    advice = (
        "Add stars near the pole and near the equator, high and low."
        if both_sides
        else "Add stars on the other side of the pier, and near the pole as well as the equator."
    )
    return f"These stars do not tell: {listed}. {advice}"
