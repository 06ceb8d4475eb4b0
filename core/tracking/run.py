"""Readings gathered into means, so that a long run costs little more."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.alignment.drift.geometry import offsets_arcsec
from core.alignment.drift.path import ApparentTrack
from core.alignment.drift.steps import find_breaks
from core.alignment.driftlog.records import Leg
from core.finding import Code, Finding, Refused
from core.imaging.tolerance import Alignment
from core.sky.site import Air, Site


class RunFault(Code):
    """Why a leg is no run, and what is missing in one."""

    NO_EAST = "no east"
    NEAR_THE_POLE = "near the pole"
    FEW_READINGS = "few readings"
    TIMES = "times"
    WITHOUT_EAST = "without east"
    MANY_NIGHTS = "many nights"
    NEVER_CHANGES = "never changes"
    AXIS_UNKNOWN = "axis unknown"
    FAR_FROM_THE_EQUATOR = "far from the equator"


Floats = NDArray[np.float64]
Counts = NDArray[np.intp]

MOST_BINS = 2400  # 12 s over eight hours; models are averaged alike, so nothing is smoothed away
SHORTEST_S = 8.0  # means over less would carry the memory of the air, beside that of the drive


@dataclass(frozen=True, eq=False)
class Bins:
    """`starts` (k,): index of each bin's first reading; `utc_s`, `count`, `piece` (k,).

    `piece` counts the stretches between breaks; each has an origin of its own.
    """

    starts: Counts
    utc_s: Floats
    count: Floats
    piece: Counts

    @classmethod
    def of(cls, utc_s: Floats, piece: Counts) -> Bins:
        """Of equal spans. `utc_s` (n,) increasing; `piece` (n,) never decreasing."""
        usual_s = max(SHORTEST_S, float(utc_s[-1] - utc_s[0]) / MOST_BINS)
        return cls._at(_starts(utc_s, piece, usual_s), utc_s, piece)

    @classmethod
    def of_readings(cls, utc_s: Floats, piece: Counts, each: int) -> Bins:
        """So many readings in each bin, fewer in the last of a piece.

        Equal spans hold now three readings, now two: their times beat with the cadence, and the
        worm shows again beside it. `piece` (n,) counts from 0.
        """
        first = np.append(0, np.flatnonzero(np.diff(piece)) + 1)
        within = np.arange(utc_s.size) - first[piece]
        return cls._at(np.flatnonzero(within % each == 0), utc_s, piece)

    @classmethod
    def _at(cls, starts: Counts, utc_s: Floats, piece: Counts) -> Bins:
        count = np.diff(np.append(starts, utc_s.size)).astype(np.float64)
        origin_s = utc_s[0]
        means = origin_s + np.add.reduceat(utc_s - origin_s, starts) / count
        return cls(starts, means, count, piece[starts])

    @property
    def pieces(self) -> int:
        """Number of pieces."""
        return int(self.piece[-1]) + 1

    def means(self, columns: Floats) -> Floats:
        """Means (k, …) of readings (n, …) in each bin."""
        sums = np.add.reduceat(columns, self.starts, axis=0)
        return np.asarray(sums / self.count.reshape(-1, *(1,) * (columns.ndim - 1)))

    def origins(self) -> Floats:
        """Design columns (k, pieces): one constant per piece."""
        return np.equal.outer(self.piece, np.arange(self.pieces)).astype(np.float64)


def _starts(utc_s: Floats, piece: Counts, width_s: float) -> Counts:
    cell = np.floor((utc_s - utc_s[0]) / width_s).astype(np.intp)
    changes = (np.diff(cell) != 0) | (np.diff(piece) != 0)
    return np.append(0, np.flatnonzero(changes) + 1)


# Where a run is broken: gaps, bumps, a meridian flip; every piece gets an origin of its own.

Flags = NDArray[np.bool_]

LONG_GAP_S = 60.0
_GAP_INTERVALS = 20.0  # a gap is also long only if it is this many usual intervals
_MOST_GAPS = 24


def long_gaps(utc_s: Floats) -> tuple[int, ...]:
    """Indices of readings that follow a long gap, the longest 24 of them."""
    steps = np.diff(utc_s)
    least = max(LONG_GAP_S, _GAP_INTERVALS * float(np.median(steps)))
    found = np.flatnonzero(steps > least)
    if found.size > _MOST_GAPS:
        found = found[np.argsort(steps[found])[-_MOST_GAPS:]]
    return tuple(int(index) + 1 for index in np.sort(found))


def piece_numbers(size: int, breaks: tuple[int, ...]) -> Counts:
    """Piece (n,) of every reading; `breaks` are indices that begin a new one."""
    starts = np.asarray(sorted(breaks), dtype=np.intp)
    return np.searchsorted(starts, np.arange(size), "right").astype(np.intp)


def bumps(utc_s: Floats, residual_arcsec: Floats, kept: Flags) -> tuple[int, ...]:
    """Readings before which the star jumped, found in what the periodic fit leaves over.

    The search of `core.alignment.drift.steps`, which asks of a leg its north offsets.
    """
    leg = Leg("residual", 0.0, 0.0, utc_s, residual_arcsec)
    return find_breaks(leg, kept, np.zeros_like(utc_s))


# The readings a worm is fitted to: their pieces, their bins, their trend.

_MOST_IN_SPECTRUM = 24_000  # bins
_SHORTEST_S = 6.0
_SHORTEST_PERIOD_INTERVALS = 3.0  # readings in the shortest period shown
_BINS = 10.0  # bins in it where readings are gathered; a ninth of what is faster folds back


@dataclass(frozen=True, eq=False)
class Readings:
    """What is fitted: times and leads (n,), gathered into bins. `trend_order`: 1 line, 2 curve."""

    utc_s: Floats
    lead_arcsec: Floats
    bins: Bins
    trend_order: int

    @classmethod
    def of(cls, utc_s: Floats, lead_arcsec: Floats, piece: Counts, trend_order: int) -> Readings:
        """`piece` (n,) counts stretches with origins of their own."""
        _, consecutive = np.unique(piece, return_inverse=True)
        bins = Bins.of(utc_s, consecutive.astype(np.intp))
        return cls(utc_s, lead_arcsec, bins, trend_order)

    @property
    def epoch_s(self) -> float:
        """Middle of the run, where period and phases disturb each other least."""
        return 0.5 * float(self.utc_s[0] + self.utc_s[-1])

    @property
    def duration_s(self) -> float:
        """From the first reading to the last."""
        return float(self.utc_s[-1] - self.utc_s[0])

    def smooth_columns(self) -> Floats:
        """Origins and trend (k, pieces + order) at the bins."""
        place = (self.bins.utc_s - self.epoch_s) / (0.5 * self.duration_s)
        trend = [place**power for power in range(1, self.trend_order + 1)]
        return np.column_stack([self.bins.origins(), *trend])

    def smooth_part(self, smooth: Floats) -> Floats:
        """Origins and trend (n,) at every reading, of coefficients as of `smooth_columns`."""
        place = (self.utc_s - self.epoch_s) / (0.5 * self.duration_s)
        powers = np.arange(1, self.trend_order + 1)
        trend = (place[:, np.newaxis] ** powers) @ smooth[self.bins.pieces :]
        return np.asarray(smooth[self.piece()] + trend)

    def piece(self) -> Counts:
        """Piece (n,) of every reading."""
        return np.repeat(self.bins.piece, self.bins.count.astype(np.intp))

    def binned_lead(self) -> Floats:
        """Means (k,) of the readings."""
        return self.bins.means(self.lead_arcsec)

    def for_spectrum(self) -> tuple[Bins, float]:
        """Bins of whole readings, a single one each unless the run is very long, and the shortest
        period in seconds that they show."""
        each = -(-self.utc_s.size // _MOST_IN_SPECTRUM)
        interval_s = float(np.median(np.diff(self.utc_s)))
        fewest = _SHORTEST_PERIOD_INTERVALS if each == 1 else _BINS * each
        bins = Bins.of_readings(self.utc_s, self.piece(), each)
        return bins, max(_SHORTEST_S, fewest * interval_s)

    def without_trend(self) -> Floats:
        """Binned leads (k,) less origins and trend, by plain least squares."""
        columns, lead = self.smooth_columns(), self.binned_lead()
        solution, *_ = np.linalg.lstsq(columns, lead, rcond=None)
        return np.asarray(lead - columns @ solution)


# A stretch of unguided tracking, with the drift of axis error and refraction taken out.

NEAREST_THE_POLE_DEG = 80.0  # beyond, a second of arc on the sky is more than six of the drive
FEWEST_READINGS = 60
LONGEST_S = 86_400.0


class UnusableRun(Refused):
    """Nothing honest can be said from a run."""


@dataclass(frozen=True, eq=False)
class Run:
    """Readings of one star, the model of the axis removed; arrays (n,).

    `lead_arcsec`: the drive's lead, east offset over cos declination. `north_arcsec`: likewise
    freed of the model; None where never read. `modelled_lead_arcsec` and `modelled_north_arcsec`
    are what was removed. `hour_angle_deg`: west positive, None without a place. `axis_is_known`:
    otherwise the drift of the axis is still inside, and a curved trend has to take it.
    """

    utc_s: Floats
    lead_arcsec: Floats
    north_arcsec: Floats | None
    declination_deg: float
    hour_angle_deg: Floats | None
    modelled_lead_arcsec: Floats
    modelled_north_arcsec: Floats
    axis_is_known: bool
    notes: tuple[Finding, ...] = ()

    @property
    def duration_s(self) -> float:
        """From the first reading to the last."""
        return float(self.utc_s[-1] - self.utc_s[0])

    @property
    def cos_declination(self) -> float:
        """Turns arcseconds of the drive into arcseconds on the sky."""
        return math.cos(math.radians(self.declination_deg))

    @property
    def interval_s(self) -> float:
        """The usual time from one reading to the next."""
        return float(np.median(np.diff(self.utc_s)))


def run_of(leg: Leg, site: Site, air: Air, alignment: Alignment | None = None) -> Run:
    """The run of a leg at a place. `alignment`: None while the axis error is unknown.

    Raises UnusableRun when the leg has no east offsets, or too few.
    """
    whole, leg = leg, _with_east(leg)
    track = ApparentTrack.of(leg, site, air)
    hour_angle = track.hour_angle_at(leg.utc_s)
    axis = np.zeros(2) if alignment is None else alignment.axis_rad
    north, east = offsets_arcsec(
        hour_angle,
        track.declination_rad,
        track.latitude_rad,
        float(axis[0]),
        float(axis[1]),
        track.refraction,
    )
    wrapped = hour_angle - 2.0 * np.pi * np.round(np.mean(hour_angle) / (2.0 * np.pi))
    run = _run(leg, np.rad2deg(wrapped), (north, east), alignment is not None)
    return replace(run, notes=(*run.notes, *_not_used(whole, leg)))


def run_without_place(leg: Leg) -> Run:
    """The run of a leg watched nobody knows where: nothing is removed. Raises UnusableRun."""
    whole, leg = leg, _with_east(leg)
    nothing = np.zeros_like(leg.utc_s)
    run = _run(leg, None, (nothing, nothing), axis_is_known=False)
    return replace(run, notes=(*run.notes, *_not_used(whole, leg)))


def _run(
    leg: Leg, hour_angle_deg: Floats | None, model: tuple[Floats, Floats], axis_is_known: bool
) -> Run:
    assert leg.east_arcsec is not None
    cosine = math.cos(math.radians(leg.dec_deg))
    north, east = model
    has_north = bool(np.ptp(leg.north_arcsec) > 0.0)
    return Run(
        utc_s=leg.utc_s,
        lead_arcsec=(leg.east_arcsec - east) / cosine,
        north_arcsec=leg.north_arcsec - north if has_north else None,
        declination_deg=leg.dec_deg,
        hour_angle_deg=hour_angle_deg,
        modelled_lead_arcsec=east / cosine,
        modelled_north_arcsec=north,
        axis_is_known=axis_is_known,
        notes=_notes(leg, axis_is_known),
    )


def _with_east(leg: Leg) -> Leg:
    """The readings that have an east offset, in order."""
    if leg.east_arcsec is None:
        raise UnusableRun(RunFault.NO_EAST, leg=leg.label)
    if abs(leg.dec_deg) > NEAREST_THE_POLE_DEG:
        raise UnusableRun(RunFault.NEAR_THE_POLE, leg=leg.label, declination=leg.dec_deg)
    good = np.isfinite(leg.east_arcsec) & np.isfinite(leg.north_arcsec) & np.isfinite(leg.utc_s)
    utc_s = leg.utc_s[good]
    if utc_s.size < FEWEST_READINGS:
        raise UnusableRun(
            RunFault.FEW_READINGS, leg=leg.label, count=utc_s.size, fewest=FEWEST_READINGS
        )
    if np.any(np.diff(utc_s) <= 0.0):
        raise UnusableRun(RunFault.TIMES, leg=leg.label)
    east, north = leg.east_arcsec[good], leg.north_arcsec[good]
    _check_sense(leg.label, utc_s, east)
    return Leg(leg.label, leg.ra_deg, leg.dec_deg, utc_s, north, east)


def _not_used(whole: Leg, used: Leg) -> tuple[Finding, ...]:
    count = whole.utc_s.size - used.utc_s.size
    if not count:
        return ()
    return (Finding.of(RunFault.WITHOUT_EAST, leg=whole.label, count=count),)


def _check_sense(label: str, utc_s: Floats, east: Floats) -> None:
    """Raises UnusableRun for more than a day, and for a star that never moves."""
    if utc_s[-1] - utc_s[0] > LONGEST_S:
        raise UnusableRun(RunFault.MANY_NIGHTS, leg=label, hours=(utc_s[-1] - utc_s[0]) / 3600.0)
    if np.ptp(east) == 0.0:
        raise UnusableRun(RunFault.NEVER_CHANGES, leg=label)


def _notes(leg: Leg, axis_is_known: bool) -> tuple[Finding, ...]:
    notes = []
    if not axis_is_known:
        notes.append(Finding.of(RunFault.AXIS_UNKNOWN))
    if abs(leg.dec_deg) > 60.0:
        notes.append(
            Finding.of(
                RunFault.FAR_FROM_THE_EQUATOR,
                declination=leg.dec_deg,
                times=1.0 / math.cos(math.radians(leg.dec_deg)),
            )
        )
    return tuple(notes)
