"""How much sky is in view: through an eyepiece, a guide camera or the camera behind a telescope."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from core.language import say
from core.mount.equipment import Camera, Eyepiece, Guider, Part, Telescope
from core.mount.quantities import ImpossibleValue
from core.mount.sampling import field_of_view_deg

ASSUMED_ARCMIN = 6.0  # a small sensor behind a metre of focal length: common practice, no source
LEAST_ARCMIN, MOST_ARCMIN = 0.5, 1200.0


@dataclass(frozen=True)
class SeenField:
    """`across_arcmin`: the shorter way through the field. `sentence`: where the figure is from."""

    across_arcmin: float
    sentence: str


def assumed_field() -> SeenField:
    """For want of anything better."""
    return SeenField(
        ASSUMED_ARCMIN,
        say(
            "Taken to be {across:g}′ across, a small field (common practice, no source): type what "
            "you see, or choose telescope and camera on the Mount page.",
            across=ASSUMED_ARCMIN,
        ),
    )


def typed_field(across_arcmin: float) -> SeenField:
    """The person's own figure."""
    return SeenField(
        across_arcmin, say("{across:.3g}′ across, as you typed.", across=across_arcmin)
    )


def field_of(parts: Sequence[Part]) -> SeenField | None:
    """Of the first camera with its telescope, else a guide camera, else an eyepiece; None without.

    An eyepiece shows its apparent field divided by the magnification (small angles).
    """
    telescopes = [one for one in parts if isinstance(one, Telescope) and one.focal_length_mm]
    focal_mm = telescopes[0].focal_length_mm if telescopes else None
    cameras = [one for one in parts if type(one) is Camera]
    guiders = [one for one in parts if isinstance(one, Guider)]
    seen = [
        *((one, _of_camera(one, focal_mm)) for one in cameras),
        *((one, _of_camera(one, one.focal_length_mm or focal_mm)) for one in guiders),
        *((one, _of_eyepiece(one, focal_mm)) for one in parts if isinstance(one, Eyepiece)),
    ]
    for part, across in seen:
        if across is not None and LEAST_ARCMIN <= across <= MOST_ARCMIN:
            words = say("{across:.3g}′ across, from “{name}”.", across=across, name=part.name)
            return SeenField(across, words)
    return None


def _of_camera(camera: Camera, focal_mm: float | None) -> float | None:
    if not (focal_mm and camera.pixel_um and camera.width_px and camera.height_px):
        return None
    try:
        sides = field_of_view_deg(camera.width_px, camera.height_px, camera.pixel_um, focal_mm)
    except ImpossibleValue:
        return None
    return 60.0 * min(sides)


def _of_eyepiece(eyepiece: Eyepiece, focal_mm: float | None) -> float | None:
    if not (focal_mm and eyepiece.focal_length_mm and eyepiece.apparent_field_deg):
        return None
    return 60.0 * eyepiece.apparent_field_deg * eyepiece.focal_length_mm / focal_mm
