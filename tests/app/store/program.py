"""A run of the program against a log of nights, with a clock that is set by hand."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import numpy as np

from app.store.nights import NightLog
from core.night import exports
from core.night.record import Kind, LegPurpose
from core.sky.site import Air, Site

NOW_UTC_S = 1_795_550_400.0
DAY_S = 86400.0
PICTURE = bytes(range(256)) * 200  # longer than a page, so that it overflows


class Run:
    """What the log told, and what time it is."""

    def __init__(self) -> None:
        self.now_utc_s = NOW_UTC_S
        self.troubles: list[str | None] = []
        self.notices: list[str] = []

    @contextmanager
    def log(self, path: Path) -> Iterator[NightLog]:
        log = NightLog.open(
            path, lambda: self.now_utc_s, self.troubles.append, self.notices.append, retry_s=0.02
        )
        try:
            yield log
        finally:
            assert log.close(30.0)
            assert self.troubles == []


def keep_a_night(log: NightLog, begun_utc_s: float, count: int = 50, name: str = "hill") -> int:
    """A night with something of everything; its key."""
    night = log.resume_or_begin_night(begun_utc_s)
    times = begun_utc_s + 2.0 * np.arange(float(count))
    log.set_site(Site(48.1, 11.6, 520.0, name), Air(950.0))
    log.set_target(1.5)
    first = log.add_leg("east 1", "Bellatrix", 81.28, 6.35)
    log.add_samples(first, times, np.sin(times), np.where(times % 4.0 == 0.0, np.nan, 0.5))
    log.end_leg(first)
    state = night.axis_states[0].axis_state_id
    log.put_entry(Kind.RESULT, {"axis_state": state, "error_arcmin": 8.0, "half_width_arcmin": 1.0})
    log.put_entry(Kind.ADJUSTMENT, {"axis_state": state, "azimuth_arcmin": -6.0})
    log.begin_axis_state()
    run = log.add_leg("run 1", "Diphda", 10.9, -17.99, LegPurpose.TRACKING)
    log.add_samples(run, times, np.zeros(count), 10.0 * np.sin(times / 76.0))
    log.end_leg(run)
    log.put_entry(Kind.TRACKING, {"leg": run, "periodic_error_arcsec": 20.0})
    log.put_entry(Kind.NOTE, {"text": "Föhn, then dew on everything."})
    log.put_entry(Kind.EQUIPMENT, {"name": "small refractor (invented)"})
    log.put_entry(Kind.PLAN, {"target": "M 42"})
    log.put_entry(Kind.PICTURE, {"name": "a.png", "media_type": "image/png"}, PICTURE)
    return night.night_id


def keep_three(path: Path) -> list[int]:
    keys = []
    for number, name in enumerate(("hill", "moor", "hill")):
        run = Run()
        run.now_utc_s += number * DAY_S
        with run.log(path) as log:
            keys.append(keep_a_night(log, run.now_utc_s, name=name))
    return keys


def everything(path: Path) -> list[str]:
    """Every night of a log as the text of its exported file."""
    with Run().log(path) as log:
        nights = [log.archive.record(one.night_id) for one in log.archive.overview()]
    return sorted(exports.write_json(night) for night in nights if night is not None)
