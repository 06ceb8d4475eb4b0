"""Tonight's place, settings and legs: every step changes the state and reaches the disk."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass

from app.devices.source import Reading
from app.night.joining import Joining, joining, joining_question
from app.night.legs import Labels, LegBuffer
from app.night.recorder import Recorder
from app.night.snapshot import NorthSet, priors_of
from app.store.records import StoredLeg, StoredNight
from app.workers.clocks import TimeVerdict, judge, notice, refusal
from core.alignment.driftlog.records import DriftLog, Leg
from core.alignment.goal import Aim, Allowed, Goal, goal_of
from core.alignment.priors import RANGES, Priors, stated
from core.language import marked, say
from core.mount.equipment import Mount, Telescope
from core.sky.site import Air, Site

# A leg under way that is shorter has no drift to show yet, and no fault to be told about either.
FEWEST_READINGS = 4
SHORTEST_S = 20.0
NO_LEG = marked(
    "A reading came while no star was being watched and was not taken: begin a leg first."
)
NOT_FINITE = marked("A reading was not taken because its time or its offset is not a number.")


class StepRefused(ValueError):
    """A reading or step that changes nothing; the text is a sentence for the person."""


@dataclass(frozen=True)
class OwnedLeg:
    """A leg of the present axis state, and the number under which the log of nights keeps it."""

    star_name: str
    buffer: LegBuffer
    leg_id: int | None


class Tonight:
    """The state the session owns; knows neither screen nor thread.

    `legs`: those of the present axis state by label, in the order they began. `watching`: label of
    the leg under way.
    """

    def __init__(self, keeper: Recorder) -> None:
        self._keeper = keeper
        self._labels = Labels()
        self.site: Site | None = None
        self.air: Air | None = None
        self.aim = Aim.TRUE_POLE
        self.typed_target_arcmin: float | None = None
        self.allowed: Allowed | None = None  # what tonight's budget says
        self._goal_key = ""
        self.telescope: Telescope | None = None  # in use, as far as one was chosen
        self.mount: Mount | None = None
        self.north_set = NorthSet.NUDGED
        self._north_key = ""
        self._stated: dict[str, float] = {}  # sizes that the log of this axis state states
        self._stated_key = ""
        self.axis_state = 1
        self.legs: dict[str, OwnedLeg] = {}
        self.watching: str | None = None
        self.exchanged: set[str] = set()  # labels of legs read with north and south exchanged
        self.imported: set[str] = set()  # labels of legs that came whole
        self.previous_legs: tuple[Leg, ...] = ()  # of the axis state before

    def resume(self, night: StoredNight) -> None:
        """Go on where the log of nights stands, with the leg that was under way."""
        self.site, self.air = night.site, night.air
        self.aim = Aim.__members__.get(night.aim_name or "", self.aim)
        self._resume_goal(night)
        self._resume_north(night)
        *earlier, present = night.axis_states
        if earlier:
            self.previous_legs = tuple(leg.leg for leg in earlier[-1].legs if not leg.discarded)
        for stored in (leg for state in earlier for leg in state.legs):
            self._labels.take(stored.leg.label)
        for stored in present.legs:
            self._resume_leg(stored)
        self.axis_state = len(night.axis_states)
        self._resume_stated(night)

    def set_site(self, site: Site, air: Air) -> None:
        """Say where the mount stands."""
        self.site, self.air = site, air
        self._keeper.put_site(site, air)

    def set_aim(self, aim: Aim) -> None:
        """Choose which pole to align on."""
        self.aim = aim
        self._keeper.put_aim(aim)

    @property
    def goal(self) -> Goal:
        """How near the axis is to come, and why."""
        return goal_of(self.typed_target_arcmin, self.allowed)

    def set_target(self, arcmin: float | None) -> None:
        """The person's own goal; None goes back to that of the budget, or the usual one."""
        self.typed_target_arcmin = arcmin
        self._keep_goal()

    def follow_budget(self, allowed: Allowed | None) -> None:
        """What the budget allows; it is the goal unless the person has one."""
        self.allowed = allowed
        self._keep_goal()

    def _keep_goal(self) -> None:
        if self._goal_key:
            allowed = None if self.allowed is None else [self.allowed.arcmin, self.allowed.sentence]
            kept = {"version": 1, "typed": self.typed_target_arcmin, "allowed": allowed}
            self._keeper.put_setting(self._goal_key, kept)
        self._keeper.put_target(self.goal.arcmin)

    def _resume_goal(self, night: StoredNight) -> None:
        """A night from before there was a choice has a figure that the person typed."""
        self._goal_key = f"goal {night.night_id}"
        kept = self._keeper.get_setting(self._goal_key)
        if not isinstance(kept, dict) or kept.get("version") != 1:
            self.typed_target_arcmin = night.target_arcmin
            return
        typed, allowed = kept.get("typed"), kept.get("allowed")
        self.typed_target_arcmin = float(typed) if isinstance(typed, int | float) else None
        if isinstance(allowed, list) and len(allowed) == 2:
            self.allowed = Allowed(float(allowed[0]), str(allowed[1]))

    @property
    def priors(self) -> Priors:
        """What the computation is granted of tube, drive and reticle; a log's own sizes first."""
        return stated(self._stated, priors_of(self.telescope, self.mount, self.north_set))

    def _state_priors(self, values: Mapping[str, float]) -> None:
        """As the log says whose legs were taken; they hold for its axis state."""
        self._stated = dict(values)
        if self._stated_key:
            kept = {"version": 1, "axis_state": self.axis_state, "values": self._stated}
            self._keeper.put_setting(self._stated_key, kept)

    def _resume_stated(self, night: StoredNight) -> None:
        """Once the axis state is known."""
        self._stated_key = f"stated priors {night.night_id}"
        kept = self._keeper.get_setting(self._stated_key)
        if not isinstance(kept, dict) or kept.get("axis_state") != self.axis_state:
            return
        values = kept.get("values")
        if isinstance(values, dict):
            self._stated = {name: float(values[name]) for name in RANGES if name in values}

    def set_north_set(self, north_set: NorthSet) -> None:
        """How well north of the eyepiece or camera was set; another night asks anew."""
        self.north_set = north_set
        if self._north_key:
            self._keeper.put_setting(self._north_key, {"version": 1, "set": north_set.name})

    def _resume_north(self, night: StoredNight) -> None:
        self._north_key = f"north set {night.night_id}"
        kept = self._keeper.get_setting(self._north_key)
        if isinstance(kept, dict) and kept.get("version") == 1:
            self.north_set = NorthSet.__members__.get(str(kept.get("set")), self.north_set)

    def begin_leg(self, star_name: str, ra_deg: float, dec_deg: float) -> str:
        """Watch a star (ICRS place tonight); ends the leg under way. Returns its label."""
        self.end_leg()
        label = self._labels.numbered(star_name)
        self._own(star_name, LegBuffer(label, ra_deg, dec_deg))
        self.watching = label
        return label

    def add_reading(self, reading: Reading) -> str | None:
        """Take a reading of the star under way, or raise Refused.

        Returns a sentence when the clock was set so that a new leg of the same star had to begin.
        """
        if self.watching is None:
            raise StepRefused(say(NO_LEG))
        if not (math.isfinite(reading.utc_s) and math.isfinite(reading.north_arcsec)):
            raise StepRefused(say(NOT_FINITE))
        said = self._check_clock(self.legs[self.watching], reading.utc_s)
        leg = self.legs[self.watching]
        leg.buffer.append(reading)
        self._keeper.add_reading(leg.leg_id, reading)
        return said

    def remove_last_reading(self) -> bool:
        """Take the newest reading of the leg under way back; False when there is none."""
        leg = self.legs[self.watching] if self.watching is not None else None
        if leg is None or not len(leg.buffer):
            return False
        leg.buffer.remove_last()
        self._keeper.delete_last_reading(leg.leg_id)
        return True

    def end_leg(self) -> None:
        """Stop watching, if a star is watched; the leg stays."""
        if self.watching is not None:
            self._keeper.end_leg(self.legs[self.watching].leg_id)
            self.watching = None

    def discard_leg(self, label: str) -> None:
        """Leave a leg out, or raise Refused; on disk it is only marked."""
        if label not in self.legs:
            raise StepRefused(
                say(
                    "There is no leg “{label}” to discard since the bolts were turned.", label=label
                )
            )
        if self.watching == label:
            self.watching = None
        self._keeper.discard_leg(self.legs.pop(label).leg_id)

    def turn_bolts(self) -> None:
        """Begin a new axis state: the legs so far say nothing about it."""
        self.end_leg()
        self.axis_state += 1
        self.previous_legs = tuple(self._present())
        self.legs = {}
        self.imported = set()
        self._stated = {}
        self._keeper.begin_axis_state()

    def take_leg(self, star_name: str, leg: Leg) -> str:
        """Take a leg measured as a whole; its label is made here."""
        label = self._labels.numbered(star_name)
        self._own_whole(label, star_name, leg)
        return label

    def question_on(self, log: DriftLog) -> str:
        """What to ask before `take_log`; empty when its legs meet none."""
        present = self._present()
        return joining_question(joining(log, self.site, present), present)

    def take_log(self, log: DriftLog) -> Joining:
        """Take the legs of a log that may join, and its place when none is known."""
        taken = joining(log, self.site, self._present())
        site = log.header.site()
        if self.site is None and site is not None:
            self.set_site(site, log.header.air())
        if taken.legs and log.header.stated_priors:
            self._state_priors({**self._stated, **log.header.stated_priors})
        for leg in taken.legs:
            self._own_whole(self._labels.take(leg.label), "", leg)
        return taken

    def _present(self) -> list[Leg]:
        """The legs of this axis state as they were read."""
        return [owned.buffer.leg() for owned in self.legs.values()]

    def leg_views(self) -> tuple[Leg, ...]:
        """All legs of the axis state as they stand."""
        return tuple(self._as_seen(leg) for leg in self.legs.values())

    def usable_legs(self) -> tuple[Leg, ...]:
        """Those a computation can be asked about: with readings, and more than a first glance."""
        return tuple(
            self._as_seen(leg)
            for label, leg in self.legs.items()
            if len(leg.buffer) and not (label == self.watching and _has_just_begun(leg.buffer))
        )

    def _as_seen(self, owned: OwnedLeg) -> Leg:
        buffer = owned.buffer
        return buffer.exchanged() if buffer.label in self.exchanged else buffer.leg()

    def _resume_leg(self, stored: StoredLeg) -> None:
        label = self._labels.take(stored.leg.label)
        if stored.discarded:
            return
        buffer = LegBuffer.of(stored.leg, label)
        self.legs[label] = OwnedLeg(stored.star_name, buffer, stored.leg_id)
        if not stored.ended:
            self.end_leg()  # no two at once
            self.watching = label

    def _own(self, star_name: str, buffer: LegBuffer) -> OwnedLeg:
        leg_id = self._keeper.add_leg(buffer.label, star_name, buffer.ra_deg, buffer.dec_deg)
        leg = OwnedLeg(star_name, buffer, leg_id)
        self.legs[buffer.label] = leg
        return leg

    def _own_whole(self, label: str, star_name: str, leg: Leg) -> None:
        owned = self._own(star_name, LegBuffer.of(leg, label))
        self.imported.add(label)
        self._keeper.add_readings(owned.leg_id, leg)
        self._keeper.end_leg(owned.leg_id)

    def _check_clock(self, leg: OwnedLeg, utc_s: float) -> str | None:
        last_utc_s = leg.buffer.last_utc_s
        verdict = judge(last_utc_s, utc_s)
        if last_utc_s is None or verdict is TimeVerdict.GOES_ON:
            return None
        if verdict is TimeVerdict.REFUSED:
            raise StepRefused(refusal(utc_s - last_utc_s))
        label = self.begin_leg(leg.star_name, leg.buffer.ra_deg, leg.buffer.dec_deg)
        return notice(verdict, utc_s - last_utc_s, leg.buffer.label, label)


def _has_just_begun(buffer: LegBuffer) -> bool:
    return len(buffer) < FEWEST_READINGS or buffer.lasted_s < SHORTEST_S
