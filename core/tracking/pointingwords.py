"""The parts of a pointing error in words, each with what a person does about it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.words import altitude_side, azimuth_side, figure
from core.language import marked, say
from core.sky.site import Site
from core.tracking.pointingmodel import ALTITUDE, AXES, AZIMUTH, SAG, TUBE, ZERO_HOUR

Flags = NDArray[np.bool_]

NAMES = (
    marked("zero of the hour circle"),
    marked("zero of the declination circle"),
    marked("azimuth of the polar axis"),
    marked("altitude of the polar axis"),
    marked("tube against the declination axis"),
    marked("declination axis against the polar axis"),
    marked("sag of the tube"),
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
        words = say("These stars do not tell the {name}.", name=say(NAMES[number]))
    elif not stands_out:
        words = say(
            "{name}: none to speak of, within {size:.1f}′.",
            name=_capital(number),
            size=factor * sigma,
        )
    else:
        words = _words(number, value, figure(value, factor * sigma), site)
    return Term(say(NAMES[number]), value, sigma, factor, is_determined, stands_out, words)


def _capital(number: int) -> str:
    name = say(NAMES[number])
    return name[:1].upper() + name[1:]


def _words(number: int, value: float, size: str, site: Site) -> str:
    if number == AZIMUTH:
        side = azimuth_side(value, float(np.deg2rad(site.latitude_deg)))
        return say(
            "The polar axis points {size} {where}: {turn}.",
            size=size,
            where=side.where,
            turn=side.turn,
        )
    if number == ALTITUDE:
        side = altitude_side(value)
        return say(
            "The polar axis is {size} {where}: {turn}.", size=size, where=side.where, turn=side.turn
        )
    if number == TUBE:
        if value > 0.0:
            return say(
                "The tube is not square to the declination axis: on the east side of the pier it "
                "looks {size} too far east, on the other as far the other way. Shim the tube or "
                "its rings.",
                size=size,
            )
        return say(
            "The tube is not square to the declination axis: on the east side of the pier it "
            "looks {size} too far west, on the other as far the other way. Shim the tube or its "
            "rings.",
            size=size,
        )
    if number == AXES:
        return say(
            "The two axes miss a right angle by {size}. This is the maker's to correct; a "
            "pointing model allows for it.",
            size=size,
        )
    if number == SAG:
        if value > 0.0:
            return say(
                "The tube hangs low by {size} at the horizon: tighten rings, focuser and the "
                "dovetail, or support the camera.",
                size=size,
            )
        return say(
            "The tube is lifted by {size} at the horizon: tighten rings, focuser and the "
            "dovetail, or support the camera.",
            size=size,
        )
    if number == ZERO_HOUR:
        return say(
            "The hour angle readings are off by {size}: set the circle, or sync on one star.",
            size=size,
        )
    return say(
        "The declination readings are off by {size}: set the circle, or sync on one star.",
        size=size,
    )


def undetermined_sentence(told: Flags, both_sides: bool) -> str | None:
    """What the stars leave open and which stars would tell; None when all is told."""
    if told.all():
        return None
    names = [say(NAMES[number]) for number in np.flatnonzero(~told)]
    listed = (
        names[0]
        if len(names) == 1
        else say("{names} and {last}", names=", ".join(names[:-1]), last=names[-1])
    )
    advice = (
        say("Add stars near the pole and near the equator, high and low.")
        if both_sides
        else say(
            "Add stars on the other side of the pier, and near the pole as well as the equator."
        )
    )
    return say("These stars do not tell: {listed}. {advice}", listed=listed, advice=advice)
