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
    another one came into view. `practise` makes a session without a log. Tonight's session belongs
    to whoever made it, a practice one to this object: call `close` before letting go.
    """

    changed = Signal(object)  # a Snapshot
    reading_added = Signal()
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
        self._pass_on(tonight)

    @property
    def session(self) -> Session:
        """The one in view."""
        return self._practice or self.tonight

    @property
    def is_practice(self) -> bool:
        return self._practice is not None

    def snapshot(self) -> Snapshot:
        """Of the session in view."""
        return self.session.snapshot()

    def begin_practice(self, site: Site, air: Air) -> Session:
        """A fresh practice night at a place, with tonight's aim and target; it comes into view."""
        self.close()
        wanted = self.tonight.snapshot()
        practice = self._practise()
        practice.set_site(site, air)
        practice.set_aim(wanted.aim)
        practice.set_target(wanted.target_arcmin)
        self._practice = practice
        self._pass_on(practice)
        self.switched.emit()
        return practice

    def end_practice(self) -> None:
        """Tonight comes back into view as it was; nothing of the practice is left."""
        if self.is_practice:
            self.close()
            self.switched.emit()

    def close(self) -> None:
        """Ends a practice night that is under way; tonight's session is left alone."""
        practice, self._practice = self._practice, None
        if practice is not None:
            practice.close()
            practice.deleteLater()

    def _pass_on(self, session: Session) -> None:
        def changed(snapshot: Snapshot) -> None:
            if session is self.session:
                self.changed.emit(snapshot)

        def reading_added() -> None:
            if session is self.session:
                self.reading_added.emit()

        session.changed.connect(changed)
        session.reading_added.connect(reading_added)
