"""A turn is read back from the star it moved."""

import numpy as np
import pytest

from core.alignment.drift.geometry import axis_north_end, true_direction
from core.alignment.guide.bolts import Base, BoltTurn, TurnUnseen, star_shift_arcsec, turn_seen
from core.sky.site import Site


@pytest.mark.parametrize("latitude_deg", [48.0, -33.0])
@pytest.mark.parametrize("hour_angle_deg", [-70.0, 5.0, 60.0])
@pytest.mark.parametrize("base", [Base(), Base(2.0, 70.0)])
def test_the_turn_is_read_back(latitude_deg, hour_angle_deg, base):
    site, latitude = Site(latitude_deg, 0.0), np.deg2rad(latitude_deg)
    star = true_direction(np.deg2rad(hour_angle_deg), 0.1, latitude)
    axis = axis_north_end(latitude, 0.01, -0.005)
    turn = BoltTurn(-50.0, 35.0)
    shift = star_shift_arcsec(star, axis, turn, site, base)
    found = turn_seen(star, axis, shift, site, base)
    assert (found.azimuth_arcmin, found.altitude_arcmin) == pytest.approx((-50.0, 35.0), abs=1e-3)


def test_a_star_at_the_zenith_cannot_show_the_azimuth_bolt():
    site, latitude = Site(48.0, 0.0), np.deg2rad(48.0)
    star = true_direction(0.0, np.deg2rad(47.9), latitude)
    with pytest.raises(TurnUnseen, match="hardly moves"):
        turn_seen(star, axis_north_end(latitude, 0.0, 0.0), (60.0, 10.0), site, Base())
