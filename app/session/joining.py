"""Which legs of a drift log may join those of tonight, and what to ask before they do."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from app.session.sitechange import FAR_DEG, apart_deg
from core.alignment.driftlog.records import DriftLog, Leg
from core.language import say
from core.night.words import when
from core.sky.site import Site

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
