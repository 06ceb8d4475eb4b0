"""A redraw of the drift plot costs the same for a thousand readings and a hundred thousand."""

import time

import numpy as np
import pytest
from PySide6.QtCore import QSettings
from PySide6.QtGui import QPixmap

from app.ui.driftplot import DriftPlot
from app.ui.driftseries import series
from app.ui.style import Theme
from core.alignment.driftlog.records import Leg

ROUNDS = 15
FRAME_MS = 16.0


def _leg(count: int) -> Leg:
    random = np.random.default_rng(3)
    utc_s = 1.79e9 + np.linspace(0.0, 1800.0, count)
    return Leg("Vega", 279.2, 38.8, utc_s, random.normal(0.0, 0.7, count) + (utc_s - 1.79e9) / 90)


def _redraw_ms(plot: DriftPlot, count: int) -> float:
    """The shortest of some redraws with every pixel painted: what is left is not the machine's."""
    leg = _leg(count)
    picture = QPixmap(plot.size())
    plot.feed_from(lambda _: ([series(leg, None, 0)], 0))
    spent = []
    for _ in range(ROUNDS):
        before = time.perf_counter()
        plot.draw()
        plot.render(picture)
        spent.append(time.perf_counter() - before)
    return 1000.0 * min(spent)


@pytest.mark.bench
def test_a_hundred_thousand_readings_redraw_within_a_frame(qapp, qtbot, tmp_path) -> None:
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    theme = Theme(qapp, settings)
    plot = DriftPlot(theme)
    plot.resize(1100, 600)
    qtbot.addWidget(plot)
    with qtbot.waitExposed(plot):
        plot.show()
    few, many = _redraw_ms(plot, 1_000), _redraw_ms(plot, 100_000)
    print(f"1,000 readings {few:.1f} ms, 100,000 readings {many:.1f} ms")
    assert many < FRAME_MS
    assert many < 2.0 * few
