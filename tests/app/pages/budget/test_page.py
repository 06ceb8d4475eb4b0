"""The Budget page over a real session: figures, verdict, map, curve, aim, and what is missing."""

from collections.abc import Callable
from dataclasses import replace

import erfa
import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from app.night.budget import Budget
from app.night.equipment import Equipment
from app.night.session import Session
from app.pages.budget.page import BudgetPage
from app.pages.budget.question import Axis
from app.ui.style import SCALES
from core.alignment.driftlog.records import Leg
from core.alignment.goal import Aim
from core.imaging.task import ImagedTarget, Vantage
from core.imaging.tolerance import Alignment, tolerance
from core.imaging.verdict import judge
from core.imaging.words import arc
from core.practice.simulation import PracticeMount, PracticeSky
from core.sky.site import Air, Site
from tests.app.night.heard import heard
from tests.app.night.memory import Memory
from tests.app.pages import reach

NOW_S = 1_790_000_000.0
ROCK, AIR = Site(47.0, -20.0, 300.0, "Heron Rock"), Air(980.0, 5.0)
PATIENCE_MS = 20_000


@pytest.fixture
def make_page(qtbot, theme) -> Callable[..., BudgetPage]:
    made: list[BudgetPage] = []

    def make(site: Site | None = ROCK, has_example: bool = True) -> BudgetPage:
        memory = Memory()
        session, equipment = Session(), Equipment(memory)
        budget = Budget(memory, equipment)
        if site is not None:
            session.set_site(site, AIR)
        if has_example:
            budget.take_example("Invented target")
        page = BudgetPage(session, theme, budget, lambda: NOW_S)
        page.session, page.budget, page.kept_alive = session, budget, (equipment, theme)
        qtbot.addWidget(page)
        page.resize(1100, 740)
        page.show()
        made.append(page)
        return page

    yield make
    for page in made:
        page.stop()
        page.session.close()


@pytest.fixture
def page(make_page, qtbot) -> BudgetPage:
    made = make_page()
    _answered(made, qtbot)
    return made


def _answered(page: BudgetPage, qtbot) -> None:
    qtbot.waitUntil(lambda: page.work.plot.lines() is not None, timeout=PATIENCE_MS)


def _type(field, text: str) -> None:
    field.line().clear()
    QTest.keyClicks(field.line(), text)
    QTest.keyClick(field.line(), Qt.Key.Key_Return)


def _watch(session: Session) -> None:
    """Two stars at an invented mount, 11′ and 6′ off."""
    rng = np.random.default_rng(4)
    mount = PracticeMount.hidden(rng)
    mount.azimuth_error_arcmin, mount.altitude_error_arcmin = 11.0, 6.0
    sky = PracticeSky(mount, ROCK, AIR, rng)
    for name, ra_deg, start_s in (("meridian", 195.0, NOW_S), ("east", 265.0, NOW_S + 700.0)):
        utc_s = start_s + 2.0 * np.arange(300)
        sky.centre(ra_deg, 10.0, start_s)
        session.take_leg(name, Leg(name, ra_deg, 10.0, utc_s, *sky.readings(utc_s)))


def test_the_large_figures_are_those_of_the_exact_model(page: BudgetPage) -> None:
    expected = tolerance(page.budget.task(), Vantage.of(ROCK, AIR))
    band = page.work.band
    assert band.whole.figure.text() == arc(expected.largest_error_arcmin)
    assert band.azimuth.figure.text() == arc(expected.azimuth_arcmin)
    assert band.altitude.figure.text() == arc(expected.altitude_arcmin)
    assert band.sentence.text() == expected.sentence


def test_the_goal_of_the_drift_page_is_taken_on_request_only(page: BudgetPage, qtbot) -> None:
    allowed = tolerance(page.budget.task(), Vantage.of(ROCK, AIR)).largest_error_arcmin
    assert heard(page.session).target_arcmin == 1.0
    page.work.band.goal_key.click()
    goal = heard(page.session).target_arcmin
    assert 0.9 * allowed < goal <= allowed
    qtbot.waitUntil(lambda: not page.work.band.goal_key.isVisible(), timeout=PATIENCE_MS)


