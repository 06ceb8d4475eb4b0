"""Hidden nights for simulated persons: a sky, a mount and an air that share nothing with `core`.

Sizes of the troubles are common practice without a source unless tests/truth names one. The
program is told the site and the air as they are, and nothing of the rest.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from core.sky.catalogues import StarNow, load_stars
from core.sky.site import Air, Site
from tests.truth import imagemotion
from tests.truth.bolts import Bolt, BoltedMount, leaning
from tests.truth.imagemotion import READING_S
from tests.truth.sky import Sky, star_of
from tests.truth.telescope import Drive, Telescope

NOISE_ARCSEC = 0.6
TARGET_ARCMIN, LONGEST_MIN = 1.0, 90.0
SLEW_S, BOTH_BOLTS_S, TOUCH_S = 60.0, 60.0, 16.0
ON_A_STAR_MIN = 28.0
_IN_VIEW_MIN = ON_A_STAR_MIN + 8.0  # with a turn of the bolts after it


@dataclass(frozen=True)
class Trouble:
    """How bad nights may be: largest values of even spreads, except where said.

    `fast` and `wander_arcsec`: one standard deviation; `sag_arcsec`: the middle of a log-normal
    spread by a factor of 1.6, of the tube's yielding to one g, for each of its six ways.
    """

    tilt_deg: float = 3.0
    angle_deg: float = 1.0
    play_arcmin: float = 3.0
    periodic_arcsec: float = 10.0
    fast: float = 2e-4
    wander_arcsec: float = 0.17
    sag_arcsec: float = 10.0
    hand_error: float = 0.2  # of each turn of a bolt, one standard deviation


REAL = Trouble()
EASY = Trouble(0.0, 0.0, 1.0, 0.0, 0.0, 0.0, 0.0)


@dataclass(frozen=True, eq=False)
class View:
    """A star in the field: where it is seen (n, 3) at these times (n,), and what the air does."""

    now: StarNow
    utc_s: np.ndarray
    seen: np.ndarray
    wobble_arcsec: np.ndarray


@dataclass
class Night:
    """Hidden truth, and how long everything took. `within_min`: watching and total minutes when the
    axis first stood within the target; `claimed`: the program said good enough."""

    seed: int
    trouble: Trouble = REAL
    pressure_hpa: float = 980.0
    watched_min: float = 0.0
    within_min: tuple[float, float] | None = None
    claimed: bool = False
    turns: int = 0
    stars_for_turning: int = 0
    touches: int = 0
    sides: int = 0
    wrong_sides: int = 0
    view: View | None = None
    rng: np.random.Generator = field(init=False)

    def __post_init__(self) -> None:
        self.rng = rng = np.random.default_rng(self.seed)
        latitude = rng.choice([-1.0, 1.0]) * rng.uniform(20.0, 60.0)
        self.site = Site(latitude, rng.uniform(-180.0, 180.0), 300.0)
        self.air = Air(self.pressure_hpa)
        self.utc_s = self.begun_s = 1.79e9 + rng.uniform(0.0, 3e7)
        self.sky = Sky(latitude, self.site.longitude_deg, 300.0, self.pressure_hpa)
        self.telescope = self._telescope(rng.uniform(-60.0, 60.0, 2))
        self.layers = imagemotion.layers(rng)
        play = self.trouble.play_arcmin * rng.uniform(size=2)
        self.bolts = [Bolt(one, one * rng.uniform()) for one in play]
        self._note_where()

    def _telescope(self, errors_arcmin: np.ndarray) -> Telescope:
        rng, trouble = self.rng, self.trouble
        base = leaning(trouble.tilt_deg * rng.uniform(), rng.uniform(0.0, 360.0))
        mount = BoltedMount(self.site.latitude_deg, *errors_arcmin, base)
        drive = Drive(
            trouble.fast * rng.normal(),
            trouble.periodic_arcsec * rng.uniform(),
            60.0 * rng.uniform(4.0, 14.0),
            rng.uniform(0.0, 2.0 * np.pi, 3),
        )
        yields = trouble.sag_arcsec * np.exp(0.47 * rng.normal()) * rng.normal(size=(2, 3))
        return Telescope(mount, drive, yields, trouble.angle_deg * rng.uniform(-1.0, 1.0))

    @property
    def axis_error_arcmin(self) -> float:
        return self.telescope.mount.from_pole_arcmin

    @property
    def total_min(self) -> float:
        return (self.utc_s - self.begun_s) / 60.0

    def up(self) -> list[StarNow]:
        """The program's own list of stars."""
        return load_stars().up_now(self.site, self.air, self.utc_s, 20.0, 400)

    def take(self, now: StarNow) -> None:
        """Have the star in the middle of the field; going to another one takes its time."""
        if self.view is None or now.star.hip != self.view.now.star.hip:
            self.utc_s += SLEW_S
        utc_s = self.utc_s + np.arange(0.0, _IN_VIEW_MIN * 60.0, READING_S)
        seen = self.sky.seen(star_of(now.star), utc_s)
        rms = NOISE_ARCSEC / np.sqrt(seen[0, 2])  # variance in proportion to the air mass
        wobble = imagemotion.fast(self.rng, self.layers, utc_s.size, rms)
        wobble += imagemotion.wander(self.rng, utc_s, self.trouble.wander_arcsec)
        self.telescope.point(seen[0], self.utc_s)
        self.view = View(now, utc_s, seen, wobble)

    def readings(self, first_s: float, last_s: float) -> tuple[np.ndarray, np.ndarray]:
        """Times (n,) and east and north offsets (n, 2) of the star in view, as the camera has them;
        the bolts must not have been touched in between."""
        view = self.view
        part = slice(*np.searchsorted(view.utc_s, [first_s - 0.1, last_s + 0.1]))
        offsets = self.telescope.offsets_arcsec(view.seen[part], view.utc_s[part])
        return view.utc_s[part], offsets + view.wobble_arcsec[part]

    def watch_on(self, minutes: float) -> None:
        self.watched_min += minutes
        self.utc_s += minutes * 60.0

    def turn(self, bolt: int, wanted_arcmin: float) -> None:
        """One movement of the hand: misses by its share, and takes up the play first."""
        hand = wanted_arcmin * (1.0 + self.trouble.hand_error * self.rng.normal())
        self.telescope.turn_bolt(bolt, self.bolts[bolt].turn(hand), self.utc_s)

    def end_turn(self) -> None:
        self.turns += 1
        self._note_where()

    def _note_where(self) -> None:
        if self.within_min is None and self.axis_error_arcmin < TARGET_ARCMIN:
            self.within_min = (self.watched_min, self.total_min)
