"""A worm drive turned part by part, for tests only: joint, worm, wheel teeth, pinion, oil and air.

Nothing here knows of harmonics, bins, turns that are compared or noise that forgets exponentially.
The worm's curve comes from what is out of true in its parts; turns differ since each meets another
tooth of the wheel, which takes the load over gradually; a pinion before the worm turns at a pace of
its own; the drive wanders with a flicker; the air is turbulence blown past.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.alignment.driftlog.records import Leg

START_S = 1.795e9
SUBEXPOSURES = 5
FINE_S = 0.25
FULL_TURN_ARCSEC = 1_296_000.0
HANDED_OVER = 0.4  # of a turn, in which the load passes from one tooth to the next


@dataclass
class WormDrive:
    """Sizes in arcseconds of the drive's lead, places in turns of the worm.

    `joint`: bend in degrees and place of the universal joint on the worm's shaft; `eccentric`,
    `thrust`: size and place; `burr`: size, place and width. By the wheel's tooth, (teeth, …):
    `scale` of the whole curve, `pitch`, and `flank` (teeth, 2, 3), sine and cosine of its own
    swings once, twice, three times across it. `pinion`: size, period in seconds, place.
    """

    period_s: float
    joint: tuple[float, float]
    eccentric: tuple[float, float]
    thrust: tuple[float, float]
    burr: tuple[float, float, float]
    scale: np.ndarray
    pitch: np.ndarray
    flank: np.ndarray
    pinion: tuple[float, float, float]

    def worm_arcsec(self, turn):
        """Lead by the worm's angle in turns: what every turn repeats."""
        bend_deg, place = self.joint
        driving = 2.0 * np.pi * (turn + place)
        # Cardan's joint: the tangent of the driven angle is that of the driving one over the cosine
        # of the bend (any textbook of mechanisms, from memory).
        driven = np.arctan2(np.sin(driving) / np.cos(np.deg2rad(bend_deg)), np.cos(driving))
        ahead = np.angle(np.exp(1j * (driven - driving))) / (2.0 * np.pi)
        lead = ahead * FULL_TURN_ARCSEC / self.scale.size
        size, place = self.eccentric
        lead = lead + size * np.sin(2.0 * np.pi * (turn + place))
        size, place = self.thrust
        lead = lead + size * np.abs(np.sin(np.pi * (turn + place)))  # rides up, and falls back
        size, place, width = self.burr
        apart = (turn - place + 0.5) % 1.0 - 0.5
        return lead + size * np.exp(-0.5 * (apart / width) ** 2)

    def tooth_arcsec(self, tooth, turn):
        """Lead were one tooth (n,) in mesh all the time."""
        tooth = tooth % self.scale.size
        lead = self.scale[tooth] * self.worm_arcsec(turn) + self.pitch[tooth]
        for order in range(self.flank.shape[2]):
            angle = 2.0 * np.pi * (order + 1) * turn
            lead = lead + self.flank[tooth, 0, order] * np.sin(angle)
            lead = lead + self.flank[tooth, 1, order] * np.cos(angle)
        return lead

    def lead_arcsec(self, time_s):
        """All of it (n,) at seconds since the start."""
        turn = np.asarray(time_s) / self.period_s
        tooth = np.floor(turn).astype(int)
        passed = np.clip((turn - tooth - (1.0 - HANDED_OVER)) / HANDED_OVER, 0.0, 1.0)
        before, after = self.tooth_arcsec(tooth, turn), self.tooth_arcsec(tooth + 1, turn)
        size, period_s, place = self.pinion
        beside = size * np.sin(2.0 * np.pi * (time_s / period_s + place))
        return (1.0 - passed) * before + passed * after + beside

    def peak_to_peak_arcsec(self):
        """Of the curve that all turns of the wheel have in common, looked at closely."""
        return float(np.ptp(self.worm_arcsec(np.linspace(0.0, 1.0, 20_001))))

    def rms_arcsec(self):
        """Of the same curve about its mean."""
        return float(np.std(self.worm_arcsec(np.linspace(0.0, 1.0, 20_000, endpoint=False))))


