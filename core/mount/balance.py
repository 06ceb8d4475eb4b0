"""Balance about the polar axis: where the counterweight goes and how heavy it must be.

Torque balance with the declination axis level: load side Σ m d = bar's mass × distance of its
middle + counterweight × distance. Distances from the polar axis, along the declination axis.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from core.language import marked, say
from core.mount.equipment import Counterweight, Mount, MountKind, Part
from core.mount.leverage import (
    GRAVITY_M_PER_S2,
    Lever,
    about_polar_axis,
    head_lever,
    total_torque_n_m,
)

_BAR_BEGINNING = marked("the bar's beginning of “{mount}”")
_BAR_LENGTH = marked("the bar's length of “{mount}”")
_BAR_MASS = marked("the bar's mass of “{mount}”")
_GAP_N_M = 0.05  # less is not felt at a clutch; our own figure


class PolarState(Enum):
    """How the balance about the polar axis comes out."""

    BALANCES = "balances"
    TOO_LIGHT = "the counterweight is too light for this bar"
    TOO_HEAVY = "the counterweight is too heavy"
    NO_WEIGHT = "no counterweight"
    NOT_NEEDED = "no counterweight needed"
    UNKNOWN = "cannot be told"


@dataclass(frozen=True)
class PolarBalance:
    """Where the middle of the counterweights goes, and which mass fits the bar.

    `levers`: the load (positive arms), the bar and, where placed, the weights (negative arms), for
    a drawing to scale. `position_mm`: from the polar axis; `from_bar_end_mm`: from the bar's end.
    `least_kg` to `most_kg`: masses of weight that balance somewhere on the bar.
    `remaining_n_m`: torque left over, positive when the telescope's side sinks.
    """

    state: PolarState
    levers: tuple[Lever, ...]
    position_mm: float | None
    from_bar_end_mm: float | None
    least_kg: float | None
    most_kg: float | None
    remaining_n_m: float | None
    sentence: str


def polar_balance(
    mount: Mount, parts: Sequence[Part], weights: Sequence[Counterweight]
) -> PolarBalance:
    """Balance of what the axes carry by the given weights, pushed together on the bar."""
    if mount.kind is not MountKind.GERMAN_EQUATORIAL:
        sentence = say(
            "“{mount}” is {kind}: it has no counterweight bar to balance.",
            mount=mount.name,
            kind=say(mount.kind.value),
        )
        return PolarBalance(PolarState.NOT_NEEDED, (), None, None, None, None, None, sentence)
    load, unknown = about_polar_axis(mount, parts)
    missing = [*unknown, *_missing_bar(mount)]
    missing += [
        say("the mass of “{name}”", name=one.name) for one in weights if one.mass_kg is None
    ]
    if missing:
        sentence = say(
            "The counterweight cannot be placed without {missing}.", missing=", ".join(missing)
        )
        return PolarBalance(PolarState.UNKNOWN, load, None, None, None, None, None, sentence)
    return _Bench.of(mount, (*load, *head_lever(mount)), weights).judged()


def _missing_bar(mount: Mount) -> list[str]:
    figures = (
        (_BAR_BEGINNING, mount.bar_start_mm),
        (_BAR_LENGTH, mount.bar_length_mm),
        (_BAR_MASS, mount.bar_mass_kg),
    )
    return [say(words, mount=mount.name) for words, value in figures if value is None]


@dataclass(frozen=True)
class _Bench:
    """Everything known: load, bar, weights. Distances in mm from the polar axis."""

    load: tuple[Lever, ...]
    bar: Lever
    weight_kg: float
    inner_mm: float  # nearest and farthest places for the middle of the weights
    outer_mm: float
    bar_end_mm: float

    @classmethod
    def of(cls, mount: Mount, load: tuple[Lever, ...], weights: Sequence[Counterweight]) -> _Bench:
        start, length = mount.bar_start_mm or 0.0, mount.bar_length_mm or 0.0
        half = sum(one.thickness_mm or 0.0 for one in weights) / 2.0
        return cls(
            load=load,
            bar=Lever(
                say("the bar"), mount.bar_mass_kg or 0.0, -(start + length / 2.0), is_bar=True
            ),
            weight_kg=sum(one.mass_kg or 0.0 for one in weights),
            inner_mm=start + half,
            outer_mm=max(start + length - half, start + half),
            bar_end_mm=start + length,
        )

    @property
    def open_torque_n_m(self) -> float:
        """What the weights have to hold."""
        return total_torque_n_m((*self.load, self.bar))

    def balancing_kg(self, arm_mm: float) -> float:
        """The mass that balances on this arm."""
        return max(self.open_torque_n_m, 0.0) / (GRAVITY_M_PER_S2 * arm_mm / 1000.0)

    def judged(self) -> PolarBalance:
        if self.open_torque_n_m <= _GAP_N_M:
            return self._without_weight()
        if self.weight_kg == 0.0:
            return self._result(PolarState.NO_WEIGHT, None, self._no_weight())
        wanted = self.open_torque_n_m / (GRAVITY_M_PER_S2 * self.weight_kg) * 1000.0
        if wanted > self.outer_mm:
            return self._result(PolarState.TOO_LIGHT, self.outer_mm, self._too_light())
        if wanted < self.inner_mm:
            return self._result(PolarState.TOO_HEAVY, self.inner_mm, self._too_heavy())
        return self._result(PolarState.BALANCES, wanted, self._balances(wanted))

    def _result(self, state: PolarState, place_mm: float | None, sentence: str) -> PolarBalance:
        levers = (*self.load, self.bar)
        if place_mm is not None:
            weight = Lever(
                say("the counterweight"), self.weight_kg, -place_mm, is_counterweight=True
            )
            levers = (*levers, weight)
        return PolarBalance(
            state=state,
            levers=levers,
            position_mm=place_mm,
            from_bar_end_mm=None if place_mm is None else self.bar_end_mm - place_mm,
            least_kg=self.balancing_kg(self.outer_mm),
            most_kg=self.balancing_kg(self.inner_mm),
            remaining_n_m=total_torque_n_m(levers),
            sentence=sentence,
        )

    def _without_weight(self) -> PolarBalance:
        if self.weight_kg > 0.0:
            text = say("The bar alone holds the load: take the counterweight off.")
            return self._result(PolarState.TOO_HEAVY, self.inner_mm, text)
        if self.open_torque_n_m < -_GAP_N_M:
            text = say(
                "No counterweight is needed; the bar alone outweighs the load by "
                "{torque:.1f} N m: take the bar off, or use a lighter one.",
                torque=-self.open_torque_n_m,
            )
            return self._result(PolarState.TOO_HEAVY, None, text)
        return self._result(PolarState.NOT_NEEDED, None, say("No counterweight is needed."))

    def _no_weight(self) -> str:
        return say(
            "A counterweight is needed: between {least:.1f} and {most:.1f} kg fits on this bar.",
            least=self.balancing_kg(self.outer_mm),
            most=self.balancing_kg(self.inner_mm),
        )

    def _balances(self, place_mm: float) -> str:
        end = self.bar_end_mm - place_mm
        return say(
            "It balances with the middle of the {weight:g} kg {place:.0f} mm from the "
            "polar axis, {end:.0f} mm from the end of the bar.",
            weight=self.weight_kg,
            place=place_mm,
            end=end,
        )

    def _too_light(self) -> str:
        least = self.balancing_kg(self.outer_mm)
        return say(
            "At the end of the bar {weight:g} kg is still too light: use at least "
            "{least:.1f} kg in all, or a bar {longer:.0f} mm longer of the same make.",
            weight=self.weight_kg,
            least=least,
            longer=self._longer_mm(),
        )

    def _longer_mm(self) -> float:
        """Lengthening that lets the present weights balance at its end, the bar's mass growing too.

        With x more: open torque − λ g x (end + x/2) = weight × (outer + x), λ the bar's mass per
        length; a quadratic in x, all in kg mm.
        """
        length = 2.0 * (self.bar_end_mm + self.bar.arm_mm)
        per_mm = self.bar.mass_kg / length
        lack = self.open_torque_n_m / GRAVITY_M_PER_S2 * 1000.0 - self.weight_kg * self.outer_mm
        slope = self.weight_kg + per_mm * self.bar_end_mm
        return 2.0 * lack / (slope + math.sqrt(slope * slope + 2.0 * per_mm * lack))

    def _too_heavy(self) -> str:
        most = self.balancing_kg(self.inner_mm)
        return say(
            "Even at the inner end of the bar {weight:g} kg is too heavy: use at most "
            "{most:.1f} kg.",
            weight=self.weight_kg,
            most=most,
        )
