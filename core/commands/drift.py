"""Options that say what is taken for granted of the air, the reticle, the drive and the tube."""

from __future__ import annotations

import argparse
import json
import math
from collections.abc import Iterator, Sequence
from dataclasses import asdict, dataclass
from typing import Any, TextIO

from core.alignment.axis.legrate import LegTrend
from core.alignment.axis.plausibility import implausible_legs
from core.alignment.axis.singlestar import SingleStarConstraint
from core.alignment.axis.solution import Solution, solve
from core.alignment.drift.prepared import UnusableLegs
from core.alignment.drift.readingstep import WORTH_ARCSEC
from core.alignment.driftlog.files import read_file
from core.alignment.driftlog.records import DriftLog, Header, UnusableLog
from core.alignment.goal import Aim
from core.alignment.priors import (
    ANGLE_BY_EYE_DEG,
    ANGLE_MEASURED_DEG,
    ANGLE_NUDGED_DEG,
    RANGES,
    USUAL,
    Priors,
    stated,
)
from core.alignment.words import (
    Advice,
    advise,
    altitude_side,
    azimuth_side,
    constraint_words,
    hour_angle_words,
)
from core.commands.options import (
    Implausible,
    Unplaceable,
    add_options,
    finite,
    out_of_range,
    refuse_impossible,
    rejected_words,
    remark_words,
    site_and_air,
)
from core.sky.clocks import bundled
from core.sky.site import Air, Site

# option: name, unit, meaning
_OPTIONS = {
    "--reading-step": (
        "reading_step_arcsec",
        "ARCSEC",
        "the division to which the offsets were read, as between two lines of a reticle",
    ),
    "--angle": (
        "angle_sigma_deg",
        "DEGREES",
        "how well north of the camera or reticle was set on the sky, since motion in east passes "
        f"for drift where it is wrong: {ANGLE_MEASURED_DEG:g} if it was measured, "
        f"{ANGLE_NUDGED_DEG:g} if the mount was nudged to see, {ANGLE_BY_EYE_DEG:g} by eye",
    ),
    "--periodic-error": (
        "periodic_error_arcsec",
        "ARCSEC",
        "amplitude (half of peak to peak) of the drive's periodic error, part of which passes for "
        "drift through the same angle; not used where the log has east offsets, which tell it",
    ),
    "--slow-wander": (
        "slow_wander_arcsec",
        "ARCSEC",
        "how far the air moves the whole field within minutes, which looks like drift",
    ),
    "--slow-wander-time": (
        "slow_wander_s",
        "SECONDS",
        "how long that wander takes to change (its correlation time, 10 to 3600)",
    ),
    "--flexure": (
        "flexure_arcsec_per_g",
        "ARCSEC/G",
        "how far the tube yields, per g, as gravity turns round in it while it follows the sky",
    ),
}


class UnusablePrior(ValueError):
    """An option out of range; the text is a sentence for the person."""


def add_prior_options(parser: argparse.ArgumentParser) -> None:
    """Adds the options to a sub-command."""
    group = parser.add_argument_group(
        "what is taken for granted, before what a log says of it",
        "Errors of the air, the reticle, the drive and the tube that the readings alone cannot "
        "tell from drift. The ± contains them. Each is one standard deviation unless it says "
        "otherwise; 0 leaves it out.",
    )
    for option, (name, unit, meaning) in _OPTIONS.items():
        usual = getattr(USUAL, name)
        default = "found in the readings" if usual is None else f"{usual:g}"
        told = f"{meaning} (default: {default})"
        group.add_argument(option, dest=name, metavar=unit, type=finite, help=told)


def priors_of(arguments: argparse.Namespace, header: Header) -> Priors:
    """From the options, else from the header of a log, else the usual. Raises UnusablePrior."""
    given: dict[str, float] = {}
    for option, (name, _, _) in _OPTIONS.items():
        value = getattr(arguments, name)
        if value is None:
            continue
        sentence = out_of_range(option, value, RANGES[name])
        if sentence is not None:
            raise UnusablePrior(sentence)
        given[name] = value
    return stated(given, otherwise=header.priors())


# What the drift sub-command found, and its form for other programs.

_QUANTITIES = (
    "azimuth_error_arcmin",
    "azimuth_sigma_arcmin",
    "azimuth_interval_factor",
    "altitude_error_arcmin",
    "altitude_sigma_arcmin",
    "altitude_interval_factor",
    "correlation",
    "altitude_error_refracted_arcmin",
    "sky_error_arcmin",
    "sky_sigma_arcmin",
)
_LEG_QUANTITIES = (
    "label",
    "sample_count",
    "minutes",
    "drift_arcsec_per_min",
    "drift_sigma_arcsec_per_min",
    "interval_factor",
    "hour_angle_deg",
    "altitude_deg",
    "azimuth_deg",
    "noise_arcsec",
    "correlation_time_s",
    "reading_step_arcsec",
    "angle_deg",
    "angle_sigma_deg",
)


