"""Names, targets and room for the words, at every size of text."""

import pytest
from PySide6.QtWidgets import QApplication

from app.pages.site.page import SitePage
from app.ui.style import SCALES
from core.sky.site import Site
from tests.app.pages import reach


@pytest.mark.parametrize("scale", SCALES)
@pytest.mark.parametrize("pressure", ["", "29.92", "wrong"])
def test_everything_is_named_large_enough_and_whole(
    page: SitePage, theme, scale: float, pressure: str
) -> None:
    theme.enlarge(scale)
    page.resize(1050, 640)
    page.show_site(Site(47.0, -20.0, 300.0, "Heron Rock"), None)
    page.field("pressure").show_text(pressure)
    page.use_button().click()
    for _ in range(3):
        QApplication.processEvents()
    assert reach.nameless(page) == []
    assert reach.small(page) == []
    assert reach.clipped(page) == []
