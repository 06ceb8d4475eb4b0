"""Scenes of the pages for the whole night for `screens.py`; the nights in them are invented."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from PySide6.QtCore import QEventLoop, QTimer

from app.compose import Program
from app.pages.log.page import COMPARE, KEEP, LogPage
from app.pages.site.page import SitePage
from app.pages.tonight.page import TonightPage
from app.pagetable import LOG, SITE, TONIGHT
from core.alignment.driftlog.records import Leg
from core.night.checklist import NightPart
from core.night.record import AxisState, Entry, Kind, NightRecord, WatchedLeg
from core.sky.site import Air, Site

NOW_S, DAY_S = 1_790_000_000.0, 86400.0

NORTH, SOUTH = Site(47.0, -20.0, 300.0, "Heron Rock"), Site(-33.0, -20.0, 300.0, "Kelp Bank")


def _stand(program: Program, site: Site) -> None:
    program.window.show_page(SITE)
    page = program.window.page(SITE)
    assert isinstance(page, SitePage)
    texts = {
        "name": site.name,
        "latitude": f"{site.latitude_deg}",
        "longitude": f"{site.longitude_deg}",
        "elevation": f"{site.elevation_m}",
    }
    for name, text in texts.items():
        page.field(name).show_text(text)
    page.use_button().click()


def _tonight(program: Program) -> TonightPage:
    program.window.show_page(TONIGHT)
    page = program.window.page(TONIGHT)
    assert isinstance(page, TonightPage)
    return page


def _empty(program: Program) -> None:
    _tonight(program)


def _north(program: Program) -> None:
    _stand(program, NORTH)
    page = _tonight(program)
    page.weather().line("temperature_c").show_text("6")
    page.weather().words().show_text("thin cloud in the west, no wind")
    page.weather().submit()
    _settle(1500)
    page.steps().show_part(NightPart.BEFORE_LEAVING)
    page.steps().row("forecast").tick().click()
    _settle(500)


def _south(program: Program) -> None:
    _stand(program, SOUTH)
    page = _tonight(program)
    page.form().choice("power").button("MAINS").click()
    _settle(1500)
    page.steps().show_part(NightPart.DAYLIGHT)
    page.steps().row("mains").skip_button().click()
    _settle(300)


def _log(program: Program) -> LogPage:
    program.window.show_page(LOG)
    page = program.window.page(LOG)
    assert isinstance(page, LogPage)
    _settle(800)
    return page


def _log_empty(program: Program) -> None:
    _log(program)


def _log_night(program: Program) -> None:
    """An invented night, and fourteen more that came to other figures."""
    page = _log(program)
    archive = page.files().archive
    for number in range(15):
        archive.take_in_record(_invented_night(number))
    page.refresh()
    _settle(800)
    page.list().list().choose(0)
    _settle(800)
    page.sheet().again.solve()
    _settle(2500)


def _log_compare(program: Program) -> None:
    _log(program).sections().show_section(COMPARE)
    _settle(300)


def _log_keep(program: Program) -> None:
    _log(program).sections().show_section(KEEP)


def _invented_night(number: int) -> NightRecord:
    """Its axis error falls from month to month, with a practice mount's drift in two legs."""
    random = np.random.default_rng(number)
    begun = NOW_S - (14 - number) * 26 * DAY_S
    keys = iter(range(1000 * (number + 1), 1000 * (number + 2)))
    state = next(keys)
    legs = tuple(
        _invented_leg(next(keys), star, begun + 600.0 * order, rate, random)
        for order, (star, rate) in enumerate((("Heron", 0.9), ("Kelp", -0.5)))
    )
    error = 6.0 * 0.8**number + random.uniform(0.3, 0.9)
    result = {"axis_state": state, "aim": "TRUE_POLE", "error_arcmin": error,
              "half_width_arcmin": 0.3 + 0.2 * random.random()}  # fmt: skip
    note = {"text": "Thin cloud until ten, then clear. The eastern leg was calm."}
    entries = (
        Entry(next(keys), Kind.NOTE, begun + 900.0, note),
        Entry(next(keys), Kind.WEATHER, begun + 300.0, {"temperature_c": 4.5, "text": "calm"}),
        Entry(next(keys), Kind.RESULT, begun + 60.0 * (50 - 2 * number), result),
    )
    states = (AxisState(state, begun, legs),)
    return NightRecord(next(keys), begun, begun + 7200.0, NORTH, Air(980.0, 5.0), "TRUE_POLE", 1.0,
                       states, entries)  # fmt: skip


def _invented_leg(
    key: int, star: str, begun: float, rate: float, random: np.random.Generator
) -> WatchedLeg:
    utc_s = begun + np.arange(0.0, 480.0, 4.0)
    north = rate * (utc_s - begun) / 60.0 + random.normal(0.0, 0.5, utc_s.size)
    right_ascension = 250.0 if star == "Heron" else 170.0
    leg = Leg(star, right_ascension, 8.0, utc_s, north)
    return WatchedLeg(key, star, "alignment", begun, utc_s[-1], False, leg)


def _help(program: Program) -> None:
    _tonight(program)
    program.window.help_button().click()


def _first_run(program: Program) -> None:
    program.window.show_page(TONIGHT)


def _settle(ms: int) -> None:
    loop = QEventLoop()
    QTimer.singleShot(ms, loop.quit)
    loop.exec()


NIGHT_SCENES: dict[str, Callable[[Program], None]] = {
    "tonight-empty": _empty,
    "tonight-north": _north,
    "tonight-south": _south,
    "log-empty": _log_empty,
    "log-night": _log_night,
    "log-compare": _log_compare,
    "log-keep": _log_keep,
    "help": _help,
    "first-run": _first_run,
}
