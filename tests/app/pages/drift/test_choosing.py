"""Where no star can be chosen, the place of the list says why."""

import numpy as np
import pytest
from PySide6.QtWidgets import QLabel

from app.night.starchoice import Proposals, StarWish, propose
from app.pages.drift.starchoice import Choosing
from core.alignment.guide.nextstar import Watching
from core.practice.simulation import MEADOW_AIR, NORTHERN_MEADOW
from core.sky.horizon import Horizon

NOON_UTC_S, MIDNIGHT_UTC_S = 1_795_526_400.0, 1_795_569_600.0


@pytest.fixture
def choosing(qtbot, theme) -> Choosing:
    made = Choosing(theme)
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    return made


def _proposals(utc_s: float) -> Proposals:
    return propose(
        StarWish(
            NORTHERN_MEADOW,
            MEADOW_AIR,
            Horizon.flat(),
            utc_s,
            np.zeros((2, 2)),
            Watching(),
            1.0,
        )
    )


def _said(choosing: Choosing) -> str:
    return " ".join(label.text() for label in choosing.findChildren(QLabel) if label.isVisible())


def test_by_day_it_is_said_that_no_star_is_up_and_at_night_they_are_listed(choosing) -> None:
    choosing.show_proposals(_proposals(NOON_UTC_S))
    assert "too light for stars" in _said(choosing)
    assert not choosing.star_list().isVisible()
    choosing.show_proposals(_proposals(MIDNIGHT_UTC_S))
    assert "too light" not in _said(choosing)
    assert choosing.star_list().isVisible()
    assert choosing.star_list().count() > 3


def test_what_was_said_of_one_night_is_not_said_of_the_next(choosing) -> None:
    choosing.show_proposals(_proposals(NOON_UTC_S))
    choosing.forget()
    assert "too light" not in _said(choosing)
