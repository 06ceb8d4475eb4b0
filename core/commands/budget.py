"""The error of the polar axis, as the options of a sub-command state it."""

from __future__ import annotations

import argparse
import json
import math
from collections.abc import Iterator
from dataclasses import asdict, dataclass
from typing import Any, TextIO

from core.alignment.driftlog.records import Header
from core.commands.options import Unplaceable, add_options, air_notes, finite, site_and_air
from core.imaging.task import ImagedTarget, Optics, Task, UnusableTask, Vantage
from core.imaging.tolerance import (
    Alignment,
    BestAim,
    LongestExposure,
    Tolerance,
    best_aim,
    longest_exposure,
    tolerance,
)
from core.imaging.verdict import Smear, SmearShare, judge

MOST_ARCMIN = 1800.0
_OPTIONS = {
    "--azimuth-error": ("azimuth_error_arcmin", "towards greater azimuth positive"),
    "--altitude-error": ("altitude_error_arcmin", "from the true pole, up positive"),
}


class UnusableAxisError(ValueError):
    """The text is a sentence for the person."""


def add_axis_options(parser: argparse.ArgumentParser) -> None:
    """Adds the options to a sub-command."""
    found = parser.add_argument_group("the alignment, when it is known")
    for option, (name, meaning) in _OPTIONS.items():
        found.add_argument(option, dest=name, metavar="ARCMIN", type=finite, help=meaning)


def alignment(arguments: argparse.Namespace) -> Alignment | None:
    """The alignment stated; None where none is. Raises UnusableAxisError."""
    azimuth, altitude = arguments.azimuth_error_arcmin, arguments.altitude_error_arcmin
    if azimuth is None and altitude is None:
        return None
    if azimuth is None or altitude is None:
        raise UnusableAxisError("--azimuth-error and --altitude-error belong together: give both.")
    if max(abs(azimuth), abs(altitude)) > MOST_ARCMIN:
        raise UnusableAxisError("An axis error is at most 1800′ here; align roughly first.")
    return Alignment(azimuth, altitude)


# What the budget sub-command found, in words and for other programs.


@dataclass(frozen=True)
class BudgetResult:
    """`smear` and `longest` are None when no alignment was given."""

    tolerance: Tolerance
    aim: BestAim
    smear: Smear | None
    longest: LongestExposure | None
    notes: tuple[str, ...]

    def as_json(self) -> str:
        """JSON; null for a tolerance beyond 10°."""
        whole = {
            "tolerance": {name: _or_null(value) for name, value in asdict(self.tolerance).items()},
            "aim": asdict(self.aim),
            "smear": None if self.smear is None else _smear(self.smear),
            "longest_exposure": None if self.longest is None else asdict(self.longest),
            "notes": list(self.notes),
        }
        return json.dumps(whole, indent=2, ensure_ascii=False, allow_nan=False)

    def as_text(self) -> str:
        """Sentences, then figures."""
        return "\n".join(self._lines())

    def _lines(self) -> Iterator[str]:
        yield self.tolerance.sentence
        if self.tolerance.possible:
            yield f"Azimuth error alone:  {_arcmin(self.tolerance.azimuth_arcmin)}"
            yield f"Altitude error alone: {_arcmin(self.tolerance.altitude_arcmin)}"
        yield self.aim.sentence
        if self.smear is not None:
            yield ""
            yield self.smear.sentence
            for place, share in (("centre", self.smear.centre), ("corner", self.smear.corner)):
                if share is not None:
                    yield _share(place, share)
        if self.longest is not None:
            yield self.longest.sentence
        yield from self.notes


def _share(place: str, share: SmearShare) -> str:
    return (
        f"{place}: {share.total_px:.2f} pixels; azimuth error {share.azimuth_px:.2f}, "
        f"altitude error {share.altitude_px:.2f}, air {share.air_px:.2f} on their own"
    )


def _smear(smear: Smear) -> dict[str, Any]:
    return {**asdict(smear), "grade": smear.grade.value}


def _or_null(value: float | str) -> float | str | None:
    return None if isinstance(value, float) and not math.isfinite(value) else value


def _arcmin(size: float) -> str:
    return f"{size:.1f}′" if math.isfinite(size) else "any up to 10°"


# `python -m core budget`: how good the alignment must be, and whether it is good enough.

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
    except (Unplaceable, UnusableTask, UnusableAxisError) as reason:
        print(reason, file=err)
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
        target=ImagedTarget(
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