def test_a_target_is_found_by_its_name(page: BudgetPage) -> None:
    _type(page.form.name, "m31")
    wanted = page.budget.wanted
    assert wanted.name.startswith("M 31")
    # 41° 16′ in J2000 (RC3), and 26 years of precession later some 9′ more
    assert wanted.declination_deg == pytest.approx(41.27 + 26.7 * 19.7 / 3600.0, abs=0.02)


def test_a_name_in_no_table_asks_for_the_declination(page: BudgetPage) -> None:
    _type(page.form.name, "My comet")
    assert "type its declination" in page.form.name.below()
    _type(page.form.declination, "-12 30")
    assert page.budget.wanted.name == "My comet"
    assert page.budget.wanted.declination_deg == -12.5


@pytest.mark.parametrize(
    ("field", "text"),
    [("exposure_s", "0"), ("exposure_s", "long"), ("limit_px", "-1"), ("limit_px", "1.5.2")],
)
def test_what_cannot_be_changes_nothing(page: BudgetPage, field: str, text: str) -> None:
    before = page.budget.wanted
    _type(page.form.figures[field], text)
    assert page.form.figures[field].is_wrong()
    assert page.budget.wanted == before


def test_a_longer_exposure_with_a_decimal_comma(page: BudgetPage, qtbot) -> None:
    before = page.work.band.whole.figure.text()
    _type(page.form.figures["exposure_s"], "900,5")
    assert page.budget.wanted.exposure_s == 900.5
    qtbot.waitUntil(lambda: page.work.band.whole.figure.text() != before, timeout=PATIENCE_MS)


def test_what_no_axis_can_do_is_said(page: BudgetPage, qtbot) -> None:
    page.form.guiding.button("unguided").click()
    _type(page.form.figures["exposure_s"], "7200")
    band = page.work.band
    qtbot.waitUntil(lambda: "is not enough" in band.sentence.text(), timeout=PATIENCE_MS)
    assert not band.goal_key.isVisible()
    assert "exactly on the true pole" in page.work.drawn_for()


def test_a_target_that_never_rises_is_said(page: BudgetPage, qtbot) -> None:
    _type(page.form.declination, "-70")
    problem = page.work.band.problem
    qtbot.waitUntil(lambda: "never above" in problem.text(), timeout=PATIENCE_MS)


def test_without_a_solution_the_verdict_is_not_known(page: BudgetPage) -> None:
    assert page.work.standing.grade.text() == "Not known yet"
    assert not page.work.axis.axes.button(Axis.SOLVED.name).isEnabled()


def test_the_axis_as_solved_is_judged(page: BudgetPage, qtbot) -> None:
    _watch(page.session)
    qtbot.waitUntil(
        lambda: (
            "as solved" in page.work.drawn_for()
            and page.work.standing.grade.text() != "Not known yet"
        ),
        timeout=PATIENCE_MS,
    )
    alignment = Alignment.of(heard(page.session).solution)
    smear = judge(page.budget.task(), Vantage.of(ROCK, AIR), alignment)
    assert page.work.standing.sentence.text() == smear.sentence
    shown = [corner for _centre, corner in page.work.standing.cells()]
    corner = smear.corner
    expected = (corner.total_px, corner.azimuth_px, corner.altitude_px, corner.air_px)
    assert [float(shown[row]) for row in (0, 2, 3, 4)] == pytest.approx(expected, abs=0.006)


def test_an_error_is_tried_out(page: BudgetPage, qtbot) -> None:
    before = page.work.plot.lines()
    page.work.axis.axes.button(Axis.TYPED.name).click()
    _type(page.work.axis.azimuth, "-20")
    qtbot.waitUntil(lambda: "-20′ off in azimuth" in page.work.drawn_for(), timeout=PATIENCE_MS)
    assert page.work.plot.lines() is not before


