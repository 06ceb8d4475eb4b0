"""Puts the program together: the one place where its objects are made and joined."""

from __future__ import annotations

import time
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QSettings, Signal
from PySide6.QtWidgets import QApplication

from app.pagetable import (
    BUDGET,
    DRIFT,
    LOG,
    MOUNT,
    PLAN,
    POLE,
    ROTATION,
    SITE,
    TONIGHT,
    TRACKING,
    PageMaking,
    Shared,
    evening_of,
    evening_unbuilt,
    keep_surroundings,
    log_unbuilt,
    own_zone,
    tracking_unbuilt,
)
from app.startup import StartupLoad, StartupLoader, spare_what_is_loaded
from app.ui import translation
from app.ui.help import FirstRun
from app.ui.style import Theme
from app.ui.text import Text
from app.ui.window import CloseGuard, Window, WindowGeometry
from app.workers.awake import Awake
from app.workers.clocks import ClockWatch
from app.workers.sound import Sounds
from app.workers.yielding import Idle
from core.mount.equipment import Telescope

if TYPE_CHECKING:
    from app.night.budget import BudgetGoal
    from app.night.equipment import Equipment, FieldInView
    from app.night.session import Session
    from app.night.snapshot import Snapshot


def follow_equipment(session: Session, equipment: Equipment) -> None:
    """What turns teach of the bolts is kept with the mount of the set in use; the first telescope
    of that set is the one that is looked through.
    """

    def tell() -> None:
        chosen, inventory = equipment.set_in_use(), equipment.inventory
        if chosen is None:
            session.use_equipment(None, None)
            return
        carried = inventory.parts_of(chosen, with_planned=False)
        telescopes = (part for part in carried if isinstance(part, Telescope))
        session.use_equipment(inventory.mount_of(chosen), next(telescopes, None))

    equipment.changed.connect(tell)
    tell()


# The pages with work of their own under way.
STOPPED = (TONIGHT, POLE, DRIFT, MOUNT, BUDGET, TRACKING, ROTATION, PLAN, LOG)
AWAKE_STAGES = ("WATCH", "TURN")
KEPT_WITHIN_S = 0.5  # on a disk that works it takes a tenth


