"""How a mount rings after a tap or a touch of the focuser: first swing, frequency, settling."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import least_squares

from core.alignment.driftlog.records import BadRow
from core.alignment.driftlog.table import (
    SEPARATORS,
    doubled_sentence,
    fitted,
    is_remark,
    names_in,
    number,
    shown,
    split,
)
from core.finding import Code, Finding
from core.tracking.run import UnusableRun
from core.tracking.runlog import SCALE_KEY, ScaleNeeded, scale_in_remark
from core.tracking.wormperiod import spectrum


class TapTold(Code):
    """What is told of it."""

    RINGS = "rings"


class LoadTold(Code):
    """The load against the capacity."""

    OVERLOADED = "overloaded"
    HEAVY = "heavy"
    LIGHT = "light"


class ChangeTold(Code):
    """What a change did to the settling."""

    NO_CHANGE = "no change"
    HELPED = "helped"
    HARMED = "harmed"


class TapFault(Code):
    """Why a tap tells nothing."""

    FEW_READINGS = "few readings"
    FEW_AFTER = "few after"
    TOO_FAST = "too fast"
    NO_TAP = "no tap"
    NO_RING = "no ring"
    NO_MASSES = "no masses"
    LONG = "long"
    DOUBLED = "doubled"
    EMPTY = "empty"
    NO_NAMES = "no names"
    LINE = "line"
    SHORT_LINE = "short line"
    NO_VALUE = "no value"
    NO_SCALE = "no scale"


Floats = NDArray[np.float64]

_FEWEST = 30
_PER_SWING = 2.5  # readings in a swing; with fewer the frequency may be another one folded
_COMMON_LOAD = 0.6  # of the listed capacity, for imaging: common practice, no source
_STARTS = (0.3, 1.0, 3.0)  # damping times to begin the fit from, in units of the record's third


@dataclass(frozen=True)
class Vibration:
    """A damped swing: offset = first swing · exp(−t/damping) · cos(2π frequency t + phase).

    Sigmas are standard deviations. `settling_s`: from the tap until the swing stays below
    `settled_arcsec`.
    """

    first_swing_arcsec: float
    first_swing_sigma_arcsec: float
    frequency_hz: float
    frequency_sigma_hz: float
    damping_s: float
    damping_sigma_s: float
    settling_s: float
    settling_sigma_s: float
    settled_arcsec: float
    noise_arcsec: float
    sentence: Finding


def vibration(
    time_s: Floats,
    offset_arcsec: Floats,
    *,
    tap_s: float | None = None,
    settled_arcsec: float = 1.0,
) -> Vibration:
    """From readings (n,) that begin before or at the tap. `tap_s`: None to find it.

    Raises UnusableRun when nothing rings, or the readings are too few or too slow.
    """
    good = np.isfinite(time_s) & np.isfinite(offset_arcsec)
    time, offset = time_s[good], offset_arcsec[good]
    if time.size < _FEWEST or np.any(np.diff(time) <= 0.0):
        raise UnusableRun(TapFault.FEW_READINGS, fewest=_FEWEST)
    start = _tap(time, offset) if tap_s is None else tap_s
    ringing = time >= start
    if int(ringing.sum()) < _FEWEST // 2:
        raise UnusableRun(TapFault.FEW_AFTER)
    elapsed, after = time[ringing] - start, offset[ringing]
    parameters, covariance, noise = _fit(elapsed, after)
    _check_speed(elapsed, abs(float(parameters[3])))
    return _record(parameters, covariance, noise, settled_arcsec, float(elapsed[-1]))


def _check_speed(elapsed: Floats, frequency_hz: float) -> None:
    interval_s = float(np.median(np.diff(elapsed)))
    if frequency_hz * interval_s * _PER_SWING > 1.0:
        raise UnusableRun(TapFault.TOO_FAST, interval=interval_s)


def _tap(time: Floats, offset: Floats) -> float:
    """The reading from which the offsets leave their later rest for the first time."""
    rest = offset[-max(time.size // 4, 8) :]
    scatter = max(1.4826 * float(np.median(np.abs(rest - np.median(rest)))), 1e-6)
    far = np.abs(offset - np.median(rest))
    loud = np.flatnonzero(far > max(6.0 * scatter, 0.25 * float(far.max())))
    if loud.size == 0 or far.max() < 6.0 * scatter:
        raise UnusableRun(TapFault.NO_TAP)
    return float(time[loud[0]])


def _fit(elapsed: Floats, offset: Floats) -> tuple[Floats, Floats, float]:
    """Amplitude cosine, sine, log damping time, frequency, rest: values, covariance, noise."""
    interval_s = float(np.median(np.diff(elapsed)))
    first = elapsed <= elapsed[-1] / 3.0
    part = offset[first] - offset[first].mean()
    seen = spectrum(elapsed[first], part, 2.0 * interval_s)
    frequency = 1.0 / float(seen.period_s[int(np.argmax(seen.amplitude_arcsec))])
    best = None
    for scale in _STARTS:
        begin = _beginning(elapsed, offset, frequency, scale * elapsed[-1] / 3.0)
        found = least_squares(lambda p: _ringing(p, elapsed) - offset, begin, x_scale="jac")
        if best is None or found.cost < best.cost:
            best = found
    assert best is not None
    variance = 2.0 * best.cost / max(elapsed.size - 5, 1)
    covariance = variance * np.linalg.pinv(best.jac.T @ best.jac)
    return np.asarray(best.x), np.asarray(covariance), math.sqrt(variance)


def _ringing(parameters: Floats, elapsed: Floats) -> Floats:
    cosine, sine, log_damping, frequency, rest = parameters
    envelope = np.exp(-elapsed / np.exp(np.clip(log_damping, -7.0, 7.0)))
    turn = 2.0 * np.pi * frequency * elapsed
    return np.asarray(rest + envelope * (cosine * np.cos(turn) + sine * np.sin(turn)))


def _beginning(elapsed: Floats, offset: Floats, frequency: float, damping_s: float) -> Floats:
    """Linear least squares of the amplitudes for a frequency and damping time."""
    turn, envelope = 2.0 * np.pi * frequency * elapsed, np.exp(-elapsed / damping_s)
    columns = np.column_stack(
        [envelope * np.cos(turn), envelope * np.sin(turn), np.ones_like(elapsed)]
    )
    solution, *_ = np.linalg.lstsq(columns, offset, rcond=None)
    return np.array([solution[0], solution[1], np.log(damping_s), frequency, solution[2]])


def _record(
    parameters: Floats, covariance: Floats, noise: float, settled: float, length_s: float
) -> Vibration:
    cosine, sine, log_damping, frequency, _ = parameters.tolist()
    swing, damping = max(math.hypot(cosine, sine), 1e-9), math.exp(log_damping)
    along = np.array([cosine, sine, 0.0, 0.0, 0.0]) / swing
    swing_sigma = math.sqrt(float(along @ covariance @ along))
    if swing < 3.0 * max(swing_sigma, noise / 3.0):
        raise UnusableRun(TapFault.NO_RING)
    rings = math.log(max(swing / settled, 1.0))
    slope = damping * (along / swing + rings * np.eye(5)[2]) if rings > 0.0 else np.zeros(5)
    settling = damping * rings
    sigma_f = math.sqrt(float(covariance[3, 3]))
    return Vibration(
        swing,
        swing_sigma,
        abs(frequency),
        sigma_f,
        damping,
        damping * math.sqrt(float(covariance[2, 2])),
        settling,
        math.sqrt(max(float(slope @ covariance @ slope), 0.0)),
        settled,
        noise,
        Finding.of(
            TapTold.RINGS,
            swing=swing,
            frequency=abs(frequency),
            settling=settling,
            settled=settled,
            length_s=length_s,
        ),
    )


def load_told(payload_kg: float, capacity_kg: float) -> Finding:
    """The load against the capacity, by common practice for imaging (no source)."""
    if not (payload_kg >= 0.0 and capacity_kg > 0.0):
        raise UnusableRun(TapFault.NO_MASSES)
    share = payload_kg / capacity_kg
    code = LoadTold.HEAVY if share > _COMMON_LOAD else LoadTold.LIGHT
    if share > 1.0:
        code = LoadTold.OVERLOADED
    return Finding.of(code, percent=100.0 * share)


def change_told(before: Vibration, after: Vibration) -> Finding:
    """Whether a change of legs, load or balance helped, as far as the errors allow to say."""
    gain = before.settling_s - after.settling_s
    sigma = math.hypot(before.settling_sigma_s, after.settling_sigma_s)
    if abs(gain) < 1.96 * sigma:
        code = ChangeTold.NO_CHANGE
    elif gain > 0.0:
        code = ChangeTold.HELPED
    else:
        code = ChangeTold.HARMED
    return Finding.of(code, before=before.settling_s, after=after.settling_s)


# Reads the record of a tap from CSV: columns `time_s` and `offset_arcsec`, or `offset_px`.
#
# The scale of pixels comes from a line `# scale_arcsec_per_px: …` or from the person. Where `;` or
# a tab separates the fields, a comma may be the decimal sign.

TIME, ARCSEC, PIXELS = "time_s", "offset_arcsec", "offset_px"
MOST_LINES = 200_000


def read_tap(
    lines: Iterable[str], scale_arcsec_per_px: float | None = None
) -> tuple[Floats, Floats]:
    """Time in seconds and offset in arcsec (n,), in order; lines that are no numbers are refused.

    Raises ScaleNeeded for pixels without a scale, UnusableRun for anything else.
    """
    rows: list[tuple[float, float]] = []
    names: list[str] = []
    separator, scale = ",", scale_arcsec_per_px
    for line_number, line in enumerate(lines, start=1):
        text = line.strip("\r\n").removeprefix("\ufeff")
        if line_number > MOST_LINES:
            raise UnusableRun(TapFault.LONG)
        if not text or text.isspace():
            continue
        if is_remark(text):
            scale = scale_in_remark(text) if scale is None else scale
        elif not names:
            separator, names = _names(text, line_number)
        else:
            rows.append(_row(text, separator, names, line_number))
    if not rows:
        raise UnusableRun(TapFault.EMPTY, time=TIME, arcsec=ARCSEC)
    return _scaled(np.array(rows), names, scale)


def _names(text: str, line_number: int) -> tuple[str, list[str]]:
    for separator in SEPARATORS:
        names = names_in(text, separator)
        if TIME in names and (ARCSEC in names or PIXELS in names):
            doubled = doubled_sentence(names, (TIME, ARCSEC, PIXELS), line_number)
            if doubled:
                raise UnusableRun(TapFault.DOUBLED, doubled=doubled)
            return separator, names
    raise UnusableRun(TapFault.NO_NAMES, time=TIME, arcsec=ARCSEC, pixels=PIXELS, text=shown(text))


def _row(text: str, separator: str, names: list[str], line_number: int) -> tuple[float, float]:
    offset = ARCSEC if ARCSEC in names else PIXELS
    try:
        written = split(text, separator)
        cells = fitted(written, len(names), separator != ",")
    except BadRow as reason:
        raise UnusableRun(TapFault.LINE, number=line_number, text=reason) from None
    if len(written) <= max(names.index(TIME), names.index(offset)):
        raise UnusableRun(TapFault.SHORT_LINE, line=line_number)
    time, seen = (
        _value(cells[names.index(name)], line_number, separator) for name in (TIME, offset)
    )
    return time, seen


def _value(text: str, line_number: int, separator: str) -> float:
    try:
        return number(text.strip(), separator != ",")
    except ValueError as reason:
        raise UnusableRun(TapFault.NO_VALUE, line=line_number, reason=reason) from None


def _scaled(rows: Floats, names: list[str], scale: float | None) -> tuple[Floats, Floats]:
    if ARCSEC in names:
        return rows[:, 0], rows[:, 1]
    if scale is None or not 0.01 <= scale <= 1000.0:
        raise ScaleNeeded(TapFault.NO_SCALE, scale_key=SCALE_KEY)
    return rows[:, 0], rows[:, 1] * scale
