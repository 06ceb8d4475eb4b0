"""A simulated mount with a hidden misalignment, under a sky that moves its stars."""

from __future__ import annotations

import math

import numpy as np
from numpy.typing import NDArray

from core.alignment.geometry import offsets_arcsec
from core.practice.bolts import Bolt
from core.practice.seeing import Seeing
from core.practice.worm import Worm
from core.sky.place import hour_angle_and_declination
from core.sky.refraction import Refraction
from core.sky.site import Air, Site

Floats = NDArray[np.float64]

READING_INTERVAL_S = 2.0
SMALLEST_ERROR_ARCMIN = 8.0
LARGEST_ERROR_ARCMIN = 60.0
GUST_ARCSEC = 6.0  # typical kick of a gust, invented for practice
RAD_PER_ARCMIN = math.radians(1.0 / 60.0)


class PracticeMount:
    """A mount whose axis stands wrong by an amount only the simulation knows.

    `azimuth_error_arcmin`: positive when the end of the axis at the elevated pole lies at greater
    azimuth than the pole (an angle of azimuth, not on the sky). `altitude_error_arcmin`: positive
    when that end is above the true pole.
    """

    def __init__(
        self,
        azimuth_error_arcmin: float,
        altitude_error_arcmin: float,
        azimuth_bolt: Bolt,
        altitude_bolt: Bolt,
        worm: Worm,
    ) -> None:
        self.azimuth_error_arcmin = azimuth_error_arcmin
        self.altitude_error_arcmin = altitude_error_arcmin
        self.worm = worm
        self._azimuth_bolt = azimuth_bolt
        self._altitude_bolt = altitude_bolt

    @classmethod
    def hidden(cls, rng: np.random.Generator) -> PracticeMount:
        """A mount set down in the dark: either error between 8′ and 1°, on either side."""
        sizes = rng.uniform(SMALLEST_ERROR_ARCMIN, LARGEST_ERROR_ARCMIN, 2)
        azimuth, altitude = (sizes * rng.choice([-1.0, 1.0], 2)).tolist()
        return cls(azimuth, altitude, Bolt.drawn(rng), Bolt.drawn(rng), Worm.drawn(rng))

    def turn_azimuth(self, arcmin: float) -> None:
        """Turn the azimuth bolt, meaning to move the axis by `arcmin` toward greater azimuth."""
        self.azimuth_error_arcmin += self._azimuth_bolt.turn(arcmin)

    def turn_altitude(self, arcmin: float) -> None:
        """Turn the altitude bolt, meaning to raise the axis by `arcmin`."""
        self.altitude_error_arcmin += self._altitude_bolt.turn(arcmin)


class PracticeSky:
    """What an eye at the practice mount reads of one star, instant by instant.

    The motion is the exact rotation about the displaced axis with refraction along the star's
    path; on top come seeing, the worm (east only) and, if asked for, gusts of wind. Every random
    number comes from `rng`, so a seed repeats the night.
    """

    def __init__(
        self,
        mount: PracticeMount,
        site: Site,
        air: Air,
        rng: np.random.Generator,
        gusts_per_hour: float = 0.0,
    ) -> None:
        self._mount = mount
        self._site = site
        self._refraction = Refraction.of(air)
        self._seeing = Seeing(rng)
        self._rng = rng
        self._gust_chance = gusts_per_hour * READING_INTERVAL_S / 3600.0
        self._star_deg: tuple[float, float] | None = None
        self._centred_utc_s = 0.0

    def centre(self, ra_deg: float, dec_deg: float, utc_s: float) -> None:
        """Point the mount at an ICRS place at `utc_s`; offsets count from there."""
        self._star_deg = (ra_deg, dec_deg)
        self._centred_utc_s = utc_s

    def readings(self, utc_s: Floats) -> tuple[Floats, Floats]:
        """North and east offsets in arcsec (n,) read at increasing `utc_s` (n,).

        A star must have been centred first (LookupError).
        """
        if self._star_deg is None:
            raise LookupError("the practice mount points at no star yet")
        ra_deg, dec_deg = self._star_deg
        times = np.concatenate(([self._centred_utc_s], utc_s))
        hour_angle, declination = hour_angle_and_declination(ra_deg, dec_deg, self._site, times)
        north, east = self._steady_offsets(hour_angle, declination)
        worm = self._mount.worm.lead_arcsec(times)
        blur = self._seeing.at(utc_s) + self._gusts(utc_s.size)
        # A drive that runs ahead points too far west: the star is seen to move east.
        slip = (worm[1:] - worm[0]) * math.cos(declination)
        return north[1:] + blur[:, 0], east[1:] + slip + blur[:, 1]

    def _steady_offsets(self, hour_angle_rad: Floats, declination: float) -> tuple[Floats, Floats]:
        return offsets_arcsec(
            hour_angle_rad,
            declination,
            math.radians(self._site.latitude_deg),
            self._mount.azimuth_error_arcmin * RAD_PER_ARCMIN,
            self._mount.altitude_error_arcmin * RAD_PER_ARCMIN,
            self._refraction,
        )

    def _gusts(self, count: int) -> Floats:
        if self._gust_chance <= 0.0:
            return np.zeros((count, 2))
        hit = self._rng.random(count) < self._gust_chance
        return hit[:, None] * self._rng.normal(0.0, GUST_ARCSEC, (count, 2))
