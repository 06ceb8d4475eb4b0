"""Puts the program together: the one place where its objects are made and joined."""

from __future__ import annotations

import time
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QSettings, Signal
from PySide6.QtWidgets import QApplication

from app.theme.theme import Theme
from app.warmup import Warm, WarmUp
from app.window import PageEntry, Window

if TYPE_CHECKING:
    from app.pages.drift.page import DriftPage
    from app.pages.site import SitePage
    from app.session.session import Session
    from app.session.snapshot import Snapshot

SITE, DRIFT = "site", "drift"


class Program(QObject):
    """The running program. `start` shows the window at once; `ready` follows with the pages."""

    ready = Signal()

    def __init__(
        self,
        app: QApplication,
        settings: QSettings,
        log_path: Path,
        now: Callable[[], float] = time.time,
    ) -> None:
        """`now`: seconds since 1970-01-01 UTC."""
        super().__init__()
        self._now = now
        self.theme = Theme(app, settings)
        self.window = Window(self.theme, now)
        self.session: Session | None = None
        self._is_closed = False
        self._held_trouble: str | None = None
        self._warm_up = WarmUp(log_path, now, self)
        self._warm_up.warm.connect(self._build)
        self._warm_up.storage_trouble.connect(self._storage_trouble)
        self._warm_up.notice.connect(self.window.say)
        self.window.closing.connect(self.close)

    def start(self) -> None:
        self.window.show()
        self._warm_up.start()

    def close(self) -> None:
        """Stops every source, thread and timer, with everything on disk; may be called twice."""
        if self._is_closed:
            return
        self._is_closed = True
        self._warm_up.wait()
        drift = self.window.page(DRIFT)
        if drift is not None:
            drift.stop()  # type: ignore[attr-defined]
        if self.session is not None:
            self.session.close()
        if self._warm_up.made is not None:
            self._warm_up.made.log.close()

    def _build(self, warm: Warm) -> None:
        from app.session.session import Session

        if self._is_closed:  # the window was closed before it was filled
            return
        session = Session(log=warm.log, parent=self)
        session.resume(warm.night)
        session.report_storage(self._held_trouble)
        session.changed.connect(self._show)
        self.session = session
        self.window.offer(
            [
                PageEntry(SITE, self.tr("Site"), lambda: self._site_page(session)),
                PageEntry(DRIFT, self.tr("Drift"), lambda: self._drift_page(session)),
            ]
        )
        self.window.show_page(DRIFT)
        self._show(session.snapshot())
        self.ready.emit()

    def _site_page(self, session: Session) -> SitePage:
        from app.pages.site import SitePage

        page = SitePage()
        snapshot = session.snapshot()
        page.show_site(snapshot.site, snapshot.air)
        page.site_given.connect(session.set_site)
        return page

    def _drift_page(self, session: Session) -> DriftPage:
        from app.driftparts import drift_parts
        from app.pages.drift.page import DriftPage
        from app.session.shown import Shown

        page = DriftPage(Shown(session, parent=self), self.theme, drift_parts(session, self._now))
        page.site_wanted.connect(lambda: self.window.show_page(SITE))
        return page

    def _show(self, snapshot: Snapshot) -> None:
        self.window.show_site(snapshot.site)

    def _storage_trouble(self, sentence: str | None) -> None:
        self._held_trouble = sentence
        if self.session is not None:
            self.session.report_storage(sentence)
