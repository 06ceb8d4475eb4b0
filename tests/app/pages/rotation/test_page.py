"""The Field rotation page: figures of the core, at any moment picked, in both hemispheres."""

from threading import Event

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.pages.rotation.page import DRIVE, EXPOSURES, SKY, TILTED, RotationPage
from app.pages.rotation.study import RotationQuestion, RotationStudy, study
from core.imaging.rotation import turning_of_star
from core.sky.horizon import Horizon
from core.sky.site import Site
from core.sky.targets import Target
from tests.app.pages.eveningpages import (
    AIR,
    ANDROMEDA,
    FJORD,
    HILL,
    SOUTH,
    SUMMER_S,
    TUCANAE,
    check_reach,
    evening,
    green_and_blue,
)
from tests.app.pages.rotation.waiting import WORKED_OUT_MS, after

SECTIONS = (SKY, EXPOSURES, DRIVE, TILTED)
MIDNIGHT_S = 1_790_028_000.0  # 2026-09-21T22:00:00Z


def _section(page: RotationPage, name: str):
    page.sections().show_section(name)
    return page.sections().section(name)


def test_without_a_site_it_says_what_it_is_for_and_asks(shown, qtbot) -> None:
    page = shown(evening(None))
    assert not page.sections().isVisible()
    with qtbot.waitSignal(page.site_wanted):
        page.site_button().click()


def test_a_site_given_later_is_taken_up(shown, qtbot) -> None:
    given = evening(None, ANDROMEDA)
    page = shown(given)
    after(qtbot, page, lambda: given.session.set_site(HILL))
    assert page.sections().isVisible()
    assert "°" in page.facts().told()[0]


def test_without_a_target_the_map_shows_and_one_is_asked_for(shown) -> None:
    page = shown(evening(HILL))
    assert "Choose a target" in page.facts().below()
    assert page.sections().section(SKY).dome().picture().contours


@pytest.mark.parametrize(("site", "target"), [(HILL, ANDROMEDA), (SOUTH, TUCANAE)])
def test_the_figures_are_those_of_the_core(shown, qtbot, site: Site, target: Target) -> None:
    page = shown(evening(site, target))
    after(qtbot, page, lambda: page.pick(MIDNIGHT_S))
    place = target.ra_deg, target.dec_deg
    _, altitude, turning = turning_of_star(*place, site, AIR, [MIDNIGHT_S])
    turns, exposure, stands = page.facts().told()
    assert turns.startswith(f"{abs(float(turning.rate_deg_per_hour[0])):.2g}°")
    assert ("growing" in turns) == (turning.rate_deg_per_hour[0] > 0.0)
    assert stands.startswith(f"{float(altitude[0]):.0f}°")
    # Smear of 0.5 px at 2500 px from the centre of 4000 × 3000, at a steady rate.
    steady_s = np.degrees(0.5 / 2500.0) / abs(float(turning.rate_deg_per_hour[0])) * 3600.0
    assert float(exposure.split()[0]) == pytest.approx(steady_s, rel=0.06)


def test_a_moment_is_picked_by_key_and_told(shown, qtbot) -> None:
    page = shown(evening(HILL, ANDROMEDA))
    night = page.sections().section(SKY).night()
    before = night.chart().moment()
    after(qtbot, page, lambda: QTest.keyClick(night.chart(), Qt.Key.Key_PageDown))
    assert night.chart().moment() == pytest.approx(before + 3600.0, abs=60.0)
    assert "parallactic angle" in night.told()
    assert night.chart().accessibleDescription() == night.told()


def test_values_are_copied_as_a_table(shown) -> None:
    page = shown(evening(HILL, ANDROMEDA))
    page.sections().section(SKY).night().copy_button().click()
    head, first, *_ = QApplication.clipboard().text().splitlines()
    assert head == 'utc,"field turns","turned in all","parallactic angle"'
    assert first.startswith("2026-09-21T")


def test_times_are_local_until_utc_is_wanted(shown, qtbot) -> None:
    given = evening(HILL, ANDROMEDA)
    page = shown(given)
    after(qtbot, page, lambda: page.pick(MIDNIGHT_S))
    assert "at 00:00" in page.facts().told()[2]  # Berlin is two hours ahead in September
    after(qtbot, page, lambda: given.show_utc(True))
    assert "at 22:00" in page.facts().told()[2]


def test_obstructions_are_drawn_and_told(shown, qtbot) -> None:
    wall = Horizon.through([(0.0, 0.0), (20.0, 80.0), (160.0, 80.0), (180.0, 0.0)])
    page = shown(evening(HILL, ANDROMEDA, horizon=wall))
    after(qtbot, page, lambda: page.pick(MIDNIGHT_S))
    assert "behind an obstruction" in page.facts().told()[2]
    assert page.sections().section(SKY).dome().picture().horizon is wall


def test_the_map_is_read_by_arrow_keys_in_each_of_its_kinds(shown) -> None:
    page = shown(evening(HILL, ANDROMEDA))
    sky = page.sections().section(SKY)
    said = {}
    for kind in ("rate", "exposure", "zenith"):
        sky.maps().button(kind).click()
        QTest.keyClick(sky.dome(), Qt.Key.Key_Down)
        said[kind] = sky.told()
    assert "the field turns +" in said["rate"]  # south of the zenith it grows
    assert "expose" in said["exposure"]
    assert "high" in said["zenith"]


