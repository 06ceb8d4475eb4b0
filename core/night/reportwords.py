"""Names and figures of a report in words: what a stored name and its unit mean to a reader."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from datetime import UTC, datetime
from typing import Any

from core.sky.site import Air, Site

# Longest endings first, so that a rate is not taken for its numerator.
_UNITS = (
    ("_arcsec_per_min", "″/min"),
    ("_arcmin_per_turn", "′/turn"),
    ("_arcsec", "″"),
    ("_arcmin", "′"),
    ("_deg", "°"),
    ("_hpa", "hPa"),
    ("_min", "min"),
    ("_mm", "mm"),
    ("_um", "µm"),
    ("_px", "pixels"),
    ("_kg", "kg"),
    ("_m", "m"),
    ("_c", "°C"),
    ("_s", "s"),
)
_CLOSE = ("", "″", "″/min", "′", "′/turn", "°")  # written without a gap
_TIME = "_utc_s"

SayTime = Callable[[float], str]


def when(utc_s: float) -> str:
    """Date and time to the minute in UTC."""
    try:
        return datetime.fromtimestamp(utc_s, UTC).strftime("%Y-%m-%d %H:%M UTC")
    except (ValueError, OverflowError, OSError):
        return "an unknown time"


def named(name: str) -> tuple[str, str]:
    """A stored name as words, and its unit."""
    for ending, unit in _UNITS:
        if name.endswith(ending) and name != ending:
            return name.removesuffix(ending).replace("_", " ").strip(), unit
    return name.replace("_", " "), ""


def rows(
    content: Mapping[str, Any],
    leave_out: frozenset[str] = frozenset(),
    say_time: SayTime = when,
) -> list[list[str]]:
    """[what, value] for everything in an entry's content that says something."""
    found = []
    for name, value in content.items():
        if name in leave_out or value in (None, "", [], {}):
            continue
        if name.endswith(_TIME) and _is_number(value):
            found.append([name.removesuffix(_TIME).replace("_", " "), say_time(value)])
            continue
        words, unit = named(name)
        gap = "" if unit in _CLOSE else " "
        found.append([words, f"{said(value)}{gap}{unit}"])
    return found


def said(value: Any) -> str:
    """Any value JSON can hold, for a reader."""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float):
        return figure(value)
    if isinstance(value, Mapping):
        return "; ".join(f"{what}: {how}" for what, how in rows(value))
    if isinstance(value, (list, tuple)):
        return ", ".join(said(one) for one in value)
    return "" if value is None else str(value)


def figure(value: float | None, digits: int = 4) -> str:
    """A number with a true minus sign; a dash for none."""
    if value is None or not math.isfinite(value):
        return "–"
    return f"{value:.{digits}g}".replace("-", "−")


def site_rows(site: Site | None, air: Air | None) -> list[list[str]]:
    """Where, and in what air."""
    if site is None:
        return [["site", "never said"]]
    found = [
        ["site", site.name or "without a name"],
        ["latitude", f"{abs(site.latitude_deg):.4f}° {'N' if site.latitude_deg >= 0 else 'S'}"],
        ["longitude", f"{abs(site.longitude_deg):.4f}° {'E' if site.longitude_deg >= 0 else 'W'}"],
        ["elevation", f"{site.elevation_m:.0f} m"],
    ]
    if air is not None:
        assumed = " (from the elevation)" if air.pressure_is_assumed else ""
        found.append(["air pressure there", f"{air.pressure_hpa:.0f} hPa{assumed}"])
        found.append(["air temperature", f"{figure(air.temperature_c)} °C"])
    return found


def _is_number(value: Any) -> bool:
    return isinstance(value, (int, float)) and not isinstance(value, bool)
