"""What the pole sub-command found, and its form for other programs."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterator
from dataclasses import asdict, dataclass
from typing import Any, TextIO

from core.alignment.axis.plausibility import pressure_doubt
from core.alignment.driftlog.records import Header
from core.alignment.polarscope.reading import limits
from core.alignment.polarscope.view import View, clock_text, dial_angle_deg
from core.commands.options import Unplaceable, UnusableTime, add_options, moment, site_and_air
from core.sky import clocks
from core.sky.almanac import losses
from core.sky.clocks import format_utc
from core.sky.compass import Declination, NoDeclination, declination
from core.sky.pole import Pole, PoleStar, PoleStarTurns, elevated_pole, pole_star, pole_star_turns
from core.sky.site import Air, Site
from core.sky.words import compass_words, sun_check


@dataclass(frozen=True)
class PoleResult:
    """The pole and its star over a site; `declination` is None where no compass helps.

    `notes`: sentences the person should read.
    """

    site: Site
    air: Air
    utc_s: float
    sidereal_hours: float
    pole: Pole
    star: PoleStar
    turns: PoleStarTurns
    declination: Declination | None
    sun_sentence: str
    notes: tuple[str, ...]

    def as_json(self) -> str:
        """JSON; null where there is no value. Angles and signs as in `core.sky.pole`."""
        return json.dumps(self._as_dict(), indent=2, ensure_ascii=False, allow_nan=False)

    def _as_dict(self) -> dict[str, Any]:
        compass = self.declination
        return {
            "utc": format_utc(self.utc_s),
            "true_pole_altitude_deg": self.pole.true_altitude_deg,
            "refracted_pole_altitude_deg": self.pole.refracted_altitude_deg,
            "refraction_arcsec": self.pole.refraction_arcsec,
            "pole_azimuth_deg": self.pole.azimuth_deg,
            "local_sidereal_time_hours": self.sidereal_hours,
            "pole_star": self._star(),
            "magnetic_declination_deg": None if compass is None else compass.declination_deg,
            "magnetic_declination_sigma_deg": None if compass is None else compass.sigma_deg,
            "sun": self.sun_sentence,
            "notes": list(self.notes),
            "site": asdict(self.site),
            "air": asdict(self.air),
        }

    def _star(self) -> dict[str, Any]:
        star = asdict(self.star)
        name = star.pop("star")["name"]
        turns = asdict(self.turns)
        widest_deg = turns.pop("widest_deg")
        times = {
            event.removesuffix("_utc_s"): None if time is None else format_utc(time)
            for event, time in turns.items()
        }
        angles = {
            view.value: float(dial_angle_deg(star["hour_angle_deg"], self.site.latitude_deg, view))
            for view in View
        }
        return {
            **{"name": name, **star},
            "clock_angle_deg": angles,
            "next": times,
            "widest_azimuth_deg": widest_deg,
        }


# The result of the pole sub-command for a person.

_TURNS = {
    "upper culmination": "upper_culmination_utc_s",
    "western elongation": "western_elongation_utc_s",
    "lower culmination": "lower_culmination_utc_s",
    "eastern elongation": "eastern_elongation_utc_s",
}


def as_text(result: PoleResult) -> str:
    """Several paragraphs without a line end behind the last."""
    paragraphs = [
        [*_pole(result)],
        [*_star(result)],
        [*_times(result)],
        [compass_words(result.declination)] if result.declination else [],
        [result.sun_sentence],
        [*result.notes],
    ]
    return "\n\n".join("\n".join(lines) for lines in paragraphs if lines)


def _pole(result: PoleResult) -> Iterator[str]:
    pole, air = result.pole, result.air
    way = "north" if pole.azimuth_deg == 0.0 else "south"
    yield f"At {format_utc(round(result.utc_s))}, sidereal time {_hours(result.sidereal_hours)}:"
    yield (
        f"The {way} pole is {pole.true_altitude_deg:.4f}° high; refraction shows it at "
        f"{pole.refracted_altitude_deg:.4f}°, {pole.refraction_arcsec:.1f}″ higher."
    )
    assumed = " (the standard atmosphere's)" if air.pressure_is_assumed else ""
    yield f"Air of {air.pressure_hpa:.0f} hPa{assumed} and {air.temperature_c:.0f} °C."


def _star(result: PoleResult) -> Iterator[str]:
    star = result.star
    yield (
        f"{star.star.name} stands at azimuth {star.azimuth_deg:.4f}°, altitude "
        f"{star.altitude_deg:.4f}° as seen, {star.polar_distance_arcmin:.2f}′ from the pole."
    )
    yield (
        f"Apparent place {star.right_ascension_deg:.5f}° {star.declination_deg:+.5f}°, hour angle "
        f"{star.hour_angle_deg:+.3f}° (west positive)."
    )
    faces = []
    for view in View:
        angle = dial_angle_deg(star.hour_angle_deg, result.site.latitude_deg, view)
        faces.append(f"{clock_text(float(angle))} {view.value}")
    yield f"On the clock face of a polar-axis sight: {', '.join(faces)}."


def _times(result: PoleResult) -> Iterator[str]:
    times = {name: getattr(result.turns, attribute) for name, attribute in _TURNS.items()}
    coming = sorted((time_s, name) for name, time_s in times.items() if time_s is not None)
    for time_s, name in coming:
        yield f"Next {name:18} {format_utc(round(time_s))}"
    if result.turns.widest_deg is not None:
        yield f"At its elongations it is {result.turns.widest_deg:.4f}° in azimuth off the pole."


def _hours(hours: float) -> str:
    seconds = round(hours * 3600.0) % 86400
    return f"{seconds // 3600}h {seconds // 60 % 60:02d}m {seconds % 60:02d}s"


# `python -m core pole`: where the celestial pole and its star are.

UNUSABLE_INPUT = 2


def add_to(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Adds the sub-command."""
    parser = commands.add_parser(
        "pole",
        help="where the celestial pole and its star are",
        description="The true and the refracted pole, the pole star and the compass at a place.",
    )
    add_options(parser)
    parser.add_argument("--utc", metavar="TIME", help="like 2026-11-24T20:15:30Z (default: now)")
    parser.add_argument("--json", action="store_true", help="print JSON instead of text")
    parser.set_defaults(run=run)


