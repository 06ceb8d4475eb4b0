"""Whole alignments by simulated persons: the guided procedure, and the classical method by hand."""

from __future__ import annotations

import numpy as np

from core.alignment.axis.evidence import PriorAxis
from core.alignment.axis.solution import Solution, solve
from core.alignment.drift.geometry import axis_north_end, observed_direction
from core.alignment.driftlog.records import Leg
from core.alignment.goal import SideConfidence, side_confidence
from core.alignment.guide.bolts import (
    SEEN_TURN,
    Base,
    BoltTurn,
    TurnAccuracy,
    TurnUnseen,
    known_after,
    seen_accuracy,
    turn_seen,
)
from core.alignment.guide.judgement import Next, judge
from core.alignment.guide.nextstar import (
    RankedStar,
    Watching,
    direction_shown,
    flexure_arcmin,
    rank,
)
from core.alignment.priors import USUAL
from core.sky.catalogues import StarNow, load_stars
from core.sky.places import hour_angle_and_declination
from core.sky.refraction import Refraction
from core.units import ARCMIN_PER_RAD
from tests.bench.simulated_nights import (
    BOTH_BOLTS_S,
    LONGEST_MIN,
    NOISE_ARCSEC,
    ON_A_STAR_MIN,
    REAL,
    TARGET_ARCMIN,
    TOUCH_S,
    Night,
    Trouble,
)
from tests.truth.bolts import ALTITUDE, AZIMUTH
from tests.truth.imagemotion import READING_S

POLE = np.zeros(2)
FIRST_READINGS, MORE_READINGS = 15, 8
ANCHOR_S, NEWEST_S = 8.0, 4.0  # five readings before a turn, three after it
OVERSHOOT_ARCMIN = 3.5  # of a blind turn back, so that both end in the same sense
NEAR_ENOUGH_ARCMIN, MOST_TOUCHES = 0.1, 12


def guided(seed: int, steered: bool, trouble: Trouble = REAL) -> Night:
    """The program's procedure. `steered`: a camera, whose star shows how far the bolts have gone;
    else a reticle read in declination only, and bolts turned as advised."""
    night = Night(seed, trouble)
    accuracy = SEEN_TURN if steered else TurnAccuracy()
    before: PriorAxis | None = None
    legs: list[Leg] = []
    information = np.zeros((2, 2))
    while night.watched_min < LONGEST_MIN:
        night.take(_ranked(night, information, steered)[0].now)
        leg, solution, step = _watch(night, legs, before, accuracy, steered)
        legs.append(leg)
        information = sum(solution.information_arcmin2, solution.before_information_arcmin2)
        if step is Next.TURN:
            before = _turn(night, solution, steered)
            legs, information = [], np.linalg.inv(before.covariance_arcmin2)
            step = _judged(night, before, None, accuracy)
        if step is Next.GOOD_ENOUGH:
            night.claimed = True
            break
    return night


def _judged(
    night: Night,
    known: PriorAxis,
    shown: np.ndarray | None,
    accuracy: TurnAccuracy,
    watched_min: float = 0.0,
) -> Next:
    flexure = flexure_arcmin(USUAL, night.site.latitude_deg)
    return judge(known, shown, POLE, TARGET_ARCMIN, accuracy, flexure, watched_min).next


def _ranked(night: Night, information: np.ndarray, with_east: bool) -> list[RankedStar]:
    """The program's list of stars, the best first."""
    watching = Watching(NOISE_ARCSEC, east_is_seen=with_east)
    return rank(night.up(), night.site, information, watching, TARGET_ARCMIN)


