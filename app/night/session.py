"""What is wrong tonight, gathered into words for the person."""

from __future__ import annotations

from collections.abc import Callable
from enum import IntEnum

from PySide6.QtCore import QObject, Qt, Signal

from app.devices.source import Reading
from app.night.joining import Joining
from app.night.procedure import Procedure
from app.night.question import AxisAnswer, AxisQuestion, work_out
from app.night.recorder import LogOfNight, Recorder
from app.night.snapshot import How, KnownNorth, NorthSet, Snapshot
from app.night.solver import SolverThread
from app.night.tonight import StepRefused, Tonight
from app.store.records import StoredNight
from app.workers.clocks import woken
from app.workers.yielding import window_works
from core.alignment.driftlog.records import DriftLog, Leg
from core.alignment.goal import Aim, Allowed
from core.alignment.guide.bolts import Base, BoltTurn
from core.language import marked, say
from core.mount.equipment import Mount, Telescope
from core.sky.refraction import standard_pressure_hpa
from core.sky.site import Air, Site

NO_SITE = marked(
    "The place you stand on is not known, so the axis error cannot be "
    "computed yet: enter latitude and longitude on the Site page. The "
    "readings are kept."
)


class Trouble(IntEnum):
    """Where a problem comes from; the first come first in what is read."""

    STORAGE = 0
    CLOCK = 1
    READING = 2
    SITE = 3
    SOLUTION = 4


class Problems:
    """At most one sentence from each place; the newest replaces the one before."""

    def __init__(self) -> None:
        self._sentences: dict[Trouble, str] = {}

    def put(self, trouble: Trouble, sentence: str | None) -> bool:
        """Say or take back a sentence; returns whether that changed anything."""
        if self._sentences.get(trouble) == sentence:
            return False
        if sentence is None:
            del self._sentences[trouble]
        else:
            self._sentences[trouble] = sentence
        return True

    def text(self) -> str | None:
        """All that is wrong, most pressing first, or None when all is well."""
        return " ".join(self._sentences[key] for key in sorted(self._sentences)) or None


# Tonight as a question to the computation.


def question_of(
    revision: int,
    tonight: Tonight,
    procedure: Procedure,
    legs: tuple[Leg, ...],
    place: tuple[Site, Air],
) -> AxisQuestion:
    """About these legs, as the night stands at a place."""
    asked = {leg.label for leg in legs}
    guide = procedure.guide
    is_doubtful = guide.north is KnownNorth.UNKNOWN
    return AxisQuestion(
        revision,
        legs,
        *place,
        tonight.aim,
        tonight.goal.arcmin,
        tonight.watching if tonight.watching in asked else None,
        None if is_doubtful else procedure.before(),
        guide.last_turn,
        tonight.previous_legs if is_doubtful else (),
        tonight.priors,
    )


# The owner of tonight's state: takes readings and steps in, gives snapshots out.


