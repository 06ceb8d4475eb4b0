"""How well a mount finds things after a few reference stars: a small pointing model and its errors.

Directions are given in the mount's own frame: for an alt-azimuth mount azimuth and altitude, for an
equatorial one minus the hour angle and declination, so that both run the same way. Six terms move
the pointing, all small angles:

- the mount turned as a whole (three: two tilts of the first axis, and its zero),
- the zero of the second axis,
- the tube not square to the second axis (a cone),
- the two axes not square to each other.

On a German equatorial mount the last two change sign when the tube changes sides. What is known of
the terms beforehand enters as their standard deviations; reference stars narrow them by least
squares (Gauss–Markov with prior, e.g. Tarantola, Inverse Problem Theory, SIAM 2005, eq. 3.37–3.38).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]

TERMS = 6
_SKY_FROM_DEG, _SKY_TO_DEG = 20.0, 85.0


@dataclass(frozen=True)
class Uncertainty:
    """Standard deviations before the first star, and of placing one star; arcminutes.

    Typical of amateur mounts by common practice, no source: levelled with a bubble or roughly
    polar-aligned, circles not set, stars centred with a reticle.
    """

    tilt_arcmin: float = 20.0
    first_zero_arcmin: float = 600.0
    second_zero_arcmin: float = 60.0
    cone_arcmin: float = 10.0
    square_arcmin: float = 5.0
    star_arcmin: float = 1.5

    def prior(self) -> Floats:
        """Inverse of the covariance of the six terms, arcmin⁻², (6, 6)."""
        sigma = np.array(
            [
                *(self.tilt_arcmin, self.tilt_arcmin, self.first_zero_arcmin),
                *(self.second_zero_arcmin, self.cone_arcmin, self.square_arcmin),
            ]
        )
        return np.diag(sigma**-2.0)


def effects(longitude_rad: ArrayLike, latitude_rad: ArrayLike, side: ArrayLike = 1.0) -> Floats:
    """What each term does to the pointing: (…, 2, 6), along the first axis's circle and across it.

    The first row is on the sky (times the cosine). `side`: +1, or −1 where the tube is on the
    other side of the pier.
    """
    longitude, latitude, sign = np.broadcast_arrays(longitude_rad, latitude_rad, side)
    sin_lon, cos_lon = np.sin(longitude), np.cos(longitude)
    sin_lat, cos_lat = np.sin(latitude), np.cos(latitude)
    nothing = np.zeros_like(sin_lon)
    along = [-sin_lat * cos_lon, -sin_lat * sin_lon, cos_lat, nothing, sign, sign * sin_lat]
    across = [sin_lon, -cos_lon, nothing, nothing + 1.0, nothing, nothing]
    return np.stack([np.stack(along, axis=-1), np.stack(across, axis=-1)], axis=-2)


def covariance(stars: Floats, known: Uncertainty) -> Floats:
    """Of the terms after the stars, arcmin², (…, 6, 6). `stars` (…, k, 2, 6): their effects."""
    information = np.einsum("...kra,...krb->...ab", stars, stars) / known.star_arcmin**2
    return np.asarray(np.linalg.inv(information + known.prior()))


def error_arcmin(places: Floats, terms_covariance: Floats) -> Floats:
    """Root mean square pointing error on the sky, both directions together, (…).

    `places` (…, 2, 6): effects at the places asked for.
    """
    variance = np.einsum("...ra,ab,...rb->...", places, terms_covariance, places)
    return np.asarray(np.sqrt(variance))


def mean_error_arcmin(places: Floats, covariances: Floats) -> Floats:
    """Root mean square of `error_arcmin` over places (m, 2, 6), for many covariances (…, 6, 6)."""
    moment = np.einsum("mra,mrb->ab", places, places) / len(places)
    return np.asarray(np.sqrt(np.einsum("ab,...ab->...", moment, covariances)))


def sky_grid_deg() -> tuple[Floats, Floats]:
    """Azimuths and altitudes (m,) of places spread evenly over the sky that is used."""
    lowest, highest = np.sin(np.radians([_SKY_FROM_DEG, _SKY_TO_DEG]))
    altitude = np.degrees(np.arcsin(np.linspace(lowest, highest, 9)))
    azimuth, height = np.meshgrid(np.arange(0.0, 360.0, 15.0), altitude)
    return azimuth.ravel(), height.ravel()
