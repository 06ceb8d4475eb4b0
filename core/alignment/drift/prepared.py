"""A leg made ready for the solution: whether it can be solved, gusts set aside, steps found."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.alignment.drift.noise import Groups, group, set_aside
from core.alignment.drift.nuisances import nuisance_columns
from core.alignment.drift.path import ApparentTrack, Path, too_fast
from core.alignment.drift.readingstep import (
    FEWEST_READINGS,
    NEVER_CHANGED_ARCSEC,
    reading_step_arcsec,
)
from core.alignment.drift.steps import DriftStep, find_breaks, measure
from core.alignment.driftlog.records import Leg
from core.alignment.priors import Priors
from core.finding import Code, Finding, Refused
from core.sky.site import Air, Site


class LegNote(Code):
    """Why a leg, or all, cannot be solved."""

    LEFT_OUT = "leg left out"
    ALL_LEFT_OUT = "all legs left out"
    NONE = "no leg"
    SINGLE_READING = "single reading"
    NOT_A_NUMBER = "not a number"
    BACKWARDS = "backwards"
    SHORT = "short"
    ERROR_UNSTATED = "error unstated"


# Which legs can be solved, and in a sentence why the others cannot.

_FEWEST_UNSTATED = 4  # readings needed before their own scatter can earn a ±
_SHORTEST_S = 10.0


@dataclass(frozen=True)
class Note(Finding):
    """Something the person should know of the legs.

    `leg`: the label of the leg it is about, empty where it is about all or none.
    """

    leg: str = ""


def note(code: Code, leg: str = "", /, **values: object) -> Note:
    """A note; about a leg its label is the field `label` of the sentence."""
    return Note(code, {"label": leg, **values} if leg else values, leg)


class UnusableLegs(Refused):
    """No leg can be solved."""


def screened_legs(legs: Sequence[Leg]) -> tuple[list[Leg], tuple[Note, ...]]:
    """Legs that can be solved, and notes on the others. Raises `UnusableLegs` if none is left."""
    good, notes = [], []
    for leg in legs:
        reason = _reason_against(leg)
        if reason is None:
            good.append(leg)
        else:
            notes.append(note(LegNote.LEFT_OUT, leg.label, reason=reason))
    if not good:
        if not notes:
            raise UnusableLegs(LegNote.NONE)
        raise UnusableLegs(LegNote.ALL_LEFT_OUT, notes=tuple(notes))
    return good, tuple(notes)


def _reason_against(leg: Leg) -> Finding | None:
    number = leg.utc_s.size
    if number < 2:
        return Finding.of(LegNote.SINGLE_READING)
    if not (np.isfinite(leg.north_arcsec).all() and np.isfinite(leg.utc_s).all()):
        return Finding.of(LegNote.NOT_A_NUMBER)
    if np.any(np.diff(leg.utc_s) < 0.0):
        return Finding.of(LegNote.BACKWARDS)
    if leg.utc_s[-1] - leg.utc_s[0] < _SHORTEST_S:
        return Finding.of(LegNote.SHORT, seconds=_SHORTEST_S)
    if number < _FEWEST_UNSTATED and leg.sigma_arcsec is None:
        return Finding.of(LegNote.ERROR_UNSTATED, number=number, fewest=_FEWEST_UNSTATED)
    return too_fast(leg)


# A leg made ready for the solution: its star's path, gusts set aside, steps found, groups made.

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class PreparedLeg:
    """`kept` (n,) flags the readings used; `steps` lie between the groups' pieces.

    `reading_step_arcsec`: the division to which it was read, 0 where there is none to speak of.
    """

    leg: Leg
    track: ApparentTrack
    kept: NDArray[np.bool_]
    groups: Groups
    path: Path  # at the groups
    reading_step_arcsec: float = 0.0
    steps: tuple[DriftStep, ...] = ()

    @classmethod
    def of(cls, leg: Leg, site: Site, air: Air, reading_step_arcsec: float = 0.0) -> PreparedLeg:
        """Gusts set aside; steps wait until the drift is roughly known."""
        kept = ~set_aside(leg.utc_s, leg.north_arcsec, reading_step_arcsec)
        track, groups = ApparentTrack.of(leg, site, air), group(leg, kept, ())
        return cls(leg, track, kept, groups, track.path(groups.utc_s), reading_step_arcsec)

    def with_steps(self, axis_rad: Floats, priors: Priors) -> PreparedLeg:
        """Steps found in what the drift of this axis and the nuisances leave over."""
        predicted = self.track.north_arcsec(self.leg.utc_s, axis_rad)

        def nuisances(groups: Groups) -> Floats:
            return nuisance_columns(groups, self.track.path(groups.utc_s), axis_rad, priors)

        breaks = find_breaks(self.leg, self.kept, predicted, self.reading_step_arcsec, nuisances)
        if not breaks:
            return self
        steps = measure(self.leg, self.kept, predicted, breaks, nuisances)
        groups = group(self.leg, self.kept, breaks)
        return replace(self, groups=groups, path=self.track.path(groups.utc_s), steps=steps)


def _may_be_rounded(leg: Leg) -> bool:
    """A few readings show no division, and what is stated of their error then has to do."""
    return leg.sigma_arcsec is None or leg.utc_s.size >= FEWEST_READINGS


def reading_steps_arcsec(legs: Sequence[Leg], priors: Priors) -> list[float]:
    """The division each leg was read to: as stated, else as found in its readings.

    Where a leg never changed, the coarsest of the others tells, else the usual reticle.
    """
    if priors.reading_step_arcsec is not None:
        return [priors.reading_step_arcsec] * len(legs)
    found = [reading_step_arcsec(leg.north_arcsec) if _may_be_rounded(leg) else 0.0 for leg in legs]
    told = [step for step in found if step is not None]
    otherwise = max(told) if told and max(told) > 0.0 else NEVER_CHANGED_ARCSEC
    return [otherwise if step is None else step for step in found]
