"""Constants of angle and time that computations share, each once.

Inside computations angles are radians and times seconds; what stands at a boundary has its unit in
its name, and these are the ways from one to the other.
"""

from __future__ import annotations

import math

TURN_RAD = 2.0 * math.pi
ARCSEC_PER_RAD = 180.0 * 3600.0 / math.pi
ARCMIN_PER_RAD = ARCSEC_PER_RAD / 60.0
RAD_PER_ARCMIN = math.radians(1.0 / 60.0)
ARCSEC_MM_PER_UM = ARCSEC_PER_RAD / 1000.0  # arcseconds a micrometre spans at 1 mm of focal length

SECONDS_PER_DAY = 86400.0

# The Earth turns 1.00273781191135448 times in a day of UT1 (IERS Conventions 2010, eq. 5.15).
SIDEREAL_RATE_RAD_PER_S = TURN_RAD * 1.00273781191135448 / SECONDS_PER_DAY
SIDEREAL_DEG_PER_HOUR = math.degrees(SIDEREAL_RATE_RAD_PER_S) * 3600.0
SIDEREAL_ARCSEC_PER_S = SIDEREAL_RATE_RAD_PER_S * ARCSEC_PER_RAD  # 15.041
SIDEREAL_ARCSEC_PER_MIN = 60.0 * SIDEREAL_ARCSEC_PER_S
