"""The bolts: what a turn does, learned from one's own turns, and steering by the star in view."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.alignment.axis.evidence import PriorAxis
from core.alignment.drift.geometry import (
    altitude_azimuth_rad,
    axis_north_end,
    direction,
    hemisphere_sign,
)
from core.alignment.priors import Priors
from core.finding import Code, Refused
from core.sky.site import Site
from core.units import ARCMIN_PER_RAD, ARCSEC_PER_RAD


class Unseen(Code):
    """Why a turn of the bolts cannot be seen."""

    STAR_HARDLY_MOVES = "star hardly moves"


# How far one turn of a bolt moves the axis, and its play, learned from the turns one has made.

Floats = NDArray[np.float64]

_PLAY_EXPECTED_ARCMIN, _PLAY_SIGMA_ARCMIN = 1.0, 1.5  # common practice, no source
_SCALE_SIGMA_ARCMIN = 300.0  # of a bolt nobody has turned yet: anything
_HAND_TURNS = 0.05  # a twentieth of a turn: how well a hand reads its own turns
_FEWEST = 2
_PLAIN_SIGMAS = 3.0  # of a movement: less, and its direction is not to be trusted
_AGREEING = 0.75  # of the plain turns: fewer, and how the person counts is not settled
_SHEET_SHARE = 0.1  # of a data sheet's figure, as its error: common practice, no source
_SHEET_AGREES = 3.0  # standard deviations between sheet and turn that chance may bring


@dataclass(frozen=True)
class CountedTurn:
    """One adjustment: turns of the bolt (signed) and how far the axis then moved, as measured."""

    turns: float
    moved_arcmin: float
    sigma_arcmin: float


@dataclass(frozen=True)
class BoltScale:
    """What the turns so far teach. Standard deviations beside the values.

    `arcmin_per_turn` is negative where turns counted as positive move the axis towards smaller
    azimuth or downwards. `has_sense`: whether the turns agree on that; without it the sign says
    nothing. `number` is 0 for the figure of a data sheet, before any turn. `confirmed`: the data
    sheet says the same.
    """

    arcmin_per_turn: float
    arcmin_per_turn_sigma: float
    play_arcmin: float
    play_sigma_arcmin: float
    number: int
    has_sense: bool = True
    confirmed: bool = False

    @property
    def is_known(self) -> bool:
        """Known to a fifth of its value, from two turns, or from one that the data sheet bears out.

        And the turns agree on which way the axis goes.
        """
        enough = self.number >= _FEWEST or (self.number > 0 and self.confirmed)
        return enough and self.has_sense and self.is_measured

    @property
    def is_measured(self) -> bool:
        """The size is known to a fifth, whichever way the bolt has to go."""
        return self.arcmin_per_turn_sigma < 0.2 * abs(self.arcmin_per_turn)

    def turns_for(self, arcmin: float, last_turns: float) -> tuple[float, float]:
        """Turns, signed as `CountedTurn`, for so many arcmin, and their standard deviation.

        `last_turns`: the turn before, 0 if unknown; against it the play is taken up first.
        """
        way = np.sign(arcmin) * np.sign(self.arcmin_per_turn)
        against = last_turns != 0.0 and np.sign(last_turns) != way
        needed = abs(arcmin) + (self.play_arcmin if against else 0.0)
        per_turn = abs(self.arcmin_per_turn)
        turns = way * needed / per_turn
        variance = (turns * self.arcmin_per_turn_sigma / per_turn) ** 2
        if against:
            variance += (self.play_sigma_arcmin / per_turn) ** 2
        return float(turns), float(np.sqrt(variance))


def of_sheet(arcmin_per_turn: float) -> BoltScale:
    """Before any turn: what the data sheet says, which never tells the way."""
    return BoltScale(
        arcmin_per_turn,
        _SHEET_SHARE * arcmin_per_turn,
        _PLAY_EXPECTED_ARCMIN,
        _PLAY_SIGMA_ARCMIN,
        0,
        has_sense=False,
    )


def as_counted(made: Sequence[CountedTurn]) -> tuple[list[CountedTurn], bool]:
    """The turns with their signs made consistent, and whether the person's own counting was.

    One turn counted the other way among several is a slip, and is turned over. Where many disagree,
    the person counts without a sign: then all are counted by what the axis did.
    """
    plain = [one for one in made if abs(one.moved_arcmin) > _PLAIN_SIGMAS * one.sigma_arcmin]
    ways = [float(np.sign(one.turns * one.moved_arcmin)) for one in plain]
    share = max(ways.count(1.0), ways.count(-1.0)) / len(ways) if ways else 1.0
    has_sense = share >= _AGREEING
    sense = -1.0 if has_sense and ways.count(-1.0) > ways.count(1.0) else 1.0
    counted = [
        replace(one, turns=abs(one.turns) * sense * float(np.sign(one.moved_arcmin)))
        if one in plain
        else one
        for one in made
    ]
    return counted, has_sense


def learn(made: Sequence[CountedTurn], sheet_arcmin_per_turn: float | None = None) -> BoltScale:
    """Scale and play by least squares with what is expected of any bolt.

    moved = scale × turns − play × (direction of the turn), the last only after a reversal. The
    hand's own error, a twentieth of a turn, widens each measurement in a second pass. A data
    sheet's figure stands in until there are turns, and bears out a single one.
    """
    if not made and sheet_arcmin_per_turn is not None:
        return of_sheet(sheet_arcmin_per_turn)
    made, has_sense = as_counted(made)
    scale = 0.0
    for _ in range(3):
        normal = np.diag([_SCALE_SIGMA_ARCMIN**-2, _PLAY_SIGMA_ARCMIN**-2])
        right = np.array([0.0, _PLAY_EXPECTED_ARCMIN * _PLAY_SIGMA_ARCMIN**-2])
        before = 0.0
        for turn in made:
            reverses = before != 0.0 and np.sign(before) != np.sign(turn.turns)
            row = np.array([turn.turns, -np.sign(turn.moved_arcmin) if reverses else 0.0])
            variance = turn.sigma_arcmin**2 + (_HAND_TURNS * scale) ** 2
            normal += np.outer(row, row) / variance
            right += row * turn.moved_arcmin / variance
            before = turn.turns
        covariance = np.linalg.inv(normal)
        scale, play = (covariance @ right).tolist()
    sigma = float(np.sqrt(covariance[0, 0]))
    return BoltScale(
        scale,
        sigma,
        max(play, 0.0),
        float(np.sqrt(covariance[1, 1])),
        len(made),
        has_sense,
        _bears_out(sheet_arcmin_per_turn, scale, sigma),
    )


def _bears_out(sheet_arcmin_per_turn: float | None, scale: float, sigma: float) -> bool:
    if sheet_arcmin_per_turn is None:
        return False
    apart = abs(abs(scale) - sheet_arcmin_per_turn)
    return apart < _SHEET_AGREES * float(np.hypot(sigma, _SHEET_SHARE * sheet_arcmin_per_turn))


# What a turn of the bolts does: to the axis, to the star in view, and to what is known.
#
# The azimuth bolts turn the mount about the normal of its base, the altitude bolt about the
# horizontal axle on which the polar axis tips. On a base that is not level the first moves the
# altitude as well.

# A base levelled by eye or a small bubble, and one whose lean was measured: common practice.
_UNMEASURED_TILT_DEG, _MEASURED_TILT_DEG = 1.25, 0.3


@dataclass(frozen=True)
class Base:
    """How the mount's base leans: by `tilt_deg` down towards `azimuth_deg`."""

    tilt_deg: float = 0.0
    azimuth_deg: float = 0.0

    @property
    def tilt_sigma_deg(self) -> float:
        """How well its lean is known in each direction: worse where nobody has measured one."""
        return _MEASURED_TILT_DEG if self.tilt_deg else _UNMEASURED_TILT_DEG

    def leaning(self, tilt_deg: float, azimuth_deg: float) -> Base:
        """Leaning as it does and besides by `tilt_deg` down towards `azimuth_deg`."""
        parts = [
            tilt * np.exp(1j * np.deg2rad(way))
            for tilt, way in ((self.tilt_deg, self.azimuth_deg), (tilt_deg, azimuth_deg))
        ]
        both = complex(sum(parts))
        return Base(abs(both), float(np.rad2deg(np.angle(both))))

    def normal(self) -> Floats:
        """Unit vector (3,) north, east, up about which the azimuth bolts turn."""
        return direction(np.deg2rad(self.azimuth_deg), np.deg2rad(90.0 - self.tilt_deg))


