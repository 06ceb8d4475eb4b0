"""What the computation is granted beforehand: by the equipment in use, and how north was set."""

from __future__ import annotations

from enum import Enum

from core.alignment.priors import (
    ANGLE_BY_EYE_DEG,
    ANGLE_MEASURED_DEG,
    ANGLE_NUDGED_DEG,
    Priors,
    stated,
)
from core.mount.equipment import Mount, Telescope


class NorthSet(Enum):
    """How well north of eyepiece or camera was set on the sky: one standard deviation, degrees."""

    MEASURED = ANGLE_MEASURED_DEG
    NUDGED = ANGLE_NUDGED_DEG  # the star was moved on purpose and ran along the line
    BY_EYE = ANGLE_BY_EYE_DEG


def priors_of(telescope: Telescope | None, mount: Mount | None, north_set: NorthSet) -> Priors:
    """The usual sizes, but for what is known of the tube, the drive and the reticle.

    A data sheet tells a periodic error from peak to peak, twice its amplitude.
    """
    known = {"angle_sigma_deg": north_set.value}
    if telescope is not None and telescope.flexure_arcsec_per_g is not None:
        known["flexure_arcsec_per_g"] = telescope.flexure_arcsec_per_g
    if mount is not None and mount.periodic_error_arcsec is not None:
        known["periodic_error_arcsec"] = mount.periodic_error_arcsec / 2.0
    return stated(known)
