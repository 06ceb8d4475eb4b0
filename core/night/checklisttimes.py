"""When each step has to begin, worked back from the target and forward from its beginning."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace

from core.night.checkliststeps import Moment, Step
from core.night.plannight import Night, Span
from core.sky.almanac import Light

_MINUTE_S = 60.0


@dataclass(frozen=True)
class Moments:
    """The night's own times and the person's plan, Unix seconds; None for what does not happen.

    `first_stars_utc_s`: from when on the Sun is 6° down; `faint_stars_utc_s`: 12° down.
    """

    sunset_utc_s: float | None = None
    first_stars_utc_s: float | None = None
    faint_stars_utc_s: float | None = None
    target_utc_s: float | None = None
    flip_utc_s: float | None = None
    end_utc_s: float | None = None

    @classmethod
    def of(
        cls,
        night: Night,
        target_utc_s: float | None = None,
        end_utc_s: float | None = None,
        flip_utc_s: float | None = None,
    ) -> Moments:
        """Those of a night. Without a plan it ends when the faint stars fade."""
        faint = night.spans_of(Light.ASTRONOMICAL)
        fades = faint[-1][1] if faint else night.sunrise_utc_s
        return cls(
            sunset_utc_s=night.sunset_utc_s,
            first_stars_utc_s=_begin_of(night.spans_of(Light.NAUTICAL)),
            faint_stars_utc_s=_begin_of(faint),
            target_utc_s=target_utc_s,
            flip_utc_s=flip_utc_s,
            end_utc_s=fades if end_utc_s is None else end_utc_s,
        )

    @property
    def earliest_target_utc_s(self) -> float | None:
        """The target's time, or without one the first that a target could have."""
        times = (
            self.target_utc_s,
            self.faint_stars_utc_s,
            self.first_stars_utc_s,
            self.sunset_utc_s,
        )
        return next((time for time in times if time is not None), None)

    def at(self, moment: Moment) -> float | None:
        """The time of a moment."""
        name = f"{moment.value.replace(' ', '_')}_utc_s"
        time: float | None = getattr(self, name)
        return time


@dataclass(frozen=True)
class Planned:
    """A step with the latest time to begin it so that the rest is still done in time.

    None when the night has no such times. `not_before_utc_s`: it cannot be done earlier.
    """

    step: Step
    begin_utc_s: float | None
    not_before_utc_s: float | None


@dataclass(frozen=True)
class Timetable:
    """The steps in order with their times.

    `starts_utc_s`: when the target can begin, which is later than planned when the stars come too
    late for all there is to do; None when the night has no such time. `moments`: with that target.
    """

    planned: tuple[Planned, ...]
    starts_utc_s: float | None
    moments: Moments


def timetable(steps: Sequence[Step], moments: Moments) -> Timetable:
    """Times for `steps`, which stand in the order they are done."""
    before = [step for step in steps if step.when.at is None]
    after = [step for step in steps if step.when.at is not None]
    starts = _possible_start(before, moments)
    possible = replace(moments, target_utc_s=starts)
    begins = _back_from(before, possible) | _onward(after, possible)
    planned = tuple(Planned(step, begins[step.key], _earliest(step, moments)) for step in steps)
    return Timetable(planned, starts, possible)


def ready_utc_s(open_steps: Iterable[Step], moments: Moments, now_utc_s: float) -> float:
    """When the target could begin if all of `open_steps` that come before it are done from now."""
    before = [step for step in open_steps if step.when.at is None]
    return max(_through(before, moments, now_utc_s), moments.target_utc_s or now_utc_s)


def _possible_start(before: Sequence[Step], moments: Moments) -> float | None:
    earliest = moments.earliest_target_utc_s
    return None if earliest is None else max(earliest, _through(before, moments, -math.inf))


def _through(steps: Sequence[Step], moments: Moments, begin_utc_s: float) -> float:
    """The end of steps done one after another, none before its time."""
    now, began = begin_utc_s, dict[str, float]()
    leads = [step for step in steps if step.when.ahead_of is not None]
    for step in steps:
        earliest = _earliest(step, moments)
        waits = [
            began[lead.key] + lead.when.ahead_min * _MINUTE_S
            for lead in leads
            if lead.when.ahead_of == step.key and lead.key in began
        ]
        now = max([now, *waits, *([] if earliest is None else [earliest])])
        began[step.key] = now
        now += step.minutes * _MINUTE_S
    return now


def _back_from(before: Sequence[Step], moments: Moments) -> dict[str, float | None]:
    latest = moments.target_utc_s
    begins: dict[str, float | None] = {}
    for step in reversed(before):
        deadline = moments.at(step.when.by) if step.when.by is not None else None
        ends = _earlier(latest, deadline)
        begin = None if ends is None else ends - step.minutes * _MINUTE_S
        begins[step.key] = latest = _earlier(begin, _ahead(step, begins))
    return begins


def _ahead(step: Step, begins: Mapping[str, float | None]) -> float | None:
    other = None if step.when.ahead_of is None else begins.get(step.when.ahead_of)
    return None if other is None else other - step.when.ahead_min * _MINUTE_S


def _onward(after: Sequence[Step], moments: Moments) -> dict[str, float | None]:
    begins: dict[str, float | None] = {}
    free: dict[Moment, float] = {}  # when the step before it at the same moment is done
    for step in after:
        moment = step.when.at
        assert moment is not None
        time = moments.at(moment)
        if time is None:
            begins[step.key] = None
            continue
        begin = max(time + step.when.after_min * _MINUTE_S, free.get(moment, -math.inf))
        free[moment] = begin + step.minutes * _MINUTE_S
        begins[step.key] = begin
    return begins


def _earliest(step: Step, moments: Moments) -> float | None:
    return None if step.when.not_before is None else moments.at(step.when.not_before)


def _earlier(one: float | None, other: float | None) -> float | None:
    known = [time for time in (one, other) if time is not None]
    return min(known, default=None)


def _begin_of(spans: Sequence[Span]) -> float | None:
    return spans[0][0] if spans else None
