"""The clock of the Site page, and how it is checked."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.pages.site.clock import ClockPanel
from core.sky.site import Air, Site
from core.sky.words import SUN_CAUTION

NOW_S = 1_790_000_000.0  # 2026-09-21T14:13:20Z, by `date -u -d @1790000000`
GREENWICH = Site(51.4779, 0.0, 46.0)


@pytest.fixture
def panel(qtbot) -> ClockPanel:
    made = ClockPanel(lambda: NOW_S, "Europe/Lisbon")
    qtbot.addWidget(made)
    made.show()
    return made


def _zone(panel: ClockPanel, text: str) -> None:
    line = panel.zone_field().line()
    line.setText(text)  # as pasted; keys could not type every letter
    QTest.keyClick(line, Qt.Key.Key_Return)


def test_utc_and_the_computers_own_time(panel: ClockPanel) -> None:
    assert "14:13:20 2026-09-21" in panel.texts()
    assert "15:13:20 2026-09-21, UTC+01:00" in panel.texts()


def test_sidereal_time_at_greenwich(panel: ClockPanel) -> None:
    panel.show_site(GREENWICH, Air(1010.0), "")
    # Greenwich mean sidereal time by the formula of the Astronomical Almanac, section B (from
    # memory): 6.697375 h + 0.065709824279 h × D0 + 1.0027379 × UT, D0 = days since 2000-01-01 12h.
    days = (1_789_948_800 - 946_728_000) / 86400.0
    hours = (6.697375 + 0.065709824279 * days + 1.0027379 * (14 + 13 / 60 + 20 / 3600)) % 24.0
    assert f"{int(hours):02d}:{int(hours % 1 * 60):02d}:" in panel.texts()


def test_the_sun_checks_the_clock_and_comes_with_its_caution(panel: ClockPanel) -> None:
    panel.show_site(GREENWICH, Air(1010.0), "")
    assert "The Sun should now be" in panel.texts()
    assert "the clock, the time zone or the longitude is wrong" in panel.texts()
    assert SUN_CAUTION in panel.texts()


def test_the_age_of_the_earth_orientation_data_is_said(panel: ClockPanel) -> None:
    assert "rotation is measured up to" in panel.texts()


def test_a_zone_is_taken_and_told(panel: ClockPanel, qtbot) -> None:
    with qtbot.waitSignal(panel.zone_chosen) as chosen:
        _zone(panel, "auckland")
    assert chosen.args == ["Pacific/Auckland"]
    assert "02:13:20 2026-09-22, UTC+12:00" in panel.texts()


@pytest.mark.parametrize("text", ["Atlantis", "UTC+99", "48", "-", "лондон", "x" * 500])
def test_what_is_no_zone_changes_nothing(panel: ClockPanel, qtbot, text: str) -> None:
    with qtbot.assertNotEmitted(panel.zone_chosen):
        _zone(panel, text)
    assert panel.zone_field().is_wrong()
    assert "15:13:20" in panel.texts()


def test_a_zone_at_the_other_end_of_the_world_is_doubted(panel: ClockPanel) -> None:
    panel.show_site(Site(47.0, -120.0), Air(1000.0), "")
    assert "E or W" in panel.texts()


def test_an_unknown_zone_of_the_computer_is_utc(qtbot) -> None:
    panel = ClockPanel(lambda: NOW_S, "Nowhere")
    qtbot.addWidget(panel)
    assert "UTC+00:00" in panel.texts()
