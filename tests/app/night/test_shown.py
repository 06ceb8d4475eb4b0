"""Tonight and practice side by side: one in view, neither touching the other."""

from __future__ import annotations

from collections.abc import Iterator

import pytest

from app.devices.source import Reading
from app.night.activenight import ActiveNight
from app.night.session import Session
from core.alignment.goal import Aim
from core.sky.site import Air, Site
from tests.app.night.heard import heard

from .scripted import ScriptedLog, counting_answer

HILL, MEADOW, AIR = Site(48.1, 11.6, 520.0), Site(50.0, 9.0, 100.0, "Meadow"), Air(950.0)


@pytest.fixture
def log() -> ScriptedLog:
    return ScriptedLog()


@pytest.fixture
def shown(log: ScriptedLog) -> Iterator[ActiveNight]:
    tonight = Session(counting_answer, log)
    tonight.set_site(HILL, AIR)
    tonight.set_aim(Aim.REFRACTED_POLE)
    tonight.begin_leg("Vega", 279.2, 38.8)
    made = ActiveNight(tonight, lambda: Session(counting_answer))
    yield made
    made.close()
    tonight.close()


def test_practice_reaches_no_log_and_goes(shown: ActiveNight, log: ScriptedLog, qtbot) -> None:
    calls = len(log.calls)
    before = heard(shown)
    with qtbot.waitSignal(shown.switched):
        practice = shown.begin_practice(MEADOW, AIR)
    practice.begin_leg("Deneb", 310.0, 45.0)
    practice.add_reading(Reading(1.79e9, 1.0))
    practice.bolts_turned()
    assert heard(shown).site == MEADOW
    assert heard(shown).aim is Aim.REFRACTED_POLE
    with qtbot.waitSignal(shown.switched):
        shown.end_practice()
    assert len(log.calls) == calls
    after = heard(shown)
    assert (after.site, after.watching, after.axis_state) == (HILL, "1 Vega", 1)
    assert after.legs == before.legs


def test_only_what_is_in_view_is_passed_on(shown: ActiveNight, qtbot) -> None:
    practice = shown.begin_practice(MEADOW, AIR)
    with qtbot.assertNotEmitted(shown.changed):
        shown.tonight.set_target(0.5)
    with qtbot.waitSignal(shown.reading_added):
        practice.begin_leg("Deneb", 310.0, 45.0)
        practice.add_reading(Reading(1.79e9, 1.0))
    shown.end_practice()
    with qtbot.waitSignal(shown.changed):
        shown.tonight.set_target(2.0)
