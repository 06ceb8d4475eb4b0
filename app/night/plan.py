"""What the person plans for tonight: target, mount, figures; and the search for a target."""

from __future__ import annotations

import math
import re
from collections.abc import Callable
from functools import lru_cache
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal

from app.night.observing import ObservingContext, around
from app.night.places import Place, Places, Settings
from app.workers.latest import LatestOnly
from core.language import marked
from core.mount.equipment import MountKind, Purpose, Quantity
from core.night.checklist import Power
from core.night.darkness import Night, night_of
from core.night.eyepiece import EyeHeights, Newtonian
from core.night.flip import ExposureSeries, Limits
from core.sky import catalogues, targets
from core.sky.bodies import Body
from core.sky.clocks import Zone, find
from core.sky.coordinates import UnusableCoordinates
from core.sky.site import Site
from core.sky.targets import Target

if TYPE_CHECKING:
    from app.night.session import Session
    from app.night.snapshot import Snapshot


# What the person plans for tonight: the target, the kind of mount, the figures for both.

KEY = "plans"
VERSION = 1


class Plans(QObject):
    """Kept among the settings at every change. `changed` follows each."""

    changed = Signal()

    def __init__(
        self,
        settings: Settings,
        known: Callable[[str], float | str | None] | None = None,
        parent: QObject | None = None,
    ) -> None:
        """`known`: what is known of a figure from elsewhere while the person has not given it."""
        super().__init__(parent)
        self._settings = settings
        self._known = known
        kept = settings.get_setting(KEY)
        usable = isinstance(kept, dict) and kept.get("version") == VERSION
        self._kept: dict[str, Any] = dict(kept) if usable else {"version": VERSION}
        self._target = _target(self._kept.get("target"))

    def target(self) -> Target | None:
        return self._target

    def set_target(self, target: Target) -> None:
        if target == self._target:
            return
        self._target = target
        self._keep("target", _entry(target))

    def number(self, name: str, usual: float) -> float:
        """`usual` until the person has given one; NaN where it was left open."""
        value = self._value(name, usual)
        if value is None:
            return math.nan
        return float(value) if isinstance(value, int | float) else usual

    def set_number(self, name: str, value: float) -> None:
        self._keep(name, None if math.isnan(value) else value)

    def word(self, name: str, usual: str) -> str:
        value = self._value(name, usual)
        return value if isinstance(value, str) else usual

    def set_word(self, name: str, value: str) -> None:
        self._keep(name, value)

    def _value(self, name: str, usual: Any) -> Any:
        if name in self._kept:
            return self._kept[name]
        known = None if self._known is None else self._known(name)
        return usual if known is None else known

    def _keep(self, name: str, value: Any) -> None:
        if name in self._kept and self._kept[name] == value:
            return
        self._kept[name] = value
        self._settings.put_setting(KEY, dict(self._kept))
        self.changed.emit()


def _entry(target: Target) -> dict[str, Any]:
    fixed = target.body is None
    return {
        "name": target.name,
        "kind": target.kind,
        "ra_deg": target.ra_deg if fixed else None,
        "dec_deg": target.dec_deg if fixed else None,
        "magnitude": target.magnitude,
        "size_arcmin": target.size_arcmin,
        "body": None if target.body is None else target.body.value,
    }


def _target(entry: Any) -> Target | None:
    """None for what this version cannot read."""
    try:
        if entry["body"] is not None:
            body = Body(entry["body"])
            return Target(str(entry["name"]), str(entry["kind"]), math.nan, math.nan, body=body)
        place = float(entry["ra_deg"]), float(entry["dec_deg"])
        sizes = (_size(entry["magnitude"]), _size(entry["size_arcmin"]))
        return Target(str(entry["name"]), str(entry["kind"]), *place, *sizes)
    except (KeyError, TypeError, ValueError):
        return None


def _size(value: Any) -> float | None:
    return None if value is None else float(value)


# The figures of the plan of a night: their bounds and what is usual.