@dataclass(frozen=True)
class BoltTurn:
    """A turn of both bolts, meant to move the axis; signs as the errors of the axis have.

    Positive azimuth: the elevated end moves towards greater azimuth; positive altitude: upwards.
    """

    azimuth_arcmin: float
    altitude_arcmin: float


@dataclass(frozen=True)
class TurnAccuracy:
    """How well a hand turns: a share of the turn, and the play of the bolt. One standard deviation.

    The default is a common-practice figure without a source: a tenth of the turn, one arcmin of
    play.
    """

    relative: float = 0.1
    play_arcmin: float = 0.5

    def covariance_arcmin2(self, turn: BoltTurn, azimuth_scale: float, base: Base) -> Floats:
        """Of the displacement on the sky (2, 2); `azimuth_scale`: cosine of the latitude.

        A base that leans unknown to anybody lets each bolt move the axis across its own direction.
        """
        hand = np.array([turn.azimuth_arcmin * azimuth_scale, turn.altitude_arcmin])
        play = np.where(hand != 0.0, self.play_arcmin, 0.0) * np.array([azimuth_scale, 1.0])
        across = np.deg2rad(base.tilt_sigma_deg) * hand[::-1]
        return np.diag((self.relative * hand) ** 2 + play**2 + across**2)


@dataclass(frozen=True)
class SeenTurn:
    """How well the star in view showed where a turn brought the axis, arcmin² on the sky.

    Variances of azimuth × cosine of the latitude and of altitude, and what they share.
    """

    azimuth_arcmin2: float
    both_arcmin2: float
    altitude_arcmin2: float

    def covariance_arcmin2(self, _turn: BoltTurn, _azimuth_scale: float, _base: Base) -> Floats:
        """Of the displacement on the sky (2, 2), whatever the turn was."""
        return np.array(
            [
                [self.azimuth_arcmin2, self.both_arcmin2],
                [self.both_arcmin2, self.altitude_arcmin2],
            ]
        )


