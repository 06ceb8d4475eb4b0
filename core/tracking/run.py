"""A stretch of unguided tracking, with the drift of axis error and refraction taken out."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.alignment.budget.alignment import Alignment
from core.alignment.driftlog import Leg
from core.alignment.geometry import offsets_arcsec
from core.alignment.track import Track
from core.alignment.usable import Note
from core.language import say
from core.sky.site import Air, Site

Floats = NDArray[np.float64]

NEAREST_THE_POLE_DEG = 80.0  # beyond, a second of arc on the sky is more than six of the drive
FEWEST_READINGS = 60
LONGEST_S = 86_400.0


class UnusableRun(ValueError):
    """Nothing honest can be said from a run; the text is a sentence for the person."""


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
    notes: tuple[Note, ...] = ()

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
    track = Track.of(leg, site, air)
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
        raise UnusableRun(
            say(
                "Leg “{leg}” has no east offsets, and the drive shows in these alone; record them, "
                "or add the column east_arcsec.",
                leg=leg.label,
            )
        )
    if abs(leg.dec_deg) > NEAREST_THE_POLE_DEG:
        raise UnusableRun(
            say(
                "Leg “{leg}” watches a star at declination {declination:.0f}°, where the drive "
                "hardly moves it; choose a star nearer the celestial equator.",
                leg=leg.label,
                declination=leg.dec_deg,
            )
        )
    good = np.isfinite(leg.east_arcsec) & np.isfinite(leg.north_arcsec) & np.isfinite(leg.utc_s)
    utc_s = leg.utc_s[good]
    if utc_s.size < FEWEST_READINGS:
        raise UnusableRun(
            say(
                "Leg “{leg}” has {count} readings with an east offset; at least {fewest} over "
                "three turns of the worm are needed.",
                leg=leg.label,
                count=utc_s.size,
                fewest=FEWEST_READINGS,
            )
        )
    if np.any(np.diff(utc_s) <= 0.0):
        raise UnusableRun(
            say(
                "The times of leg “{leg}” do not increase; was the clock set while it was "
                "watched? Put the readings in order of time.",
                leg=leg.label,
            )
        )
    east, north = leg.east_arcsec[good], leg.north_arcsec[good]
    _check_sense(leg.label, utc_s, east)
    return Leg(leg.label, leg.ra_deg, leg.dec_deg, utc_s, north, east)


def _not_used(whole: Leg, used: Leg) -> tuple[Note, ...]:
    count = whole.utc_s.size - used.utc_s.size
    if not count:
        return ()
    return (
        Note(
            "without east",
            say(
                "Readings of leg “{leg}” that were not used, since they have no east offset: "
                "{count}.",
                leg=whole.label,
                count=count,
            ),
        ),
    )


def _check_sense(label: str, utc_s: Floats, east: Floats) -> None:
    """Raises UnusableRun for more than a day, and for a star that never moves."""
    if utc_s[-1] - utc_s[0] > LONGEST_S:
        raise UnusableRun(
            say(
                "Leg “{leg}” lasts {hours:.0f} hours; a run belongs to one night. Give each night "
                "a leg of its own, and check the unit of the times.",
                leg=label,
                hours=(utc_s[-1] - utc_s[0]) / 3600.0,
            )
        )
    if np.ptp(east) == 0.0:
        raise UnusableRun(
            say(
                "The east offsets of leg “{leg}” never change; was the star measured?",
                leg=label,
            )
        )


def _notes(leg: Leg, axis_is_known: bool) -> tuple[Note, ...]:
    notes = []
    if not axis_is_known:
        notes.append(
            Note(
                "axis unknown",
                say(
                    "The axis error is not known yet, so a smooth curve was taken for its "
                    "drift; with a finished alignment the drift is computed instead."
                ),
            )
        )
    if abs(leg.dec_deg) > 60.0:
        notes.append(
            Note(
                "far from the equator",
                say(
                    "At declination {declination:.0f}° the air counts {times:.1f} times as "
                    "much as at the equator; a star nearer the equator shows the drive better.",
                    declination=leg.dec_deg,
                    times=1.0 / math.cos(math.radians(leg.dec_deg)),
                ),
            )
        )
    return tuple(notes)
