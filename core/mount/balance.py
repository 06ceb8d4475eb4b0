"""Balance about both axes: where the counterweight goes, how far to slide the dovetail."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import Enum

from core.language import marked, say
from core.mount.equipment import Counterweight, Mount, MountingPlace, MountKind, Part, Telescope

# Levers: masses at distances from an axis, their torque and what it takes to turn them.
#
# Elementary statics and dynamics: torque m g d; moment of inertia m d², of a thin-walled tube about
# a line across its middle m (r²/2 + L²/12).

_MASS = marked("the mass of “{name}”")
_HEIGHT = marked("the height above the saddle of “{name}”")
_ALONG = marked("the position along the tube of “{name}”")
GRAVITY_M_PER_S2 = 9.80665  # standard gravity, ISO 80000-3


@dataclass(frozen=True)
class Lever:
    """A mass on an arm. The arm is positive on the telescope's side, or towards the sky.

    `is_bar`, `is_counterweight`: what a drawing shows otherwise than a load.
    """

    name: str
    mass_kg: float
    arm_mm: float
    is_bar: bool = False
    is_counterweight: bool = False

    @property
    def torque_n_m(self) -> float:
        """With the arm level: the most it can be."""
        return self.mass_kg * GRAVITY_M_PER_S2 * self.arm_mm / 1000.0


def total_torque_n_m(levers: Iterable[Lever]) -> float:
    """Sum with signs."""
    return sum(lever.torque_n_m for lever in levers)


def carried(parts: Iterable[Part]) -> tuple[Part, ...]:
    """Those the axes turn: on the tube or the saddle."""
    return tuple(part for part in parts if part.place in (MountingPlace.TUBE, MountingPlace.SADDLE))


def about_polar_axis(
    mount: Mount, parts: Iterable[Part]
) -> tuple[tuple[Lever, ...], tuple[str, ...]]:
    """Levers of what is carried, along the declination axis; and in words what is not known.

    For German equatorial mounts; a fork or alt-azimuth mount holds its load between its axes.
    """
    levers, unknown = [], []
    if mount.saddle_distance_mm is None:
        unknown.append(
            say("the distance from the polar axis to the saddle of “{mount}”", mount=mount.name)
        )
    for part in carried(parts):
        lacking = [
            words
            for words, value in ((_MASS, part.mass_kg), (_HEIGHT, part.height_mm))
            if value is None
        ]
        unknown += [say(words, name=part.name) for words in lacking]
        if part.mass_kg is None or part.height_mm is None or mount.saddle_distance_mm is None:
            continue
        levers.append(Lever(part.name, part.mass_kg, mount.saddle_distance_mm + part.height_mm))
    return tuple(levers), tuple(unknown)


def head_lever(mount: Mount) -> tuple[Lever, ...]:
    """The turning head's own imbalance as a mass on an arm of one metre; none when even."""
    imbalance = mount.head_imbalance_kg_m or 0.0
    if imbalance == 0.0:
        return ()
    return (Lever(say("the head itself"), abs(imbalance), 1000.0 if imbalance > 0.0 else -1000.0),)


def along_tube(parts: Iterable[Part]) -> tuple[tuple[Lever, ...], tuple[str, ...]]:
    """Levers along the tube about the declination axis; and in words what is not known."""
    levers, unknown = [], []
    for part in carried(parts):
        lacking = [
            words
            for words, value in ((_MASS, part.mass_kg), (_ALONG, part.along_mm))
            if value is None
        ]
        unknown += [say(words, name=part.name) for words in lacking]
        if part.mass_kg is not None and part.along_mm is not None:
            levers.append(Lever(part.name, part.mass_kg, part.along_mm))
    return tuple(levers), tuple(unknown)


def inertia_kg_m2(saddle_distance_mm: float, parts: Iterable[Part]) -> float:
    """Moment of inertia of what is carried about the polar axis, largest: the tube square to it.

    Masses and heights must be known; the parts' own extent and place along the tube enter where
    known.
    """
    total = 0.0
    for part in carried(parts):
        arm_mm = saddle_distance_mm + (part.height_mm or 0.0)
        total += (part.mass_kg or 0.0) * (arm_mm**2 + _spread_mm2(part)) / 1e6
    return total


def _spread_mm2(part: Part) -> float:
    """Mean square distance from the line across the tube's middle: place, length and radius."""
    spread = (part.along_mm or 0.0) ** 2
    if isinstance(part, Telescope):
        spread += (part.length_mm or 0.0) ** 2 / 12.0 + (part.diameter_mm or 0.0) ** 2 / 8.0
    return spread


# Balance about the polar axis: where the counterweight goes and how heavy it must be.
#
# Torque balance with the declination axis level: load side Σ m d = bar's mass × distance of its
# middle + counterweight × distance. Distances from the polar axis, along the declination axis.

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
    return _BalanceFigures.of(mount, (*load, *head_lever(mount)), weights).judged()


def _missing_bar(mount: Mount) -> list[str]:
    figures = (
        (_BAR_BEGINNING, mount.bar_start_mm),
        (_BAR_LENGTH, mount.bar_length_mm),
        (_BAR_MASS, mount.bar_mass_kg),
    )
    return [say(words, mount=mount.name) for words, value in figures if value is None]


