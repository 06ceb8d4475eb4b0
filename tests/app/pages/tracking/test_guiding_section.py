"""Guiding on the Tracking page: what it says, dither and backlash, the air."""

import math

import numpy as np
import pytest

from app.night.budget import Budget, telescopes_and_cameras
from app.night.equipment import Equipment
from app.pages.tracking.page import (
    GUIDING,
    TrackingPage,
)
from app.pages.tracking.parts import TrackingParts
from core.mount.examples import INVENTED_INVENTORY

from .conftest import NOW_S


def test_guiding_says_what_to_change(page, wait) -> None:
    section = page.show_section(GUIDING)
    page.bench.want(scale_arcsec_per_px=1.2)
    wait(section.box.practice_key.click)
    assert "swings to and fro" in section.findings.text()
    assert "guiding" in page.head.headline.text()
    assert section.north.isVisible()


def test_dither_and_backlash_are_told(page, wait) -> None:
    """Truth: 4″ of play, then the star answers one for one."""
    section = page.show_section(GUIDING)
    asked = np.arange(0.0, 22.0, 2.0)
    lines = [f"{a:g} {max(a - 4.0, 0.0):g}" for a in asked]
    wait(lambda: section.reversal.setPlainText("\n".join(lines)))
    assert page.bench.study.backlash.value.arcsec == pytest.approx(4.0, abs=0.1)
    assert "4.0″" in section.play.text()
    section.reversal.setPlainText("2 0.1\nfour")
    assert "Line 2" in section.wrong.text()
    assert page.bench.reversal is not None


def test_the_air_is_told_for_the_telescope_in_use(qtbot, theme, session, log) -> None:
    """Sarazin & Roddier, Astron. Astrophys. 227, 294 (1990): r0 = 0.98 λ / FWHM at 500 nm and
    σ² = 0.179 λ² r0^(−5/3) D^(−1/3).
    """
    equipment = Equipment(log)
    equipment.take(INVENTED_INVENTORY)
    equipment.use(equipment.inventory.sets[0].key)
    budget = Budget(log, equipment)
    parts = TrackingParts(lambda: NOW_S, log, budget=budget, equipment=equipment)
    telescopes, _ = telescopes_and_cameras(budget.wanted, equipment)
    aperture_m = telescopes[0].aperture_mm / 1000.0
    r0_m = 0.98 * 500e-9 / math.radians(2.0 / 3600.0)
    variance = 0.179 * 500e-9**2 * r0_m ** (-5.0 / 3.0) * aperture_m ** (-1.0 / 3.0)
    expected = math.degrees(math.sqrt(variance)) * 3600.0
    assert parts.air_motion_arcsec(2.0) == pytest.approx(expected, rel=1e-3)
    assert parts.usual().scale_arcsec_per_px == budget.optics().scale_arcsec_per_px
    made = TrackingPage(session, theme, parts)
    qtbot.addWidget(made)
    section = made.show_section(GUIDING)
    made.bench.want(seeing_arcsec=2.0)
    section._show()
    assert f"{expected:.1f}″ rms" in section.air.text()
    made.stop()
