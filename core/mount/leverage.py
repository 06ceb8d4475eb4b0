"""Levers: masses at distances from an axis, their torque and what it takes to turn them.

Elementary statics and dynamics: torque m g d; moment of inertia m d², of a thin-walled tube about
a line across its middle m (r²/2 + L²/12).
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from core.language import marked, say
from core.mount.equipment import Mount, Part, Place, Telescope

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
    return tuple(part for part in parts if part.place in (Place.TUBE, Place.SADDLE))


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
