"""The places one observes from, kept with their time zone and horizon."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import asdict, dataclass, field, replace
from typing import Any, Protocol

from core.sky.coordinates import format_latitude, format_longitude
from core.sky.horizon import Horizon, UnusableHorizon
from core.sky.site import Site

KEY = "places"
VERSION = 1


class Settings(Protocol):
    """Where settings are kept; the log of nights is one."""

    def get_setting(self, key: str, default: Any = None) -> Any: ...

    def put_setting(self, key: str, value: Any) -> None: ...


@dataclass(frozen=True, eq=False)
class Place:
    """`zone` as `core.sky.clocks` names it, empty for the computer's own."""

    site: Site
    zone: str = ""
    horizon: Horizon = field(default_factory=Horizon.flat)

    @property
    def label(self) -> str:
        """What it is called; by its coordinates when it has no name."""
        return self.site.name or where(self.site)


class Places:
    """One place a label. Entries this version cannot read are left alone and kept."""

    def __init__(self, settings: Settings) -> None:
        self._settings = settings
        self._places: dict[str, Place] = {}
        self._foreign: list[Any] = []
        self._read(settings.get_setting(KEY))

    def all(self) -> list[Place]:
        """In the order of their labels."""
        return [self._places[label] for label in sorted(self._places, key=str.casefold)]

    def of(self, site: Site | None) -> Place | None:
        """What is kept of a site: by its coordinates and name."""
        if site is None:
            return None
        same = [place for place in self._places.values() if place.site == site]
        return same[0] if same else None

    def horizon_of(self, site: Site) -> Horizon:
        """What stands in the way at a site; nothing where nothing is known."""
        place = self.of(site)
        return Horizon.flat() if place is None else place.horizon

    def keep(self, place: Place) -> None:
        """Keeps it in the stead of the one with the same label."""
        self._places[place.label] = place
        self._write()

    def keep_site(self, site: Site) -> None:
        """Keeps a site that is used, with what is known of it already."""
        known = self._places.get(Place(site).label) or self._at(site)
        self.keep(Place(site) if known is None else replace(known, site=site))

    def _at(self, site: Site) -> Place | None:
        """A place at the same coordinates: the site may only have got another name."""
        return next((place for place in self._places.values() if _same(place.site, site)), None)

    def forget(self, label: str) -> None:
        self._places.pop(label, None)
        self._write()

    def _read(self, kept: Any) -> None:
        if kept is None:
            return
        known = isinstance(kept, dict) and kept.get("version") == VERSION
        entries = kept.get("places", []) if known else [kept]
        for entry in entries if isinstance(entries, list) else [entries]:
            try:
                place = _place(entry)
            except (KeyError, TypeError, ValueError, UnusableHorizon):
                self._foreign.append(entry)
            else:
                self._places[place.label] = place

    def _write(self) -> None:
        entries = [_entry(place) for place in self._places.values()]
        self._settings.put_setting(KEY, {"version": VERSION, "places": [*entries, *self._foreign]})


def where(site: Site) -> str:
    """The coordinates in words."""
    return f"{format_latitude(site.latitude_deg)}, {format_longitude(site.longitude_deg)}"


def _same(one: Site, other: Site) -> bool:
    spot = one.latitude_deg, one.longitude_deg
    return spot == (other.latitude_deg, other.longitude_deg)


def _entry(place: Place) -> dict[str, Any]:
    return {
        "site": asdict(place.site),
        "zone": place.zone,
        "horizon": list(_pairs(place.horizon)),
    }


def _pairs(horizon: Horizon) -> Iterable[list[float]]:
    for azimuth, altitude in zip(horizon.azimuth_deg, horizon.altitude_deg, strict=True):
        yield [float(azimuth), float(altitude)]


def _place(entry: Any) -> Place:
    """From what was kept; any of the usual errors when it is something else."""
    site = entry["site"]
    latitude_deg, longitude_deg = float(site["latitude_deg"]), float(site["longitude_deg"])
    elevation_m = float(site["elevation_m"])
    if not (abs(latitude_deg) <= 90.0 and abs(longitude_deg) <= 360.0 and abs(elevation_m) < 1e5):
        raise ValueError("not a place on the ground")
    pairs = [(float(azimuth), float(altitude)) for azimuth, altitude in entry["horizon"]]
    kept = Site(latitude_deg, longitude_deg, elevation_m, str(site["name"]))
    return Place(kept, str(entry["zone"]), Horizon.through(pairs))
