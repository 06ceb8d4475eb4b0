"""The legs of a night as a drift log."""

from __future__ import annotations

from dataclasses import replace

from core.alignment.driftlog import Header, write
from core.night.reportnight import NightRecord

AXIS_STATE, PURPOSE, STAR, LEFT_OUT = "axis_state", "purpose", "star", "left_out"


def drift_csv(night: NightRecord) -> str:
    """All legs; further columns say the axis state (from 1), purpose, star, and what was left out.

    Legs whose label was used before in the night get a number behind it.
    """
    legs, extras, labels = [], [], set[str]()
    for number, state in enumerate(night.axis_states, 1):
        for watched in state.legs:
            label = _unused(watched.leg.label, labels)
            labels.add(label)
            count = watched.leg.utc_s.size
            left_out = "yes" if watched.is_discarded else "no"
            texts = {
                AXIS_STATE: str(number),
                PURPOSE: watched.purpose,
                STAR: watched.star_name,
                LEFT_OUT: left_out,
            }
            extras.append({name: (text,) * count for name, text in texts.items()})
            legs.append(replace(watched.leg, label=label))
    return write(_header(night), legs, extras)


def _header(night: NightRecord) -> Header:
    site, air = night.site, night.air
    return Header(
        latitude_deg=None if site is None else site.latitude_deg,
        longitude_deg=None if site is None else site.longitude_deg,
        elevation_m=None if site is None else site.elevation_m,
        pressure_hpa=None if air is None or air.pressure_is_assumed else air.pressure_hpa,
        temperature_c=None if air is None else air.temperature_c,
    )


def _unused(label: str, labels: set[str]) -> str:
    wanted = " ".join(label.split()) or "leg"
    if wanted not in labels:
        return wanted
    return next(
        name for n in range(2, len(labels) + 3) if (name := f"{wanted} ({n})") not in labels
    )
