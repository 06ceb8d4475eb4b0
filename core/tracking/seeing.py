"""How far the air alone moves a star in one axis."""

from __future__ import annotations

import math

from core.alignment.geometry import ARCSEC_PER_RAD

_WAVELENGTH_M = 500e-9


def image_motion_arcsec(fwhm_arcsec: float, aperture_m: float) -> float:
    """Standard deviation in one axis in short exposures of a telescope under seeing of this width.

    σ² = 0.179 λ² r0^(−5/3) D^(−1/3) with r0 = 0.98 λ / FWHM (Sarazin & Roddier, Astron. Astrophys.
    227, 294, 1990). Longer exposures average it down.
    """
    fried_m = 0.98 * _WAVELENGTH_M * ARCSEC_PER_RAD / fwhm_arcsec
    variance = 0.179 * _WAVELENGTH_M**2 * fried_m ** (-5.0 / 3.0) * aperture_m ** (-1.0 / 3.0)
    return math.sqrt(variance) * ARCSEC_PER_RAD
