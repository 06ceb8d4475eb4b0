"""Scenes of the pages for the whole night for `screens.py`; the nights in them are invented."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEventLoop, QTimer

from app.compose import SITE, TONIGHT, Program
from app.pages.site.page import SitePage
from app.pages.tonight.page import TonightPage
from core.night.checkliststeps import Part
from core.sky.site import Site

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
    page.steps().show_part(Part.BEFORE_LEAVING)
    page.steps().row("forecast").tick().click()
    _settle(500)


def _south(program: Program) -> None:
    _stand(program, SOUTH)
    page = _tonight(program)
    page.form().choice("power").button("MAINS").click()
    _settle(1500)
    page.steps().show_part(Part.DAYLIGHT)
    page.steps().row("mains").skip_button().click()
    _settle(300)


def _settle(ms: int) -> None:
    loop = QEventLoop()
    QTimer.singleShot(ms, loop.quit)
    loop.exec()


NIGHT_SCENES: dict[str, Callable[[Program], None]] = {
    "tonight-empty": _empty,
    "tonight-north": _north,
    "tonight-south": _south,
}
