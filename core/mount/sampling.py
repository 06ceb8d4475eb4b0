"""What one pixel sees: image scale, field of view, sampling of the seeing, guiding's share.

Relations: scale = 206.265 ″ mm/µm × pixel / focal length (small angles); field = 2 atan(w / 2f).
Image motion after Sarazin & Roddier, Astron. Astrophys. 227, 294 (1990): one-axis variance
0.179 λ² r0^(−5/3) D^(−1/3), with the seeing's width FWHM = 0.98 λ / r0.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

from core.language import say
from core.mount.quantities import ImpossibleValue

ARCSEC_MM_PER_UM = math.degrees(1.0) * 3600.0 / 1000.0  # 206.265
_ARCSEC_PER_RAD = math.degrees(1.0) * 3600.0

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
    fried_m = 0.98 * wavelength_m / (seeing_arcsec / _ARCSEC_PER_RAD)
    variance = 0.179 * wavelength_m**2 * fried_m ** (-5 / 3) * (aperture_mm / 1000.0) ** (-1 / 3)
    return math.sqrt(variance) * _ARCSEC_PER_RAD


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
