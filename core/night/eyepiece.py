"""Where the eyepiece of a Newtonian on an equatorial mount ends up through the night.

The tube turns about its own length as the mount follows the sky, and the eyepiece at its side goes
with it: beside, over or under the tube, higher or lower above the ground.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.alignment.drift.geometry import true_direction
from core.language import say
from core.night.flip import PierSide

Floats = NDArray[np.float64]
Booleans = NDArray[np.bool_]

_UNDER_DEG = 120.0  # further round, the eyepiece looks down; common practice, no source
_STEP_DEG = 5.0


@dataclass(frozen=True)
class Newtonian:
    """Tube and mount, in metres.

    `axes_height_m`: of the point where the axes meet. `tube_offset_m`: from there along the
    declination axis to the middle of the tube (0 for a fork). `forward_m`: from the declination
    axis to the eyepiece along the tube; `out_m`: from the tube's middle line to the eye.
    `turned_deg`: where round the tube the eyepiece sits: 0 away from the mount, growing clockwise
    for somebody behind the tube who looks where it points.
    """

    axes_height_m: float
    tube_offset_m: float
    forward_m: float
    out_m: float
    turned_deg: float


@dataclass(frozen=True)
class EyeHeights:
    """Comfortable heights of the eye, metres; common practice, no source."""

    lowest_m: float = 0.9  # sitting
    highest_m: float = 1.7  # standing


@dataclass(frozen=True, eq=False)
class EyepiecePath:
    """The eyepiece at times (n,).

    `round_tube_deg`: 0 on top of the tube, 90 on its right for somebody behind it, ±180 under it.
    `height_m` of the eye above the ground.
    """

    round_tube_deg: Floats
    height_m: Floats
    is_comfortable: Booleans

    @property
    def tube_turn_deg(self) -> float:
        """How far the tube turns about its length from first to last."""
        turned = np.unwrap(np.radians(self.round_tube_deg))
        return float(np.degrees(turned[-1] - turned[0]))

    @property
    def sentence(self) -> str:
        """For the person."""
        low, high = float(np.min(self.height_m)), float(np.max(self.height_m))
        if np.all(self.is_comfortable):
            return say(
                "The eyepiece is between {low:.1f} m and {high:.1f} m above the ground, in reach "
                "all the time.",
                low=low,
                high=high,
            )
        return say(
            "The eyepiece is between {low:.1f} m and {high:.1f} m above the ground; for "
            "{percent:.0f} % of the time it is under the tube, too high or too low. Turn the tube "
            "in its rings before you begin, and recheck its balance; climb on nothing that does "
            "not stand firmly.",
            low=low,
            high=high,
            percent=100.0 * float(np.mean(~self.is_comfortable)),
        )


def eyepiece_path(
    hour_angle_deg: ArrayLike,
    declination_deg: float,
    latitude_deg: float,
    newtonian: Newtonian,
    side: PierSide | ArrayLike,
    observer: EyeHeights | None = None,
) -> EyepiecePath:
    """For hour angles (n,), west positive. `side`: of the pier, or (n,) +1 west, −1 east of it.

    For a fork give Side.WEST throughout and no offset. Refraction is nothing here.
    """
    hour_angle = np.atleast_1d(np.radians(np.asarray(hour_angle_deg, dtype=np.float64)))
    declination, latitude = float(np.radians(declination_deg)), float(np.radians(latitude_deg))
    pointing = true_direction(hour_angle, declination, latitude)
    outward = _westward(hour_angle, latitude) * _sign(side)
    across = np.cross(pointing, outward)  # clockwise for the eye behind, in a left-handed frame
    turned = np.radians(newtonian.turned_deg)
    eye = np.cos(turned) * outward - np.sin(turned) * across
    place = newtonian.tube_offset_m * outward + newtonian.forward_m * pointing
    height = newtonian.axes_height_m + (place + newtonian.out_m * eye)[:, 2]
    around = _round_tube_deg(pointing, eye)
    bounds = observer or EyeHeights()
    within = (height >= bounds.lowest_m) & (height <= bounds.highest_m)
    return EyepiecePath(around, height, within & (np.abs(around) <= _UNDER_DEG))


def best_turn_deg(
    hour_angle_deg: ArrayLike,
    declination_deg: float,
    latitude_deg: float,
    newtonian: Newtonian,
    side: PierSide | ArrayLike,
    observer: EyeHeights | None = None,
) -> float:
    """The `turned_deg` that is comfortable longest; of several, the nearest to the present one."""

    def discomfort(turned_deg: float) -> tuple[float, float]:
        turned = Newtonian(
            *(newtonian.axes_height_m, newtonian.tube_offset_m, newtonian.forward_m),
            *(newtonian.out_m, turned_deg),
        )
        path = eyepiece_path(hour_angle_deg, declination_deg, latitude_deg, turned, side, observer)
        away = abs((turned_deg - newtonian.turned_deg + 180.0) % 360.0 - 180.0)
        return float(np.mean(~path.is_comfortable)), away

    return float(min(np.arange(-180.0, 180.0, _STEP_DEG).tolist(), key=discomfort))


def _westward(hour_angle_rad: Floats, latitude_rad: float) -> Floats:
    """Unit vectors (n, 3) along the declination axis, towards growing hour angle."""
    sine, cosine = np.sin(hour_angle_rad), np.cos(hour_angle_rad)
    return np.stack([np.sin(latitude_rad) * sine, -cosine, -np.cos(latitude_rad) * sine], axis=-1)


def _sign(side: PierSide | ArrayLike) -> Floats:
    """+1 with the tube west of the pier, −1 east of it; (n, 1) or (1,)."""
    if isinstance(side, PierSide):
        return np.array([1.0 if side is PierSide.WEST else -1.0])
    return np.asarray(side, dtype=np.float64)[:, np.newaxis]


def _round_tube_deg(pointing: Floats, eye: Floats) -> Floats:
    """Angle of the eyepiece from the top of the tube, clockwise for somebody behind it."""
    up = np.array([0.0, 0.0, 1.0]) - pointing[:, 2:] * pointing
    right = np.cross(up, pointing)  # towards growing azimuth: the frame is left-handed
    around = np.arctan2(np.sum(eye * right, axis=-1), np.sum(eye * up, axis=-1))
    return np.asarray(np.degrees(around))
