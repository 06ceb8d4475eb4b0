"""A drift log whose answer is known beforehand by the rule of drift alignment.

A star on the meridian drifts by the azimuth error alone, a star six hours from it by the altitude
error alone (common practice). Here the axis points 10 arcminutes east of the pole at the right
height: the first star goes south, the second one stays.
"""

import math
from datetime import UTC, datetime, timedelta

LATITUDE_DEG = 48.1
LONGITUDE_DEG = 11.6
BEGIN = datetime(2026, 3, 20, 21, 0, tzinfo=UTC)
STEP_S = 10.0
READINGS = 90
AZIMUTH_ERROR_ARCMIN = 10.0
TURN_RAD_PER_S = 7.2921159e-5  # of the Earth
J2000 = datetime(2000, 1, 1, 12, tzinfo=UTC)
UNEVENNESS_ARCSEC = (0.15, -0.05, -0.15, 0.1, 0.05, -0.1)


def sidereal_deg(utc: datetime) -> float:
    """Mean sidereal time at the place (USNO Circular 179, eq. 2.11 to first order)."""
    days = (utc - J2000) / timedelta(days=1)
    return (280.46062 + 360.98564737 * days + LONGITUDE_DEG) % 360.0


def _leg(
    name: str, begin: datetime, hour_angle_deg: float, dec_deg: float, arcsec_per_s: float
) -> list[str]:
    middle = begin + timedelta(seconds=STEP_S * READINGS / 2)
    ra_deg = (sidereal_deg(middle) - hour_angle_deg) % 360.0
    lines = []
    for index in range(READINGS):
        at_s = index * STEP_S
        north = arcsec_per_s * at_s + UNEVENNESS_ARCSEC[index % len(UNEVENNESS_ARCSEC)]
        utc = (begin + timedelta(seconds=at_s)).strftime("%Y-%m-%dT%H:%M:%SZ")
        lines.append(f"{name},{utc},{ra_deg:.4f},{dec_deg:.1f},{north:.3f}")
    return lines


def text() -> str:
    """The log."""
    axis_arcsec = 60.0 * AZIMUTH_ERROR_ARCMIN * math.cos(math.radians(LATITUDE_DEG))
    later = BEGIN + timedelta(seconds=STEP_S * READINGS + 300)
    return "\n".join(
        [
            f"# latitude_deg: {LATITUDE_DEG}",
            f"# longitude_deg: {LONGITUDE_DEG}",
            "# elevation_m: 520",
            "# pressure_hpa: 0",
            "leg,utc,ra_deg,dec_deg,north_arcsec",
            *_leg("meridian", BEGIN, 0.0, 10.0, -axis_arcsec * TURN_RAD_PER_S),
            *_leg("east", later, -90.0, 40.0, 0.0),
            "",
        ]
    )
