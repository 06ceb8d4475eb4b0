"""The checklist of one night: only what applies, in the order it is done, with times."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from core.language import say
from core.mount.equipment import MountKind, Purpose
from core.night.checklistown import OwnStep
from core.night.checkliststeps import Applies, Caution, Hemisphere, Part, Power, Step, load
from core.night.checklisttimes import Moments, Planned, Timetable, timetable

COOL_DOWN = "cool-down"  # the step whose lead depends on the telescope
MOON_MATTERS = 0.3  # illuminated share; common practice, no source


@dataclass(frozen=True)
class Circumstances:
    """What tonight's checklist depends on.

    `temperature_c`: the lowest expected; None when not known, which is treated as cold. `moon_lit`:
    illuminated share of the Moon's disc while it is up during the session, 0 when it is not.
    `spares_flip`: a target is chosen that needs none.
    `cool_down_min`: how long the telescope takes to reach the temperature of the air.
    """

    purpose: Purpose
    mount: MountKind
    power: Power
    hemisphere: Hemisphere
    temperature_c: float | None = None
    moon_lit: float = 0.0
    is_guided: bool = False
    needs_flip: bool = False
    spares_flip: bool = False
    cool_down_min: float = 60.0


@dataclass(frozen=True)
class Checklist:
    """Steps with their times. A step's cautions belong to it whether it is done or skipped.

    `starts_utc_s`: when the target can begin; `moments` has it too. `notice`: a sentence when that
    is later than planned, or when there is no such time, else empty.
    """

    planned: tuple[Planned, ...]
    moments: Moments
    starts_utc_s: float | None
    notice: str

    @property
    def steps(self) -> tuple[Step, ...]:
        return tuple(one.step for one in self.planned)

    @property
    def cautions(self) -> tuple[Caution, ...]:
        """Every caution of this night, once each, in the order they come up."""
        return tuple(dict.fromkeys(one for step in self.steps for one in step.cautions))


def hemisphere_of(latitude_deg: float) -> Hemisphere:
    """The equator counts as north, where the north pole's star can at least be looked for."""
    return Hemisphere.NORTH if latitude_deg >= 0.0 else Hemisphere.SOUTH


def build(circumstances: Circumstances, moments: Moments, own: Sequence[OwnStep] = ()) -> Checklist:
    """The checklist for these circumstances, with the person's own steps where they put them."""
    steps = [
        _cooling(step, circumstances.cool_down_min)
        for step in load()
        if applies(step.applies, circumstances)
    ]
    times = timetable(_with_own(steps, own), moments)
    notice = _notice(times, moments.target_utc_s)
    return Checklist(times.planned, times.moments, times.starts_utc_s, notice)


def applies(when: Applies, tonight: Circumstances) -> bool:
    """Whether a step stands on such a night."""
    cold = tonight.temperature_c is None or tonight.temperature_c < (when.below_c or 0.0)
    return all(
        (
            not when.purposes or tonight.purpose in when.purposes,
            not when.mounts or tonight.mount in when.mounts,
            when.power in (None, tonight.power),
            when.hemisphere in (None, tonight.hemisphere),
            when.below_c is None or cold,
            not when.moon or tonight.moon_lit >= MOON_MATTERS,
            not when.flip or tonight.needs_flip,
            not when.flip_asked or tonight.needs_flip or tonight.spares_flip,
            not when.guided or tonight.is_guided,
        )
    )


def _cooling(step: Step, minutes: float) -> Step:
    if step.key != COOL_DOWN:
        return step
    return replace(step, when=replace(step.when, ahead_min=minutes))


def _with_own(steps: Iterable[Step], own: Sequence[OwnStep]) -> list[Step]:
    """Own steps after the one they were put behind; at the end of their part when it is absent."""
    placed = list(steps)
    for one in own:
        keys = [step.key for step in placed]
        if one.after in keys:
            index = keys.index(one.after) + 1
        else:
            index = sum(_order(step.part) <= _order(one.part) for step in placed)
        neighbour = placed[index - 1] if index else None
        placed.insert(index, one.as_step(neighbour))
    return placed


def _order(part: Part) -> int:
    return list(Part).index(part)


def _notice(times: Timetable, target_utc_s: float | None) -> str:
    if times.starts_utc_s is None:
        return say("The Sun gives no evening tonight to plan by: the steps stand without times.")
    late_min = 0.0 if target_utc_s is None else (times.starts_utc_s - target_utc_s) / 60.0
    if late_min < 1.0:
        return ""
    return say(
        "What needs stars cannot all be done before the target's time: it can begin "
        "{minutes:.0f} minutes later. Skip a step with a reason, or begin the target later.",
        minutes=late_min,
    )
