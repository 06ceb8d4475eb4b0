"""Guided smear near the pole, where the worst guide star stands in a narrow range of directions.

Truth: trailed images with a searching guider and a searched guide star (tests/truth).
"""

import erfa
import numpy as np
import pytest

from core.imaging.skymap import sky_map
from core.imaging.task import ImagedTarget, Optics, Task, Vantage
from core.imaging.tolerance import Alignment, tolerance
from core.imaging.verdict import judge
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD
from tests.truth.raytrace import RayTrace
from tests.truth.worstguide import TrailedWorst

OPTICS = Optics(600.0, 3.8, 6000, 4000)
HALF_DIAGONAL_ARCMIN = OPTICS.half_diagonal_rad * ARCMIN_PER_RAD
PX_PER_RAD = 600.0 * 1000.0 / 3.8
AIR = Air(950.0, 5.0)
EXPOSURE_S = 300.0


def guided(dec_deg, hour_angle_deg, offset_deg, **options):
    corner_arcmin = 60.0 * offset_deg + HALF_DIAGONAL_ARCMIN
    target = ImagedTarget(dec_deg, hour_angle_deg, hour_angle_deg)
    return Task(target, OPTICS, EXPOSURE_S, corner_arcmin, **options)


# Latitude, declination, hour angle, guide star's distance from the target in degrees, axis error.
OUTSIDE = [
    (48.0, 85.0, 30.0, 4.5, (5.0, 3.0)),
    (48.0, 85.0, -70.0, 4.5, (-20.0, 6.0)),
    (48.0, 88.5, 30.0, 1.4, (12.0, -9.0)),
    (48.0, 88.5, 120.0, 1.4, (8.0, 4.0)),
    (-35.0, -86.0, 50.0, 3.5, (6.0, -9.0)),
    (20.0, 80.0, -40.0, 8.0, (15.0, 5.0)),
    (48.0, 60.0, -20.0, 25.0, (-10.0, 12.0)),
    (70.0, 89.0, 0.0, 0.3, (5.0, 3.0)),
]
ENCLOSING = [
    (48.0, 88.5, 30.0, 2.0, (12.0, -9.0)),
    (48.0, 88.5, 120.0, 1.4, (-8.0, -4.0)),
    (48.0, 85.0, 30.0, 5.5, (-20.0, 10.0)),
    (-35.0, -89.9, 80.0, 1.0, (5.0, 3.0)),
    (48.0, 85.0, 30.0, 5.0, (5.0, 3.0)),
]


def told(latitude_deg, dec_deg, hour_angle_deg, offset_deg, axis_arcmin):
    vantage = Vantage.of(Site(latitude_deg, 0.0, 300.0), AIR)
    smear = judge(guided(dec_deg, hour_angle_deg, offset_deg), vantage, Alignment(*axis_arcmin))
    return np.array([smear.centre.total_px, smear.corner.total_px])


def truth(latitude_deg, dec_deg, hour_angle_deg, offset_deg, axis_arcmin):
    trace = RayTrace.over(Site(latitude_deg, 0.0, 300.0), AIR)
    place = hour_angle_deg, dec_deg, latitude_deg
    trailed = TrailedWorst(
        *(place, trace.lift_of_true_altitude(), EXPOSURE_S, axis_arcmin),
        *(np.tan(OPTICS.half_diagonal_rad), np.tan(np.deg2rad(offset_deg))),
    )
    return trailed.worst() * PX_PER_RAD


@pytest.mark.parametrize("case", OUTSIDE)
def test_a_guide_star_that_may_pass_the_pole(case):
    assert told(*case) == pytest.approx(truth(*case), rel=0.02)


@pytest.mark.parametrize("case", ENCLOSING)
def test_a_guide_star_that_may_stand_round_the_pole(case):
    assert told(*case) == pytest.approx(truth(*case), rel=0.04)


def test_a_tolerance_near_the_pole_is_where_the_trails_reach_the_limit():
    task = guided(85.0, 30.0, 4.2, limit_px=12.0)
    found = tolerance(task, Vantage.of(Site(48.0, 0.0, 300.0), AIR))
    ends = [
        truth(48.0, 85.0, 30.0, 4.2, (side * found.azimuth_arcmin, 0.0))[1] for side in (-1.0, 1.0)
    ]
    assert max(ends) == pytest.approx(task.limit_px, rel=0.03)


@pytest.mark.parametrize("latitude_deg", [48.0, -30.0])
def test_at_the_pole_itself_the_field_turns_with_the_sky(latitude_deg):
    """A guide star there tells the mount to stand still: the corner draws its arc of the sky's
    turn, however well the axis stands, as long as it is not exactly there."""
    task = guided(np.copysign(90.0, latitude_deg), 0.0, 0.0)
    smear = judge(task, Vantage.of(Site(latitude_deg, 0.0), AIR), Alignment(20.0, 0.0)).corner
    turn = 2.0 * np.pi * EXPOSURE_S / 86164.0905
    arc_px = 2.0 * np.tan(OPTICS.half_diagonal_rad) * PX_PER_RAD * np.sin(turn / 2.0)
    assert smear.total_px == pytest.approx(arc_px, rel=0.01)


