"""What one pixel sees: image scale, field of view, sampling of the seeing."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from core.imaging.task import Optics, UnusableTask
from core.language import marked, say
from core.mount.equipment import Camera, Eyepiece, Guider, ImpossibleValue, Part, Telescope
from core.units import ARCSEC_MM_PER_UM, ARCSEC_PER_RAD

# Telescope and camera together: what the smear budget and the sampling start from.

_FOCAL_LENGTH = marked("The focal length of “{name}” is not entered; see its data sheet.")
_PIXEL = marked("The pixel size of “{name}” is not entered; see its data sheet.")
_WIDTH = marked("The number of pixels across of “{name}” is not entered; see its data sheet.")
_HEIGHT = marked("The number of pixels down of “{name}” is not entered; see its data sheet.")


def optics_of(
    telescope: Telescope, camera: Camera, binning: int = 1, focal_factor: float = 1.0
) -> Optics:
    """The optics of a set. `focal_factor`: of a reducer (below 1) or a Barlow lens (above).

    Raises `ImpossibleValue` with a sentence that names the missing or impossible figure.
    """
    focal_length = _known(telescope.focal_length_mm, _FOCAL_LENGTH, telescope.name)
    pixel = _known(camera.pixel_um, _PIXEL, camera.name)
    width = _known(camera.width_px, _WIDTH, camera.name)
    height = _known(camera.height_px, _HEIGHT, camera.name)
    if binning < 1:
        raise ImpossibleValue(
            say("The binning is given as {binning}; it is 1 or more.", binning=binning)
        )
    if not 0.05 <= focal_factor <= 20.0:
        raise ImpossibleValue(
            say(
                "The reducer or Barlow factor is given as {factor:g}; it lies between 0.05 and "
                "20, and is 1 without either.",
                factor=focal_factor,
            )
        )
    try:
        return Optics(
            focal_length * focal_factor,
            pixel * binning,
            max(int(width) // binning, 1),
            max(int(height) // binning, 1),
        )
    except UnusableTask as sentence:
        raise ImpossibleValue(str(sentence)) from None


def _known(value: float | None, lack: str, name: str) -> float:
    if value is None:
        raise ImpossibleValue(say(lack, name=name))
    return value


# What one pixel sees: image scale, field of view, sampling of the seeing, guiding's share.
#
# Relations: scale = 206.265 ″ mm/µm × pixel / focal length (small angles); field = 2 atan(w / 2f).
# Image motion after Sarazin & Roddier, Astron. Astrophys. 227, 294 (1990): one-axis variance
# 0.179 λ² r0^(−5/3) D^(−1/3), with the seeing's width FWHM = 0.98 λ / r0.


# Common practice, no source: two to three pixels across the seeing.
FEWEST_PX, MOST_PX = 2.0, 3.0
# Common practice, no source: a guide star's place is found to about this part of a pixel.
CENTROID_PX = 0.1
# Common practice, no source: guiding that errs by less than this part of an image pixel is enough.
GUIDING_SHARE_PX = 0.5


def image_scale_arcsec_per_px(pixel_um: float, focal_length_mm: float, binning: int = 1) -> float:
    """Arcseconds a (binned) pixel spans at the centre of the field."""
    _check_positive(pixel_um, say("The pixel size"))
    _check_positive(focal_length_mm, say("The focal length"))
    _check_positive(binning, say("The binning"))
    return ARCSEC_MM_PER_UM * pixel_um * binning / focal_length_mm


def field_of_view_deg(
    width_px: int, height_px: int, pixel_um: float, focal_length_mm: float
) -> tuple[float, float]:
    """Width and height of the field, edge to edge."""
    _check_positive(focal_length_mm, say("The focal length"))
    sides = []
    for count, what in (
        (width_px, say("The sensor's width")),
        (height_px, say("The sensor's height")),
    ):
        _check_positive(count * pixel_um, what)
        half = count * pixel_um / 1000.0 / 2.0 / focal_length_mm
        sides.append(math.degrees(2.0 * math.atan(half)))
    return sides[0], sides[1]


def image_motion_arcsec(
    seeing_arcsec: float, aperture_mm: float, wavelength_nm: float = 500.0
) -> float:
    """One-axis rms motion of a star's image in short exposures; longer ones average it down."""
    _check_positive(seeing_arcsec, say("The seeing"))
    _check_positive(aperture_mm, say("The aperture"))
    wavelength_m = wavelength_nm * 1e-9
    fried_m = 0.98 * wavelength_m / (seeing_arcsec / ARCSEC_PER_RAD)
    variance = 0.179 * wavelength_m**2 * fried_m ** (-5 / 3) * (aperture_mm / 1000.0) ** (-1 / 3)
    return math.sqrt(variance) * ARCSEC_PER_RAD


