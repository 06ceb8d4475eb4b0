"""The periodic error of a drive from a run of unguided tracking."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.finding import Code, Finding
from core.tracking.iterativefit import Settled, settle
from core.tracking.plausibility import guiding_left_on, implausibilities, period_note, size_note
from core.tracking.run import SHORTEST_S, Readings, Run, UnusableRun
from core.tracking.wormfit import Harmonic, WormFit, harmonic_columns, harmonics
from core.tracking.wormfolding import (
    CurveSize,
    FoldedCurve,
    WormErrors,
    curve_size,
    fold,
)
from core.tracking.wormperiod import (
    KeepGoing,
    OtherPeriod,
    Spectrum,
    ask,
    check_length,
    even_spectrum,
    find_period_s,
    other_periods,
    spectrum,
)


class WormTold(Code):
    """What is told of it."""

    SWING = "swing"


class WormFault(Code):
    """What is told of the periodic error."""

    MINUTES_MEANT = "minutes meant"
    PERIOD = "period"
    READ_SELDOM = "read seldom"
    ANOTHER_PERIOD = "another period"


Floats = NDArray[np.float64]

_ORDERS = 8
_READINGS_PER_WAVE = 4.0
_SHORTEST_S = 3.0 * SHORTEST_S


@dataclass(frozen=True, eq=False)
class PeriodicError:
    """What the worm does, in arcseconds of the drive's lead (at the equator); `INTERVAL_FACTOR`
    sigmas are half the 95 % interval, the differences between its turns and all that swings beside
    it allowed for.

    `coefficients` (2·orders,): sine and cosine of each harmonic believed, phase zero at
    `epoch_utc_s`. `utc_s`, `lead_arcsec`, `residual_arcsec` (n,): the readings used, less origins
    and trend; then less the curve too. `drift_arcsec_per_min`: the drive's steady lead beyond the
    axis model, its sigma that of the noise. `spectrum`: for a plot, the curve in it.
    """

    period_s: float
    period_sigma_s: float
    period_is_given: bool
    turns: float
    size: CurveSize
    harmonics: tuple[Harmonic, ...]
    other_periods: tuple[OtherPeriod, ...]
    folded: FoldedCurve
    spectrum: Spectrum
    drift_arcsec_per_min: float
    drift_sigma_arcsec_per_min: float
    noise_arcsec: float
    correlation_time_s: float
    epoch_utc_s: float
    coefficients: Floats
    utc_s: Floats
    lead_arcsec: Floats
    residual_arcsec: Floats
    piece: NDArray[np.intp]
    declination_deg: float
    notes: tuple[Finding, ...]

    @property
    def sentence(self) -> Finding:
        """How far the drive swings, or that nothing stands out."""
        return Finding.of(WormTold.SWING, result=self)

    def curve_arcsec(self, utc_s: Floats) -> Floats:
        """The periodic lead (n,) at any time, made of the harmonics that stand out."""
        orders = self.coefficients.size // 2
        columns = harmonic_columns(utc_s, self.period_s, orders, self.epoch_utc_s)
        return np.asarray(columns @ self.coefficients)


def analyse(
    run: Run, worm_period_s: float | None = None, keep_going: KeepGoing | None = None
) -> PeriodicError:
    """Periodic error of `run`. `worm_period_s`: from the data sheet, None to find it.

    `keep_going(share)` is asked now and then; AnalysisCancelled when it says no. Raises
    UnusableRun with a sentence when nothing honest can be said.
    """
    check_period(worm_period_s, run.duration_s)
    if worm_period_s is not None:
        check_length(run.duration_s, worm_period_s)
    ask(keep_going, 0.0)
    settled = settle(run, worm_period_s, _orders(run, worm_period_s), keep_going)
    ask(keep_going, 0.7)
    result = _result(run, settled, worm_period_s)
    ask(keep_going, 1.0)
    return result


def check_period(worm_period_s: float | None, duration_s: float) -> None:
    """Raises UnusableRun for a period no worm has; minutes taken for seconds are named."""
    if worm_period_s is None or 30.0 <= worm_period_s <= 7200.0:
        return
    if 0.5 <= worm_period_s < 30.0:
        raise UnusableRun(
            WormFault.MINUTES_MEANT, period=worm_period_s, seconds=60.0 * worm_period_s
        )
    raise UnusableRun(WormFault.PERIOD, period=worm_period_s, duration=duration_s)


def _orders(run: Run, period_s: float | None) -> int:
    """As many harmonics as the readings can show."""
    longest_s = 240.0 if period_s is None else period_s
    shortest_s = max(_SHORTEST_S, _READINGS_PER_WAVE * run.interval_s)
    orders = int(min(_ORDERS, longest_s // shortest_s))
    if orders < 1:
        raise UnusableRun(WormFault.READ_SELDOM, interval=run.interval_s)
    return orders


def _result(run: Run, settled: Settled, given_s: float | None) -> PeriodicError:
    readings, fit = settled.readings, settled.fit
    without_trend = readings.lead_arcsec - readings.smooth_part(fit.smooth)
    residual = without_trend - fit.curve_arcsec(readings.utc_s)
    errors = WormErrors.of(readings, fit)
    covariance = errors.covariance()
    waves = harmonics(fit.coefficients, covariance, fit.period_s)
    believed = np.repeat([wave.stands_out for wave in waves], 2)
    return PeriodicError(
        period_s=fit.period_s,
        period_sigma_s=errors.period_sigma_s(),
        period_is_given=given_s is not None,
        turns=readings.duration_s / fit.period_s,
        size=curve_size(waves, covariance, errors),
        harmonics=waves,
        other_periods=other_periods(settled.fast, errors),
        folded=fold(readings.utc_s, without_trend, fit.period_s, fit.epoch_s),
        spectrum=_spectrum(readings, fit, residual),
        drift_arcsec_per_min=fit.slope_arcsec_per_min,
        drift_sigma_arcsec_per_min=fit.slope_sigma_arcsec_per_min,
        noise_arcsec=float(np.std(residual)),
        correlation_time_s=fit.estimate.correlation_time_s,
        epoch_utc_s=fit.epoch_s,
        coefficients=np.where(believed, fit.coefficients, 0.0),
        utc_s=readings.utc_s,
        lead_arcsec=without_trend,
        residual_arcsec=residual,
        piece=readings.piece(),
        declination_deg=run.declination_deg,
        notes=(*run.notes, *settled.notes, *_notes(run, settled, residual, given_s)),
    )


def _spectrum(readings: Readings, fit: WormFit, residual: Floats) -> Spectrum:
    """Of what the worm leaves over, and of its curve as if it had been read without a break: what
    is left out of a run would show the worm again at periods where nothing is."""
    bins, shortest_s = readings.for_spectrum()
    left = spectrum(bins.utc_s, bins.means(residual), shortest_s)
    worm = even_spectrum(fit.curve_arcsec, bins.utc_s[0], bins.utc_s[-1], 1.0 / left.period_s)
    return Spectrum(left.period_s, np.hypot(left.amplitude_arcsec, worm))


def _notes(run: Run, settled: Settled, residual: Floats, given_s: float | None) -> list[Finding]:
    fit = settled.fit
    found = implausibilities(run, fit.slope_arcsec_per_min, fit.slope_sigma_arcsec_per_min)
    swing_arcsec = float(np.hypot(*fit.coefficients[:2]))
    guided = guiding_left_on(
        settled.readings.utc_s, residual, fit.period_s, fit.orders, swing_arcsec
    )
    large = size_note(float(np.ptp(fit.curve_arcsec(settled.readings.utc_s))))
    if large is not None:
        found.append(large)
    if guided is not None:
        found.append(guided)
    if given_s is not None:
        found += _given_period_notes(settled, given_s)
    return found


def _given_period_notes(settled: Settled, given_s: float) -> list[Finding]:
    """Whether the run itself holds the period that was entered."""
    try:
        found_s = find_period_s(settled.readings)
    except UnusableRun:
        return []
    mistaken = period_note(given_s, found_s)
    if mistaken is not None:
        return [mistaken]
    ratio = given_s / found_s
    whole = max(round(ratio), 1)
    tolerance = max(0.02, found_s / settled.readings.duration_s)
    if abs(ratio / whole - 1.0) < tolerance:
        return []
    return [Finding.of(WormFault.ANOTHER_PERIOD, found=found_s, given=given_s)]