@dataclass(frozen=True, eq=False)
class DriftResult:
    """A log and what follows from it. `notes`: sentences the person should read."""

    log: DriftLog
    site: Site
    air: Air
    priors: Priors
    aim: Aim
    solution: Solution
    advice: Advice
    notes: tuple[str, ...]

    def as_json(self) -> str:
        """JSON; null where the legs cannot tell. Signs as in `core.alignment.drift.geometry`."""
        return json.dumps(self._as_dict(), indent=2, ensure_ascii=False, allow_nan=False)

    def _as_dict(self) -> dict[str, Any]:
        solution, combination = self.solution, self.solution.combination
        return {
            **{name: _or_null(getattr(solution, name)) for name in _QUANTITIES},
            "legs": [_leg(leg) for leg in solution.legs],
            "combination": None if combination is None else _constraint(combination),
            "contradicting_legs": list(solution.contradicting_labels),
            "advice": None
            if solution.is_contradictory
            else {
                "aim": self.aim.value,
                "azimuth": self.advice.azimuth,
                "altitude": self.advice.altitude,
            },
            "notes": list(self.notes),
            "rejected_lines": [asdict(line) for line in self.log.rejected],
            "remarks": [asdict(remark) for remark in self.log.remarks],
            "site": asdict(self.site),
            "air": asdict(self.air),
            "priors": asdict(self.priors),
        }


def _leg(leg: LegTrend) -> dict[str, Any]:
    return {
        **{name: _or_null(getattr(leg, name)) for name in _LEG_QUANTITIES},
        "set_aside_count": int(leg.rejected.sum()),
        "steps": [asdict(step) for step in leg.steps],
    }


def _constraint(known: SingleStarConstraint) -> dict[str, Any]:
    names = (
        *("azimuth_weight", "altitude_weight", "value_arcmin", "half_width_arcmin"),
        "second_star_hour_angle_deg",
    )
    figures = {name: getattr(known, name) for name in names}
    return {**figures, "sentence": constraint_words(known)}


def _or_null(value: str | float) -> str | float | None:
    return None if isinstance(value, float) and not math.isfinite(value) else value


# The result of the drift sub-command for a person: words first, then figures, then remarks.

_NOT_TOLD = "these legs cannot tell"


def as_text(result: DriftResult) -> str:
    """Several paragraphs without a line end behind the last."""
    paragraphs = [
        [result.advice.azimuth, result.advice.altitude],
        [*_figures(result.solution)],
        [*_table(_leg_rows(result.solution.legs))],
        [*_place(result), *_granted(result), *result.notes],
        [*remark_words(result.log.remarks)],
        [*rejected_words(result.log.rejected)],
    ]
    return "\n\n".join("\n".join(lines) for lines in paragraphs if lines)


def _figures(solution: Solution) -> Iterator[str]:
    azimuth, altitude = solution.azimuth_error_arcmin, solution.altitude_error_arcmin
    refracted = solution.altitude_error_refracted_arcmin
    east_west = azimuth_side(azimuth, math.radians(solution.latitude_deg)).where
    sky = solution.sky_error_arcmin
    yield from _table(
        [
            ("", "error", "1 sigma", ""),
            ("azimuth", *_pair(azimuth, solution.azimuth_sigma_arcmin, east_west)),
            (
                "altitude, from the true pole",
                *_pair(altitude, solution.altitude_sigma_arcmin, altitude_side(altitude).where),
            ),
            (
                "altitude, from the refracted pole",
                *_pair(refracted, solution.altitude_sigma_arcmin, altitude_side(refracted).where),
            ),
            ("on the sky, from the true pole", *_pair(sky, solution.sky_sigma_arcmin, "")),
        ]
    )
    if math.isfinite(solution.correlation):
        yield f"Correlation of azimuth and altitude error: {solution.correlation:.2f}"
    yield "The sentences above give 95 % half-widths behind ±, the table one standard deviation."


def _pair(error_arcmin: float, sigma_arcmin: float, where: str) -> tuple[str, str, str]:
    if not math.isfinite(error_arcmin):
        return "", "", _NOT_TOLD
    return f"{abs(error_arcmin):.2f}′", f"{sigma_arcmin:.2f}′", where


def _leg_rows(legs: Sequence[LegTrend]) -> list[tuple[str, ...]]:
    heads = ("leg", "readings", "minutes", "drift ″/min", "1 sigma", "hour angle", "altitude")
    return [heads, *(_leg_row(leg) for leg in legs)]


