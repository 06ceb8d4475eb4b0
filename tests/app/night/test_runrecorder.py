"""Recording a run: what reaches the log, and what is refused aloud."""

import math
from typing import Any

import pytest

from app.devices.source import Reading
from app.night.recorder import Recorder, RunRecorder
from app.store.records import StoredLeg
from core.night.record import LegPurpose

NOW_S = 1_790_000_000.0


class Log:
    """Remembers every step it is told of, in order."""

    def __init__(self) -> None:
        self.steps: list[tuple[Any, ...]] = []
        self.is_broken = False

    def add_leg(self, label: str, _star: str, _ra: float, _dec: float, purpose: str = "") -> int:
        if self.is_broken:
            raise OSError("no space left on device")
        self.steps.append(("leg", label, str(purpose)))
        return len(self.steps)

    def add_samples(self, leg_id: int, utc_s, _north, east, _sigma) -> None:
        self.steps.append(("reading", leg_id, utc_s[0] - NOW_S, east[0]))

    def end_leg(self, leg_id: int) -> None:
        self.steps.append(("end", leg_id))

    def discard_leg(self, leg_id: int) -> None:
        self.steps.append(("discard", leg_id))


@pytest.fixture
def log() -> Log:
    return Log()


@pytest.fixture
def said() -> list[str]:
    return []


@pytest.fixture
def recorder(qapp, log, said) -> RunRecorder:  # noqa: ARG001
    return RunRecorder(Recorder(log, said.append))


def test_every_reading_reaches_the_log_as_it_comes(recorder, log) -> None:
    recorder.begin("run", 200.0, 4.0)
    recorder.add_reading(Reading(NOW_S, 0.1, 1.5))
    assert log.steps == [("leg", "run", "tracking"), ("reading", 1, 0.0, 1.5)]
    recorder.add_reading(Reading(NOW_S + 2.0, 0.1, 1.7))
    leg = recorder.end()
    assert leg.east_arcsec.tolist() == [1.5, 1.7]
    assert log.steps[2:] == [("reading", 1, 2.0, 1.7), ("end", 1)]
    assert not recorder.is_recording
    assert recorder.end() is None


@pytest.mark.parametrize(
    ("reading", "word"),
    [
        (Reading(NOW_S + 2.0, 0.1, None), "no east offset"),
        (Reading(NOW_S + 2.0, 0.1, math.nan), "no east offset"),
        (Reading(math.nan, 0.1, 1.0), "not a number"),
        (Reading(NOW_S, 0.1, 1.0), "same instant"),
    ],
)
def test_what_cannot_be_used_is_refused_in_a_sentence(recorder, log, reading, word) -> None:
    recorder.begin("run", 200.0, 4.0)
    recorder.add_reading(Reading(NOW_S, 0.1, 1.5))
    recorder.add_reading(reading)
    assert word in recorder.trouble
    assert len(log.steps) == 2
    recorder.add_reading(Reading(NOW_S + 4.0, 0.1, 1.5))
    assert recorder.trouble == ""


def test_a_clock_that_was_set_begins_another_run_of_the_same_star(recorder, log) -> None:
    recorder.begin("run", 200.0, 4.0)
    recorder.add_reading(Reading(NOW_S, 0.1, 1.5))
    recorder.add_reading(Reading(NOW_S - 3600.0, 0.1, 1.5))
    assert "“run (2)” begun" in recorder.trouble
    assert [step[0] for step in log.steps] == ["leg", "reading", "end", "leg", "reading"]
    leg = recorder.leg()
    assert (leg.label, leg.ra_deg, leg.utc_s.size) == ("run (2)", 200.0, 1)


def test_a_run_without_a_reading_is_left_out(recorder, log) -> None:
    recorder.begin("run", 200.0, 4.0)
    assert recorder.end() is None
    assert log.steps[-1] == ("discard", 1)


def test_practice_is_marked_as_such(recorder, log) -> None:
    recorder.begin("run", 200.0, 4.0, LegPurpose.PRACTICE)
    assert log.steps == [("leg", "run", "tracking practice")]


def test_a_full_disk_costs_a_sentence_and_no_reading(recorder, log, said) -> None:
    log.is_broken = True
    recorder.begin("run", 200.0, 4.0)
    recorder.add_reading(Reading(NOW_S, 0.1, 1.5))
    assert "no space left" in said[0]
    assert recorder.end().utc_s.size == 1


def test_a_run_under_way_is_gone_on_with(recorder, log) -> None:
    recorder.begin("run", 200.0, 4.0)
    recorder.add_reading(Reading(NOW_S, 0.1, 1.5))
    stored = StoredLeg(1, "", recorder.leg(), False, False, LegPurpose.TRACKING)
    again = RunRecorder(Recorder(log, print))
    again.resume(stored)
    again.add_reading(Reading(NOW_S + 2.0, 0.1, 1.7))
    assert log.steps[-1] == ("reading", 1, 2.0, 1.7)
    assert again.leg().utc_s.size == 2
