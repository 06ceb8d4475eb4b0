"""A run folded at the worm's period: the mean curve, and how far its turns differ."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.special import stdtrit

from core.tracking.run import Readings
from core.tracking.wormfit import Harmonic, WormFit, harmonic_columns

# A run laid turn upon turn of the worm: the mean curve, and how far the turns differ.

Floats = NDArray[np.float64]
Counts = NDArray[np.intp]

MOST_PLACES = 60  # in one turn of the worm
_FEWEST_PLACES = 8
_ENOUGH = 0.75  # share of a turn's places that must be filled for it to count as whole


@dataclass(frozen=True, eq=False)
class FoldedCurve:
    """One turn of the worm, arrays (m,): place in seconds from the epoch's phase zero.

    `mean_arcsec`: over whole turns; `scatter_arcsec`: standard deviation between turns, the air
    included; `turns`: how many contribute. `table_arcsec` (turns, m): each turn, NaN where unread.
    """

    place_s: Floats
    mean_arcsec: Floats
    scatter_arcsec: Floats
    turns: Counts
    table_arcsec: Floats


def turn_numbers(utc_s: Floats, period_s: float, epoch_s: float) -> tuple[Counts, Floats]:
    """Turn of the worm (n,), counted from the epoch, and the phase (n,) within it, 0 to 1."""
    turns = (utc_s - epoch_s) / period_s
    whole = np.floor(turns)
    return whole.astype(np.intp), turns - whole


def by_turn(utc_s: Floats, values: Floats, period_s: float, epoch_s: float) -> Floats:
    """Means (turns, places) of values (n,), NaN where unread; every turn, however little of it."""
    places = _places(utc_s, period_s)
    turn, phase = turn_numbers(utc_s, period_s, epoch_s)
    number = turn - turn.min()
    cell = number * places + np.minimum((phase * places).astype(np.intp), places - 1)
    size = (int(number.max()) + 1) * places
    count = np.bincount(cell, minlength=size).reshape(-1, places)
    total = np.bincount(cell, values, size).reshape(-1, places)
    return np.where(count > 0, total / np.maximum(count, 1), np.nan)


def fold(utc_s: Floats, lead_arcsec: Floats, period_s: float, epoch_s: float) -> FoldedCurve:
    """Mean and scatter of leads (n,) without trend."""
    table = by_turn(utc_s, lead_arcsec, period_s, epoch_s)
    places = table.shape[1]
    table = table[np.isfinite(table).mean(axis=1) >= _ENOUGH]
    filled = np.isfinite(table).sum(axis=0)
    level = np.where(np.isfinite(table), table, 0.0).sum(axis=0) / np.maximum(filled, 1)
    apart = np.where(np.isfinite(table), table - level, 0.0)
    variance = (apart**2).sum(axis=0) / np.maximum(filled - 1, 1)
    return FoldedCurve(
        place_s=(np.arange(places) + 0.5) / places * period_s,
        mean_arcsec=np.where(filled > 0, level, np.nan),
        scatter_arcsec=np.where(filled > 1, np.sqrt(variance), np.nan),
        turns=filled.astype(np.intp),
        table_arcsec=table,
    )


@dataclass(frozen=True, eq=False)
class CommonCurve:
    """`level` (m,): what the turns have in common at each place; `variance`: of a single turn about
    it, origins apart; `turns`: how many were read, parts of turns counted as such; `unlike`:
    variance of the turns' own variances over the square of their mean."""

    level: Floats
    variance: float
    turns: float
    unlike: float


def shared(table: Floats) -> CommonCurve:
    """Of turns as of `by_turn`: a level for each place and an origin for each turn, by least
    squares through the cells that were read.

    A turn read in part is so not charged with its own mean, which is not that of a whole turn
    (two-way layout with unequal numbers: Searle, Linear Models, 1971, chapter 7, from memory).
    """
    is_read = np.isfinite(table)
    read, value = is_read.astype(np.float64), np.where(is_read, table, 0.0)
    each = np.maximum(read.sum(axis=0), 1.0)
    mean = value.sum(axis=0) / each
    normal = np.diag(read.sum(axis=1)) - (read / each) @ read.T
    origin, *_ = np.linalg.lstsq(normal, (read * (value - mean)).sum(axis=1), rcond=1e-9)
    level = mean - read.T @ origin / each
    left = read * (value - level - origin[:, np.newaxis])
    cells, places = float(read.sum()), int(is_read.any(axis=0).sum())
    freedom = max(cells - places - table.shape[0] + 1.0, 1.0)
    weight = read.sum(axis=1) / cells
    own = (left**2).sum(axis=1) / np.maximum(read.sum(axis=1), 1.0)
    mean_own = max(float(weight @ own), 1e-300)
    unlike = float(weight @ (own / mean_own - 1.0) ** 2)
    return CommonCurve(level, float((left**2).sum()) / freedom, cells / places, unlike)


def _places(utc_s: Floats, period_s: float) -> int:
    """As many places as hold about two readings each in every turn."""
    interval_s = float(np.median(np.diff(utc_s)))
    return int(np.clip(period_s / (2.0 * interval_s), _FEWEST_PLACES, MOST_PLACES))


