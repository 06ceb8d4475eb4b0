"""The pointing error to expect over the sky, for the stars chosen and for a careless choice."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from app.session.around import Around
from app.widgets.contours import bands, contours
from app.widgets.domepicture import DomePicture, Sign, SkyMark
from core.night.setupstars import SkySetup
from core.sky import catalogues, places

Floats = NDArray[np.float64]

RIM_DEG = 70.0  # from the zenith; lower the errors are not worked out
RINGS_DEG = (30.0, 60.0)
_LEVELS = (0.5, 1.0, 2.0, 3.0, 5.0, 7.0, 10.0, 15.0, 20.0, 30.0, 50.0, 100.0)


@dataclass(frozen=True, eq=False)
class ErrorMap:
    """`azimuth_deg` (n,) round to 360, `altitude_deg` (m,), `error_arcmin` (m, n)."""

    azimuth_deg: Floats
    altitude_deg: Floats
    error_arcmin: Floats

    def at(self, azimuth_deg: Floats | float, altitude_deg: Floats | float) -> Floats:
        """Straight between the places it was worked out for; the two broadcast."""
        azimuth, altitude = np.broadcast_arrays(np.mod(azimuth_deg, 360.0), altitude_deg)
        column = np.interp(azimuth, self.azimuth_deg, np.arange(len(self.azimuth_deg)))
        row = np.interp(altitude, self.altitude_deg, np.arange(len(self.altitude_deg)))
        left = np.minimum(column.astype(np.intp), len(self.azimuth_deg) - 2)
        low = np.minimum(row.astype(np.intp), len(self.altitude_deg) - 2)
        across, up = column - left, row - low
        error = self.error_arcmin
        below = error[low, left] * (1.0 - across) + error[low, left + 1] * across
        above = error[low + 1, left] * (1.0 - across) + error[low + 1, left + 1] * across
        return np.asarray(below * (1.0 - up) + above * up)


@dataclass(frozen=True, eq=False)
class ErrorMaps:
    """The same levels in both pictures, so that equal tones mean equal errors."""

    chosen: ErrorMap
    careless: ErrorMap
    chosen_picture: DomePicture
    careless_picture: DomePicture


def error_maps(setup: SkySetup, around: Around, utc_s: float) -> ErrorMaps:
    """For a worker thread."""
    chosen = _map(setup, setup.map_error_arcmin)
    careless = _map(setup, setup.map_careless_arcmin)
    low = min(float(chosen.error_arcmin.min()), float(careless.error_arcmin.min()))
    high = max(float(chosen.error_arcmin.max()), float(careless.error_arcmin.max()))
    levels = tuple(level for level in _LEVELS if low < level < high)
    marks = [
        SkyMark(s.now.azimuth_deg, s.now.altitude_deg, s.now.star.name, Sign.STAR, True)
        for s in setup.stars
    ]
    others = _careless_marks(setup.careless_names, around, utc_s)
    return ErrorMaps(
        chosen,
        careless,
        _picture(chosen, levels, around, marks),
        _picture(careless, levels, around, others),
    )


def _map(setup: SkySetup, errors: Floats) -> ErrorMap:
    azimuth = np.unique(setup.map_azimuth_deg)
    altitude = np.unique(np.round(setup.map_altitude_deg, 9))
    grid = errors.reshape(len(altitude), len(azimuth))
    return ErrorMap(np.append(azimuth, 360.0), altitude, np.column_stack([grid, grid[:, 0]]))


def _picture(
    errors: ErrorMap, levels: Sequence[float], around: Around, marks: Sequence[SkyMark]
) -> DomePicture:
    return DomePicture(
        rim_deg=RIM_DEG,
        rings_deg=RINGS_DEG,
        contours=contours(errors.at, levels, arcmin_words, RIM_DEG),
        bands=bands(errors.at, levels, RIM_DEG),
        horizon=around.horizon,
        marks=tuple(marks),
    )


def arcmin_words(error_arcmin: float) -> str:
    return f"{error_arcmin:.3g}′"


def _careless_marks(names: Sequence[str], around: Around, utc_s: float) -> list[SkyMark]:
    stars = catalogues.load_stars()
    marks = []
    for name in names:
        star = stars.find(name)
        if star is not None:
            where = places.horizontal_deg(
                *(*stars.at_epoch(star, utc_s), around.site, around.air, [utc_s])
            )
            marks.append(SkyMark(float(where[0][0]), float(where[1][0]), name, Sign.STAR))
    return marks
