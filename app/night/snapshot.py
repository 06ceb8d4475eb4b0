"""Tonight's state and the state of the procedure at one instant, as pages see them; as JSON."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import astuple, dataclass, field
from enum import Enum
from typing import TYPE_CHECKING, Any

import numpy as np
from numpy.typing import NDArray

from core.alignment.axis.evidence import PriorAxis
from core.alignment.axis.solution import AxisNote, Solution, pole_refraction_arcmin
from core.alignment.driftlog.files import write
from core.alignment.driftlog.records import Header, Leg
from core.alignment.goal import Aim, Goal
from core.alignment.guide.bolts import (
    SEEN_TURN,
    Base,
    BoltScale,
    BoltTurn,
    SeenTurn,
    TurnAccuracy,
    known_after,
)
from core.alignment.guide.judgement import Judgement
from core.alignment.guide.procedure import NotNow, ProcedureEvent, Stage, after
from core.alignment.priors import (
    ANGLE_BY_EYE_DEG,
    ANGLE_MEASURED_DEG,
    ANGLE_NUDGED_DEG,
    Priors,
    differing,
    stated,
)
from core.language import say
from core.mount.equipment import Mount, Telescope
from core.sky.site import Air, Site

if TYPE_CHECKING:  # these bring scipy along, which the first window must not wait for
    from core.alignment.guide.judgement import Forecast
    from core.alignment.words import Advice


# What the computation is granted beforehand: by the equipment in use, and how north was set.


class NorthSet(Enum):
    """How well north of eyepiece or camera was set on the sky: one standard deviation, degrees."""

    MEASURED = ANGLE_MEASURED_DEG
    NUDGED = ANGLE_NUDGED_DEG  # the star was moved on purpose and ran along the line
    BY_EYE = ANGLE_BY_EYE_DEG


def priors_of(telescope: Telescope | None, mount: Mount | None, north_set: NorthSet) -> Priors:
    """The usual sizes, but for what is known of the tube, the drive and the reticle.

    A data sheet tells a periodic error from peak to peak, twice its amplitude.
    """
    known = {"angle_sigma_deg": north_set.value}
    if telescope is not None and telescope.flexure_arcsec_per_g is not None:
        known["flexure_arcsec_per_g"] = telescope.flexure_arcsec_per_g
    if mount is not None and mount.periodic_error_arcsec is not None:
        known["periodic_error_arcsec"] = mount.periodic_error_arcsec / 2.0
    return stated(known)


# One turn of the bolts between two axis states, and what it lets one go on knowing.

# Of a hand that turns as it was told, without seeing what it does: common practice, no source.
ADVISED_TURN = TurnAccuracy(0.1, 0.5)
# Counted turns of a bolt whose scale has been learned.
COUNTED_TURN = TurnAccuracy(0.07, 0.5)
_TINY_ARCMIN = 1.0  # a bolt turned less is not worth asking which way


class How(Enum):
    """What the turn is known from."""

    SEEN = "seen"  # the star in view showed it
    COUNTED = "counted"  # turns of a bolt whose scale is known
    ADVISED = "advised"  # the person says: as advised
    UNKNOWN = "unknown"  # turned, nobody knows how far


ACCURACY = {How.SEEN: SEEN_TURN, How.COUNTED: COUNTED_TURN, How.ADVISED: ADVISED_TURN}


@dataclass(frozen=True, eq=False)
class TurnMade:
    """`turn`: how far the axis is believed to have moved. `azimuth_turns`, `altitude_turns`: of the
    bolts, as counted, None where not. `was`: what was known before it, None for nothing. `mount`:
    key of the mount whose bolts they were, "" where none was chosen, None where it was not kept.
    `seen`: how well the star in view showed it, None where none did.
    """

    utc_s: float
    how: How
    turn: BoltTurn | None
    azimuth_turns: float | None = None
    altitude_turns: float | None = None
    was: PriorAxis | None = None
    base: Base = field(default_factory=Base)
    mount: str | None = None
    seen: SeenTurn | None = None

    @property
    def accuracy(self) -> TurnAccuracy | SeenTurn | None:
        """How well the turn is known; None for one that nobody knows."""
        return self.seen if self.seen is not None else ACCURACY.get(self.how)

    def expected(self, site: Site) -> PriorAxis | None:
        """What is known of the axis after it without looking again."""
        return self.expected_of(self.turn, site)

    def expected_of(self, turn: BoltTurn | None, site: Site) -> PriorAxis | None:
        """The same, had it been another turn."""
        accuracy = self.accuracy
        if turn is None or self.was is None or accuracy is None:
            return None
        return known_after(self.was, turn, site, self.base, accuracy)

    def other_ways(self, site: Site) -> list[tuple[str, PriorAxis]]:
        """What would be known, had both bolts ("") or the one named gone the other way.

        Empty where a star showed the turn or nothing was known before it.
        """
        if self.turn is None or self.seen is not None:
            return []
        expected = [(bolt, self.expected_of(turn, site)) for bolt, turn in _opposites(self.turn)]
        return [(bolt, known) for bolt, known in expected if known is not None]


def _opposites(turn: BoltTurn) -> list[tuple[str, BoltTurn]]:
    """As far as they were turned."""
    azimuth, altitude = turn.azimuth_arcmin, turn.altitude_arcmin
    found = [("", BoltTurn(-azimuth, -altitude))]
    if min(abs(azimuth), abs(altitude)) > _TINY_ARCMIN:
        found += [
            ("azimuth", BoltTurn(-azimuth, altitude)),
            ("altitude", BoltTurn(azimuth, -altitude)),
        ]
    return found


# Where the person stands in the procedure: stage, north in the field, and the last turn.


class KnownNorth(Enum):
    """How the readings' north stands to the sky's, as far as the person knows."""

    TRUSTED = "north is where it is read"
    UNKNOWN = "nobody knows"
    EXCHANGED = "north and south are exchanged in what is read"


# What a person does may skip a stage: these come in between without being asked for.
_BETWEEN = (
    ProcedureEvent.LOOK_AGAIN,
    ProcedureEvent.STAR_LOST,
    ProcedureEvent.NORTH_FOUND,
    ProcedureEvent.TURN_WORTHWHILE,
)


class Guide:
    """Knows no screen, disk or thread.

    `exchanged`: labels of legs of this axis state whose readings have north and south exchanged.
    `axis_state` counts from 1. `last_turn`: the turn of the bolts that began this axis state.
    """

    def __init__(self) -> None:
        self.stage = Stage.CHOOSE
        self.north = KnownNorth.TRUSTED
        self.base = Base()
        self.exchanged: set[str] = set()
        self.axis_state = 1
        self.turns_made = 0
        self.last_turn: TurnMade | None = None

    def happened(self, event: ProcedureEvent) -> None:
        """Go on to the stage that follows; raises NotNow where no way leads there."""
        for way in self._ways(event):
            stage = self.stage
            try:
                for step in way:
                    stage = after(stage, step)
            except NotNow:
                continue
            self.stage = stage
            return
        after(self.stage, event)  # raises with the sentence that fits

    @staticmethod
    def _ways(event: ProcedureEvent) -> Iterator[tuple[ProcedureEvent, ...]]:
        yield (event,)
        yield from ((step, event) for step in _BETWEEN)

    def begin_axis_state(self, made: TurnMade | None) -> None:
        """The axis has moved: nothing of the legs holds on but what the turn lets one know."""
        self.axis_state += 1
        self.exchanged = set()
        self.last_turn = made
        if made is not None:
            self.turns_made += 1

    def agree_with(self, axis_state: int, watching: str | None) -> None:
        """After a resume: what the log of nights says comes before what was kept here."""
        if self.axis_state != axis_state:
            self.axis_state, self.last_turn = axis_state, None
            self.exchanged = set()
            self.stage = Stage.CHOOSE
        if watching is not None:
            self.stage = Stage.WATCH
        elif self.stage is Stage.WATCH:
            self.stage = Stage.CHOOSE


# The state of the procedure as JSON, and back, strict about what it takes for granted.

VERSION = 1


def as_json(guide: Guide) -> dict[str, Any]:
    """What JSON can hold of it."""
    return {
        "version": VERSION,
        "stage": guide.stage.name,
        "north": guide.north.name,
        "axis_state": guide.axis_state,
        "base": [guide.base.tilt_deg, guide.base.azimuth_deg],
        "exchanged": sorted(guide.exchanged),
        "turns_made": guide.turns_made,
        "last_turn": None if guide.last_turn is None else _turn_made(guide.last_turn),
    }


def from_json(kept: Any) -> Guide:
    """A guide at its beginning where nothing usable was kept."""
    guide = Guide()
    if not isinstance(kept, dict) or kept.get("version") != VERSION:
        return guide
    try:
        guide.stage = Stage[kept["stage"]]
        guide.north = KnownNorth[kept["north"]]
        guide.axis_state = int(kept["axis_state"])
        guide.base = Base(*(float(angle) for angle in kept["base"]))
        guide.exchanged = {str(label) for label in kept["exchanged"]}
        guide.turns_made = int(kept["turns_made"])
        guide.last_turn = None if kept["last_turn"] is None else _made_turn(kept["last_turn"])
    except (KeyError, TypeError, ValueError, IndexError):
        return Guide()
    return guide


def _turn_made(made: TurnMade) -> dict[str, Any]:
    turn, was = made.turn, made.was
    return {
        "utc_s": made.utc_s,
        "how": made.how.name,
        "turn": None if turn is None else [turn.azimuth_arcmin, turn.altitude_arcmin],
        "azimuth_turns": made.azimuth_turns,
        "altitude_turns": made.altitude_turns,
        "was": None
        if was is None
        else [was.sky_arcmin.tolist(), was.covariance_arcmin2.tolist(), was.freedom],
        "base": [made.base.tilt_deg, made.base.azimuth_deg],
        "mount": made.mount,
        "seen": None if made.seen is None else list(astuple(made.seen)),
    }


def _made_turn(kept: dict[str, Any]) -> TurnMade:
    return TurnMade(
        float(kept["utc_s"]),
        How[kept["how"]],
        None if kept["turn"] is None else BoltTurn(*(float(part) for part in kept["turn"])),
        _number(kept["azimuth_turns"]),
        _number(kept["altitude_turns"]),
        None if kept["was"] is None else _knowledge(*kept["was"]),
        Base(*(float(angle) for angle in kept["base"])),
        None if kept.get("mount") is None else str(kept["mount"]),
        None if kept.get("seen") is None else SeenTurn(*(float(part) for part in kept["seen"])),
    )


def _number(kept: Any) -> float | None:
    return None if kept is None else float(kept)


def _knowledge(sky: Any, covariance: Any, freedom: Any = 1e6) -> PriorAxis:
    return PriorAxis(
        np.asarray(sky, dtype=np.float64).reshape(2),
        np.asarray(covariance, dtype=np.float64).reshape(2, 2),
        float(freedom),
    )


# What to say when the axis is not where the last turn should have brought it.

AT_MOST = 30.0  # χ² with two degrees of freedom; few readings make every one large


class Mishap(Enum):
    """What may have happened."""

    OTHER_WAY = "the bolts were turned the other way"
    MOVED = "the mount was moved"


@dataclass(frozen=True)
class Surprise:
    """`sentence` for the person."""

    mishap: Mishap
    sentence: str


def surprise(solution: Solution, made: TurnMade | None, site: Site) -> Surprise | None:
    """None while the axis is where it should be."""
    if made is None or made.turn is None or made.was is None:
        return None
    if not any(note.code is AxisNote.UNEXPECTED for note in solution.notes):
        return None
    now, told = solution.knowledge, made.expected(site)
    for bolt, other in made.other_ways(site):
        if told is not None and other.disagreement(now) < min(told.disagreement(now), AT_MOST):
            return Surprise(Mishap.OTHER_WAY, _other_way(bolt, made.was, now))
    return Surprise(
        Mishap.MOVED,
        say(
            "The axis is not where this turn should have brought it. If the tripod "
            "was knocked or moved, say so; otherwise go on, what was known before is "
            "no longer used."
        ),
    )


def _other_way(bolt: str, was: PriorAxis, now: PriorAxis) -> str:
    if not bolt:
        grew = float(np.linalg.norm(now.sky_arcmin) - np.linalg.norm(was.sky_arcmin))
        what = say("The error")
    else:
        index = 0 if bolt == "azimuth" else 1
        grew = float(abs(now.sky_arcmin[index]) - abs(was.sky_arcmin[index]))
        what = say("The azimuth error") if bolt == "azimuth" else say("The altitude error")
    if grew > 0.0:
        return say(
            "{what} grew by {size:.0f}′: that was the other direction.", what=what, size=grew
        )
    return say(
        "{what} went {size:.0f}′ past the pole: that was the other direction.",
        what=what,
        size=abs(grew),
    )


# Where the person stands in the procedure, as pages see it.

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class BoltView:
    """A bolt of the mount: what its turns taught, and its last turn (0 when unknown), signed as the
    scale has it.
    """

    scale: BoltScale | None = None
    last_turns: float = 0.0


@dataclass(frozen=True, eq=False)
class GuideView:
    """`wanted`: the turn that brings the axis to its aim, None while nobody knows;
    `wanted_width_arcmin`: 95 % half-widths of its azimuth and altitude. `seen`: how far
    the star in view says the bolts have gone; `unseen`: the sentence why it cannot.
    `star_moves_arcsec`: how far north and east that star moves by the wanted turn. `known`: all
    that is known of the axis, earlier states included; `information` (2, 2) of it, arcmin⁻².
    `star_at_arcsec`: how far it has moved so far. `bolt_book`: whose bolts these are.
    `off_arcmin`: distance of the axis from its aim, and its 95 % half-width along that way.
    """

    stage: Stage
    north: KnownNorth
    base: Base
    last_turn: TurnMade | None
    judgement: Judgement | None
    surprise: Surprise | None
    known: PriorAxis | None
    information: Floats
    wanted: BoltTurn | None
    wanted_width_arcmin: tuple[float, float] | None
    seen: BoltTurn | None
    unseen: str
    star_moves_arcsec: tuple[float, float] | None
    star_at_arcsec: tuple[float, float] | None
    azimuth_bolt: BoltView
    altitude_bolt: BoltView
    bolt_book: str
    off_arcmin: tuple[float, float] | None


def aim_on_sky(aim: Aim, site: Site, air: Air) -> Floats:
    """Where the axis is wanted (2,), arcmin on the sky from the true pole."""
    return np.array([0.0, aim.share * pole_refraction_arcmin(site, air)])


def off_by(known: PriorAxis, aim_arcmin: Floats) -> tuple[float, float]:
    """Distance from the aim on the sky and its 95 % half-width, arcmin."""
    apart = known.sky_arcmin - aim_arcmin
    distance = float(np.linalg.norm(apart))
    way = apart / distance if distance else np.array([0.0, 1.0])
    return distance, known.interval_factor * float(np.sqrt(way @ known.covariance_arcmin2 @ way))


def wanted_turn(known: PriorAxis, aim_arcmin: Floats, site: Site) -> BoltTurn:
    """The turn of both bolts that brings the axis from where it is known to be to the aim."""
    apart = aim_arcmin - known.sky_arcmin
    scale = max(float(np.cos(np.deg2rad(site.latitude_deg))), 0.02)
    return BoltTurn(float(apart[0]) / scale, float(apart[1]))


def wanted_width(known: PriorAxis, site: Site) -> tuple[float, float]:
    """The 95 % half-widths of the turn wanted, azimuth and altitude, arcmin."""
    scale = max(float(np.cos(np.deg2rad(site.latitude_deg))), 0.02)
    sigma = np.sqrt(np.diag(known.covariance_arcmin2))
    azimuth, altitude = (known.interval_factor * sigma).tolist()
    return azimuth / scale, altitude


def information_of(solution: Solution | None, before: PriorAxis | None) -> Floats:
    """What is known so far (2, 2), arcmin⁻²; zeros at the start."""
    if solution is not None:
        legs = sum(solution.information_arcmin2, np.zeros((2, 2)))
        return np.asarray(legs + solution.before_information_arcmin2)
    if before is not None:
        return np.asarray(before.information_arcmin2)
    return np.zeros((2, 2))


# Tonight's state at one instant, as pages see it.


@dataclass(frozen=True, eq=False)
class Snapshot:
    """What is known at one instant; it never changes afterwards.

    `legs`: those of the present axis state, discarded ones left out; their arrays are read-only
    views. `watching`: label of the leg under way. `solution`, `advice`, `forecast`: from the last
    computation of this axis state; `solution_is_stale` when the legs or the settings have changed
    since in more than by new readings, or when the last computation failed. `problem`: one or
    several sentences for the person, None when all is well. `guide`: where the person stands in the
    procedure. `north_set`: how well north of the eyepiece or camera was set. `priors`: what the
    computation is granted of it, the tube and the drive. `exchanged`: labels of legs of which north
    and south are read exchanged.
    """

    site: Site | None
    air: Air | None
    aim: Aim
    goal: Goal
    axis_state: int
    legs: tuple[Leg, ...]
    watching: str | None
    solution: Solution | None
    advice: Advice | None
    forecast: Forecast | None
    solution_is_stale: bool
    problem: str | None
    guide: GuideView
    north_set: NorthSet
    priors: Priors
    exchanged: frozenset[str] = frozenset()

    @property
    def target_arcmin(self) -> float:
        """How near the axis is to come, on the sky."""
        return self.goal.arcmin


# What was measured, as the text of a drift log.


def as_drift_log(snapshot: Snapshot) -> str:
    """All legs of the axis state, with the place they were measured at."""
    return write(_header(snapshot), snapshot.legs)


def _header(snapshot: Snapshot) -> Header:
    if snapshot.site is None or snapshot.air is None:
        return Header()
    return Header(
        latitude_deg=snapshot.site.latitude_deg,
        longitude_deg=snapshot.site.longitude_deg,
        elevation_m=snapshot.site.elevation_m,
        pressure_hpa=None if snapshot.air.pressure_is_assumed else snapshot.air.pressure_hpa,
        temperature_c=snapshot.air.temperature_c,
        stated_priors=differing(snapshot.priors),
    )
