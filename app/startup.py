"""What takes its time at the start, done in slices while the window is already up."""

from __future__ import annotations

import contextlib
import gc
import importlib
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QThread, Signal

if TYPE_CHECKING:
    from app.store.nights import NightLog
    from app.store.records import StoredNight


SLOW = (
    "app.pages.tonight.page",
    "app.pages.log.page",
    "app.night.activenight",
    "app.pages.drift.page",
    "app.pagetable",
    "app.pages.site.page",
    "app.pages.pole.page",
    "app.pages.mount.page",
    "app.pages.budget.page",
    "app.pages.tracking.page",
    "app.pages.rotation.page",
    "app.pages.plan.page",
    "core.alignment.axis.solution",
)
SOME_TIME_S = 1.8e9  # any will do to load what places of the Sun need


@dataclass(frozen=True, eq=False)
class StartupLoad:
    """The log of nights, opened, and tonight as it was left."""

    log: NightLog
    night: StoredNight


class StartupLoader(QThread):
    """Imports the heavy libraries, reads the star table and opens the log of nights.

    `warm` carries a Warm. `storage_trouble` (a sentence or None) and `notice` pass on what the log
    says, now and later, from whichever thread.
    """

    warm = Signal(object)
    storage_trouble = Signal(object)
    notice = Signal(str)

    def __init__(self, path: Path, now: Callable[[], float], parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._path = path
        self._now = now
        self.made: StartupLoad | None = None  # read it only when the thread has ended

    def run(self) -> None:
        """The thread's own work; Qt calls it."""
        from app.store.nights import NightLog

        log = NightLog.open(self._path, self._now, self.storage_trouble.emit, self.notice.emit)
        night = log.resume_or_begin_night(self._now())
        _import_the_rest()
        self.made = StartupLoad(log, night)
        self.warm.emit(self.made)


def spare_what_is_loaded() -> None:
    """Going through all libraries at every full collection would stop the window for 20-50 ms."""
    gc.freeze()


def _import_the_rest() -> None:
    """What the pages and the solver need, so that neither waits for it later."""
    for name in SLOW:
        importlib.import_module(name)
    from core.sky import catalogues, clocks, pole, words
    from core.sky.compass import NoDeclination, declination
    from core.sky.site import Air, Site

    catalogues.load_stars()
    with contextlib.suppress(RuntimeError):  # the pages that need it say so
        catalogues.load_deep_sky()
    pole.load()
    clocks.bundled()
    clocks.names()
    anywhere = Site(0.0, 0.0)
    words.sun_check(anywhere, Air(0.0), SOME_TIME_S)
    with contextlib.suppress(NoDeclination):
        declination(anywhere, SOME_TIME_S)
