"""Whole alignments by simulated persons: the guided procedure, and the classical method by hand.

Both meet the same nights: axis errors, bolts and seeing from the same seeds. Stars drift by the
exact model; seeing wanders with 0.6″ rms per 2 s reading and 2 s correlation time (common practice,
no source). Every turn of a bolt misses by 10 % (normal), and each bolt has 1′ of play.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from core.alignment.adjustment import Base, Turn, TurnAccuracy, known_after
from core.alignment.claim import Claim, claim
from core.alignment.driftlog import Leg
from core.alignment.expectation import Watching, direction_shown
from core.alignment.geometry import ARCMIN_PER_RAD, sky_error_rad
from core.alignment.judgement import Next, chance_within, judge
from core.alignment.knowledge import AxisKnowledge
from core.alignment.solution import Solution, solve
from core.alignment.starchoice import rank
from core.alignment.steering import SEEN_TURN
from core.alignment.track import Track
from core.sky.catalogue import StarNow, load
from core.sky.site import Air, Site
from tests.truth.night import wandering

TARGET_ARCMIN, LONGEST_MIN = 1.0, 90.0
NOISE_ARCSEC, INTERVAL_S, MEMORY_S = 0.6, 2.0, 2.0
HAND_ERROR, PLAY_ARCMIN, OVERSHOOT_ARCMIN = 0.1, 1.0, 2.5
BLIND_TURN = TurnAccuracy(0.1, 0.3)
POLE = np.zeros(2)


@dataclass
class Night:
    """Hidden truth; `first_within_min` is the watching time when a turn first met the target."""

    seed: int
    pressure_hpa: float = 980.0
    watched_min: float = 0.0
    first_within_min: float | None = None
    turns: int = 0
    claims: int = 0
    wrong_ways: int = 0
    rng: np.random.Generator = field(init=False)

    def __post_init__(self) -> None:
        self.rng = np.random.default_rng(self.seed)
        latitude = self.rng.choice([-1.0, 1.0]) * self.rng.uniform(20.0, 60.0)
        self.site = Site(latitude, self.rng.uniform(-180.0, 180.0), 300.0)
        self.air = Air(self.pressure_hpa)
        self.axis_arcmin = self.rng.uniform(-60.0, 60.0, 2)
        self.utc_s = 1.79e9 + self.rng.uniform(0.0, 3e7)
        self.slack_arcmin = self.rng.uniform(0.0, PLAY_ARCMIN, 2)
        self.cosine = float(np.cos(np.deg2rad(latitude)))

    @property
    def sky_error_arcmin(self) -> float:
        azimuth, altitude = self.axis_arcmin / ARCMIN_PER_RAD
        return sky_error_rad(np.deg2rad(self.site.latitude_deg), azimuth, altitude) * ARCMIN_PER_RAD

    def up(self) -> list[StarNow]:
        return load().up_now(self.site, self.air, self.utc_s, 20.0, 400)

    def watch(self, now: StarNow, label: str, minutes: float) -> Leg:
        """All readings one could take of the star; the caller counts what it uses."""
        ra_deg, dec_deg = load().at_epoch(now.star, self.utc_s)
        utc_s = self.utc_s + np.arange(0.0, minutes * 60.0, INTERVAL_S)
        blank = Leg(label, ra_deg, dec_deg, utc_s, np.zeros_like(utc_s))
        track = Track.of(blank, self.site, self.air)
        north = track.north_arcsec(utc_s, self.axis_arcmin / ARCMIN_PER_RAD)
        seeing = wandering(self.rng, utc_s.size, INTERVAL_S, MEMORY_S, NOISE_ARCSEC)
        return Leg(label, ra_deg, dec_deg, utc_s, north + seeing)

    def pass_time(self, minutes: float) -> None:
        self.watched_min += minutes
        self.utc_s += minutes * 60.0

    def move(self, bolt: int, wanted_arcmin: float) -> None:
        """One hand movement: misses by a tenth, and takes up the play first."""
        real = wanted_arcmin * (1.0 + HAND_ERROR * self.rng.normal())
        position = self.slack_arcmin[bolt] + real
        self.slack_arcmin[bolt] = np.clip(position, 0.0, PLAY_ARCMIN)
        self.axis_arcmin[bolt] += position - self.slack_arcmin[bolt]

    def note_turn(self) -> None:
        self.turns += 1
        self.utc_s += 60.0
        if self.first_within_min is None and self.sky_error_arcmin < TARGET_ARCMIN:
            self.first_within_min = self.watched_min


def cut(leg: Leg, number: int) -> Leg:
    return Leg(leg.label, leg.ra_deg, leg.dec_deg, leg.utc_s[:number], leg.north_arcsec[:number])


def approach(night: Night, wanted_arcmin: np.ndarray) -> None:
    """Both bolts, each finishing in the same sense so that the play is always taken up."""
    for bolt, wanted in enumerate(wanted_arcmin):
        if wanted < 0.0:
            night.move(bolt, wanted - OVERSHOOT_ARCMIN)
            night.move(bolt, OVERSHOOT_ARCMIN)
        elif wanted > 0.0:
            night.move(bolt, wanted)


def guided(seed: int, steered: bool) -> Night:
    """The program's procedure. `steered`: the star in view shows how far the bolts have gone."""
    night = Night(seed)
    accuracy = SEEN_TURN if steered else BLIND_TURN
    before: AxisKnowledge | None = None
    legs: list[Leg] = []
    information = np.zeros((2, 2))
    while night.watched_min < LONGEST_MIN:
        star = rank(night.up(), night.site, information, Watching(NOISE_ARCSEC), TARGET_ARCMIN)[0]
        leg, solution, step = _watch(night, star.now, legs, before, accuracy)
        legs.append(leg)
        information = sum(solution.information_arcmin2, solution.before_information_arcmin2)
        if step is Next.GOOD_ENOUGH:
            break
        if step is Next.TURN:
            before = _turn(night, solution, accuracy, steered)
            legs, information = [], np.linalg.inv(before.covariance_arcmin2)
            if chance_within(before, POLE, TARGET_ARCMIN) >= 0.95:
                break
    return night


