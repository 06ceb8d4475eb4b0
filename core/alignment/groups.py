"""Readings of a leg gathered into group means, which carry the drift without its bulk."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.alignment.driftlog import Leg

Floats = NDArray[np.float64]
Flags = NDArray[np.bool_]

_MOSTLY = 0.8  # of the readings: so many with an east offset tell the others'
GROUPS_PER_LEG = 96  # a line through 96 means knows its slope as well as one through all readings


@dataclass(frozen=True, eq=False)
class Groups:
    """Means of neighbouring readings of one leg, all arrays (k,).

    `part` counts the pieces of the leg between steps; each has an origin of its own.
    `stated_sigma_arcsec` is the reading error of a group's mean, where the person stated one;
    `east_arcsec` the mean east offset, where most readings have one; the others lie on the line
    between their neighbours.
    """

    utc_s: Floats
    north_arcsec: Floats
    count: Floats
    part: NDArray[np.intp]
    stated_sigma_arcsec: Floats | None
    east_arcsec: Floats | None = None

    @property
    def parts(self) -> int:
        """Number of pieces between steps."""
        return int(self.part[-1]) + 1

    def part_columns(self) -> Floats:
        """Design columns (k, parts): one constant origin per piece."""
        return np.equal.outer(self.part, np.arange(self.parts)).astype(float)


def group(leg: Leg, kept: Flags, breaks: Sequence[int]) -> Groups:
    """Means over equal spans of time; `breaks` are indices of readings that begin a new piece."""
    part_of_reading = np.searchsorted(
        np.asarray(breaks, dtype=np.intp), np.arange(kept.size), "right"
    )
    utc_s, part = leg.utc_s[kept], part_of_reading[kept]
    north = leg.north_arcsec[kept]
    starts = _group_starts(utc_s, part)
    count = np.diff(np.append(starts, utc_s.size)).astype(float)
    origin_s = utc_s[0]
    stated = east = None
    if leg.sigma_arcsec is not None:
        stated = np.sqrt(np.add.reduceat(leg.sigma_arcsec[kept] ** 2, starts)) / count
    if leg.east_arcsec is not None:
        told = kept & np.isfinite(leg.east_arcsec)
        if told.sum() >= _MOSTLY * kept.sum():
            whole = np.interp(utc_s, leg.utc_s[told], leg.east_arcsec[told])
            east = np.add.reduceat(whole, starts) / count
    _, consecutive = np.unique(part[starts], return_inverse=True)
    return Groups(
        utc_s=origin_s + np.add.reduceat(utc_s - origin_s, starts) / count,
        north_arcsec=np.add.reduceat(north, starts) / count,
        count=count,
        part=consecutive.astype(np.intp),
        stated_sigma_arcsec=stated,
        east_arcsec=east,
    )


def _group_starts(utc_s: Floats, part: NDArray[np.intp]) -> NDArray[np.intp]:
    """Indices at which a new group begins."""
    if utc_s.size <= GROUPS_PER_LEG:
        return np.arange(utc_s.size)
    width_s = (utc_s[-1] - utc_s[0]) * (1.0 + 1e-9) / GROUPS_PER_LEG
    cell = np.floor((utc_s - utc_s[0]) / width_s).astype(np.intp)
    changes = (np.diff(cell) != 0) | (np.diff(part) != 0)
    return np.append(0, np.flatnonzero(changes) + 1)
