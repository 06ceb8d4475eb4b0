"""Readings of a watched star, gathered into legs, with what a log says about its night."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from core.alignment.priors import Priors, stated
from core.sky.refraction import standard_pressure_hpa
from core.sky.site import STANDARD_TEMPERATURE_C, Air, Site

Floats = NDArray[np.float64]
_LEAST_PAUSE_S, _PAUSE_TIMES = 30.0, 10.0  # a silence that counts; so many usual intervals at least


class UnusableLog(ValueError):
    """Nothing can be made of a log; the text is a sentence for the person."""


class BadRow(ValueError):
    """A line that cannot be used; the text is the reason."""


class ReadingCancelled(Exception):
    """The caller's `keep_going` answered no."""


@dataclass(frozen=True, eq=False)
class Leg:
    """One star watched without touching the bolts.

    `ra_deg`, `dec_deg`: ICRS place of the star at the time of the night. `utc_s` (n,): seconds
    since 1970-01-01 UTC, increasing. `north_arcsec` (n,): offset of the star relative to where
    the mount keeps pointing, north positive, from any origin fixed within the leg.
    `east_arcsec` (n,): likewise, right ascension times cos declination; None where never read,
    NaN at single readings without it. `sigma_arcsec` (n,): stated reading error, one standard
    deviation, never NaN; None unless every reading states one.
    """

    label: str
    ra_deg: float
    dec_deg: float
    utc_s: Floats
    north_arcsec: Floats
    east_arcsec: Floats | None = None
    sigma_arcsec: Floats | None = None

    @cached_property
    def pauses(self) -> NDArray[np.intp]:
        """Indices (k,) of the readings after which none came for long."""
        apart_s = np.diff(self.utc_s)
        long = np.flatnonzero(apart_s > _LEAST_PAUSE_S)
        if long.size == 0 or apart_s.size < 3:
            return long[:0]
        return long[apart_s[long] > _PAUSE_TIMES * float(np.median(apart_s))]


@dataclass(frozen=True)
class Header:
    """What the `# key: value` lines of a log say; None where they are silent.

    Latitude positive north, longitude positive east; pressure is the station's. `stated_priors`:
    by names of `core.alignment.priors.Priors`. `other`: pairs of keys and values without a
    meaning here, in order. `notes`: comment lines that are no pair.
    """

    latitude_deg: float | None = None
    longitude_deg: float | None = None
    elevation_m: float | None = None
    pressure_hpa: float | None = None
    temperature_c: float | None = None
    stated_priors: Mapping[str, float] = field(default_factory=dict, hash=False)
    other: tuple[tuple[str, str], ...] = ()
    notes: tuple[str, ...] = ()

    def site(self) -> Site | None:
        """The place, when both coordinates are given; sea level when no elevation is."""
        if self.latitude_deg is None or self.longitude_deg is None:
            return None
        return Site(self.latitude_deg, self.longitude_deg, self.elevation_m or 0.0)

    def air(self) -> Air:
        """The air; without a pressure, that of the standard atmosphere at the elevation."""
        temperature_c = STANDARD_TEMPERATURE_C if self.temperature_c is None else self.temperature_c
        if self.pressure_hpa is not None:
            return Air(self.pressure_hpa, temperature_c)
        pressure_hpa = standard_pressure_hpa(self.elevation_m or 0.0)
        return Air(pressure_hpa, temperature_c, pressure_is_assumed=True)

    def priors(self) -> Priors:
        """The nuisances as stated; the usual sizes of those that are not."""
        return stated(self.stated_priors)


@dataclass(frozen=True)
class Rejected:
    """A line that was not used. `line_number` counts from 1; `reason` is a sentence."""

    line_number: int
    reason: str


@dataclass(frozen=True)
class Remark:
    """Something about used lines that the person should know. `text` is a sentence."""

    line_number: int
    text: str


Extras = Mapping[str, tuple[str, ...]]


@dataclass(frozen=True, eq=False)
class DriftLog:
    """A log as read: its legs in order of first appearance, and an account of every other line.

    `extras`: for each leg, the texts (n,) of columns without a meaning here, by column name.
    `in_pixels`: names of the offsets that are in pixels still; only a run's may be.
    """

    header: Header
    legs: tuple[Leg, ...]
    rejected: tuple[Rejected, ...] = ()
    remarks: tuple[Remark, ...] = ()
    extras: tuple[Extras, ...] = ()
    in_pixels: frozenset[str] = frozenset()
