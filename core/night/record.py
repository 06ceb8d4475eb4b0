"""One whole night as the log keeps it: legs, results, turns of the bolts, entries."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import StrEnum
from itertools import pairwise
from typing import TYPE_CHECKING, Any

from core.alignment.driftlog.records import Leg
from core.alignment.goal import Aim, Goal, reached
from core.sky.site import Air, Site

if TYPE_CHECKING:  # brings scipy along, which browsing must not wait for
    from core.alignment.axis.solution import Solution


# One whole night as the log keeps it: what a report shows and what an exported file holds.


class LegPurpose(StrEnum):
    """What a leg was watched for. Practice is kept to go on with, and no report shows it."""

    ALIGNMENT = "alignment"
    TRACKING = "tracking"
    GUIDING = "guiding"
    PRACTICE = "tracking practice"


class Kind(StrEnum):
    """Of an entry, and what its content holds besides (a mapping JSON can hold).

    Names that end in a unit are numbers or null. Every kind may also hold `sentence`, `sentences`
    (what the person read) and anything more, which reports list as it stands.

    | kind | content |
    |---|---|
    | tick | `step`, `state`, `text`, `reason`: a `Mark` of the checklist |
    | own steps | `steps`: those of this night alone |
    | note | `text` |
    | weather | `text` and what was read, such as `temperature_c` |
    | picture | `name`, `media_type`, `caption`; the attachment is the file's bytes |
    | equipment | `name` of the set, `equipment`: the things in it |
    | plan | `target`, `begin_utc_s`, `end_utc_s` |
    | result | as `reportresult.result_content` makes it |
    | flip | `target`, `flips`: of each `flipped_utc_s`, `centred_utc_s` |
    | adjustment | as `reportresult.adjustment_content` makes it |
    | tracking | `leg`: key of the leg, `periodic_error_arcsec` (peak to peak), `worm_period_s` |
    | guiding | `leg`, `right_ascension_rms_arcsec`, `declination_rms_arcsec`, and more |
    | pointing | `stars`, `as_read_rms_arcmin`, `left_rms_arcmin`; `kept`: the stars |
    | vibration | `when`, `frequency_hz`, `settling_s`, and more; `kept`: the readings |
    """

    TICK = "tick"
    OWN_STEPS = "own steps"
    NOTE = "note"
    WEATHER = "weather"
    PICTURE = "picture"
    EQUIPMENT = "equipment"
    PLAN = "plan"
    RESULT = "result"
    FLIP = "flip"
    ADJUSTMENT = "adjustment"
    TRACKING = "tracking"
    GUIDING = "guiding"
    POINTING = "pointing"
    VIBRATION = "vibration"


@dataclass(frozen=True, eq=False)
class WatchedLeg:
    """A leg, why and when it was watched. `is_discarded`: left out by the person."""

    key: int
    star_name: str
    purpose: str
    began_utc_s: float
    ended_utc_s: float | None
    is_discarded: bool
    leg: Leg


@dataclass(frozen=True, eq=False)
class AxisState:
    """The legs between two turns of the bolts."""

    key: int
    began_utc_s: float
    legs: tuple[WatchedLeg, ...]


@dataclass(frozen=True, eq=False)
class Entry:
    """Anything else of a night. `kind`: one of `Kind`, or of a later version's."""

    key: int
    kind: str
    utc_s: float
    content: Mapping[str, Any]
    attachment: bytes | None = None


@dataclass(frozen=True, eq=False)
class NightRecord:
    """A night; None for what was never said. Keys are random and the same wherever it is kept."""

    key: int
    started_utc_s: float
    active_utc_s: float
    site: Site | None
    air: Air | None
    aim_name: str | None
    target_arcmin: float | None
    axis_states: tuple[AxisState, ...]
    entries: tuple[Entry, ...]

    @property
    def legs(self) -> Iterator[WatchedLeg]:
        """All legs in the order they were begun."""
        return (leg for state in self.axis_states for leg in state.legs)

    def of_kind(self, kind: Kind) -> tuple[Entry, ...]:
        """Its entries of a kind, in order of time."""
        found = [entry for entry in self.entries if entry.kind == kind]
        return tuple(sorted(found, key=lambda entry: entry.utc_s))


