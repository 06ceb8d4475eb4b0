"""`python -m core budget`: how good the alignment must be, and whether it is good enough."""

from __future__ import annotations

import argparse
from typing import TextIO

from core.alignment.budget import (
    Optics,
    Target,
    Task,
    UnusableTask,
    Vantage,
    best_aim,
    judge,
    longest_exposure,
    tolerance,
)
from core.alignment.driftlog import Header
from core.commands.axiserror import UnusableAxisError, add_axis_options, alignment
from core.commands.budget_result import BudgetResult
from core.commands.options import finite
from core.commands.whereabouts import Unplaceable, add_options, air_notes, site_and_air

UNUSABLE_INPUT = 2
_DEG_PER_HOUR = 15.0

# option: destination, unit, meaning, default (None: must be given)
_TASK = {
    "--declination": ("declination_deg", "DEGREES", "of the target, of date", None),
    "--from-hours": ("from_hours", "HOURS", "first hour angle, west positive (default −3)", -3.0),
    "--to-hours": ("to_hours", "HOURS", "last hour angle (default 3)", 3.0),
    "--focal-length": ("focal_length_mm", "MM", "of the telescope", None),
    "--pixel": ("pixel_um", "UM", "size of a (binned) pixel", None),
    "--width": ("width_px", "PIXELS", "of the sensor", None),
    "--height": ("height_px", "PIXELS", "of the sensor", None),
    "--exposure": ("exposure_s", "SECONDS", "of one exposure", None),
    "--smear": ("limit_px", "PIXELS", "smear allowed (default 0.5)", 0.5),
    "--tracking-rate": ("tracking_rate", "RATE", "in sidereal rates (default 1)", 1.0),
}


def add_to(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Adds the sub-command."""
    parser = commands.add_parser(
        "budget",
        help="how good the alignment must be tonight",
        description="The largest error of the polar axis that keeps stars sharp enough, the aim "
        "that serves the target best, and the smear a given error makes.",
    )
    task = parser.add_argument_group("what is taken")
    for option, (name, unit, meaning, usual) in _TASK.items():
        task.add_argument(
            option,
            dest=name,
            metavar=unit,
            type=finite,
            help=meaning,
            default=usual,
            required=usual is None,
        )
    task.add_argument(
        "--guide-star",
        dest="guide_star_arcmin",
        metavar="ARCMIN",
        type=finite,
        help="from the guide star to the farthest corner of the field; unguided without",
    )
    add_axis_options(parser)
    add_options(parser)
    parser.add_argument("--json", action="store_true", help="print JSON instead of text")
    parser.set_defaults(run=run)


def run(arguments: argparse.Namespace, _now_utc_s: float, out: TextIO, err: TextIO) -> int:
    """Prints the result to `out`, or a sentence on what is wrong to `err`. Exit code."""
    try:
        result = _result(arguments)
    except (Unplaceable, UnusableTask, UnusableAxisError) as sentence:
        print(sentence, file=err)
        return UNUSABLE_INPUT
    print(result.as_json() if arguments.json else result.as_text(), file=out)
    return 0


def _result(arguments: argparse.Namespace) -> BudgetResult:
    if arguments.longitude_deg is None and abs(arguments.latitude_deg or 0.0) <= 90.0:
        arguments.longitude_deg = 0.0  # hour angles do not depend on it
    site, air = site_and_air(arguments, Header())
    vantage, task, stated = Vantage.of(site, air), _task(arguments), alignment(arguments)
    axis = None if stated is None else stated.axis_rad
    return BudgetResult(
        tolerance=tolerance(task, vantage),
        aim=best_aim(task, vantage),
        smear=None if stated is None else judge(task, vantage, stated),
        longest=None if axis is None else longest_exposure(task, vantage, axis),
        notes=air_notes(site, air),
    )


def _task(arguments: argparse.Namespace) -> Task:
    return Task(
        target=Target(
            arguments.declination_deg,
            arguments.from_hours * _DEG_PER_HOUR,
            arguments.to_hours * _DEG_PER_HOUR,
        ),
        optics=Optics(
            arguments.focal_length_mm,
            arguments.pixel_um,
            round(arguments.width_px),
            round(arguments.height_px),
        ),
        exposure_s=arguments.exposure_s,
        guide_star_to_far_corner_arcmin=arguments.guide_star_arcmin,
        limit_px=arguments.limit_px,
        tracking_rate=arguments.tracking_rate,
    )