def run(arguments: argparse.Namespace, now_utc_s: float, out: TextIO, err: TextIO) -> int:
    """Prints the result to `out`, or a sentence on what is wrong to `err`. Exit code."""
    try:
        result = _result(arguments, now_utc_s)
    except (Unplaceable, UnusableTime) as reason:
        print(reason, file=err)
        return UNUSABLE_INPUT
    print(result.as_json() if arguments.json else as_text(result), file=out)
    return 0


def _result(arguments: argparse.Namespace, now_utc_s: float) -> PoleResult:
    if arguments.latitude_deg is None or arguments.longitude_deg is None:
        raise Unplaceable(
            "The place is not known: give --latitude and --longitude (degrees, north and east "
            "positive)."
        )
    site, air = site_and_air(arguments, Header())
    utc_s = moment(arguments.utc, now_utc_s)
    doubt = pressure_doubt(site, air)  # a pressure that is assumed the text says beside the pole
    notes = [*([str(doubt)] if doubt else []), *map(str, (*limits(site), *losses(utc_s)))]
    compass = None
    try:
        compass = declination(site, utc_s)
        notes += [str(compass.caution)] if compass.caution else []
    except NoDeclination as reason:
        notes.append(str(reason))
    return PoleResult(
        site=site,
        air=air,
        utc_s=utc_s,
        sidereal_hours=float(clocks.local_sidereal_time_hours(utc_s, site)),
        pole=elevated_pole(site, air),
        star=pole_star(site, air, utc_s),
        turns=pole_star_turns(site, utc_s),
        declination=compass,
        sun_sentence=sun_check(site, air, utc_s),
        notes=tuple(notes),
    )
