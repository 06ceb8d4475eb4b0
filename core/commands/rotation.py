"""`python -m core rotation`: field rotation and axis speeds of an alt-azimuth mount."""

from __future__ import annotations

import argparse
import json
from dataclasses import asdict, dataclass
from typing import TextIO

from core.alignment.driftlog.records import Header
from core.alignment.driftlog.table import number
from core.commands.options import (
    Unplaceable,
    UnusableTime,
    add_options,
    air_notes,
    finite,
    moment,
    site_and_air,
)
from core.imaging.rotation import NO_AIR, FieldTurning, turning, turning_of_star
from core.sky.clocks import bundled
from core.sky.coordinates import UnusableCoordinates, parse_declination, parse_right_ascension

UNUSABLE_INPUT = 2


class UnusablePlace(ValueError):
    """Where to look is not said, or impossible; the text is a sentence for the person."""


@dataclass(frozen=True)
class RotationResult:
    """Rates at one place of the sky; signs as in `core.imaging.rotation`."""

    rate_deg_per_hour: float
    parallactic_angle_deg: float
    azimuth_rate_deg_per_hour: float
    altitude_rate_deg_per_hour: float
    azimuth_deg: float
    altitude_deg: float
    notes: tuple[str, ...]

    def as_json(self) -> str:
        return json.dumps(asdict(self), indent=2, ensure_ascii=False, allow_nan=False)

    def as_text(self) -> str:
        side = "west of" if self.parallactic_angle_deg > 0.0 else "east of"
        if self.parallactic_angle_deg in (0.0, 180.0):
            side = "on"
        lines = (
            f"At azimuth {self.azimuth_deg:.2f}°, altitude {self.altitude_deg:.2f}°:",
            f"field rotation    {self.rate_deg_per_hour:+10.3f}° per hour",
            f"parallactic angle {self.parallactic_angle_deg:+10.3f}° ({side} the meridian)",
            f"azimuth rate      {self.azimuth_rate_deg_per_hour:+10.3f}° per hour",
            f"altitude rate     {self.altitude_rate_deg_per_hour:+10.3f}° per hour",
            "The rotation is the rate of change of the parallactic angle, west positive.",
        )
        return "\n".join([*lines, *self.notes])


