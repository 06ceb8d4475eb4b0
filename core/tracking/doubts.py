"""What in a run cannot be as it was meant, in sentences."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.alignment.usable import Note
from core.language import marked, say
from core.tracking.run import Run
from core.tracking.steered import Steered, steered

Floats = NDArray[np.float64]

GUIDING_LEFT_ON = "guiding left on"
GUIDING_UNCLEAR = "guiding perhaps left on"
EAST_SIGN = "sign of east"
NORTH_SIGN = "sign of north"
DRIVE_RATE = "drive rate"
MINUTES_FOR_SECONDS = "seconds and minutes"
COARSE = "coarse readings"
UNIT = "unit of the offsets"
_LARGEST_ARCSEC = 200.0  # peak to peak; common practice, no source

_MINUTES_TAKEN = marked(
    "The worm's period was entered as {given:g} s but {found:.0f} s stands in the run: minutes "
    "taken for seconds?"
)
_SECONDS_TAKEN = marked(
    "The worm's period was entered as {given:g} s but {found:.0f} s stands in the run: seconds "
    "for minutes?"
)
_AT_SOLAR = marked(
    "The drive falls behind the stars by {rate:.1f}″ a minute, as it does at the solar rate; "
    "choose the sidereal rate."
)
_AT_LUNAR = marked(
    "The drive falls behind the stars by {rate:.1f}″ a minute, as it does at the lunar rate; "
    "choose the sidereal rate."
)
_SIDEREAL_ARCSEC_PER_MIN = 902.46  # 15.041 arcsec a second
_RATES = {  # lead of the drive when set to another rate, arcsec a minute, lowest and highest
    _AT_SOLAR: (-2.7, -2.2),  # 15.000 arcsec a second: −2.46
    _AT_LUNAR: (
        -40.0,
        -18.0,
    ),  # the Moon's mean 13.18° a day: −32.9; drives differ in what they take
}


def guiding_left_on(
    utc_s: Floats, residual_arcsec: Floats, period_s: float, orders: int, swing_arcsec: float
) -> Note | None:
    """What is to be said of corrections while the run was recorded; None when there were none.

    `residual_arcsec` (n,): without trend and the periodic curve of `orders` harmonics,
    the first of amplitude `swing_arcsec`.
    """
    found = steered(utc_s, residual_arcsec, period_s, orders, swing_arcsec)
    if found is Steered.NO:
        return None
    if found is Steered.UNCLEAR:
        return Note(
            GUIDING_UNCLEAR,
            say(
                "Whether guiding corrections were left on, this run cannot tell: the star moved "
                "as little as a quiet drive or weak guiding would leave it. Make sure that they "
                "were off."
            ),
        )
    return Note(
        GUIDING_LEFT_ON,
        say(
            "The star was held in place more steadily than air and drive alone could leave it: "
            "guiding corrections were probably left on. This shows what guiding leaves over, "
            "not the drive; switch the corrections off and record again."
        ),
    )


def doubts(run: Run, slope_arcsec_per_min: float, sigma_arcsec_per_min: float) -> list[Note]:
    """Doubts about signs, rates and sampling; the slope is the drive's lead without the model."""
    found = [
        _reversed_east(run, slope_arcsec_per_min, sigma_arcsec_per_min),
        _reversed_north(run),
        _rate(run, slope_arcsec_per_min, sigma_arcsec_per_min),
    ]
    return [note for note in found if note is not None]


def size_note(peak_to_peak_arcsec: float) -> Note | None:
    """A swing no worm has."""
    if peak_to_peak_arcsec < _LARGEST_ARCSEC:
        return None
    return Note(
        UNIT,
        say(
            "A swing of {size:.0f}″ is more than any worm does: are the offsets really in "
            "arcseconds, and is the image scale right?",
            size=peak_to_peak_arcsec,
        ),
    )


def period_note(given_s: float, found_s: float) -> Note | None:
    """The period entered against the one in the run."""
    for factor, words in ((60.0, _MINUTES_TAKEN), (1 / 60.0, _SECONDS_TAKEN)):
        if abs(found_s / given_s / factor - 1.0) < 0.05:
            return Note(MINUTES_FOR_SECONDS, say(words, given=given_s, found=found_s))
    return None


def _trend(utc_s: Floats, values: Floats) -> float:
    """Slope per minute."""
    return float(np.polyfit((utc_s - utc_s[0]) / 60.0, values, 1)[0])


def _is_reversed(measured: float, expected: float, floor: float) -> bool:
    """A measured slope that is minus the expected one, not by chance."""
    return abs(expected) > floor and abs(measured + expected) < 0.25 * abs(expected)


def _reversed_east(run: Run, slope: float, sigma: float) -> Note | None:
    if not run.axis_is_known:
        return None
    expected = _trend(run.utc_s, run.modelled_lead_arcsec)
    if not _is_reversed(slope + expected, expected, max(8.0 * sigma, 0.3)):
        return None
    return Note(
        EAST_SIGN,
        say(
            "The star drifted {seen} where the alignment says {expected}: the sign of the east "
            "offsets may be reversed (east on the sky is positive).",
            seen=_way(slope + expected, say("east"), "west"),
            expected=_way(expected, say("east"), "west"),
        ),
    )


def _reversed_north(run: Run) -> Note | None:
    if not run.axis_is_known or run.north_arcsec is None:
        return None
    expected = _trend(run.utc_s, run.modelled_north_arcsec)
    measured = _trend(run.utc_s, run.north_arcsec) + expected
    if not _is_reversed(measured, expected, 0.3):
        return None
    return Note(
        NORTH_SIGN,
        say(
            "The star drifted {seen} where the alignment says {expected}: the sign of the "
            "north offsets may be reversed.",
            seen=_way(measured, say("north"), "south"),
            expected=_way(expected, say("north"), "south"),
        ),
    )


def _way(rate: float, positive: str, negative: str) -> str:
    return positive if rate > 0.0 else negative


def _rate(run: Run, slope: float, sigma: float) -> Note | None:
    if not run.axis_is_known or abs(slope) < max(6.0 * sigma, 0.5):
        return None
    for words, (low, high) in _RATES.items():
        if low <= slope <= high:
            return Note(DRIVE_RATE, say(words, rate=-slope))
    percent = abs(100.0 * slope / _SIDEREAL_ARCSEC_PER_MIN)
    if slope > 0.0:
        words = marked(
            "The drive runs ahead of the stars by {rate:.1f}″ a minute ({percent:.2f} %) beyond "
            "what the axis explains; check the tracking rate and the balance."
        )
    else:
        words = marked(
            "The drive runs behind the stars by {rate:.1f}″ a minute ({percent:.2f} %) beyond "
            "what the axis explains; check the tracking rate and the balance."
        )
    return Note(DRIVE_RATE, say(words, rate=abs(slope), percent=percent))
