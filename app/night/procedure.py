"""The person's steps through the night: each changes the stage, the legs and what is on disk."""

from __future__ import annotations

from app.devices.source import Reading
from app.night.bolts import ALTITUDE, AZIMUTH, BoltCalibration, Steering
from app.night.recorder import Recorder
from app.night.snapshot import (
    ADVISED_TURN,
    BoltView,
    Guide,
    GuideView,
    How,
    KnownNorth,
    Surprise,
    TurnMade,
    aim_on_sky,
    as_json,
    from_json,
    information_of,
    off_by,
    wanted_turn,
    wanted_width,
)
from app.night.tonight import Tonight
from core.alignment.axis.evidence import PriorAxis
from core.alignment.axis.solution import Solution
from core.alignment.guide.bolts import Base, BoltTurn, TurnUnseen
from core.alignment.guide.judgement import Judgement, chance_within, judge
from core.alignment.guide.procedure import ProcedureEvent, Stage
from core.mount.equipment import Mount


class Procedure:
    """Qt-free. `solution`, where it is asked for, is the newest of the present axis state."""

    def __init__(self, tonight: Tonight, keeper: Recorder) -> None:
        self._tonight = tonight
        self._keeper = keeper
        self.guide = Guide()
        self._book = BoltCalibration(keeper if keeper.keeps else None)
        self._steering: Steering | None = None
        self._key = ""
        self._share_exchanged()

    def resume(self, night_id: int) -> None:
        """Go on at the very step; once, after `Tonight.resume`."""
        self._key = f"guide {night_id}"
        self.guide = from_json(self._keeper.get_setting(self._key))
        if self.guide.axis_state == self._tonight.axis_state + 1:
            self._tonight.turn_bolts()  # the program was killed between the two
        self.guide.agree_with(self._tonight.axis_state, self._tonight.watching)
        self._share_exchanged()

    def _share_exchanged(self) -> None:
        self._tonight.exchanged = self.guide.exchanged

    def before(self) -> PriorAxis | None:
        """What the last turn lets one know of the axis without looking."""
        made, site = self.guide.last_turn, self._tonight.site
        return None if made is None or site is None else made.expected(site)

    def begin_leg(self, star_name: str, ra_deg: float, dec_deg: float) -> str:
        """A star is in view."""
        self._steering = None
        self.guide.happened(ProcedureEvent.STAR_TAKEN)
        label = self._tonight.begin_leg(star_name, ra_deg, dec_deg)
        self.note_label()
        self._keep()
        return label

    def note_label(self) -> None:
        """A leg was begun, by the person or because the clock was set."""
        if self.guide.north is KnownNorth.EXCHANGED and self._tonight.watching is not None:
            self.guide.exchanged.add(self._tonight.watching)

    def end_leg(self, solution: Solution | None) -> None:
        """The star has told enough, or is lost."""
        self._tonight.end_leg()
        if self.guide.stage is Stage.WATCH:
            self.guide.happened(ProcedureEvent.LEG_ENOUGH)
        self._note_result(solution)
        self._keep()

    def discard_leg(self, label: str) -> None:
        """Leave a leg out, or raise Refused; the star under way is lost with it."""
        was_watched = self._tonight.watching == label
        self._tonight.discard_leg(label)
        if was_watched and self.guide.stage is Stage.WATCH:
            self.guide.happened(ProcedureEvent.STAR_LOST)
        self._keep()

    def exchange_leg(self, label: str) -> None:
        """Read a leg with north and south exchanged from what they were; again: as before."""
        self.guide.exchanged ^= {label} & set(self._tonight.legs)
        self._keep()

    def begin_turning(self, solution: Solution | None) -> None:
        """The bolts will be turned now; the star in view stays in view."""
        if self.guide.stage is Stage.TURN:
            return
        self._steering = self._steering_of(solution)
        self._tonight.end_leg()
        self.guide.happened(ProcedureEvent.TURN_WORTHWHILE)
        self._note_result(solution)
        self._keep()

    def _steering_of(self, solution: Solution | None) -> Steering | None:
        tonight = self._tonight
        read = [leg for leg in tonight.leg_views() if leg.utc_s.size]
        known = self.before() if solution is None else solution.knowledge
        if not read or known is None or tonight.site is None or tonight.air is None:
            return None
        return Steering(read[-1], known, tonight.site, tonight.air, self.guide.base)

    def take_while_turning(self, reading: Reading) -> bool:
        """Whether a reading belongs to the turn rather than to a leg."""
        if self.guide.stage is not Stage.TURN or self._tonight.watching is not None:
            return False
        if self._steering is not None:
            self._steering.add(reading)
        return True

    def turned(
        self,
        how: How,
        turn: BoltTurn | None,
        counted: tuple[float | None, float | None],
        solution: Solution | None,
    ) -> None:
        """The bolts are turned: a new axis state begins, with what the turn lets one know."""
        was = self.before() if solution is None else solution.knowledge
        seen = None
        if how is How.SEEN and turn is not None and self._steering is not None:
            seen = self._steering.accuracy(turn, self._tonight.priors)
        made = TurnMade(
            *(self._last_utc_s(), how, turn, *counted, was, self.guide.base, self._book.key, seen)
        )
        self._note_result(solution)
        self._keeper.put_adjustment(turn, counted)
        self._begin_axis_state(ProcedureEvent.BOLTS_TURNED, made)

    def tripod_moved(self) -> None:
        """Everything may have changed: nothing that was measured holds on."""
        self._begin_axis_state(ProcedureEvent.TRIPOD_MOVED, None)

    def set_apart(self, solution: Solution | None) -> None:
        """What comes now must not be solved with the legs so far: they end, and nothing of them
        holds on, as if the mount had been moved.
        """
        self._note_result(solution)
        self.tripod_moved()

    def _begin_axis_state(self, event: ProcedureEvent, made: TurnMade | None) -> None:
        self._tonight.end_leg()
        self.guide.happened(event)
        self.guide.begin_axis_state(made)
        self._share_exchanged()
        self._steering = None
        self._keep()  # before the axis state itself, so that a kill in between loses neither
        self._tonight.turn_bolts()

    def accept(self, solution: Solution | None) -> None:
        """It is good enough."""
        self._tonight.end_leg()
        self.guide.happened(ProcedureEvent.TARGET_MET)
        self._note_result(solution)
        self._keep()

    def look_again(self) -> None:
        """Back to the choice of a star."""
        self._steering = None
        self.guide.happened(ProcedureEvent.LOOK_AGAIN)
        self._keep()

    def doubt_north(self) -> None:
        """The person cannot tell which way north is."""
        self._tonight.end_leg()
        self.guide.happened(ProcedureEvent.NORTH_DOUBTED)
        self._keep()

    def find_north(self, north: KnownNorth) -> None:
        """North is known, or (UNKNOWN) the first turn of the bolts is to tell."""
        if self.guide.stage is Stage.FIND_NORTH:
            self.guide.happened(ProcedureEvent.NORTH_FOUND)
        self.set_north(north)
        self._keep()

    def set_north(self, north: KnownNorth) -> None:
        """Read what was read in this axis state the right way round."""
        if (north is KnownNorth.EXCHANGED) != (self.guide.north is KnownNorth.EXCHANGED):
            read = set(self._tonight.legs) - self._tonight.imported
            self.guide.exchanged ^= read
        self.guide.north = north
        self._keep()

    def set_base(self, base: Base) -> None:
        """The base of the mount is not level."""
        self.guide.base = base
        self._keep()

    def use_mount(self, mount: Mount | None) -> None:
        """Whose bolts are turned."""
        self._book.use(mount)

    def view(
        self, solution: Solution | None, judgement: Judgement | None, said: Surprise | None
    ) -> GuideView:
        """As pages see it."""
        tonight = self._tonight
        before = self.before()
        known = before if solution is None else solution.knowledge
        wanted = off = width = None
        if known is not None and tonight.site is not None and tonight.air is not None:
            aim = aim_on_sky(tonight.aim, tonight.site, tonight.air)
            wanted = wanted_turn(known, aim, tonight.site)
            if solution is None or solution.determined:
                off = off_by(known, aim)  # else only the least it may be
            width = wanted_width(known, tonight.site)
            if judgement is None:  # the turn alone may have been enough
                judgement = judge(known, None, aim, tonight.goal.arcmin, ADVISED_TURN)
        seen, unseen = self._seen()
        return GuideView(
            self.guide.stage,
            self.guide.north,
            self.guide.base,
            self.guide.last_turn,
            judgement,
            said,
            known,
            information_of(solution, before),
            wanted,
            width,
            seen,
            unseen,
            self._will_move(wanted),
            None if self._steering is None else self._steering.moved_arcsec(),
            BoltView(self._book.scale(AZIMUTH), self._book.last_turns(AZIMUTH)),
            BoltView(self._book.scale(ALTITUDE), self._book.last_turns(ALTITUDE)),
            self._book.sentence(),
            off,
        )

    def _will_move(self, wanted: BoltTurn | None) -> tuple[float, float] | None:
        if self._steering is None or wanted is None:
            return None
        return self._steering.will_move_arcsec(wanted)

    def _seen(self) -> tuple[BoltTurn | None, str]:
        if self._steering is None:
            return None, ""
        try:
            return self._steering.turned(), ""
        except TurnUnseen as reason:
            return None, str(reason)

    def _note_result(self, solution: Solution | None) -> None:
        """Keep what was found, and learn the bolts from it."""
        if solution is None:
            return
        tonight, made = self._tonight, self.guide.last_turn
        self._keeper.put_result(solution, tonight.aim, tonight.goal, self._chance(solution))
        if made is not None and made.accuracy is not None and tonight.site is not None:
            self._book.note(f"{self._key} {self.guide.axis_state}", made, solution, tonight.site)

    def _chance(self, solution: Solution) -> float | None:
        """Chance that the axis is within the goal."""
        tonight = self._tonight
        if tonight.site is None or tonight.air is None or not solution.determined:
            return None
        aim = aim_on_sky(tonight.aim, tonight.site, tonight.air)
        return chance_within(solution.knowledge, aim, tonight.goal.arcmin)

    def _last_utc_s(self) -> float:
        times = [leg.buffer.last_utc_s for leg in self._tonight.legs.values()]
        return max((time for time in times if time is not None), default=0.0)

    def _keep(self) -> None:
        if self._key:
            self._keeper.put_setting(self._key, as_json(self.guide))