FIGURES: dict[str, tuple[Quantity, float]] = {
    "lowest_deg": (Quantity(marked("Lowest useful altitude"), " °", 0.0, 80.0), 25.0),
    "past_meridian_deg": (Quantity(marked("May pass the meridian by"), " °", -60.0, 60.0), 5.0),
    "flips_from_deg": (Quantity(marked("Flips from, past the meridian"), " °", 0.0, 60.0), 0.0),
    "turning_s": (Quantity(marked("Turning over takes"), marked(" s"), 0.0, 1800.0), 90.0),
    "recentring_s": (Quantity(marked("Centring again takes"), marked(" s"), 0.0, 3600.0), 180.0),
    "plan_exposure_s": (Quantity(marked("One exposure"), marked(" s"), 0.1, 7200.0), 180.0),
    "plan_between_s": (Quantity(marked("Pause after each"), marked(" s"), 0.0, 600.0), 5.0),
    "axes_height_m": (
        Quantity(marked("Crossing of the axes above ground"), marked(" m"), 0.1, 5.0),
        1.1,
    ),
    "tube_offset_m": (
        Quantity(marked("From there to the middle of the tube"), marked(" m"), 0.0, 2.0),
        0.25,
    ),
    "forward_m": (
        Quantity(marked("Eyepiece forward along the tube"), marked(" m"), -3.0, 5.0),
        0.45,
    ),
    "out_m": (Quantity(marked("Eye out from the tube's middle"), marked(" m"), 0.0, 2.0), 0.22),
    "turned_deg": (Quantity(marked("Eyepiece turned in the rings"), " °", -180.0, 180.0), 0.0),
    "eye_low_m": (Quantity(marked("Eye comfortable from"), marked(" m"), 0.0, 3.0), 0.9),
    "eye_high_m": (Quantity(marked("Eye comfortable to"), marked(" m"), 0.2, 4.0), 1.7),
}


def figure(plans: Plans, name: str) -> float:
    """As the person gave it, else the usual one."""
    return plans.number(name, FIGURES[name][1])


def limits(plans: Plans) -> Limits:
    names = ("past_meridian_deg", "flips_from_deg", "turning_s", "recentring_s")
    return Limits(*(figure(plans, name) for name in names))


def series(plans: Plans) -> ExposureSeries:
    return ExposureSeries(figure(plans, "plan_exposure_s"), figure(plans, "plan_between_s"))


def newtonian(plans: Plans) -> Newtonian:
    names = ("axes_height_m", "tube_offset_m", "forward_m", "out_m", "turned_deg")
    return Newtonian(*(figure(plans, name) for name in names))


def observer(plans: Plans) -> EyeHeights:
    return EyeHeights(figure(plans, "eye_low_m"), figure(plans, "eye_high_m"))


# What tonight is for, as the evening's plans have it: read in one place, whoever asks.

BEGIN_NAME = "target_begin_utc_s"
COOL_DOWN_NAME, GUIDED_NAME = "cool_down_min", "is_guided"
USUAL_COOL_DOWN_MIN = 60.0  # common practice, no source


def purpose(plans: Plans) -> Purpose:
    """The person's choice, else that of the set in use."""
    named = plans.word("purpose", Purpose.DEEP_SKY.name)
    return Purpose.__members__.get(named, Purpose.DEEP_SKY)


def mount_kind(plans: Plans) -> MountKind:
    """Likewise."""
    named = plans.word("mount_kind", MountKind.GERMAN_EQUATORIAL.name)
    return MountKind.__members__.get(named, MountKind.GERMAN_EQUATORIAL)


def power(plans: Plans) -> Power:
    """What the mount runs on."""
    return Power.__members__.get(plans.word("power", Power.BATTERY.name), Power.BATTERY)


def is_guided(plans: Plans) -> bool:
    """Whether a guide star is followed."""
    return plans.word(GUIDED_NAME, "yes") == "yes"


def cool_down_min(plans: Plans) -> float:
    """How long the telescope cools before it is used."""
    return plans.number(COOL_DOWN_NAME, USUAL_COOL_DOWN_MIN)


