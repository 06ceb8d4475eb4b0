"""Field rotation and axis rates against printed values.

- Starlink PAL 0.9, test program, t_altaz: hour angle 0.7, declination −0.7, latitude −0.65 rad;
  rates there are per radian of hour angle.
- Field rotation of Albireo, Pine Mountain Observatory (latitude 43.7917° N), 2013-07-07/08: a
  published table in ″/s that prints +ω cos φ cos A / cos h, the opposite of our sign.
- K. Borkowski, "Near zenith tracking limits for altitude–azimuth telescopes", Acta Astronomica 37,
  79 (1987): extent of the zone a drive cannot follow, atan[2 V cos φ / (V² − 1)].
"""

from __future__ import annotations

import erfa
import numpy as np
import pytest

from core.imaging.rotation import rate_deg_per_hour, turning
from core.imaging.rotationdrive import blind_zone
from core.units import SIDEREAL_DEG_PER_HOUR

SAME_NUMBER = 1e-12
PRINTED_ARCSEC_PER_S = 0.002
PRINTED_ARCMIN = 0.02


def test_rates_of_the_pal_test_program() -> None:
    azimuth, altitude = erfa.hd2ae(0.7, -0.7, -0.65)
    assert azimuth == pytest.approx(4.400560746660174, abs=SAME_NUMBER)
    assert altitude == pytest.approx(1.026646506651396, abs=SAME_NUMBER)
    rates = turning(np.degrees(-0.65), np.degrees(azimuth), np.degrees(altitude))
    per_radian = SIDEREAL_DEG_PER_HOUR
    assert np.radians(rates.parallactic_angle_deg) == pytest.approx(
        1.707639969653937, abs=SAME_NUMBER
    )
    assert rates.azimuth_rate_deg_per_hour / per_radian == pytest.approx(
        -0.2015438937145421, abs=SAME_NUMBER
    )
    assert rates.altitude_rate_deg_per_hour / per_radian == pytest.approx(
        -0.757692068382645, abs=SAME_NUMBER
    )


def sexagesimal(degrees: int, minutes: int, seconds: float) -> float:
    return degrees + minutes / 60.0 + seconds / 3600.0


@pytest.mark.parametrize(
    ("azimuth_deg", "altitude_deg", "printed_arcsec_per_s"),
    [
        (sexagesimal(92, 45, 18.9), sexagesimal(45, 30, 25.3), -0.745),
        (sexagesimal(123, 58, 11.9), sexagesimal(66, 6, 16.6), -14.977),
        (sexagesimal(236, 40, 5.7), sexagesimal(65, 51, 48.2), -14.590),
    ],
)
def test_albireo_at_pine_mountain(
    azimuth_deg: float, altitude_deg: float, printed_arcsec_per_s: float
) -> None:
    arcsec_per_s = rate_deg_per_hour(43.7917, azimuth_deg, altitude_deg)  # ″/s and °/h are the same
    assert arcsec_per_s == pytest.approx(-printed_arcsec_per_s, abs=PRINTED_ARCSEC_PER_S)


def test_zone_that_a_drive_of_one_degree_a_second_cannot_follow() -> None:
    limit_deg_per_s = 239.34 * SIDEREAL_DEG_PER_HOUR / 3600.0
    zone = blind_zone(40.0, limit_deg_per_s)
    assert zone.extent_deg * 60.0 == pytest.approx(22.01, abs=PRINTED_ARCMIN)


@pytest.mark.parametrize(("altitude_deg", "deg_per_min"), [(86.0, 3.381), (88.0, 6.757)])
def test_on_the_meridian_near_the_zenith(altitude_deg: float, deg_per_min: float) -> None:
    """Elementary: ω cos φ / cos h at latitude 19.826°; no printed source."""
    rate = rate_deg_per_hour(19.826, 180.0, altitude_deg)
    assert rate / 60.0 == pytest.approx(deg_per_min, abs=0.002)