def drawn(rng, *, scaled=0.0, own=0.0, pinion_arcsec=0.0, pitch_arcsec=0.1):
    """A drive out of the box. `scaled`: how much the whole curve is larger or smaller from tooth to
    tooth; `own`: rms of what a tooth does alone, both in parts of the curve.
    """
    teeth = int(rng.integers(120, 181))
    drive = WormDrive(
        period_s=rng.uniform(240.0, 500.0),
        joint=(rng.uniform(2.0, 4.0), rng.uniform()),
        eccentric=(rng.uniform(5.0, 10.0), rng.uniform()),
        thrust=(rng.uniform(0.5, 2.0), rng.uniform()),
        burr=(rng.uniform(0.3, 1.2), rng.uniform(), rng.uniform(0.06, 0.12)),
        scale=1.0 + scaled * even(rng.standard_normal(teeth)),
        pitch=pitch_arcsec * even(rng.standard_normal(teeth)),
        flank=np.zeros((teeth, 2, 3)),
        pinion=(pinion_arcsec, rng.uniform(50.0, 110.0), rng.uniform()),
    )
    size = own * drive.rms_arcsec() / np.sqrt(drive.flank.shape[2])
    drive.flank = size * even(rng.standard_normal(drive.flank.shape))
    return drive


def even(values):
    """Scatter one and mean zero over the teeth: what they share would belong to the worm."""
    return (values - values.mean(axis=0)) / values.std(axis=0)


def made_of_waves(rng, duration_s, rms, power):
    """A motion every `FINE_S` of waves of random size and phase; `power` by frequency in hertz."""
    size = 4 * int(np.ceil(duration_s / FINE_S)) + 4  # a quarter of what would come round again
    frequency_hz = np.fft.rfftfreq(size, FINE_S)[1:]
    waves = rng.standard_normal(frequency_hz.size) + 1j * rng.standard_normal(frequency_hz.size)
    motion = np.fft.irfft(np.append(0.0, waves * np.sqrt(power(frequency_hz))), size)
    return rms * motion[: size // 4] / np.sqrt(np.mean(motion**2))


def air_arcsec(rng, duration_s, rms):
    """Image motion every `FINE_S` of turbulence blown past by a wind of 0.5 to 8 m/s (the slow one
    is that of a hut): power flat below the outer scale of 25 m, falling as the −2/3rd power of the
    frequency up to the aperture's 0.15 m and as the −11/3rd beyond (Tyler, J. Opt. Soc. Am. A 11,
    358, 1994, from memory).
    """
    wind = 8.0 * 16.0 ** -rng.uniform()
    slow_hz, fast_hz = wind / 25.0, 0.3 * wind / 0.15

    def power(frequency_hz):
        rising = (1.0 + (frequency_hz / slow_hz) ** 2) ** (-1.0 / 3.0)
        return rising / (1.0 + (frequency_hz / fast_hz) ** 3)

    return made_of_waves(rng, duration_s, rms, power)


def wander_arcsec(rng, duration_s, rms):
    """Oil, balls and belts: a flicker, its power falling as the −3/2nd power of the frequency down
    from periods of 150 to 600 s (invented)."""
    slow_hz = 1.0 / rng.uniform(150.0, 600.0)

    def power(frequency_hz):
        return (1.0 + (frequency_hz / slow_hz) ** 2) ** -0.75

    return made_of_waves(rng, duration_s, rms, power)


def reading_times(rng, duration_s, interval_s=2.0, jitter_s=0.0, dropped=0.0):
    """Seconds since the start, increasing; `dropped`: share of readings left out at random."""
    times = np.arange(0.0, duration_s, interval_s)
    times = times + rng.uniform(0.0, jitter_s, times.size)
    return times[rng.uniform(size=times.size) >= dropped]


def watched(rng, drive, time_s, *, air_rms=0.7, wander_rms=0.3, exposure_s=1.0):
    """The leg of a star on the equator: exposures averaged, air in both axes, a reading error of
    0.1″, and a drift that bends a little."""
    within = exposure_s * (np.arange(SUBEXPOSURES) + 0.5) / SUBEXPOSURES
    moments = time_s[:, np.newaxis] + within
    length_s = float(moments.max()) + 1.0
    north, east = (air_arcsec(rng, length_s, air_rms) for _ in range(2))
    east = east + wander_arcsec(rng, length_s, wander_rms)
    fine_s = FINE_S * np.arange(east.size)
    seen_north = np.interp(moments, fine_s, north)
    seen_east = np.interp(moments, fine_s, east) + drive.lead_arcsec(moments)
    readings = [
        seen.mean(axis=1) + 0.1 * rng.standard_normal(time_s.size)
        for seen in (seen_north, seen_east)
    ]
    bent = 1e-7 * rng.standard_normal() * (time_s - 0.5 * time_s[-1]) ** 2
    utc_s = START_S + time_s + 0.5 * exposure_s
    return Leg("run", 30.0, 0.0, utc_s, readings[0], readings[1] + 0.003 * time_s + bent)
