"""What to mind while a star is watched: bumps, gaps, the edge of the field, the horizon."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

from core.alignment.driftlog.records import Leg
from core.language import say
from core.sky.horizon import Horizon
from core.sky.places import horizontal_deg
from core.sky.site import Air, Site

if TYPE_CHECKING:
    from app.session.snapshot import Snapshot

TOLD = ("step", "bends", "stars alike", "low star", "below horizon")  # codes of notes
GAP_TIMES = 10.0  # the usual interval
LEAST_GAP_S = 30.0
NEAR_EDGE = 0.8  # of the way from the middle to the edge
AHEAD_S = 600.0


@dataclass(frozen=True)
class Warned:
    """`sentences`: the most pressing first; `is_leaving`: one says the star goes out of sight."""

    sentences: tuple[str, ...] = ()
    is_leaving: bool = False


def warnings(
    snapshot: Snapshot, horizon: Horizon, now_utc_s: float, across_arcmin: float
) -> Warned:
    """On the leg under way. `across_arcmin`: of the field."""
    watched = [leg for leg in snapshot.legs if leg.label == snapshot.watching]
    if not watched or watched[0].utc_s.size < 2:
        return Warned()
    leg = watched[0]
    leaves = [leaving(leg, across_arcmin)]
    if snapshot.site is not None and snapshot.air is not None:
        leaves.append(setting(leg, snapshot.site, snapshot.air, horizon))
    said = [sentence for sentence in (gap(leg, now_utc_s), *leaves) if sentence]
    return Warned((*said, *_of_notes(snapshot, leg.label)), any(leaves))


def _of_notes(snapshot: Snapshot, label: str) -> Sequence[str]:
    notes = () if snapshot.solution is None else snapshot.solution.notes
    return [
        note.text
        for note in notes
        if note.code in TOLD and (note.leg == label or note.code == "stars alike")
    ]


def gap(leg: Leg, now_utc_s: float) -> str:
    """Clouds, or a camera that stopped."""
    usual_s = float(np.median(np.diff(leg.utc_s)))
    silent_s = now_utc_s - float(leg.utc_s[-1])
    if silent_s < max(GAP_TIMES * usual_s, LEAST_GAP_S):
        return ""
    return say(
        "No reading for {minutes:.1f} min (clouds?): what was read still counts.",
        minutes=silent_s / 60.0,
    )


def leaving(leg: Leg, across_arcmin: float) -> str:
    """The star has come far from where it was centred, in a field so wide."""
    north = float(leg.north_arcsec[-1] - leg.north_arcsec[0])
    east = 0.0
    if leg.east_arcsec is not None and np.isfinite(leg.east_arcsec[[0, -1]]).all():
        east = float(leg.east_arcsec[-1] - leg.east_arcsec[0])
    moved_arcmin = float(np.hypot(north, east)) / 60.0
    if moved_arcmin < NEAR_EDGE * across_arcmin / 2.0:
        return ""
    return say(
        "The star has moved {moved:.1f}′ and may leave the field ({across:.3g}′ across): bring it "
        "back and begin a new leg on it; both legs count.",
        moved=moved_arcmin,
        across=across_arcmin,
    )


def setting(leg: Leg, site: Site, air: Air, horizon: Horizon) -> str:
    """The star goes down behind what stands in the way."""
    times = leg.utc_s[-1] + np.array([0.0, AHEAD_S])
    azimuth, altitude = horizontal_deg(leg.ra_deg, leg.dec_deg, site, air, times)
    free = altitude - np.maximum(horizon.limit_deg(azimuth), 0.0)
    if free[0] <= 0.0:
        return say("The star is behind the horizon now: end this leg; what was read still counts.")
    if free[1] > 0.0:
        return ""
    minutes = AHEAD_S / 60.0 * free[0] / (free[0] - free[1])
    return say("The star goes behind the horizon in about {minutes:.0f} min.", minutes=minutes)
