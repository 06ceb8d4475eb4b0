"""How the mount answers a step: settling after a dither or slew, backlash at a reversal."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.special import stdtrit

from core.language import marked, say
from core.tracking.run import UnusableRun

# How long the star takes to settle after a dither or a slew.

Floats = NDArray[np.float64]

_LONG_S = 30.0  # common practice, no source


@dataclass(frozen=True)
class Settling:
    """`seconds`: from the dither until the star stays within the limit; None when it never did."""

    seconds: float | None
    first_offset_arcsec: float
    sentence: str


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
        raise UnusableRun(
            say("No readings follow the dither, or the limit to settle within is not above zero.")
        )
    elapsed, offset = utc_s[after] - dither_utc_s, np.abs(offset_arcsec[after])
    first = float(offset[0])
    for start in np.flatnonzero(offset <= within_arcsec).tolist():
        inside = (elapsed >= elapsed[start]) & (elapsed <= elapsed[start] + hold_s)
        if elapsed[-1] - elapsed[start] < hold_s:
            break
        if np.all(offset[inside] <= within_arcsec):
            seconds = float(elapsed[start])
            return Settling(seconds, first, _settling_sentence(seconds, within_arcsec))
    return Settling(
        None,
        first,
        say(
            "The star did not stay within {within:.1f}″ for {hold:.0f} s after the dither: "
            "allow more, or look for backlash and over-correction.",
            within=within_arcsec,
            hold=hold_s,
        ),
    )


def _settling_sentence(seconds: float, within_arcsec: float) -> str:
    words = marked(
        "The star settled within {within:.1f}″ after {seconds:.0f} s, which is long: dither less "
        "far, in right ascension only, or correct a larger share."
    )
    if seconds <= _LONG_S:
        words = marked(
            "The star settled within {within:.1f}″ after {seconds:.0f} s; wait that long before "
            "the next exposure."
        )
    return say(words, within=within_arcsec, seconds=seconds)


# Declination backlash from a reversal: how much is commanded before the star turns back.

_FEWEST = 6
_FITTED = 3  # level, slope and bend
_NOTHING_ARCSEC = 0.5  # common practice, no source: less than this disturbs nobody


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
    sentence: str


def backlash_of_reversal(
    commanded_arcsec: Floats, seen_arcsec: Floats, rate_arcsec_per_s: float
) -> Backlash:
    """`commanded_arcsec` (n,): motion asked for since the reversal, growing; `seen_arcsec` (n,):
    how far the star has moved, whichever sign; `rate_arcsec_per_s`: the guide rate.

    Raises UnusableRun when the star never answers or there are too few readings.
    """
    if not 0.01 <= rate_arcsec_per_s <= 200.0:
        raise UnusableRun(
            say(
                "The guide rate is not known; enter arcseconds a second (half the sidereal "
                "rate is 7.5)."
            )
        )
    good = np.isfinite(commanded_arcsec) & np.isfinite(seen_arcsec)
    asked, seen = commanded_arcsec[good] - commanded_arcsec[good][0], seen_arcsec[good]
    if asked.size < _FEWEST or np.any(np.diff(asked) < 0.0) or asked[-1] <= 0.0:
        raise UnusableRun(
            say(
                "A reversal needs at least {fewest} readings while the motion asked for grows "
                "in one direction; repeat it with short, equal pulses.",
                fewest=_FEWEST,
            )
        )
    play, rate, variance, slope = _broken_line(asked, seen - seen[0])
    if rate < 0.2 or play > 0.9 * float(asked[-1]):
        raise UnusableRun(
            say(
                "The star did not turn back within the motion asked for: the backlash is "
                "larger than {asked:.0f}″, or the axis does not answer. Ask for more, and "
                "check the cable.",
                asked=asked[-1],
            )
        )
    sigma = float(np.sqrt(max(variance, 1e-9)) / max(slope, 1e-9))
    half_width = float(stdtrit(max(asked.size - _FITTED, 1), 0.975)) * sigma
    said = _sentence(play, half_width, rate)
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


def _sentence(play: float, half_width: float, rate: float) -> str:
    if play < max(_NOTHING_ARCSEC, half_width):
        words = say(
            "No declination backlash beyond {size:.1f}″ shows.",
            size=max(half_width, _NOTHING_ARCSEC),
        )
    else:
        words = say(
            "Declination has {play:.1f}″ ± {half_width:.1f}″ of backlash: each reversal "
            "waits that long. Leave the axis slightly out of balance or the alignment "
            "slightly off, so that corrections go one way; or have the worm adjusted.",
            play=play,
            half_width=half_width,
        )
    if not 0.7 <= rate <= 1.4:
        words += " " + say(
            "The star moves {rate:.2f} times as far as asked: the guide rate is not the "
            "one stated, or the calibration was made at another declination.",
            rate=rate,
        )
    return words
