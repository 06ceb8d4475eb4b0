"""The Night plan page: one line of time, the flip, reference stars, the eyepiece; plain words where
there is no night.
"""

from collections.abc import Iterator

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.night.plan import Evening
from app.pages.plan.page import BEST, EYE, FLIP, STARS, TONIGHT, PlanPage
from core.sky import catalogues
from core.sky.horizon import Horizon
from core.sky.site import Site
from core.sky.targets import Target
from tests.app.pages.eveningpages import (
    ANDROMEDA,
    FJORD,
    HILL,
    SOUTH,
    SUMMER_S,
    TUCANAE,
    Memory,
    check_reach,
    evening,
    green_and_blue,
)

NEW_YEARS_EVE_S = 1_798_729_200.0  # 2026-12-31T15:00:00Z, by `date -u -d @1798729200`
ICE = Site(89.0, 0.0, 5.0, "Ice")
SECTIONS = (TONIGHT, BEST, FLIP, STARS, EYE)
WORKED_OUT_MS = 20_000


@pytest.fixture
def shown(qtbot, theme) -> Iterator:
    pages: list[PlanPage] = []

    def show(given: Evening) -> PlanPage:
        page = PlanPage(given, theme)
        page.resize(1150, 740)
        qtbot.addWidget(page)
        pages.append(page)
        if given.around() is None:
            page.show()
        else:
            with qtbot.waitSignal(page.worked_out, timeout=WORKED_OUT_MS):
                page.show()
        return page

    yield show
    for page in pages:
        page.stop()


def _after(qtbot, page: PlanPage, do) -> None:
    with qtbot.waitSignal(page.worked_out, timeout=WORKED_OUT_MS):
        do()


def _section(page: PlanPage, name: str):
    page.sections().show_section(name)
    return page.sections().section(name)


def test_without_a_site_it_asks_for_one(shown, qtbot) -> None:
    page = shown(evening(None))
    with qtbot.waitSignal(page.site_wanted):
        page.site_button().click()


def test_darkness_target_and_flip_are_told_in_local_time(shown, qtbot) -> None:
    given = evening(HILL, ANDROMEDA)
    page = shown(given)
    dark, highest, flip = page.facts().told()
    # By skyfield 1.54's almanac (DE421) the Sun is 18° down from 18:59:11 to 03:14:31 UTC, and
    # M 31 is on the meridian at 23:54:21 UTC.
    assert dark.startswith("20:59 until 05:15")
    assert highest.startswith("83° at 01:54")
    assert flip.startswith("01:5")
    assert page.facts().below() == "Night from 21 to 22 September 2026."
    _after(qtbot, page, lambda: given.show_utc(True))
    assert page.facts().told()[0].startswith("18:59 until 03:15")


def test_a_target_is_found_while_typing_and_kept(shown, qtbot) -> None:
    settings = Memory()
    given = evening(HILL, settings=settings)
    page = shown(given)
    search = page.bar().search()
    QTest.keyClicks(search.field().line(), "m 31")
    qtbot.waitUntil(lambda: search.found().count() > 0, timeout=WORKED_OUT_MS)
    _after(qtbot, page, lambda: QTest.keyClick(search.field().line(), Qt.Key.Key_Return))
    assert page.bar().name() == "M 31, Andromeda Galaxy"
    assert evening(HILL, settings=settings).plans.target() == given.plans.target()


def test_the_list_is_in_order_of_time_with_steps_of_the_checklist(shown) -> None:
    lines = shown(evening(HILL, ANDROMEDA)).sections().section(TONIGHT).lines()
    said = "\n".join(lines)
    for words in ("Sunset", "Moonset, 78 % lit", "M 31 on the meridian", "M 31: flip possible"):
        assert words in said
    assert "☐ Level the base" in said
    assert said.index("Sunset") < said.index("Moonset") < said.index("Sunrise")


