"""How far the bolts have moved the axis, seen from the star in view while they turn."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.alignment.adjustment import Base, Turn, TurnAccuracy, star_shift_arcsec
from core.language import say
from core.sky.site import Site

Floats = NDArray[np.float64]

_ROUNDS = 4
_PROBE_ARCMIN = 1.0
_BLIND = 0.1  # of an arcmin's turn must show: a star near the zenith hides the azimuth bolt
# A camera's angle known to a degree and its scale to a hundredth: common practice, no source.
SEEN_TURN = TurnAccuracy(relative=0.02, play_arcmin=0.1)


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
        shift = _shift(seen, axis, turn, site, base)
        slopes = np.column_stack(
            [
                (_shift(seen, axis, turn + step, site, base) - shift) / _PROBE_ARCMIN
                for step in _PROBE_ARCMIN * np.eye(2)
            ]
        )
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


def _shift(seen: Floats, axis: Floats, turn: Floats, site: Site, base: Base) -> Floats:
    return np.array(star_shift_arcsec(seen, axis, Turn(float(turn[0]), float(turn[1])), site, base))
