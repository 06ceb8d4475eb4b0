"""Files read beside the window's thread: runs, stars pointed at, taps."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TypeVar

from app.pages.tracking.job import KeepGoing
from app.pages.tracking.question import Given, Place, Tap
from core.alignment.driftlog.files import size_if_ordinary
from core.alignment.driftlog.records import DriftLog, Leg, ReadingCancelled, UnusableLog
from core.language import say
from core.sky.site import Site
from core.tracking.pointinglog import PointingLog, read_sightings
from core.tracking.runlog import ScaleNeeded, read_run_file
from core.tracking.vibration import read_tap

T = TypeVar("T")

MOST_BYTES = 20_000_000  # of a list of stars or a tap
MOST_TOLD = 3
NIGHT_S = 18.0 * 3600.0


@dataclass(frozen=True)
class Refusal:
    """`needs_scale`: the offsets are in pixels, and the person knows how large one is."""

    sentence: str
    needs_scale: bool = False


def read_run(
    path: Path,
    scale_arcsec_per_px: float | None,
    here: Place | None,
    now_utc_s: float,
    keep_going: KeepGoing,
) -> tuple[Given, ...] | Refusal | None:
    """The legs with east offsets, the longest first. None when stopped.

    A run of another night knows nothing of how the axis stands tonight.
    """
    try:
        log = read_run_file(path, scale_arcsec_per_px=scale_arcsec_per_px, keep_going=keep_going)
    except ScaleNeeded as reason:
        return Refusal(str(reason), needs_scale=True)
    except UnusableLog as reason:
        return Refusal(str(reason))
    except ReadingCancelled:
        return None
    legs = sorted((leg for leg in log.legs), key=_length_s, reverse=True)
    with_east = [leg for leg in legs if leg.east_arcsec is not None]
    return tuple(
        Given(
            leg,
            say("{file}, leg “{leg}”", file=path.name, leg=leg.label),
            _place(log, here if _is_tonight(leg, now_utc_s) else here and here.without_axis()),
            is_tonight=_is_tonight(leg, now_utc_s),
            account=left_out(log),
        )
        for leg in with_east or legs[:1]
    )


def left_out(log: PointingLog | DriftLog) -> str:
    """Which lines were not used, and why."""
    told = [
        say("Line {number}: {text}", number=line.line_number, text=line.reason)
        for line in log.rejected[:MOST_TOLD]
    ]
    more = len(log.rejected) - len(told)
    return "\n".join([*told, *([say("… and {more} more lines.", more=more)] if more > 0 else [])])


def read_stars(path: Path, site: Site) -> PointingLog | Refusal:
    return _small(path, lambda lines: read_sightings(lines, site))


def read_one_tap(path: Path, scale_arcsec_per_px: float | None) -> Tap | Refusal:
    def tap(lines: list[str]) -> Tap:
        return Tap(*read_tap(lines, scale_arcsec_per_px), path.name)

    return _small(path, tap)


def _small(path: Path, read: Callable[[list[str]], T]) -> T | Refusal:
    """A text file read as a whole; what is wrong with it in a sentence."""
    try:
        if size_if_ordinary(path) is None:
            return Refusal(
                say(
                    "“{file}” is a folder, a pipe or a device, not a file that can be read whole: "
                    "choose another file.",
                    file=path.name,
                )
            )
        with path.open("rb") as file:
            data = file.read(MOST_BYTES + 1)
        if len(data) > MOST_BYTES:
            return Refusal(
                say("“{file}” is too large for such a record; choose another file.", file=path.name)
            )
        return read(data.decode("utf-8-sig", errors="replace").splitlines())
    except ScaleNeeded as reason:
        return Refusal(str(reason), needs_scale=True)
    except OSError as error:
        return Refusal(
            say(
                "“{file}” cannot be read ({why}): choose another file.",
                file=path.name,
                why=error.strerror,
            )
        )
    except ValueError as reason:
        return Refusal(str(reason))


def _length_s(leg: Leg) -> float:
    return float(leg.utc_s[-1] - leg.utc_s[0]) if leg.utc_s.size else 0.0


def _is_tonight(leg: Leg, now_utc_s: float) -> bool:
    return leg.utc_s.size > 0 and abs(float(leg.utc_s[-1]) - now_utc_s) < NIGHT_S


def _place(log: DriftLog, here: Place | None) -> Place | None:
    """The one the log names, with tonight's axis when it is tonight's place; else tonight's."""
    site = log.header.site()
    if site is None:
        return here
    if here is not None and _is_near(site, here.site):
        return Place(here.site, log.header.air(), here.alignment)
    return Place(site, log.header.air())


def _is_near(one: Site, other: Site) -> bool:
    apart = (one.latitude_deg - other.latitude_deg, one.longitude_deg - other.longitude_deg)
    return max(abs(apart[0]), abs(apart[1])) < 0.01
