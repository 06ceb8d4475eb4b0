"""What the pole star's place in the sight says of the axis, as a verdict to show."""

from __future__ import annotations

import math
from datetime import UTC, datetime

from app.pages.pole import words
from app.pages.pole.sight import Sight, Sighting
from app.pages.pole.standing import Standing
from app.widgets.verdict import AxisVerdict, Verdict
from core.alignment.polarscope.reading import SightedError, error_from_sighting
from core.alignment.polarscope.view import InSight, UnusableSighting
from core.alignment.words import altitude_side, azimuth_side
from core.language import say


def verdict(standing: Standing, sight: Sight, sighting: Sighting) -> Verdict:
    """What was read stays true for its moment, so it is judged by that."""
    place = InSight(sighting.clock_angle_deg, sighting.distance_arcmin)  # type: ignore[arg-type]
    try:
        error = error_from_sighting(place, sight.view, standing.site, standing.air, sighting.utc_s)
    except UnusableSighting as problem:
        nothing = AxisVerdict("", "–", "")
        return Verdict(nothing, nothing, finding=str(problem))
    return Verdict(_azimuth(error, standing), _altitude(error, standing), _quiet(error, sighting))


def _azimuth(error: SightedError, standing: Standing) -> AxisVerdict:
    latitude_rad = math.radians(standing.site.latitude_deg)
    side = azimuth_side(error.azimuth_error_arcmin, latitude_rad)
    return AxisVerdict(words.size(error.azimuth_error_arcmin), side.where, side.turn)


def _altitude(error: SightedError, standing: Standing) -> AxisVerdict:
    lift = error.altitude_error_arcmin - error.altitude_error_refracted_arcmin
    arcmin = error.altitude_error_arcmin - standing.aim.share * lift
    side = altitude_side(arcmin)
    return AxisVerdict(words.size(arcmin), side.where, side.turn)


def _quiet(error: SightedError, sighting: Sighting) -> tuple[str, ...]:
    return (
        say(
            "On the sky the axis is {size} from the true pole, as read at {time:%H:%M:%S} UTC.",
            size=words.size(error.sky_error_arcmin),
            time=datetime.fromtimestamp(sighting.utc_s, UTC),
        ),
        say("A sight is good to a few minutes of arc at best: then watch a star drift."),
    )
