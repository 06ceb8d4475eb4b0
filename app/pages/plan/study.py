"""Everything the Night plan page shows, worked out beside the window's thread."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np

from app.pages.plan.errormaps import ErrorMaps, error_maps
from app.pages.plan.eyestudy import EyeStudy, eye_study
from app.pages.plan.nightsky import ROUND_S, NightSky, best_placed, night_sky
from app.pages.plan.question import Question
from app.session.flipping import planned_flip, session_of
from core.imaging.rotation import Track, track
from core.imaging.rotationdrive import Loss, losses
from core.mount.equipment import MountKind
from core.night.checklist import Checklist, Circumstances, Moments, build, hemisphere_of
from core.night.darkness import Night, Span
from core.night.flip import FlipPlan
from core.night.plan import Curve, Placed, curve
from core.night.setupstars import NoReferenceStars, SkySetup, choose
from core.night.timeline import TimeLine, time_line
from core.sky import catalogues
from core.sky.bodies import bodies_now
from core.sky.targets import Target


@dataclass(frozen=True, eq=False)
class Aim:
    """The target's night. `session`: from when to when it is exposed or looked at; None where it
    is never clear in the dark. `problem`: a sentence when the flip cannot be planned, else empty.
    """

    curve: Curve
    fixed: Target
    track: Track
    losses: tuple[Loss, ...]
    session: Span | None
    flip: FlipPlan | None
    problem: str


@dataclass(frozen=True, eq=False)
class Study:
    """`setup` at `moment_utc_s`, or why there is none."""

    question: Question
    sky: NightSky
    moment_utc_s: float
    aim: Aim | None
    line: TimeLine
    best: tuple[Placed, ...]
    best_problem: str
    setup: SkySetup | None
    setup_problem: str
    errors: ErrorMaps | None
    eye: EyeStudy | None
    checklist: Checklist

    @property
    def night(self) -> Night:
        return self.sky.night


def study(asked: Question) -> Study:
    """For a worker thread."""
    sky = night_sky(asked.around, asked.now_utc_s)
    aim = None if asked.target is None else _aim(asked, asked.target, sky)
    moment = _moment(asked, sky.night)
    setup, problem = _setup(asked, moment)
    best, no_best = _best(asked)
    return Study(
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


def _best(asked: Question) -> tuple[tuple[Placed, ...], str]:
    """The best placed, or a sentence why their table cannot be read."""
    rounded = round(asked.now_utc_s / ROUND_S)
    try:
        return best_placed(asked.around, rounded, asked.lowest_deg, asked.list_of), ""
    except RuntimeError as problem:
        return (), str(problem)


def _moment(asked: Question, tonight: Night) -> float:
    """The one picked; else now in the dark; else when it gets dark."""
    if tonight.begin_utc_s <= asked.wish.moment_utc_s <= tonight.end_utc_s:
        return asked.wish.moment_utc_s
    dark = tonight.usable_spans
    if not dark or any(a <= asked.now_utc_s <= b for a, b in dark):
        return asked.now_utc_s
    return dark[0][0]


def _aim(asked: Question, target: Target, sky: NightSky) -> Aim:
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
    return Aim(seen, fixed, path, tuple(lost), session, plan, problem)


def _line(sky: NightSky, aim: Aim | None) -> TimeLine:
    """Names are left out of the texts: the row or the list says whose it is."""
    if aim is None:
        return time_line(sky.night, alignment=sky.alignment)
    nameless = replace(aim.curve, target=replace(aim.curve.target, name=""))
    if aim.curve.target.body is not None:
        nameless = replace(nameless, target=replace(aim.fixed, name=""))
    flips = [] if aim.flip is None else [("", aim.flip)]
    lost = [("", loss) for loss in aim.losses]
    return time_line(sky.night, [nameless], flips, lost, sky.alignment)


def _setup(asked: Question, moment_utc_s: float) -> tuple[SkySetup | None, str]:
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


def _checklist(asked: Question, sky: NightSky, aim: Aim | None) -> Checklist:
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


def _eye(asked: Question, aim: Aim | None) -> EyeStudy | None:
    if aim is None or aim.session is None or not asked.kind.is_equatorial:
        return None
    plan = aim.flip if asked.kind is MountKind.GERMAN_EQUATORIAL else None
    return eye_study(aim.track, aim.session, plan, asked.newtonian, asked.observer)
