"""Names and figures of a report in words: what a stored name and its unit mean to a reader."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from datetime import UTC, datetime
from typing import Any

from core.alignment.goal import Aim
from core.language import marked, say
from core.sky.site import Air, Site

_PER_TURN = marked("′/turn")
# Longest endings first, so that a rate is not taken for its numerator.
_UNITS = (
    ("_arcsec_per_min", "″/min"),
    ("_arcmin_per_turn", _PER_TURN),
    ("_arcsec", "″"),
    ("_arcmin", "′"),
    ("_deg", "°"),
    ("_hpa", "hPa"),
    ("_hz", "Hz"),
    ("_min", "min"),
    ("_percent", "%"),
    ("_m_per_s", "m/s"),
    ("_mm", "mm"),
    ("_um", "µm"),
    ("_px", marked("pixels")),
    ("_kg", "kg"),
    ("_m", "m"),
    ("_c", "°C"),
    ("_s", "s"),
)
_NAMED = {
    "error_arcmin": (marked("error on the sky"), "′"),
    "half_width_arcmin": (marked("± of it (95 %)"), "′"),
    "azimuth_half_width_arcmin": (marked("± azimuth error (95 %)"), "′"),
    "altitude_half_width_arcmin": (marked("± altitude error (95 %)"), "′"),
}
_CLOSE = ("", "″", "″/min", "′", _PER_TURN, "°")  # written without a gap
_TIME = "_utc_s"
_KEYED = ("what", "goal_is", "verdict")  # hold words of the program, not of the person
# What entries of this version call their values, and the kinds of equipment.
_KNOWN = frozenset(
    (
        marked("name"),
        marked("equipment"),
        marked("what"),
        marked("target"),
        marked("begin"),
        marked("end"),
        marked("azimuth"),
        marked("altitude"),
        marked("azimuth error"),
        marked("altitude error"),
        marked("goal"),
        marked("goal is"),
        marked("verdict"),
        marked("azimuth turns"),
        marked("altitude turns"),
        marked("legs"),
        marked("periodic error"),
        marked("worm period"),
        marked("temperature"),
        marked("humidity"),
        marked("wind"),
        marked("seeing"),
        marked("mount"),
        marked("telescope"),
        marked("camera"),
        marked("guider"),
        marked("eyepiece"),
        marked("accessory"),
        marked("counterweight"),
    )
)

SayTime = Callable[[float], str]


def when(utc_s: float) -> str:
    """Date and time to the minute in UTC."""
    try:
        return datetime.fromtimestamp(utc_s, UTC).strftime("%Y-%m-%d %H:%M UTC")
    except (ValueError, OverflowError, OSError):
        return say("an unknown time")


def named(name: str) -> tuple[str, str]:
    """A stored name as words, and its unit."""
    if name in _NAMED:
        words, unit = _NAMED[name]
        return say(words), unit
    for ending, unit in _UNITS:
        if name.endswith(ending) and name != ending:
            return _known(name.removesuffix(ending)), unit
    return _known(name), ""


def _known(name: str) -> str:
    words = name.replace("_", " ").strip()
    return say(words) if words in _KNOWN else words


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
            found.append([_known(name.removesuffix(_TIME)), say_time(value)])
            continue
        words, unit = named(name)
        gap = "" if unit in _CLOSE else " "
        shown = say(value) if name in _KEYED and isinstance(value, str) else said(value)
        found.append([words, f"{shown}{gap}{say(unit) if unit else unit}"])
    return found


def said(value: Any) -> str:
    """Any value JSON can hold, for a reader."""
    if isinstance(value, bool):
        return say("yes") if value else say("no")
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
        return [[say("site"), say("never said")]]
    north = say("N") if site.latitude_deg >= 0 else say("S")
    east = say("E") if site.longitude_deg >= 0 else say("W")
    found = [
        [say("site"), site.name or say("without a name")],
        [say("latitude"), f"{abs(site.latitude_deg):.4f}° {north}"],
        [say("longitude"), f"{abs(site.longitude_deg):.4f}° {east}"],
        [say("elevation"), f"{site.elevation_m:.0f} m"],
    ]
    if air is not None:
        pressure = f"{air.pressure_hpa:.0f} hPa"
        if air.pressure_is_assumed:
            pressure = say("{pressure} (from the elevation)", pressure=pressure)
        found.append([say("air pressure there"), pressure])
        found.append([say("air temperature"), f"{figure(air.temperature_c)} °C"])
    return found


def _is_number(value: Any) -> bool:
    return isinstance(value, (int, float)) and not isinstance(value, bool)


def aim_words(name: str) -> str:
    """Of an aim by its name; a name of a later version as it stands."""
    words = {aim.name: aim.value for aim in Aim}.get(name)
    return name.replace("_", " ").lower() if words is None else say(words)
