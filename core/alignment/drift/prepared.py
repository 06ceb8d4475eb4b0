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
from core.language import say
from core.sky.site import Air, Site

# Which legs can be solved, and in a sentence why the others cannot.

_FEWEST_UNSTATED = 4  # readings needed before their own scatter can earn a ±
_SHORTEST_S = 10.0
CONTRADICTION = "contradiction"  # the code of the note on legs that cannot be right together


@dataclass(frozen=True)
class Note:
    """Something the person should know. `code` names the kind, `text` is the sentence.

    `leg`: the label of the leg it is about, empty where it is about all or none.
    """

    code: str
    text: str
    leg: str = ""


class UnusableLegs(ValueError):
    """No leg can be solved; the message is a sentence for the person."""


def screened_legs(legs: Sequence[Leg]) -> tuple[list[Leg], tuple[Note, ...]]:
    """Legs that can be solved, and notes on the others. Raises `UnusableLegs` if none is left."""
    good, notes = [], []
    for leg in legs:
        reason = _reason_against(leg)
        if reason is None:
            good.append(leg)
        else:
            notes.append(
                Note(
                    "leg left out",
                    say("Leg “{label}” is left out: {reason}", label=leg.label, reason=reason),
                    leg=leg.label,
                )
            )
    if not good:
        if not notes:
            raise UnusableLegs(say("There is no leg yet: watch a star, or import a drift log."))
        raise UnusableLegs(" ".join(note.text for note in notes))
    return good, tuple(notes)


def _reason_against(leg: Leg) -> str | None:
    number = leg.utc_s.size
    if number < 2:
        return say("it has a single reading; a drift needs at least two, some minutes apart.")
    if not (np.isfinite(leg.north_arcsec).all() and np.isfinite(leg.utc_s).all()):
        return say("a reading or a time in it is not a number.")
    if np.any(np.diff(leg.utc_s) < 0.0):
        return say("its times run backwards; was the clock set while it was watched?")
    if leg.utc_s[-1] - leg.utc_s[0] < _SHORTEST_S:
        return say(
            "it lasts under {seconds:.0f} seconds; watch the star for some minutes.",
            seconds=_SHORTEST_S,
        )
    if number < _FEWEST_UNSTATED and leg.sigma_arcsec is None:
        return say(
            "it has {number} readings and no reading error; take at least {fewest} "
            "readings, or state how well you can read the offset.",
            number=number,
            fewest=_FEWEST_UNSTATED,
        )
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