def _watch(
    night: Night,
    legs: list[Leg],
    before: PriorAxis | None,
    accuracy: TurnAccuracy,
    steered: bool,
) -> tuple[Leg, Solution, Next]:
    """Watch the star in view until the program wants something else."""
    whole = _leg(night, ON_A_STAR_MIN, steered)
    shown = direction_shown(night.view.now.hour_angle_deg, night.site.latitude_deg)
    shown = shown / np.linalg.norm(shown)
    number = FIRST_READINGS
    while True:
        leg = _first(whole, number)
        solution = solve([*legs, leg], night.site, night.air, before)
        watched_min = number * READING_S / 60.0
        step = _judged(night, solution.knowledge, shown, accuracy, watched_min)
        more = max(MORE_READINGS, number // 12)
        if step is not Next.WATCH_ON or number + more > whole.utc_s.size:
            break
        number += more
    night.watch_on(watched_min)
    return leg, solution, step


def _leg(night: Night, minutes: float, with_east: bool) -> Leg:
    """All readings one could take of the star in view from now on."""
    utc_s, offsets = night.readings(night.utc_s, night.utc_s + minutes * 60.0)
    place = load_stars().at_epoch(night.view.now.star, night.utc_s)
    east = offsets[:, 0] if with_east else None
    return Leg(f"{night.watched_min:.2f}", *place, utc_s, offsets[:, 1], east)


def _first(leg: Leg, number: int) -> Leg:
    east = None if leg.east_arcsec is None else leg.east_arcsec[:number]
    place = leg.label, leg.ra_deg, leg.dec_deg
    return Leg(*place, leg.utc_s[:number], leg.north_arcsec[:number], east)


def _turn(night: Night, solution: Solution, steered: bool) -> PriorAxis:
    """Both bolts, and what the program then knows."""
    scale = np.array([np.cos(np.deg2rad(night.site.latitude_deg)), 1.0])
    known = solution.knowledge
    wanted = -known.sky_arcmin / scale
    _note_sides(night, wanted, known, scale)
    seen = None
    if steered and _find_showing_star(night, known):
        star = _star_and_axis(night, known, night.view.now, night.utc_s)
        seen = _steer(night, known, wanted)
    else:
        _approach(night, wanted)
    night.end_turn()
    if seen is None:
        return known_after(known, BoltTurn(*wanted), night.site, Base(), TurnAccuracy())
    accuracy = seen_accuracy(*star, BoltTurn(*seen), night.site, Base(), USUAL)
    return known_after(known, BoltTurn(*seen), night.site, Base(), accuracy)


def _note_sides(night: Night, wanted: np.ndarray, known: PriorAxis, scale: np.ndarray) -> None:
    factor = known.interval_factor
    half_width = factor * np.sqrt(np.diag(known.covariance_arcmin2)) / scale
    pairs = zip(wanted, half_width, strict=True)
    sure = np.array([side_confidence(*pair, factor) is SideConfidence.SURE for pair in pairs])
    night.sides += int(np.sum(sure))
    wrong = np.sign(wanted) == np.sign(night.telescope.mount.errors_arcmin)
    night.wrong_sides += int(np.sum(sure & wrong))


def _approach(night: Night, wanted: np.ndarray) -> None:
    """As advised, blind: each bolt finishes in the same sense, so that the play is taken up."""
    night.utc_s += BOTH_BOLTS_S
    for bolt, arcmin in enumerate(wanted):
        if arcmin < 0.0:
            night.turn(bolt, arcmin - OVERSHOOT_ARCMIN)
            night.turn(bolt, OVERSHOOT_ARCMIN)
        elif arcmin > 0.0:
            night.turn(bolt, arcmin)


def _find_showing_star(night: Night, known: PriorAxis) -> bool:
    """Have a star in view that shows the turn, going down the program's list if need be."""
    if _shows(night, known, night.view.now):
        return True
    information = np.linalg.inv(known.covariance_arcmin2)
    for choice in _ranked(night, information, with_east=True):
        if _shows(night, known, choice.now):
            night.take(choice.now)
            night.utc_s += ANCHOR_S
            night.stars_for_turning += 1
            return True
    return False


def _shows(night: Night, known: PriorAxis, now: StarNow) -> bool:
    return _seen(night, known, now, night.utc_s, np.zeros(2)) is not None


def _steer(night: Night, known: PriorAxis, wanted: np.ndarray) -> np.ndarray | None:
    """Touch the bolts until the program, from the star in view, says they have gone far enough.

    The turn (2,) as the program saw it; None where the star shows it no longer.
    """
    begun_s, anchor = night.utc_s, _places(night, ANCHOR_S).mean(axis=0)
    seen = np.zeros(2)
    for touch in range(MOST_TOUCHES):
        left = wanted - seen
        if np.all(np.abs(left) <= NEAR_ENOUGH_ARCMIN):
            break
        night.touches += 1
        night.utc_s += TOUCH_S if touch else BOTH_BOLTS_S
        for bolt in (ALTITUDE, AZIMUTH):
            if abs(left[bolt]) > NEAR_ENOUGH_ARCMIN:
                night.turn(bolt, left[bolt])
        night.utc_s += NEWEST_S
        shift = np.median(_places(night, NEWEST_S), axis=0) - anchor
        seen = _seen(night, known, night.view.now, begun_s, shift)
        if seen is None:
            return None
    return seen


def _seen(
    night: Night, known: PriorAxis, now: StarNow, begun_s: float, shift_arcsec: np.ndarray
) -> np.ndarray | None:
    """The program's answer to a star's shift (2,) east and north since the turn was begun."""
    shift = float(shift_arcsec[1]), float(shift_arcsec[0])
    try:
        turn = turn_seen(*_star_and_axis(night, known, now, begun_s), shift, night.site, Base())
    except TurnUnseen:
        return None
    return np.array([turn.azimuth_arcmin, turn.altitude_arcmin])


def _star_and_axis(
    night: Night, known: PriorAxis, now: StarNow, begun_s: float
) -> tuple[np.ndarray, np.ndarray]:
    """Where the program believes the star and the north end of the axis to be, before a turn."""
    latitude = float(np.deg2rad(night.site.latitude_deg))
    ra_deg, dec_deg = load_stars().at_epoch(now.star, begun_s)
    place = hour_angle_and_declination(ra_deg, dec_deg, night.site, np.array([begun_s]))
    star = observed_direction(*place, latitude, Refraction.of(night.air))[0]
    azimuth, altitude = known.sky_arcmin / ARCMIN_PER_RAD
    axis = axis_north_end(latitude, float(azimuth) / np.cos(latitude), float(altitude))
    return star, axis


def _places(night: Night, seconds: float) -> np.ndarray:
    """The last readings (n, 2), east and north."""
    return night.readings(night.utc_s - seconds, night.utc_s)[1]


def classical(seed: int, trouble: Trouble = REAL, pressure_hpa: float = 980.0) -> Night:
    """Five minutes on a star, turn by the 3.8 rule, repeat until no drift is seen; then the other.

    Meridian first, then the east; once round again if the first is spoilt. A drift is seen when it
    exceeds 1″ over the five minutes read at the ends (means of 10 s). The rule knows no refraction,
    so under real air it ends minutes of arc from the true pole; no pressure is kinder to it.
    """
    night = Night(seed, trouble, pressure_hpa)
    scale = float(np.cos(np.deg2rad(night.site.latitude_deg)))
    for bolt in (AZIMUTH, ALTITUDE, AZIMUTH, ALTITUDE):
        for _ in range(8):
            drift = _drift_by_eye(night, bolt)
            if abs(drift) < 0.2 or night.watched_min >= LONGEST_MIN:
                break
            # On the meridian a southward drift: axis at too great an azimuth. In the east a
            # northward drift: too high in the north, too low in the south.
            way = 1.0 / scale if bolt == AZIMUTH else -np.sign(night.site.latitude_deg)
            night.utc_s += BOTH_BOLTS_S
            night.turn(bolt, 3.81 * drift * way)
            night.end_turn()
    night.claimed = night.watched_min < LONGEST_MIN
    return night


def _drift_by_eye(night: Night, bolt: int) -> float:
    """Arcsec per minute over five minutes, from the means of the first and the last ten seconds."""
    wanted_deg = 0.0 if bolt == AZIMUTH else -75.0
    fit = [now for now in night.up() if abs(now.star.dec_deg) < 40.0]
    night.take(min(fit, key=lambda now: abs(now.hour_angle_deg - wanted_deg)))
    leg = _leg(night, 5.0, with_east=False)
    night.watch_on(5.0)
    ends = leg.north_arcsec[-5:].mean() - leg.north_arcsec[:5].mean()
    return float(ends) / ((leg.utc_s[-5:].mean() - leg.utc_s[:5].mean()) / 60.0)