# How uncertain a figure is when the turns of the worm differ from one another.
#
# Each turn tells, by what it leaves over, how much it pulls at a figure of the fit; the pulls
# scatter as much as the figure errs, be it by the air, by a gear beside the worm or because the
# turns are not alike (the sandwich over clusters of Liang & Zeger, Biometrika 73, 13, 1986). Few
# turns know their scatter badly: it is corrected for what the fit has taken out, and the interval
# is Student's with the degrees of freedom of Bell & McCaffrey (Survey Methodology 28, 169, 2002).

INTERVAL_FACTOR = 1.96
_QUANTILE = 0.975
# Nobody knows where in a turn the drive changes, so that the stretches that are compared hold parts
# of two turns. Of what differs from one turn to the next, two thirds of the variance show between
# stretches when it changes at once, at a place as likely as any other, 0.55 when it does so
# gradually over a whole turn, and less when turns that follow each other are alike. Of the noise,
# all shows.
_SHOWN = 0.45
_LEAST = 0.6  # of the noise's sigma: turns that happen to agree prove no more


def variance_between(
    design: Floats, residual: Floats, turn: Counts, wanted: Floats
) -> tuple[Floats, Floats]:
    """Variances (m,) of linear figures of a fit, from the turns alone, and their freedom (m,).

    `design` (k, p) of the fit and what it left over (k,); `turn` (k,) never decreasing; the
    figures are `wanted` (p, m), transposed, times the coefficients.
    """
    scale = np.maximum(np.sqrt((design**2).mean(axis=0)), 1e-300)[:, np.newaxis]
    base, upper = np.linalg.qr(design / scale.T)
    pull = base @ np.linalg.solve(upper.T, wanted / scale)
    starts = np.append(0, np.flatnonzero(np.diff(turn)) + 1)
    ends = np.append(starts[1:], turn.size)
    sums = np.add.reduceat(pull * residual[:, np.newaxis], starts)
    share = np.add.reduceat(pull**2, starts)
    taken = np.stack([base[a:b].T @ pull[a:b] for a, b in zip(starts, ends, strict=True)])
    # Covariance (m, turns, turns) of the sums were the residual's own noise even and independent.
    expected = np.eye(starts.size) * share.T[:, np.newaxis]
    expected -= np.einsum("tpm,upm->mtu", taken, taken)
    trace = np.einsum("mtt->m", expected)
    freedom = trace**2 / (expected**2).sum(axis=(1, 2))
    return (sums**2).sum(axis=0) * share.sum(axis=0) / trace, freedom


def widened(sigma: Floats, between: Floats, freedom: Floats, noise_freedom: float = 0.0) -> Floats:
    """Sigmas (m,) of which `INTERVAL_FACTOR` make half a 95 % interval.

    `sigma` (m,): what the noise explains; `between`, `freedom` (m,): of `variance_between`.
    `noise_freedom`: degrees of freedom for which the noise's own sigma counts, beside the turns.
    """
    whole = noise_freedom + freedom
    hidden = np.maximum(between - sigma**2, 0.0) * (1.0 / _SHOWN - 1.0)
    variance = (noise_freedom * sigma**2 + freedom * (between + hidden)) / whole
    wide = np.sqrt(variance) * stdtrit(whole, _QUANTILE) / INTERVAL_FACTOR
    return np.asarray(np.maximum(wide, _LEAST * sigma))


# The errors of what a fit says of the worm, where its turns may differ.

_FEWEST_TURNS = 2
# Of the period: turns differ in strength and shape, hardly in how long they take.
_NOISE_FREEDOM = 6.0


