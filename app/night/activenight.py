"""Which session is looked at: tonight's own, or one for practice beside it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from app.night.session import Session
from app.night.snapshot import Snapshot
from core.sky.site import Air, Site


class ActiveNight(QObject):
    """Practice has a session that keeps nothing, so that tonight's is never touched by it.

    `changed` and `reading_added` pass on what the session in view says; `switched` tells that
    another one comes into view, whose snapshot follows. `practise` makes a session without a log.
    Tonight's session belongs to whoever made it, a practice one to this object: call `close` before
    letting go.
    """

    changed = Signal(object)  # a Snapshot
    reading_added = Signal(object)  # a Snapshot
    switched = Signal()

    def __init__(
        self,
        tonight: Session,
        practise: Callable[[], Session] = Session,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._practise = practise
        self._practice: Session | None = None
        self.tonight = tonight
        self._of_tonight: Snapshot
        tonight.follow(self._keep)
        self._told = self._of_tonight
        self._pass_on(tonight)

    @property
    def session(self) -> Session:
        """The one in view."""
        return self._practice or self.tonight

    @property
    def is_practice(self) -> bool:
        return self._practice is not None

    def follow(self, take: Callable[[Snapshot], object]) -> None:
        """Every snapshot of the session in view from now on, and the newest at once."""
        self.changed.connect(take)
        take(self._told)

    def _keep(self, snapshot: Snapshot) -> None:
        self._of_tonight = snapshot

    def begin_practice(self, site: Site, air: Air) -> Session:
        """A fresh practice night at a place, with tonight's aim and target; it comes into view."""
        self.close()
        wanted = self._of_tonight
        practice = self._practise()
        practice.set_site(site, air)
        practice.set_aim(wanted.aim)
        practice.set_target(wanted.target_arcmin)
        self._practice = practice
        self.switched.emit()
        self._pass_on(practice)
        return practice

    def end_practice(self) -> None:
        """Tonight comes back into view as it was; nothing of the practice is left."""
        if self.is_practice:
            self.close()
            self.switched.emit()
            self._tell(self._of_tonight)

    def close(self) -> None:
        """Ends a practice night that is under way; tonight's session is left alone."""
        practice, self._practice = self._practice, None
        if practice is not None:
            practice.close()
            practice.deleteLater()

    def _pass_on(self, session: Session) -> None:
        def changed(snapshot: Snapshot) -> None:
            if session is self.session:
                self._tell(snapshot)

        def reading_added(snapshot: Snapshot) -> None:
            if session is self.session:
                self._told = snapshot
                self.reading_added.emit(snapshot)

        session.follow(changed)
        session.reading_added.connect(reading_added)

    def _tell(self, snapshot: Snapshot) -> None:
        self._told = snapshot
        self.changed.emit(snapshot)
