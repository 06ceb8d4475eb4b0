"""`python -m core drift`: the axis error from a drift log."""

from __future__ import annotations

import argparse
from typing import TextIO

from core.alignment.advice import advise
from core.alignment.aim import Aim
from core.alignment.driftlog import UnusableLog, read_file
from core.alignment.plausibility import doubts
from core.alignment.solution import UnusableLegs, solve
from core.commands.drift_result import DriftResult
from core.commands.drift_text import as_text
from core.commands.implausible import Implausible, refuse_impossible
from core.commands.priors import UnusablePrior, add_prior_options, priors_of
from core.commands.whereabouts import Unplaceable, add_options, site_and_air
from core.sky.clock import bundled

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
    except (UnusableLog, Unplaceable, UnusablePrior, Implausible, UnusableLegs) as sentence:
        print(sentence, file=err)
        return UNUSABLE_INPUT
    print(result.as_json() if arguments.json else as_text(result), file=out)
    return 0


def _result(arguments: argparse.Namespace, now_utc_s: float) -> DriftResult:
    log = read_file(arguments.log)
    site, air = site_and_air(arguments, log.header, log.rejected)
    priors = priors_of(arguments, log.header)
    found = doubts(log.legs, site, air, now_utc_s)
    refuse_impossible(found)
    solution = solve(log.legs, site, air, priors=priors)
    advice = advise(solution, AIMS[arguments.aim])
    loss = bundled().loss_sentence(max(float(leg.utc_s[-1]) for leg in log.legs))
    said = [*(doubt.text for doubt in found), *advice.limits, *([loss] if loss else [])]
    return DriftResult(log, site, air, priors, AIMS[arguments.aim], solution, advice, tuple(said))
