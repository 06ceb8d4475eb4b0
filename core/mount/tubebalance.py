"""Balance about the declination axis: how far to slide the dovetail, and what if it is too short.

Σ m z = 0 about the axis, z along the tube, positive towards the sky. Parts on the tube slide with
the dovetail; parts on the saddle stay.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from core.language import say
from core.mount.equipment import Mount, Part, Place, Telescope
from core.mount.leverage import Lever, along_tube, carried

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
        if part.place is Place.TUBE and part.mass_kg is not None
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