def rotated(vector: Floats, about: Floats, angle_rad: float) -> Floats:
    """Vector turned about a unit vector from north through east, seen from its tip downwards."""
    cross = np.cross(vector, about)  # north, east, up is left-handed
    along = about * float(about @ vector)
    return np.asarray(
        vector * np.cos(angle_rad) - cross * np.sin(angle_rad) + along * (1.0 - np.cos(angle_rad))
    )


def axle(base: Base, latitude_rad: float) -> Floats:
    """Unit vector (3,), pointing east, of the axle on which the polar axis tips in altitude."""
    across = np.cross(axis_north_end(latitude_rad, 0.0, 0.0), base.normal())
    return np.asarray(across / np.linalg.norm(across))


def moved_errors_arcmin(
    site: Site, azimuth_arcmin: float, altitude_arcmin: float, turn: BoltTurn, base: Base
) -> tuple[float, float]:
    """Azimuth and altitude error after the turn, altitude first, by exact rotation."""
    latitude = float(np.deg2rad(site.latitude_deg))
    axis = axis_north_end(
        latitude, azimuth_arcmin / ARCMIN_PER_RAD, altitude_arcmin / ARCMIN_PER_RAD
    )
    for about, angle in _rotations(turn, base, latitude, azimuth_arcmin / ARCMIN_PER_RAD):
        axis = rotated(axis, about, angle)
    altitude, azimuth = altitude_azimuth_rad(axis)
    sign = hemisphere_sign(latitude)
    wrapped = (float(azimuth) + np.pi) % (2.0 * np.pi) - np.pi
    return wrapped * ARCMIN_PER_RAD, sign * (float(altitude) - latitude) * ARCMIN_PER_RAD


