"""Where the person stands in the procedure, as pages see it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from app.session.guide.afterturn import Surprise
from app.session.guide.state import North
from app.session.guide.turn import TurnMade
from core.alignment.aim import Aim
from core.alignment.axis.estimate import AxisKnowledge
from core.alignment.axis.solution import Solution, pole_refraction_arcmin
from core.alignment.guide.bolts import Base, BoltScale, Turn
from core.alignment.guide.judgement import Judgement
from core.alignment.guide.procedure import Stage
from core.sky.site import Air, Site

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class BoltView:
    """A bolt of the mount: what its turns taught, and its last turn (0 when unknown), signed as the
    scale has it.
    """

    scale: BoltScale | None = None
    last_turns: float = 0.0


@dataclass(frozen=True, eq=False)
class GuideView:
    """`wanted`: the turn that brings the axis to its aim, None while nobody knows;
    `wanted_width_arcmin`: 95 % half-widths of its azimuth and altitude. `seen`: how far
    the star in view says the bolts have gone; `unseen`: the sentence why it cannot.
    `star_moves_arcsec`: how far north and east that star moves by the wanted turn. `known`: all
    that is known of the axis, earlier states included; `information` (2, 2) of it, arcmin⁻².
    `star_at_arcsec`: how far it has moved so far. `bolt_book`: whose bolts these are.
    `off_arcmin`: distance of the axis from its aim, and its 95 % half-width along that way.
    """

    stage: Stage
    north: North
    base: Base
    last_turn: TurnMade | None
    judgement: Judgement | None
    surprise: Surprise | None
    known: AxisKnowledge | None
    information: Floats
    wanted: Turn | None
    wanted_width_arcmin: tuple[float, float] | None
    seen: Turn | None
    unseen: str
    star_moves_arcsec: tuple[float, float] | None
    star_at_arcsec: tuple[float, float] | None
    azimuth_bolt: BoltView
    altitude_bolt: BoltView
    bolt_book: str
    off_arcmin: tuple[float, float] | None


def aim_on_sky(aim: Aim, site: Site, air: Air) -> Floats:
    """Where the axis is wanted (2,), arcmin on the sky from the true pole."""
    return np.array([0.0, aim.share * pole_refraction_arcmin(site, air)])


def off_by(known: AxisKnowledge, aim_arcmin: Floats) -> tuple[float, float]:
    """Distance from the aim on the sky and its 95 % half-width, arcmin."""
    apart = known.sky_arcmin - aim_arcmin
    distance = float(np.linalg.norm(apart))
    way = apart / distance if distance else np.array([0.0, 1.0])
    return distance, known.interval_factor * float(np.sqrt(way @ known.covariance_arcmin2 @ way))


def wanted_turn(known: AxisKnowledge, aim_arcmin: Floats, site: Site) -> Turn:
    """The turn of both bolts that brings the axis from where it is known to be to the aim."""
    apart = aim_arcmin - known.sky_arcmin
    scale = max(float(np.cos(np.deg2rad(site.latitude_deg))), 0.02)
    return Turn(float(apart[0]) / scale, float(apart[1]))


def wanted_width(known: AxisKnowledge, site: Site) -> tuple[float, float]:
    """The 95 % half-widths of the turn wanted, azimuth and altitude, arcmin."""
    scale = max(float(np.cos(np.deg2rad(site.latitude_deg))), 0.02)
    sigma = np.sqrt(np.diag(known.covariance_arcmin2))
    azimuth, altitude = (known.interval_factor * sigma).tolist()
    return azimuth / scale, altitude


def information_of(solution: Solution | None, before: AxisKnowledge | None) -> Floats:
    """What is known so far (2, 2), arcmin⁻²; zeros at the start."""
    if solution is not None:
        legs = sum(solution.information_arcmin2, np.zeros((2, 2)))
        return np.asarray(legs + solution.before_information_arcmin2)
    if before is not None:
        return np.asarray(before.information_arcmin2)
    return np.zeros((2, 2))
