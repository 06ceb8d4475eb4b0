"""What was measured, as the text of a drift log."""

from __future__ import annotations

from app.session.snapshot import Snapshot
from core.alignment.driftlog.files import write
from core.alignment.driftlog.records import Header
from core.alignment.priors import differing


def as_drift_log(snapshot: Snapshot) -> str:
    """All legs of the axis state, with the place they were measured at."""
    return write(_header(snapshot), snapshot.legs)


def _header(snapshot: Snapshot) -> Header:
    if snapshot.site is None or snapshot.air is None:
        return Header()
    return Header(
        latitude_deg=snapshot.site.latitude_deg,
        longitude_deg=snapshot.site.longitude_deg,
        elevation_m=snapshot.site.elevation_m,
        pressure_hpa=None if snapshot.air.pressure_is_assumed else snapshot.air.pressure_hpa,
        temperature_c=snapshot.air.temperature_c,
        stated_priors=differing(snapshot.priors),
    )
