"""`python -m core tracking`: the periodic error of a mount from an unguided run."""

from __future__ import annotations

import argparse
from typing import TextIO

from core.alignment.driftlog import Rejected, UnusableLog
from core.commands.axiserror import UnusableAxisError, add_axis_options
from core.commands.curvefile import UnwritableCurve, refuse_if_there, write_curve
from core.commands.linewords import rejected_words
from core.commands.options import finite
from core.commands.whereabouts import Unplaceable, add_options

UNUSABLE_INPUT = 2


def add_to(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Adds the sub-command."""
    parser = commands.add_parser(
        "tracking",
        help="the periodic error from an unguided run",
        description="Reads an unguided run (a drift log with east offsets, in arcseconds or in "
        "pixels with a scale) and says what the drive does in each turn of its worm.",
    )
    parser.add_argument("log", metavar="RUN.csv", help="the run")
    parser.add_argument("--leg", metavar="LABEL", help="which leg (default: the longest)")
    parser.add_argument("--worm-period", metavar="SECONDS", type=finite, help="of one turn")
    parser.add_argument("--scale", metavar="ARCSEC", type=finite, help="of a pixel")
    parser.add_argument("--curve", metavar="OUT.csv", help="write the mean curve to this new file")
    add_axis_options(parser)
    add_options(parser)
    parser.add_argument("--json", action="store_true", help="print JSON instead of text")
    parser.set_defaults(run=run)


def run(arguments: argparse.Namespace, _now_utc_s: float, out: TextIO, err: TextIO) -> int:
    """Prints the result to `out`, or a sentence on what is wrong to `err`. Exit code."""
    # Loaded here: the periodograms take a quarter of a second that no other command needs.
    from core.commands.implausible import Implausible
    from core.commands.pixelscale import NoPixels
    from core.commands.tracking_result import NoSuchLeg, tracking_result
    from core.tracking.run import UnusableRun
    from core.tracking.runlog import read_run_file
    from core.tracking.training import training_csv

    rejected: tuple[Rejected, ...] = ()
    try:
        if arguments.curve is not None:
            refuse_if_there(arguments.curve, arguments.log)
        log = read_run_file(arguments.log, scale_arcsec_per_px=arguments.scale)
        rejected = log.rejected
        result = tracking_result(arguments, log)
        if arguments.curve is not None:
            write_curve(arguments.curve, training_csv(result.found))
    except (
        UnusableLog,
        UnusableRun,
        Unplaceable,
        UnusableAxisError,
        NoPixels,
        NoSuchLeg,
        Implausible,
        UnwritableCurve,
    ) as sentence:
        # Lines that were not used may be why nothing can be said of the others.
        print(sentence, *rejected_words(rejected), sep="\n", file=err)
        return UNUSABLE_INPUT
    print(result.as_json() if arguments.json else result.as_text(), file=out)
    return 0
