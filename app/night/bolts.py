"""The person's own turns of the bolts: what they teach, kept for each mount, read while turning."""

from __future__ import annotations

from collections import deque
from collections.abc import Sequence
from typing import Any

import numpy as np
from numpy.typing import NDArray

from app.devices.source import Reading
from app.night.places import Settings
from app.night.snapshot import TurnMade
from core.alignment.axis.evidence import PriorAxis
from core.alignment.axis.solution import Solution
from core.alignment.drift.geometry import axis_north_end, observed_direction
from core.alignment.driftlog.records import Leg
from core.alignment.guide.bolts import (
    Base,
    BoltScale,
    BoltTurn,
    CountedTurn,
    SeenTurn,
    as_counted,
    learn,
    seen_accuracy,
    star_shift_arcsec,
    turn_seen,
)
from core.alignment.guide.nextstar import flexure_arcmin
from core.alignment.priors import Priors
from core.language import say
from core.mount.equipment import Mount
from core.sky.places import hour_angle_and_declination
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD

# The turns of the bolts on disk, one book for each mount.

KEY = "bolts"
VERSION = 2
MOST = 80  # entries of one book, the newest
WANTED = {"name": str, "bolt": str}
FIGURES = ("turns", "moved_arcmin", "sigma_arcmin")

Entries = list[dict[str, Any]]


class BoltCalibrationStore:
    """Books by the key of a mount, "" for no mount; without settings (None) nothing is kept.

    Version 1 knew one book only. Its turns count for whatever is in use, and go to the first mount
    that is. What this version cannot read is set aside and kept.
    """

    def __init__(self, settings: Settings | None) -> None:
        self._settings = settings
        self._books: dict[str, Entries] = {}
        self._earlier: Entries = []
        self._aside: list[Any] = []
        self._key = ""
        self._read(None if settings is None else settings.get_setting(KEY))

    @property
    def keeps(self) -> bool:
        return self._settings is not None

    @property
    def entries(self) -> Entries:
        """Of the open book, oldest first."""
        earlier = self._earlier if not self._key else []
        return [*earlier, *self._books.get(self._key, [])]

    def open(self, key: str) -> None:
        """The book of the mount with this key, begun when there is none."""
        self._key = key
        if key and self._earlier:
            self._books[key] = [*self._earlier, *self._books.get(key, [])][-MOST:]
            self._earlier = []
            self._write()

    def keep(self, entries: Sequence[dict[str, Any]]) -> None:
        """In place of what the open book held."""
        were = [] if self._key else [_name(entry) for entry in self._earlier]
        if not self._key:
            self._earlier = [entry for entry in entries if _name(entry) in were]
        self._books[self._key] = [one for one in entries if _name(one) not in were][-MOST:]
        self._write()

    def _write(self) -> None:
        if self._settings is not None:
            kept = {"version": VERSION, "books": self._books, "earlier": self._earlier}
            self._settings.put_setting(KEY, {**kept, "set_aside": self._aside})

    def _read(self, kept: Any) -> None:
        if kept is None:
            return
        version = kept.get("version") if isinstance(kept, dict) else None
        if version == 1:
            self._earlier = _usable(kept.get("turns"))
        elif version == VERSION and isinstance(kept.get("books"), dict):
            self._books = {str(key): _usable(book) for key, book in kept["books"].items()}
            self._earlier = _usable(kept.get("earlier"))
            aside = kept.get("set_aside")
            self._aside = aside if isinstance(aside, list) else []
        else:
            self._aside = [kept]


def _name(entry: dict[str, Any]) -> tuple[str, str]:
    return entry["name"], entry["bolt"]


def _usable(entries: Any) -> Entries:
    if not isinstance(entries, list):
        return []
    return [entry for entry in entries if isinstance(entry, dict) and _is_usable(entry)]


def _is_usable(entry: dict[str, Any]) -> bool:
    words = all(isinstance(entry.get(name), kind) for name, kind in WANTED.items())
    return words and all(
        isinstance(entry.get(name), int | float) and not isinstance(entry[name], bool)
        for name in FIGURES
    )


# What the person's own turns teach about the two bolts of the mount in use.

Floats = NDArray[np.float64]

AZIMUTH, ALTITUDE = "azimuth", "altitude"
WORST_CONDITION = 1e6  # of the information: beyond, one of the errors is not measured
LEAST_SIGMAS = 3.0  # a turn that hardly shows teaches nothing


