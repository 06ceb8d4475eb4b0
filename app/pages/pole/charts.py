"""The charts of the Pole page: the star field round the pole, and the view through a sight."""

from __future__ import annotations

from app.pages.pole import words
from app.pages.pole.sight import Sight
from app.pages.pole.standing import Standing
from app.widgets.chart import Chart, Shape, Spot, rings, star_size
from core.alignment.polarscope.view import InSight, View, dial_angle_deg, in_sight
from core.language import say

DEGREES_AN_HOUR = 15.041
PATH_STEPS_H = (0.15, 0.3, 0.45, 0.6, 0.75, 0.9, 1.0)


def field_chart(standing: Standing, view: View, radius_arcmin: float, chosen_hip: int) -> Chart:
    """The stars about the true pole, both poles to scale; one star may be pointed out."""
    about = standing.pole.azimuth_deg, standing.pole.true_altitude_deg
    stars = in_sight(standing.field.azimuth_deg, standing.field.altitude_deg, *about, view)
    lifted = in_sight(about[0], standing.pole.refracted_altitude_deg, *about, view)
    spots = _stars(standing, stars, radius_arcmin, chosen_hip)
    refracted = _spot(lifted, Shape.SALTIRE, 6.0, say("refracted pole"))
    true = Spot(0.0, 0.0, Shape.CROSS, 8.0, say("true pole"), say("The true pole."), is_main=True)
    if lifted.distance_arcmin * 25.0 < radius_arcmin:  # too close together to name both
        true = Spot(0.0, 0.0, Shape.CROSS, 8.0, say("pole"), say("Both poles."), is_main=True)
        refracted = _spot(lifted, Shape.SALTIRE, 6.0, "")
    return Chart(
        radius_arcmin, rings(radius_arcmin), (true, refracted, *spots), rim=_rim(standing, view)
    )


def sight_chart(standing: Standing, sight: Sight) -> Chart:
    """The view through the sight of an axis that is on the pole aimed at.

    A hollow circle shows where the pole star belongs, a dotted line its way in the next hour, a
    diamond where the person has seen it.
    """
    radius = 30.0 * sight.field_deg
    seen = standing.in_sight(standing.field.azimuth_deg, standing.field.altitude_deg, sight.view)
    others = _stars(standing, seen, radius, 0, left_out_hip=standing.star.star.hip)
    place = standing.star_in_sight(sight.view)
    told = say(
        "{star} belongs at {place}.",
        star=standing.star.star.name,
        place=words.on_clock(*_plain(place)),
    )
    belongs = Spot(*_plain(place), Shape.HOLLOW, 9.0, standing.star.star.name, told, is_main=True)
    axis = Spot(0.0, 0.0, Shape.CROSS, 6.0, say("axis"), say("The middle of the sight: the axis."))
    spots = [belongs, axis, *others]
    if sight.sighting is not None:
        mine = sight.sighting.clock_angle_deg, sight.sighting.distance_arcmin
        told = say("You saw it at {place}.", place=words.on_clock(*mine))
        spots.append(Spot(*mine, Shape.DIAMOND, 9.0, say("seen"), told, is_main=True))
    path = _path(standing, sight.view, place)
    return Chart(radius, rings(radius), tuple(spots), path, _rim(standing, sight.view))


def _plain(place: InSight) -> tuple[float, float]:
    return float(place.clock_angle_deg), float(place.distance_arcmin)


def _spot(place: InSight, shape: Shape, size: float, name: str) -> Spot:
    return Spot(*_plain(place), shape, size, name, say("The refracted pole."))


def _stars(
    standing: Standing,
    seen: InSight,
    radius: float,
    chosen_hip: int,
    left_out_hip: int | None = None,
) -> list[Spot]:
    field = standing.field
    spots = []
    for index, star in enumerate(field.stars):
        place = float(seen.clock_angle_deg[index]), float(seen.distance_arcmin[index])
        if place[1] > radius or star.hip == left_out_hip:
            continue
        is_pole_star = star.hip == standing.star.star.hip
        is_main = is_pole_star or star.hip == chosen_hip
        name = star.name if is_main else f"{star.magnitude:.1f}"
        told = say(
            "{star}, magnitude {magnitude:.1f}: {place}.",
            star=star.name,
            magnitude=star.magnitude,
            place=words.on_clock(*place),
        )
        size = star_size(star.magnitude) + (2.0 if star.hip == chosen_hip else 0.0)
        spots.append(Spot(*place, Shape.STAR, size, name, told, is_main))
    return spots


def _path(standing: Standing, view: View, place: InSight) -> tuple[tuple[float, float], ...]:
    """The star's way through the next hour: it only turns about the pole."""
    angle, distance = _plain(place)
    now_deg, latitude_deg = standing.star.hour_angle_deg, standing.site.latitude_deg
    turned = [now_deg + DEGREES_AN_HOUR * step for step in (0.0, *PATH_STEPS_H)]
    dial = dial_angle_deg(turned, latitude_deg, view)
    return tuple((float(angle + step - dial[0]) % 360.0, distance) for step in dial)


def _rim(standing: Standing, view: View) -> tuple[tuple[float, str], ...]:
    """Which way is up and which is east: from three directions about a level axis."""
    about = in_sight([0.0, 1.0, -1.0], [46.0, 45.0, 45.0], 0.0, 45.0, view).clock_angle_deg
    east, west = say("east"), say("west")
    greater, smaller = (east, west) if standing.is_north else (west, east)
    angles = [float(round(angle / 90.0) * 90 % 360) for angle in about]
    return ((angles[0], say("up")), (angles[1], greater), (angles[2], smaller))