def _watch(
    night: Night,
    now: StarNow,
    legs: list[Leg],
    before: AxisKnowledge | None,
    accuracy: TurnAccuracy,
) -> tuple[Leg, Solution, Next]:
    whole = night.watch(now, f"{night.watched_min:.2f}", 28.0)
    shown = direction_shown(now.hour_angle_deg, night.site.latitude_deg)
    shown = shown / np.linalg.norm(shown)
    number = 15
    while True:
        solution = solve([*legs, cut(whole, number)], night.site, night.air, before)
        step = judge(solution.knowledge, shown, POLE, TARGET_ARCMIN, accuracy).next
        if step is not Next.WATCH_ON or number + 8 > whole.utc_s.size:
            break
        number += 8
    night.pass_time(number * INTERVAL_S / 60.0)
    night.utc_s += 60.0  # slewing to the next star
    return cut(whole, number), solution, step


def _turn(night: Night, solution: Solution, accuracy: TurnAccuracy, steered: bool) -> AxisKnowledge:
    scale = np.array([night.cosine, 1.0])
    known = solution.knowledge
    wanted = -known.sky_arcmin / scale
    half_width = 1.96 * np.sqrt(np.diag(known.covariance_arcmin2)) / scale
    pairs = zip(wanted, half_width, strict=True)
    claimed = np.array([claim(*pair) is Claim.SURE for pair in pairs])
    night.claims += int(np.sum(claimed))
    night.wrong_ways += int(np.sum(claimed & (np.sign(wanted) == np.sign(night.axis_arcmin))))
    stood = night.axis_arcmin.copy()
    approach(night, wanted)
    seen = wanted
    if steered:
        reading = 1.0 + accuracy.relative * night.rng.normal(size=2)
        seen = (night.axis_arcmin - stood) * reading
        approach(night, np.where(np.abs(wanted - seen) > 0.1, wanted - seen, 0.0))
        seen = (night.axis_arcmin - stood) * reading + 0.05 * night.rng.normal(size=2)
    night.note_turn()
    return known_after(known, Turn(*seen), night.site, Base(), accuracy)


def classical(seed: int, pressure_hpa: float = 980.0) -> Night:
    """Five minutes on a star, turn by the 3.8 rule, repeat until no drift is seen; then the other.

    Meridian first, then the east; once round again if the first is spoilt. A drift is seen when it
    exceeds 1″ over the five minutes read at the ends (means of 10 s). The rule knows no refraction,
    so under real air it ends minutes of arc from the true pole; no pressure is kinder to it.
    """
    night = Night(seed, pressure_hpa)
    for bolt in (0, 1, 0, 1):
        for _ in range(8):
            drift = _drift_by_eye(night, bolt)
            if abs(drift) < 0.2 or night.watched_min >= LONGEST_MIN:
                break
            error = 3.81 * drift / (night.cosine if bolt == 0 else 1.0)
            way = 1.0 if bolt == 0 else np.sign(night.site.latitude_deg)
            # On the meridian a southward drift: axis at too great an azimuth. In the east a
            # northward drift: too high in the north, too low in the south.
            night.move(bolt, error if bolt == 0 else -way * error)
            night.note_turn()
    return night


def _drift_by_eye(night: Night, bolt: int) -> float:
    """Arcsec per minute over five minutes, from the means of the first and the last ten seconds."""
    wanted_deg = 0.0 if bolt == 0 else -75.0
    fit = [now for now in night.up() if abs(now.star.dec_deg) < 40.0]
    best = min(fit, key=lambda now: abs(now.hour_angle_deg - wanted_deg))
    leg = night.watch(best, "by hand", 5.0)
    night.pass_time(5.0)
    ends = leg.north_arcsec[-5:].mean() - leg.north_arcsec[:5].mean()
    return float(ends) / ((leg.utc_s[-5:].mean() - leg.utc_s[:5].mean()) / 60.0)


def floor_minutes(chance: float) -> float:
    """Watching time at which even the Cramér-Rao bound leaves this chance of meeting the target.

    Two stars across, the hand perfect: σ² = 12 σ_n² c / T³ per axis, radius after Rayleigh.
    """
    sigma_arcmin = TARGET_ARCMIN / np.sqrt(-2.0 * np.log(1.0 - chance))
    rate_variance_1min = float(Watching(NOISE_ARCSEC, MEMORY_S).rate_variance(1.0, 90.0))
    return 2.0 * float((rate_variance_1min / (0.26252 * sigma_arcmin) ** 2) ** (1.0 / 3.0))