class BoltCalibration:
    """Turns by bolt, oldest first; without settings (None) they are forgotten at the end."""

    def __init__(self, settings: Settings | None) -> None:
        self._shelf = BoltCalibrationStore(settings)
        self._mount: Mount | None = None

    @property
    def key(self) -> str:
        """Of the mount in use, "" for none."""
        return "" if self._mount is None else self._mount.key

    def use(self, mount: Mount | None) -> None:
        """Open the book of this mount; of none, that of turns made with no mount chosen."""
        self._mount = mount
        self._shelf.open(self.key)

    def sentence(self) -> str:
        """Whose bolts these are."""
        if self._mount is not None:
            return say("What turns teach is kept with the mount “{name}”.", name=self._mount.name)
        if not self._shelf.keeps:
            return say("Practice: what these turns teach is forgotten at the end.")
        return say(
            "No mount is chosen on the Mount page: what turns teach is kept in a book of its own, "
            "for no mount. Choose the set you use to keep it with its mount."
        )

    def note(self, name: str, made: TurnMade, solution: Solution, site: Site) -> bool:
        """Learn from a turn and what was measured after it; `name` tells turns apart.

        The same turn again, better measured, replaces what was noted. True when it taught. It goes
        into the book of the mount that was turned, whichever is in use by now.
        """
        if made.was is None:
            return False
        after = measured_alone(solution, made.expected(site))
        if after is None:
            return False
        self._shelf.open(self.key if made.mount is None else made.mount)
        has_taught = self._learn(name, made, _moved(made.was, after, site))
        self._shelf.open(self.key)
        return has_taught

    def _learn(self, name: str, made: TurnMade, movement: tuple[Floats, Floats]) -> bool:
        moved, sigma = movement
        counted = {AZIMUTH: made.azimuth_turns, ALTITUDE: made.altitude_turns}
        has_taught = False
        for index, (bolt, turns) in enumerate(counted.items()):
            if turns and abs(moved[index]) > LEAST_SIGMAS * sigma[index]:
                self._put(name, bolt, turns, float(moved[index]), float(sigma[index]))
                has_taught = True
        return has_taught

    def scale(self, bolt: str) -> BoltScale | None:
        """Of AZIMUTH or ALTITUDE; before the first turn what the data sheet says, or None."""
        made, sheet = self._made(bolt), self._sheet_arcmin_per_turn(bolt)
        return learn(made, sheet) if made or sheet is not None else None

    def last_turns(self, bolt: str) -> float:
        """The last turn of a bolt, for its play, signed as the scale has it; 0 when unknown."""
        counted, _ = as_counted(self._made(bolt))
        return counted[-1].turns if counted else 0.0

    def _made(self, bolt: str) -> list[CountedTurn]:
        return [
            CountedTurn(entry["turns"], entry["moved_arcmin"], entry["sigma_arcmin"])
            for entry in self._shelf.entries
            if entry["bolt"] == bolt
        ]

    def _sheet_arcmin_per_turn(self, bolt: str) -> float | None:
        if self._mount is None:
            return None
        if bolt == AZIMUTH:
            return self._mount.azimuth_bolt_arcmin_per_turn
        return self._mount.altitude_bolt_arcmin_per_turn

    def _put(self, name: str, bolt: str, turns: float, moved: float, sigma: float) -> None:
        entry = {"name": name, "bolt": bolt, "turns": turns}
        entry |= {"moved_arcmin": moved, "sigma_arcmin": sigma}
        kept = self._shelf.entries
        others = [e for e in kept if (e["name"], e["bolt"]) != (name, bolt)]
        self._shelf.keep([*others, entry])


def measured_alone(solution: Solution, before: PriorAxis | None) -> PriorAxis | None:
    """What the legs of this axis state say by themselves; None when they cannot.

    `before`: what went into the solution besides; it is taken out again, for the turn it rests on
    is what is to be measured. The tube yields alike before the turn and after it, so flexure is
    left out of the covariance.
    """
    if not solution.determined:
        return None
    alone = sum(solution.information_arcmin2, np.zeros((2, 2)))
    if np.linalg.cond(alone) > WORST_CONDITION:
        return None
    granted = solution.before_information_arcmin2
    mean: Floats = solution.knowledge.sky_arcmin
    if before is not None and granted.any():
        flexure = flexure_arcmin(solution.priors, solution.latitude_deg)
        weighed = np.linalg.inv(np.linalg.inv(alone) + flexure**2 * np.eye(2))  # in the solution
        pulled = (weighed + granted) @ mean - granted @ before.sky_arcmin
        mean = np.asarray(np.linalg.solve(weighed, pulled), dtype=np.float64)
    return PriorAxis(mean, np.asarray(np.linalg.inv(alone), dtype=np.float64))


def _moved(was: PriorAxis, now: PriorAxis, site: Site) -> tuple[Floats, Floats]:
    """Movement of azimuth and altitude and its standard deviation, arcmin."""
    scale = np.array([max(float(np.cos(np.deg2rad(site.latitude_deg))), 0.02), 1.0])
    variance = np.diag(was.covariance_arcmin2) + np.diag(now.covariance_arcmin2)
    return (now.sky_arcmin - was.sky_arcmin) / scale, np.sqrt(variance) / scale


# How far the bolts have gone, read off the star in view while they are turned.

ANCHOR = 5  # readings before the turn whose mean the star is compared with
NEWEST = 3  # readings whose middle one counts, so that a gust does not mislead


class Steering:
    """Compares where the star is seen with where it was seen before the bolts were touched."""

    def __init__(self, leg: Leg, known: PriorAxis, site: Site, air: Air, base: Base) -> None:
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

    def turned(self) -> BoltTurn | None:
        """How far so far; None before the first reading. Raises TurnUnseen, a sentence."""
        if not self._newest or self._anchor is None:
            return None
        shift = self.moved_arcsec() or (0.0, 0.0)
        return turn_seen(self._star, self._axis, shift, self._site, self._base)

    def accuracy(self, turn: BoltTurn, priors: Priors) -> SeenTurn:
        """How well the star shows such a turn."""
        return seen_accuracy(self._star, self._axis, turn, self._site, self._base, priors)

    def moved_arcsec(self) -> tuple[float, float] | None:
        """How far north and east the star has gone since the turn began; None before a reading."""
        if not self._newest or self._anchor is None:
            return None
        shift = np.median(np.array(self._newest), axis=0) - self._anchor
        return float(shift[0]), float(shift[1])

    def will_move_arcsec(self, turn: BoltTurn) -> tuple[float, float]:
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


def _axis(known: PriorAxis, site: Site) -> Floats:
    latitude = float(np.deg2rad(site.latitude_deg))
    azimuth, altitude = known.sky_arcmin / ARCMIN_PER_RAD
    scale = max(float(np.cos(latitude)), 0.02)
    return axis_north_end(latitude, float(azimuth) / scale, float(altitude))
