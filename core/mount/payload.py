"""Does the mount carry it: load against listed capacity and practice, mass and moment."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import Enum

from core.language import marked, say
from core.mount.balance import about_polar_axis, carried, inertia_kg_m2
from core.mount.equipment import Mount, MountKind, Part, Purpose

OVERLOAD_WARNING = marked(
    "Overloaded, the clutches or worm may slip, the tube may swing down on you, a screw or "
    "the tripod may give way and everything may fall. Do not use it so: take parts off."
)


class LoadStanding(Enum):
    """Load against what the mount is listed for."""

    FITS = "fits"
    ABOVE_PRACTICE = "above practice"
    OVERLOADED = "overloaded"
    UNKNOWN = "cannot be judged"


@dataclass(frozen=True)
class LoadPractice:
    """Parts of the listed capacity a load should keep to, for each purpose; adjustable.

    60 % for imaging: common practice, no source. The others are this program's own suggestion, no
    source either.
    """

    deep_sky: float = 0.60
    planetary: float = 0.80
    observing: float = 0.80

    def __post_init__(self) -> None:
        for purpose in Purpose:
            if not 0.05 <= self.share(purpose) <= 1.0:
                raise ValueError(
                    say(
                        "The part of the capacity used for {purpose} is given as {percent:g} "
                        "%; it lies between 5 and 100 %.",
                        purpose=say(purpose.value),
                        percent=100.0 * self.share(purpose),
                    )
                )

    def share(self, purpose: Purpose) -> float:
        """For one purpose."""
        return {
            Purpose.DEEP_SKY: self.deep_sky,
            Purpose.PLANETARY: self.planetary,
            Purpose.OBSERVING: self.observing,
        }[purpose]

    def words(self, purpose: Purpose) -> str:
        """``60 % of the listed capacity (common practice, no source)``."""
        percent = 100.0 * self.share(purpose)
        if self.share(purpose) != LoadPractice().share(purpose):
            return say("{percent:g} % of the listed capacity (your own figure)", percent=percent)
        if purpose is Purpose.DEEP_SKY:
            return say(
                "{percent:g} % of the listed capacity (common practice, no source)", percent=percent
            )
        return say(
            "{percent:g} % of the listed capacity (our suggestion, no source)", percent=percent
        )


@dataclass(frozen=True)
class LoadVerdict:
    """Counterweights are not counted, as data sheets do (common practice, no source).

    `mass_kg` is of the parts whose mass is known. `share` is load over capacity. `moment_kg_m` is
    the load's, mass times distance from the polar axis; `moment_capacity_kg_m` the capacity at its
    listed distance. `stretch`: moment of inertia over that of the same masses in lumps at their
    heights: how much harder a long load is to turn and to hold still. None: not known.
    """

    standing: LoadStanding
    mass_kg: float
    capacity_kg: float | None
    practice_kg: float | None
    share: float | None
    moment_kg_m: float | None
    moment_capacity_kg_m: float | None
    inertia_kg_m2: float | None
    stretch: float | None
    sentence: str
    warning: str  # what may happen; empty unless overloaded
    not_judged: tuple[str, ...]
    unweighed: tuple[str, ...]  # names of what is carried and has no mass entered


def judge_load(
    mount: Mount, parts: Sequence[Part], purpose: Purpose, practice: LoadPractice | None = None
) -> LoadVerdict:
    """Judge what is carried; parts on the head or the ground do not count."""
    practice = practice or LoadPractice()
    held = carried(parts)
    mass = sum(part.mass_kg for part in held if part.mass_kg is not None)
    unweighed = [part.name for part in held if part.mass_kg is None]
    levers, unknown = about_polar_axis(mount, parts)
    is_told = not unknown and mount.kind is MountKind.GERMAN_EQUATORIAL
    moment = sum(one.mass_kg * one.arm_mm for one in levers) / 1000.0 if is_told else None
    lumps = sum(one.mass_kg * one.arm_mm**2 for one in levers) / 1e6
    inertia = inertia_kg_m2(mount.saddle_distance_mm or 0.0, held) if is_told else None
    capacity, moment_capacity = mount.capacity_kg, _moment_capacity(mount)
    standing = _standing(mass, unweighed, capacity, practice.share(purpose))
    too_far = moment is not None and moment_capacity is not None and moment > moment_capacity
    if too_far:
        standing = LoadStanding.OVERLOADED
    return LoadVerdict(
        standing=standing,
        mass_kg=mass,
        capacity_kg=capacity,
        practice_kg=None if capacity is None else capacity * practice.share(purpose),
        share=None if capacity is None else mass / capacity,
        moment_kg_m=moment,
        moment_capacity_kg_m=moment_capacity,
        inertia_kg_m2=inertia,
        stretch=inertia / lumps if inertia is not None and lumps > 0.0 else None,
        sentence=_sentence(mount, mass, unweighed, standing, too_far, practice.words(purpose)),
        warning=say(OVERLOAD_WARNING) if standing is LoadStanding.OVERLOADED else "",
        not_judged=tuple(_not_judged(mount, unweighed, unknown, held)),
        unweighed=tuple(unweighed),
    )


def _moment_capacity(mount: Mount) -> float | None:
    if mount.capacity_kg is None or mount.capacity_distance_mm is None:
        return None
    return mount.capacity_kg * mount.capacity_distance_mm / 1000.0


def _standing(
    mass: float, unweighed: Sequence[str], capacity: float | None, share: float
) -> LoadStanding:
    if capacity is None:
        return LoadStanding.UNKNOWN
    if mass > capacity:
        return LoadStanding.OVERLOADED
    if unweighed:
        return LoadStanding.UNKNOWN
    return LoadStanding.ABOVE_PRACTICE if mass > capacity * share + 1e-9 else LoadStanding.FITS


def _sentence(
    mount: Mount,
    mass: float,
    unweighed: Sequence[str],
    standing: LoadStanding,
    too_far: bool,
    practice: str,
) -> str:
    load = say("The load is {mass:.1f} kg", mass=mass)
    if unweighed:
        load = say("The load is at least {mass:.1f} kg", mass=mass)
    if mount.capacity_kg is None:
        return say(
            "{load}; the listed capacity of “{mount}” is not known: see its data sheet.",
            load=load,
            mount=mount.name,
        )
    part = say(
        "{percent:.0f} % of the {capacity:g} kg listed",
        percent=100.0 * mass / mount.capacity_kg,
        capacity=mount.capacity_kg,
    )
    if standing is LoadStanding.OVERLOADED and too_far and mass <= mount.capacity_kg:
        return say(
            "{load}, {part}: more than “{mount}” is listed to carry at this distance from the "
            "axis.",
            load=load,
            part=part,
            mount=mount.name,
        )
    if standing is LoadStanding.OVERLOADED:
        return say(
            "{load}, {part}: more than “{mount}” is listed to carry.",
            load=load,
            part=part,
            mount=mount.name,
        )
    if standing is LoadStanding.UNKNOWN:
        names = ", ".join(f"“{name}”" for name in unweighed)
        return say(
            "{load}, {part}; it cannot be judged without the mass of {names}.",
            load=load,
            part=part,
            names=names,
        )
    if standing is LoadStanding.ABOVE_PRACTICE:
        return say("{load}, {part}: above {practice}.", load=load, part=part, practice=practice)
    return say("{load}, {part}: within {practice}.", load=load, part=part, practice=practice)


def _not_judged(
    mount: Mount, unweighed: Sequence[str], unknown: Sequence[str], held: Iterable[Part]
) -> list[str]:
    said = []
    if not list(held):
        said.append(say("Nothing is on the mount yet."))
    if mount.capacity_kg is None:
        said.append(say("The load against the capacity: the data sheet's figure is missing."))
    if unweighed:
        said.append(
            say(
                "The whole load: no mass is entered for {unweighed}.",
                unweighed=", ".join(unweighed),
            )
        )
    if mount.kind is not MountKind.GERMAN_EQUATORIAL:
        said.append(
            say("The moment about the axes: it is judged for German equatorial mounts only.")
        )
    elif unknown:
        said.append(
            say("The moment about the polar axis: missing {unknown}.", unknown=", ".join(unknown))
        )
    elif mount.capacity_distance_mm is None:
        said.append(
            say(
                "The moment against the mount's: the data sheet does not say at what distance "
                "from the axis the capacity holds."
            )
        )
    said.append(say("Wind, and how stiff tripod and saddle are."))
    return said


# Cautions where loads are handled. Common practice, no source; manuals and local rules go first.
#
# Given as short sentences in the order in which things are done.

FIRST = marked(
    "Follow the maker's manual and your local safety rules first; this is only a reminder."
)

PUTTING_ON = (
    marked(
        "Stand the tripod firm and level, legs locked; on ice, sand or in the dark take more care."
    ),
    marked("Lock both axes, the bar pointing down."),
    marked("Counterweight on first, near the end of the bar, its screw tight."),
    marked(
        "Put the toe stop in at the end of the bar before you let go: it keeps a loose weight "
        "off your feet."
    ),
    marked("Then the telescope; keep a hand on it until the saddle's screws are tight and tested."),
    marked("Then cameras and the rest; tie cables so that nothing can pull."),
)

TAKING_OFF = (
    marked("Lock both axes, the bar pointing down."),
    marked("Cameras and other parts off first."),
    marked("Telescope off before the counterweight."),
    marked("Counterweight off last; hold it while you take out the toe stop."),
)

BALANCING = (
    marked("Loosen one axis at a time, with a hand on the tube: it may swing."),
    marked("Keep fingers, hair and cables away from the gap between weight, tripod and tube."),
    marked("Loosen a saddle or weight only with its axis locked and the load held."),
)

LIFTING = (
    marked("Lift with bent knees, close to the body; carry heavy parts one by one."),
    marked("Let two people lift what one cannot hold easily."),
    marked("Wear closed shoes."),
)
