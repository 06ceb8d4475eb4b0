"""How far the air alone moves a star in one axis."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.finding import Code, Finding
from core.tracking.exposure import Limit
from core.tracking.run import UnusableRun
from core.tracking.wormfit import STANDS_OUT, estimate, harmonic_columns
from core.tracking.wormperiod import FEWEST_TURNS
from core.units import ARCSEC_PER_RAD


class GuidingTold(Code):
    """What is told of it."""

    HOLDS = "holds"


class GuidingFault(Code):
    """What guiding shows."""

    FEW_READINGS = "few readings"
    TIMES = "times"
    SWINGS = "swings"
    LAGS_BEHIND = "lags behind"
    WORM_LEFT = "worm left over"
    EAST_WORSE = "right ascension worse"
    NORTH_WORSE = "declination worse"


_WAVELENGTH_M = 500e-9


def image_motion_arcsec(fwhm_arcsec: float, aperture_m: float) -> float:
    """Standard deviation in one axis in short exposures of a telescope under seeing of this width.

    σ² = 0.179 λ² r0^(−5/3) D^(−1/3) with r0 = 0.98 λ / FWHM (Sarazin & Roddier, Astron. Astrophys.
    227, 294, 1990). Longer exposures average it down.
    """
    fried_m = 0.98 * _WAVELENGTH_M * ARCSEC_PER_RAD / fwhm_arcsec
    variance = 0.179 * _WAVELENGTH_M**2 * fried_m ** (-5.0 / 3.0) * aperture_m ** (-1.0 / 3.0)
    return math.sqrt(variance) * ARCSEC_PER_RAD


# How well guiding holds the star, what is wrong with it, and what to change.

Floats = NDArray[np.float64]


class GuidedAxis(Code):
    """An axis that is guided."""

    RIGHT_ASCENSION = "right ascension"
    DECLINATION = "declination"


FEWEST_READINGS = 40
FWHM_PER_SIGMA = 2.3548200450309493  # √(8 ln 2)
_LAGS = 8
_SWINGS_BACK = -0.45  # of a correlation; steady guiding of pure noise reaches about −0.3
_LAGS_BEHIND = 0.6
_UNEVEN = 1.5  # common practice, no source: axes of a sound mount differ by less


@dataclass(frozen=True)
class AxisResidual:
    """One axis, arcsec on the sky. `swing`: the lowest correlation at lags of one to eight
    readings, `lag` that lag; `memory`: the correlation at one reading."""

    rms_arcsec: float
    mean_arcsec: float
    drift_arcsec_per_min: float
    peak_arcsec: float
    swing: float
    lag: int
    memory: float


@dataclass(frozen=True)
class GuidingCheck:
    """`growth`: part by which the star's width grows under the seeing given; None without it.

    `worm_amplitude_arcsec`: what guiding left of the worm, None when it cannot be told. `findings`
    are sentences with what to change, the most harmful first; none when all is well.
    """

    east: AxisResidual
    north: AxisResidual
    total_rms_arcsec: float
    total_rms_px: float
    ratio: float
    growth: float | None
    worm_amplitude_arcsec: float | None
    interval_s: float
    findings: tuple[Finding, ...]
    sentence: Finding


def check_guiding(
    utc_s: Floats,
    east_arcsec: Floats,
    north_arcsec: Floats,
    limit: Limit,
    *,
    seeing_fwhm_arcsec: float | None = None,
    worm_period_s: float | None = None,
) -> GuidingCheck:
    """Checks guided offsets (n,) of the guide star from its place, east and north positive.

    Raises UnusableRun when there is too little to judge.
    """
    utc_s, east, north = _usable(utc_s, east_arcsec, north_arcsec)
    axes = _axis(utc_s, east), _axis(utc_s, north)
    total = math.hypot(axes[0].rms_arcsec, axes[1].rms_arcsec)
    interval_s = float(np.median(np.diff(utc_s)))
    worm = _worm_left(utc_s, east, worm_period_s)
    found = _findings(axes[0], axes[1], interval_s, worm, total)
    growth = None
    if seeing_fwhm_arcsec is not None and seeing_fwhm_arcsec > 0.0:
        one_axis = total / math.sqrt(2.0)
        growth = math.hypot(1.0, FWHM_PER_SIGMA * one_axis / seeing_fwhm_arcsec) - 1.0
    return GuidingCheck(
        axes[0],
        axes[1],
        total,
        total / limit.scale_arcsec_per_px,
        axes[0].rms_arcsec / max(axes[1].rms_arcsec, 1e-9),
        growth,
        None if worm is None else worm[0],
        interval_s,
        tuple(found),
        Finding.of(
            GuidingTold.HOLDS, total=total, limit=limit, growth=growth, has_findings=bool(found)
        ),
    )


def _usable(utc_s: Floats, east: Floats, north: Floats) -> tuple[Floats, Floats, Floats]:
    good = np.isfinite(utc_s) & np.isfinite(east) & np.isfinite(north)
    if int(good.sum()) < FEWEST_READINGS:
        raise UnusableRun(GuidingFault.FEW_READINGS, count=int(good.sum()), fewest=FEWEST_READINGS)
    if np.any(np.diff(utc_s[good]) <= 0.0):
        raise UnusableRun(GuidingFault.TIMES)
    return utc_s[good], east[good], north[good]


def _axis(utc_s: Floats, values: Floats) -> AxisResidual:
    minutes = (utc_s - utc_s[0]) / 60.0
    slope, level = np.polyfit(minutes, values, 1)
    left = values - (level + slope * minutes)
    size = max(float(left @ left), 1e-12)
    correlation = np.array([left[:-lag] @ left[lag:] / size for lag in range(1, _LAGS + 1)])
    at = int(np.argmin(correlation))
    return AxisResidual(
        float(np.std(values)),
        float(np.mean(values)),
        float(slope),
        float(np.abs(values - np.mean(values)).max()),
        float(correlation[at]),
        at + 1,
        float(correlation[0]),
    )


def _worm_left(utc_s: Floats, east: Floats, period_s: float | None) -> tuple[float, float] | None:
    """Amplitude of the worm's turn left in the residual, and its standard deviation."""
    duration_s = float(utc_s[-1] - utc_s[0])
    if period_s is None or duration_s < FEWEST_TURNS * period_s:
        return None
    waves = harmonic_columns(utc_s, period_s, 1, float(utc_s[0]))
    columns = np.column_stack([np.ones_like(utc_s), waves])
    found = estimate(utc_s, np.ones_like(utc_s), columns, east)
    sigma = math.sqrt(float(np.diag(found.covariance)[1:].mean()))
    return float(np.hypot(*found.coefficients[1:])), sigma


