"""A simulated mount with a hidden misalignment under a moving sky, for practice by daylight."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.drift.geometry import offsets_arcsec
from core.language import marked
from core.sky.places import hour_angle_and_declination
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.units import RAD_PER_ARCMIN, SECONDS_PER_DAY

# Invented places to practise on, and the coming midnight there.

# Invented for practice; both points lie in the open Atlantic, so nobody's garden is meant.
NORTHERN_MEADOW = Site(47.0, -20.0, 300.0, marked("Practice meadow, north (invented)"))
SOUTHERN_MEADOW = Site(-33.0, -20.0, 300.0, marked("Practice meadow, south (invented)"))
MEADOW_AIR = Air(pressure_hpa=978.0, temperature_c=8.0)


def coming_midnight_utc_s(now_utc_s: float, longitude_deg: float) -> float:
    """The next local mean midnight after `now_utc_s` for a longitude (east positive), UTC seconds.

    Mean solar time is UTC plus longitude / 15 hours; the equation of time (a quarter of an hour)
    is neglected.
    """
    ahead_s = longitude_deg / 360.0 * SECONDS_PER_DAY
    days = math.floor((now_utc_s + ahead_s) / SECONDS_PER_DAY) + 1
    return days * SECONDS_PER_DAY - ahead_s


# Image motion that remembers itself from one reading to the next.

Floats = NDArray[np.float64]

RMS_ARCSEC = 0.7  # per reading and axis, for seeing of about 2.5″: common practice, no source
CORRELATION_TIME_S = 2.0  # common practice, no source


class Seeing:
    """An Ornstein–Uhlenbeck process in two axes, stepped exactly over any interval.

    x(t + Δ) = a x(t) + rms √(1 − a²) e with a = exp(−Δ / correlation time) and e standard normal:
    the exact transition of the process (Gillespie, Phys. Rev. E 54, 2084 (1996), eq. 3.1), so
    the statistics do not depend on how the readings are spaced or asked for.
    """

    def __init__(
        self,
        rng: np.random.Generator,
        rms_arcsec: float = RMS_ARCSEC,
        correlation_time_s: float = CORRELATION_TIME_S,
    ) -> None:
        self._rng = rng
        self._rms_arcsec = rms_arcsec
        self._correlation_time_s = correlation_time_s
        self._at_utc_s = -math.inf  # so long ago that the first reading is independent
        self._now = (0.0, 0.0)

    def at(self, utc_s: Floats) -> Floats:
        """North and east image motion in arcsec (n, 2) at increasing `utc_s` (n,).

        Times go on from those of the last call; the same time gives the same motion.
        """
        gaps_s = np.diff(utc_s, prepend=self._at_utc_s)
        if gaps_s.size and gaps_s.min() < 0.0:
            raise ValueError("the times of seeing must not run backwards")
        keep = np.exp(-gaps_s / self._correlation_time_s)
        fresh = self._rms_arcsec * np.sqrt(-np.expm1(-2.0 * gaps_s / self._correlation_time_s))
        kicks = fresh[:, None] * self._rng.standard_normal((gaps_s.size, 2))
        motion = np.array(list(self._walk(keep, kicks)), dtype=np.float64).reshape(-1, 2)
        if gaps_s.size:
            self._at_utc_s = float(utc_s[-1])
        return motion

    def _walk(self, keep: Floats, kicks: Floats) -> list[tuple[float, float]]:
        path = []
        north, east = self._now
        for a, (kick_north, kick_east) in zip(keep.tolist(), kicks.tolist(), strict=True):
            north, east = a * north + kick_north, a * east + kick_east
            path.append((north, east))
        self._now = (north, east)
        return path


# Periodic error of a worm drive, which shows in right ascension only.


@dataclass(frozen=True)
class Worm:
    """A worm with its harmonics.

    `amplitudes_arcsec` and `phases_rad`: of the worm period, its half, its third and so on, at
    the equator. The figures drawn by `drawn` are invented for practice.
    """

    period_s: float
    amplitudes_arcsec: tuple[float, ...]
    phases_rad: tuple[float, ...]

    @classmethod
    def drawn(cls, rng: np.random.Generator) -> Worm:
        """A worm as a small mount might have: some arcseconds, harmonics smaller."""
        period_s = float(rng.uniform(400.0, 600.0))
        sizes = rng.uniform(0.6, 1.4, 3) * np.array([8.0, 2.5, 1.0])
        phases = rng.uniform(0.0, 2.0 * np.pi, 3)
        return cls(period_s, tuple(sizes.tolist()), tuple(phases.tolist()))

    def lead_arcsec(self, utc_s: Floats) -> Floats:
        """How far the drive runs ahead of the sky, arcsec of hour angle (n,)."""
        turns = 2.0 * np.pi * (np.asarray(utc_s, dtype=np.float64) / self.period_s)
        order = np.arange(1, len(self.amplitudes_arcsec) + 1)[:, None]
        waves = np.sin(order * turns + np.array(self.phases_rad)[:, None])
        return np.asarray(np.array(self.amplitudes_arcsec) @ waves, dtype=np.float64)


# A bolt with play in its thread.

LARGEST_SCALE_ERROR = 0.10
LARGEST_BACKLASH_ARCMIN = 1.5


class Bolt:
    """Moves the axis by nearly what the hand means to turn.

    `scale`: true motion over intended motion. `backlash_arcmin`: how far the bolt turns without
    effect after its direction is reversed. `slack_arcmin`: where the thread stands in that play,
    from 0 (bearing on the lower flank) to `backlash_arcmin` (on the upper one).
    """

    def __init__(self, scale: float, backlash_arcmin: float, slack_arcmin: float = 0.0) -> None:
        if not 0.0 <= slack_arcmin <= backlash_arcmin:
            raise ValueError("the slack of a bolt lies between none and its whole backlash")
        self.scale = scale
        self.backlash_arcmin = backlash_arcmin
        self._slack_arcmin = slack_arcmin

    @classmethod
    def drawn(cls, rng: np.random.Generator) -> Bolt:
        """A bolt up to 10 % off in scale, its thread anywhere in its play."""
        scale = 1.0 + LARGEST_SCALE_ERROR * float(rng.uniform(-1.0, 1.0))
        backlash_arcmin = float(rng.uniform(0.3, LARGEST_BACKLASH_ARCMIN))
        return cls(scale, backlash_arcmin, float(rng.uniform(0.0, backlash_arcmin)))

    def turn(self, intended_arcmin: float) -> float:
        """True motion of the axis in arcmin when the hand turns by `intended_arcmin`."""
        wanted_arcmin = self._slack_arcmin + self.scale * intended_arcmin
        self._slack_arcmin = min(max(wanted_arcmin, 0.0), self.backlash_arcmin)
        return wanted_arcmin - self._slack_arcmin


# A simulated mount with a hidden misalignment, under a sky that moves its stars.

READING_INTERVAL_S = 2.0
SMALLEST_ERROR_ARCMIN = 8.0
LARGEST_ERROR_ARCMIN = 60.0
GUST_ARCSEC = 6.0  # typical kick of a gust, invented for practice


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