def add_to(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Adds the sub-command."""
    parser = commands.add_parser(
        "rotation",
        help="field rotation of an alt-azimuth mount",
        description="How fast the field of an alt-azimuth mount turns at one place of the sky, "
        "given by azimuth and altitude, or by a star's coordinates and a time.",
    )
    place = parser.add_argument_group("place of the sky, the one pair or the other")
    place.add_argument("--azimuth", metavar="DEGREES", type=finite, help="from north through east")
    place.add_argument(
        "--altitude", metavar="DEGREES", type=finite, help="true; with --pressure, as observed"
    )
    place.add_argument("--ra", metavar="ANGLE", help="ICRS: degrees, or hours like 5h14m32s")
    place.add_argument("--dec", metavar="ANGLE", help="ICRS, degrees north")
    place.add_argument("--utc", metavar="TIME", help="like 2026-11-24T20:15:30Z")
    add_options(parser)
    parser.add_argument("--json", action="store_true", help="print JSON instead of text")
    parser.set_defaults(run=run)


def run(arguments: argparse.Namespace, now_utc_s: float, out: TextIO, err: TextIO) -> int:
    """Prints the result to `out`, or a sentence on what is wrong to `err`. Exit code."""
    try:
        result = _result(arguments, now_utc_s)
    except (Unplaceable, UnusablePlace, UnusableCoordinates, UnusableTime) as reason:
        print(reason, file=err)
        return UNUSABLE_INPUT
    print(result.as_json() if arguments.json else result.as_text(), file=out)
    return 0


def _result(arguments: argparse.Namespace, now_utc_s: float) -> RotationResult:
    horizontal = arguments.azimuth is not None or arguments.altitude is not None
    equatorial = arguments.ra is not None or arguments.dec is not None
    if horizontal == equatorial:
        raise UnusablePlace("Give --azimuth and --altitude, or --ra, --dec and --utc.")
    if horizontal and arguments.utc is not None:
        raise UnusablePlace(
            "--utc belongs to --ra and --dec: a place given by --azimuth and --altitude turns "
            "alike at every time. Leave --utc out."
        )
    return _of_place(arguments) if horizontal else _of_star(arguments, now_utc_s)


def _of_place(arguments: argparse.Namespace) -> RotationResult:
    azimuth_deg, altitude_deg = arguments.azimuth, arguments.altitude
    if azimuth_deg is None or altitude_deg is None:
        raise UnusablePlace("--azimuth and --altitude belong together: give both.")
    if not -360.0 <= azimuth_deg <= 360.0:
        raise UnusablePlace(
            "An azimuth lies between 0° and 360°, from north through east; correct --azimuth."
        )
    if not -90.0 <= altitude_deg <= 90.0:
        raise UnusablePlace("An altitude lies between −90° and 90°; correct --altitude.")
    if arguments.longitude_deg is None:
        arguments.longitude_deg = 0.0  # azimuth and altitude alone do not depend on it
    site, air = site_and_air(arguments, Header())
    notes: list[str] = []
    if arguments.pressure_hpa is None:
        air = NO_AIR
        notes.append("The altitude was taken as the true one; with --pressure as the observed one.")
        if (arguments.temperature_c, arguments.elevation_m) != (None, None):
            notes.append("Without --pressure the temperature and the elevation change nothing.")
    else:
        notes += air_notes(site, air)
    if altitude_deg == 90.0:
        raise UnusablePlace(
            "At the zenith itself the field turns without limit: there is no rate to give. "
            "Ask for a place beside it."
        )
    rates = turning(site.latitude_deg, azimuth_deg, altitude_deg, air)
    return _with_rates(rates, azimuth_deg, altitude_deg, tuple(notes))


def _of_star(arguments: argparse.Namespace, now_utc_s: float) -> RotationResult:
    if arguments.ra is None or arguments.dec is None:
        raise UnusablePlace("--ra and --dec belong together: give both.")
    site, air = site_and_air(arguments, Header())
    utc_s = moment(arguments.utc, now_utc_s)
    ra_deg, dec_deg = _right_ascension_deg(arguments.ra), parse_declination(arguments.dec)
    azimuth, altitude, rates = turning_of_star(ra_deg, dec_deg, site, air, utc_s)
    notes = [] if arguments.utc is not None else ["No --utc was given: this is for now."]
    if float(altitude) < 0.0:
        notes.append("The star is below the horizon at that time.")
    notes += air_notes(site, air)
    loss = bundled().loss(utc_s)
    said = (*notes, *([str(loss)] if loss else []))
    return _with_rates(rates, float(azimuth), float(altitude), said)


def _with_rates(
    rates: FieldTurning, azimuth_deg: float, altitude_deg: float, notes: tuple[str, ...]
) -> RotationResult:
    return RotationResult(
        _told(float(rates.rate_deg_per_hour)),
        _told_angle_deg(float(rates.parallactic_angle_deg)),
        _told(float(rates.azimuth_rate_deg_per_hour)),
        _told(float(rates.altitude_rate_deg_per_hour)),
        azimuth_deg,
        altitude_deg,
        notes,
    )


def _told(value: float) -> float:
    """Without the last bits of the arithmetic, so that nothing at all is not told as −0."""
    return round(value, 9) + 0.0


def _told_angle_deg(angle_deg: float) -> float:
    """Rounding must not take a star off the meridian, nor turn 180° into −180°."""
    told = _told(angle_deg)
    return 180.0 if told == -180.0 else told


def _right_ascension_deg(text: str) -> float:
    """A bare number is in degrees here, as the units of the other options are."""
    try:
        degrees = number(text, decimal_comma=True)
    except ValueError:
        return parse_right_ascension(text)
    return parse_right_ascension(f"{degrees:f}°")
