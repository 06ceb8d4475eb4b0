"""Optics of a set."""

from dataclasses import replace

import pytest

from core.imaging.sampling import optics_of
from core.mount.equipment import ImpossibleValue
from tests.core.mount.invented import CAMERA, TUBE


def test_reducer_and_binning_change_the_scale():
    plain, both = optics_of(TUBE, CAMERA), optics_of(TUBE, CAMERA, 2, 0.8)
    assert plain.scale_arcsec_per_px == pytest.approx(206.264806 * 3.8 / 600.0)
    assert both.scale_arcsec_per_px == pytest.approx(206.264806 * 7.6 / 480.0)
    assert (both.width_px, both.height_px) == (3000, 2000)


@pytest.mark.parametrize(
    ("make", "words"),
    [
        (lambda: optics_of(replace(TUBE, focal_length_mm=None), CAMERA), "focal length of “Short"),
        (lambda: optics_of(TUBE, replace(CAMERA, width_px=None)), "pixels across of “Cooled"),
        (lambda: optics_of(TUBE, CAMERA, 0), "binning"),
        (lambda: optics_of(TUBE, CAMERA, 1, -1.0), "Barlow"),
        (lambda: optics_of(replace(TUBE, focal_length_mm=5.0), CAMERA), "more than 60° across"),
    ],
)
def test_what_is_missing_is_named(make, words):
    with pytest.raises(ImpossibleValue, match=words):
        make()
