"""What the Tracking page has to look at, and the study of it, made anew at every change."""

from __future__ import annotations

from dataclasses import asdict, replace
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal

from app.pages.tracking.figures import KEY, Figures, from_kept, to_keep
from app.pages.tracking.job import Job
from app.pages.tracking.keeping import Keeping
from app.pages.tracking.liverun import LiveRun
from app.pages.tracking.parts import TrackingParts
from app.pages.tracking.question import Given, Place, Question, Reversal, Tap
from core.alignment.driftlog.records import Leg
from core.language import marked, say
from core.night.record import Purpose
from core.tracking.pointing import Sighting

if TYPE_CHECKING:
    from app.pages.tracking.study import Study
    from app.session.session import Session
    from app.session.snapshot import Snapshot
    from core.alignment.axis.solution import Solution
    from core.sky.site import Air, Site

STARS_KEY = "tracking stars"
STOPPED = marked(
    "The computation was stopped before its end. Change anything, and it begins again."
)
FAULT = marked("The computation broke off because of a fault in the program. Report it.")


class Bench(QObject):
    """`changed` tells that something to look at, a figure or the study is another one."""

    changed = Signal()

    def __init__(
        self, session: Session, parts: TrackingParts, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._session = session
        self.parts = parts
        self.typed = from_kept(parts.log.get_setting(KEY))
        self.study: Study | None = None
        self.fault = ""
        self.run: Given | None = None
        self.guided: Given | None = None
        self.reversal: Reversal | None = None
        self.sightings: tuple[Sighting, ...] = _read_stars(parts.log.get_setting(STARS_KEY))
        self.pointed_from: Place | None = None
        self.before: Tap | None = None
        self.after: Tap | None = None
        self._run_key: int | None = None  # of the run in the log of nights
        self._kept_run: tuple[Leg, int | None] | None = None
        self._run_axis_state = 0
        self._guided_key: int | None = None
        self._keeping = Keeping(parts.log, lambda: self._guided_key)
        self._is_watched, self._is_stale = False, False
        self._place: tuple[Site | None, Air | None] = (None, None)
        self._solution: Solution | None = None
        self._here: Place | None = None
        self.job = Job(self)
        self.live = None if parts.live is None else LiveRun(self, parts.live, self)
        self.job.done.connect(self._take)
        session.changed.connect(self._session_changed)
        if parts.budget is not None:
            parts.budget.changed.connect(self.work)

    def begin(self) -> None:
        """Goes on with the run and the stars of this night."""
        stored = self.parts.earlier
        if stored is not None:
            is_practice = stored.purpose == Purpose.PRACTICE
            axis_state = self._session.snapshot().axis_state
            # Once the bolts were turned nobody knows whether that was before the run or after.
            given = Given(
                stored.leg,
                stored.leg.label,
                _practice_place() if is_practice else None,
                is_practice=is_practice,
                is_tonight=axis_state == 1 and not is_practice,
                kept_as=stored.leg_id,
            )
            here = self.here()
            self.run = given if here is None else given.placed(here)
            self._run_key, self._run_axis_state = stored.leg_id, axis_state
        guided = self.parts.guided
        if guided is not None:
            self.guided = Given(guided.leg, guided.leg.label, is_kept=True)
            self._guided_key = guided.leg_id
        self.before, self.after = self._keeping.take_up(self.parts.entries)
        if self._has_any():
            self.work()

    def figures(self) -> Figures:
        """What is typed, over what tonight's exposure and common practice say."""
        return self.typed.over(self.parts.usual())

    def here(self) -> Place | None:
        """Tonight's place with what is known of the axis; the same object while nothing changes."""
        from core.imaging.tolerance import Alignment

        shown = self._session.snapshot()
        solution = None if shown.solution_is_stale else shown.solution
        place = (shown.site, shown.air)
        if place != self._place or solution is not self._solution:
            self._place, self._solution = place, solution
            self._here = None
            if shown.site is not None and shown.air is not None:
                known = None if solution is None else Alignment.of(solution)
                self._here = Place(shown.site, shown.air, known)
        return self._here

    def snapshot(self) -> Snapshot:
        return self._session.snapshot()

    def want(self, **figures: Any) -> None:
        """Keeps figures typed; None for one that was cleared."""
        self.typed = replace(self.typed, **figures)
        self.parts.log.put_setting(KEY, to_keep(self.typed))
        self.work()

    def take_run(self, given: Given) -> None:
        """Keeps it in the log of nights unless it is invented."""
        self.run = given
        self._run_axis_state = self._session.snapshot().axis_state
        self._kept_run, self._run_key = None, given.kept_as
        if not given.is_practice:
            key = given.kept_as if given.is_kept else self.parts.keep_run(given.leg)
            self._kept_run, self._run_key = (given.leg, key), key
        self.work()

    def leave_run_out(self) -> None:
        """On disk it is only marked."""
        if self._run_key is not None:
            self.parts.log.discard_leg(self._run_key)
        self.run, self._kept_run, self._run_key = None, None, None
        self.work()

    def leave_guided_out(self) -> None:
        """On disk it is only marked."""
        if self._guided_key is not None:
            self.parts.log.discard_leg(self._guided_key)
        self.guided, self._guided_key = None, None
        self.work()

    def take_guided(self, given: Given) -> None:
        """Keeps it in the log of nights unless it is invented."""
        self.guided, self._guided_key = given, given.kept_as
        if not (given.is_practice or given.is_kept):
            self._guided_key = self.parts.keep_run(given.leg, Purpose.GUIDING)
        self.work()

    def take_reversal(self, reversal: Reversal | None) -> None:
        self.reversal = reversal
        self.work()

    def take_sightings(self, sightings: tuple[Sighting, ...], place: Place | None) -> None:
        """`place`: None for tonight's; those of another place are not kept."""
        self.sightings = sightings
        self.pointed_from = place
        self._keeping.stars_are_of_tonight = place is None
        if place is None:
            kept = [asdict(one) for one in sightings]
            self.parts.log.put_setting(STARS_KEY, kept)
        self.work()

    def take_tap(self, tap: Tap | None, is_after: bool) -> None:
        if is_after:
            self.after = tap
        else:
            self.before = tap
        self.work()

    def close(self) -> None:
        if self.live is not None:
            self.live.close()
        self.job.close()

    def work(self) -> None:
        """Asks anew; the newest question wins."""
        self._is_stale = False
        if not self._has_any():
            self.study, self.fault = None, ""
            self.changed.emit()
            return
        asked, old = self._question(), self.study

        def work(keep_going: Any) -> Study | None:
            from app.pages.tracking.study import work_out

            return work_out(asked, old, keep_going)

        self.job.send(work)
        self.changed.emit()

    def stop(self) -> None:
        """Gives up what is being worked out."""
        self.job.stop()
        self.fault = say(STOPPED)
        self.changed.emit()

    def _has_any(self) -> bool:
        """Whether there is something to work out."""
        figures = self.typed
        readings = (self.run, self.guided, self.reversal, self.before, self.after)
        has_load = None not in (figures.payload_kg, figures.capacity_kg)
        return any(one is not None for one in readings) or bool(self.sightings) or has_load

    def _question(self) -> Question:
        here = self.here()
        return Question(
            figures=self.figures(),
            here=here,
            optics=self.parts.optics(),
            solution=self._session.snapshot().solution,
            run=self.run,
            guided=self.guided,
            reversal=self.reversal,
            sightings=self.sightings,
            pointed_from=self.pointed_from or here,
            before=self.before,
            after=self.after,
        )

    def _take(self, answer: object) -> None:
        from app.pages.tracking.study import Study

        if isinstance(answer, Study):
            self.study, self.fault = answer, ""
            self._keep_result(answer)
            self._keeping.keep(answer)
        else:
            self.fault = say(FAULT)
        self.changed.emit()

    def _keep_result(self, study: Study) -> None:
        """Once a run, when it tells its periodic error."""
        found, run = study.drive.periodic.value, study.question.run
        if found is None or run is None or self._kept_run is None:
            return
        if run.leg is not self._kept_run[0]:
            return
        key, self._kept_run = self._kept_run[1], None
        sentences = [found.sentence]
        if study.drive.training.value is not None:
            sentences.append(study.drive.training.value.sentence)
        self.parts.keep_result(
            {
                "leg": key,
                "periodic_error_arcsec": found.size.peak_to_peak_arcsec,
                "worm_period_s": found.period_s,
                "sentences": sentences,
            }
        )

    def _session_changed(self, shown: Snapshot) -> None:
        before = self._here
        here = self.here()
        if here is before:
            return
        run = self.run
        if run is not None and here is not None:
            same_axis = shown.axis_state == self._run_axis_state
            self.run = run.placed(here if same_axis else here.without_axis())
        if self.run is not run or self.sightings:
            self._is_stale = True
            self._catch_up()

    def watch(self, is_watched: bool) -> None:
        """Whether the page is in view; out of view nothing is worked out for a better axis."""
        self._is_watched = is_watched
        self._catch_up()

    def _catch_up(self) -> None:
        if self._is_watched and self._is_stale:
            self.work()


def _practice_place() -> Place:
    from app.pages.tracking.practice import practice_place

    return practice_place()


def _read_stars(kept: Any) -> tuple[Sighting, ...]:
    """None where what was kept cannot be used."""
    if not isinstance(kept, list):
        return ()
    try:
        return tuple(Sighting(**one) for one in kept)
    except TypeError:
        return ()