def _rotations(
    turn: BoltTurn, base: Base, latitude_rad: float, heading_rad: float
) -> tuple[tuple[Floats, float], tuple[Floats, float]]:
    """Axes and angles: tip on the axle as it stands, then turn about the base's normal."""
    normal = base.normal()
    standing = rotated(axle(base, latitude_rad), normal, heading_rad)
    tip = hemisphere_sign(latitude_rad) * turn.altitude_arcmin / ARCMIN_PER_RAD
    return (standing, tip), (normal, turn.azimuth_arcmin / ARCMIN_PER_RAD)


def known_after(
    known: PriorAxis,
    turn: BoltTurn,
    site: Site,
    base: Base,
    accuracy: TurnAccuracy | SeenTurn,
) -> PriorAxis:
    """What the earlier axis state says of the present one, its errors widened by the turn's."""
    scale = max(float(np.cos(np.deg2rad(site.latitude_deg))), 0.02)
    azimuth, altitude = known.sky_arcmin[0] / scale, known.sky_arcmin[1]
    moved = moved_errors_arcmin(site, float(azimuth), float(altitude), turn, base)
    covariance = known.covariance_arcmin2 + accuracy.covariance_arcmin2(turn, scale, base)
    before = float(np.trace(known.covariance_arcmin2))
    freedom = known.freedom * (float(np.trace(covariance)) / before) ** 2  # Satterthwaite
    return PriorAxis(np.array([moved[0] * scale, moved[1]]), covariance, min(freedom, 1e6))


def star_shift_arcsec(
    seen: Floats, axis: Floats, turn: BoltTurn, site: Site, base: Base
) -> tuple[float, float]:
    """North and east shift of the star in view while the bolts turn, the drive running.

    `seen`: unit vector (3,) of the star, where the telescope points; `axis`: north end (3,) of the
    polar axis before the turn. Offsets on the tangent plane at the new pointing, in the mount's
    frame. Good for turns of degrees; the time the turn takes is left out.
    """
    latitude = float(np.deg2rad(site.latitude_deg))
    _, heading = altitude_azimuth_rad(axis)
    pointing = seen
    for about, angle in _rotations(turn, base, latitude, float(heading)):
        pointing, axis = rotated(pointing, about, angle), rotated(axis, about, angle)
    east = np.cross(pointing, axis)
    east = east / np.linalg.norm(east)
    north = np.cross(east, pointing)
    depth = float(seen @ pointing)
    return (
        float(seen @ north) / depth * ARCSEC_PER_RAD,
        float(seen @ east) / depth * ARCSEC_PER_RAD,
    )


# How far the bolts have moved the axis, seen from the star in view while they turn.

_ROUNDS = 4
_PROBE_ARCMIN = 1.0
_BLIND = 0.1  # of an arcmin's turn must show: a star near the zenith hides the azimuth bolt
_SCALE_SHARE = 0.01  # of what was seen: how well a camera's scale is known; common practice
_SPOT_ARCSEC = 1.0  # where the star stands before and after: the mean of a few readings
# Of a turn that is yet to be made under a camera set as usual, for planning.
SEEN_TURN = TurnAccuracy(relative=0.03, play_arcmin=0.1)


class TurnUnseen(Refused):
    """The star in view cannot show this turn."""


def turn_seen(
    seen: Floats, axis: Floats, shift_arcsec: tuple[float, float], site: Site, base: Base
) -> BoltTurn:
    """The turn of both bolts that shifts the star in view north and east by `shift_arcsec`.

    `seen`, `axis`: unit vectors (3,) as for `star_shift_arcsec`, before the turn. Newton's method
    on the exact shift. Raises `TurnUnseen` where one of the bolts hardly moves the star.
    """
    wanted = np.asarray(shift_arcsec)
    turn = np.zeros(2)
    for _ in range(_ROUNDS):
        shift, slopes = _linearised(seen, axis, turn, site, base)
        if np.linalg.svd(slopes, compute_uv=False)[1] < _BLIND * 60.0:
            raise TurnUnseen(Unseen.STAR_HARDLY_MOVES)
        turn = turn + np.linalg.solve(slopes, wanted - shift)
    return BoltTurn(float(turn[0]), float(turn[1]))


