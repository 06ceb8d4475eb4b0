"""The Field rotation page of an evening, shown and stopped again."""

from collections.abc import Iterator

import pytest

from app.night.plan import Evening
from app.pages.rotation.page import RotationPage
from tests.app.pages.rotation.waiting import WORKED_OUT_MS


@pytest.fixture
def shown(qtbot, theme) -> Iterator:
    pages: list[RotationPage] = []

    def show(given: Evening) -> RotationPage:
        page = RotationPage(given, theme)
        page.resize(1150, 740)
        qtbot.addWidget(page)
        pages.append(page)
        if given.around() is None:
            page.show()
        else:
            with qtbot.waitSignal(page.worked_out, timeout=WORKED_OUT_MS):
                page.show()
        return page

    yield show
    for page in pages:
        page.stop()
