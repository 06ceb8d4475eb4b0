"""Names, targets and room for the words, at every size of text."""

import pytest
from PySide6.QtWidgets import QApplication

from app.pages.pole.page import FIELD, HIDDEN, SIGHT
from app.ui.style import SCALES
from tests.app.pages import reach
from tests.app.pages.pole.conftest import NORTH, SOUTH


@pytest.mark.parametrize("scale", SCALES)
@pytest.mark.parametrize("way", ["empty", SIGHT, FIELD, HIDDEN])
def test_everything_is_named_large_enough_and_whole(make_page, theme, scale, way, qtbot) -> None:
    theme.enlarge(scale)
    page = make_page(None if way == "empty" else SOUTH if scale > 1.3 else NORTH)
    if way != "empty":
        page.take_way(way)
    if way == SIGHT:
        page.sight_view().placed.emit(200.0, 55.0)
    if way == HIDDEN:
        qtbot.waitUntil(lambda: page.hidden_view().marks().count() > 0, timeout=10_000)
    for _ in range(3):
        QApplication.processEvents()
    assert reach.nameless(page) == []
    assert reach.small(page) == []
    assert reach.clipped(page) == []