# What is kept of a result and of a turn of the bolts, and what a night comes to in figures.

_SMALLEST_TURN_ARCMIN = 1.0  # a scale from a smaller turn is mostly its error


def result_content(solution: Solution, aim: Aim, axis_state: int) -> dict[str, Any]:
    """The content of a result entry: both errors from the pole aimed at and their size on the sky.

    Half-widths are those of 95 % intervals; null where the legs cannot tell. `axis_state`: the key
    of the axis state.
    """
    altitude = solution.altitude_error_from(aim)
    error, half_width = _on_the_sky(solution, altitude)
    return {
        "axis_state": axis_state,
        "aim": aim.name,
        "azimuth_error_arcmin": _number(solution.azimuth_error_arcmin),
        "azimuth_half_width_arcmin": _number(
            solution.azimuth_interval_factor * solution.azimuth_sigma_arcmin
        ),
        "altitude_error_arcmin": _number(altitude),
        "altitude_half_width_arcmin": _number(
            solution.altitude_interval_factor * solution.altitude_sigma_arcmin
        ),
        "error_arcmin": error,
        "half_width_arcmin": half_width,
        "legs": [leg.label for leg in solution.legs],
    }


def goal_content(goal: Goal, chance_within: float | None) -> dict[str, Any]:
    """What a result entry says besides: the goal it was judged by, and the verdict."""
    chance = _number(chance_within)
    return {
        "goal_arcmin": goal.arcmin,
        "goal_is": goal.origin.value,
        "chance_within_goal": chance,
        "verdict": None if chance is None else reached(chance).value,
    }


def adjustment_content(
    axis_state: int,
    azimuth_arcmin: float | None = None,
    altitude_arcmin: float | None = None,
    azimuth_turns: float | None = None,
    altitude_turns: float | None = None,
    sentence: str = "",
) -> dict[str, Any]:
    """The content of an adjustment entry: what was meant when the axis state `axis_state` ended.

    Signs as the errors of the axis have; turns of the bolts as the person counted them.
    """
    return {
        "axis_state": axis_state,
        "azimuth_arcmin": azimuth_arcmin,
        "altitude_arcmin": altitude_arcmin,
        "azimuth_turns": azimuth_turns,
        "altitude_turns": altitude_turns,
        "sentence": sentence,
    }


@dataclass(frozen=True)
class EntryOfNight:
    """As much of an entry as figures are made of."""

    kind: str
    utc_s: float
    content: Mapping[str, Any]


@dataclass(frozen=True)
class NightFigures:
    """What a night comes to, for comparing; None for what was never measured.

    `error_arcmin` with its 95 % half-width: the last result's, from the pole aimed at. `minutes`:
    from the beginning of the first alignment leg to the last result. `*_bolt_scales`: how far each
    turn moved the axis over how far it was meant to. `periodic_error_arcsec`: peak to peak, of each
    tracking run.
    """

    error_arcmin: float | None
    half_width_arcmin: float | None
    minutes: float | None
    turns_of_the_bolts: int
    azimuth_bolt_scales: tuple[float, ...]
    altitude_bolt_scales: tuple[float, ...]
    periodic_error_arcsec: tuple[float, ...]
    worm_period_s: tuple[float, ...]


