"""An evening over a session that only remembers, for the pages that plan it."""

from types import SimpleNamespace
from typing import Any

import numpy as np
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication, QWidget

from app.night.places import Place, Places
from app.night.plan import Evening, Plans
from app.ui.skydisc import Dome
from app.ui.timeline import NightChart
from core.sky.horizon import Horizon
from core.sky.site import Air, Site
from core.sky.targets import Target
from tests.app.night.heard import FollowedFake
from tests.app.pages import reach

AFTERNOON_S = 1_790_000_000.0  # 2026-09-21T14:13:20Z, by `date -u -d @1790000000`
SUMMER_S = 1_782_050_000.0  # 2026-06-21T13:53:20Z
AIR = Air(952.0, 10.0)
HILL = Site(48.1, 11.6, 520.0, "Hill")
SOUTH = Site(-33.9, 18.4, 100.0, "Cliff")
FJORD = Site(69.6, 18.9, 20.0, "Fjord")
# Places of the open table of clusters, nebulae and galaxies.
ANDROMEDA = Target("M 31, Andromeda Galaxy", "galaxy", 10.68479, 41.26906, 3.44, 177.83)
TUCANAE = Target("NGC 104, 47 Tucanae", "globular cluster", 6.0223, -72.0814, 4.09, 50.0)


class Memory(dict):
    """Settings that no disk keeps."""

    def get_setting(self, key: str, default: Any = None) -> Any:
        return self.get(key, default)

    def put_setting(self, key: str, value: Any) -> None:
        self[key] = value


class FakeSession(FollowedFake):
    """Keeps a site, and tells when it changes."""

    def __init__(self, site: Site | None) -> None:
        super().__init__()
        self.site = site

    def snapshot(self) -> SimpleNamespace:
        return SimpleNamespace(site=self.site, air=AIR if self.site else None)

    def set_site(self, site: Site) -> None:
        self.site = site
        self.changed.emit(self.snapshot())


def evening(
    site: Site | None,
    target: Target | None = None,
    zone: str = "Europe/Berlin",
    horizon: Horizon | None = None,
    now_s: float = AFTERNOON_S,
    settings: Memory | None = None,
) -> Evening:
    """`zone`: kept with the site; the computer's own is UTC."""
    settings = Memory() if settings is None else settings
    places = Places(settings)
    if site is not None:
        places.keep(Place(site, zone, horizon or Horizon.flat()))
    plans = Plans(settings)
    if target is not None:
        plans.set_target(target)
    session = FakeSession(site)
    made = Evening(session, places, plans, lambda: now_s, "UTC")
    made.session, made.places = session, places
    return made


def green_and_blue(widget: QWidget) -> int:
    """The strongest green or blue among all pixels of a widget as it is rendered."""
    image = widget.grab().toImage().convertToFormat(QImage.Format.Format_RGB888)
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1)
    pixels = rows[:, : 3 * image.width()].reshape(image.height(), image.width(), 3)
    assert pixels[..., 0].max() > 0, "nothing was rendered"
    return int(pixels[..., 1:].max())


def check_reach(page: QWidget) -> None:
    """Everything named, large enough, whole; the pictures reached by the tabulator too."""
    QApplication.processEvents()
    assert reach.nameless(page) == []
    assert reach.small(page) == []
    assert reach.clipped(page) == []
    for kind in (Dome, NightChart):
        for picture in page.findChildren(kind):
            assert picture.focusPolicy() & Qt.FocusPolicy.TabFocus
            assert picture.accessibleName()
