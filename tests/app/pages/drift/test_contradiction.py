"""Legs that contradict one another: named where they stand, turned over or left out by a key."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest

from app.night.session import Session
from app.pages.drift.words import verdict
from core.alignment.guide.judgement import Next
from tests.app.night.heard import heard
from tests.app.pages.drift.surroundings import AIR, HILL, NOW_S

MERIDIAN_RA_DEG = 245.0


def contradicting_log() -> str:
    """Two invented legs of one star: 1.9″ a minute north, then as much south."""
    lines = ["leg,utc,ra_deg,dec_deg,north_arcsec"]
    for name, rate, start_s in (("first", 1.9, 0.0), ("second", -1.9, 400.0)):
        for number in range(90):
            second = 4.0 * number
            stamp = np.datetime64(int(NOW_S + start_s + second), "s")
            ripple = 0.3 * ((number * 7) % 5 - 2)
            north = rate * second / 60.0 + ripple
            lines.append(f"{name},{stamp}Z,{MERIDIAN_RA_DEG},8.0,{north:.3f}")
    return "\n".join(lines)


@pytest.fixture
def page_with_both(page, session: Session, qtbot, tmp_path: Path):
    session.set_site(HILL, AIR)
    path = tmp_path / "night.csv"
    path.write_text(contradicting_log(), encoding="utf-8")
    page.take_way("log")
    page.ways().panel.controls("log").read(path)
    qtbot.waitUntil(lambda: heard(session).solution is not None, timeout=10_000)
    return page


def rows(page):
    return [page.work().legs().row(label) for label in ("first", "second")]


def settled(qtbot, session: Session, check: Callable) -> None:
    def is_so() -> bool:
        found = heard(session).solution
        return found is not None and check(found)

    qtbot.waitUntil(is_so, timeout=10_000)


def test_no_error_is_told_and_both_legs_are_marked(page_with_both, session, qtbot) -> None:
    settled(qtbot, session, lambda found: found.is_contradictory)
    qtbot.waitUntil(lambda: rows(page_with_both)[0].exchange_key().isVisible())
    assert all(row.exchange_key().isVisible() for row in rows(page_with_both))
    assert "contradict one another" in page_with_both.work().notes().text()
    snapshot = heard(session)
    assert not snapshot.advice.azimuth_figure
    assert snapshot.guide.judgement.next is Next.OTHER_STAR
    assert snapshot.guide.off_arcmin is None


def test_turning_one_over_settles_it_and_can_be_taken_back(page_with_both, session, qtbot) -> None:
    settled(qtbot, session, lambda found: found.is_contradictory)
    qtbot.waitUntil(lambda: rows(page_with_both)[1].exchange_key().isVisible())
    rows(page_with_both)[1].exchange_key().click()
    settled(qtbot, session, lambda found: not found.is_contradictory)
    assert heard(session).exchanged == {"second"}
    qtbot.waitUntil(lambda: not rows(page_with_both)[0].exchange_key().isVisible())
    back = rows(page_with_both)[1].exchange_key()
    assert back.isVisible()
    assert "back" in back.text()
    back.click()
    settled(qtbot, session, lambda found: found.is_contradictory)


@pytest.mark.usefixtures("page_with_both")
def test_leaving_one_out_settles_it(session, qtbot) -> None:
    settled(qtbot, session, lambda found: found.is_contradictory)
    session.discard_leg("first")
    settled(qtbot, session, lambda found: found.contradiction is None)


def test_the_band_says_why_no_error_is_told(page_with_both, session, qtbot) -> None:
    settled(qtbot, session, lambda found: found.is_contradictory)
    told = verdict(heard(session))
    assert "contradict one another" in told.finding
    assert told.finding in page_with_both.work().notes().text()
