"""A whole practice night as the guide leads through it, with the real solver behind."""

import itertools
from collections.abc import Iterator

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.devices.typed import SingleDrift
from app.night.activenight import ActiveNight
from app.night.session import Session
from app.pages.drift.page import DriftPage
from app.pages.drift.practice import PracticePanel
from app.pages.drift.typed import ByHand
from app.pagetable import drift_parts
from app.ui.form import Key
from app.workers.sound import Sounds
from core.alignment.guide.procedure import Stage
from core.sky.site import Air, Site
from tests.app.night.heard import heard
from tests.app.pages.drift.surroundings import seen_by

DARK_S = 1_790_024_400.0  # 2026-09-21 21:00 UTC: night at the hill
HILL, AIR = Site(48.1, 11.6, 520.0, "Hill"), Air(952.0, 10.0)
PATIENCE_MS = 20_000
BOLDEST = 60  # actions, before the night is taken for endless


class Person:
    """Does what the guide says, and nothing else."""

    def __init__(self, page: DriftPage, qtbot) -> None:
        self.page, self._qtbot = page, qtbot
        page.take_way("practice")
        controls = page.ways().panel.controls("practice")
        assert isinstance(controls, PracticePanel)
        controls.set_speed("0")
        self.source = controls.source()
        self.readings = 0

    def snapshot(self):
        return heard(self.page.shown())

    def stage(self) -> Stage:
        return self.snapshot().guide.stage

    def primary(self) -> str:
        self.page.leading().refresh()
        said = self.page.leading().band.guidance()
        return "" if said is None or said.primary is None else said.primary.name

    def band_keys(self) -> list[str]:
        """What stands on the keys of the band."""
        keys = self.page.leading().band.findChildren(Key)
        return [key.text() for key in keys if key.isVisible()]

    def read(self, count: int) -> None:
        for _ in range(count):
            self.source.advance()
        self.readings += count
        self._qtbot.waitUntil(self._is_solved, timeout=PATIENCE_MS)

    def _is_solved(self) -> bool:
        snapshot = self.snapshot()
        if snapshot.solution is None:
            return False
        solved = {leg.label: leg.sample_count for leg in snapshot.solution.legs}
        return all(solved.get(leg.label) == leg.utc_s.size for leg in snapshot.legs)

    def watch(self) -> None:
        self.read(15)
        while not self.primary():
            self.read(8)
            assert self.readings < 2000

    def turn(self) -> None:
        """Each bolt until the star in view says stop."""
        for _ in range(6):
            for _ in range(3):
                self.source.advance()
            guide = self.snapshot().guide
            if guide.seen is None:  # so small a turn, or a star that hides it: as told, blindly
                self.source.turn_azimuth(guide.wanted.azimuth_arcmin)
                self.source.turn_altitude(guide.wanted.altitude_arcmin)
                return
            azimuth = guide.wanted.azimuth_arcmin - guide.seen.azimuth_arcmin
            altitude = guide.wanted.altitude_arcmin - guide.seen.altitude_arcmin
            if abs(azimuth) > 0.3:
                self.source.turn_azimuth(azimuth)
            if abs(altitude) > 0.3:
                self.source.turn_altitude(altitude)

    def go_on(self) -> None:
        if self.stage() is Stage.WATCH:
            self.watch()
        elif self.stage() is Stage.TURN:
            self.turn()
        self._qtbot.waitUntil(lambda: self.primary() != "", timeout=PATIENCE_MS)
        assert len(set(self.band_keys())) == len(self.band_keys())
        self.page.leading().act(self.primary())


@pytest.fixture
def session() -> Iterator[Session]:
    made = Session()
    yield made
    made.close()


@pytest.fixture
def seed() -> int:
    return 2


@pytest.fixture
def page(qtbot, theme, settings, session: Session, monkeypatch, seed: int) -> Iterator[DriftPage]:
    """The hidden mount of the practice is the same in every run."""
    monkeypatch.setattr("app.pagetable.secrets.randbits", lambda _bits: seed)
    seconds = itertools.count()
    parts = drift_parts(
        lambda: DARK_S + next(seconds),
        Sounds(settings),
        *seen_by(),
    )
    made = DriftPage(ActiveNight(session), theme, parts)
    made.resize(1150, 740)
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    yield made
    made.stop()


def test_the_guide_leads_a_hidden_mount_to_the_pole(page: DriftPage, qtbot) -> None:
    person = Person(page, qtbot)
    for _ in range(BOLDEST):
        if person.stage() is Stage.DONE:
            break
        person.go_on()
    assert person.stage() is Stage.DONE
    azimuth, altitude = person.source.reveal()
    error = np.hypot(azimuth * np.cos(np.radians(person.snapshot().site.latitude_deg)), altitude)
    assert error < 1.0
    said = page.leading().band.guidance()
    assert "within 1′ of the true pole" in said.sentence


