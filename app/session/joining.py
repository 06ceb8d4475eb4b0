"""Which legs of a drift log may join those of tonight."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from app.session.sitechange import FAR_DEG, apart_deg
from core.alignment.driftlog import DriftLog, Leg
from core.language import say
from core.sky.site import Site


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
