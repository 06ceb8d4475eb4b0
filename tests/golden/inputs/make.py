"""Makes the input files of the comparison: invented readings, and logs of nights of each version.

Run once, with the program of which the answers are to be kept.
The numbers are drawn from seeds; nothing in them is a measurement.
"""

from __future__ import annotations

import json
import sqlite3
import sys
import time
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path

import numpy as np
from PySide6.QtCore import QCoreApplication

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE.parents[2]))

from app.devices.source import Reading  # noqa: E402
from app.night.session import Session  # noqa: E402
from app.night.snapshot import How, NorthSet  # noqa: E402
from app.store.nights import NightLog  # noqa: E402
from app.store.schema import MIGRATIONS  # noqa: E402
from core.alignment.goal import Aim  # noqa: E402
from core.alignment.guide.bolts import BoltTurn  # noqa: E402
from core.mount.equipment import Mount, MountKind, Telescope  # noqa: E402
from core.sky.site import Air, Site  # noqa: E402
from tests.app.night.heard import heard  # noqa: E402
from tests.core.night.recorded import BEGUN, whole_night  # noqa: E402

BEGIN_UTC_S = 1_795_550_400.0  # 2026-11-24 20:00 UTC
COLUMNS = ("leg", "utc", "ra_deg", "dec_deg", "north_arcsec", "east_arcsec", "sigma_arcsec")
STARS = {"east": (81.2828, 6.3497), "south": (30.0, 5.0), "west": (344.4, 15.2)}


def readings(seed: int, label: str, slope: float, count: int = 20) -> list[list[float | str]]:
    """Rows of one leg, a reading every half minute; `slope` in arcseconds a minute."""
    rng = np.random.default_rng(seed)
    utc_s = BEGIN_UTC_S + 1500.0 * seed + 30.0 * np.arange(count)
    north = slope * 0.5 * np.arange(count) + rng.normal(0.0, 0.6, count)
    east = rng.normal(0.0, 0.6, count)
    rows: list[list[float | str]] = []
    for at, up, across in zip(utc_s, north, east, strict=True):
        moment = time.strftime("%Y-%m-%dT%H:%M:%SZ", time.gmtime(at))
        rows.append([label, moment, *STARS[label], round(up, 2), round(across, 2), 0.6])
    return rows


def log_text(
    rows: list[list[float | str]],
    columns: int = 5,
    separator: str = ",",
    head: str = "",
    decimal: str = ".",
    end: str = "\n",
) -> str:
    names = ["leg", "utc", "ra_deg", "dec_deg", "north_arcsec", "east_arcsec", "sigma_arcsec"][
        :columns
    ]
    lines = [separator.join(names)]
    for row in rows:
        texts = [one if isinstance(one, str) else str(one).replace(".", decimal) for one in row]
        lines.append(separator.join(texts[:columns]))
    return head + end.join([*lines, ""])


def drift_logs() -> None:
    two = readings(0, "east", 1.9) + readings(1, "south", -0.7)
    three = [*two, *readings(2, "west", -1.2)]
    place = "# latitude_deg: 48.1\n# longitude_deg: 11.6\n# elevation_m: 520\n"
    south = (
        "# latitude_deg: -33.4\n# longitude_deg: 20.1\n# elevation_m: 1700\n# pressure_hpa: 829\n"
    )
    texts = {
        "plain.csv": log_text(two),
        "placed.csv": log_text(three, 7, head=place),
        "southern.csv": log_text(
            three, 6, head=south + "# pressure_hpa: 829\n# temperature_c: -2.5\n"
        ),
        "semicolon.csv": "\ufeff" + log_text(two, 5, ";", place, ",", "\r\n"),
        "tabs.csv": log_text(two, 7, "\t", place),
        "one_star.csv": log_text(readings(0, "east", 1.9), 5, head=place),
        "rejected.csv": log_text(two, 5, head=place + "# color: red\n")
        + "east,yesterday,1,2,3\nsouth,2026-11-24T21:00:00Z,30,95,1\nnorth\n",
        "empty.csv": "",
        "few.csv": log_text(readings(0, "east", 1.9, 2), 5, head=place),
    }
    for name, text in texts.items():
        (HERE / name).write_bytes(text.encode("utf-8"))


def run_log() -> None:
    """An unguided run with a worm of 480 s."""
    rng = np.random.default_rng(7)
    rows: list[list[float | str]] = []
    for number in range(720):
        at = BEGIN_UTC_S + 4.0 * number
        moment = time.strftime("%Y-%m-%dT%H:%M:%SZ", time.gmtime(at))
        worm = 9.0 * np.sin(2.0 * np.pi * at / 480.0) + 2.5 * np.sin(4.0 * np.pi * at / 480.0 + 1.0)
        east = worm + rng.normal(0.0, 0.7)
        north = 0.01 * number + rng.normal(0.0, 0.7)
        rows.append(["run", moment, 81.2828, 6.3497, round(north, 2), round(float(east), 2)])
    (HERE / "run.csv").write_text(log_text(rows, 6), encoding="utf-8")


