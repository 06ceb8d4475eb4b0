"""The field in view while the bolts turn: where the star is, and where it has to go."""

from __future__ import annotations

import math

from app.session.guide.view import GuideView
from app.widgets.chart import Chart, Shape, Spot, rings
from core.language import say


def steer_chart(guide: GuideView, across_arcmin: float) -> Chart | None:
    """North at the top and east on the left, as the sky is seen without a mirror.

    The star stood in the middle when the turn began. None while nobody knows where it goes.
    """
    if guide.star_moves_arcsec is None:
        return None
    radius = across_arcmin / 2.0
    angle, distance = _place(*guide.star_moves_arcsec)
    told = say("Bring the star here.")
    if distance > radius:
        told = say("The star’s place lies outside the field, this way.")
    target = Spot(angle, min(distance, radius), Shape.HOLLOW, 11.0, "", told, is_main=True)
    at_angle, at_distance = _place(*(guide.star_at_arcsec or (0.0, 0.0)))
    star = Spot(at_angle, min(at_distance, radius), Shape.STAR, 5.0, "", say("The star now."))
    rim = ((0.0, say("north")), (270.0, say("east")))
    path = ((at_angle, min(at_distance, radius)), (angle, min(distance, radius)))
    return Chart(radius, rings(radius), (target, star), path, rim)


def _place(north_arcsec: float, east_arcsec: float) -> tuple[float, float]:
    """Clock angle and distance in arcminutes."""
    angle = math.degrees(math.atan2(-east_arcsec, north_arcsec)) % 360.0
    return angle, math.hypot(north_arcsec, east_arcsec) / 60.0
