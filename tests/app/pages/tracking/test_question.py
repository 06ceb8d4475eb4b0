"""What a run takes over of the place and the axis as they become known."""

import numpy as np
import pytest

from app.pages.tracking.figures import Given, TrackingPlace
from core.alignment.driftlog.records import Leg
from core.imaging.tolerance import Alignment
from core.sky.site import Air, Site

LEG = Leg("run", 200.0, 0.0, np.arange(3.0), np.zeros(3), np.zeros(3))
HILL, OTHER = Site(48.1, 11.6, 520.0), Site(-33.0, 20.0)
OLD_AXIS, AXIS = Alignment(9.0, 9.0), Alignment(1.0, 2.0)
HERE = TrackingPlace(HILL, Air(950.0), AXIS)
AT_HILL, AT_OTHER = TrackingPlace(HILL, Air(940.0), OLD_AXIS), TrackingPlace(OTHER, Air(1000.0))


@pytest.mark.parametrize(
    ("place", "is_tonight", "is_practice", "site", "axis"),
    [
        (None, True, False, HILL, AXIS),
        (None, False, False, HILL, None),
        (AT_HILL, True, False, HILL, AXIS),
        (AT_HILL, False, False, HILL, OLD_AXIS),
        (AT_OTHER, True, False, OTHER, None),
        (AT_OTHER, True, True, OTHER, None),
    ],
)
def test_placed(place, is_tonight, is_practice, site, axis) -> None:
    given = Given(LEG, "run", place, is_practice=is_practice, is_tonight=is_tonight)
    placed = given.placed(HERE).place
    assert placed.site == site
    assert placed.alignment is axis


def test_an_axis_that_is_lost_is_not_forgotten() -> None:
    given = Given(LEG, "run", AT_HILL, is_tonight=True)
    assert given.placed(HERE.without_axis()) is given


def test_the_air_of_the_log_stays() -> None:
    given = Given(LEG, "run", AT_HILL, is_tonight=True)
    assert given.placed(HERE).place.air.pressure_hpa == 940.0
