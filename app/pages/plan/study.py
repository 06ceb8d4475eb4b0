"""What kind of mount the plan is for."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray
from PySide6.QtWidgets import QWidget

from app.night.notes import planned_flip, session_of
from app.night.observing import ObservingContext
from app.night.plan import (
    Evening,
    Plans,
    figure,
    limits,
    mount_kind,
    newtonian,
    night,
    observer,
    power,
    purpose,
    series,
)
from app.ui.form import Choice
from app.ui.skydisc import DomePicture, Sign, SkyMark
from app.ui.skyview import bands, contours
from app.ui.timeline import shown_span
from core.imaging.rotation import RotationTrack, track
from core.imaging.rotationdrive import Loss, losses
from core.mount.equipment import MountKind, Purpose
from core.night.checklist import (
    Checklist,
    Circumstances,
    Moments,
    OwnStep,
    Power,
    build,
    hemisphere_of,
)
from core.night.darkness import Night, Span
from core.night.eyepiece import EyeHeights, EyepiecePath, Newtonian, best_turn_deg, eyepiece_path
from core.night.flip import ExposureSeries, FlipPlan, Limits, PierSide
from core.night.plan import (
    AlignmentMoment,
    AltitudeCurve,
    PlannedTarget,
    alignment_moments,
    best,
    best_moments,
    curve,
    showpieces,
)
from core.night.setupstars import NoReferenceStars, SkySetup, choose
from core.night.timeline import TimeLine, time_line
from core.sky import catalogues, places
from core.sky.bodies import Body, Course, bodies_now, course
from core.sky.targets import Target


class MountChoice(Choice):
    def __init__(self, plans: Plans, parent: QWidget | None = None) -> None:
        super().__init__("", [], parent)
        words = {
            MountKind.GERMAN_EQUATORIAL: self.tr("German equatorial"),
            MountKind.FORK_ON_WEDGE: self.tr("Fork on a wedge"),
            MountKind.ALT_AZIMUTH: self.tr("Alt-azimuth"),
            MountKind.DOBSONIAN: self.tr("Dobsonian"),
        }
        self.setAccessibleName(self.tr("Mount"))
        for kind, word in words.items():
            self._add(self.tr("Mount"), kind.name, word)
        self._plans = plans
        self.chosen.connect(lambda name: plans.set_word("mount_kind", name))
        self.show_plans()

    def show_plans(self) -> None:
        self.show_choice(mount_kind(self._plans).name)


# What the Night plan page asks to be worked out.

ALL, MESSIER = "all", "messier"


@dataclass(frozen=True)
class PlanWish:
    """What the page keeps to itself, for one evening: Unix seconds, NaN for not said.

    `moment_utc_s`: what is looked at; the session's beginning and end.
    """

    moment_utc_s: float
    begin_utc_s: float
    end_utc_s: float


@dataclass(frozen=True, eq=False)
class PlanQuestion:
    """`list_of`: which objects the best are chosen from. `star_count`: reference stars, 2 or 3."""

    around: ObservingContext
    target: Target | None
    now_utc_s: float
    wish: PlanWish
    kind: MountKind
    lowest_deg: float
    list_of: str
    limits: Limits
    series: ExposureSeries
    newtonian: Newtonian
    observer: EyeHeights
    star_count: int
    drive_deg_per_s: float
    purpose: Purpose
    power: Power
    is_guided: bool
    cool_down_min: float
    own: tuple[OwnStep, ...]


def question(evening: Evening, wish: PlanWish, own: tuple[OwnStep, ...]) -> PlanQuestion | None:
    """None while no site is given. `own`: the person's steps of the checklist."""
    around = evening.around()
    if around is None:
        return None
    plans = evening.plans
    return PlanQuestion(
        around=around,
        target=plans.target(),
        now_utc_s=evening.now(),
        wish=wish,
        kind=mount_kind(plans),
        lowest_deg=figure(plans, "lowest_deg"),
        list_of=plans.word("list_of", MESSIER),
        limits=limits(plans),
        series=series(plans),
        newtonian=newtonian(plans),
        observer=observer(plans),
        star_count=2 if plans.word("star_count", "3") == "2" else 3,
        drive_deg_per_s=plans.number("drive_deg_per_s", 3.0),
        purpose=purpose(plans),
        power=power(plans),
        is_guided=plans.word("is_guided", "yes") == "yes",
        cool_down_min=plans.number("cool_down_min", 60.0),
        own=own,
    )


# The pointing error to expect over the sky, for the stars chosen and for a careless choice.

Floats = NDArray[np.float64]

