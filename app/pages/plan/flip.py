"""What was done about the flip: two large keys for cold hands, and what they were pressed for."""

from __future__ import annotations

import math
import re

import numpy as np
from PySide6.QtCore import Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from app.night.notes import FlipBook
from app.night.plan import FIGURES, Plans
from app.pages.plan import pictures
from app.pages.plan.study import MountChoice, PlanStudy, TargetNight
from app.pages.shared import PlanAmounts
from app.ui.form import Field, Key, KeyRow
from app.ui.style import Theme
from app.ui.text import Columns, Panel, Reflow, Text, span_words
from app.ui.timeline import NightView, clock_words
from core.language import say
from core.mount.equipment import MountKind
from core.night.darkness import Night
from core.night.flip import Crossing, FlipPlan, Interruption
from core.sky.clocks import Zone
from core.units import SIDEREAL_DEG_PER_HOUR


class FlipKeys(QWidget):
    """For one target at a time; kept with the night, where the checklist finds it."""

    def __init__(self, book: FlipBook, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._book = book
        self._target = ""
        self._zone: Zone | None = None
        self._count = 0
        self._done = Text()
        self._flipped = Key(self.tr("The mount has flipped"), "primary")
        self._centred = Key(self.tr("Centred and focused again"), "primary")
        self._back = Key(self.tr("Take the last one back"))
        self._flipped.clicked.connect(lambda: book.flip(self._target))
        self._centred.clicked.connect(lambda: book.centre(self._target))
        self._back.clicked.connect(lambda: book.take_back(self._target))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._done)
        column.addWidget(KeyRow((self._flipped, self._centred, self._back)))
        book.changed.connect(self._show)

    def flipped_button(self) -> Key:
        return self._flipped

    def centred_button(self) -> Key:
        return self._centred

    def back_button(self) -> Key:
        return self._back

    def said(self) -> str:
        return self._done.text()

    def show_target(self, target: str, count: int, zone: Zone) -> None:
        """`count`: how many flips are planned."""
        self._target, self._count, self._zone = target, count, zone
        self._show()

    def _show(self) -> None:
        if self._zone is None:
            return
        flips = self._book.flips(self._target)
        waits = bool(flips) and flips[-1].centred_utc_s is None
        had_focus = any(key.hasFocus() for key in (self._flipped, self._centred, self._back))
        said = []
        for one in flips:
            when = clock_words(self._zone, one.flipped_utc_s)
            if one.centred_utc_s is None:
                said.append(
                    self.tr("Flipped at {time}. Now centre the target and focus.").format(time=when)
                )
            else:
                again = clock_words(self._zone, one.centred_utc_s)
                words = self.tr("Flipped at {time}, centred and focused again at {again}.")
                said.append(words.format(time=when, again=again))
        self._done.say("\n".join(said))
        self._centred.setVisible(waits)
        self._flipped.setVisible(not waits and len(flips) < max(self._count, 1))
        self._back.setVisible(bool(flips))
        if had_focus:
            self._next_key(waits).setFocus()

    def _next_key(self, waits: bool) -> Key:
        """Where a hand that just pressed one goes on."""
        if waits:
            return self._centred
        return self._flipped if self._flipped.isVisibleTo(self) else self._back


# The meridian flip: when, from which side to which, and what it interrupts.

LIMITS = ("past_meridian_deg", "flips_from_deg", "turning_s", "recentring_s")
SERIES = ("plan_exposure_s", "plan_between_s")
_CLOCK = re.compile(r"(\d{1,2})\s*[:.h]?\s*(\d{2})")
_STEP_S = 60.0


