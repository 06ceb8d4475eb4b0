"""Options that say where the mount stands, shared by sub-commands."""

from __future__ import annotations

import argparse
from collections.abc import Sequence

from core.alignment.driftlog import Header, Rejected
from core.alignment.driftlog.headlines import RANGES, looks_swapped
from core.alignment.plausibility import pressure_doubt
from core.commands.options import finite, out_of_range
from core.sky.site import Air, Site

OPTIONS = {
    "--latitude": ("latitude_deg", "DEGREES", "latitude, north positive"),
    "--longitude": ("longitude_deg", "DEGREES", "longitude, east positive"),
    "--elevation": ("elevation_m", "METRES", "height above the sea"),
    "--pressure": ("pressure_hpa", "HPA", "air pressure at the place, not reduced to sea level"),
    "--temperature": ("temperature_c", "CELSIUS", "air temperature"),
}


class Unplaceable(ValueError):
    """The options and the log do not say where; the text is a sentence for the person."""


def add_options(parser: argparse.ArgumentParser) -> None:
    """Adds the options to a sub-command."""
    place = parser.add_argument_group("place and air, before what a log says of them")
    for option, (name, unit, meaning) in OPTIONS.items():
        place.add_argument(option, dest=name, metavar=unit, type=finite, help=meaning)


def site_and_air(
    arguments: argparse.Namespace, header: Header, rejected: Sequence[Rejected] = ()
) -> tuple[Site, Air]:
    """Where, from the options and else from the header of a log. Raises Unplaceable.

    `rejected`: lines of the log that were not used; those on the place are named when it lacks.
    """
    given = {name: getattr(arguments, name) for name, _, _ in OPTIONS.values()}
    for option, (name, _, _) in OPTIONS.items():
        _check(option, name, given)
    merged = {n: getattr(header, n) if value is None else value for n, value in given.items()}
    whole = Header(**merged)
    site = whole.site()
    if site is None:
        raise Unplaceable(
            "The place is not known: give --latitude and --longitude (degrees, north and east "
            "positive), or write “# latitude_deg: …” and “# longitude_deg: …” into the log."
            + about_place(rejected)
        )
    return site, whole.air()


def air_notes(site: Site, air: Air) -> tuple[str, ...]:
    """Sentences on a pressure that is assumed, or that cannot be the station's."""
    if air.pressure_is_assumed:
        return (f"The pressure is not known; {air.pressure_hpa:.0f} hPa was assumed.",)
    doubt = pressure_doubt(site, air)
    return () if doubt is None else (doubt.text,)


def about_place(rejected: Sequence[Rejected]) -> str:
    """What the log tried to say of its place, a line for each attempt; empty without any."""
    return "".join(
        f"\nLine {line.line_number} was not used: {line.reason}"
        for line in rejected
        if any(key in line.reason for key in ("latitude_deg", "longitude_deg"))
    )


def _check(option: str, name: str, given: dict[str, float | None]) -> None:
    value, longitude_deg = given[name], given["longitude_deg"]
    sentence = None if value is None else out_of_range(option, value, RANGES[name])
    if value is None or sentence is None:
        return
    if name == "latitude_deg" and looks_swapped(value, longitude_deg):
        raise Unplaceable(
            f"Latitude {value:g} is beyond ±90; longitude {longitude_deg:g} would fit a latitude, "
            "so the two may be swapped: exchange --latitude and --longitude, or correct them."
        )
    raise Unplaceable(sentence)
