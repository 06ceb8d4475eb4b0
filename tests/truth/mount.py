"""A displaced mount's camera, for tests only: skyfield's places, own rotation, ray-traced air.

Frame: east, north, up (right-handed), unlike `core`; the pointing is turned about the axis by
Rodrigues' formula, where `core` turns the star back.
"""

from __future__ import annotations

from datetime import UTC, datetime
from functools import cache
from pathlib import Path

import numpy as np
import skyfield_data
from skyfield.api import Loader, Star, wgs84

SIDEREAL_DAY_S = 86164.0905


@cache
def sky():
    """Timescale and Earth of skyfield, from files on disk only."""
    folder = Path(skyfield_data.__file__).parent / "data"  # its own accessor warns of old tables
    load = Loader(str(folder), verbose=False, expire=False)
    return load.timescale(builtin=True), load("de421.bsp")["earth"]


def star_vectors(ra_deg, dec_deg, latitude_deg, longitude_deg, elevation_m, utc_s):
    """Apparent directions (n, 3) east, north, up, without air."""
    place = wgs84.latlon(latitude_deg, longitude_deg, elevation_m)
    return apparent_vectors(Star(ra_hours=ra_deg / 15.0, dec_degrees=dec_deg), place, utc_s)


def apparent_vectors(star, place, utc_s):
    """The same of a skyfield star over a skyfield place."""
    timescale, earth = sky()
    moments = timescale.from_datetimes([datetime.fromtimestamp(t, UTC) for t in utc_s])
    altitude, azimuth, _ = (earth + place).at(moments).observe(star).apparent().altaz()
    h, a = altitude.radians, azimuth.radians
    return np.stack([np.cos(h) * np.sin(a), np.cos(h) * np.cos(a), np.sin(h)], axis=-1)


def lifted(vectors, lift):
    """Directions after refraction; `lift` maps true altitude to lift, radians."""
    altitude = np.arcsin(vectors[:, 2])
    raised = altitude + lift(altitude)
    out = vectors * (np.cos(raised) / np.cos(altitude))[:, np.newaxis]
    out[:, 2] = np.sin(raised)
    return out


def rotate(vector, axis, angle):
    """Rodrigues' rotation about a unit axis by angles (n,) or one angle, right-handed.

    `vector`: one for all angles, or (n, 3), one for each.
    """
    c, s = np.cos(angle)[..., np.newaxis], np.sin(angle)[..., np.newaxis]
    along = np.asarray(vector @ axis)[..., np.newaxis]
    return vector * c + np.cross(axis, vector) * s + axis * along * (1 - c)


def camera_offsets_arcsec(seen, latitude_deg, azimuth_error_arcmin, altitude_error_arcmin, utc_s):
    """North and east offsets (n,) of the seen star from where the turning mount points."""
    south = latitude_deg < 0
    azimuth = np.deg2rad((180.0 if south else 0.0) + azimuth_error_arcmin / 60.0)
    altitude = np.deg2rad(abs(latitude_deg) + altitude_error_arcmin / 60.0)
    end = np.array(
        [np.cos(altitude) * np.sin(azimuth), np.cos(altitude) * np.cos(azimuth), np.sin(altitude)]
    )
    north_end = -end if south else end
    turned = -2 * np.pi * (utc_s - utc_s[0]) / SIDEREAL_DAY_S  # east to west
    pointing = rotate(seen[0], north_end, turned)
    east = np.cross(north_end, pointing)
    east /= np.linalg.norm(east, axis=1, keepdims=True)
    north = np.cross(pointing, east)
    depth = np.einsum("ij,ij->i", seen, pointing)
    arcsec = np.rad2deg(1.0) * 3600.0
    return (
        np.einsum("ij,ij->i", seen, north) / depth * arcsec,
        np.einsum("ij,ij->i", seen, east) / depth * arcsec,
    )
