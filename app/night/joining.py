"""Legs of a drift log joined to tonight's: what of its site and steps must be asked first."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

import numpy as np

from app.night.snapshot import Snapshot
from core.alignment.driftlog.records import DriftLog, Leg
from core.language import say
from core.night.words import when
from core.sky.places import separation_deg
from core.sky.site import Site

# A change of the place when something is measured: put right, or was the mount carried away?

# Nearer, it is the same field seen by another receiver or read off another map.
FAR_DEG = 0.1


class Change(Enum):
    """What the change means for what was measured in this axis state."""

    NOTHING_MEASURED = "there is nothing it could change, or the place is the same"
    PUT_RIGHT = "what was measured is computed anew"
    IN_DOUBT = "a correction or a move: only the person knows"


def change_to(site: Site, snapshot: Snapshot) -> Change:
    """What it means when `site` comes into use."""
    old = snapshot.site
    if old is None or not _has_measured(snapshot) or _where(old) == _where(site):
        return Change.NOTHING_MEASURED
    return Change.IN_DOUBT if apart_deg(old, site) > FAR_DEG else Change.PUT_RIGHT


def apart_deg(one: Site, other: Site) -> float:
    """How far apart two places lie, as an angle at the centre of the Earth."""
    places = one.longitude_deg, one.latitude_deg, other.longitude_deg, other.latitude_deg
    return float(separation_deg(*places))


def _has_measured(snapshot: Snapshot) -> bool:
    """By legs that were read, or by what the last turn of the bolts left known."""
    is_known = snapshot.guide.last_turn is not None
    return is_known or any(leg.utc_s.size for leg in snapshot.legs)


def _where(site: Site) -> tuple[float, float, float]:
    return site.latitude_deg, site.longitude_deg, site.elevation_m


# Which legs of a drift log may join those of tonight, and what to ask before they do.

ANOTHER_NIGHT_S = 12 * 3600.0


@dataclass(frozen=True)
class Joining:
    """`legs` to take, and a sentence on those that are not, empty when all are."""

    legs: tuple[Leg, ...]
    sentence: str = ""


def joining(log: DriftLog, site: Site | None, present: Sequence[Leg]) -> Joining:
    """`site`: of tonight, None when nobody said. `present`: the legs of this axis state.

    Legs of one axis state are solved together at one place: those from elsewhere would send both
    bolts the wrong way. A leg counted twice would make the ± too small.
    """
    measured_at = log.header.site()
    if site is not None and measured_at is not None and apart_deg(site, measured_at) > FAR_DEG:
        return Joining((), _from_elsewhere(measured_at, site))
    fresh = tuple(leg for leg in log.legs if not any(_same(leg, other) for other in present))
    count = len(log.legs) - len(fresh)
    if not count:
        return Joining(fresh)
    if not fresh:
        return Joining((), say("All legs of this log are here already: nothing was taken again."))
    return Joining(
        fresh, say("{count} of its legs are here already and were not taken again.", count=count)
    )


def joining_question(joined: Joining, present: Sequence[Leg]) -> str:
    """What to ask before the legs come to those of this axis state; empty when none would meet.

    Nobody but the person knows whether the bolts were touched in between: joined wrongly, both
    alignments are averaged into one that never was.
    """
    if not joined.legs or not present:
        return ""
    met = say(
        "Legs here since the bolts were last turned: {here} ({here_times}). Legs in the log: {new} "
        "({new_times}).",
        here=len(present),
        here_times=_times(present),
        new=len(joined.legs),
        new_times=_times(joined.legs),
    )
    if _apart_s(joined.legs, present) > ANOTHER_NIGHT_S:
        met = f"{met} {say('The log is from another night.')}"
    asked = say(
        "Solve them together only if nobody touched the bolts or moved the mount in between. In a "
        "new state the log stands alone: the legs here no longer count, but stay in the log of "
        "nights."
    )
    return f"{met} {asked}"


def _times(legs: Sequence[Leg]) -> str:
    """From the first reading to the last, in UTC."""
    span = _span_s(legs)
    if span is None:
        return say("not read yet")
    begun, ended = when(span[0]), when(span[1])
    return begun if begun == ended else say("{begun} to {ended}", begun=begun, ended=ended)


def _apart_s(some: Sequence[Leg], others: Sequence[Leg]) -> float:
    """The pause between the two; 0 where they overlap, or where nothing was read."""
    one, other = _span_s(some), _span_s(others)
    if one is None or other is None:
        return 0.0
    return max(0.0, one[0] - other[1], other[0] - one[1])


def _span_s(legs: Sequence[Leg]) -> tuple[float, float] | None:
    read = [leg.utc_s for leg in legs if leg.utc_s.size]
    if not read:
        return None
    return float(min(times[0] for times in read)), float(max(times[-1] for times in read))


def _same(one: Leg, other: Leg) -> bool:
    """The same readings of the same star."""
    return (
        (one.ra_deg, one.dec_deg) == (other.ra_deg, other.dec_deg)
        and np.array_equal(one.utc_s, other.utc_s)
        and np.array_equal(one.north_arcsec, other.north_arcsec)
    )


def _from_elsewhere(measured_at: Site, site: Site) -> str:
    return say(
        "This log was measured at latitude {log_latitude:.2f}°, longitude {log_longitude:.2f}°, "
        "but tonight's place is {latitude:.2f}°, {longitude:.2f}°. Nothing was taken: solved at "
        "the wrong place it may turn the bolts the wrong way. Enter its place on the Site page and "
        "read it again, or correct the lines at its top.",
        log_latitude=measured_at.latitude_deg,
        log_longitude=measured_at.longitude_deg,
        latitude=site.latitude_deg,
        longitude=site.longitude_deg,
    )