def first_version() -> None:
    """A log of nights as the first version of the tables held it."""
    path = HERE / "nights_1.sqlite"
    path.unlink(missing_ok=True)
    with sqlite3.connect(path) as log:
        log.executescript(MIGRATIONS[0])
        site = json.dumps({"latitude_deg": 48.1, "longitude_deg": 11.6, "elevation_m": 520.0})
        air = json.dumps({"pressure_hpa": 950.0, "temperature_c": 5.0})
        night = (5, BEGIN_UTC_S, BEGIN_UTC_S + 900.0, site, air, "TRUE_POLE", 1.0)
        log.execute("INSERT INTO nights VALUES (?, ?, ?, ?, ?, ?, ?)", night)
        log.execute("INSERT INTO axis_states VALUES (6, 5, 0, ?)", (BEGIN_UTC_S,))
        leg = (7, 6, 0, "1 Bellatrix", "Bellatrix", *STARS["east"], BEGIN_UTC_S, None, 0)
        log.execute("INSERT INTO legs VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", leg)
        for at in range(20):
            sample = (7, at, BEGIN_UTC_S + 30.0 * at, 0.95 * at, None, None)
            log.execute("INSERT INTO samples VALUES (?, ?, ?, ?, ?, ?)", sample)
        log.execute("INSERT INTO settings VALUES ('places', ?)", (json.dumps({"version": 9}),))
        log.execute("PRAGMA user_version = 1")
    log.close()


def present_version(app: QCoreApplication) -> None:
    """A guided night in the middle of its second axis state, and a whole older night beside it."""
    path = HERE / "nights_2.sqlite"
    path.unlink(missing_ok=True)
    at_s = [BEGIN_UTC_S]
    log = NightLog.open(path, lambda: at_s[0], lambda _: None, lambda _: None)
    night = log.resume_or_begin_night(BEGIN_UTC_S)
    before = {"started_utc_s": BEGUN - 172_800.0, "active_utc_s": BEGUN - 165_600.0}
    log.archive.take_in_record(replace(whole_night(), **before))
    session = Session(log=log)
    session.resume(night)
    session.set_site(Site(48.1, 11.6, 520.0, "a meadow (invented)"), Air(952.0, 3.0))
    session.use_equipment(
        Mount(
            key="m",
            name="invented mount",
            kind=MountKind.GERMAN_EQUATORIAL,
            periodic_error_arcsec=18.0,
        ),
        Telescope(key="t", name="invented tube", flexure_arcsec_per_g=3.0),
    )
    session.set_aim(Aim.REFRACTED_POLE)
    session.set_target(1.5)
    session.set_north_set(NorthSet.NUDGED)
    _leg(session, app, at_s, "Bellatrix", "east", 1.9, 0)
    _leg(session, app, at_s, "Alrescha", "south", -0.7, 1)
    _until(
        app,
        lambda: heard(session).solution is not None and not heard(session).solution_is_stale,
    )
    session.begin_turning()
    session.bolts_turned(How.ADVISED, BoltTurn(-4.0, 2.5), (0.5, None))
    _leg(session, app, at_s, "Markab", "west", -0.2, 2, ends=False)
    _until(app, lambda: _is_answered(session))
    session.close()
    log.put_setting("equipment", {"version": 1, "equipment": [], "sets": []})
    assert log.close()
    with sqlite3.connect(path) as file:
        file.execute("PRAGMA journal_mode = DELETE")
    file.close()


def _is_answered(session: Session) -> bool:
    snapshot = heard(session)
    return snapshot.solution is not None and not snapshot.solution_is_stale


def _leg(
    session: Session,
    app: QCoreApplication,
    at_s: list[float],
    star: str,
    label: str,
    slope: float,
    number: int,
    ends: bool = True,
) -> None:
    session.begin_leg(star, *STARS[label])
    for row in readings(number, label, slope):
        at_s[0] = time_of(str(row[1]))
        session.add_reading(Reading(at_s[0], float(row[4]), sigma_arcsec=0.6))
        app.processEvents()
    if ends:
        session.end_leg()


def time_of(moment: str) -> float:
    import calendar

    return float(calendar.timegm(time.strptime(moment, "%Y-%m-%dT%H:%M:%SZ")))


def _until(app: QCoreApplication, holds: Callable[[], bool]) -> None:
    for _ in range(600):
        app.processEvents()
        if holds():
            return
        time.sleep(0.05)
    raise SystemExit("no answer")


if __name__ == "__main__":
    drift_logs()
    run_log()
    first_version()
    present_version(QCoreApplication([]))