def test_each_thing_to_do_has_one_key(page: DriftPage, session: Session, qtbot) -> None:
    """Two stars, each told by one drift, are enough to turn: nothing is under way then."""
    person = Person(page, qtbot)
    page.take_way("hand")
    session.set_site(HILL, AIR)
    for name, ra_deg, north in (("High", 340.0, 40.0), ("East", 60.0, -30.0)):
        session.take_leg(name, SingleDrift(north, 5.0, DARK_S, 1.0).leg(ra_deg, 10.0))
    qtbot.waitUntil(lambda: person.primary() == "turn", timeout=PATIENCE_MS)
    assert person.stage() is Stage.CHOOSE
    assert "Turn the bolts (T)" in person.band_keys()
    assert "The tripod was moved" in person.band_keys()  # by no letter: it drops all legs
    assert not page.leading().band.press_letter("k")
    assert not page.leading().band.press_letter("")
    assert len(set(person.band_keys())) == len(person.band_keys())


def test_a_person_who_turns_the_wrong_way_is_told(page: DriftPage, qtbot) -> None:
    person = Person(page, qtbot)
    while person.stage() is not Stage.TURN:
        person.go_on()
    wanted = person.snapshot().guide.wanted
    person.source.set_star("away", 10.0, 10.0)  # the star is lost: nobody sees the turn
    person.source.turn_azimuth(-wanted.azimuth_arcmin)
    person.source.turn_altitude(-wanted.altitude_arcmin)
    page.leading().act("turned")
    for _ in range(BOLDEST):
        if person.snapshot().guide.surprise is not None:
            break
        person.go_on()
    assert "that was the other direction" in person.snapshot().guide.surprise.sentence
    page.leading().refresh()
    assert any("other direction" in w for w in page.leading().band.guidance().warnings)


def test_a_moved_tripod_begins_anew_with_nothing_known(page: DriftPage, qtbot) -> None:
    person = Person(page, qtbot)
    person.go_on()
    person.read(30)
    page.leading().act("kicked")
    snapshot = person.snapshot()
    assert (snapshot.axis_state, snapshot.legs) == (2, ())
    assert snapshot.guide.known is None
    assert snapshot.guide.stage is Stage.CHOOSE


def test_stars_are_chosen_from_the_list_with_their_price(page, session, qtbot) -> None:
    session.set_site(HILL, AIR)
    page.take_way("hand")
    choosing = page.leading().choosing
    qtbot.waitUntil(lambda: choosing.star() is not None)
    assert choosing.isVisible()
    best = choosing.star()
    row = choosing.star_list().count() - 1
    choosing.star_list().setCurrentRow(row)
    other = choosing.star()
    assert other.name != best.name
    assert other.name in choosing.star_list().item(row).text()
    page.leading().refresh()
    assert other.name in page.leading().band.guidance().sentence
    page.leading().act("watch")
    assert heard(session).watching == f"1 {other.name}"
    assert page.work().plot().isVisible()
    assert not choosing.isVisible()


def test_letters_reach_the_guide_while_a_number_is_typed(page, session, qtbot) -> None:
    session.set_site(HILL, AIR)
    page.take_way("hand")
    qtbot.waitUntil(lambda: page.leading().choosing.star() is not None)
    page.leading().act("watch")
    controls = page.ways().panel.controls("hand")
    assert isinstance(controls, ByHand)
    QTest.keyClick(controls.pad().offset().line(), Qt.Key.Key_1)
    QTest.keyClick(controls.pad().offset().line(), Qt.Key.Key_E)
    assert heard(session).watching is None
    assert heard(session).guide.stage is Stage.CHOOSE
    assert not controls.pad().isVisible()


@pytest.mark.parametrize(
    ("answer", "read"), [("went south", [0.0, 5.0]), ("went north", [0.0, -5.0])]
)
def test_a_mirrored_view_is_read_the_other_way_round(page, session, qtbot, answer, read) -> None:
    session.set_site(HILL, AIR)
    page.take_way("hand")
    page.leading().act("which north")
    assert heard(session).guide.stage is Stage.FIND_NORTH
    page.leading().act(answer)
    qtbot.waitUntil(lambda: page.leading().choosing.star() is not None)
    page.leading().act("watch")
    controls = page.ways().panel.controls("hand")
    for text in ("0", "5"):
        controls.pad().offset().show_text(text)
        controls.pad().press()
    (leg,) = heard(session).legs
    assert np.abs(leg.north_arcsec).tolist() == np.abs(read).tolist()
    assert leg.north_arcsec[-1] == read[-1]


def test_by_day_no_star_is_proposed(qtbot, theme, settings, session: Session) -> None:
    noon = DARK_S - 9.5 * 3600.0
    page = DriftPage(
        ActiveNight(session),
        theme,
        drift_parts(lambda: noon, Sounds(settings), *seen_by()),
    )
    qtbot.addWidget(page)
    page.show()
    session.set_site(HILL, AIR)
    page.take_way("hand")
    qtbot.waitUntil(lambda: page.leading().choosing.proposals() is not None)
    page.leading().refresh()
    assert "too light" in page.leading().band.guidance().sentence
    page.stop()