class Session(QObject):
    """Lives in the thread of the window; a worker thread of its own computes.

    `compute` answers a `Question` in that thread. `log` keeps everything at once; None keeps
    nothing. Call `close` before letting go.
    """

    changed = Signal(object)  # a Snapshot, at every step and setting and at every answer
    reading_added = Signal(object)  # a Snapshot, at every reading
    _storage_reported = Signal(object)

    def __init__(
        self,
        compute: Callable[[AxisQuestion], AxisAnswer] = work_out,
        log: LogOfNight | None = None,
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        keeper = Recorder(log, self.report_storage)
        self._tonight = Tonight(keeper)
        self._procedure = Procedure(self._tonight, keeper)
        self._problems = Problems()
        self._revision = 0
        self._answer = AxisAnswer(0)
        self._is_stale = False
        self._storage_reported.connect(self._take_storage_report)
        self._told = self._snapshot()
        self._solver = SolverThread(compute, self)
        self._solver.answered.connect(self._take_answer, Qt.ConnectionType.QueuedConnection)
        self._solver.start()

    def resume(self, night: StoredNight) -> None:
        """Open the night as the log of nights gives it back; once, before any step."""
        self._tonight.resume(night)
        self._procedure.resume(night.night_id)
        self._step_taken()

    def close(self) -> None:
        """Stop computing; the night stays open, and the log writes what is left when it closes."""
        self._solver.close()

    def follow(self, take: Callable[[Snapshot], object], readings: bool = False) -> None:
        """Whoever shows the night gets every snapshot from now on, and the newest at once.

        `readings`: at every reading too, for those who only keep it.
        """
        self.changed.connect(take)
        if readings:
            self.reading_added.connect(take)
        take(self._told)

    def _tell(self) -> None:
        self._told = self._snapshot()
        self.changed.emit(self._told)

    def _tell_reading(self) -> None:
        self._told = self._snapshot()
        self.reading_added.emit(self._told)

    def _snapshot(self) -> Snapshot:
        """The state as it stands; costs no copy of readings."""
        tonight, answer = self._tonight, self._answer
        return Snapshot(
            tonight.site,
            tonight.air,
            tonight.aim,
            tonight.goal,
            tonight.axis_state,
            tonight.leg_views(),
            tonight.watching,
            answer.solution,
            answer.advice,
            answer.forecast,
            self._is_stale,
            self._problems.text(),
            self._procedure.view(answer.solution, answer.judgement, answer.surprise),
            tonight.north_set,
            tonight.priors,
            frozenset(tonight.exchanged),
        )

    def set_site(self, site: Site, air: Air | None = None) -> None:
        """Say where the mount stands; without `air`, that of the standard atmosphere there."""
        standard = Air(standard_pressure_hpa(site.elevation_m), pressure_is_assumed=True)
        self._tonight.set_site(site, air or standard)
        self._step_taken()

    def use_equipment(self, mount: Mount | None, telescope: Telescope | None) -> None:
        """Whose bolts are turned tonight and which tube may yield; None while not chosen."""
        before = self._tonight.priors
        self._tonight.mount, self._tonight.telescope = mount, telescope
        self._procedure.use_mount(mount)
        if self._tonight.priors != before:
            self._step_taken()
        else:
            self._tell()

    def set_north_set(self, north_set: NorthSet) -> None:
        """Say how well north of the eyepiece or camera was set."""
        self._tonight.set_north_set(north_set)
        self._step_taken()

    def set_aim(self, aim: Aim) -> None:
        """Choose which pole to align on."""
        self._tonight.set_aim(aim)
        self._step_taken()

    def set_target(self, arcmin: float) -> None:
        """The person chooses how near the axis is to come."""
        self._tonight.set_target(arcmin)
        self._step_taken()

    def clear_target(self) -> None:
        """Back to what tonight's budget allows, or the usual figure."""
        self._tonight.set_target(None)
        self._step_taken()

    def follow_budget(self, allowed: Allowed | None) -> None:
        """What tonight's budget allows; the goal unless the person has set one."""
        if allowed != self._tonight.allowed:
            self._tonight.follow_budget(allowed)
            self._step_taken()

    def begin_leg(self, star_name: str, ra_deg: float, dec_deg: float) -> str:
        """Watch a star (ICRS place tonight) from now on; ends the leg under way. Its label."""
        label = self._procedure.begin_leg(star_name, ra_deg, dec_deg)
        self._step_taken()
        return label

    @window_works()
    def add_reading(self, reading: Reading) -> None:
        """Take one reading of the star under way; one that cannot be used is refused aloud."""
        if self._procedure.take_while_turning(reading):
            self._tell_reading()
            return
        try:
            notice = self._tonight.add_reading(reading)
        except StepRefused as reason:
            self._say(Trouble.READING, str(reason))
            return
        self._say(Trouble.READING, None)
        if notice:
            self._procedure.note_label()
            self._step_taken(notice)
        else:
            self._ask()
        self._tell_reading()

    def remove_last_reading(self) -> bool:
        """Take the newest reading of the leg under way back; False when there is none."""
        removed = self._tonight.remove_last_reading()
        if removed:
            self._step_taken()
        return removed

    def end_leg(self) -> None:
        """Stop watching; the leg stays in the solution."""
        self._procedure.end_leg(self._answer.solution)
        self._step_taken()

    def discard_leg(self, label: str) -> None:
        """Leave a leg of this axis state out; on disk it is only marked."""
        try:
            self._procedure.discard_leg(label)
        except StepRefused as reason:
            self._say(Trouble.READING, str(reason))
            return
        self._step_taken()

    def exchange_leg(self, label: str) -> None:
        """Take north for south in a leg of this axis state, or back again."""
        self._procedure.exchange_leg(label)
        self._forget()
        self._step_taken()

    def begin_turning(self) -> None:
        """The bolts are about to be turned; the leg under way ends, its star stays in view."""
        self._procedure.begin_turning(self._answer.solution)
        self._step_taken()

    def bolts_turned(
        self,
        how: How = How.UNKNOWN,
        turn: BoltTurn | None = None,
        counted: tuple[float | None, float | None] = (None, None),
    ) -> None:
        """The axis has moved: a new axis state begins, with what the turn lets one know.

        `counted`: turns of the azimuth and the altitude bolt, as the person counted them.
        """
        self._procedure.turned(how, turn, counted, self._answer.solution)
        self._step_taken()

    def tripod_moved(self) -> None:
        """The whole mount was moved: begin a new axis state and know nothing."""
        self._procedure.tripod_moved()
        self._step_taken()

    def accept(self) -> None:
        """The person takes the alignment for good enough."""
        self._procedure.accept(self._answer.solution)
        self._step_taken()

    def look_again(self) -> None:
        """Back to the choice of a star."""
        self._procedure.look_again()
        self._step_taken()

    def doubt_north(self) -> None:
        """The person cannot tell which way north is in the field."""
        self._procedure.doubt_north()
        self._step_taken()

    def find_north(self, north: KnownNorth) -> None:
        """North is known, or (UNKNOWN) the next turn of the bolts is to tell."""
        self._procedure.find_north(north)
        self._step_taken()

    def set_base(self, base: Base) -> None:
        """Say how the base of the mount leans."""
        self._procedure.set_base(base)
        self._step_taken()

    def woke(self, slept_s: float, utc_s: float, across_arcmin: float) -> None:
        """The computer slept for so long until now, `utc_s`; the star under way may have left a
        field so wide, or the gap be too long."""
        label = self._tonight.watching
        if label is None:
            return
        owned = self._tonight.legs[label]
        found = woken(owned.buffer.leg(), slept_s, utc_s, across_arcmin)
        if found.begins_anew:
            self._procedure.begin_leg(owned.star_name, owned.buffer.ra_deg, owned.buffer.dec_deg)
        self._step_taken(found.sentence)

    def take_leg(self, star_name: str, leg: Leg) -> str:
        """Take a leg measured as a whole, such as the shortest form; returns its new label."""
        label = self._tonight.take_leg(star_name, leg)
        self._step_taken()
        return label

    def question_on(self, log: DriftLog) -> str:
        """What the person has to be asked before `take_log`; empty when nothing has to be."""
        return self._tonight.question_on(log)

    def take_log(self, log: DriftLog) -> Joining:
        """Take a drift log into this axis state, and its place where none is known."""
        taken = self._tonight.take_log(log)
        self._step_taken()
        return taken

    def take_log_apart(self, log: DriftLog) -> Joining:
        """Take a drift log into an axis state of its own; the legs so far end."""
        self._procedure.set_apart(self._answer.solution)
        return self.take_log(log)

    def report_storage(self, sentence: str | None) -> None:
        """Say that the log of nights fails, or (None) works again; from any thread."""
        self._storage_reported.emit(sentence)

    def _take_storage_report(self, sentence: str | None) -> None:
        self._say(Trouble.STORAGE, sentence)

    def _step_taken(self, notice: str | None = None) -> None:
        """After a step or setting: what was computed is stale, and a notice has been read."""
        self._revision += 1
        self._is_stale = self._answer.solution is not None
        self._problems.put(Trouble.CLOCK, notice)
        self._problems.put(Trouble.READING, None)
        self._ask()
        self._tell()

    def _say(self, trouble: Trouble, sentence: str | None) -> None:
        if self._problems.put(trouble, sentence):
            self._tell()

    def _ask(self) -> None:
        """Ask for a solution of what is there; without legs there is nothing to know."""
        tonight = self._tonight
        legs = tonight.usable_legs()
        self._problems.put(Trouble.SITE, say(NO_SITE) if self._needs_site() else None)
        if not legs:
            self._forget()
        elif tonight.site is not None and tonight.air is not None:
            place = tonight.site, tonight.air
            self._solver.ask(question_of(self._revision, tonight, self._procedure, legs, place))

    def _needs_site(self) -> bool:
        return self._tonight.site is None and bool(self._tonight.legs)

    def _forget(self) -> None:
        self._answer = AxisAnswer(self._revision)
        self._is_stale = False
        self._problems.put(Trouble.SOLUTION, None)

    @window_works()
    def _take_answer(self, answer: AxisAnswer) -> None:
        """Show an answer unless a step has overtaken it; after a failure the old one stays."""
        if answer.revision != self._revision or not self._tonight.usable_legs():
            return
        self._problems.put(Trouble.SOLUTION, answer.problem)
        if answer.problem is None:
            self._answer = answer
            self._take_north(answer)
        self._is_stale = answer.problem is not None and self._answer.solution is not None
        self._tell()

    def _take_north(self, answer: AxisAnswer) -> None:
        """The turn of the bolts has told which way north is."""
        if answer.north is None or self._procedure.guide.north is not KnownNorth.UNKNOWN:
            return
        self._procedure.set_north(answer.north)
        self._step_taken()