RIM_DEG = 70.0  # from the zenith; lower the errors are not worked out
RINGS_DEG = (30.0, 60.0)
_LEVELS = (0.5, 1.0, 2.0, 3.0, 5.0, 7.0, 10.0, 15.0, 20.0, 30.0, 50.0, 100.0)


@dataclass(frozen=True, eq=False)
class ErrorMap:
    """`azimuth_deg` (n,) round to 360, `altitude_deg` (m,), `error_arcmin` (m, n)."""

    azimuth_deg: Floats
    altitude_deg: Floats
    error_arcmin: Floats

    def at(self, azimuth_deg: Floats | float, altitude_deg: Floats | float) -> Floats:
        """Straight between the places it was worked out for; the two broadcast."""
        azimuth, altitude = np.broadcast_arrays(np.mod(azimuth_deg, 360.0), altitude_deg)
        column = np.interp(azimuth, self.azimuth_deg, np.arange(len(self.azimuth_deg)))
        row = np.interp(altitude, self.altitude_deg, np.arange(len(self.altitude_deg)))
        left = np.minimum(column.astype(np.intp), len(self.azimuth_deg) - 2)
        low = np.minimum(row.astype(np.intp), len(self.altitude_deg) - 2)
        across, up = column - left, row - low
        error = self.error_arcmin
        below = error[low, left] * (1.0 - across) + error[low, left + 1] * across
        above = error[low + 1, left] * (1.0 - across) + error[low + 1, left + 1] * across
        return np.asarray(below * (1.0 - up) + above * up)


@dataclass(frozen=True, eq=False)
class ErrorMaps:
    """The same levels in both pictures, so that equal tones mean equal errors."""

    chosen: ErrorMap
    careless: ErrorMap
    chosen_picture: DomePicture
    careless_picture: DomePicture


def error_maps(setup: SkySetup, around: ObservingContext, utc_s: float) -> ErrorMaps:
    """For a worker thread."""
    chosen = _map(setup, setup.map_error_arcmin)
    careless = _map(setup, setup.map_careless_arcmin)
    low = min(float(chosen.error_arcmin.min()), float(careless.error_arcmin.min()))
    high = max(float(chosen.error_arcmin.max()), float(careless.error_arcmin.max()))
    levels = tuple(level for level in _LEVELS if low < level < high)
    marks = [
        SkyMark(s.now.azimuth_deg, s.now.altitude_deg, s.now.star.name, Sign.STAR, True)
        for s in setup.stars
    ]
    others = _careless_marks(setup.careless_names, around, utc_s)
    return ErrorMaps(
        chosen,
        careless,
        _picture(chosen, levels, around, marks),
        _picture(careless, levels, around, others),
    )


def _map(setup: SkySetup, errors: Floats) -> ErrorMap:
    azimuth = np.unique(setup.map_azimuth_deg)
    altitude = np.unique(np.round(setup.map_altitude_deg, 9))
    grid = errors.reshape(len(altitude), len(azimuth))
    return ErrorMap(np.append(azimuth, 360.0), altitude, np.column_stack([grid, grid[:, 0]]))


def _picture(
    errors: ErrorMap, levels: Sequence[float], around: ObservingContext, marks: Sequence[SkyMark]
) -> DomePicture:
    return DomePicture(
        rim_deg=RIM_DEG,
        rings_deg=RINGS_DEG,
        contours=contours(errors.at, levels, arcmin_words, RIM_DEG),
        bands=bands(errors.at, levels, RIM_DEG),
        horizon=around.horizon,
        marks=tuple(marks),
    )


def arcmin_words(error_arcmin: float) -> str:
    return f"{error_arcmin:.3g}′"


def _careless_marks(names: Sequence[str], around: ObservingContext, utc_s: float) -> list[SkyMark]:
    stars = catalogues.load_stars()
    marks = []
    for name in names:
        star = stars.find(name)
        if star is not None:
            where = places.horizontal_deg(
                *(*stars.at_epoch(star, utc_s), around.site, around.air, [utc_s])
            )
            marks.append(SkyMark(float(where[0][0]), float(where[1][0]), name, Sign.STAR))
    return marks


# Where the eyepiece of a Newtonian is through the session.

_STEP_S = 120.0


@dataclass(frozen=True, eq=False)
class EyeStudy:
    """At times (n,) of the session. `best_deg`: the turn in the rings that is in reach longest,
    with `best`, the path it gives.
    """

    utc_s: Floats
    path: EyepiecePath
    best_deg: float
    best: EyepiecePath


