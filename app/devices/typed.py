"""Readings a person types: offsets of a watched star, or one drift told in a sentence."""

from __future__ import annotations

import math
import time
from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from PySide6.QtCore import QObject

from app.devices.source import Reading, Source
from core.alignment.driftlog.records import Leg
from core.language import marked, say

# Offsets a person reads at the eyepiece or on a screen and types in.


@dataclass(frozen=True)
class Unit:
    """What the person reads in: `arcsec_per_unit` is the size of one division or pixel.

    Raises ValueError, a sentence, for a size that is not a positive number.
    """

    name: str = marked("arcseconds")
    arcsec_per_unit: float = 1.0

    def __post_init__(self) -> None:
        if not (math.isfinite(self.arcsec_per_unit) and self.arcsec_per_unit > 0.0):
            raise ValueError(
                say(
                    "One of your {unit} must cover more than zero arcseconds: measure how "
                    "long a star near the equator takes to drift across it; a second of time "
                    "is 15 arcseconds.",
                    unit=say(self.name),
                )
            )


class ManualSource(Source):
    """Stamps what a person reads with the time of the key press.

    `clock` gives UTC in seconds since 1970. With the eye at the eyepiece, `mark` at the moment of
    looking and `take` once the number is typed: the reading carries the time of the mark.
    """

    name = marked("Readings by hand")

    def __init__(
        self, clock: Callable[[], float] = time.time, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._clock = clock
        self._marked_utc_s: float | None = None
        self._is_running = False
        self.unit = Unit()
        self.sigma_arcsec: float | None = None

    def start(self) -> None:
        """Take readings from now on."""
        self._is_running = True

    def stop(self) -> None:
        """Take no more readings."""
        self._is_running = False
        self._marked_utc_s = None

    def mark(self) -> float:
        """Remember this instant for the reading about to be typed; returns its UTC seconds."""
        self._marked_utc_s = self._clock()
        return self._marked_utc_s

    def take(self, offset: float, is_north: bool = True) -> None:
        """Take an offset in the present unit, to the north or to the south of the origin.

        A negative `offset` is on the other side. Emits `reading`; nothing before `start`.
        Raises ValueError, a sentence, when `offset` is not a finite number.
        """
        if not math.isfinite(offset):
            raise ValueError(say("The offset must be a number: read it again and type its digits."))
        if not self._is_running:
            return
        utc_s = self._clock() if self._marked_utc_s is None else self._marked_utc_s
        self._marked_utc_s = None
        north_arcsec = offset * self.unit.arcsec_per_unit * (1.0 if is_north else -1.0)
        self.reading.emit(Reading(utc_s, north_arcsec, sigma_arcsec=self.sigma_arcsec))


# One drift told in a sentence: so many arcseconds north in so many minutes, ending at a time.

SHORTEST_MIN, LONGEST_MIN = 0.5, 120.0


@dataclass(frozen=True)
class SingleDrift:
    """A star that moved `north_arcsec` (south negative) in the `minutes` before `ending_utc_s`.

    `sigma_arcsec`: how well either offset was read, one standard deviation. Raises ValueError, a
    sentence, for numbers that cannot be meant.
    """

    north_arcsec: float
    minutes: float
    ending_utc_s: float
    sigma_arcsec: float

    def __post_init__(self) -> None:
        if not (math.isfinite(self.north_arcsec) and math.isfinite(self.ending_utc_s)):
            raise ValueError(
                say("How far the star moved and when must be numbers: type them again.")
            )
        if not SHORTEST_MIN <= self.minutes <= LONGEST_MIN:
            raise ValueError(
                say(
                    "A drift can be judged over {shortest:g} to {longest:g} minutes, not "
                    "over {given:g}: give the minutes between the two looks.",
                    shortest=SHORTEST_MIN,
                    longest=LONGEST_MIN,
                    given=self.minutes,
                )
            )
        if not (math.isfinite(self.sigma_arcsec) and self.sigma_arcsec > 0.0):
            raise ValueError(
                say(
                    "Say how well you can read an offset, in arcseconds above zero: without "
                    "it nobody can tell how sure the result is."
                )
            )

    def leg(self, ra_deg: float, dec_deg: float) -> Leg:
        """The drift as a leg of two readings of the star at this ICRS place."""
        utc_s = np.array([self.ending_utc_s - 60.0 * self.minutes, self.ending_utc_s])
        north = np.array([0.0, self.north_arcsec])
        return Leg("", ra_deg, dec_deg, utc_s, north, None, np.full(2, self.sigma_arcsec))
