"""A Site page with a memory of its own."""

from collections.abc import Callable, Iterator
from typing import Any

import pytest

from app.night.places import Places
from app.night.session import Session
from app.pages.site.page import SitePage, SiteParts

NOW_S = 1_790_000_000.0  # 2026-09-21T14:13:20Z, by `date -u -d @1790000000`


class Settings:
    """Keeps in memory what is put."""

    def __init__(self) -> None:
        self.kept: dict[str, Any] = {}

    def get_setting(self, key: str, default: Any = None) -> Any:
        return self.kept.get(key, default)

    def put_setting(self, key: str, value: Any) -> None:
        self.kept[key] = value


@pytest.fixture
def settings_kept() -> Settings:
    return Settings()


@pytest.fixture
def tonight() -> Iterator[Session]:
    """Hears nothing of the page unless a test joins them."""
    made = Session()
    yield made
    made.close()


@pytest.fixture
def make_page(qtbot, theme, settings_kept, tonight) -> Callable[[], SitePage]:
    def make() -> SitePage:
        places = Places(settings_kept)
        parts = SiteParts(lambda: NOW_S, places, "Europe/Lisbon", tonight)
        made = SitePage(theme, parts)
        made.theme = theme  # kept alive as long as the page
        qtbot.addWidget(made)
        made.show()
        return made

    return make


@pytest.fixture
def page(make_page) -> SitePage:
    return make_page()
