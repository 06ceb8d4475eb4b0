"""Reads a tracking run: a drift log with east offsets, in arcseconds or in pixels with a scale.

Columns `east_px` and `north_px` may stand in place of `east_arcsec` and `north_arcsec`; the scale
comes from a line `# scale_arcsec_per_px: …` or from the person. North offsets may be missing.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from pathlib import Path
from typing import TextIO

from core.alignment.driftlog import MAX_BYTES, DriftLog, Leg, UnusableLog, read, read_file
from core.alignment.driftlog.columns import SEPARATORS
from core.alignment.driftlog.numerals import number
from core.language import say

KeepGoing = Callable[[int], bool]
SCALE_KEY = "scale_arcsec_per_px"
_HEAD = 20_000  # characters in which the columns must be named


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
    if isinstance(lines, str):
        lines = lines.splitlines()
    name = name or say("The log")
    form = RunForm()
    log = read(form.renamed(lines), name=name, keep_going=keep_going)
    if not form.in_pixels:
        return log
    scale = scale_arcsec_per_px
    if scale is None:
        scale = _scale_in(dict(log.header.other).get(SCALE_KEY))
    scale = scale_of(scale, name)
    return replace(log, legs=tuple(_scaled(leg, scale) for leg in log.legs))


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


def read_run_file(
    path: str | os.PathLike[str],
    *,
    scale_arcsec_per_px: float | None = None,
    keep_going: Callable[[float], bool] | None = None,
) -> DriftLog:
    """The run in the file at `path`; as `core.alignment.driftlog.read_file`, pixels included."""
    try:
        return read_file(path, keep_going)
    except UnusableLog:
        lines = _lines_of_run(Path(path))
        if not lines:
            raise
    return read_run(lines, name=Path(path).name, scale_arcsec_per_px=scale_arcsec_per_px)


def _lines_of_run(file: Path) -> list[str]:
    """The lines of a text file whose head names the columns of a run; none of any other."""
    try:
        if not file.is_file() or file.stat().st_size > MAX_BYTES:
            return []
        with file.open(encoding="utf-8-sig", errors="replace") as text:
            return text.read().splitlines() if _names_offsets(text) else []
    except OSError:
        return []


def _names_offsets(text: TextIO) -> bool:
    """Whether the head of a file names the columns of a run; leaves it at the beginning."""
    head = text.read(_HEAD).lower()
    text.seek(0)
    return "east_px" in head or ("east_arcsec" in head and "utc" in head)


class RunForm:
    """Renames the columns on the way; remembers whether they were in pixels."""

    def __init__(self) -> None:
        self.in_pixels = False
        self._needs_north = False
        self._separator = ","
        self._names_seen = False

    def renamed(self, lines: Iterable[str]) -> Iterator[str]:
        """The lines as the drift log wants them."""
        for line in lines:
            text = line.rstrip("\r\n")
            bare = text.removeprefix("\ufeff").strip()
            if not bare or bare.startswith(("#", '"#')) or bare.lower().startswith("sep="):
                yield text
            elif not self._names_seen:
                self._names_seen = True
                yield self._header(text)
            else:
                yield text + self._separator + "0" if self._needs_north else text

    def _header(self, text: str) -> str:
        self._separator = max(SEPARATORS, key=text.count)
        names = [name.strip().lower() for name in text.split(self._separator)]
        self.in_pixels = "east_px" in names
        names = [name.replace("_px", "_arcsec") if self.in_pixels else name for name in names]
        self._needs_north = "north_arcsec" not in names and "east_arcsec" in names
        return self._separator.join([*names, *(["north_arcsec"] if self._needs_north else [])])


def _scale_in(text: str | None) -> float | None:
    if text is None:
        return None
    try:
        return number(text, decimal_comma=True)
    except ValueError:
        return None


def _scaled(leg: Leg, scale: float) -> Leg:
    return Leg(
        leg.label,
        leg.ra_deg,
        leg.dec_deg,
        leg.utc_s,
        leg.north_arcsec * scale,
        None if leg.east_arcsec is None else leg.east_arcsec * scale,
        None if leg.sigma_arcsec is None else leg.sigma_arcsec * scale,
    )