class Fit(Enum):
    """Pixels against the seeing."""

    COARSE = "coarse"
    FITTING = "fitting"
    FINE = "fine"


@dataclass(frozen=True)
class Sampling:
    """`px_per_seeing`: pixels across the seeing's width at half maximum."""

    scale_arcsec_per_px: float
    px_per_seeing: float
    fit: Fit
    sentence: str


def sampling(scale_arcsec_per_px: float, seeing_arcsec: float) -> Sampling:
    """Judge an image scale against the seeing."""
    _check_positive(scale_arcsec_per_px, say("The image scale"))
    _check_positive(seeing_arcsec, say("The seeing"))
    across = seeing_arcsec / scale_arcsec_per_px
    fit = Fit.COARSE if across < FEWEST_PX else Fit.FINE if across > MOST_PX else Fit.FITTING
    said = {
        Fit.COARSE: say(
            "coarse: detail the sky allows is lost, guiding and alignment are forgiving"
        ),
        Fit.FITTING: say("a fitting sampling"),
        Fit.FINE: say(
            "fine: no more detail, and guiding and alignment must be better for it; binning helps"
        ),
    }[fit]
    sentence = say(
        "{seeing:g}″ seeing covers {across:.1f} pixels of {scale:.2f}″: {said} ({fewest:g} "
        "to {most:g} is common practice, no source).",
        seeing=seeing_arcsec,
        across=across,
        scale=scale_arcsec_per_px,
        said=said,
        fewest=FEWEST_PX,
        most=MOST_PX,
    )
    return Sampling(scale_arcsec_per_px, across, fit, sentence)


@dataclass(frozen=True)
class GuideScale:
    """`ratio`: guide pixel over image pixel. `resolution_px`: what guiding can tell, image px."""

    scale_arcsec_per_px: float
    ratio: float
    resolution_px: float
    is_enough: bool
    sentence: str


def guide_scale(guide_arcsec_per_px: float, image_arcsec_per_px: float) -> GuideScale:
    """Judge a guide camera's scale against the imaging camera's."""
    _check_positive(guide_arcsec_per_px, say("The guide scale"))
    _check_positive(image_arcsec_per_px, say("The image scale"))
    ratio = guide_arcsec_per_px / image_arcsec_per_px
    resolution = CENTROID_PX * ratio
    enough = resolution <= GUIDING_SHARE_PX
    most = GUIDING_SHARE_PX / CENTROID_PX
    advice = (
        say("fine enough")
        if enough
        else say(
            "too coarse: use a guide focal length at least {times:.1f} times as long",
            times=ratio / most,
        )
    )
    sentence = say(
        "A guide pixel of {scale:.2f}″ is {ratio:.1f} image pixels; guiding can tell about "
        "{resolution:.2g} of a pixel: {advice} (up to {most:g} is common practice, no "
        "source).",
        scale=guide_arcsec_per_px,
        ratio=ratio,
        resolution=resolution,
        advice=advice,
        most=most,
    )
    return GuideScale(guide_arcsec_per_px, ratio, resolution, enough, sentence)


def _check_positive(value: float, what: str) -> None:
    if not (math.isfinite(value) and value > 0.0):
        raise ImpossibleValue(
            say(
                "{what} is given as {value:g}; it is above zero: correct it.",
                what=what,
                value=value,
            )
        )


# How much sky is in view: through an eyepiece, a guide camera or the camera behind a telescope.

ASSUMED_ARCMIN = 6.0  # a small sensor behind a metre of focal length: common practice, no source
LEAST_ARCMIN, MOST_ARCMIN = 0.5, 1200.0


@dataclass(frozen=True)
class FieldOfView:
    """`across_arcmin`: the shorter way through the field. `sentence`: where the figure is from."""

    across_arcmin: float
    sentence: str


def assumed_field() -> FieldOfView:
    """For want of anything better."""
    return FieldOfView(
        ASSUMED_ARCMIN,
        say(
            "Taken to be {across:g}′ across, a small field (common practice, no source): type what "
            "you see, or choose telescope and camera on the Mount page.",
            across=ASSUMED_ARCMIN,
        ),
    )


def typed_field(across_arcmin: float) -> FieldOfView:
    """The person's own figure."""
    return FieldOfView(
        across_arcmin, say("{across:.3g}′ across, as you typed.", across=across_arcmin)
    )


def field_of(parts: Sequence[Part]) -> FieldOfView | None:
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
            return FieldOfView(across, words)
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
