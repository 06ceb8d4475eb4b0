"""A session on the real log of nights: closed and opened again, it is where it was."""

from __future__ import annotations

from pathlib import Path

import numpy as np
from pytestqt.qtbot import QtBot

from app.devices.source import Reading
from app.night.session import Session
from app.night.snapshot import Snapshot
from app.store.nights import NightLog
from core.alignment.driftlog.records import DriftLog, Header, Leg
from core.alignment.goal import Aim
from core.sky.site import Air, Site
from tests.app.night.heard import heard

from .scripted import counting_answer

SITE, AIR = Site(-33.0, 18.0, 200.0, "Southern ridge (invented)"), Air(990.0, 5.0)
NOW_UTC_S = 1_795_568_400.0
SETTINGS = ("site", "air", "aim", "target_arcmin", "axis_state", "watching", "problem")
COLUMNS = ("utc_s", "north_arcsec", "east_arcsec", "sigma_arcsec")


class Evening:
    """A session with its log of nights, as the program joins them."""

    def __init__(self, path: Path) -> None:
        self.said: list[str | None] = []
        self.log = NightLog.open(path, lambda: NOW_UTC_S, self.said.append, self.said.append)
        self.session = Session(counting_answer, self.log)
        self.session.resume(self.log.resume_or_begin_night(NOW_UTC_S))

    def close(self) -> Snapshot:
        snapshot = heard(self.session)
        self.session.close()
        assert self.log.close()
        assert [sentence for sentence in self.said if sentence] == []
        return snapshot


def test_a_night_closed_and_opened_again_is_where_it_was(qtbot: QtBot, tmp_path: Path) -> None:
    evening = Evening(tmp_path / "nights.sqlite")
    session = evening.session
    session.set_site(SITE, AIR)
    session.set_aim(Aim.REFRACTED_POLE)
    session.set_target(2.5)
    session.begin_leg("Vega", 279.2, 38.8)
    session.add_reading(Reading(NOW_UTC_S, 1.0))
    session.bolts_turned()
    imported = Leg("east", 10.0, -20.0, NOW_UTC_S + np.arange(9.0), np.arange(9.0), np.ones(9))
    session.take_log(DriftLog(Header(), (imported, imported)))
    session.discard_leg("east")
    session.begin_leg("Achernar", 24.4, -57.2)
    for i in range(40):
        east = None if i % 3 else 0.5 * i
        session.add_reading(Reading(NOW_UTC_S + 2.0 * i, 0.1 * i, east, 0.7))
    session.remove_last_reading()
    before = evening.close()

    again = Evening(tmp_path / "nights.sqlite")
    assert again.session.begin_leg("Canopus", 95.9, -52.7) == "5 Canopus"
    again.session.discard_leg("5 Canopus")
    after = again.close()
    assert [leg.label for leg in after.legs] == ["east (2)", "4 Achernar"]
    assert before.watching == "4 Achernar"
    for name in SETTINGS:
        expected = None if name == "watching" else getattr(before, name)
        assert getattr(after, name) == expected, name
    for was, now in zip(before.legs, after.legs, strict=True):
        assert (was.label, was.ra_deg, was.dec_deg) == (now.label, now.ra_deg, now.dec_deg)
        for column in COLUMNS:
            old, new = getattr(was, column), getattr(now, column)
            assert (old is None) == (new is None)
            if old is not None:
                np.testing.assert_array_equal(new, old)
    qtbot.wait(0)


def test_a_leg_under_way_is_still_under_way(qtbot: QtBot, tmp_path: Path) -> None:
    evening = Evening(tmp_path / "nights.sqlite")
    evening.session.begin_leg("Vega", 279.2, 38.8)
    evening.session.add_reading(Reading(NOW_UTC_S, 1.0))
    evening.close()
    again = Evening(tmp_path / "nights.sqlite")
    again.session.add_reading(Reading(NOW_UTC_S + 60.0, 2.0))
    snapshot = again.close()
    assert snapshot.watching == "1 Vega"
    assert snapshot.legs[0].north_arcsec.tolist() == [1.0, 2.0]
    qtbot.wait(0)
