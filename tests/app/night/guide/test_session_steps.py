"""The procedure in the session: steps, turns, north found by turning, a year that ends."""

from dataclasses import replace

import pytest

from app.devices.source import Reading
from app.night.question import AxisAnswer, AxisQuestion
from app.night.session import Session
from app.night.snapshot import How, KnownNorth
from core.alignment.guide.bolts import Base, BoltTurn
from core.alignment.guide.procedure import Stage
from core.mount.equipment import Mount, MountKind
from core.night.record import Kind
from core.sky.site import Air, Site
from tests.app.night.heard import heard
from tests.app.night.scripted import ScriptedLog, counting_answer

SITE, AIR = Site(48.0, 11.0, 500.0), Air(950.0)
VEGA = ("Vega", 279.2, 38.8)
NEW_YEAR_S = 1_798_761_600.0  # 2027-01-01 00:00 UTC


@pytest.fixture
def made() -> list[Session]:
    sessions: list[Session] = []
    yield sessions
    for session in sessions:
        session.close()


def _session(made: list[Session], compute=counting_answer, log=None) -> Session:
    session = Session(compute, log)
    session.set_site(SITE, AIR)
    made.append(session)
    return session


def _read(session: Session, start_s: float = NEW_YEAR_S - 30.0, count: int = 20) -> None:
    for i in range(count):
        session.add_reading(Reading(start_s + 3.0 * i, 1.0 * i, 0.0))


def test_a_leg_goes_on_over_midnight_and_the_end_of_the_year(made) -> None:
    session = _session(made)
    session.begin_leg(*VEGA)
    _read(session)
    (leg,) = heard(session).legs
    assert leg.utc_s.size == 20
    assert heard(session).problem is None


def test_a_night_that_keeps_nothing_says_so_of_the_bolts(made) -> None:
    assert "forgotten at the end" in heard(_session(made)).guide.bolt_book
    kept = heard(_session(made, log=ScriptedLog())).guide.bolt_book
    assert "No mount is chosen" in kept


def test_a_night_of_steps(made, qtbot) -> None:
    log = ScriptedLog()
    session = _session(made, log=log)
    stages = [heard(session).guide.stage]
    session.begin_leg(*VEGA)
    with qtbot.waitSignal(session.changed, check_params_cb=lambda s: s.solution is not None):
        _read(session)
    for step in (
        session.begin_turning,
        lambda: session.bolts_turned(How.ADVISED, BoltTurn(-5.0, 2.0), (0.25, None)),
        lambda: session.begin_leg(*VEGA),
        session.end_leg,
        session.accept,
        session.look_again,
        session.tripod_moved,
    ):
        stages.append(heard(session).guide.stage)
        step()
    assert stages[1:] == [
        Stage.WATCH,
        Stage.TURN,
        Stage.CHOOSE,
        Stage.WATCH,
        Stage.CHOOSE,
        Stage.DONE,
        Stage.CHOOSE,
    ]
    kinds = [kind for kind, _ in log.entries]
    assert Kind.RESULT in kinds
    adjustment = next(content for kind, content in log.entries if kind == Kind.ADJUSTMENT)
    assert adjustment["azimuth_arcmin"] == -5.0
    assert adjustment["azimuth_turns"] == 0.25
    assert heard(session).axis_state == 3


def test_after_an_advised_turn_what_was_known_stays_useful_with_a_wider_error(made, qtbot) -> None:
    session = _session(made)
    session.begin_leg(*VEGA)
    with qtbot.waitSignal(session.changed, check_params_cb=lambda s: s.solution is not None):
        _read(session)
    was = heard(session).guide.known
    session.begin_turning()
    session.bolts_turned(How.ADVISED, BoltTurn(-30.0, 20.0))
    now = heard(session).guide.known
    assert now is not None
    assert (now.covariance_arcmin2.diagonal() > was.covariance_arcmin2.diagonal()).all()
    assert now.sky_arcmin[1] == pytest.approx(was.sky_arcmin[1] + 20.0, abs=0.2)
    session.begin_turning()
    session.bolts_turned()
    assert heard(session).guide.known is None


def test_a_turn_stays_that_of_the_mount_in_use_when_it_was_made(made) -> None:
    session = _session(made)
    session.use_equipment(Mount(key="screw", name="Screw", kind=MountKind.GERMAN_EQUATORIAL), None)
    session.begin_leg(*VEGA)
    session.begin_turning()
    session.bolts_turned(How.ADVISED, BoltTurn(-5.0, 2.0))
    session.use_equipment(None, None)
    assert heard(session).guide.last_turn.mount == "screw"


@pytest.mark.parametrize("is_determined", [True, False])
def test_one_star_alone_is_no_distance_from_the_pole(made, qtbot, is_determined: bool) -> None:
    def compute(question: AxisQuestion) -> AxisAnswer:
        answer = counting_answer(question)
        answer.solution.determined = is_determined
        return answer

    log = ScriptedLog()
    session = _session(made, compute, log)
    session.begin_leg(*VEGA)
    with qtbot.waitSignal(session.changed, check_params_cb=lambda s: s.solution is not None):
        _read(session)
    assert (heard(session).guide.off_arcmin is not None) is is_determined
    session.end_leg()
    (content,) = [content for kind, content in log.entries if kind == Kind.RESULT]
    assert (content["verdict"] is not None) is is_determined


def test_a_leaning_base_is_part_of_the_turn(made, qtbot) -> None:
    session = _session(made)
    session.set_base(Base(3.0, 90.0))
    session.begin_leg(*VEGA)
    with qtbot.waitSignal(session.changed, check_params_cb=lambda s: s.solution is not None):
        _read(session)
    was = heard(session).guide.known.sky_arcmin[1]
    session.bolts_turned(How.ADVISED, BoltTurn(60.0, 0.0))
    # The azimuth bolts alone: sin 3° of 60′ cos 48° goes into the altitude.
    moved = heard(session).guide.known.sky_arcmin[1] - was
    assert abs(moved) == pytest.approx(3.14, abs=0.5)


def test_north_is_found_by_the_first_turn(made, qtbot) -> None:
    def compute(question: AxisQuestion) -> AxisAnswer:
        answer = counting_answer(question)
        decided = KnownNorth.EXCHANGED if question.doubtful_legs else None
        return replace(answer, north=decided)

    session = _session(made, compute)
    session.doubt_north()
    session.find_north(KnownNorth.UNKNOWN)
    session.begin_leg(*VEGA)
    with qtbot.waitSignal(session.changed, check_params_cb=lambda s: s.solution is not None):
        _read(session)
    session.begin_turning()
    session.bolts_turned(How.ADVISED, BoltTurn(-5.0, 2.0))
    session.begin_leg(*VEGA)
    with qtbot.waitSignal(
        session.changed, check_params_cb=lambda s: s.guide.north is KnownNorth.EXCHANGED
    ):
        _read(session, NEW_YEAR_S + 300.0)
    (leg,) = heard(session).legs
    assert leg.north_arcsec[-1] == -19.0
    session.add_reading(Reading(NEW_YEAR_S + 900.0, 20.0, 0.0))
    assert heard(session).legs[0].north_arcsec[-1] == -20.0


def test_readings_during_the_turn_join_no_leg(made) -> None:
    session = _session(made)
    session.begin_leg(*VEGA)
    _read(session, count=5)
    session.begin_turning()
    _read(session, NEW_YEAR_S + 100.0, count=3)
    assert [leg.utc_s.size for leg in heard(session).legs] == [5]
    assert heard(session).problem is None