def figures(
    first_leg_utc_s: float | None, axis_states: Sequence[int], entries: Iterable[EntryOfNight]
) -> NightFigures:
    """From the keys of the axis states in order, and the night's entries."""
    by_kind: dict[str, list[EntryOfNight]] = {}
    for entry in sorted(entries, key=lambda one: one.utc_s):
        by_kind.setdefault(entry.kind, []).append(entry)
    results = [one for one in by_kind.get(Kind.RESULT, []) if _of(one, "error_arcmin") is not None]
    last = results[-1] if results else None
    adjustments = by_kind.get(Kind.ADJUSTMENT, [])
    tracking = by_kind.get(Kind.TRACKING, [])
    scales = _Scales(axis_states, by_kind.get(Kind.RESULT, []), adjustments)
    return NightFigures(
        error_arcmin=None if last is None else _of(last, "error_arcmin"),
        half_width_arcmin=None if last is None else _of(last, "half_width_arcmin"),
        minutes=_minutes(first_leg_utc_s, last),
        turns_of_the_bolts=max(len(axis_states) - 1, 0),
        azimuth_bolt_scales=scales.of("azimuth"),
        altitude_bolt_scales=scales.of("altitude"),
        periodic_error_arcsec=_all_of(tracking, "periodic_error_arcsec"),
        worm_period_s=_all_of(tracking, "worm_period_s"),
    )


class _Scales:
    """Joins each turn with the results before and after it."""

    def __init__(
        self,
        axis_states: Sequence[int],
        results: Sequence[EntryOfNight],
        adjustments: Sequence[EntryOfNight],
    ) -> None:
        self._following = dict(pairwise(axis_states))
        states = ((one.content.get("axis_state"), one) for one in results)
        self._last = {state: one for state, one in states if isinstance(state, int)}
        self._adjustments = adjustments

    def of(self, axis: str) -> tuple[float, ...]:
        found = [self._scale(one, axis) for one in self._adjustments]
        return tuple(scale for scale in found if scale is not None)

    def _scale(self, adjustment: EntryOfNight, axis: str) -> float | None:
        state = adjustment.content.get("axis_state")
        if not isinstance(state, int):
            return None
        before, after = self._last.get(state), self._last.get(self._following.get(state, -1))
        meant = _of(adjustment, f"{axis}_arcmin")
        if before is None or after is None or meant is None or abs(meant) < _SMALLEST_TURN_ARCMIN:
            return None
        began, ended = _of(before, f"{axis}_error_arcmin"), _of(after, f"{axis}_error_arcmin")
        return None if began is None or ended is None else (ended - began) / meant


def _minutes(first_leg_utc_s: float | None, last: EntryOfNight | None) -> float | None:
    if first_leg_utc_s is None or last is None or last.utc_s < first_leg_utc_s:
        return None
    return (last.utc_s - first_leg_utc_s) / 60.0


def _all_of(entries: Sequence[EntryOfNight], name: str) -> tuple[float, ...]:
    return tuple(value for one in entries if (value := _of(one, name)) is not None)


def _of(entry: EntryOfNight, name: str) -> float | None:
    return _number(entry.content.get(name))


def _number(value: Any) -> float | None:
    """The value where it is a finite number; a file from elsewhere may hold anything."""
    if isinstance(value, bool) or not isinstance(value, (int, float)):
        return None
    return float(value) if math.isfinite(value) else None


def _on_the_sky(solution: Solution, altitude_arcmin: float) -> tuple[float | None, float | None]:
    """Distance from the pole aimed at, small-angle, and the half-width along it."""
    scale = math.cos(math.radians(solution.latitude_deg))
    azimuth = solution.azimuth_error_arcmin * scale
    error = math.hypot(azimuth, altitude_arcmin)
    if not math.isfinite(error):
        return None, None
    sigmas = solution.azimuth_sigma_arcmin * scale, solution.altitude_sigma_arcmin
    share = (azimuth / error, altitude_arcmin / error) if error else (0.0, 1.0)
    parts = [part * sigma for part, sigma in zip(share, sigmas, strict=True)]
    mixed = 2.0 * solution.correlation * parts[0] * parts[1]
    variance = max(parts[0] ** 2 + parts[1] ** 2 + mixed, 0.0)
    factor = max(solution.azimuth_interval_factor, solution.altitude_interval_factor)
    return error, _number(factor * math.sqrt(variance))
