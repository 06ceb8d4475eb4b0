"""The practice sky, delivered like any other source of readings."""

from __future__ import annotations

import math
from collections.abc import Callable

import numpy as np
from PySide6.QtCore import QObject, Qt, QTimer

from app.devices.source import Reading, Source
from core.alignment.drift.geometry import axis_north_end, observed_direction
from core.alignment.guide.bolts import Base, BoltTurn, star_shift_arcsec
from core.alignment.guide.nextstar import Suggestion, suggestions
from core.language import marked
from core.practice.simulation import READING_INTERVAL_S, PracticeMount, PracticeSky
from core.sky.catalogues import load_stars
from core.sky.places import hour_angle_and_declination
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD

SLOWEST, FASTEST = 1.0, 60.0


class PracticeSource(Source):
    """A simulated mount under a simulated night that runs 1 to 60 times as fast as a real one.

    One reading every two simulated seconds while a star is set. The clock stands before `start`
    and after `stop`. A computer that falls behind slows the night; it leaves nothing out.
    """

    name = marked("Practice sky")

    def __init__(
        self,
        mount: PracticeMount,
        site: Site,
        air: Air,
        start_utc_s: float,
        seed: int,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._mount = mount
        self._site = site
        self._air = air
        self._sky = PracticeSky(mount, site, air, np.random.default_rng(seed))
        self._star_deg: tuple[float, float] | None = None
        self._utc_s = start_utc_s
        self._carried = self._last = (0.0, 0.0)  # north and east, what the bolts did to the view
        self.star_name = ""
        self._timer = QTimer(self)
        self._timer.setTimerType(Qt.TimerType.PreciseTimer)
        self._timer.timeout.connect(self.advance)
        self.set_speed(SLOWEST)

    @property
    def utc_s(self) -> float:
        """The simulated now."""
        return self._utc_s

    def set_speed(self, factor: float) -> None:
        """How many times as fast as a real night; kept within 1 to 60."""
        self.speed = min(max(factor, SLOWEST), FASTEST)
        self._timer.setInterval(round(1000.0 * READING_INTERVAL_S / self.speed))

    def set_star(self, name: str, ra_deg: float, dec_deg: float) -> None:
        """Centre a star (ICRS place tonight); offsets count from here."""
        self.star_name = name
        self._star_deg = (ra_deg, dec_deg)
        self._centre()

    def skip_to(self, utc_s: float) -> None:
        """Go on after this time, the star centred when it was; for a night that was broken off."""
        self._utc_s = utc_s

    def turn_azimuth(self, arcmin: float) -> None:
        """Turn the azimuth bolt, meaning to move the axis by `arcmin` toward greater azimuth."""
        self._turn(lambda: self._mount.turn_azimuth(arcmin))

    def turn_altitude(self, arcmin: float) -> None:
        """Turn the altitude bolt, meaning to raise the axis by `arcmin`."""
        self._turn(lambda: self._mount.turn_altitude(arcmin))

    def _turn(self, bolt: Callable[[], None]) -> None:
        """The star moves in the view as the bolt is turned, and drifts on from there."""
        before = self.reveal()
        bolt()
        if self._star_deg is None:
            return
        after = self.reveal()
        turn = BoltTurn(after[0] - before[0], after[1] - before[1])
        north, east = self._shift_arcsec(before, turn)
        self._carried = (self._last[0] + north, self._last[1] + east)
        self._last = self._carried
        self._sky.centre(*self._star_deg, self._utc_s)

    def _shift_arcsec(self, errors: tuple[float, float], turn: BoltTurn) -> tuple[float, float]:
        assert self._star_deg is not None
        latitude = math.radians(self._site.latitude_deg)
        hour_angle, declination = hour_angle_and_declination(
            *self._star_deg, self._site, np.array([self._utc_s])
        )
        seen = observed_direction(hour_angle, declination, latitude, Refraction.of(self._air))[0]
        azimuth, altitude = (error / ARCMIN_PER_RAD for error in errors)
        axis = axis_north_end(latitude, azimuth, altitude)
        return star_shift_arcsec(seen, axis, turn, self._site, Base())

    def reveal(self) -> tuple[float, float]:
        """The true azimuth and altitude error at this moment, arcmin."""
        return self._mount.azimuth_error_arcmin, self._mount.altitude_error_arcmin

    def suggestions(self) -> list[Suggestion]:
        """Good stars at the simulated time: near the meridian, low in the east, in the west."""
        return suggestions(load_stars(), self._site, self._air, self._utc_s)

    def start(self) -> None:
        """Let the simulated night run."""
        self._timer.start()

    def stop(self) -> None:
        """Let the simulated night stand still."""
        self._timer.stop()

    def advance(self) -> None:
        """Go on by one reading; the timer calls it."""
        self._utc_s += READING_INTERVAL_S
        if self._star_deg is not None:
            north, east = self._sky.readings(np.array([self._utc_s]))
            self._last = (self._carried[0] + float(north[0]), self._carried[1] + float(east[0]))
            self.reading.emit(Reading(self._utc_s, *self._last))

    def _centre(self) -> None:
        """The star is brought back to the middle, as a hand at the mount would do."""
        if self._star_deg is not None:
            self._carried = self._last = (0.0, 0.0)
            self._sky.centre(*self._star_deg, self._utc_s)
