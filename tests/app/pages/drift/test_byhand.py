"""Reading by hand: keys, units, sides and the shortest form."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.devices.source import Reading
from app.devices.typed import ManualSource
from app.pages.drift.practice import Bolts
from app.pages.drift.starchoice import ChosenStar, StarChoice
from app.pages.drift.typed import ReadingPad, SingleDriftForm
from core.sky.catalogues import Star, StarNow

NOW_S = 1_790_000_000.0


class Clock:
    """Goes on only when told."""

    def __init__(self) -> None:
        self.utc_s = NOW_S

    def __call__(self) -> float:
        return self.utc_s


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def read() -> list[Reading]:
    return []


@pytest.fixture
def pad(qtbot, theme, clock: Clock, read: list[Reading]) -> ReadingPad:
    source = ManualSource(clock)
    source.reading.connect(read.append)
    source.start()
    made = ReadingPad(source)
    source.setParent(made)
    made.theme = theme
    qtbot.addWidget(made)
    made.show()
    made.begin("Vega")
    return made


def _type(pad: ReadingPad, text: str, key: Qt.Key = Qt.Key.Key_Space) -> None:
    QTest.keyClicks(pad.offset().line(), text)
    QTest.keyClick(pad.offset().line(), key)


@pytest.mark.parametrize("key", [Qt.Key.Key_Space, Qt.Key.Key_Return])
def test_a_number_and_one_key_are_a_reading(pad: ReadingPad, read, clock: Clock, key) -> None:
    _type(pad, "12,5", key)
    clock.utc_s += 30.0
    _type(pad, "13", key)
    assert [(r.utc_s, r.north_arcsec) for r in read] == [(NOW_S, 12.5), (NOW_S + 30.0, 13.0)]
    assert read[0].sigma_arcsec == 1.0
    assert pad.offset().text() == ""


def test_the_side_is_changed_by_a_key_in_the_field(pad: ReadingPad, read) -> None:
    _type(pad, "s4")
    _type(pad, "n4")
    assert [r.north_arcsec for r in read] == [-4.0, 4.0]


def test_the_moment_can_be_kept_before_the_number_is_typed(pad: ReadingPad, read, clock) -> None:
    _type(pad, "")
    assert "14:13:20" in pad.said()
    clock.utc_s += 20.0
    _type(pad, "7")
    assert [(r.utc_s, r.north_arcsec) for r in read] == [(NOW_S, 7.0)]


def test_divisions_are_scaled_and_a_missing_scale_is_asked_for(pad: ReadingPad, read) -> None:
    pad.units().button("divisions").click()
    assert pad.scale().isVisible()
    _type(pad, "3")
    assert read == []
    assert pad.scale().is_wrong()
    pad.scale().show_text("4.5")
    QTest.keyClick(pad.offset().line(), Qt.Key.Key_Return)
    assert [r.north_arcsec for r in read] == [13.5]


@pytest.mark.parametrize("text", ["x", "", "0", "-1"])
def test_a_reading_error_that_cannot_be_is_refused(pad: ReadingPad, read, text: str) -> None:
    pad.error().show_text(text)
    _type(pad, "3")
    assert read == []
    assert pad.error().is_wrong()


def test_a_slip_of_the_finger_is_said_and_nothing_taken(pad: ReadingPad, read) -> None:
    _type(pad, "1.2.3")
    assert read == []
    assert pad.offset().is_wrong()


@pytest.fixture
def form(qtbot, theme) -> SingleDriftForm:
    made = SingleDriftForm(lambda: NOW_S)
    made.theme = theme
    qtbot.addWidget(made)
    made.show()
    return made


def test_one_drift_ending_now(form: SingleDriftForm, qtbot) -> None:
    form.fields()["moved"].show_text("12")
    form.fields()["minutes"].show_text("5")
    form.side().button("south").click()
    with qtbot.waitSignal(form.given) as given:
        form.submit()
    drift = given.args[0]
    assert (drift.north_arcsec, drift.minutes, drift.ending_utc_s) == (-12.0, 5.0, NOW_S)
    assert drift.sigma_arcsec == 1.0


def test_one_drift_that_ended_at_a_time(form: SingleDriftForm, qtbot) -> None:
    form.fields()["moved"].show_text("3")
    form.fields()["minutes"].show_text("10")
    form.when().button("at").click()
    form.fields()["utc"].show_text("2026-09-21 14:13:20")
    with qtbot.waitSignal(form.given) as given:
        form.submit()
    assert given.args[0].ending_utc_s == NOW_S


@pytest.mark.parametrize(
    ("field", "text", "said"),
    [
        ("moved", "", "movement is empty"),
        ("minutes", "0", "minutes"),
        ("minutes", "500", "minutes"),
        ("error", "0", "how well you can read"),
    ],
)
def test_one_drift_that_cannot_be(form, qtbot, field: str, text: str, said: str) -> None:
    for name, usual in (("moved", "12"), ("minutes", "5"), (field, text)):
        form.fields()[name].show_text(usual)
    with qtbot.assertNotEmitted(form.given):
        form.submit()
    assert said in form.wrong()


@pytest.mark.parametrize(("latitude_deg", "east"), [(47.0, 1.0), (-33.0, -1.0)])
def test_east_is_greater_azimuth_at_the_north_pole_and_smaller_at_the_south_pole(
    qtbot, theme, latitude_deg: float, east: float
) -> None:
    bolts = Bolts(latitude_deg)
    bolts.theme = theme
    qtbot.addWidget(bolts)
    bolts.amount().show_text("12.4")
    with qtbot.waitSignal(bolts.azimuth_turned) as turned:
        bolts.button("east").click()
    assert turned.args == [12.4 * east]
    with qtbot.waitSignal(bolts.azimuth_turned) as turned:
        bolts.button("west").click()
    assert turned.args == [-12.4 * east]
    with qtbot.waitSignal(bolts.altitude_turned) as turned:
        bolts.button("lower").click()
    assert turned.args == [-12.4]


def _star(name: str, hour_angle_deg: float) -> StarNow:
    return StarNow(Star(1, name, 10.0, 5.0, 0, 0, 0, 1.0, "Lyra"), 90.0, 40.0, hour_angle_deg)


@pytest.fixture
def stars(qtbot, theme) -> StarChoice:
    made = StarChoice(
        lambda: [_star("Meridian star", 2.0), _star("Eastern star", -80.0)],
        lambda now: (now.star.ra_deg + 0.25, now.star.dec_deg),
    )
    made.theme = theme
    qtbot.addWidget(made)
    made.show()
    return made


def test_a_star_from_the_list_comes_with_its_place_tonight(stars: StarChoice, qtbot) -> None:
    stars.kinds().button("east").click()
    assert stars.star_list().count() == 1
    with qtbot.waitSignal(stars.chosen) as chosen:
        QTest.keyClick(stars.star_list(), Qt.Key.Key_Return)
    assert chosen.args == [ChosenStar("Eastern star", 10.25, 5.0)]


def test_no_star_there_is_said(stars: StarChoice) -> None:
    stars.kinds().button("west").click()
    assert not stars.watch_button().isEnabled()
    assert not stars.star_list().isVisible()  # an empty box would only puzzle
    stars.kinds().button("any").click()
    assert stars.star_list().isVisible()


def test_a_star_by_its_coordinates(stars: StarChoice, qtbot) -> None:
    stars.kinds().button("coordinates").click()
    name, ra, dec = stars.fields()
    name.show_text("Guide")
    ra.show_text("18h 36m")
    dec.show_text("+38 30")
    with qtbot.waitSignal(stars.chosen) as chosen:
        stars.watch_button().click()
    assert chosen.args == [ChosenStar("Guide", pytest.approx(279.0), 38.5)]


def test_coordinates_that_cannot_be_are_said(stars: StarChoice, qtbot) -> None:
    stars.kinds().button("coordinates").click()
    _name, ra, dec = stars.fields()
    ra.show_text("5.5")
    dec.show_text("95")
    with qtbot.assertNotEmitted(stars.chosen):
        stars.watch_button().click()
    assert "hours or degrees" in ra.below()
    assert "swapped" in dec.below()