@dataclass(frozen=True, eq=False)
class WormErrors:
    """`turn` (k,): the turn of each bin, the run cut into stretches of about a turn each."""

    fit: WormFit
    turn: NDArray[np.intp]

    @classmethod
    def of(cls, readings: Readings, fit: WormFit) -> WormErrors:
        """As many stretches as the run holds whole turns."""
        turns = max(int(readings.duration_s / fit.period_s + 1e-6), _FEWEST_TURNS)
        elapsed = (readings.bins.utc_s - readings.utc_s[0]) / readings.duration_s
        return cls(fit, np.minimum(elapsed * turns, turns - 1).astype(np.intp))

    def sigma(self, wanted: Floats) -> Floats:
        """Of linear figures (m,): `wanted` (p, m), transposed, times all that was fitted."""
        return widened(*self._asked(wanted))

    def of_curve(self, wanted: Floats) -> Floats:
        """Of linear figures (m,) of the worm's curve, `wanted` (2·orders, m)."""
        return self.sigma(self._among_all(wanted))

    def period_sigma_s(self) -> float:
        """Of the worm's period; 0 where it was known."""
        fit = self.fit
        if fit.period_sigma_s == 0.0:
            return 0.0
        frequency = np.zeros((fit.design.shape[1], 1))
        frequency[fit.waves.stop] = 1.0
        sigma_hz = widened(*self._asked(frequency), _NOISE_FREEDOM)
        return float(sigma_hz[0]) * fit.period_s**2

    def covariance(self) -> Floats:
        """Of the harmonics (2·orders, 2·orders): each amplitude and phase as uncertain as the turns
        allow, correlated as the noise makes them.

        A phase is judged by the pulls at amplitude and phase together, which noise disturbs alike;
        an amplitude by its own, for in strength turns differ most.
        """
        pairs = self.fit.coefficients.reshape(-1, 2)
        angles = np.arctan2(*pairs.T)
        basis = np.zeros((pairs.size, pairs.size))
        for order, (sine, cosine) in enumerate(zip(np.sin(angles), np.cos(angles), strict=True)):
            place = slice(2 * order, 2 * order + 2)
            basis[place, place] = [[sine, -cosine], [cosine, sine]]
        sigma, between, freedom = self._asked(self._among_all(basis))
        both = (freedom * between / sigma**2).reshape(-1, 2).sum(axis=1)
        freedom[1::2] += freedom[0::2]
        between[1::2] = sigma[1::2] ** 2 * both / freedom[1::2]
        factor = widened(sigma, between, freedom) / sigma
        own = basis.T @ self.fit.covariance @ basis
        return np.asarray(basis @ (own * np.outer(factor, factor)) @ basis.T)

    def _among_all(self, wanted: Floats) -> Floats:
        """Figures of the harmonics (2·orders, m) as such of all that was fitted (p, m)."""
        every = np.zeros((self.fit.design.shape[1], wanted.shape[1]))
        every[self.fit.waves] = wanted
        return every

    def _asked(self, wanted: Floats) -> tuple[Floats, Floats, Floats]:
        """Sigma by the noise, variance between turns and its freedom (m,)."""
        fit = self.fit
        noise = np.einsum("pm,pq,qm->m", wanted, fit.estimate.covariance, wanted)
        between, freedom = variance_between(fit.design, fit.residual, self.turn, wanted)
        return np.sqrt(np.maximum(noise, 1e-30)), between, freedom


# How large a worm's curve is: peak to peak and root mean square.

_FINE = 720  # places round the turn where the curve's extremes are looked for
_DRAWS = 1000
_SEED = 1


@dataclass(frozen=True)
class CurveSize:
    """Of the curve that the worm repeats: the mean of so many turns that whatever differs from one
    to the next, or swings at another pace, has gone out of it. Peak to peak: from its lowest to its
    highest place; a single turn, with air and all the rest, swings further.

    Sigmas: half the 95 % interval of what many more turns would show, over
    `turnscatter.INTERVAL_FACTOR`.
    """

    peak_to_peak_arcsec: float
    peak_to_peak_sigma_arcsec: float
    rms_arcsec: float
    rms_sigma_arcsec: float


def curve_size(waves: tuple[Harmonic, ...], covariance: Floats, errors: WormErrors) -> CurveSize:
    """Of the harmonics that stand out; what the others may hold all the same is in the sigmas.

    `covariance` (2·orders, 2·orders): of the harmonics, their turns allowed for.
    """
    fit = errors.fit
    believed = np.repeat([wave.stands_out for wave in waves], 2)
    if not believed.any():
        return CurveSize(0.0, 0.0, 0.0, 0.0)
    coefficients = np.where(believed, fit.coefficients, 0.0)
    columns = harmonic_columns(np.arange(_FINE) / _FINE, 1.0, fit.orders, 0.0)
    curve = columns @ coefficients
    size, rms = float(np.ptp(curve)), float(np.sqrt(0.5 * coefficients @ coefficients))
    contrast = np.where(believed, columns[np.argmax(curve)] - columns[np.argmin(curve)], 0.0)
    sigmas = errors.of_curve(np.column_stack([contrast, 0.5 * coefficients / rms]))
    share = np.where(believed, 1.0, _held(fit.coefficients, covariance))
    drawn = np.ptp(columns @ _draws(fit.coefficients, fit.covariance, share), axis=0)
    bent = float(np.mean((drawn - size) ** 2)) - float(contrast @ fit.covariance @ contrast)
    return CurveSize(size, float(np.sqrt(sigmas[0] ** 2 + bent)), rms, float(sigmas[1]))


def _held(coefficients: Floats, covariance: Floats) -> Floats:
    """Share (2·orders,) of each harmonic's power that is not the noise's."""
    power = (coefficients.reshape(-1, 2) ** 2).sum(axis=1)
    noise = np.diag(covariance).reshape(-1, 2).sum(axis=1)
    return np.repeat(np.maximum(1.0 - noise / np.maximum(power, 1e-300), 0.0), 2)


def _draws(coefficients: Floats, covariance: Floats, share: Floats) -> Floats:
    """Coefficients (2·orders, draws) as they might be: peak to peak bends with them."""
    rng = np.random.default_rng(_SEED)
    own = covariance * np.sqrt(np.outer(share, share))
    drawn = rng.multivariate_normal(share * coefficients, own, _DRAWS, method="eigh")
    return np.asarray(drawn.T)
