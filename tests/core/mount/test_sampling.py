"""Image scale, field and sampling; the relations' sources stand in the module and beside."""

import numpy as np
import pytest

from core.imaging.sampling import (
    Fit,
    field_of_view_deg,
    guide_scale,
    image_motion_arcsec,
    image_scale_arcsec_per_px,
    sampling,
)
from core.mount.equipment import ImpossibleValue


def test_image_scale_of_a_micrometre_at_a_millimetre():
    # Elementary: one radian is 206 264.806″, so 1 µm at 1000 mm is 0.206265″.
    assert image_scale_arcsec_per_px(1.0, 1000.0) == pytest.approx(0.206264806, rel=1e-8)
    assert image_scale_arcsec_per_px(3.8, 600.0, binning=2) == pytest.approx(2.61269, abs=1e-5)


def test_field_of_view_is_exact_for_wide_fields_too():
    # Elementary: a 36 × 24 mm frame (ISO 1007 size 135) behind 18 mm spans 90° × 67.38°.
    wide = field_of_view_deg(3600, 2400, 10.0, 18.0)
    assert wide == pytest.approx((90.0, np.rad2deg(2 * np.arctan(2 / 3))))
    small = field_of_view_deg(6000, 4000, 3.8, 600.0)
    assert small[0] == pytest.approx(6000 * 3.8e-3 / 600.0 * 57.29578, rel=2e-4)


@pytest.mark.parametrize(("aperture_mm", "motion"), [(50, 0.485), (100, 0.432), (200, 0.385)])
def test_image_motion(aperture_mm, motion):
    # Sarazin & Roddier (1990), σ² = 0.179 λ² r0^(−5/3) D^(−1/3), FWHM = 0.98 λ/r0, computed by
    # hand for 1″ and 500 nm; it grows as the seeing to the power 5/6.
    assert image_motion_arcsec(1.0, aperture_mm) == pytest.approx(motion, abs=1e-3)
    ratio = image_motion_arcsec(3.0, aperture_mm) / image_motion_arcsec(1.0, aperture_mm)
    assert ratio == pytest.approx(3.0 ** (5 / 6))


@pytest.mark.parametrize(
    ("scale", "fit", "words"),
    [(2.5, Fit.COARSE, "coarse"), (1.3, Fit.FITTING, "fitting"), (0.5, Fit.FINE, "binning")],
)
def test_sampling_against_the_seeing(scale, fit, words):
    # Two to three pixels across the seeing: common practice, no source.
    found = sampling(scale, 3.0)
    assert found.fit is fit
    assert found.px_per_seeing == pytest.approx(3.0 / scale)
    assert words in found.sentence
    assert "common practice, no source" in found.sentence


def test_guide_scale_against_image_scale():
    good, poor = guide_scale(4.3, 1.3), guide_scale(13.0, 1.3)
    assert good.is_enough
    assert good.resolution_px == pytest.approx(0.33, abs=0.01)
    assert not poor.is_enough
    assert "at least 2.0 times as long" in poor.sentence


@pytest.mark.parametrize(
    "make",
    [
        lambda: image_scale_arcsec_per_px(0.0, 600.0),
        lambda: image_scale_arcsec_per_px(3.8, -600.0),
        lambda: field_of_view_deg(0, 10, 3.8, 600.0),
        lambda: image_motion_arcsec(float("nan"), 100.0),
        lambda: sampling(1.0, 0.0),
        lambda: guide_scale(float("inf"), 1.0),
    ],
)
def test_impossible_values_are_refused(make):
    with pytest.raises(ImpossibleValue, match="above zero"):
        make()
