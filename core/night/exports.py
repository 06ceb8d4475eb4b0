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
from dataclasses import asdict, replace
from typing import Any

import numpy as np
from numpy.typing import NDArray

from core.alignment.driftlog.files import write
from core.alignment.driftlog.records import Header, Leg
from core.language import say
from core.night.record import AxisState, Entry, NightRecord, WatchedLeg
from core.sky.site import Air, Site

# Values of a file from elsewhere, each taken for what it should be or refused in words.

Floats = NDArray[np.float64]

MAX_KEY = 2**53


def array(given: Any) -> Floats:
    values = [math.nan if value is None else finite(value) for value in list_of(given)]
    return np.array(values, dtype=np.float64)


def array_or_none(given: Any) -> Floats | None:
    return None if given is None else array(given)


def list_of(given: Any) -> list[Any]:
    if not isinstance(given, list):
        raise TypeError(say("a list is missing"))
    return given


def text(given: Any) -> str:
    if not isinstance(given, str):
        raise TypeError(say("{given!r:.40} stands where a text belongs", given=given))
    given.encode("utf-8")  # half a surrogate cannot be kept
    return given


def flag(given: Any) -> bool:
    if not isinstance(given, bool):
        raise TypeError(say("{given!r:.40} stands where true or false belongs", given=given))
    return given


def key(given: Any) -> int:
    if isinstance(given, bool) or not isinstance(given, int) or not 0 <= given <= MAX_KEY:
        raise ValueError(say("{given!r:.40} is no key", given=given))
    return given


def number(given: Any) -> float:
    if isinstance(given, bool) or not isinstance(given, (int, float)):
        raise TypeError(say("{given!r:.40} stands where a number belongs", given=given))
    return float(given)


LARGEST = 1e15  # of anything a night holds; beyond it sums and pictures overflow


def finite(given: Any) -> float:
    value = number(given)
    if not abs(value) < LARGEST:
        raise ValueError(say("{given!r:.40} is no number that can be used", given=given))
    return value


def finite_or_none(given: Any) -> float | None:
    return None if given is None else finite(given)


FORMAT, VERSION = "poleward night", 1
MAX_BYTES = 500_000_000

Object = Mapping[str, Any]


class UnusableNight(ValueError):
    """Nothing can be made of a file; the text is a sentence for the person."""


def write_json(night: NightRecord) -> str:
    """The file's text."""
    whole = {"format": FORMAT, "version": VERSION, "night": _night_object(night)}
    return json.dumps(whole, ensure_ascii=False, allow_nan=False) + "\n"


def read_json(data: bytes) -> NightRecord:
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
        key=key(given["key"]),
        started_utc_s=finite(given["started_utc_s"]),
        active_utc_s=finite(given["active_utc_s"]),
        site=None if site is None else _site(site),
        air=None if air is None else _air(air),
        aim_name=None if given["aim"] is None else text(given["aim"]),
        target_arcmin=finite_or_none(given["target_arcmin"]),
        axis_states=tuple(_axis_state(one) for one in list_of(given["axis_states"])),
        entries=tuple(_entry(one) for one in list_of(given["entries"])),
    )


def _site(given: Object) -> Site:
    site = Site(
        latitude_deg=finite(given["latitude_deg"]),
        longitude_deg=finite(given["longitude_deg"]),
        elevation_m=finite(given["elevation_m"]),
        name=text(given["name"]),
    )
    if not (abs(site.latitude_deg) <= 90.0 and abs(site.longitude_deg) <= 360.0):
        raise ValueError(say("its site lies outside the Earth"))
    return site


def _air(given: Object) -> Air:
    return Air(
        pressure_hpa=finite(given["pressure_hpa"]),
        temperature_c=finite(given["temperature_c"]),
        relative_humidity=finite(given["relative_humidity"]),
        wavelength_um=finite(given["wavelength_um"]),
        pressure_is_assumed=flag(given["pressure_is_assumed"]),
    )


def _axis_state(given: Object) -> AxisState:
    legs = tuple(_watched(one) for one in list_of(given["legs"]))
    return AxisState(key(given["key"]), finite(given["began_utc_s"]), legs)


def _watched(given: Object) -> WatchedLeg:
    return WatchedLeg(
        key=key(given["key"]),
        star_name=text(given["star_name"]),
        purpose=text(given["purpose"]),
        began_utc_s=finite(given["began_utc_s"]),
        ended_utc_s=finite_or_none(given["ended_utc_s"]),
        is_discarded=flag(given["is_discarded"]),
        leg=_leg(given),
    )


def _leg(given: Object) -> Leg:
    utc_s, north = array(given["utc_s"]), array(given["north_arcsec"])
    east, sigma = (
        array_or_none(given["east_arcsec"]),
        array_or_none(given["sigma_arcsec"]),
    )
    label = text(given["label"])
    if not (np.isfinite(utc_s).all() and np.isfinite(north).all()):
        raise ValueError(
            say("leg “{label}” has a reading without a time or an offset", label=label)
        )
    if any(column is not None and column.size != utc_s.size for column in (north, east, sigma)):
        raise ValueError(say("the columns of leg “{label}” are not equally long", label=label))
    place_deg = finite(given["ra_deg"]), finite(given["dec_deg"])
    return Leg(label, *place_deg, utc_s, north, east, sigma)


def _entry(given: Object) -> Entry:
    attached, content = given["attachment"], given["content"]
    if not isinstance(content, dict):
        raise TypeError(say("an entry has no content"))
    try:
        data = None if attached is None else base64.b64decode(text(attached), validate=True)
    except binascii.Error as error:
        raise ValueError(say("an attachment is not base 64")) from error
    json.dumps(content, allow_nan=False, ensure_ascii=False).encode("utf-8")
    return Entry(
        key(given["key"]),
        text(given["kind"]),
        finite(given["utc_s"]),
        content,
        data,
    )


# The legs of a night as a drift log.

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