def _leg_row(leg: LegTrend) -> tuple[str, ...]:
    way = "north" if leg.drift_arcsec_per_min >= 0.0 else "south"
    return (
        leg.label,
        str(leg.sample_count),
        f"{leg.minutes:.1f}",
        f"{abs(leg.drift_arcsec_per_min):.3f} {way}",
        f"{leg.drift_sigma_arcsec_per_min:.3f}",
        hour_angle_words(leg.hour_angle_deg),
        f"{leg.altitude_deg:.1f}°",
    )


def _table(rows: Sequence[tuple[str, ...]]) -> Iterator[str]:
    """Rows with the first column flush left and the last free, the others flush right."""
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    for first, *rest in rows:
        cells = [first.ljust(widths[0])]
        cells += [cell.rjust(width) for cell, width in zip(rest[:-1], widths[1:-1], strict=True)]
        yield "  ".join([*cells, rest[-1]]).rstrip()


def _place(result: DriftResult) -> Iterator[str]:
    site, air = result.site, result.air
    north_south = "north" if site.latitude_deg >= 0.0 else "south"
    longitude_deg = (site.longitude_deg + 180.0) % 360.0 - 180.0
    east_west = "east" if longitude_deg >= 0.0 else "west"
    yield (
        f"Computed for {abs(site.latitude_deg):.4f}° {north_south}, {abs(longitude_deg):.4f}° "
        f"{east_west}, {site.elevation_m:.0f} m; air of {air.pressure_hpa:.0f} hPa and "
        f"{air.temperature_c:.0f} °C."
    )
    if air.pressure_is_assumed:
        yield "The pressure is not known; that of the standard atmosphere was assumed."


def _granted(result: DriftResult) -> Iterator[str]:
    """What the ± contains beside the scatter of the readings."""
    coarse = [leg for leg in result.solution.legs if leg.reading_step_arcsec >= WORTH_ARCSEC]
    for leg in coarse:
        yield f"Leg “{leg.label}” was read to divisions of {leg.reading_step_arcsec:.3g}″."
    priors = result.priors
    granted = (
        (priors.angle_sigma_deg, f"north of the reticle good to {priors.angle_sigma_deg:g}°"),
        (
            priors.angle_sigma_deg * priors.periodic_error_arcsec,
            f"a periodic error of {priors.periodic_error_arcsec:g}″ where no east offsets show it",
        ),
        (
            priors.slow_wander_arcsec,
            f"a wander of {priors.slow_wander_arcsec:g}″ that changes in "
            f"{priors.slow_wander_s:g} s",
        ),
        (
            priors.flexure_arcsec_per_g,
            f"a tube that yields {priors.flexure_arcsec_per_g:g}″ per g",
        ),
    )
    words = [said for size, said in granted if size > 0.0]
    if words:
        yield f"The ± contains what was granted beforehand: {'; '.join(words)}."


# `python -m core drift`: the axis error from a drift log.

AIMS = {"true": Aim.TRUE_POLE, "refracted": Aim.REFRACTED_POLE}
UNUSABLE_INPUT = 2


def add_to(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Adds the sub-command."""
    parser = commands.add_parser(
        "drift",
        help="the axis error from a drift log",
        description="Reads a drift log and says how far the polar axis is off, and which way.",
    )
    parser.add_argument("log", metavar="LOG.csv", help="the drift log")
    add_options(parser)
    add_prior_options(parser)
    parser.add_argument(
        "--aim", choices=AIMS, default="true", help="the pole the words speak of (default: true)"
    )
    parser.add_argument("--json", action="store_true", help="print JSON instead of text")
    parser.set_defaults(run=run)


def run(arguments: argparse.Namespace, now_utc_s: float, out: TextIO, err: TextIO) -> int:
    """Prints the result to `out`, or a sentence on what is wrong to `err`. Exit code."""
    try:
        result = _result(arguments, now_utc_s)
    except (UnusableLog, Unplaceable, UnusablePrior, Implausible, UnusableLegs) as reason:
        print(reason, file=err)
        return UNUSABLE_INPUT
    print(result.as_json() if arguments.json else as_text(result), file=out)
    return 0


def _result(arguments: argparse.Namespace, now_utc_s: float) -> DriftResult:
    log = read_file(arguments.log)
    site, air = site_and_air(arguments, log.header, log.rejected)
    priors = priors_of(arguments, log.header)
    found = implausible_legs(log.legs, site, air, now_utc_s)
    refuse_impossible(found)
    solution = solve(log.legs, site, air, priors=priors)
    advice = advise(solution, AIMS[arguments.aim])
    loss = bundled().loss(max(float(leg.utc_s[-1]) for leg in log.legs))
    said = [*map(str, found), *advice.limits, *([str(loss)] if loss else [])]
    return DriftResult(log, site, air, priors, AIMS[arguments.aim], solution, advice, tuple(said))