def begin_utc_s(plans: Plans) -> float | None:
    """When the target is to begin; None for as soon as can be."""
    wanted = plans.number(BEGIN_NAME, math.nan)
    return None if math.isnan(wanted) else wanted


# The evening as pages plan it: place, clock, target and figures, whichever of them changes.

UTC = "utc"
PLACE = "place"
_ROUND_S = 600.0


class Evening(QObject):
    """`changed` when anything of it does; whoever comes into view asks `refresh` for what another
    page may have kept meanwhile.
    """

    changed = Signal()

    def __init__(
        self,
        session: Session,
        places: Places,
        plans: Plans,
        now: Callable[[], float],
        own_zone: str,
        parent: QObject | None = None,
    ) -> None:
        """`now`: seconds since 1970-01-01 UTC. `own_zone`: the computer's time zone by name."""
        super().__init__(parent)
        self._places = places
        self._own_zone = own_zone
        self.plans = plans
        self.now = now
        self._known: object = None
        self._around: ObservingContext | None = None
        plans.changed.connect(self.changed)
        session.follow(self._follow)

    def around(self) -> ObservingContext | None:
        """None while no site is given."""
        return self._around

    def zone(self) -> Zone:
        """What times are shown in: the place's zone, or UTC where that is wanted."""
        if self._around is None or self.shows_utc():
            return find("UTC")
        return self._around.zone

    def shows_utc(self) -> bool:
        return self.plans.word("clock", PLACE) == UTC

    def show_utc(self, wanted: bool) -> None:
        self.plans.set_word("clock", UTC if wanted else PLACE)

    def _follow(self, snapshot: Snapshot) -> None:
        self._tonight = snapshot
        self.refresh()

    def refresh(self) -> None:
        """What another page may have kept of the place counts from now on."""
        snapshot = self._tonight
        place: Place | None = self._places.of(snapshot.site)
        known = snapshot.site, snapshot.air, place
        if known != self._known:
            self._known = known
            self._around = around(snapshot, self._places, self._own_zone)
            self.changed.emit()


def night(site: Site, utc_s: float) -> Night:
    """`night_of`, remembered for some minutes; for worker threads."""
    return _night(site, round(utc_s / _ROUND_S))


@lru_cache(maxsize=8)
def _night(site: Site, rounded: int) -> Night:
    return night_of(site, rounded * _ROUND_S)


# Searching for targets beside the window's thread.

# Right ascension ends where the declination's sign begins, or at a comma.
_PAIR = re.compile(r"^(.*?\d[hms\s]*)[\s,;]*([+\-−]\s*\d.*)$|^([^,;]*\d[^,;]*)[,;](.*\d.*)$")


class Finder(QObject):
    """`found` carries the text asked for and a tuple of targets. The owner calls `close`."""

    found = Signal(str, object)

    def __init__(self, now: Callable[[], float], parent: QObject | None = None) -> None:
        """`now`: seconds since 1970-01-01 UTC."""
        super().__init__(parent)
        self._now = now
        self._errand = LatestOnly(self)
        self._errand.done.connect(self._done)

    def search(self, text: str) -> None:
        utc_s = self._now()
        self._errand.send(lambda: (text, find_target(text, utc_s)))

    def close(self) -> None:
        self._errand.close()

    def _done(self, answer: object) -> None:
        if isinstance(answer, tuple):
            self.found.emit(*answer)


def find_target(text: str, utc_s: float) -> tuple[Target, ...]:
    """Targets of that name, or the one at those coordinates; these alone without the tables."""
    try:
        found = targets.search(text, catalogues.load_stars(), catalogues.load_deep_sky(), utc_s)
    except RuntimeError:
        return _at(text)
    return tuple(found) or _at(text)


def _at(text: str) -> tuple[Target, ...]:
    match = _PAIR.match(text.strip())
    if match is None:
        return ()
    right_ascension, declination = match.group(1, 2) if match[1] else match.group(3, 4)
    try:
        return (targets.at_coordinates(right_ascension, declination),)
    except UnusableCoordinates:
        return ()