def _findings(
    east: AxisResidual,
    north: AxisResidual,
    interval_s: float,
    worm: tuple[float, float] | None,
    total: float,
) -> list[Finding]:
    found = [
        _swings(GuidedAxis.RIGHT_ASCENSION, east, interval_s),
        _swings(GuidedAxis.DECLINATION, north, interval_s),
    ]
    found.append(_lags_behind(GuidedAxis.RIGHT_ASCENSION, east))
    found.append(_lags_behind(GuidedAxis.DECLINATION, north))
    found.append(_worm_note(worm, total))
    found.append(_uneven(east, north))
    return [note for note in found if note is not None]


def _swings(axis: GuidedAxis, part: AxisResidual, interval_s: float) -> Finding | None:
    if part.swing > _SWINGS_BACK:
        return None
    period_s = 2.0 * part.lag * interval_s
    return Finding.of(GuidingFault.SWINGS, axis=axis, period=period_s)


def _lags_behind(axis: GuidedAxis, part: AxisResidual) -> Finding | None:
    if part.memory < _LAGS_BEHIND or part.swing <= _SWINGS_BACK:
        return None
    return Finding.of(GuidingFault.LAGS_BEHIND, axis=axis)


def _worm_note(worm: tuple[float, float] | None, total: float) -> Finding | None:
    if worm is None or worm[0] < max(STANDS_OUT * worm[1], 0.3 * total):
        return None
    return Finding.of(GuidingFault.WORM_LEFT, size=worm[0])


def _uneven(east: AxisResidual, north: AxisResidual) -> Finding | None:
    ratio = east.rms_arcsec / max(north.rms_arcsec, 1e-9)
    if ratio > _UNEVEN:
        return Finding.of(GuidingFault.EAST_WORSE, ratio=ratio)
    if ratio < 1.0 / _UNEVEN:
        return Finding.of(GuidingFault.NORTH_WORSE, ratio=1.0 / ratio)
    return None
