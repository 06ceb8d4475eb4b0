"""Whether a run has pixels that a scale could turn into arcseconds."""

from __future__ import annotations

import argparse
import json
import os
from collections.abc import Iterator
from dataclasses import asdict, dataclass, replace
from pathlib import Path
from typing import Any, TextIO

from core.alignment.axis.plausibility import implausible_legs
from core.alignment.driftlog.files import read_file
from core.alignment.driftlog.records import DriftLog, Leg, Rejected, UnusableLog
from core.alignment.driftlog.table import RUN
from core.commands.budget import UnusableAxisError, add_axis_options, alignment
from core.commands.options import (
    OPTIONS,
    Unplaceable,
    about_place,
    add_options,
    finite,
    refuse_impossible,
    rejected_words,
    remark_words,
    site_and_air,
)
from core.tracking.periodic import PeriodicError, analyse
from core.tracking.run import Run, UnusableRun, run_of, run_without_place
from core.tracking.training import Training, training


class NoPixels(ValueError):
    """A scale was given for offsets in arcseconds; the text is a sentence for the person."""


def check_scale(log: str, scale_arcsec_per_px: float | None) -> None:
    """Raises NoPixels when the run in the file `log`, known to be readable, needs no scale."""
    if scale_arcsec_per_px is None or read_file(log, None, RUN).in_pixels:
        return
    raise NoPixels(
        f"{Path(log).name} gives its offsets in arcseconds, so that --scale would change "
        "nothing: leave it out, or call the columns east_px and north_px if they hold pixels."
    )


# The file a command writes a curve to: a new one, so that nothing measured is ever replaced.


class UnwritableCurve(Exception):
    """The curve cannot go where it should; the text is a sentence for the person."""


def refuse_if_there(curve: str, log: str) -> None:
    """Raises UnwritableCurve when `curve` is the log itself or another file that is there."""
    if _are_one(curve, log):
        raise UnwritableCurve(
            f"--curve names the measurement itself ({curve}), which the curve would replace; "
            "nothing was written. Give the curve a name of its own."
        )
    if os.path.lexists(curve):
        raise UnwritableCurve(_is_there(curve))


def write_curve(curve: str, text: str) -> None:
    """Writes the text to a file that was not there. Raises UnwritableCurve."""
    try:
        with open(curve, "x", encoding="utf-8") as out:
            out.write(text)
    except FileExistsError:
        raise UnwritableCurve(_is_there(curve)) from None
    except OSError as error:
        raise UnwritableCurve(
            f"The curve could not be written to {curve} ({error.strerror or error}); "
            "name another place."
        ) from None


def _are_one(curve: str, log: str) -> bool:
    try:
        return os.path.samefile(curve, log)
    except OSError:
        return False


def _is_there(curve: str) -> str:
    return (
        f"{curve} is there already and was left as it is; give the curve another name, "
        "or remove that file first."
    )


# What the tracking sub-command finds, in words and as JSON.


class NoSuchLeg(ValueError):
    """The leg asked for is not in the log; the text is a sentence for the person."""


@dataclass(frozen=True, eq=False)
class TrackingResult:
    """One leg's periodic error. `training` is None below three whole turns."""

    log: DriftLog
    leg: str
    found: PeriodicError
    training: Training | None

    def as_json(self) -> str:
        """JSON; arcseconds of the drive's lead, as in `core.tracking`."""
        found = self.found
        whole = {
            "leg": self.leg,
            "worm_period_s": found.period_s,
            "worm_period_sigma_s": found.period_sigma_s,
            "worm_period_is_given": found.period_is_given,
            "turns": found.turns,
            **asdict(found.size),
            "harmonics": [asdict(wave) for wave in found.harmonics],
            "other_periods": [asdict(other) for other in found.other_periods],
            "drift_arcsec_per_min": found.drift_arcsec_per_min,
            "drift_sigma_arcsec_per_min": found.drift_sigma_arcsec_per_min,
            "noise_arcsec": found.noise_arcsec,
            "training": None if self.training is None else _training(self.training),
            "notes": list(map(str, found.notes)),
            "rejected_lines": [asdict(line) for line in self.log.rejected],
            "remarks": [asdict(remark) for remark in self.log.remarks],
        }
        return json.dumps(whole, indent=2, ensure_ascii=False, allow_nan=False)

    def as_text(self) -> str:
        """Sentences first, then the harmonics, then remarks and the lines that were not used."""
        return "\n".join(self._lines())

    def _lines(self) -> Iterator[str]:
        yield str(self.found.sentence)
        if self.training is not None:
            yield str(self.training.sentence)
        yield ""
        yield "harmonic  period s  amplitude ″  1 sigma  phase °  1 sigma"
        for wave in self.found.harmonics:
            if wave.stands_out:
                yield (
                    f"{wave.order:8d}  {wave.period_s:8.1f}  {wave.amplitude_arcsec:11.2f}  "
                    f"{wave.amplitude_sigma_arcsec:7.2f}  {wave.phase_deg:7.1f}  "
                    f"{wave.phase_sigma_deg:7.1f}"
                )
        for other in self.found.other_periods:
            yield f"Beside the worm: {other.amplitude_arcsec:.2f}″ every {other.period_s:.1f} s."
        for paragraph in (
            list(map(str, self.found.notes)),
            [*remark_words(self.log.remarks)],
            [*rejected_words(self.log.rejected)],
        ):
            if paragraph:
                yield from ("", *paragraph)


def _training(training: Training) -> dict[str, Any]:
    return {**asdict(training), "sentence": str(training.sentence)}


def tracking_result(arguments: argparse.Namespace, log: DriftLog) -> TrackingResult:
    """Analyses what the options name of a log. Raises the sentences of its parts."""
    check_scale(arguments.log, arguments.scale)
    leg = _chosen(log.legs, arguments.leg)
    prepared = _prepared(arguments, leg, log)
    found = analyse(prepared, arguments.worm_period)
    try:
        brought = training(found, prepared)
    except UnusableRun:
        brought = None
    return TrackingResult(log, leg.label, found, brought)


def _chosen(legs: tuple[Leg, ...], label: str | None) -> Leg:
    if label is None:
        return max(legs, key=lambda leg: float(leg.utc_s[-1] - leg.utc_s[0]))
    for leg in legs:
        if leg.label == label:
            return leg
    names = ", ".join(f"“{leg.label}”" for leg in legs[:10])
    raise NoSuchLeg(f"The log has no leg “{label}”; it has {names}.")


def _prepared(arguments: argparse.Namespace, leg: Leg, log: DriftLog) -> Run:
    """With a place the drift of the axis is computed; without one a curve is taken for it."""
    stated = alignment(arguments)
    given = any(getattr(arguments, name) is not None for name, _, _ in OPTIONS.values())
    if not given and log.header.site() is None:
        if stated is not None:
            raise Unplaceable(
                "The axis error needs the place: give --latitude and --longitude."
                + about_place(log.rejected)
            )
        return run_without_place(leg)
    site, air = site_and_air(arguments, log.header, log.rejected)
    found = implausible_legs([leg], site, air)
    refuse_impossible(found)
    run = run_of(leg, site, air, stated)
    return replace(run, notes=(*found, *run.notes))


# `python -m core tracking`: the periodic error of a mount from an unguided run.

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
    from core.commands.options import Implausible
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
    ) as reason:
        # Lines that were not used may be why nothing can be said of the others.
        print(reason, *rejected_words(rejected), sep="\n", file=err)
        return UNUSABLE_INPUT
    print(result.as_json() if arguments.json else result.as_text(), file=out)
    return 0