def test_the_map_is_read_and_holds_centre_and_corner(page: BudgetPage) -> None:
    sky = page.work.sky
    QTest.keyClick(sky.disc, Qt.Key.Key_Up)
    corner = sky.readout()
    assert "south, 50° high" in corner
    sky.places.button("centre").click()
    assert sky.readout() != corner


@pytest.mark.parametrize("place_deg", [(10.0, 47.5), (200.0, 35.0)])
def test_the_map_tells_what_a_target_there_would_smear(page: BudgetPage, qtbot, place_deg) -> None:
    page.work.axis.axes.button(Axis.TYPED.name).click()
    _type(page.work.axis.azimuth, "-20")
    qtbot.waitUntil(lambda: "-20′ off in azimuth" in page.work.drawn_for(), timeout=PATIENCE_MS)
    page.work.sky.disc.pointed.emit(*place_deg)
    told = float(page.work.sky.readout().split(": ")[1].split()[0])
    hour_angle, dec = np.rad2deg(erfa.ae2hd(*np.deg2rad([*place_deg, ROCK.latitude_deg])))
    task = replace(page.budget.task(), target=ImagedTarget(dec, hour_angle, hour_angle))
    altitude_arcmin = page.work.axis.typed_arcmin()[1]
    exact = judge(task, Vantage.of(ROCK, AIR), Alignment(-20.0, altitude_arcmin))
    assert told == pytest.approx(exact.corner.total_px, abs=0.006)


def test_the_aim_is_chosen_with_its_reason(page: BudgetPage, qtbot) -> None:
    assert "pole" in page.work.aim.sentence.text()
    page.work.aim.aims.button(Aim.REFRACTED_POLE.name).click()
    assert heard(page.session).aim is Aim.REFRACTED_POLE
    band = page.work.band
    qtbot.waitUntil(lambda: "refracted pole" in band.sentence.text(), timeout=PATIENCE_MS)


def test_typed_optics(page: BudgetPage, qtbot) -> None:
    optics = page.form.optics
    optics.sources.button("typed").click()
    problem = page.work.band.problem
    qtbot.waitUntil(lambda: "focal length" in problem.text(), timeout=PATIENCE_MS)
    texts = {"focal_length_mm": "1200", "pixel_um": "5", "width_px": "4000", "height_px": "3000"}
    for name, text in texts.items():
        _type(optics.figures[name], text)
    qtbot.waitUntil(lambda: "1200 mm" in page.work.band.sentence.text(), timeout=PATIENCE_MS)


def test_first_steps_are_offered(make_page, qtbot) -> None:
    page = make_page(site=None, has_example=False)
    qtbot.waitUntil(lambda: "your site" in page.work.band.problem.text())
    with qtbot.waitSignal(page.site_wanted):
        page.site_key.click()
    page.session.set_site(ROCK, AIR)
    qtbot.waitUntil(lambda: page.example_key.isVisible())
    page.example_key.click()
    _answered(page, qtbot)
    assert page.budget.wanted.name == "Invented target"


@pytest.mark.parametrize("scale", SCALES)
@pytest.mark.parametrize("is_filled", [True, False])
def test_everything_is_named_large_enough_and_whole(
    make_page, theme, qtbot, scale: float, is_filled: bool
) -> None:
    theme.enlarge(scale)
    page = make_page(ROCK if is_filled else None, is_filled)
    if is_filled:
        _answered(page, qtbot)
        page.work.axis.axes.button(Axis.TYPED.name).click()
    for _ in range(4):
        QApplication.processEvents()
    assert reach.nameless(page) == []
    assert reach.small(page) == []
    assert reach.clipped(page) == []


def test_at_night_it_is_red_alone(make_page, theme, qtbot) -> None:
    theme.choose("night")
    page = make_page()
    page.resize(1200, 1500)
    _answered(page, qtbot)
    QTest.keyClick(page.work.sky.disc, Qt.Key.Key_Up)
    image = page.grab().toImage().convertToFormat(QImage.Format.Format_RGB888)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1)
    pixels = rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3)
    assert pixels[..., 0].max() > 200
    assert pixels[..., 1:].max() == 0