class FlipSection(QWidget):
    """`picked` carries a moment, `session_given` beginning and end of the session (NaN: as the
    darkness allows), Unix seconds.
    """

    picked = Signal(float)
    session_given = Signal(float, float)

    def __init__(
        self,
        plans: Plans,
        theme: Theme,
        book: FlipBook | None = None,
        parent: QWidget | None = None,
    ) -> None:
        """`book`: where it is kept what was done about the flip."""
        super().__init__(parent)
        self._book = book
        self._planned_for = ""
        self.keys = None if book is None else FlipKeys(book)
        self._night: Night | None = None
        self._zone: Zone | None = None
        self._mounts = MountChoice(plans)
        self._begin = Field(self.tr("Begin"), self.tr("empty: when it is dark"))
        self._end = Field(self.tr("End"), self.tr("empty: while clear"))
        for field in (self._begin, self._end):
            field.left.connect(self._session_typed)
        self._limits = PlanAmounts(
            plans,
            FIGURES,
            LIMITS,
            hints={"past_meridian_deg": self.tr("Negative: it must stop before.")},
        )
        self._series = PlanAmounts(plans, FIGURES, SERIES)
        self._reason = Text("", "side")
        self._flips = Text("")
        self._cautions = Text("", "alarm")
        self._view = NightView(self.tr("Exposures and the flip"), theme)
        self._view.picked.connect(self.picked)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Reflow((self._settings(), self._result()), 940, (4, 5)))

    def _settings(self) -> Panel:
        panel = Panel(self.tr("Mount and series"))
        session = Columns([self._begin, self._end], 190, most=2, are_rows=True)
        session.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        for part in (self._mounts, session, self._series, self._limits):
            panel.column.addWidget(part)
        panel.column.addStretch()
        return panel

    def _result(self) -> Panel:
        panel = Panel(self.tr("The flip"))
        for part in (self._reason, self._flips, self.keys):
            if part is not None:
                panel.column.addWidget(part)
        panel.column.addWidget(self._view, 1)
        panel.column.addWidget(self._cautions)
        return panel

    def mounts(self) -> MountChoice:
        return self._mounts

    def session_fields(self) -> tuple[Field, Field]:
        return self._begin, self._end

    def limits(self) -> PlanAmounts:
        return self._limits

    def view(self) -> NightView:
        return self._view

    def said(self) -> str:
        parts = (self._reason, self._flips, self._cautions)
        return " ".join(part.text() for part in parts if part.text())

    def show_study(self, study: PlanStudy, zone: Zone) -> None:
        self._night, self._zone = study.night, zone
        self._mounts.show_plans()
        self._limits.show_plans()
        self._series.show_plans()
        self._show_begin(study.question.wish.begin_utc_s, zone)
        german = study.question.kind is MountKind.GERMAN_EQUATORIAL
        self._limits.setVisible(german)
        aim = study.aim
        self._view.setVisible(aim is not None)
        if aim is None:
            self._reason.say(self.tr("Choose a target above to see when the mount must flip."))
            self._flips.say("")
            self._cautions.say("")
            self._planned_for = ""
            if self.keys is not None:
                self.keys.hide()
            return
        self._reason.say(aim.problem if aim.flip is None else aim.flip.reason)
        self._flips.say("" if aim.flip is None else self._words(aim, aim.flip, zone))
        self._cautions.say("" if aim.flip is None else "\n".join(aim.flip.cautions))
        self._show_keys(aim, zone)
        self._view.show_picture(pictures.flip(study, zone))
        self._view.show_moment(study.moment_utc_s)

    def _show_keys(self, aim: TargetNight, zone: Zone) -> None:
        if self.keys is None or self._book is None:
            return
        target, planned = aim.fixed.name, 0 if aim.flip is None else len(aim.flip.interruptions)
        self.keys.setVisible(bool(planned or self._book.flips(target)))
        self.keys.show_target(target, planned, zone)
        self._planned_for = target if planned else ""
        self._look()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._look()

    def _look(self) -> None:
        """A flip that is planned counts as looked up once it has been seen here."""
        if self._book is not None and self._planned_for and self.isVisible():
            self._book.see(self._planned_for)

    def _show_begin(self, begin_utc_s: float, zone: Zone) -> None:
        """As it is kept for this night, in the clock that is shown."""
        assert self._night is not None
        known = self._night.begin_utc_s <= begin_utc_s <= self._night.end_utc_s
        if not self._begin.line().hasFocus() and not self._begin.is_wrong():
            self._begin.show_text(clock_words(zone, begin_utc_s) if known else "")

    def _words(self, aim: TargetNight, plan: FlipPlan, zone: Zone) -> str:
        said = [self._series_words(aim, plan, zone)]
        said += [self._crossing_words(one, zone) for one in plan.crossings]
        said += [self._flip_words(one, zone) for one in plan.interruptions]
        return "\n".join(part for part in said if part)

    def _series_words(self, aim: TargetNight, plan: FlipPlan, zone: Zone) -> str:
        if aim.session is None:
            return ""
        said = self.tr("From {begin} to {end}: {count:,} exposures, none cut.").format(
            begin=clock_words(zone, aim.session[0]),
            end=clock_words(zone, aim.session[1]),
            count=len(plan.exposure_utc_s),
        )
        past_s = _past_meridian_s(aim, aim.session[0])
        if plan.begins_on is None or plan.crossings or past_s <= 0.0:
            return said
        passed = self.tr("It passed the meridian {span} before that, towards the west.")
        return f"{said} {passed.format(span=span_words(past_s))}"

    def _crossing_words(self, one: Crossing, zone: Zone) -> str:
        where = (
            self.tr("On the meridian") if one.upper else self.tr("On the meridian below the pole")
        )
        said = self.tr("{where} at {time}, {height:.0f}° high.").format(
            where=where, time=clock_words(zone, one.utc_s), height=one.altitude_deg
        )
        if one.earliest_utc_s > one.latest_utc_s:
            return (
                said
                + " "
                + self.tr("The mount must stop at {stop} and wait until {go}.").format(
                    stop=clock_words(zone, one.latest_utc_s),
                    go=clock_words(zone, one.earliest_utc_s),
                )
            )
        return (
            said
            + " "
            + self.tr("Latest time before the mount's limit: {latest}.").format(
                latest=clock_words(zone, one.latest_utc_s)
            )
        )

    def _flip_words(self, one: Interruption, zone: Zone) -> str:
        return self.tr(
            "Last exposure ends {stops}, flip at {turns}, on again at {resumes}: {lost} without "
            "exposing. Before: tube {before}. After: tube {after}."
        ).format(
            stops=clock_words(zone, one.stops_utc_s),
            turns=clock_words(zone, one.turns_utc_s),
            resumes=clock_words(zone, one.resumes_utc_s),
            lost=span_words(one.lost_s),
            before=say(one.crossing.before.value),
            after=say(one.crossing.after.value),
        )

    def _session_typed(self) -> None:
        times = []
        for field in (self._begin, self._end):
            utc_s = self._typed(field.text())
            if utc_s is None:
                field.complain(self.tr("Type a time of this night, like 22:30, or leave it empty."))
                return
            field.note("")
            times.append(utc_s)
        self.session_given.emit(*times)

    def _typed(self, text: str) -> float | None:
        """NaN for an empty line, None for what is no time of this night."""
        if not text:
            return math.nan
        found = _CLOCK.fullmatch(text)
        if found is None or self._night is None or self._zone is None:
            return None
        return moment_of(int(found[1]), int(found[2]), self._night, self._zone)


def _past_meridian_s(aim: TargetNight, utc_s: float) -> float:
    """How long ago it crossed the upper meridian; negative while it has yet to."""
    hour_angle_deg = float(np.interp(utc_s, aim.track.utc_s, aim.track.hour_angle_deg))
    return math.remainder(hour_angle_deg, 360.0) / SIDEREAL_DEG_PER_HOUR * 3600.0


def moment_of(hour: int, minute: int, night: Night, zone: Zone) -> float | None:
    """When the clocks show that within the night, Unix seconds; None for no time of day."""
    if hour > 23 or minute > 59:
        return None
    start = math.ceil(night.begin_utc_s / _STEP_S) * _STEP_S
    first = zone.civil(start)
    ahead = (hour - first.hour) * 60 + minute - first.minute
    return start + ahead % 1440 * _STEP_S
