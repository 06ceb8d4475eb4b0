"""The Tracking page in the night look shines red alone, with every section and plot."""

import numpy as np
import pytest
from PySide6.QtGui import QImage

from app.pages.tracking.page import EXPOSURE, GUIDING, PERIODIC, POINTING, TRAINING, VIBRATION
from app.pages.tracking.practice import practice_guiding, practice_run

from .conftest import NOW_S


@pytest.mark.parametrize("name", [PERIODIC, TRAINING, EXPOSURE, GUIDING, POINTING, VIBRATION])
def test_red_alone(page, wait, theme, name: str) -> None:
    theme.choose("night")
    page.bench.want(scale_arcsec_per_px=1.2)
    section = page.show_section(name)
    wait(lambda: page.bench.take_run(practice_run(NOW_S, np.random.default_rng(3))))
    wait(lambda: page.bench.take_guided(practice_guiding(NOW_S, np.random.default_rng(3))))
    if name in (POINTING, VIBRATION):
        wait(section.practice_key.click)
    section.plot.setFocus()
    image = page._scrolled.widget().grab().toImage().convertToFormat(QImage.Format.Format_RGB888)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1)
    pixels = rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3)
    assert section.plot.isVisible()
    assert pixels[..., 0].max() > 200
    assert pixels[..., 1:].max() == 0
