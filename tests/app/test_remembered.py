"""The size of the window at the first start and at later ones."""

import pytest
from PySide6.QtCore import QSettings, QSize
from PySide6.QtWidgets import QWidget

from app.ui.window import FIRST_SIZE, KEY, WindowGeometry, first_size


@pytest.mark.parametrize("screen", [QSize(1920, 1080), QSize(3840, 2160)])
def test_a_large_screen_gives_all_that_is_wanted(screen: QSize) -> None:
    assert first_size(screen) == FIRST_SIZE


@pytest.mark.parametrize("screen", [QSize(1280, 800), QSize(1366, 768), QSize(800, 1280)])
def test_a_small_screen_is_nearly_filled_and_never_exceeded(screen: QSize) -> None:
    size = first_size(screen)
    assert size.width() <= screen.width()
    assert size.height() <= screen.height()
    assert size.height() > 0.9 * min(screen.height(), FIRST_SIZE.height())
    assert size.width() > 0.9 * min(screen.width(), FIRST_SIZE.width())


def test_the_size_comes_back(settings: QSettings, qtbot) -> None:
    window, later = QWidget(), QWidget()
    for each in (window, later):
        qtbot.addWidget(each)
    remembered = WindowGeometry(window, settings)
    window.resize(700, 500)
    remembered.keep()
    WindowGeometry(later, settings)
    assert later.size() == QSize(700, 500)


def test_what_cannot_be_understood_is_as_if_it_were_the_first_start(
    settings: QSettings, qtbot
) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    settings.setValue(KEY, b"no place at all")
    WindowGeometry(window, settings)
    assert window.size() == first_size(window.screen().availableSize())
