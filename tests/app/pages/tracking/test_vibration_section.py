"""Taps and loads on the Tracking page."""

import numpy as np
import pytest

from app.pages.tracking.page import (
    VIBRATION,
)

from .conftest import DONE_MS, written


def test_a_tap_before_and_after_a_change(page, wait, qtbot, tmp_path) -> None:
    """Truth: 2 Hz, 10″, falling to a tenth in 2.3 s; then 4 Hz, stiffer."""
    section = page.show_section(VIBRATION)

    def record(frequency_hz: float, damping_s: float) -> str:
        time = np.arange(0.0, 8.0, 0.05)
        noise = np.random.default_rng(2).normal(0.0, 0.1, time.size)
        ring = 10.0 * np.exp(-time / damping_s) * np.cos(2.0 * np.pi * frequency_hz * time)
        rows = [f"{t:.3f},{o:.4f}" for t, o in zip(time, ring + noise, strict=True)]
        return "\n".join(["time_s,offset_arcsec", *rows])

    wait(lambda: section.read(written(tmp_path, record(2.0, 1.0), "a.csv")))
    assert page.bench.study.before.value.frequency_hz == pytest.approx(2.0, abs=0.02)
    assert page.bench.study.before.value.damping_s == pytest.approx(1.0, abs=0.05)
    wait(lambda: section.read(written(tmp_path, record(4.0, 0.4), "b.csv"), is_after=True))
    assert "helped" in section.change.text()
    assert len(section.plot.picture().curves) == 2
    section.read(written(tmp_path, "time_s,offset_arcsec\n1,two", "c.csv"))
    qtbot.waitUntil(lambda: "Line 2" in section.said(), timeout=DONE_MS)


def test_load_is_judged_without_any_record(page, wait) -> None:
    section = page.show_section(VIBRATION)
    page.bench.want(payload_kg=12.0)
    wait(lambda: page.bench.want(capacity_kg=10.0))
    assert "overloaded" in section.load.text()
    assert "Telescope off before the counterweight" in section.caution.text()
