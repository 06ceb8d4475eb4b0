"""What a telescope and a camera see together, in words."""

from __future__ import annotations

from dataclasses import dataclass

from core.imaging.sampling import (
    field_of_view_deg,
    guide_scale,
    image_motion_arcsec,
    optics_of,
    sampling,
)
from core.language import say
from core.mount.equipment import Camera, Guider, ImpossibleValue, Telescope
from core.units import ARCSEC_MM_PER_UM


@dataclass(frozen=True)
class ImageResult:
    """`across`: pixels across the seeing, None if not known. `missing`: what could not be told."""

    scale: str
    field: str
    sampling: str
    across: float | None
    guiding: str
    motion: str
    missing: tuple[str, ...]


def image_result(
    telescope: Telescope,
    camera: Camera,
    guiders: list[Guider],
    binning: int,
    factor: float,
    seeing_arcsec: float | None,
) -> ImageResult:
    """Raises `ImpossibleValue` with a sentence when the optics are not known."""
    optics = optics_of(telescope, camera, binning, factor)
    scale = optics.scale_arcsec_per_px
    sides = field_of_view_deg(
        optics.width_px, optics.height_px, optics.pixel_um, optics.focal_length_mm
    )
    missing = []
    told, across, motion = "", None, ""
    if seeing_arcsec is None:
        missing.append(say("The sampling: the seeing is not entered."))
    else:
        judged = sampling(scale, seeing_arcsec)
        told, across = judged.sentence, judged.px_per_seeing
        motion = _motion(telescope, seeing_arcsec, missing)
    return ImageResult(
        scale=f"{scale:.2f}″",
        field=f"{_angle(sides[0])} × {_angle(sides[1])}",
        sampling=told,
        across=across,
        guiding=_guiding(guiders, optics.focal_length_mm, scale, missing),
        motion=motion,
        missing=tuple(missing),
    )


def _angle(degrees: float) -> str:
    return f"{degrees:.2f}°" if degrees >= 1.0 else f"{60.0 * degrees:.1f}′"


def _motion(telescope: Telescope, seeing_arcsec: float, missing: list[str]) -> str:
    if telescope.aperture_mm is None:
        missing.append(
            say(
                "How much stars dance: the aperture of “{telescope}” is not entered.",
                telescope=telescope.name,
            )
        )
        return ""
    size = image_motion_arcsec(seeing_arcsec, telescope.aperture_mm)
    return say(
        "In short exposures a star dances by about {size:.2g}″ (one axis, rms); "
        "guiding cannot take that out and should not chase it: guide with "
        "exposures of seconds.",
        size=size,
    )


def _guiding(guiders: list[Guider], focal_mm: float, scale: float, missing: list[str]) -> str:
    if not guiders:
        missing.append(say("Guiding: the set has no guide camera."))
        return ""
    guider = guiders[0]
    if guider.pixel_um is None:
        missing.append(
            say("Guiding: the pixel size of “{camera}” is not entered.", camera=guider.name)
        )
        return ""
    own = guider.focal_length_mm
    try:
        judged = guide_scale(ARCSEC_MM_PER_UM * guider.pixel_um / (own or focal_mm), scale)
    except ImpossibleValue as reason:
        missing.append(str(reason))
        return ""
    if own:
        return judged.sentence
    beside = say("It has no focal length of its own and looks through the telescope.")
    return f"{judged.sentence} {beside}"