def test_an_alt_azimuth_mount_gets_its_field_rotation_and_no_flip(shown, qtbot) -> None:
    page = shown(evening(HILL, ANDROMEDA))
    tonight = page.sections().section(TONIGHT)
    _after(qtbot, page, lambda: tonight.mounts().button("ALT_AZIMUTH").click())
    titles = [row.title for row in tonight.night().chart().picture().rows]
    assert "Field rotation, degrees per hour" in titles
    assert page.facts().told()[2].startswith("none")
    assert "no flip" in _section(page, FLIP).said()


def test_polar_summer_is_said_plainly(shown) -> None:
    page = shown(evening(FJORD, ANDROMEDA, now_s=SUMMER_S))
    assert "no night at all" in page.special()
    assert page.facts().told()[0] == "none it stays too light for stars"
    assert "not get dark enough" in _section(page, BEST).nothing()
    assert "The Sun is up" in _section(page, STARS).said()
    for name in SECTIONS:
        _section(page, name)


def test_the_best_placed_can_be_taken_by_key(shown, qtbot) -> None:
    given = evening(HILL)
    page = shown(given)
    best = _section(page, BEST)
    names = [best.listed().item(row).text() for row in range(best.listed().count())]
    assert len(names) == 30
    best.listed().setCurrentRow(2)
    _after(qtbot, page, lambda: QTest.keyClick(best.listed(), Qt.Key.Key_Return))
    assert names[2].startswith(given.plans.target().name)
    _after(qtbot, page, lambda: best.lists().button("all").click())
    assert best.listed().item(0).text() not in names


def test_without_the_table_of_objects_the_rest_still_works(shown, qtbot, monkeypatch) -> None:
    def unreadable():
        raise RuntimeError("The table cannot be read; install again.")

    monkeypatch.setattr(catalogues, "load_deep_sky", unreadable)
    page = shown(evening(HILL))
    assert _section(page, BEST).nothing() == "The table cannot be read; install again."
    line = page.bar().search().field().line()
    QTest.keyClicks(line, "0 42 44 +41 16")
    _after(qtbot, page, lambda: QTest.keyClick(line, Qt.Key.Key_Return))
    assert page.facts().told()[1].startswith("83°")


def test_the_flip_has_times_sides_and_cautions(shown, qtbot) -> None:
    given = evening(HILL, ANDROMEDA)
    page = shown(given)
    flip = _section(page, FLIP)
    said = flip.said()
    for words in ("none cut", "Latest time before the mount's limit", "tube west of the pier"):
        assert words in said
    assert "Stand by at the first flip" in said
    begin, _ = flip.session_fields()
    QTest.keyClicks(begin.line(), "02:30")
    QTest.keyClick(begin.line(), Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: "From 02:30" in flip.said(), timeout=WORKED_OUT_MS)
    assert given.plans.number("target_begin_utc_s", 0.0) == 1_790_037_000.0  # 00:30 UTC
    assert "It passed the meridian 36 min before that" in flip.said()


def test_a_session_that_is_no_time_is_refused_and_changes_nothing(shown, qtbot) -> None:
    page = shown(evening(HILL, ANDROMEDA))
    flip = _section(page, FLIP)
    begin, _ = flip.session_fields()
    QTest.keyClicks(begin.line(), "25:99")
    with qtbot.assertNotEmitted(flip.session_given):
        QTest.keyClick(begin.line(), Qt.Key.Key_Return)
    assert begin.is_wrong()


def test_a_session_the_wrong_way_round_is_a_sentence(shown, qtbot) -> None:
    page = shown(evening(HILL, ANDROMEDA))
    flip = _section(page, FLIP)
    begin, end = flip.session_fields()
    QTest.keyClicks(begin.line(), "03:00")
    QTest.keyClick(begin.line(), Qt.Key.Key_Return)
    QTest.keyClicks(end.line(), "22:00")
    QTest.keyClick(end.line(), Qt.Key.Key_Return)
    qtbot.waitUntil(lambda: "ends before it begins" in flip.said(), timeout=WORKED_OUT_MS)


