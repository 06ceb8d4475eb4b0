"""How uncertain a figure is when the turns of the worm differ from one another.

What the noise alone explains is known from the fit. Each turn tells besides, by what it leaves
over, how much it pulls at the figure; the pulls scatter as much as the figure errs (the sandwich
over clusters of Liang & Zeger, Biometrika 73, 13, 1986, corrected for what the fit has taken out
and with the degrees of freedom of Bell & McCaffrey, Survey Methodology 28, 169, 2002). But a few
turns know their scatter badly. So either the turns are alike, and the error is the noise's; or they
differ, by an amount that may be of any order of magnitude. The scatter makes one or the other more
likely, and the interval is that of the mixture: the noise's when the turns scatter no more than
that, and as wide as Student's when they do.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from scipy.special import erfc

Floats = NDArray[np.float64]
Counts = NDArray[np.intp]

INTERVAL_FACTOR = 1.96
_OUTSIDE = 0.05
_AMOUNTS = np.geomspace(0.1, 1e4, 160)  # of the error by differing turns, the noise's being one
# Nobody knows where in a turn the drive changes, nor how gradually. When it does so in the middle
# of the stretches that are compared, each holds half of two turns, and half of the variance shows
# between them; less when one turn passes slowly into the next.
_SHOWN = 0.35
_HALVINGS = 50


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


def widened(sigma: Floats, between: Floats, freedom: Floats, differing: float) -> Floats:
    """Sigmas (m,) of which `INTERVAL_FACTOR` make half a 95 % interval.

    `sigma` (m,): what the noise explains; `between`, `freedom` (m,): of `variance_between`.
    `differing`: the chance, before the turns are asked, that they differ.
    """
    other = np.append(0.0, _AMOUNTS**2)[:, np.newaxis]
    before = np.append(1.0 - differing, np.full(_AMOUNTS.size, differing / _AMOUNTS.size))
    variance, shown = 1.0 + other, 1.0 + _SHOWN * other
    likelihood = -0.5 * freedom * (np.log(shown) + between / sigma**2 / shown)
    weight = before[:, np.newaxis] * np.exp(likelihood - likelihood.max(axis=0))
    weight /= weight.sum(axis=0)
    low, high = np.zeros_like(sigma), np.full_like(sigma, 10.0 * _AMOUNTS[-1])
    for _ in range(_HALVINGS):
        middle = 0.5 * (low + high)
        outside = (weight * erfc(middle / np.sqrt(2.0 * variance))).sum(axis=0)
        low = np.where(outside > _OUTSIDE, middle, low)
        high = np.where(outside > _OUTSIDE, high, middle)
    return np.asarray(sigma * high / INTERVAL_FACTOR)
