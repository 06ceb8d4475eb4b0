"""Runs, results and figures in the real log of nights."""

import numpy as np
import pytest

from app.pages.tracking.figures import Figures, from_kept, to_keep
from app.pages.tracking.parts import TrackingParts
from app.store.nights import NightLog

from .conftest import NOW_S, invented_run
from .test_reading import _read


@pytest.fixture
def open_log(tmp_path):
    opened: list[NightLog] = []

    def open_log() -> NightLog:
        opened.append(
            NightLog.open(tmp_path / "nights.sqlite", lambda: NOW_S, _no_trouble, _no_trouble)
        )
        return opened[-1]

    yield open_log
    for log in opened:
        log.close()


def _no_trouble(sentence: str | None) -> None:
    assert sentence is None


def test_a_run_is_there_after_a_restart(open_log, tmp_path) -> None:
    leg = _read(tmp_path, invented_run())[0].leg
    first = open_log()
    first.resume_or_begin_night(NOW_S)
    parts = TrackingParts(lambda: NOW_S, first)
    key = parts.keep_run(leg)
    parts.keep_result({"leg": key, "periodic_error_arcsec": 12.0, "worm_period_s": 480.0})
    assert first.close()
    again = open_log().resume_or_begin_night(NOW_S)
    assert [run.leg_id for run in again.tracking_runs] == [key]
    assert np.array_equal(again.tracking_runs[0].leg.east_arcsec, leg.east_arcsec)
    assert not any(state.legs for state in again.axis_states)
    assert again.entries[0].content["periodic_error_arcsec"] == 12.0


@pytest.mark.parametrize(
    "kept", [None, 3, {}, {"version": 99}, {"version": 1, "seeing_arcsec": "x"}]
)
def test_settings_that_cannot_be_used_leave_the_figures_empty(kept) -> None:
    assert from_kept(kept) == Figures()


def test_figures_come_back() -> None:
    figures = Figures(seeing_arcsec=2.5, sheet_is_plus_minus=True)
    assert from_kept(to_keep(figures)) == figures
