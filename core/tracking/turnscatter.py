"""How uncertain a figure is when the turns of the worm differ from one another.

Each turn tells, by what it leaves over, how much it pulls at a figure of the fit; the pulls scatter
as much as the figure errs, be it by the air, by a gear beside the worm or because the turns are not
alike (the sandwich over clusters of Liang & Zeger, Biometrika 73, 13, 1986). Few turns know their
scatter badly: it is corrected for what the fit has taken out, and the interval is Student's with
the degrees of freedom of Bell & McCaffrey (Survey Methodology 28, 169, 2002).
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy.special import stdtrit

Floats = NDArray[np.float64]
Counts = NDArray[np.intp]

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
