"""The error of the polar axis, as the options of a sub-command state it."""

from __future__ import annotations

import argparse

from core.alignment.budget import Alignment
from core.commands.options import finite

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
