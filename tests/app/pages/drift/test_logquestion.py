"""A log that meets legs of tonight joins them only when the person says so."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import numpy as np
import pytest

from app.night.session import Session
from app.pages.drift.sources import Importing
from core.alignment.driftlog.records import Leg
from tests.app.night.heard import heard
from tests.app.pages.drift.surroundings import AIR, HILL, NOW_S, drifting_log

HAND_LABEL = "1 Vega"


@pytest.fixture
def read(page, session: Session, qtbot, tmp_path: Path) -> Callable[[], Importing]:
    """Reads a log of two legs; one of tonight is there already."""
    session.set_site(HILL, AIR)
    utc_s = NOW_S + 30.0 * np.arange(8)
    session.take_leg("Vega", Leg("", 279.2, 38.8, utc_s, np.linspace(0.0, 4.0, 8)))
    path = tmp_path / "night.csv"
    path.write_text("\n".join(drifting_log()), encoding="utf-8")

    def read_it() -> Importing:
        page.take_way("log")
        controls = page.ways().panel.controls("log")
        controls.read(path)
        qtbot.waitUntil(lambda: bool(controls.question().question()))
        return controls

    return read_it


def labels(session: Session) -> list[str]:
    return [leg.label for leg in heard(session).legs]


def test_it_is_asked_in_place_of_another_file_and_nothing_is_taken_yet(read, session) -> None:
    controls = read()
    question = controls.question()
    assert question.isVisible()
    assert "last turned: 1 (2026-09-21 14:13 UTC to" in question.question()
    assert "in the log: 2 (" in question.question()
    assert not controls.choose_button().isVisible()
    assert controls.said() == ""
    assert labels(session) == [HAND_LABEL]


def test_the_answer_at_hand_leaves_everything_as_it_is(read, session, qtbot, page) -> None:
    with qtbot.waitActive(page):
        page.activateWindow()
    controls = read()
    leave = controls.question().neither()
    assert leave.hasFocus()
    leave.click()
    assert "left" in controls.said()
    assert controls.choose_button().isVisible()
    assert labels(session) == [HAND_LABEL]
    assert heard(session).axis_state == 1


def test_together(read, session) -> None:
    controls = read()
    controls.question().yes().click()
    assert controls.said().startswith("Taken: 240 readings in 2 legs.")
    assert labels(session) == [HAND_LABEL, "m", "e"]
    assert heard(session).axis_state == 1


def test_apart(read, session) -> None:
    controls = read()
    controls.question().no().click()
    assert controls.said().startswith("Taken: 240 readings in 2 legs.")
    assert labels(session) == ["m", "e"]
    assert heard(session).axis_state == 2


@pytest.mark.parametrize("step", ["bolts", "discard"])
def test_an_answer_to_what_no_longer_stands_takes_nothing(read, session, step: str) -> None:
    controls = read()
    if step == "bolts":
        session.bolts_turned()
    else:
        session.discard_leg(HAND_LABEL)
    controls.question().yes().click()
    assert "read the log again" in controls.said()
    assert labels(session) == []


def test_another_file_takes_the_place_of_the_one_asked_about(read, session, qtbot, tmp_path):
    controls = read()
    path = tmp_path / "picture.csv"
    path.write_bytes(bytes(range(256)) * 50)
    controls.read(path)
    qtbot.waitUntil(lambda: controls.said().startswith("picture.csv"))
    assert controls.question().question() == ""
    assert controls.choose_button().isVisible()
    assert labels(session) == [HAND_LABEL]
