"""Offsets a person reads at the eyepiece or on a screen and types in."""

from __future__ import annotations

import math
import time
from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QObject

from app.sources.source import Reading, Source
from core.language import marked, say


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
