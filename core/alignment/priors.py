"""What is taken for granted of the air, the reticle and the tube: errors no reading can show.

A short leg cannot tell a slow wander of the whole field, a sagging tube or a turned reticle from a
drift of the axis. Each is a nuisance whose size is assumed beforehand and widens the ± of the axis.
Zero leaves it out.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, fields

from core.finding import Code

ANGLE_MEASURED_DEG, ANGLE_NUDGED_DEG, ANGLE_BY_EYE_DEG = (
    0.3,
    1.25,
    3.0,
)  # common practice, no source


@dataclass(frozen=True)
class Priors:
    """Sizes of the nuisances, each one standard deviation unless it says otherwise.

    `reading_step_arcsec`: the division to which offsets were read; None: found in the readings.
    `angle_sigma_deg`: how well north of camera or reticle was set on the sky.
    `periodic_error_arcsec`: amplitude of the drive's periodic error, of which a turned reticle
    leaks a part into north; assumed only where no east offsets tell it.
    `slow_wander_arcsec`, `slow_wander_s`: wander of the whole field and its correlation time; 0.17″
    and 150 s after Taylor, McGraw, Zimmer & Pier (2010), AAS 215, 387.05, "several tenths of an
    arcsecond" over "the order of ten minutes".
    `flexure_arcsec_per_g`: how far the tube yields when gravity turns round in it (no source).
    """

    reading_step_arcsec: float | None = None
    angle_sigma_deg: float = ANGLE_NUDGED_DEG
    periodic_error_arcsec: float = 10.0
    slow_wander_arcsec: float = 0.17
    slow_wander_s: float = 150.0
    flexure_arcsec_per_g: float = 10.0


USUAL = Priors()
NONE = Priors(0.0, 0.0, 0.0, 0.0, slow_wander_s=USUAL.slow_wander_s, flexure_arcsec_per_g=0.0)


class PriorUnit(Code):
    """What a prior is stated in."""

    ARCSEC = "seconds of arc"
    DEGREES = "degrees"
    SECONDS = "seconds"
    ARCSEC_PER_G = "seconds of arc per g"


# Name → lowest and highest value that can be meant, and its unit.
RANGES: Mapping[str, tuple[float, float, PriorUnit]] = {
    "reading_step_arcsec": (0.0, 120.0, PriorUnit.ARCSEC),
    "angle_sigma_deg": (0.0, 45.0, PriorUnit.DEGREES),
    "periodic_error_arcsec": (0.0, 300.0, PriorUnit.ARCSEC),
    "slow_wander_arcsec": (0.0, 10.0, PriorUnit.ARCSEC),
    "slow_wander_s": (10.0, 3600.0, PriorUnit.SECONDS),
    "flexure_arcsec_per_g": (0.0, 300.0, PriorUnit.ARCSEC_PER_G),
}


def stated(values: Mapping[str, float], otherwise: Priors = USUAL) -> Priors:
    """`otherwise` with the values that somebody stated, by the names of the fields."""
    kept = {one.name: getattr(otherwise, one.name) for one in fields(Priors)}
    return Priors(**{**kept, **values})


def differing(priors: Priors) -> dict[str, float]:
    """What of them is not as usual, by the names of the fields."""
    values = {one.name: getattr(priors, one.name) for one in fields(Priors)}
    return {name: value for name, value in values.items() if value != getattr(USUAL, name)}
