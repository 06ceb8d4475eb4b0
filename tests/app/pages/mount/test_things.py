"""Equipment typed at the keyboard, kept, changed, removed, exchanged."""

import json
import os
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog

from app.pages.mount.equipment import SET, Things
from app.pages.mount.forms import RecordForm, SetForm
from app.pages.mount.formwords import KINDS
from app.pages.mount.page import EQUIPMENT
from core.alignment.priors import USUAL
from core.mount.equipment import Camera, Mount, MountingPlace, MountKind, Purpose, quantities
from core.mount.equipmentfile import KINDS as RECORDS
from core.mount.examples import INVENTED_INVENTORY


@pytest.fixture
def things(make_page) -> Things:
    page = make_page()
    page.show_section(EQUIPMENT)
    made = page.section(EQUIPMENT)
    made.page = page
    return made


def _type(form: RecordForm, **texts: str) -> None:
    for name, text in texts.items():
        line = form.answer(name).figure.line()
        line.clear()
        QTest.keyClicks(line, text)


@pytest.mark.parametrize("kind", KINDS)
def test_every_figure_of_every_kind_has_its_line(things: Things, kind: str) -> None:
    things.list.add_key(kind).click()
    form = things.form()
    for name in quantities(RECORDS[kind]):
        assert form.answer(name) is not None, name


def test_a_mount_is_typed_and_kept_with_commas_and_units(things: Things, equipment) -> None:
    things.list.add_key("mount").click()
    form = things.form()
    QTest.keyClicks(form.name_field().line(), "My mount")
    _type(form, capacity_kg="16,5 kg", periodic_error_arcsec="18", ease_of_use="2")
    form.answer("kind").choice.button(MountKind.FORK_ON_WEDGE.name).click()
    form.answer("has_goto").choice.button("no").click()
    QTest.keyClick(form.answer("ease_of_use").figure.line(), Qt.Key.Key_Return)
    (mount,) = equipment.inventory.of_kind(Mount)
    assert (mount.name, mount.kind, mount.capacity_kg) == (
        "My mount", MountKind.FORK_ON_WEDGE, 16.5,
    )  # fmt: skip
    assert (mount.has_goto, mount.is_driven, mount.own_mass_kg) == (False, None, None)
    assert form.head.said() == "Kept."
    assert not form.is_changed()


@pytest.mark.parametrize(
    ("figure", "text", "said"),
    [
        ("mass_kg", "0", "above zero"),
        ("mass_kg", "-2", "above zero"),
        ("mass_kg", "heavy", "not a number"),
        ("pixel_um", "3.8.1", "two marks"),
        ("width_px", "4000,5", "whole"),
        ("height_mm", "99999", "between"),
    ],
)
def test_what_cannot_be_is_said_at_its_line_and_nothing_is_kept(
    things: Things, equipment, figure: str, text: str, said: str
) -> None:
    things.add("camera")
    form = things.form()
    QTest.keyClicks(form.name_field().line(), "Camera")
    _type(form, **{figure: text})
    form.head.keep_key.click()
    assert said in form.answer(figure).figure.below()
    assert "dashed" in form.head.said()
    assert equipment.inventory.records == ()
    _type(form, **{figure: "3"})
    form.head.keep_key.click()
    assert len(equipment.inventory.of_kind(Camera)) == 1


def test_how_far_the_tube_yields_is_typed_or_left_to_the_usual(things: Things, filled) -> None:
    things.open("example-tube")
    line = things.form().answer("flexure_arcsec_per_g").figure
    assert line.line().accessibleName() == "Flexure, in arcseconds per g"
    assert f"empty counts as the usual {USUAL.flexure_arcsec_per_g:g}." in line.below()
    assert things.form().keep()
    assert filled.inventory.find("example-tube").flexure_arcsec_per_g is None
    line.show_text("20″ per g")
    assert things.form().keep()
    assert filled.inventory.find("example-tube").flexure_arcsec_per_g == 20.0
    _type(things.form(), flexure_arcsec_per_g="400")
    assert not things.form().keep()
    assert "between 0 and 300″ per g" in line.below()


def test_without_a_name_nothing_is_kept(things: Things, equipment) -> None:
    things.add("accessory")
    things.form().head.keep_key.click()
    assert things.form().name_field().is_wrong()
    assert equipment.inventory.records == ()


def test_keeping_twice_changes_the_same_piece(things: Things, equipment) -> None:
    things.add("accessory")
    form = things.form()
    QTest.keyClicks(form.name_field().line(), "Wheel")
    form.planned_tick().click()
    form.answer("place").choice.button(MountingPlace.SADDLE.name).click()
    assert form.keep()
    _type(form, mass_kg="0,8")
    assert form.keep()
    (wheel,) = equipment.inventory.records
    assert (wheel.mass_kg, wheel.is_planned, wheel.place) == (0.8, True, MountingPlace.SADDLE)


def test_typed_changes_are_not_let_go_without_asking(things: Things, filled) -> None:
    things.open("example-tube")
    _type(things.form(), mass_kg="6")
    things.open("example-camera")
    assert "not kept" in things.asking.question()
    assert things.form().key() == "example-tube"
    things.asking.yes().click()
    assert things.form().key() == "example-camera"
    assert filled.inventory.find("example-tube").mass_kg == 6.0
    _type(things.form(), mass_kg="9")
    things.open("example-tube")
    things.asking.no().click()
    assert filled.inventory.find("example-camera").mass_kg == 0.7


@pytest.mark.usefixtures("filled")
def test_a_wrong_change_is_not_lost_by_keeping(things: Things) -> None:
    things.open("example-tube")
    _type(things.form(), mass_kg="-6")
    things.open("example-camera")
    things.asking.yes().click()
    assert things.form().key() == "example-tube"
    assert things.form().answer("mass_kg").is_wrong()


