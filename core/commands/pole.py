"""`python -m core pole`: where the celestial pole and its star are."""

from __future__ import annotations

import argparse
from typing import TextIO

from core.alignment.driftlog import Header
from core.alignment.plausibility import pressure_doubt
from core.alignment.sighting import limits
from core.commands.moment import UnusableTime, moment
from core.commands.pole_result import PoleResult
from core.commands.pole_text import as_text
from core.commands.whereabouts import Unplaceable, add_options, site_and_air
from core.sky import clock
from core.sky.almanac import losses
from core.sky.magnetic import NoDeclination, declination
from core.sky.pole import elevated_pole, pole_star, pole_star_turns
from core.sky.sunlight import sun_check

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
    except (Unplaceable, UnusableTime) as sentence:
        print(sentence, file=err)
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
    notes = [*([doubt.text] if doubt else []), *limits(site), *losses(utc_s)]
    compass = None
    try:
        compass = declination(site, utc_s)
        notes += [compass.caution] if compass.caution else []
    except NoDeclination as reason:
        notes.append(str(reason))
    return PoleResult(
        site=site,
        air=air,
        utc_s=utc_s,
        sidereal_hours=float(clock.local_sidereal_time_hours(utc_s, site)),
        pole=elevated_pole(site, air),
        star=pole_star(site, air, utc_s),
        turns=pole_star_turns(site, utc_s),
        declination=compass,
        sun_sentence=sun_check(site, air, utc_s),
        notes=tuple(notes),
    )
