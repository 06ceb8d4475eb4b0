"""How far the bolts have gone, read off the star in view while they are turned."""

from __future__ import annotations

from collections import deque

import numpy as np
from numpy.typing import NDArray

from app.sources.source import Reading
from core.alignment.axis.estimate import AxisKnowledge
from core.alignment.drift.geometry import axis_north_end, observed_direction
from core.alignment.driftlog.records import Leg
from core.alignment.guide.bolts import (
    Base,
    SeenTurn,
    Turn,
    seen_accuracy,
    star_shift_arcsec,
    turn_seen,
)
from core.alignment.priors import Priors
from core.sky.places import hour_angle_and_declination
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD

Floats = NDArray[np.float64]

ANCHOR = 5  # readings before the turn whose mean the star is compared with
NEWEST = 3  # readings whose middle one counts, so that a gust does not mislead


class Steering:
    """Compares where the star is seen with where it was seen before the bolts were touched."""

    def __init__(self, leg: Leg, known: AxisKnowledge, site: Site, air: Air, base: Base) -> None:
        """`leg`: the star in view, with at least one reading. Without offsets to the east it is
        told where the star will move, but not how far it has.
        """
        self._site, self._base = site, base
        self._anchor = _anchor(leg)
        self._star = _direction(leg, site, air)
        self._axis = _axis(known, site)
        self._newest: deque[tuple[float, float]] = deque(maxlen=NEWEST)

    def add(self, reading: Reading) -> None:
        """Take a reading of the star during the turn."""
        if reading.east_arcsec is not None and self._anchor is not None:
            self._newest.append((reading.north_arcsec, reading.east_arcsec))

    def turned(self) -> Turn | None:
        """How far so far; None before the first reading. Raises TurnUnseen, a sentence."""
        if not self._newest or self._anchor is None:
            return None
        shift = self.moved_arcsec() or (0.0, 0.0)
        return turn_seen(self._star, self._axis, shift, self._site, self._base)

    def accuracy(self, turn: Turn, priors: Priors) -> SeenTurn:
        """How well the star shows such a turn."""
        return seen_accuracy(self._star, self._axis, turn, self._site, self._base, priors)

    def moved_arcsec(self) -> tuple[float, float] | None:
        """How far north and east the star has gone since the turn began; None before a reading."""
        if not self._newest or self._anchor is None:
            return None
        shift = np.median(np.array(self._newest), axis=0) - self._anchor
        return float(shift[0]), float(shift[1])

    def will_move_arcsec(self, turn: Turn) -> tuple[float, float]:
        """How far north and east the star in view moves by a turn of the bolts."""
        return star_shift_arcsec(self._star, self._axis, turn, self._site, self._base)


def _anchor(leg: Leg) -> Floats | None:
    """Where the star was seen before the turn, (2,) north and east."""
    if leg.east_arcsec is None or not np.isfinite(leg.east_arcsec[-ANCHOR:]).all():
        return None
    return np.array([leg.north_arcsec[-ANCHOR:].mean(), leg.east_arcsec[-ANCHOR:].mean()])


def _direction(leg: Leg, site: Site, air: Air) -> Floats:
    """Unit vector (3,) to where the star of a leg was seen last."""
    hour_angle, declination = hour_angle_and_declination(
        leg.ra_deg, leg.dec_deg, site, leg.utc_s[-1:]
    )
    latitude = float(np.deg2rad(site.latitude_deg))
    seen = observed_direction(hour_angle, declination, latitude, Refraction.of(air))
    return np.asarray(seen[0])


def _axis(known: AxisKnowledge, site: Site) -> Floats:
    latitude = float(np.deg2rad(site.latitude_deg))
    azimuth, altitude = known.sky_arcmin / ARCMIN_PER_RAD
    scale = max(float(np.cos(latitude)), 0.02)
    return axis_north_end(latitude, float(azimuth) / scale, float(altitude))
