"""Bars of causes: what they say, and that they are drawn within their widget."""

import numpy as np
import pytest
from PySide6.QtGui import QImage

from app.ui.bars import CauseBar, CauseBars

ALLOWED = CauseBar("allowed", 0.5, "0.5 px")


def _columns_of(bars: CauseBars, colour: str) -> np.ndarray:
    """Which columns of the picture hold a colour."""
    image = bars.grab().toImage().convertToFormat(QImage.Format.Format_RGB888)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1)
    pixels = rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3)
    wanted = [int(colour[at : at + 2], 16) for at in (1, 3, 5)]
    return np.flatnonzero((pixels == wanted).all(axis=2).any(axis=0))


@pytest.mark.parametrize("size", [0.6, 3.0, 400.0])
def test_a_bar_beyond_the_limit_is_filled_and_inside(qtbot, theme, size: float) -> None:
    bars = CauseBars(theme, "Bars")
    qtbot.addWidget(bars)
    bars.show_causes([CauseBar("guiding", size, f"{size:g} px")], ALLOWED)
    bars.resize(400, bars.sizeHint().height())
    filled = _columns_of(bars, theme.look.accent)
    assert filled.size > 0
    assert filled.max() < 399 - bars.fontMetrics().horizontalAdvance(f"{size:g} px")


def test_a_bar_within_the_limit_is_hollow(qtbot, theme) -> None:
    bars = CauseBars(theme, "Bars")
    qtbot.addWidget(bars)
    bars.show_causes([CauseBar("air", 0.3, "0.3 px")], ALLOWED)
    bars.resize(400, bars.sizeHint().height())
    assert _columns_of(bars, theme.look.accent).size == 0
    assert _columns_of(bars, theme.look.edge).size > 0


def test_everything_is_said_in_words(qtbot, theme) -> None:
    bars = CauseBars(theme, "Bars")
    qtbot.addWidget(bars)
    bars.show_causes([CauseBar("air", 0.3, "0.3 px"), CauseBar("guiding", 0.1, "0.1 px")], ALLOWED)
    assert bars.accessibleDescription() == "air 0.3 px; guiding 0.1 px; allowed 0.5 px"
