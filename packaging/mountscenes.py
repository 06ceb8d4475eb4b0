"""Scenes of the Mount and Budget pages for `screens.py`; all equipment in them is invented."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

from app.compose import MOUNT, Program
from app.pages.mount.page import CHOOSING, EQUIPMENT, IMAGE, LOAD, MountPage
from app.pages.mount.things import Things
from core.mount.equipment import Telescope
from core.mount.exampleset import INVENTED_INVENTORY


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
}
