"""What the tracking sub-command finds, in words and as JSON."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterator
from dataclasses import asdict, dataclass, replace

from core.alignment.driftlog import DriftLog, Leg
from core.alignment.plausibility import doubts
from core.commands.axiserror import alignment
from core.commands.implausible import refuse_impossible
from core.commands.linewords import rejected_words, remark_words
from core.commands.pixelscale import check_scale
from core.commands.whereabouts import OPTIONS, Unplaceable, about_place, site_and_air
from core.tracking.periodic import PeriodicError, UnusableRun, analyse
from core.tracking.run import Run, run_of, run_without_place
from core.tracking.training import Training, training


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
            "training": None if self.training is None else asdict(self.training),
            "notes": [note.text for note in found.notes],
            "rejected_lines": [asdict(line) for line in self.log.rejected],
            "remarks": [asdict(remark) for remark in self.log.remarks],
        }
        return json.dumps(whole, indent=2, ensure_ascii=False, allow_nan=False)

    def as_text(self) -> str:
        """Sentences first, then the harmonics, then remarks and the lines that were not used."""
        return "\n".join(self._lines())

    def _lines(self) -> Iterator[str]:
        yield self.found.sentence
        if self.training is not None:
            yield self.training.sentence
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
            [note.text for note in self.found.notes],
            [*remark_words(self.log.remarks)],
            [*rejected_words(self.log.rejected)],
        ):
            if paragraph:
                yield from ("", *paragraph)


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
    found = doubts([leg], site, air)
    refuse_impossible(found)
    run = run_of(leg, site, air, stated)
    return replace(run, notes=(*found, *run.notes))
