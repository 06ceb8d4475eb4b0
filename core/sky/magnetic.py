"""Where a compass points: magnetic declination by the World Magnetic Model 2025.

Model and its error: NOAA/NCEI and British Geological Survey, "The US/UK World Magnetic Model for
2025-2030" (2024), evaluated by the package pygeomag. Declination is east positive.
"""

from __future__ import annotations

import calendar
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

import numpy as np

from core.language import marked, say
from core.sky.site import Site

FIRST_YEAR, END_YEAR = 2025.0, 2030.0
# Where the horizontal field is weaker, WMM tells not to use a compass, or to doubt it.
BLACKOUT_NT, CAUTION_NT = 2000.0, 6000.0
# The model's error of declination, one standard deviation: √(0.26² + (5417/H)²) degrees.
_ERROR_DEG, _ERROR_DEG_NT = 0.26, 5417.0
_HEIGHT_KM = (-1.0, 850.0)

IRON = marked(
    "Keep the compass two metres from the mount, a car or anything of iron; rock and "
    "cables nearby can add degrees that no model knows."
)


class NoDeclination(ValueError):
    """The model cannot say here or then; the message is a sentence with the reason."""


@dataclass(frozen=True)
class Declination:
    """Declination of the compass, east positive; one standard deviation; horizontal field.

    `caution` is a sentence where compasses are poor, else None.
    """

    declination_deg: float
    sigma_deg: float
    horizontal_nt: float
    latitude_deg: float
    caution: str | None

    @property
    def pole_bearing_deg(self) -> float:
        """Compass bearing [0, 360) of true north, or of true south from a southern site."""
        towards = 0.0 if self.latitude_deg >= 0.0 else 180.0
        return (towards - self.declination_deg) % 360.0

    @property
    def sentence(self) -> str:
        """How to set the polar axis by compass."""
        bearing = round(self.pole_bearing_deg, 1) % 360.0
        sentence = marked("True south is at compass bearing {bearing:.1f}° here ± {sigma}°.")
        if self.latitude_deg >= 0.0:
            sentence = marked("True north is at compass bearing {bearing:.1f}° here ± {sigma}°.")
        return say(sentence, bearing=bearing, sigma=_up(self.sigma_deg))


def declination(site: Site, utc_s: float) -> Declination:
    """Declination at that place and time. Raises NoDeclination outside the model."""
    year = decimal_year(utc_s)
    if not FIRST_YEAR <= year <= END_YEAR:
        raise NoDeclination(
            say(
                "The magnetic model holds from {first:.0f} to the end of {last:.0f}, not in "
                "{year}: set the axis by a star, by the Sun's shadow at noon, or with the "
                "declination printed on a current map.",
                first=FIRST_YEAR,
                last=END_YEAR - 1,
                year=int(year),
            )
        )
    field = _field(site, year)
    horizontal_nt = float(field.h)
    if horizontal_nt < BLACKOUT_NT:
        raise NoDeclination(
            say(
                "A compass is no use here: so near the magnetic pole the field is almost "
                "upright (horizontal part {field:.0f} nT, under {least:.0f}). Set the axis "
                "by a star or by the Sun's shadow at noon.",
                field=horizontal_nt,
                least=BLACKOUT_NT,
            )
        )
    return Declination(
        declination_deg=float(field.d),
        sigma_deg=float(np.hypot(_ERROR_DEG, _ERROR_DEG_NT / horizontal_nt)),
        horizontal_nt=horizontal_nt,
        latitude_deg=site.latitude_deg,
        caution=_caution(horizontal_nt),
    )


def decimal_year(utc_s: float) -> float:
    """The year and the part of it gone by, as magnetic models count time."""
    year = (datetime(1970, 1, 1) + timedelta(seconds=utc_s)).year
    start_s = (datetime(year, 1, 1) - datetime(1970, 1, 1)).total_seconds()
    days = 366.0 if calendar.isleap(year) else 365.0
    return year + (utc_s - start_s) / (days * 86400.0)


def _field(site: Site, year: float) -> Any:
    """pygeomag's result. A model of its own for each call: it keeps state while it computes."""
    from pygeomag import GeoMag
    from pygeomag.wmm.wmm_2025 import WMM_2025

    height_km = float(np.clip(site.elevation_m / 1000.0, *_HEIGHT_KM))
    return GeoMag(coefficients_data=WMM_2025).calculate(
        glat=site.latitude_deg, glon=site.longitude_deg, alt=height_km, time=year
    )


def _caution(horizontal_nt: float) -> str | None:
    if horizontal_nt >= CAUTION_NT:
        return None
    return say(
        "Doubt the compass here: near the magnetic pole its needle is weak and sluggish "
        "(horizontal field {field:.0f} nT, under {least:.0f}) and magnetic storms turn "
        "it by degrees.",
        field=horizontal_nt,
        least=CAUTION_NT,
    )


def _up(sigma_deg: float) -> str:
    """Rounded up to a tenth, so that the ± never promises too much."""
    return f"{np.ceil(sigma_deg * 10.0 - 1e-9) / 10.0:.1f}"
