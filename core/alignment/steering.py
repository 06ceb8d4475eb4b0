"""How far the bolts have moved the axis, seen from the star in view while they turn."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.alignment.adjustment import (
    Base,
    SeenTurn,
    Turn,
    TurnAccuracy,
    moved_errors_arcmin,
    star_shift_arcsec,
)
from core.alignment.axis.priors import Priors
from core.alignment.geometry import ARCMIN_PER_RAD, altitude_azimuth_rad, hemisphere_sign
from core.language import say
from core.sky.site import Site

Floats = NDArray[np.float64]

_ROUNDS = 4
_PROBE_ARCMIN = 1.0
_BLIND = 0.1  # of an arcmin's turn must show: a star near the zenith hides the azimuth bolt
_SCALE_SHARE = 0.01  # of what was seen: how well a camera's scale is known; common practice
_SPOT_ARCSEC = 1.0  # where the star stands before and after: the mean of a few readings
# Of a turn that is yet to be made under a camera set as usual, for planning.
SEEN_TURN = TurnAccuracy(relative=0.03, play_arcmin=0.1)


class TurnUnseen(ValueError):
    """The star in view cannot show this turn; the message is a sentence."""


def turn_seen(
    seen: Floats, axis: Floats, shift_arcsec: tuple[float, float], site: Site, base: Base
) -> Turn:
    """The turn of both bolts that shifts the star in view north and east by `shift_arcsec`.

    `seen`, `axis`: unit vectors (3,) as for `star_shift_arcsec`, before the turn. Newton's method
    on the exact shift. Raises `TurnUnseen` where one of the bolts hardly moves the star.
    """
    wanted = np.asarray(shift_arcsec)
    turn = np.zeros(2)
    for _ in range(_ROUNDS):
        shift, slopes = _linearised(seen, axis, turn, site, base)
        if np.linalg.svd(slopes, compute_uv=False)[1] < _BLIND * 60.0:
            raise TurnUnseen(
                say(
                    "This star hardly moves when one of the bolts is turned, so it cannot "
                    "show how far they went; take a star lower in the sky, or say how far "
                    "you turned."
                )
            )
        turn = turn + np.linalg.solve(slopes, wanted - shift)
    return Turn(float(turn[0]), float(turn[1]))


def seen_accuracy(
    seen: Floats, axis: Floats, turn: Turn, site: Site, base: Base, priors: Priors
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
    made = Turn(float(turn[0]), float(turn[1]))
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
    return np.array(star_shift_arcsec(seen, axis, Turn(float(turn[0]), float(turn[1])), site, base))