def test_a_piece_is_opened_from_the_list_and_removed_after_asking(things: Things, filled) -> None:
    rows = things.list.list()
    names = [rows.item(row).text() for row in range(rows.count())]
    assert "to be bought, invented" in next(one for one in names if "second tube" in one)
    rows.itemActivated.emit(rows.item(names.index(next(n for n in names if "refractor" in n))))
    head = things.form().head
    head.remove_key.click()
    assert filled.inventory.find("example-tube") is not None
    head.asking.yes().click()
    assert filled.inventory.find("example-tube") is None
    assert things.form() is None


def test_a_set_is_put_together_by_ticking(things: Things, filled) -> None:
    things.list.add_key(SET).click()
    form = things.form()
    assert isinstance(form, SetForm)
    QTest.keyClicks(form.name_field().line(), "Planets")
    form.purposes.button(Purpose.PLANETARY.name).click()
    form.mounts.button("example-hill").click()
    for key in ("example-tube", "example-camera"):
        form.parts[key].click()
    QTest.keyClick(form.name_field().line(), Qt.Key.Key_Return)
    made = filled.inventory.sets[-1]
    assert (made.name, made.purpose, made.mount) == ("Planets", Purpose.PLANETARY, "example-hill")
    assert made.parts == ("example-tube", "example-camera")
    form.parts["example-camera"].click()
    form.keep()
    assert filled.inventory.sets[-1].parts == ("example-tube",)
    assert len(filled.inventory.sets) == 2


def test_examples_go_only_after_asking(things: Things, filled) -> None:
    things.examples_key.click()
    assert len(filled.inventory.records) > 0
    things.examples_asking.yes().click()
    assert filled.inventory.things() == ()


def test_equipment_leaves_as_a_file_and_comes_back(
    things: Things, filled, tmp_path: Path, qtbot
) -> None:
    path = tmp_path / "mine"
    things.exchange.export_to(path)
    qtbot.waitUntil(lambda: "Written" in things.exchange.said())
    filled.remove(*[one.key for one in filled.inventory.things()])
    things.exchange.import_from(path.with_suffix(".json"))
    qtbot.waitUntil(lambda: "taken" in things.exchange.said())
    assert filled.inventory == INVENTED_INVENTORY


@pytest.mark.usefixtures("filled")
def test_a_file_is_replaced_only_after_asking(things: Things, tmp_path, qtbot) -> None:
    path = tmp_path / "mine.json"
    path.write_text("precious", encoding="utf-8")
    things.exchange.export_to(path)
    things.exchange.asking.no().click()
    assert path.read_text(encoding="utf-8") == "precious"
    things.exchange.export_to(path)
    things.exchange.asking.yes().click()
    qtbot.waitUntil(lambda: "Written" in things.exchange.said())
    assert json.loads(path.read_text(encoding="utf-8"))["format"] == "poleward equipment"


@pytest.mark.parametrize(("takes", "mass_kg"), [(True, 5.2), (False, 9.0)])
def test_ones_own_figures_are_replaced_only_after_asking(
    things: Things, filled, tmp_path, qtbot, takes: bool, mass_kg: float
) -> None:
    path = tmp_path / "mine.json"
    things.exchange.export_to(path)
    qtbot.waitUntil(lambda: path.exists())
    things.open("example-tube")
    _type(things.form(), mass_kg="9")
    things.form().keep()
    filled.remove("example-camera")
    things.exchange.import_from(path)
    qtbot.waitUntil(lambda: bool(things.exchange.asking.question()))
    assert "refractor" in things.exchange.asking.question()
    (things.exchange.asking.yes() if takes else things.exchange.asking.no()).click()
    assert filled.inventory.find("example-tube").mass_kg == mass_kg
    assert filled.inventory.find("example-camera") is not None
    assert things.form().answer("mass_kg").figure.read() == mass_kg


@pytest.mark.parametrize(
    ("content", "said"),
    [(b"\xff\xfe\x00", "broken"), (b"{}", "format"), (b"", "not JSON"), (None, "cannot be read")],
)
def test_a_file_that_is_no_equipment_is_refused_in_words(
    things: Things, filled, tmp_path, qtbot, content, said
) -> None:
    path = tmp_path / "other.json"
    if content is not None:
        path.write_bytes(content)
    things.exchange.import_from(path)
    qtbot.waitUntil(lambda: bool(things.exchange.said()))
    assert said in things.exchange.said()
    assert filled.inventory == INVENTED_INVENTORY


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="only where there are named pipes")
@pytest.mark.usefixtures("filled")
def test_equipment_is_not_awaited_from_a_pipe(things: Things, tmp_path, qtbot) -> None:
    pipe = tmp_path / "pipe.json"
    os.mkfifo(pipe)
    things.exchange.import_from(pipe)
    qtbot.waitUntil(lambda: "a pipe or a device" in things.exchange.said())


def test_at_night_the_dialog_to_save_is_the_dark_one(things: Things, theme) -> None:
    theme.choose("night")
    things.exchange.export_key.click()
    dialog = things.exchange.findChild(QFileDialog)
    assert dialog.testOption(QFileDialog.Option.DontUseNativeDialog)
    assert dialog.testOption(QFileDialog.Option.DontConfirmOverwrite)
    assert dialog.acceptMode() is QFileDialog.AcceptMode.AcceptSave
    dialog.close()


@pytest.mark.usefixtures("filled")
def test_a_place_that_cannot_be_written_is_said(things: Things, tmp_path, qtbot) -> None:
    things.exchange.export_to(tmp_path / "no such folder" / "mine.json")
    qtbot.waitUntil(lambda: "cannot be written" in things.exchange.said())
