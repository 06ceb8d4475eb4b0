"""Which deep-sky objects are best placed tonight."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import erfa
import numpy as np
from numpy.typing import NDArray

from core.night.plannight import Night
from core.night.plantarget import Target, of_deep_sky
from core.sky import place
from core.sky.bodies import Body, course
from core.sky.deepsky import DeepSky
from core.sky.horizon import Horizon
from core.sky.refraction import Refraction
from core.sky.separation import separation_deg
from core.sky.site import Air

Floats = NDArray[np.float64]

_STEP_S = 600.0
_MOONLESS_DEG = 90.0  # as far away the Moon's light is spread evenly; common practice, no source


@dataclass(frozen=True)
class Placed:
    """A target and its night.

    `merit_hours`: hours of usable darkness in which it is clear, each counted by the sine of the
    altitude (the inverse of the air's thickness) and less where the Moon shines near; an order to
    look in, our own. `clear_hours`: those hours as they are. `moon_apart_deg` when it is highest.
    """

    target: Target
    merit_hours: float
    clear_hours: float
    highest_deg: float
    highest_utc_s: float
    moon_apart_deg: float


def showpieces(deep_sky: DeepSky, faintest: float = 9.0) -> list[Target]:
    """Messier's objects and others no fainter than that; numbers that turned out stars are not."""
    return [
        of_deep_sky(one)
        for one in deep_sky.objects
        if one.messier is not None
        or (one.magnitude is not None and one.magnitude <= faintest and "star" not in one.kind)
    ]


def best(
    targets: Sequence[Target],
    night: Night,
    air: Air,
    horizon: Horizon | None = None,
    lowest_deg: float = 30.0,
    limit: int = 20,
) -> list[Placed]:
    """The best placed of fixed targets, best first; none where the night has no usable darkness."""
    times = _times(night)
    if not targets or times.size == 0:
        return []
    azimuth, altitude = _places_deg(targets, night, air, times)
    obstruction = (horizon or Horizon.flat()).limit_deg(azimuth)
    clear = altitude > np.maximum(obstruction, lowest_deg)
    moon = course(Body.MOON, night.site, times)
    apart = separation_deg(azimuth, altitude, moon.azimuth_deg, moon.true_altitude_deg)
    darkness = 1.0 - _moonlight(moon.true_altitude_deg, apart, night.moon_lit)
    hours = _STEP_S / 3600.0
    merit = np.sum(clear * np.sin(np.radians(altitude)) * darkness, axis=1) * hours
    order = np.argsort(-merit, kind="stable")[:limit]
    highest = np.argmax(np.where(clear, altitude, -90.0), axis=1)
    return [
        Placed(
            target=targets[i],
            merit_hours=float(merit[i]),
            clear_hours=float(np.sum(clear[i]) * hours),
            highest_deg=float(altitude[i, highest[i]]),
            highest_utc_s=float(times[highest[i]]),
            moon_apart_deg=float(apart[i, highest[i]]),
        )
        for i in order.tolist()
        if merit[i] > 0.0
    ]


def _times(night: Night) -> Floats:
    """The middles of steps through the usable darkness."""
    pieces = [np.arange(begin + 0.5 * _STEP_S, end, _STEP_S) for begin, end in night.usable_spans]
    return np.concatenate(pieces) if pieces else np.empty(0)


def _places_deg(
    targets: Sequence[Target], night: Night, air: Air, times: Floats
) -> tuple[Floats, Floats]:
    """Azimuth and altitude as seen, (targets, times)."""
    ra_deg, dec_deg = np.array([(one.ra_deg, one.dec_deg) for one in targets]).T[..., np.newaxis]
    hour_angle, dec = place.geometric_place_rad(ra_deg, dec_deg, night.site, times)
    azimuth, altitude = erfa.hd2ae(hour_angle, dec, np.radians(night.site.latitude_deg))
    seen = Refraction.of(air).observed_altitude_rad(altitude)
    return np.degrees(azimuth), np.degrees(seen)


def _moonlight(altitude_deg: Floats, apart_deg: Floats, lit: float) -> Floats:
    """How much of the darkness the Moon takes, 0 to 1: all of it beside a full Moon."""
    nearness = np.clip(1.0 - apart_deg / _MOONLESS_DEG, 0.0, 1.0)
    return np.where(altitude_deg > 0.0, lit * (0.4 + 0.6 * nearness), 0.0)
