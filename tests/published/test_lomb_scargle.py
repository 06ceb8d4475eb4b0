"""Our spectra and harmonics against astropy's Lomb–Scargle and closed forms."""

import numpy as np
import pytest
from astropy.timeseries import LombScargle

from core.tracking.wormfit import candidates, harmonic_columns, harmonics, whitened_gram
from core.tracking.wormperiod import likeliest_period_s, spectrum


def irregular(rng, number=400, length=6000.0):
    return np.sort(rng.uniform(0.0, length, number))


def test_the_spectrum_is_astropys_exact_one():
    # Reference: astropy.timeseries.LombScargle, method "slow" (Lomb 1976, Scargle 1982, with the
    # floating mean of Zechmeister & Kürster 2009); standard normalisation P, amplitude² = 2 P var.
    rng = np.random.default_rng(1)
    t = irregular(rng)
    y = 3.0 * np.sin(2 * np.pi * t / 479.0) + rng.normal(size=t.size)
    seen = spectrum(t, y, 60.0)
    exact = LombScargle(t, y).power(1.0 / seen.period_s, method="slow")
    amplitude = np.sqrt(2.0 * exact * y.var())
    np.testing.assert_allclose(seen.amplitude_arcsec, amplitude, atol=0.02)
    peak = int(np.argmax(seen.amplitude_arcsec))
    assert seen.period_s[peak] == pytest.approx(479.0, rel=0.01)
    assert seen.amplitude_arcsec[peak] == pytest.approx(3.0, abs=0.25)


def test_the_likeliest_period_is_astropys_with_several_terms():
    # Reference: astropy's chi2 method with three terms, computed without the fast transform.
    rng = np.random.default_rng(2)
    t = irregular(rng)
    y = np.sin(2 * np.pi * t / 479.0) + 2 * np.sin(4 * np.pi * t / 479.0 + 1) + rng.normal(size=400)
    frequency = np.arange(1 / 2000.0, 1 / 60.0, 1 / (8 * np.ptp(t)))
    power = LombScargle(t, y, nterms=3).power(frequency, method="chi2")
    found = likeliest_period_s(t, y, 2000.0, 60.0)
    assert found == pytest.approx(1.0 / frequency[int(np.argmax(power))], rel=1e-6)


def test_an_even_whole_number_of_turns_has_the_closed_form():
    # Bloomfield, Fourier Analysis of Time Series (2000), section 2.3: over whole periods of evenly
    # spaced readings the least-squares coefficients are (2/n) Σ y sin and (2/n) Σ y cos, each with
    # variance 2 σ²/n. From memory, and elementary.
    rng = np.random.default_rng(3)
    t = np.arange(960.0)
    y = 4.0 * np.sin(2 * np.pi * t / 96.0 + 0.7) + rng.normal(size=t.size)
    columns = harmonic_columns(t, 96.0, 1, 0.0)
    closed = 2.0 / t.size * columns.T @ y
    white = candidates(0.0)  # so short a run leaves independent noise alone
    gram = whitened_gram(t, np.ones_like(t), np.column_stack([columns, y]), white)
    fit = gram.fit(range(2), 2)
    np.testing.assert_allclose(fit.coefficients[0], closed, atol=1e-10)
    np.testing.assert_allclose(fit.covariance[0], np.eye(2) * 2.0 / t.size, atol=1e-12)
    (wave,) = harmonics(closed, np.eye(2) * 2.0 / t.size, 96.0)
    assert wave.amplitude_arcsec == pytest.approx(4.0, abs=4.0 * wave.amplitude_sigma_arcsec)
    assert wave.phase_deg == pytest.approx(np.rad2deg(0.7), abs=4.0 * wave.phase_sigma_deg)


def test_the_filter_whitens_as_the_full_covariance_does():
    # Reference: dense generalised least squares, (XᵀV⁻¹X), V_ij = (1−f) exp(−|Δt|/τ) + f δ_ij.
    rng = np.random.default_rng(4)
    t, count = irregular(rng, 80, 900.0), rng.integers(1, 9, 80).astype(float)
    columns = rng.normal(size=(80, 3))
    grid = candidates(900.0)
    gram = whitened_gram(t, count, columns, grid)
    for number, (time_s, share) in enumerate(
        zip(grid.correlation_time_s, grid.independent_fraction, strict=True)
    ):
        lag = np.abs(t[:, None] - t)
        dense = (1.0 - share) * np.exp(-lag / (time_s or 1.0)) + np.diag(
            share * count.mean() / count
        )
        exact = columns.T @ np.linalg.solve(dense, columns)
        np.testing.assert_allclose(gram.matrix[number], exact, rtol=1e-8, atol=1e-8)
        assert gram.log_det[number] == pytest.approx(np.linalg.slogdet(dense)[1], abs=1e-7)