def test_a_series_is_planned_and_its_crop_drawn(shown, qtbot) -> None:
    page = shown(evening(HILL, ANDROMEDA))
    section = _section(page, EXPOSURES)
    assert "exposures of" in section.said()
    line = section.amounts().line("rotation_exposure_s").line()
    line.setFocus()
    after(qtbot, page, lambda: QTest.keyClicks(line, "60"))
    qtbot.waitUntil(lambda: "60 exposures of 60 s" in section.said(), timeout=WORKED_OUT_MS)
    assert "too long" in section.said()
    assert "% is lost" in section.said()


def test_a_target_through_the_zenith_has_entry_and_exit(shown) -> None:
    overhead = Target("Overhead", "coordinates", 320.3, 48.0)
    given = evening(HILL, overhead)
    given.plans.set_number("drive_deg_per_s", 0.5)
    section = _section(shown(given), DRIVE)
    zenith, derotator = section.said()
    assert "enters the zone at 22:3" in zenith
    assert "has caught up at 22:3" in zenith
    assert "Stop the exposure" in derotator


def test_limits_that_no_derotator_has_are_said(shown) -> None:
    given = evening(HILL, ANDROMEDA)
    given.plans.set_number("derotator_low_deg", 10.0)
    given.plans.set_number("derotator_high_deg", 20.0)
    section = _section(shown(given), DRIVE)
    assert "cannot be used" in section.said()[1]


def test_a_wedge_for_this_latitude_leaves_nothing_one_for_another_something(shown, qtbot) -> None:
    given = evening(HILL, ANDROMEDA)
    page = shown(given)
    section = _section(page, TILTED)
    assert "nothing is left" in section.said()
    after(qtbot, page, lambda: given.plans.set_number("set_latitude_deg", 50.0))
    assert "an hour are left" in section.said()
    after(qtbot, page, lambda: section.kinds().button("platform").click())
    assert "an hour are left" in section.said()


@pytest.mark.parametrize("latitude_deg", [0.0, 89.0, -89.0, 90.0])
def test_it_works_at_the_equator_and_the_poles(shown, latitude_deg: float) -> None:
    page = shown(evening(Site(latitude_deg, 11.6, 0.0, "Far"), ANDROMEDA))
    for name in SECTIONS:
        _section(page, name)
    assert all(page.facts().told())


@pytest.mark.parametrize("scale", [1.0, 2.0])
def test_everything_is_named_large_enough_and_whole(shown, theme, scale: float) -> None:
    page = shown(evening(HILL, ANDROMEDA))
    theme.enlarge(scale)
    for name in SECTIONS:
        _section(page, name)
        check_reach(page)


def test_at_night_it_is_red_alone(shown, theme) -> None:
    theme.choose("night")
    wall = Horizon.through([(0.0, 10.0), (90.0, 20.0)])
    page = shown(evening(HILL, ANDROMEDA, horizon=wall))
    for name in SECTIONS:
        _section(page, name)
        assert green_and_blue(page) == 0, name


def test_a_target_that_never_rises_gets_no_figures(shown) -> None:
    page = shown(evening(HILL, TUCANAE))
    turning, longest, place = page.facts().told()
    assert turning == longest == "–"
    assert place.startswith("never")
    said = {
        EXPOSURES: lambda: _section(page, EXPOSURES).said(),
        DRIVE: lambda: _section(page, DRIVE).said()[0],
        TILTED: lambda: _section(page, TILTED).said(),
    }
    for words in said.values():
        assert "does not rise tonight" in words()
    assert not _section(page, SKY).night().isVisible()


def test_a_night_without_darkness_is_said(shown) -> None:
    assert "no night at all" in shown(evening(FJORD, ANDROMEDA, now_s=SUMMER_S)).special()


def test_what_takes_long_says_so_and_can_be_stopped(shown, qtbot, monkeypatch) -> None:
    page = shown(evening(HILL, ANDROMEDA))
    before, goes_on = page.facts().told(), Event()
    monkeypatch.setattr("app.pages.rotation.page.study", lambda _asked: goes_on.wait(20.0))
    page.pick(MIDNIGHT_S)
    qtbot.waitUntil(page.waiting().isVisible, timeout=WORKED_OUT_MS)
    assert "Being worked out" in page.waiting().said()
    page.waiting().stop_button().click()
    assert page.waiting().said().startswith("Stopped")
    with qtbot.assertNotEmitted(page.worked_out, wait=0):
        goes_on.set()
        page.stop()
    assert page.facts().told() == before


def test_an_answer_to_an_older_question_does_not_end_the_waiting(shown, qtbot, monkeypatch) -> None:
    page = shown(evening(HILL, ANDROMEDA))
    first, second = Event(), Event()
    turns = iter([first, second])
    work = study

    def slowly(asked: RotationQuestion) -> RotationStudy:
        next(turns).wait(20.0)
        return work(asked)

    monkeypatch.setattr("app.pages.rotation.page.study", slowly)
    page.pick(MIDNIGHT_S)
    page.pick(MIDNIGHT_S + 600.0)
    qtbot.waitUntil(page.waiting().isVisible, timeout=WORKED_OUT_MS)
    after(qtbot, page, first.set)
    assert page.waiting().isVisible()
    after(qtbot, page, second.set)
    assert not page.waiting().isVisible()
