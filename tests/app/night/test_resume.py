"""After a kill the night opens where it was."""

import numpy as np
from pytestqt.qtbot import QtBot

from app.devices.source import Reading
from app.night.session import Session
from app.store.records import StoredAxisState, StoredLeg, StoredNight
from core.alignment.driftlog.records import Leg
from core.alignment.goal import Aim
from core.sky.site import Air, Site
from tests.app.night.heard import heard

from .conftest import Begin
from .scripted import ScriptedLog

SITE, AIR = Site(-33.0, 18.0, 200.0), Air(990.0, 5.0)
START_UTC_S = 1_795_568_400.0


def stored(leg_id: int, label: str, ended: bool = True, discarded: bool = False) -> StoredLeg:
    utc_s = START_UTC_S + 1000.0 * leg_id + np.arange(9) * 30.0
    leg = Leg(label, 10.0, -20.0, utc_s, np.arange(9.0), np.full(9, 0.5))
    return StoredLeg(leg_id, label.partition(" ")[2], leg, ended, discarded)


NIGHT = StoredNight(
    7,
    START_UTC_S,
    SITE,
    AIR,
    "REFRACTED_POLE",
    2.0,
    (
        StoredAxisState(1, (stored(1, "1 Vega"),)),
        StoredAxisState(
            2,
            (
                stored(2, "2 Deneb", ended=False),
                stored(3, "3 Vega", discarded=True),
                stored(4, "4 Altair", ended=False),
            ),
        ),
    ),
    resumed=True,
)


def resumed(begin: Begin, night: StoredNight, log: ScriptedLog | None = None) -> Session:
    session = begin(log=log)
    session.resume(night)
    return session


def test_settings_legs_and_the_open_leg_come_back(qtbot: QtBot, begin: Begin) -> None:
    session = begin()
    with qtbot.waitSignal(session.changed, check_params_cb=lambda s: s.solution is not None):
        session.resume(NIGHT)
    snapshot = heard(session)
    assert (snapshot.site, snapshot.air, snapshot.axis_state) == (SITE, AIR, 2)
    assert (snapshot.aim, snapshot.target_arcmin) == (Aim.REFRACTED_POLE, 2.0)
    assert [leg.label for leg in snapshot.legs] == ["2 Deneb", "4 Altair"]
    assert snapshot.watching == "4 Altair"
    assert snapshot.problem is None


def test_the_open_leg_goes_on_under_its_number_on_disk(begin: Begin) -> None:
    log = ScriptedLog()
    session = resumed(begin, NIGHT, log)
    session.add_reading(Reading(START_UTC_S + 4300.0, 9.0, 0.5))
    assert heard(session).legs[1].utc_s.size == 10
    assert log.calls == [
        ("end_leg", (2,)),  # of two legs left open only the newest can be under way
        ("add_samples", (4, [START_UTC_S + 4300.0], [9.0], [0.5], None)),
    ]


def test_numbers_go_on_counting(begin: Begin) -> None:
    assert resumed(begin, NIGHT).begin_leg("Vega", 1.0, 2.0) == "5 Vega"


def test_an_empty_night_leaves_what_is_usual(begin: Begin) -> None:
    empty = StoredNight(1, START_UTC_S, None, None, None, None, (StoredAxisState(1, ()),), False)
    snapshot = heard(resumed(begin, empty))
    assert (snapshot.site, snapshot.aim, snapshot.target_arcmin) == (None, Aim.TRUE_POLE, 1.0)
    assert (snapshot.axis_state, snapshot.legs, snapshot.watching) == (1, (), None)


def test_every_step_reaches_the_log_at_once_and_in_order(begin: Begin) -> None:
    log = ScriptedLog()
    session = begin(log=log)
    session.set_site(SITE, AIR)
    session.set_aim(Aim.REFRACTED_POLE)
    session.set_target(2.0)
    label = session.begin_leg("Vega", 279.2, 38.8)
    session.add_reading(Reading(START_UTC_S, 1.0, sigma_arcsec=0.5))
    session.remove_last_reading()
    session.begin_leg("Deneb", 310.4, 45.3)
    session.discard_leg(label)
    session.bolts_turned()
    session.take_leg("Altair", stored(1, "x").leg)
    utc_s = stored(1, "x").leg.utc_s.tolist()
    assert log.calls == [
        ("set_site", (SITE, AIR)),
        ("set_aim", (Aim.REFRACTED_POLE,)),
        ("set_target", (2.0,)),
        ("add_leg", ("1 Vega", "Vega", 279.2, 38.8)),
        ("add_samples", (1, [START_UTC_S], [1.0], None, [0.5])),
        ("delete_last_sample", (1,)),
        ("end_leg", (1,)),
        ("add_leg", ("2 Deneb", "Deneb", 310.4, 45.3)),
        ("discard_leg", (1,)),
        ("end_leg", (2,)),
        ("begin_axis_state", ()),
        ("add_leg", ("3 Altair", "Altair", 10.0, -20.0)),
        ("add_samples", (3, utc_s, list(np.arange(9.0)), [0.5] * 9, None)),
        ("end_leg", (3,)),
    ]
