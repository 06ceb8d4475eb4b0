"""Smear against trailed images simulated by other rotations, other air and a searching guider."""

import erfa
import numpy as np
import pytest

from core.imaging.task import ImagedTarget, Optics, Task, Vantage
from core.imaging.tolerance import Alignment
from core.imaging.verdict import judge
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD
from tests.truth.raytrace import RayTrace
from tests.truth.trailed import TrailedField, largest_extent

OPTICS = Optics(600.0, 3.8, 6000, 4000)
AROUND = np.deg2rad(np.arange(0.0, 360.0, 15.0))
PER_CENT = 0.02
UNRESOLVED_PX = 0.0005  # where refraction and axis error cancel, the two airs’ difference shows


def place_of(rng, dec_deg):
    """A site and an hour angle at which a star of this declination is 20° to 75° high."""
    while True:
        latitude_deg, hour_angle_deg = rng.uniform(-65.0, 65.0), rng.uniform(-90.0, 90.0)
        _, altitude = erfa.hd2ae(*np.deg2rad([hour_angle_deg, dec_deg, latitude_deg]))
        if 20.0 < np.rad2deg(altitude) < 75.0:
            return Site(latitude_deg, 0.0, 300.0), hour_angle_deg


def brute_force(task, site, air, hour_angle_deg, axis_arcmin):
    """Smear in pixels at the centre and the worst corner."""
    field = TrailedField(
        hour_angle_deg,
        task.target.declination_deg,
        site.latitude_deg,
        RayTrace.over(site, air).lift_of_true_altitude(),
        task.exposure_s,
        axis_arcmin,
    )
    compass = np.stack([np.sin(AROUND), np.cos(AROUND)], axis=-1)
    corners = np.tan(task.optics.half_diagonal_rad) * compass
    scale = task.optics.focal_length_mm * 1000.0 / task.optics.pixel_um
    if not task.is_guided:
        trails = field.trails(np.vstack([np.zeros(2), corners]))
        extents = largest_extent(trails) * scale
        return extents[0], extents[1:].max()
    pairs = []
    for corner, way in zip(corners, compass, strict=True):
        guide = -np.tan(task.guide_star_offset_rad) * way
        trails = field.trails(np.vstack([np.zeros(2), corner]), guide)
        pairs.append(largest_extent(trails) * scale)
    return np.max(pairs, axis=0)


@pytest.mark.parametrize("dec_deg", [-60.0, -35.0, -10.0, 0.0, 20.0, 45.0, 65.0, 80.0])
@pytest.mark.parametrize("beyond_corner_arcmin", [None, 0.0, 45.0])
def test_smear_agrees_with_trailed_images(dec_deg, beyond_corner_arcmin):
    rng = np.random.default_rng(int(dec_deg) + 100)
    for exposure_s in (120.0, 900.0) if beyond_corner_arcmin is None else (900.0,):
        site, hour_angle_deg = place_of(rng, dec_deg)
        air = Air(980.0, rng.uniform(-5.0, 20.0))
        axis_arcmin = rng.uniform(-30.0, 30.0, 2)
        guide = beyond_corner_arcmin
        if guide is not None:
            guide += OPTICS.half_diagonal_rad * ARCMIN_PER_RAD
        target = ImagedTarget(dec_deg, hour_angle_deg, hour_angle_deg)
        task = Task(target, OPTICS, exposure_s, guide)
        smear = judge(task, Vantage.of(site, air), Alignment(*axis_arcmin))
        centre, corner = brute_force(task, site, air, hour_angle_deg, axis_arcmin)
        assert smear.centre.total_px == pytest.approx(centre, rel=PER_CENT, abs=UNRESOLVED_PX)
        assert smear.corner.total_px == pytest.approx(corner, rel=PER_CENT, abs=UNRESOLVED_PX)
        assert corner > 20.0 * UNRESOLVED_PX  # there was something to find


def test_refraction_alone_agrees_with_trailed_images():
    rng = np.random.default_rng(5)
    for dec_deg in (-60.0, -20.0, 15.0, 50.0, 80.0):
        site, hour_angle_deg = place_of(rng, dec_deg)
        task = Task(ImagedTarget(dec_deg, hour_angle_deg, hour_angle_deg), OPTICS, 600.0)
        smear = judge(task, Vantage.of(site, Air(980.0)), Alignment(0.0, 0.0))
        centre, _ = brute_force(task, site, Air(980.0), hour_angle_deg, (0.0, 0.0))
        assert smear.centre.air_px == pytest.approx(centre, rel=PER_CENT, abs=UNRESOLVED_PX)
        assert smear.centre.air_px == smear.centre.total_px
