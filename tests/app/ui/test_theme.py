"""The look is applied everywhere at once and remembered."""

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtGui import QFont, QPalette
from PySide6.QtWidgets import QApplication

from app.ui.style import LOOKS, NIGHT, Theme, palette


@pytest.mark.parametrize("name", LOOKS)
def test_the_look_is_remembered(qapp: QApplication, settings: QSettings, name: str) -> None:
    Theme(qapp, settings).choose(name)
    assert Theme(qapp, settings).look is LOOKS[name]
    assert qapp.palette().window().color().name().upper() == LOOKS[name].ground


def test_a_choice_is_told(theme: Theme, qtbot) -> None:
    with qtbot.waitSignal(theme.changed):
        theme.choose("night")
    with qtbot.waitSignal(theme.changed):
        theme.enlarge(2.0)


@pytest.mark.parametrize("stored", ["", "1e9", "large", "nan", "-3"])
def test_a_spoilt_setting_is_survived(qapp: QApplication, settings: QSettings, stored: str) -> None:
    settings.setValue("look", stored)
    settings.setValue("text_scale", stored)
    theme = Theme(qapp, settings)
    assert theme.look in LOOKS.values()
    assert 1.0 <= theme.scale <= 2.0


@pytest.mark.usefixtures("theme")
def test_letters_are_smoothed_without_colour(qapp: QApplication) -> None:
    strategy = qapp.font().styleStrategy()
    assert strategy & QFont.StyleStrategy.NoSubpixelAntialias


@pytest.mark.usefixtures("qapp")
def test_every_role_of_the_night_palette_is_red_alone() -> None:
    made = palette(NIGHT)
    for role in QPalette.ColorRole:
        if role in (QPalette.ColorRole.NoRole, QPalette.ColorRole.NColorRoles):
            continue
        for group in (QPalette.ColorGroup.Active, QPalette.ColorGroup.Disabled):
            colour = made.color(group, role)
            assert (colour.green(), colour.blue()) == (0, 0), role
