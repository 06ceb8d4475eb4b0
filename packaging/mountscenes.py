"""Scenes of the Mount and Budget pages for `screens.py`; all equipment in them is invented."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
from PySide6.QtCore import QEventLoop, QTimer

from app.compose import Program
from app.pages.budget.page import BudgetPage
from app.pages.mount.equipment import Things
from app.pages.mount.page import CHOOSING, EQUIPMENT, IMAGE, LOAD, MountPage
from app.pagetable import BUDGET, MOUNT
from core.alignment.driftlog.records import Leg
from core.mount.equipment import Telescope
from core.mount.examples import INVENTED_INVENTORY
from core.practice.simulation import PracticeMount, PracticeSky
from core.sky.site import Site
from tests.app.night.heard import heard

NOW_S = 1_790_000_000.0


def _mount(program: Program) -> MountPage:
    program.window.show_page(MOUNT)
    page = program.window.page(MOUNT)
    assert isinstance(page, MountPage)
    return page


def _empty(program: Program) -> None:
    _mount(program)


def _load(program: Program) -> None:
    _filled(program).show_section(LOAD)


def _filled(program: Program) -> MountPage:
    page = _mount(program)
    if not page.equipment().inventory.things():
        page.start().example_key.click()
    return page


def _overload(program: Program) -> None:
    page = _filled(program)
    page.show_section(LOAD)
    tube = INVENTED_INVENTORY.find("example-tube")
    assert isinstance(tube, Telescope)
    page.equipment().put(replace(tube, mass_kg=19.0))


def _equipment(program: Program) -> None:
    page = _filled(program)
    tube = INVENTED_INVENTORY.find("example-tube")
    assert tube is not None
    page.equipment().put(tube)
    page.show_section(EQUIPMENT)


def _form(program: Program) -> None:
    things = _things(program)
    things.add("mount")


def _telescope(program: Program) -> None:
    _things(program).open("example-tube")


def _wrong(program: Program) -> None:
    things = _things(program)
    things.add("telescope")
    form = things.form()
    assert form is not None
    form.name_field().show_text("Long tube")
    form.answer("mass_kg").figure.show_text("-3")
    form.answer("focal_length_mm").figure.show_text("a thousand")
    form.keep()


def _set(program: Program) -> None:
    things = _things(program)
    things.open("example-set")
    if things.asking.question():
        things.asking.no().click()


def _things(program: Program) -> Things:
    page = _filled(program)
    page.show_section(EQUIPMENT)
    things = page.section(EQUIPMENT)
    assert isinstance(things, Things)
    return things


def _image(program: Program) -> None:
    _filled(program).show_section(IMAGE)


def _choosing(program: Program) -> None:
    _filled(program).show_section(CHOOSING)


def _budget(program: Program) -> BudgetPage:
    program.window.show_page(BUDGET)
    page = program.window.page(BUDGET)
    assert isinstance(page, BudgetPage)
    return page


def _budget_empty(program: Program) -> None:
    _budget(program)


def _budget_filled(program: Program) -> None:
    _filled(program)
    assert program.session is not None
    program.session.set_site(Site(47.0, -20.0, 300.0, "Heron Rock"))
    page = _budget(program)
    page.form.name.show_text("M 31")
    page.form.name.submitted.emit()


def _budget_hopeless(program: Program) -> None:
    _budget_filled(program)
    page = _budget(program)
    page.form.figures["exposure_s"].show_text("7200")
    page.form.guiding.button("unguided").click()


def _budget_solved(program: Program) -> None:
    """Two stars at an invented mount off by 11′ in azimuth and 6′ in altitude."""
    _budget_filled(program)
    page = _budget(program)
    page.form.figures["exposure_s"].show_text("300")
    page.form.guiding.button("guided").click()
    session = program.session
    assert session is not None
    site, air = heard(session).site, heard(session).air
    assert site is not None
    assert air is not None
    rng = np.random.default_rng(4)
    mount = PracticeMount.hidden(rng)
    mount.azimuth_error_arcmin = 11.0
    mount.altitude_error_arcmin = 6.0
    sky = PracticeSky(mount, site, air, rng)
    for name, ra_deg, start_s in (("meridian", 195.0, NOW_S), ("east", 265.0, NOW_S + 700.0)):
        utc_s = start_s + 2.0 * np.arange(300)
        sky.centre(ra_deg, 10.0, start_s)
        north, east = sky.readings(utc_s)
        session.take_leg(name, Leg(name, ra_deg, 10.0, utc_s, north, east))
    loop = QEventLoop()
    QTimer.singleShot(5000, loop.quit)  # for the solution and what follows from it
    loop.exec()


MOUNT_SCENES: dict[str, Callable[[Program], None]] = {
    "mount-empty": _empty,
    "mount-load": _load,
    "mount-overload": _overload,
    "mount-equipment": _equipment,
    "mount-form": _form,
    "mount-telescope": _telescope,
    "mount-wrong": _wrong,
    "mount-set": _set,
    "mount-image": _image,
    "mount-choosing": _choosing,
    "budget-empty": _budget_empty,
    "budget": _budget_filled,
    "budget-hopeless": _budget_hopeless,
    "budget-solved": _budget_solved,
}
