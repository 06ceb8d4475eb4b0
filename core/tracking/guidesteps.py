"""How the mount answers a step: settling after a dither or slew, backlash at a reversal."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.special import stdtrit

from core.finding import Code, Finding
from core.tracking.run import UnusableRun


class BacklashTold(Code):
    """What is told of it."""

    PLAY = "play"


class GuideStep(Code):
    """What dither and reversal tell."""

    NO_READINGS = "no readings"
    UNSETTLED = "unsettled"
    SETTLED_LATE = "settled late"
    SETTLED = "settled"
    NO_RATE = "no rate"
    FEW_READINGS = "few readings"
    NO_TURN = "no turn"


# How long the star takes to settle after a dither or a slew.

Floats = NDArray[np.float64]

_LONG_S = 30.0  # common practice, no source


@dataclass(frozen=True)
class Settling:
    """`seconds`: from the dither until the star stays within the limit; None when it never did."""

    seconds: float | None
    first_offset_arcsec: float
    sentence: Finding


def settling_after(
    utc_s: Floats,
    offset_arcsec: Floats,
    dither_utc_s: float,
    within_arcsec: float,
    hold_s: float = 10.0,
) -> Settling:
    """`offset_arcsec` (n,): distance from the new place. Settled once it stays inside for `hold_s`.

    Raises UnusableRun when no reading follows the dither.
    """
    after = (utc_s >= dither_utc_s) & np.isfinite(offset_arcsec)
    if int(after.sum()) < 2 or not within_arcsec > 0.0:
        raise UnusableRun(GuideStep.NO_READINGS)
    elapsed, offset = utc_s[after] - dither_utc_s, np.abs(offset_arcsec[after])
    first = float(offset[0])
    for start in np.flatnonzero(offset <= within_arcsec).tolist():
        inside = (elapsed >= elapsed[start]) & (elapsed <= elapsed[start] + hold_s)
        if elapsed[-1] - elapsed[start] < hold_s:
            break
        if np.all(offset[inside] <= within_arcsec):
            seconds = float(elapsed[start])
            return Settling(seconds, first, _settled(seconds, within_arcsec))
    return Settling(
        None,
        first,
        Finding.of(GuideStep.UNSETTLED, within=within_arcsec, hold=hold_s),
    )


def _settled(seconds: float, within_arcsec: float) -> Finding:
    code = GuideStep.SETTLED if seconds <= _LONG_S else GuideStep.SETTLED_LATE
    return Finding.of(code, within=within_arcsec, seconds=seconds)


# Declination backlash from a reversal: how much is commanded before the star turns back.

_FEWEST = 6
_FITTED = 3  # level, slope and bend
NOTHING_ARCSEC = 0.5  # common practice, no source: less than this disturbs nobody


@dataclass(frozen=True)
class Backlash:
    """Play of an axis: `arcsec` with its standard deviation and the half-width of its 95 % interval
    (Student's, for the scatter is known from few readings), `seconds` at the guide rate.

    `answer`: star motion over commanded motion once the play is taken up; 1 when the guide rate
    is as stated.
    """

    arcsec: float
    sigma_arcsec: float
    half_width_arcsec: float
    seconds: float
    answer: float
    sentence: Finding


def backlash_of_reversal(
    commanded_arcsec: Floats, seen_arcsec: Floats, rate_arcsec_per_s: float
) -> Backlash:
    """`commanded_arcsec` (n,): motion asked for since the reversal, growing; `seen_arcsec` (n,):
    how far the star has moved, whichever sign; `rate_arcsec_per_s`: the guide rate.

    Raises UnusableRun when the star never answers or there are too few readings.
    """
    if not 0.01 <= rate_arcsec_per_s <= 200.0:
        raise UnusableRun(GuideStep.NO_RATE)
    good = np.isfinite(commanded_arcsec) & np.isfinite(seen_arcsec)
    asked, seen = commanded_arcsec[good] - commanded_arcsec[good][0], seen_arcsec[good]
    if asked.size < _FEWEST or np.any(np.diff(asked) < 0.0) or asked[-1] <= 0.0:
        raise UnusableRun(GuideStep.FEW_READINGS, fewest=_FEWEST)
    play, rate, variance, slope = _broken_line(asked, seen - seen[0])
    if rate < 0.2 or play > 0.9 * float(asked[-1]):
        raise UnusableRun(GuideStep.NO_TURN, asked=asked[-1])
    sigma = float(np.sqrt(max(variance, 1e-9)) / max(slope, 1e-9))
    half_width = float(stdtrit(max(asked.size - _FITTED, 1), 0.975)) * sigma
    said = Finding.of(BacklashTold.PLAY, play=play, half_width=half_width, rate=rate)
    return Backlash(play, sigma, half_width, play / rate_arcsec_per_s, rate, said)


def _broken_line(asked: Floats, seen: Floats) -> tuple[float, float, float, float]:
    """Play, answer, variance about the line, and the play's own weight (root of its information).

    Level until the play is taken up, then straight: least squares over the place of the bend.
    """
    bends = np.linspace(0.0, asked[-1], 801)[:-1]
    beyond = np.maximum(asked - bends[:, np.newaxis], 0.0)
    beyond_mean = beyond.mean(axis=1, keepdims=True)
    seen_mean = seen.mean()
    cross = ((beyond - beyond_mean) * (seen - seen_mean)).sum(axis=1)
    square = ((beyond - beyond_mean) ** 2).sum(axis=1)
    rate = cross / np.maximum(square, 1e-12)
    total = float(((seen - seen_mean) ** 2).sum())
    best = int(np.argmin(total - rate * cross))
    left = max(total - float(rate[best] * cross[best]), 0.0)
    moving = asked > bends[best]
    columns = np.column_stack([np.ones_like(asked), beyond[best], -rate[best] * moving])
    inverse = np.linalg.pinv(columns.T @ columns)
    variance = left / max(asked.size - _FITTED, 1)
    return (
        float(bends[best]),
        abs(float(rate[best])),
        variance,
        1.0 / max(float(np.sqrt(inverse[2, 2])), 1e-9),
    )
