"""Reads a tracking run: a drift log with east offsets, in arcseconds or in pixels with a scale.

Columns `east_px` and `north_px` may stand in place of `east_arcsec` and `north_arcsec`; the scale
comes from a line `# scale_arcsec_per_px: …` or from the person. North offsets may be missing.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable
from dataclasses import replace
from pathlib import Path

from core.alignment.driftlog import DriftLog, Leg, UnusableLog, read, read_file
from core.alignment.driftlog.forms import RUN
from core.alignment.driftlog.numerals import number
from core.alignment.driftlog.records import Floats
from core.language import say

KeepGoing = Callable[[int], bool]
SCALE_KEY = "scale_arcsec_per_px"


class ScaleNeeded(UnusableLog):
    """The offsets are in pixels and nothing says how large a pixel is; ask the person for it."""


def read_run(
    lines: Iterable[str],
    *,
    name: str | None = None,
    scale_arcsec_per_px: float | None = None,
    keep_going: KeepGoing | None = None,
) -> DriftLog:
    """As `core.alignment.driftlog.read`, offsets turned to arcseconds. Raises ScaleNeeded."""
    name = name or say("The log")
    log = read(lines, name=name, keep_going=keep_going, form=RUN)
    return _in_arcseconds(log, name, scale_arcsec_per_px)


def read_run_file(
    path: str | os.PathLike[str],
    *,
    scale_arcsec_per_px: float | None = None,
    keep_going: Callable[[float], bool] | None = None,
) -> DriftLog:
    """The run in the file at `path`; as `core.alignment.driftlog.read_file`, pixels included."""
    log = read_file(path, keep_going, RUN)
    return _in_arcseconds(log, Path(path).name, scale_arcsec_per_px)


def scale_of(scale_arcsec_per_px: float | None, name: str) -> float:
    """The scale itself. Raises ScaleNeeded when it is unknown or cannot be."""
    if scale_arcsec_per_px is None or not 0.01 <= scale_arcsec_per_px <= 1000.0:
        raise ScaleNeeded(
            say(
                "{name} gives its offsets in pixels, but not how large a pixel is. Enter the "
                "image scale in arcseconds per pixel, or write “# {scale_key}: …” into the log.",
                name=name,
                scale_key=SCALE_KEY,
            )
        )
    return scale_arcsec_per_px


def scale_in_remark(line: str) -> float | None:
    """The scale in a line `# scale_arcsec_per_px: …`, None in any other."""
    key, _, value = line.strip(' "#;,\t').partition(":")
    return _scale_in(value) if key.strip().lower() == SCALE_KEY else None


def _in_arcseconds(log: DriftLog, name: str, scale_arcsec_per_px: float | None) -> DriftLog:
    if not log.in_pixels:
        return log
    scale = scale_arcsec_per_px
    if scale is None:
        scale = _scale_in({key.lower(): value for key, value in log.header.other}.get(SCALE_KEY))
    scale = scale_of(scale, name)
    legs = tuple(_scaled(leg, scale, log.in_pixels) for leg in log.legs)
    return replace(log, legs=legs, in_pixels=frozenset())


def _scale_in(text: str | None) -> float | None:
    if text is None:
        return None
    try:
        return number(text, decimal_comma=True)
    except ValueError:
        return None


def _scaled(leg: Leg, scale: float, in_pixels: frozenset[str]) -> Leg:
    def scaled(name: str, values: Floats) -> Floats:
        return values * scale if name in in_pixels else values

    east, sigma = leg.east_arcsec, leg.sigma_arcsec
    return replace(
        leg,
        north_arcsec=scaled("north_arcsec", leg.north_arcsec),
        east_arcsec=None if east is None else scaled("east_arcsec", east),
        sigma_arcsec=None if sigma is None else scaled("sigma_arcsec", sigma),
    )
