"""Smear from polar misalignment against published relations. Each source stands beside its check.

The relations are rules of thumb: first order in the axis error and in the size of the field. Where
the exact model differs by more than the rounding of the rule, the test says by how much.
"""

import numpy as np
import pytest

from core.imaging.task import ImagedTarget, Optics, Task, Vantage
from core.imaging.tolerance import Alignment, tolerance
from core.imaging.verdict import judge
from core.sky.refraction import Refraction

NO_AIR = Refraction(0.0, 0.0)
TANGENT_AIR = Refraction(np.deg2rad(58.3 / 3600.0), 0.0)
AT_45 = Vantage(np.deg2rad(45.0), NO_AIR)


def hook_task(dec_deg, apart_deg, minutes, focal_mm, limit_um):
    """A field small against the distance of the guide star; the limit is half a pixel."""
    pixel_um = 2.0 * limit_um
    side = int(focal_mm * 1000.0 / pixel_um * np.deg2rad(apart_deg) / 5.0)
    optics = Optics(focal_mm, pixel_um, side, 1)
    target = ImagedTarget(dec_deg, -30.0, 30.0)
    return Task(target, optics, minutes * 60.0, apart_deg * 60.0, limit_px=0.5)


def hook_error_deg(trail_um, minutes, focal_mm, apart_deg, dec_deg):
    """Hook, J. Brit. Astron. Assoc. 99, 19 (1989), as quoted in public posts."""
    return 750.0 * trail_um * np.cos(np.deg2rad(dec_deg)) / (minutes * focal_mm * apart_deg)


def test_hook_worked_example():
    # Same source: 10′ off, 5 minutes at 300 mm, guide star 3° away, declination 41°: 1.33 µm.
    # In the rule the declination is the guide star's. Of all guide stars around a field at 41° the
    # worst lies 2.7° nearer the pole; for it the exact smear is 4.5 % larger than the rule's.
    task = hook_task(41.0, 3.0, 5.0, 300.0, 1.33)
    smear = judge(task, AT_45, Alignment(0.0, 10.0)).corner.total_px * 2.0 * 1.33
    assert hook_error_deg(1.33, 5.0, 300.0, 3.0, 41.0) * 60.0 == pytest.approx(10.0, abs=0.05)
    assert smear == pytest.approx(1.33 * 1.045, rel=0.01)
    nearer_deg = 41.0 + np.rad2deg(task.guide_star_offset_rad)
    assert smear == pytest.approx(
        1.33 * np.cos(np.deg2rad(41)) / np.cos(np.deg2rad(nearer_deg)), rel=0.006
    )


@pytest.mark.parametrize("minutes", [1.0, 5.0, 30.0])
@pytest.mark.parametrize("dec_deg", [-60.0, -20.0, 0.0, 30.0, 60.0])
def test_hook_for_a_small_field(dec_deg, minutes):
    # Hook as above. Guide star 0.1° away, axis 3′ off: the exact model agrees to 0.6 %.
    site = Vantage(np.deg2rad(np.copysign(45.0, dec_deg)), NO_AIR)
    trail_um = 3.0 / 60.0 * minutes * 30_000.0 * 0.1 / 750.0 / np.cos(np.deg2rad(dec_deg))
    found = tolerance(hook_task(dec_deg, 0.1, minutes, 30_000.0, trail_um), site)
    assert found.largest_error_arcmin == pytest.approx(3.0, rel=0.006)


@pytest.mark.parametrize(
    ("dec_deg", "apart_deg", "error_deg", "stricter"),
    [(0, 3.0, 1.0, 0.001), (41, 3.0, 1.0, 0.056), (60, 0.5, 1.0, 0.042), (80, 3.0, 1.0, 0.33)],
)
def test_by_how_much_hook_is_too_generous(dec_deg, apart_deg, error_deg, stricter):
    # Our own computation: guide star and axis both stand nearer to each other than the rule has it.
    trail_um = error_deg * 5.0 * 300.0 * apart_deg / 750.0 / np.cos(np.deg2rad(dec_deg))
    found = tolerance(hook_task(dec_deg, apart_deg, 5.0, 300.0, trail_um), AT_45)
    assert 1.0 - found.largest_error_arcmin / (60.0 * error_deg) == pytest.approx(
        stricter, abs=0.01
    )


@pytest.mark.parametrize(("dec_deg", "factor"), [(30.0, 1.1547), (60.0, 2.0)])
def test_field_rotation_grows_as_one_over_the_cosine_of_declination(dec_deg, factor):
    # Derived: field rotation from misalignment is at most ω·E / cos δ.
    def limit(dec):
        return tolerance(hook_task(dec, 0.1, 5.0, 1000.0, 0.05), AT_45).largest_error_arcmin

    assert limit(0.0) / limit(dec_deg) == pytest.approx(factor, rel=0.005)


def drift_task(dec_deg, hour_angle_deg, **options):
    """One minute at one arcsecond to the pixel, a field of no size."""
    optics = Optics(206.264806, 1.0, 1, 1)
    return Task(ImagedTarget(dec_deg, hour_angle_deg, hour_angle_deg), optics, 60.0, **options)


@pytest.mark.parametrize(
    ("dec_deg", "hour_angle_deg", "axis_arcmin", "arcsec"),
    [
        (0.0, 0.0, (1.0, 0.0), 0.18563),
        (30.0, -90.0, (0.0, 1.0), 0.26252),
        (30.0, 90.0, (0.0, 1.0), 0.26252),
    ],
)
def test_unguided_drift_of_one_minute(dec_deg, hour_angle_deg, axis_arcmin, arcsec):
    # Derived: dδ/dt = −ω(Δh sin H + ΔA cos φ cos H) with ω·1′ = 0.26252″ per minute;
    # there is no drift in right ascension from that error at these hour angles.
    task = drift_task(dec_deg, hour_angle_deg - 0.125)
    smear = judge(task, AT_45, Alignment(*axis_arcmin)).centre
    assert smear.total_px == pytest.approx(arcsec, rel=0.002)


def test_king_rate_stops_the_star_where_the_formula_says():
    # King's rate, formula from memory, verified numerically: for an axis on the refracted pole
    # the drive period at φ 45°, δ 0°, H 0 is longer than 1436.07 min by 0.4059 min.
    vantage = Vantage(np.deg2rad(45.0), TANGENT_AIR)
    on_refracted = Alignment(0.0, vantage.pole_lift_rad * 180.0 * 60.0 / np.pi)
    sidereal = judge(drift_task(0.0, -0.125), vantage, on_refracted).centre
    king = drift_task(0.0, -0.125, tracking_rate=1436.07 / (1436.07 + 0.4059))
    slowed = judge(king, vantage, on_refracted).centre
    assert sidereal.total_px == pytest.approx(15.041 * 60.0 * 0.4059 / 1436.07, rel=0.01)
    assert slowed.total_px < 0.01 * sidereal.total_px