def seen_accuracy(
    seen: Floats, axis: Floats, turn: BoltTurn, site: Site, base: Base, priors: Priors
) -> SeenTurn:
    """How well that turn is known: a turned reticle lets each bolt leak into the other.

    The shift seen is turned by an angle of the standard deviation in `priors`, its length known as
    well as the scale is, and both its ends as well as readings are; the drive's periodic error has
    moved the star east or west meanwhile (the root mean square of the difference of two phases is
    its amplitude); the base may lean.
    """
    made = np.array([turn.azimuth_arcmin, turn.altitude_arcmin])
    shift, slopes = _linearised(seen, axis, made, site, base)
    across = np.deg2rad(priors.angle_sigma_deg) * np.array([shift[1], -shift[0]])
    along = _SCALE_SHARE * shift
    drive = np.array([0.0, priors.periodic_error_arcsec])
    errors = np.column_stack([across, along, drive, np.sqrt(2.0) * _SPOT_ARCSEC * np.eye(2)])
    scale = max(float(np.cos(np.deg2rad(site.latitude_deg))), 0.02)
    parts = np.diag([scale, 1.0]) @ np.linalg.solve(slopes, errors)
    leans = [_by_leaning(seen, axis, shift, made, site, base, way) for way in (0.0, 90.0)]
    covariance = parts @ parts.T + sum(np.outer(lean, lean) for lean in leans)
    return SeenTurn(float(covariance[0, 0]), float(covariance[0, 1]), float(covariance[1, 1]))


def _by_leaning(
    seen: Floats,
    axis: Floats,
    shift: Floats,
    turn: Floats,
    site: Site,
    base: Base,
    way_deg: float,
) -> Floats:
    """How far (2,), arcmin on the sky, the axis is from where it is believed to be.

    If the base leans more towards `way_deg` by its uncertainty, and the star shifted all the same.
    """
    leaning = base.leaning(base.tilt_sigma_deg, way_deg)
    there, slopes = _linearised(seen, axis, turn, site, leaning)
    meant = turn + np.linalg.solve(slopes, shift - there)
    return _moved(axis, meant, site, leaning) - _moved(axis, turn, site, base)


def _moved(axis: Floats, turn: Floats, site: Site, base: Base) -> Floats:
    """Where (2,), arcmin on the sky, a turn brings the axis."""
    latitude = float(np.deg2rad(site.latitude_deg))
    altitude, azimuth = altitude_azimuth_rad(axis)
    errors = (
        float(azimuth + np.pi) % (2.0 * np.pi) - np.pi,
        hemisphere_sign(latitude) * (float(altitude) - latitude),
    )
    made = BoltTurn(float(turn[0]), float(turn[1]))
    after = moved_errors_arcmin(
        site, errors[0] * ARCMIN_PER_RAD, errors[1] * ARCMIN_PER_RAD, made, base
    )
    return np.array([after[0] * max(float(np.cos(latitude)), 0.02), after[1]])


def _linearised(
    seen: Floats, axis: Floats, turn: Floats, site: Site, base: Base
) -> tuple[Floats, Floats]:
    """Shift (2,) of the star by a turn, arcsec, and its slopes (2, 2) by arcmin of either bolt."""
    shift = _shift(seen, axis, turn, site, base)
    steps = _PROBE_ARCMIN * np.eye(2)
    ahead = [_shift(seen, axis, turn + step, site, base) - shift for step in steps]
    return shift, np.column_stack(ahead) / _PROBE_ARCMIN


def _shift(seen: Floats, axis: Floats, turn: Floats, site: Site, base: Base) -> Floats:
    return np.array(
        star_shift_arcsec(seen, axis, BoltTurn(float(turn[0]), float(turn[1])), site, base)
    )