class Program(QObject):
    """The running program. `start` shows the window at once; `ready` follows with the pages."""

    ready = Signal()

    def __init__(
        self,
        app: QApplication,
        settings: QSettings,
        log_path: Path,
        now: Callable[[], float] = time.time,
        steady: Callable[[], float] | None = None,
        awake: Callable[[], float] | None = None,
    ) -> None:
        """`now`: seconds since 1970-01-01 UTC. `steady`: a clock that nobody sets, to see when
        someone sets the other; None when there is none. `awake`: one that stands during sleep.
        """
        super().__init__()
        self._now = now
        self.theme = Theme(app, settings)
        self.window = Window(self.theme, now)
        self._remembered = WindowGeometry(self.window, settings)
        self._sounds = Sounds(settings, parent=self)
        self._awake = Awake(parent=self)
        self.session: Session | None = None
        self._tonight: Snapshot | None = None
        self._budget_goal: BudgetGoal | None = None
        self._field: FieldInView | None = None
        self._is_closed = False
        self._idle = Idle(self)
        self._warm_up = StartupLoader(log_path, now, self)
        self._warm_up.warm.connect(self._build)
        self._warm_up.storage_trouble.connect(self._storage_trouble)
        self._warm_up.notice.connect(self.window.say)
        self.window.closing.connect(self.close)
        self._standing = Text("", "alarm")
        self._standing.setContentsMargins(16, 8, 16, 8)
        self._standing.hide()
        self.window.show_above(self._standing)
        self._guide = FirstRun(settings)
        self._guide.site_wanted.connect(lambda: self.window.show_page(SITE))
        self.window.show_above(self._guide)
        self.window.file_dropped.connect(self._import_log)
        self.window.language_wanted.connect(self._keep_language)
        self._settings = settings
        self.window.may_close = CloseGuard(self.window, self._is_kept, self._readings).may_close
        self._clock_watch = ClockWatch(now, steady or now, self, awake)
        self._clock_watch.slept.connect(self._woke)
        self._clock_watch.jumped.connect(self.window.say)

    def guide(self) -> FirstRun:
        """The guide for the first start."""
        return self._guide

    def standing(self) -> str:
        """What is wrong with the log of nights, on every page as long as it is so."""
        return self._standing.text()

    def start(self) -> None:
        self.window.show()
        self._clock_watch.start()
        self._warm_up.start()

    def close(self) -> None:
        """Stops every source, thread and timer, with everything on disk; may be called twice."""
        if self._is_closed:
            return
        self._is_closed = True
        self._idle.close()
        self.theme.close()
        self._remembered.keep()
        self._awake.keep(False)
        self._sounds.close()
        self._clock_watch.stop()
        self._warm_up.wait()
        if self._budget_goal is not None:
            self._budget_goal.close()
        for name in STOPPED:
            page = self.window.page(name)
            if page is not None:
                page.stop()  # type: ignore[attr-defined]
        if self.session is not None:
            self.session.close()
        if self._warm_up.made is not None:
            self._warm_up.made.log.close()

    def _import_log(self, path: Path) -> None:
        """A file dropped on the window: the Log page takes its own, the rest are drift logs."""
        from app.pages.drift.page import DriftPage
        from app.pages.log.page import LogPage

        if self.session is None:
            self.window.say(
                self.tr("The program is not ready yet: drop the file once more."), "drop"
            )
            return
        log = self.window.page(LOG)
        if isinstance(log, LogPage) and log.isVisible() and log.takes(path):
            log.take_file(path)
            return
        self.window.show_page(DRIFT)
        page = self.window.page(DRIFT)
        if isinstance(page, DriftPage):
            page.import_log(path)

    def _keep_language(self, code: str) -> None:
        self._settings.setValue(translation.SETTING, code)
        name = translation.NAMES[code]
        said = self.tr("From the next start on: {language}.").format(language=name)
        self.window.say(said, "language")

    def _is_kept(self) -> bool:
        """Whether all that was measured is on disk."""
        if self._is_closed or self._warm_up.made is None or self._tonight is None:
            return True
        snapshot = self._tonight
        log = self._warm_up.made.log
        has_measured = snapshot.axis_state > 1 or bool(snapshot.legs) or log.has_said
        return not has_measured or log.flush(KEPT_WITHIN_S)

    def _readings(self) -> str:
        from app.night.snapshot import as_drift_log

        return "" if self._tonight is None else as_drift_log(self._tonight)

    def _build(self, warm: StartupLoad) -> None:
        from app.night.session import Session

        if self._is_closed:  # the window was closed before it was filled
            return
        session = Session(log=warm.log, parent=self)
        session.resume(warm.night)
        self.session = session
        session.follow(self._keep, readings=True)
        shared = self._shared(warm, session)
        self.window.offer(PageMaking(self.window, self.theme, shared, self).entries())
        session.follow(self._show)
        # A star that was being watched waits for nobody: then the night opens where it was.
        first = TONIGHT if self._tonight is None or self._tonight.watching is None else DRIFT
        self._idle.do(
            [
                *self.window.building(first),
                lambda: self.window.show_page(first),
                *self.window.building(DRIFT),
                spare_what_is_loaded,
                self.ready.emit,
                self._prepare_drift,
                self._prepare_pages,
            ]
        )

    def _shared(self, warm: StartupLoad, session: Session) -> Shared:
        """What several pages look at, made once."""
        from app.night.budget import Budget, BudgetGoal
        from app.night.equipment import Equipment, FieldInView
        from app.night.notes import FlipBook, NightBook
        from app.night.places import Places

        places = Places(warm.log)
        equipment = Equipment(warm.log, self)
        budget = Budget(warm.log, equipment, self)
        evening = evening_of(session, places, warm.log, equipment, self._now, own_zone(), self)
        book = NightBook(warm.log, warm.night.entries, self._now, self)
        flips = FlipBook(warm.log, warm.night.entries, self._now, self)
        keep_surroundings(book, session, equipment, evening)
        follow_equipment(session, equipment)
        self._budget_goal = BudgetGoal(session, budget, evening.plans, self)
        self._field = FieldInView(warm.log, equipment, self)
        return Shared(
            self._now,
            warm,
            session,
            places,
            equipment,
            budget,
            evening,
            book,
            flips,
            self._sounds,
            self._field,
            self._awake,
        )

    def _keep(self, snapshot: Snapshot) -> None:
        self._tonight = snapshot

    def _woke(self, slept_s: float) -> None:
        if self.session is not None and self._field is not None:
            self.session.woke(slept_s, self._now(), self._field.now().across_arcmin)

    def _prepare_pages(self) -> None:
        """Asked only now, so that the drift page's own parts come first."""
        self._idle.do([*self.window.unbuilt(), self._prepare_evening])

    def _prepare_evening(self) -> None:
        """The parts of these pages that are not shown at first, one by one."""
        evening = (self.window.page(name) for name in (ROTATION, PLAN))
        self._idle.do(evening_unbuilt(evening))
        self._idle.do(tracking_unbuilt(self.window.page(TRACKING)))
        self._idle.do(log_unbuilt(self.window.page(LOG)))

    def _prepare_drift(self) -> None:
        """What is asked for next on the page that is needed most."""
        from app.pages.drift.page import DriftPage

        page = self.window.page(DRIFT)
        if isinstance(page, DriftPage):
            self._idle.do(page.unbuilt())

    def _show(self, snapshot: Snapshot) -> None:
        self.window.show_site(snapshot.site)
        # While a star is watched or the bolts are turned nobody touches the computer.
        is_away = snapshot.guide.stage.name in AWAKE_STAGES
        self._awake.keep(is_away and not self._is_closed)  # an answer may come after the end

    def _storage_trouble(self, sentence: str | None) -> None:
        """On every page, until it is so no more."""
        self._standing.say(sentence or "")