def eye_study(
    track: RotationTrack,
    session: Span,
    plan: FlipPlan | None,
    newtonian: Newtonian,
    observer: EyeHeights,
) -> EyeStudy | None:
    """`plan`: of a German mount; None for a fork, whose tube has no offset. None for no time."""
    times = np.arange(session[0], session[1], _STEP_S)
    if times.size < 2:
        return None
    hour_angle = np.interp(times, track.utc_s, track.hour_angle_deg)
    tube = newtonian if plan is not None else replace(newtonian, tube_offset_m=0.0)
    where = hour_angle, track.declination_deg, track.site.latitude_deg
    sides = _sides(times, plan)
    turn = best_turn_deg(*where, tube, sides, observer)
    turned = replace(tube, turned_deg=turn)
    return EyeStudy(
        times,
        eyepiece_path(*where, tube, sides, observer),
        turn,
        eyepiece_path(*where, turned, sides, observer),
    )


def _sides(times: Floats, plan: FlipPlan | None) -> Floats:
    """+1 with the tube west of the pier, −1 east of it."""
    if plan is None or plan.begins_on is None:
        return np.ones_like(times)
    sides = np.full_like(times, 1.0 if plan.begins_on is PierSide.WEST else -1.0)
    for flip in plan.interruptions:
        sides[times >= flip.turns_utc_s] *= -1.0
    return sides


# What a night holds whatever the target: darkness, Moon, alignment stars, the best objects.

STEP_S = 120.0
ROUND_S = 600.0
MOST_BEST = 30


@dataclass(frozen=True, eq=False)
class NightSky:
    """`moon` at the times `utc_s` (n,)."""

    night: Night
    utc_s: Floats
    moon: Course
    alignment: tuple[AlignmentMoment, ...]


def night_sky(around: ObservingContext, now_utc_s: float) -> NightSky:
    """Remembered for some minutes; for worker threads."""
    return _night_sky(around, round(now_utc_s / ROUND_S))


@lru_cache(maxsize=4)
def _night_sky(around: ObservingContext, rounded: int) -> NightSky:
    tonight = night(around.site, rounded * ROUND_S)
    begin, end = shown_span(tonight)
    times = np.arange(begin, end + STEP_S, STEP_S)
    stars = catalogues.load_stars()
    clear = around.horizon.is_clear
    moments = best_moments(alignment_moments(tonight, stars, around.air, clear))
    return NightSky(tonight, times, course(Body.MOON, around.site, times), tuple(moments))


@lru_cache(maxsize=8)
def best_placed(
    around: ObservingContext, rounded: int, lowest_deg: float, list_of: str
) -> tuple[PlannedTarget, ...]:
    """The best of Messier's objects or of all bright ones."""
    targets = showpieces(catalogues.load_deep_sky())
    if list_of == MESSIER:
        targets = [target for target in targets if target.name.startswith("M ")]
    tonight = _night_sky(around, rounded).night
    found = best(targets, tonight, around.air, around.horizon, lowest_deg, MOST_BEST)
    return tuple(found)


# Everything the Night plan page shows, worked out beside the window's thread.


@dataclass(frozen=True, eq=False)
class TargetNight:
    """The target's night. `session`: from when to when it is exposed or looked at; None where it
    is never clear in the dark. `problem`: a sentence when the flip cannot be planned, else empty.
    """

    curve: AltitudeCurve
    fixed: Target
    track: RotationTrack
    losses: tuple[Loss, ...]
    session: Span | None
    flip: FlipPlan | None
    problem: str


@dataclass(frozen=True, eq=False)
class PlanStudy:
    """`setup` at `moment_utc_s`, or why there is none."""

    question: PlanQuestion
    sky: NightSky
    moment_utc_s: float
    aim: TargetNight | None
    line: TimeLine
    best: tuple[PlannedTarget, ...]
    best_problem: str
    setup: SkySetup | None
    setup_problem: str
    errors: ErrorMaps | None
    eye: EyeStudy | None
    checklist: Checklist

    @property
    def night(self) -> Night:
        return self.sky.night


def study(asked: PlanQuestion) -> PlanStudy:
    """For a worker thread."""
    sky = night_sky(asked.around, asked.now_utc_s)
    aim = None if asked.target is None else _aim(asked, asked.target, sky)
    moment = _moment(asked, sky.night)
    setup, problem = _setup(asked, moment)
    best, no_best = _best(asked)
    return PlanStudy(
        question=asked,
        sky=sky,
        moment_utc_s=moment,
        aim=aim,
        line=_line(sky, aim),
        best=best,
        best_problem=no_best,
        setup=setup,
        setup_problem=problem,
        errors=None if setup is None else error_maps(setup, asked.around, moment),
        eye=_eye(asked, aim),
        checklist=_checklist(asked, sky, aim),
    )


