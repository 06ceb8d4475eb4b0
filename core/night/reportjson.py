"""A night as JSON of our own form, to keep, to carry and to take in again.

    {"format": "poleward night", "version": 1, "night": {...}}

Arrays of a leg stand as lists, readings that were not taken as null, attachments in base 64.
Reading gives back exactly the night that was written. A file of a newer version is refused whole,
since its meaning may have changed.
"""

from __future__ import annotations

import base64
import binascii
import json
import math
from collections.abc import Mapping
from dataclasses import asdict
from typing import Any

import numpy as np
from numpy.typing import NDArray

from core.alignment.driftlog import Leg
from core.language import say
from core.night import reportchecked as checked
from core.night.reportnight import AxisState, Entry, NightRecord, WatchedLeg
from core.sky.site import Air, Site

FORMAT, VERSION = "poleward night", 1
MAX_BYTES = 500_000_000

Floats = NDArray[np.float64]
Object = Mapping[str, Any]


class UnusableNight(ValueError):
    """Nothing can be made of a file; the text is a sentence for the person."""


def write(night: NightRecord) -> str:
    """The file's text."""
    whole = {"format": FORMAT, "version": VERSION, "night": _night_object(night)}
    return json.dumps(whole, ensure_ascii=False, allow_nan=False) + "\n"


def read(data: bytes) -> NightRecord:
    """The night in a file's bytes. Raises UnusableNight, a sentence."""
    if len(data) > MAX_BYTES:
        raise UnusableNight(
            say(
                "The file has {megabytes:.0f} MB; a night has less than {most_megabytes:.0f}. "
                "Choose the file that was exported here. Nothing was changed.",
                megabytes=len(data) / 1000000.0,
                most_megabytes=MAX_BYTES / 1000000.0,
            )
        )
    night = _envelope(_parsed(data))
    try:
        return _night(night)
    except (KeyError, TypeError, ValueError, OverflowError, AttributeError) as error:
        what = (
            say("“{name}” is missing", name=error.args[0])
            if isinstance(error, KeyError)
            else str(error)
        )
        raise UnusableNight(
            say(
                "The file is damaged or was changed by hand: {what}. Nothing was taken from it.",
                what=what[:200],
            )
        ) from error


def _parsed(data: bytes) -> Any:
    try:
        return json.loads(data.decode("utf-8-sig"))
    except json.JSONDecodeError as error:
        reason = say("line {line} is not JSON ({fault})", line=error.lineno, fault=error.msg)
    except UnicodeDecodeError:
        reason = say("it is not text")
    except RecursionError:
        reason = say("it is nested too deeply")
    except ValueError:
        reason = say("it holds a number too long to read")
    raise UnusableNight(
        say("The file cannot be read as a night: {reason}. Nothing was changed.", reason=reason)
    )


def _envelope(whole: Any) -> Object:
    if not isinstance(whole, dict) or whole.get("format") != FORMAT:
        raise UnusableNight(
            say(
                "The file is not a night exported by this program (“format”: “{form}”). Choose "
                "one that is. Nothing was changed.",
                form=FORMAT,
            )
        )
    version, night = whole.get("version"), whole.get("night")
    if isinstance(version, int) and version > VERSION:
        raise UnusableNight(
            say(
                "The night was exported by a newer version of this program (form {version}; "
                "this one reads {known_version}). Update the program, then take it in. Nothing "
                "was changed.",
                version=version,
                known_version=VERSION,
            )
        )
    if version != VERSION or not isinstance(night, dict):
        raise UnusableNight(say("The file does not say which form it has. Nothing was changed."))
    return night


def _night_object(night: NightRecord) -> dict[str, Any]:
    return {
        "key": night.key,
        "started_utc_s": night.started_utc_s,
        "active_utc_s": night.active_utc_s,
        "site": None if night.site is None else asdict(night.site),
        "air": None if night.air is None else asdict(night.air),
        "aim": night.aim_name,
        "target_arcmin": night.target_arcmin,
        "axis_states": [
            {
                "key": state.key,
                "began_utc_s": state.began_utc_s,
                "legs": [_leg_object(leg) for leg in state.legs],
            }
            for state in night.axis_states
        ],
        "entries": [_entry_object(entry) for entry in night.entries],
    }


