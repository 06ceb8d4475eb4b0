"""What the computation is granted of tube, drive and reticle: from equipment to solution."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from app.compose import follow_equipment
from app.night.activenight import ActiveNight
from app.night.archive import Again, solve_again
from app.night.equipment import Equipment
from app.night.question import AxisQuestion, work_out
from app.night.snapshot import NorthSet, as_drift_log, priors_of
from app.store.records import StoredAxisState, StoredNight
from core.alignment.axis import solution
from core.alignment.drift.prepared import LegNote, UnusableLegs
from core.alignment.driftlog.records import DriftLog, Header, Leg
from core.alignment.goal import Aim
from core.alignment.priors import RANGES, USUAL, Priors
from core.mount.equipment import EquipmentSet, Inventory, Mount, MountKind, Purpose, Telescope
from core.sky.site import Air, Site
from tests.app.night.heard import heard
from tests.app.night.memory import Memory
from tests.app.night.scripted import ScriptedLog, counting_answer

SITE, AIR = Site(48.0, 11.0, 500.0), Air(950.0)
TUBE = Telescope(key="tube", name="Tube", flexure_arcsec_per_g=20.0)
MOUNT = Mount(
    key="mount", name="Mount", kind=MountKind.GERMAN_EQUATORIAL, periodic_error_arcsec=36.0
)
LEG = Leg("a", 279.2, 38.8, 1.79e9 + 30.0 * np.arange(8), np.linspace(0.0, 4.0, 8))


def known(**sizes: float) -> Priors:
    return replace(USUAL, **sizes)


@pytest.mark.parametrize(
    ("telescope", "mount", "north_set", "expected"),
    [
        (None, None, NorthSet.NUDGED, USUAL),
        (replace(TUBE, flexure_arcsec_per_g=None), None, NorthSet.NUDGED, USUAL),
        (TUBE, None, NorthSet.NUDGED, known(flexure_arcsec_per_g=20.0)),
        (replace(TUBE, flexure_arcsec_per_g=0.0), None, NorthSet.NUDGED,
         known(flexure_arcsec_per_g=0.0)),
        (None, MOUNT, NorthSet.NUDGED, known(periodic_error_arcsec=18.0)),
        (None, replace(MOUNT, periodic_error_arcsec=None), NorthSet.NUDGED, USUAL),
        (None, None, NorthSet.MEASURED, known(angle_sigma_deg=0.3)),
        (None, None, NorthSet.BY_EYE, known(angle_sigma_deg=3.0)),
        (TUBE, MOUNT, NorthSet.BY_EYE,
         known(flexure_arcsec_per_g=20.0, periodic_error_arcsec=18.0, angle_sigma_deg=3.0)),
    ],
)  # fmt: skip
def test_what_is_known_stands_in_for_the_usual(telescope, mount, north_set, expected) -> None:
    assert priors_of(telescope, mount, north_set) == expected


def test_each_answer_on_north_can_be_meant() -> None:
    low, high, _ = RANGES["angle_sigma_deg"]
    assert all(low < one.value < high for one in NorthSet)


def test_the_computation_is_asked_anew_with_what_holds_now(begin, qtbot) -> None:
    asked: list[Priors] = []

    def compute(question: AxisQuestion):
        asked.append(question.priors)
        return counting_answer(question)

    session = begin(compute)
    session.set_site(SITE, AIR)
    session.take_leg("Vega", LEG)
    qtbot.waitUntil(lambda: asked[-1:] == [USUAL])
    session.set_north_set(NorthSet.MEASURED)
    qtbot.waitUntil(lambda: asked[-1] == known(angle_sigma_deg=0.3))
    session.use_equipment(MOUNT, TUBE)
    wanted = known(angle_sigma_deg=0.3, flexure_arcsec_per_g=20.0, periodic_error_arcsec=18.0)
    qtbot.waitUntil(lambda: asked[-1] == wanted)
    assert heard(session).priors == wanted


def test_equipment_that_says_nothing_new_makes_no_answer_stale(begin, qtbot) -> None:
    session = begin()
    session.set_site(SITE, AIR)
    with qtbot.waitSignal(session.changed, check_params_cb=lambda s: s.solution is not None):
        session.take_leg("Vega", LEG)
    session.use_equipment(replace(MOUNT, periodic_error_arcsec=None), None)
    assert not heard(session).solution_is_stale
    session.use_equipment(MOUNT, None)
    assert heard(session).solution_is_stale


def test_the_set_in_use_is_followed(begin) -> None:
    equipment = Equipment(Memory())
    session = begin()
    follow_equipment(session, equipment)
    assert heard(session).priors == USUAL
    bought = replace(TUBE, key="later", is_planned=True, flexure_arcsec_per_g=50.0)
    chosen = EquipmentSet(
        key="set", name="Set", purpose=Purpose.OBSERVING, mount="mount", parts=("later", "tube")
    )
    equipment.take(Inventory((MOUNT, bought, TUBE), (chosen,)))
    priors = heard(session).priors
    assert (priors.flexure_arcsec_per_g, priors.periodic_error_arcsec) == (20.0, 18.0)
    equipment.remove("tube")
    assert heard(session).priors.flexure_arcsec_per_g == USUAL.flexure_arcsec_per_g


def night(night_id: int) -> StoredNight:
    return StoredNight(
        night_id, 1.79e9, SITE, AIR, None, None, (StoredAxisState(1, ()),), resumed=True
    )


def test_how_north_was_set_is_kept_with_its_night_only(begin) -> None:
    log = ScriptedLog()
    first = begin(log=log)
    first.resume(night(7))
    assert heard(first).north_set is NorthSet.NUDGED
    first.set_north_set(NorthSet.BY_EYE)
    again, other = begin(log=log), begin(log=log)
    again.resume(night(7))
    other.resume(night(8))
    assert heard(again).north_set is NorthSet.BY_EYE
    assert heard(other).north_set is NorthSet.NUDGED


@pytest.mark.parametrize("kept", [3, {"version": 2, "set": "BY_EYE"}, {"version": 1, "set": None}])
def test_what_cannot_be_read_is_the_usual(begin, kept) -> None:
    log = ScriptedLog()
    log.settings["north set 7"] = kept
    session = begin(log=log)
    session.resume(night(7))
    assert heard(session).north_set is NorthSet.NUDGED


def test_a_practice_mount_is_not_the_persons_own(begin) -> None:
    session = begin()
    session.use_equipment(MOUNT, TUBE)
    session.set_north_set(NorthSet.BY_EYE)
    shown = ActiveNight(session, begin)
    assert heard(shown.begin_practice(SITE, AIR)).priors == USUAL
    shown.end_practice()
    assert heard(shown).priors.flexure_arcsec_per_g == 20.0


@pytest.fixture
def granted(monkeypatch) -> list[Priors]:
    """What `solve` was handed."""
    handed: list[Priors] = []

    def solve(*_asked, priors=None, **_more):
        handed.append(priors if priors is not None else _asked[-1])
        raise UnusableLegs(LegNote.NONE)

    monkeypatch.setattr(solution, "solve", solve)
    return handed


def test_they_reach_the_solution(granted) -> None:
    priors = known(flexure_arcsec_per_g=3.0)
    work_out(AxisQuestion(1, (LEG,), SITE, AIR, Aim.TRUE_POLE, 1.0, None, priors=priors))
    solve_again(Again((LEG,), SITE, AIR, Aim.TRUE_POLE, priors))
    assert granted == [priors, priors]


def stating(**sizes: float) -> DriftLog:
    return DriftLog(Header(48.0, 11.0, 500.0, stated_priors=sizes), (LEG,))


def test_what_a_log_states_holds_for_its_axis_state_and_after_a_restart(begin) -> None:
    log = ScriptedLog()
    first = begin(log=log)
    first.resume(night(7))
    first.use_equipment(MOUNT, TUBE)
    first.take_log(stating(flexure_arcsec_per_g=5.0, angle_sigma_deg=0.5))
    priors = heard(first).priors
    assert (priors.flexure_arcsec_per_g, priors.angle_sigma_deg) == (5.0, 0.5)
    assert priors.periodic_error_arcsec == 18.0  # still of the mount in use
    again = begin(log=log)
    again.resume(night(7))
    assert heard(again).priors.flexure_arcsec_per_g == 5.0
    first.bolts_turned()
    assert heard(first).priors.flexure_arcsec_per_g == 20.0


def test_a_copied_log_states_what_is_not_as_usual(begin) -> None:
    session = begin()
    session.set_site(SITE, AIR)
    session.take_leg("Vega", LEG)
    assert "flexure" not in as_drift_log(heard(session))
    session.use_equipment(None, TUBE)
    assert "# flexure_arcsec_per_g: 20.0" in as_drift_log(heard(session))