@dataclass(frozen=True)
class _BalanceFigures:
    """Everything known: load, bar, weights. Distances in mm from the polar axis."""

    load: tuple[Lever, ...]
    bar: Lever
    weight_kg: float
    inner_mm: float  # nearest and farthest places for the middle of the weights
    outer_mm: float
    bar_end_mm: float

    @classmethod
    def of(
        cls, mount: Mount, load: tuple[Lever, ...], weights: Sequence[Counterweight]
    ) -> _BalanceFigures:
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


# Balance about the declination axis: how far to slide the dovetail, and what if it is too short.
#
# Σ m z = 0 about the axis, z along the tube, positive towards the sky. Parts on the tube slide with
# the dovetail; parts on the saddle stay.

_SMALLEST_MM = 1.0  # less is within what a hand can set


class TubeState(Enum):
    """How the balance along the tube comes out."""

    BALANCES = "balances"
    SLIDE = "slide the dovetail"
    TOO_SHORT = "the dovetail is too short"
    UNKNOWN = "cannot be told"


@dataclass(frozen=True)
class TubeBalance:
    """`levers`: parts along the tube as they stand, for a drawing to scale.

    `centre_of_gravity_mm`: of all, from the declination axis, positive towards the sky.
    `shift_mm`: slide of the tube that balances it, positive towards the sky; `reach_mm`: how far it
    can slide either way with the whole saddle on the bar, None when not known.
    """

    state: TubeState
    levers: tuple[Lever, ...]
    centre_of_gravity_mm: float | None
    shift_mm: float | None
    reach_mm: float | None
    sentence: str


def tube_balance(mount: Mount, parts: Sequence[Part]) -> TubeBalance:
    """Balance of what is carried, the middle of the dovetail bar standing over the axis."""
    levers, unknown = along_tube(parts)
    sliding = sum(
        part.mass_kg
        for part in carried(parts)
        if part.place is MountingPlace.TUBE and part.mass_kg is not None
    )
    if unknown or sliding == 0.0:
        sentence = say(
            "The balance along the tube cannot be told without {unknown}.",
            unknown=", ".join(unknown),
        )
        if not unknown:
            sentence = say("The balance along the tube cannot be told with nothing on the tube.")
        return TubeBalance(TubeState.UNKNOWN, levers, None, None, None, sentence)
    moment_kg_mm = sum(lever.mass_kg * lever.arm_mm for lever in levers)
    shift, reach = -moment_kg_mm / sliding, _reach_mm(mount, parts)
    state = _state(shift, reach)
    return TubeBalance(
        state=state,
        levers=levers,
        centre_of_gravity_mm=moment_kg_mm / sum(lever.mass_kg for lever in levers),
        shift_mm=shift,
        reach_mm=reach,
        sentence=_sentence(state, shift, reach, moment_kg_mm, sliding, _half_length_mm(parts)),
    )


def _reach_mm(mount: Mount, parts: Sequence[Part]) -> float | None:
    bars = [one.dovetail_length_mm for one in parts if isinstance(one, Telescope)]
    if mount.saddle_length_mm is None or not bars or bars[0] is None:
        return None
    return max((bars[0] - mount.saddle_length_mm) / 2.0, 0.0)


def _half_length_mm(parts: Sequence[Part]) -> float | None:
    lengths = [one.length_mm for one in parts if isinstance(one, Telescope)]
    return lengths[0] / 2.0 if lengths and lengths[0] is not None else None


def _state(shift_mm: float, reach_mm: float | None) -> TubeState:
    if abs(shift_mm) < _SMALLEST_MM:
        return TubeState.BALANCES
    if reach_mm is not None and abs(shift_mm) > reach_mm:
        return TubeState.TOO_SHORT
    return TubeState.SLIDE


def _sentence(
    state: TubeState,
    shift_mm: float,
    reach_mm: float | None,
    moment_kg_mm: float,
    sliding_kg: float,
    half_length_mm: float | None,
) -> str:
    if state is TubeState.BALANCES:
        return say("The tube balances where it is.")
    if shift_mm > 0.0:
        slide = say("The tube is rear-heavy: slide it {slide:.0f} mm forward", slide=shift_mm)
        ways = say("move heavy parts forward, or use a longer dovetail")
    else:
        slide = say("The tube is front-heavy: slide it {slide:.0f} mm back", slide=-shift_mm)
        ways = say("move heavy parts back, or use a longer dovetail")
    if state is TubeState.SLIDE and reach_mm is not None:
        return f"{slide}."
    if state is TubeState.SLIDE:
        return say("{slide}; whether the dovetail is long enough is not known.", slide=slide)
    reach = reach_mm or 0.0
    if half_length_mm is not None:
        left = abs(moment_kg_mm) - sliding_kg * reach
        mass = left / (half_length_mm + reach)
        if shift_mm > 0.0:
            ways = say(
                "{ways}, or add {mass:.2g} kg at the front end of the tube", ways=ways, mass=mass
            )
        else:
            ways = say(
                "{ways}, or add {mass:.2g} kg at the rear end of the tube", ways=ways, mass=mass
            )
    return say(
        "{slide}, but the dovetail lets it only {reach:.0f} mm: {ways}.",
        slide=slide,
        reach=reach,
        ways=ways,
    )
