"""How much sky is in view."""

import pytest

from core.imaging.sampling import ASSUMED_ARCMIN, assumed_field, field_of, typed_field
from core.mount.equipment import Accessory, Camera, Eyepiece, Guider, Telescope

TUBE = Telescope(key="t", name="Tube", focal_length_mm=1000.0)
CAMERA = Camera(key="c", name="Sensor", pixel_um=4.0, width_px=3000, height_px=2000)
GUIDER = Guider(
    key="g", name="Guide", pixel_um=4.0, width_px=1000, height_px=800, focal_length_mm=200.0
)
EYEPIECE = Eyepiece(key="e", name="Eye", focal_length_mm=10.0, apparent_field_deg=50.0)


@pytest.mark.parametrize(
    ("parts", "across", "name"),
    [
        # 8 mm over 1000 mm are 0.008 rad, 27.5 arcminutes, by hand.
        ((TUBE, CAMERA, GUIDER), 27.50, "Sensor"),
        # 3.2 mm over 200 mm are 0.016 rad, 55.0 arcminutes.
        ((TUBE, GUIDER), 55.0, "Guide"),
        # 50 degrees at a magnification of 100 are half a degree.
        ((TUBE, EYEPIECE), 30.0, "Eye"),
    ],
)
def test_the_field_of_what_is_there(parts, across, name) -> None:
    found = field_of(parts)
    assert found.across_arcmin == pytest.approx(across, rel=1e-3)
    assert f"“{name}”" in found.sentence


@pytest.mark.parametrize(
    "parts",
    [
        (),
        (TUBE,),
        (CAMERA,),
        (EYEPIECE,),
        (TUBE, Camera(key="c", name="Bare")),
        (TUBE, Accessory(key="a", name="Finder")),
    ],
)
def test_without_the_figures_there_is_no_field(parts) -> None:
    assert field_of(parts) is None


def test_what_is_assumed_is_said() -> None:
    assert assumed_field().across_arcmin == ASSUMED_ARCMIN
    assert "common practice, no source" in assumed_field().sentence
    assert typed_field(12.5).sentence == "12.5′ across, as you typed."
