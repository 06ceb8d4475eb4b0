"""The horizon by mouse, by arrow keys and as pairs."""

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.pages.site.horizon import HorizonPanel


@pytest.fixture
def panel(qtbot, theme) -> HorizonPanel:
    made = HorizonPanel(theme)
    made.theme = theme
    qtbot.addWidget(made)
    made.resize(1000, 420)
    made.show()
    return made


def _pairs(panel: HorizonPanel, text: str) -> None:
    panel.pairs().setPlainText(text)
    panel.pairs().left.emit()


def test_the_mouse_draws_a_slope(panel: HorizonPanel, qtbot) -> None:
    view = panel.panorama()
    with qtbot.waitSignal(panel.changed) as changed:
        QTest.mousePress(view, Qt.MouseButton.LeftButton, pos=view.point_at(100, 10).toPoint())
        QTest.mouseMove(view, view.point_at(120, 20).toPoint())
        QTest.mouseMove(view, view.point_at(140, 30).toPoint())
        QTest.mouseRelease(view, Qt.MouseButton.LeftButton, pos=view.point_at(140, 30).toPoint())
    horizon = changed.args[0]
    assert horizon.limit_deg(110.0) == pytest.approx(15.0, abs=1.5)
    assert horizon.limit_deg(140.0) == pytest.approx(30.0, abs=1.5)
    assert horizon.limit_deg(200.0) == pytest.approx(0.0, abs=0.01)
    assert panel.pairs().text() == horizon.as_text()


def test_the_arrow_keys_draw_as_well(panel: HorizonPanel) -> None:
    view = panel.panorama()
    for key in (Qt.Key.Key_Left, Qt.Key.Key_Left, Qt.Key.Key_Up, Qt.Key.Key_Up):
        QTest.keyClick(view, key)
    QTest.keyClick(view, Qt.Key.Key_Down, Qt.KeyboardModifier.ShiftModifier)
    assert view.horizon().limit_deg(170.0) == 9.0
    assert "170°" in view.accessibleDescription()
    assert "9° high" in view.accessibleDescription()


def test_pairs_are_taken_when_they_are_left(panel: HorizonPanel, qtbot) -> None:
    with qtbot.waitSignal(panel.changed) as changed:
        _pairs(panel, "0 5\n90 12,5\n180; 3\n# a remark\n")
    assert changed.args[0].limit_deg(90.0) == 12.5


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("tree", "Line 1"),
        ("10 5\n400 5", "Line 2"),
        ("5 100", "azimuth goes first"),
        ("10", "Line 1"),
        ("nan nan", "Line 1"),
    ],
)
def test_pairs_that_cannot_be_read_stay_to_be_mended(panel, qtbot, text, said) -> None:
    with qtbot.assertNotEmitted(panel.changed):
        _pairs(panel, text)
    assert said in panel.wrong()
    assert panel.pairs().text() == text


def test_undo_and_all_clear(panel: HorizonPanel) -> None:
    _pairs(panel, "0 5\n90 12")
    _pairs(panel, "0 7\n90 12")
    panel.undo_button().click()
    assert panel.panorama().horizon().limit_deg(0.0) == 5.0
    panel.clear_button().click()
    assert panel.panorama().horizon().azimuth_deg.size == 0
    panel.undo_button().click()
    assert panel.panorama().horizon().limit_deg(0.0) == 5.0


def test_empty_pairs_are_a_flat_horizon(panel: HorizonPanel) -> None:
    _pairs(panel, "0 5\n90 12")
    _pairs(panel, "  \n")
    assert panel.panorama().horizon().azimuth_deg.size == 0
