"""Options that say what is taken for granted of the air, the reticle, the drive and the tube."""

from __future__ import annotations

import argparse

from core.alignment.axis.priors import (
    ANGLE_BY_EYE_DEG,
    ANGLE_MEASURED_DEG,
    ANGLE_NUDGED_DEG,
    RANGES,
    USUAL,
    Priors,
    stated,
)
from core.alignment.driftlog import Header
from core.commands.options import finite, out_of_range

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