def test_a_circumpolar_target_passes_below_the_pole_in_the_south_too(shown) -> None:
    page = shown(evening(SOUTH, TUCANAE, zone="UTC"))
    span = page._study.night
    assert span.usable_spans
    assert "tube west of the pier" in _section(page, FLIP).said()


def test_reference_stars_are_named_with_the_error_to_expect(shown, qtbot) -> None:
    page = shown(evening(HILL, ANDROMEDA))
    stars = _section(page, STARS)
    assert "Reference stars at 20:59" in stars.said()
    assert "taken for their brightness alone" in stars.said()
    assert "Tube west of the pier" in stars.said()
    chosen, careless = stars.domes()
    assert len(chosen.picture().marks) == 3
    assert len(careless.picture().marks) == 3
    _after(qtbot, page, lambda: stars.counts().button("2").click())
    assert len(chosen.picture().marks) == 2
    _after(qtbot, page, lambda: stars.steps()[1].click())
    assert "Reference stars at 21:14" in stars.said()
    _after(qtbot, page, lambda: stars.mounts().button("ALT_AZIMUTH").click())
    assert "Level the base first" in stars.said()


def test_obstructions_keep_reference_stars_out(shown) -> None:
    wall = Horizon.through([(0.0, 89.0), (360.0, 89.0)])
    page = shown(evening(HILL, ANDROMEDA, horizon=wall))
    assert "not enough clear sky" in _section(page, STARS).said()


def test_the_eyepiece_is_told_at_each_moment_and_better_turned(shown, qtbot) -> None:
    page = shown(evening(HILL, ANDROMEDA))
    eye = _section(page, EYE)
    assert "above the ground" in eye.said()
    assert "in its rings it is in reach for" in eye.said()
    _after(qtbot, page, lambda: eye.mounts().button("DOBSONIAN").click())
    assert "about equatorial mounts" in eye.said()


def test_the_moon_and_planets_are_targets_too(shown, qtbot) -> None:
    given = evening(HILL)
    page = shown(given)
    search = page.bar().search()
    QTest.keyClicks(search.field().line(), "saturn")
    _after(qtbot, page, lambda: QTest.keyClick(search.field().line(), Qt.Key.Key_Return))
    assert page.bar().name() == "Saturn"
    assert any(
        "Saturn on the meridian" in line for line in page.sections().section(TONIGHT).lines()
    )


def test_a_target_that_never_rises_is_said(shown) -> None:
    page = shown(evening(HILL, Target("Far south", "coordinates", 100.0, -70.0)))
    assert page.facts().told()[1].startswith("never")
    assert "Choose another target" in _section(page, FLIP).said()


@pytest.mark.parametrize("scale", [1.0, 2.0])
def test_everything_is_named_large_enough_and_whole(shown, theme, scale: float) -> None:
    page = shown(evening(HILL, ANDROMEDA))
    theme.enlarge(scale)
    for name in SECTIONS:
        _section(page, name)
        check_reach(page)


def test_at_night_it_is_red_alone(shown, theme) -> None:
    theme.choose("night")
    page = shown(evening(HILL, ANDROMEDA))
    for name in SECTIONS:
        _section(page, name)
        assert green_and_blue(page) == 0, name


def test_a_night_across_two_years_names_both(shown) -> None:
    page = shown(evening(HILL, ANDROMEDA, now_s=NEW_YEARS_EVE_S))
    assert page.facts().below() == "Night from 31 December 2026 to 1 January 2027."


def test_darkness_that_does_not_end_has_no_times(shown) -> None:
    page = shown(evening(ICE, ANDROMEDA, now_s=NEW_YEARS_EVE_S))
    assert page.facts().told()[0] == "all day from noon to noon"
    assert any(line.startswith("Noon to noon  Night") for line in _section(page, TONIGHT).lines())