def test_the_interval_near_the_pole_is_that_of_random_axis_errors():
    # Each axis with its own worst guide star, against the fixed set of likely errors.
    rng = np.random.default_rng(7)
    task, vantage = guided(85.0, 30.0, 4.2), Vantage.of(Site(48.0, 0.0, 300.0), AIR)
    sizes = [
        judge(task, vantage, Alignment(*axis)).corner.total_px
        for axis in rng.multivariate_normal([6.0, -4.0], np.diag([2.25, 1.0]), 100)
    ]
    corner = judge(task, vantage, Alignment(6.0, -4.0, 1.5, 1.0)).corner
    low, high = np.quantile(sizes, [0.025, 0.975])
    assert corner.low_px == pytest.approx(low, rel=0.1)
    assert corner.high_px == pytest.approx(high, rel=0.1)


def test_where_the_circle_goes_round_the_pole_a_nearer_guide_star_is_advised():
    vantage = Vantage.of(Site(48.0, 0.0, 300.0), AIR)
    found = tolerance(guided(89.0, 30.0, 1.5, limit_px=3.0), vantage)
    assert not found.possible
    assert "guide star nearer to the target" in found.sentence
    assert tolerance(guided(89.0, 30.0, 0.0, limit_px=3.0), vantage).possible


@pytest.mark.parametrize("offset_deg", [0.0, 0.7, 1.5, 5.0])
@pytest.mark.parametrize("latitude_deg", [48.0, -33.0])
def test_the_map_about_the_pole(latitude_deg, offset_deg):
    """Outside the guide star's circle within 5 % and 6 % of the largest at that distance; inside
    it at least beyond what is found farther out."""
    vantage = Vantage.of(Site(latitude_deg, 0.0, 300.0), AIR)
    axis_arcmin = np.array([6.0, -4.0])
    axis_rad, rng = axis_arcmin / ARCMIN_PER_RAD, np.random.default_rng(9)
    drawn = sky_map(guided(41.0, 0.0, offset_deg), vantage, axis_rad, cells=300)
    for gap_deg in (0.9, 2.0, 4.0, 7.0, 10.0):  # from the pole, and a cell is half a degree
        cells = _cells_round_the_pole(drawn, latitude_deg, offset_deg + gap_deg, rng)
        exact = np.array([drawn.at(*drawn.place(*cell)) for cell in cells])
        shown = np.array([(drawn.centre_px[cell], drawn.corner_px[cell]) for cell in cells])
        assert np.all(np.abs(shown - exact) <= 0.05 * exact + 0.06 * exact.max(axis=0) + 1e-6)
    inside = _cells_round_the_pole(drawn, latitude_deg, 0.7 * offset_deg, rng)
    typical = np.nanmedian(drawn.corner_px)
    assert offset_deg == 0.0 or min(drawn.corner_px[cell] for cell in inside) > typical


def _cells_round_the_pole(drawn, latitude_deg, distance_deg, rng):
    around, far = rng.uniform(0.0, 2.0 * np.pi, 12), np.deg2rad(distance_deg)
    up, north = np.sin(np.deg2rad(abs(latitude_deg))), np.cos(np.deg2rad(latitude_deg))
    places = np.stack([
        north * np.cos(far) - up * np.sin(far) * np.cos(around),
        np.sin(far) * np.sin(around),
        up * np.cos(far) + north * np.sin(far) * np.cos(around),
    ])  # fmt: skip
    azimuth = np.rad2deg(np.arctan2(places[1], np.sign(latitude_deg) * places[0]))
    altitude = np.rad2deg(np.arcsin(places[2]))
    cells = [drawn.cell(*place) for place in zip(azimuth, altitude, strict=True)]
    return [cell for cell in cells if cell is not None and drawn.place(*cell) is not None]


@pytest.mark.parametrize(("azimuth_deg", "altitude_deg"), [(3.0, 47.0), (120.0, 30.0)])
def test_a_place_on_the_map_is_told_like_a_target_there(azimuth_deg, altitude_deg):
    site = Site(48.0, 0.0, 300.0)
    vantage, axis_arcmin = Vantage.of(site, AIR), np.array([6.0, -4.0])
    drawn = sky_map(guided(41.0, 0.0, 1.5), vantage, axis_arcmin / ARCMIN_PER_RAD, cells=50)
    place = np.deg2rad([azimuth_deg, altitude_deg])
    hour_angle_deg, dec_deg = np.rad2deg(erfa.ae2hd(*place, np.deg2rad(48.0)))
    smear = judge(guided(dec_deg, hour_angle_deg, 1.5), vantage, Alignment(*axis_arcmin))
    expected = smear.centre.total_px, smear.corner.total_px
    assert drawn.at(azimuth_deg, altitude_deg) == pytest.approx(expected, rel=1e-6)