def _leg_object(watched: WatchedLeg) -> dict[str, Any]:
    leg = watched.leg
    return {
        "key": watched.key,
        "label": leg.label,
        "star_name": watched.star_name,
        "purpose": watched.purpose,
        "ra_deg": float(leg.ra_deg),
        "dec_deg": float(leg.dec_deg),
        "began_utc_s": watched.began_utc_s,
        "ended_utc_s": watched.ended_utc_s,
        "is_discarded": watched.is_discarded,
        "utc_s": leg.utc_s.tolist(),
        "north_arcsec": leg.north_arcsec.tolist(),
        "east_arcsec": _listed(leg.east_arcsec),
        "sigma_arcsec": _listed(leg.sigma_arcsec),
    }


def _listed(values: Floats | None) -> list[float | None] | None:
    if values is None:
        return None
    return [None if math.isnan(value) else value for value in values.tolist()]


def _entry_object(entry: Entry) -> dict[str, Any]:
    attached = entry.attachment
    return {
        "key": entry.key,
        "kind": entry.kind,
        "utc_s": entry.utc_s,
        "content": dict(entry.content),
        "attachment": None if attached is None else base64.b64encode(attached).decode("ascii"),
    }


def _night(given: Object) -> NightRecord:
    site, air = given["site"], given["air"]
    return NightRecord(
        key=checked.key(given["key"]),
        started_utc_s=checked.finite(given["started_utc_s"]),
        active_utc_s=checked.finite(given["active_utc_s"]),
        site=None if site is None else _site(site),
        air=None if air is None else _air(air),
        aim_name=None if given["aim"] is None else checked.text(given["aim"]),
        target_arcmin=checked.finite_or_none(given["target_arcmin"]),
        axis_states=tuple(_axis_state(one) for one in checked.list_of(given["axis_states"])),
        entries=tuple(_entry(one) for one in checked.list_of(given["entries"])),
    )


def _site(given: Object) -> Site:
    site = Site(
        latitude_deg=checked.finite(given["latitude_deg"]),
        longitude_deg=checked.finite(given["longitude_deg"]),
        elevation_m=checked.finite(given["elevation_m"]),
        name=checked.text(given["name"]),
    )
    if not (abs(site.latitude_deg) <= 90.0 and abs(site.longitude_deg) <= 360.0):
        raise ValueError(say("its site lies outside the Earth"))
    return site


def _air(given: Object) -> Air:
    return Air(
        pressure_hpa=checked.finite(given["pressure_hpa"]),
        temperature_c=checked.finite(given["temperature_c"]),
        relative_humidity=checked.finite(given["relative_humidity"]),
        wavelength_um=checked.finite(given["wavelength_um"]),
        pressure_is_assumed=checked.flag(given["pressure_is_assumed"]),
    )


def _axis_state(given: Object) -> AxisState:
    legs = tuple(_watched(one) for one in checked.list_of(given["legs"]))
    return AxisState(checked.key(given["key"]), checked.finite(given["began_utc_s"]), legs)


def _watched(given: Object) -> WatchedLeg:
    return WatchedLeg(
        key=checked.key(given["key"]),
        star_name=checked.text(given["star_name"]),
        purpose=checked.text(given["purpose"]),
        began_utc_s=checked.finite(given["began_utc_s"]),
        ended_utc_s=checked.finite_or_none(given["ended_utc_s"]),
        is_discarded=checked.flag(given["is_discarded"]),
        leg=_leg(given),
    )


def _leg(given: Object) -> Leg:
    utc_s, north = checked.array(given["utc_s"]), checked.array(given["north_arcsec"])
    east, sigma = (
        checked.array_or_none(given["east_arcsec"]),
        checked.array_or_none(given["sigma_arcsec"]),
    )
    label = checked.text(given["label"])
    if not (np.isfinite(utc_s).all() and np.isfinite(north).all()):
        raise ValueError(
            say("leg “{label}” has a reading without a time or an offset", label=label)
        )
    if any(column is not None and column.size != utc_s.size for column in (north, east, sigma)):
        raise ValueError(say("the columns of leg “{label}” are not equally long", label=label))
    place_deg = checked.finite(given["ra_deg"]), checked.finite(given["dec_deg"])
    return Leg(label, *place_deg, utc_s, north, east, sigma)


def _entry(given: Object) -> Entry:
    attached, content = given["attachment"], given["content"]
    if not isinstance(content, dict):
        raise TypeError(say("an entry has no content"))
    try:
        data = None if attached is None else base64.b64decode(checked.text(attached), validate=True)
    except binascii.Error as error:
        raise ValueError(say("an attachment is not base 64")) from error
    json.dumps(content, allow_nan=False, ensure_ascii=False).encode("utf-8")
    return Entry(
        checked.key(given["key"]),
        checked.text(given["kind"]),
        checked.finite(given["utc_s"]),
        content,
        data,
    )
