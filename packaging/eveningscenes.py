"""Scenes of the Field rotation and Night plan pages for `screens.py`, under an invented hill."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QEventLoop, QTimer

from app.compose import Program
from app.pages.plan import page as plan
from app.pages.plan.page import PlanPage
from app.pages.plan.sections import TonightSection
from app.pages.rotation import page as rotation
from app.pages.rotation.page import RotationPage
from app.pages.rotation.sections import EXPOSURE, ZENITH, SkySection
from app.pages.site.page import SitePage
from app.pagetable import PLAN, ROTATION, SITE
from core.sky.horizon import parse
from core.sky.site import Site
from core.sky.targets import Target

NORTH = Site(48.1, 11.6, 520.0, "Invented hill")
SOUTH = Site(-33.9, 18.4, 100.0, "Invented cliff")
FAR_NORTH = Site(60.2, 24.9, 20.0, "Invented shore")
TREES = parse("0 8|30 12|60 20|60 5|100 5|140 18|170 22|175 6|240 4|280 15|320 10")
ANDROMEDA = Target("M 31, Andromeda Galaxy", "galaxy", 10.68479, 41.26906, 3.44, 177.8)
TUCANAE = Target("NGC 104, 47 Tucanae", "globular cluster", 6.0223, -72.0814, 4.09, 50.0)
OVERHEAD = Target("A place overhead", "coordinates", 320.3, 48.0)
WORK_MS = 2500


def _stand_at(program: Program, site: Site) -> None:
    """Gives the site as a person would, and its trees."""
    program.window.show_page(SITE)
    page = program.window.page(SITE)
    assert isinstance(page, SitePage)
    texts = {"name": site.name, "elevation": f"{site.elevation_m:g}"}
    texts |= {"latitude": f"{site.latitude_deg}", "longitude": f"{site.longitude_deg}"}
    for name, text in texts.items():
        page.field(name).show_text(text)
    page.use_button().click()
    page.horizon().panorama().drawn.emit(TREES)


def _settle() -> None:
    loop = QEventLoop()
    QTimer.singleShot(WORK_MS, loop.quit)
    loop.exec()


def _rotation(program: Program, site: Site, target: Target, part: str, sky: str) -> None:
    _stand_at(program, site)
    program.window.show_page(ROTATION)
    page = program.window.page(ROTATION)
    assert isinstance(page, RotationPage)
    page.bar().search().chosen.emit(target)
    page.sections().show_section(part)
    section = page.sections().section(part)
    if sky and isinstance(section, SkySection):
        section.maps().button(sky).click()
    _settle()


def _plan(program: Program, site: Site, target: Target, part: str, mount: str) -> None:
    _stand_at(program, site)
    program.window.show_page(PLAN)
    page = program.window.page(PLAN)
    assert isinstance(page, PlanPage)
    page.bar().search().chosen.emit(target)
    page.sections().show_section(plan.TONIGHT)
    tonight = page.sections().section(plan.TONIGHT)
    assert isinstance(tonight, TonightSection)
    tonight.mounts().button(mount).click()
    page.sections().show_section(part)
    _settle()


GERMAN, UPRIGHT = "GERMAN_EQUATORIAL", "ALT_AZIMUTH"
EVENING_SCENES: dict[str, Callable[[Program], None]] = {
    "rotation": partial(_rotation, site=NORTH, target=ANDROMEDA, part=rotation.SKY, sky=""),
    "rotation-exposure": partial(
        _rotation, site=NORTH, target=ANDROMEDA, part=rotation.SKY, sky=EXPOSURE
    ),
    "rotation-zenith": partial(
        _rotation, site=NORTH, target=OVERHEAD, part=rotation.SKY, sky=ZENITH
    ),
    "rotation-south": partial(_rotation, site=SOUTH, target=TUCANAE, part=rotation.SKY, sky=""),
    "rotation-stack": partial(
        _rotation, site=NORTH, target=ANDROMEDA, part=rotation.EXPOSURES, sky=""
    ),
    "rotation-drive": partial(_rotation, site=NORTH, target=OVERHEAD, part=rotation.DRIVE, sky=""),
    "rotation-wedge": partial(
        _rotation, site=NORTH, target=ANDROMEDA, part=rotation.TILTED, sky=""
    ),
    "plan": partial(_plan, site=NORTH, target=ANDROMEDA, part=plan.TONIGHT, mount=GERMAN),
    "plan-upright": partial(_plan, site=NORTH, target=OVERHEAD, part=plan.TONIGHT, mount=UPRIGHT),
    "plan-south": partial(_plan, site=SOUTH, target=TUCANAE, part=plan.TONIGHT, mount=GERMAN),
    "plan-best": partial(_plan, site=NORTH, target=ANDROMEDA, part=plan.BEST, mount=GERMAN),
    "plan-flip": partial(_plan, site=NORTH, target=ANDROMEDA, part=plan.FLIP, mount=GERMAN),
    "plan-stars": partial(_plan, site=NORTH, target=ANDROMEDA, part=plan.STARS, mount=UPRIGHT),
    "plan-eyepiece": partial(_plan, site=NORTH, target=ANDROMEDA, part=plan.EYE, mount=GERMAN),
    "plan-north-far": partial(
        _plan, site=FAR_NORTH, target=ANDROMEDA, part=plan.TONIGHT, mount=GERMAN
    ),
}