def _best(asked: PlanQuestion) -> tuple[tuple[PlannedTarget, ...], str]:
    """The best placed, or a sentence why their table cannot be read."""
    rounded = round(asked.now_utc_s / ROUND_S)
    try:
        return best_placed(asked.around, rounded, asked.lowest_deg, asked.list_of), ""
    except RuntimeError as problem:
        return (), str(problem)


def _moment(asked: PlanQuestion, tonight: Night) -> float:
    """The one picked; else now in the dark; else when it gets dark."""
    if tonight.begin_utc_s <= asked.wish.moment_utc_s <= tonight.end_utc_s:
        return asked.wish.moment_utc_s
    dark = tonight.usable_spans
    if not dark or any(a <= asked.now_utc_s <= b for a, b in dark):
        return asked.now_utc_s
    return dark[0][0]


def _aim(asked: PlanQuestion, target: Target, sky: NightSky) -> TargetNight:
    around, tonight = asked.around, sky.night
    seen = curve(
        *(target, around.site, around.air, sky.utc_s, around.horizon),
        lowest_deg=asked.lowest_deg,
        moon=sky.moon,
    )
    fixed = target.held_still(around.site, tonight.middle_utc_s)
    path = track(fixed.ra_deg, fixed.dec_deg, around.site, around.air, sky.utc_s)
    upright = not asked.kind.is_equatorial
    lost = losses(path, asked.drive_deg_per_s) if upright else []
    session = session_of(seen, tonight, asked.wish.begin_utc_s, asked.wish.end_utc_s)
    plan, problem = planned_flip(fixed, around, session, asked.kind, asked.limits, asked.series)
    return TargetNight(seen, fixed, path, tuple(lost), session, plan, problem)


def _line(sky: NightSky, aim: TargetNight | None) -> TimeLine:
    """Names are left out of the texts: the row or the list says whose it is."""
    if aim is None:
        return time_line(sky.night, alignment=sky.alignment)
    nameless = replace(aim.curve, target=replace(aim.curve.target, name=""))
    if aim.curve.target.body is not None:
        nameless = replace(nameless, target=replace(aim.fixed, name=""))
    flips = [] if aim.flip is None else [("", aim.flip)]
    lost = [("", loss) for loss in aim.losses]
    return time_line(sky.night, [nameless], flips, lost, sky.alignment)


def _setup(asked: PlanQuestion, moment_utc_s: float) -> tuple[SkySetup | None, str]:
    around = asked.around
    try:
        setup = choose(
            *(catalogues.load_stars(), around.site, around.air, moment_utc_s, asked.kind),
            asked.star_count,
            bodies=bodies_now(around.site, around.air, moment_utc_s),
            clear=around.horizon.is_clear,
        )
    except NoReferenceStars as problem:
        return None, str(problem)
    return setup, ""


def _checklist(asked: PlanQuestion, sky: NightSky, aim: TargetNight | None) -> Checklist:
    """Timed back from the session's beginning."""
    session = None if aim is None else aim.session
    plan = None if aim is None else aim.flip
    flips = () if plan is None else plan.interruptions
    circumstances = Circumstances(
        *(asked.purpose, asked.kind, asked.power),
        hemisphere_of(asked.around.site.latitude_deg),
        moon_lit=_moon_lit(sky),
        is_guided=asked.is_guided,
        needs_flip=bool(flips),
        cool_down_min=asked.cool_down_min,
    )
    moments = Moments.of(
        sky.night,
        None if session is None else session[0],
        None if session is None else session[1],
        flips[0].turns_utc_s if flips else None,
    )
    return build(circumstances, moments, asked.own)


def _moon_lit(sky: NightSky) -> float:
    """The lit share of its disc if it is up while it is dark enough to work, else 0."""
    times = sky.utc_s
    dark = np.zeros(len(times), dtype=bool)
    for begin, end in sky.night.usable_spans:
        dark |= (times >= begin) & (times <= end)
    return sky.night.moon_lit if np.any(sky.moon.true_altitude_deg[dark] > 0.0) else 0.0


def _eye(asked: PlanQuestion, aim: TargetNight | None) -> EyeStudy | None:
    if aim is None or aim.session is None or not asked.kind.is_equatorial:
        return None
    plan = aim.flip if asked.kind is MountKind.GERMAN_EQUATORIAL else None
    return eye_study(aim.track, aim.session, plan, asked.newtonian, asked.observer)
