"""The band that leads through the night: stage, sentence, and keys with their letters."""

from __future__ import annotations

import math
import time
from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QSizePolicy, QVBoxLayout, QWidget

from app.night.equipment import FieldInView
from app.night.snapshot import GuideView, How, KnownNorth
from app.night.starchoice import Proposals, StarWish, propose
from app.pages.drift import words as act
from app.pages.drift.parts import DriftParts
from app.pages.drift.sources import SourceSwitch
from app.pages.drift.starchoice import Choosing
from app.pages.drift.turning import TurningPanel, counted_arcmin
from app.pages.drift.words import (
    AGAIN,
    ALTITUDE,
    AZIMUTH,
    CANNOT_TELL,
    ENOUGH,
    EXCHANGED,
    GOOD,
    KICKED,
    TURN,
    TURNED,
    TURNED_OTHERWISE,
    WATCH,
    WENT_NORTH,
    WENT_SOUTH,
    WHICH_NORTH,
    Action,
    Guidance,
    bolt_words,
    guidance,
    warnings,
)
from app.ui.form import Amount, Choice, Flow, Key
from app.ui.redraw import Redraw
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Text
from app.workers.awake import Awake
from app.workers.latest import LatestOnly
from app.workers.sound import Sounds
from app.workers.tones import Cue
from core.alignment.guide.bolts import BoltTurn
from core.alignment.guide.nextstar import Watching
from core.alignment.guide.procedure import Stage
from core.imaging.sampling import LEAST_ARCMIN, MOST_ARCMIN
from core.language import say
from core.mount.equipment import Quantity

if TYPE_CHECKING:
    from app.night.activenight import ActiveNight
    from app.night.session import Session
    from app.night.snapshot import Snapshot


BESIDE_PX = 520  # from here on the keys stand beside the words


class GuideBand(Panel):
    """`pressed` carries the name of an action."""

    pressed = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("What to do next"))
        self._guidance: Guidance | None = None
        self._actions: tuple[Action, ...] = ()
        self._buttons: dict[str, Key] = {}
        self._stage = Text("", "quiet")
        self._sentence = Text("", "title")
        self._detail = Text("", "quiet")
        self._warning = Text("", "alarm")
        self._keys = QWidget()
        self._row = Flow(self._keys, gap_px=6)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self._keys.setSizePolicy(policy)
        self._arrange()

    def _arrange(self) -> None:
        words = QWidget()
        lines = QVBoxLayout(words)
        lines.setContentsMargins(0, 0, 0, 0)
        lines.setSpacing(2)
        for part in (self._stage, self._sentence, self._detail, self._warning):
            lines.addWidget(part)
        lines.addStretch()
        self.column.setContentsMargins(16, 8, 12, 8)
        self.column.addWidget(Reflow((words, self._keys), BESIDE_PX))

    def show_guidance(self, guidance: Guidance) -> None:
        if guidance == self._guidance:
            return
        self._guidance = guidance
        self._stage.say(guidance.stage)
        self._sentence.say(guidance.sentence)
        self._detail.say(guidance.detail)
        self._warning.say("\n".join(guidance.warnings))
        self.setAccessibleDescription(f"{guidance.stage}. {guidance.sentence}")
        actions = tuple(
            action for action in (guidance.primary, *guidance.others) if action is not None
        )
        self._show_keys(actions, guidance.primary)

    def guidance(self) -> Guidance | None:
        return self._guidance

    def button(self, name: str) -> Key | None:
        return self._buttons.get(name)

    def press_letter(self, letter: str) -> bool:
        """For keys pressed while a number is being typed. Whether it meant anything."""
        for action in self._actions:
            if action.letter and action.letter == letter.upper():
                self.pressed.emit(action.name)
                return True
        return False

    def _show_keys(self, actions: tuple[Action, ...], primary: Action | None) -> None:
        """Kept while they stay the same, so that no key vanishes under a finger or the focus."""
        wanted = (*actions, primary) if primary is not None else actions
        if wanted == self._actions:
            return
        self._actions = wanted
        had_focus = any(button.hasFocus() for button in self._buttons.values())
        for button in self._buttons.values():
            self._row.removeWidget(button)
            button.setShortcut("")
            button.hide()
            button.deleteLater()
        self._buttons = {action.name: self._key(action, action is primary) for action in actions}
        if had_focus and actions:
            self._buttons[actions[0].name].setFocus()
        self._keys.updateGeometry()

    def _key(self, action: Action, is_primary: bool) -> Key:
        words = say(action.words)
        if action.letter:
            words = self.tr("{words} ({letter})").format(words=words, letter=action.letter)
        key = Key(words, "primary" if is_primary else "")
        key.setShortcut(action.letter)
        key.clicked.connect(lambda: self.pressed.emit(action.name))
        self._row.addWidget(key)
        key.show()
        return key


# Which tone is due when what the guide says has changed.

OF_PRIMARY = {
    act.ENOUGH: Cue.STAR_ENOUGH,
    act.TURN: Cue.TURN_NOW,
    act.GOOD: Cue.GOOD_ENOUGH,
}
TICK_S = 1.0


class Cueing:
    """Each change is told once; while the bolts turn, a tick a second until both are there."""

    def __init__(self) -> None:
        self._primary: object = None
        self._was_leaving = False
        self._was_there = False
        self._ticked_s = 0.0

    def due(
        self, said: Guidance, guide: GuideView, latitude_deg: float, steady_s: float
    ) -> Cue | None:
        """`steady_s`: any clock that only goes forward."""
        if guide.stage is Stage.TURN:
            return self._turning(guide, latitude_deg, steady_s)
        self._was_there = False
        leaves = said.is_leaving and not self._was_leaving
        self._was_leaving = said.is_leaving
        is_new, self._primary = said.primary != self._primary, said.primary
        if leaves:
            return Cue.STAR_LEAVING
        if is_new and said.primary is not None and guide.stage is Stage.WATCH:
            return OF_PRIMARY.get(said.primary)
        return None

    def _turning(self, guide: GuideView, latitude_deg: float, steady_s: float) -> Cue | None:
        if guide.seen is None:
            return None
        bolts = [bolt_words(bolt, guide, latitude_deg) for bolt in (AZIMUTH, ALTITUDE)]
        is_there = all(bolt.is_reached for bolt in bolts)
        arrives, self._was_there = is_there and not self._was_there, is_there
        if arrives:
            return Cue.STOP
        if is_there or steady_s - self._ticked_s < TICK_S:
            return None
        self._ticked_s = steady_s
        return Cue.KEEP_TURNING


# How much sky is in view, for the warning that the star leaves it.


class FieldPanel(Panel):
    def __init__(self, field: FieldInView, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Field in view"), parent)
        self._field = field
        bounds = Quantity(self.tr("The shorter way across"), "′", LEAST_ARCMIN, MOST_ARCMIN)
        self._across = Amount(bounds, when_empty=self.tr("from the equipment"))
        self._said = Text("", "small")
        self._across.given.connect(self._give)
        field.changed.connect(self._show)
        self.column.addWidget(self._across)
        self.column.addWidget(self._said)
        self._show()

    def across(self) -> Amount:
        return self._across

    def said(self) -> str:
        return self._said.text()

    def _give(self, across_arcmin: float) -> None:
        self._field.type(None if math.isnan(across_arcmin) else across_arcmin)

    def _show(self) -> None:
        typed = self._field.typed_arcmin
        self._across.show_amount(math.nan if typed is None else typed)
        self._said.say(self._field.now().sentence)


# Whether tones tell what the eye at the telescope cannot see.

SILENT, TONES = "silent", "tones"


class SoundPanel(Panel):
    """And whether the screen has to be kept on by hand."""

    def __init__(self, sounds: Sounds, awake: Awake, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Sounds"), parent)
        self._sounds, self._awake = sounds, awake
        self._awake_note = Text("", "small")
        self._choice = Choice(
            self.tr("Sounds"), [(SILENT, self.tr("Silent")), (TONES, self.tr("Tones"))]
        )
        self._note = Text("", "small")
        self._choice.chosen.connect(lambda chosen: sounds.turn(chosen == TONES))
        sounds.changed.connect(self._show)
        awake.changed.connect(self._show)
        self.column.addWidget(
            Text(
                self.tr(
                    "Rising: a star or the alignment is good enough. Falling: the star leaves. "
                    "Ticks: turn on. A long one: stop."
                ),
                "small",
            )
        )
        self.column.addWidget(self._choice)
        self.column.addWidget(self._note)
        self.column.addWidget(self._awake_note)
        self._show()

    def choice(self) -> Choice:
        return self._choice

    def note(self) -> str:
        return self._note.text()

    def awake_note(self) -> str:
        return self._awake_note.text()

    def _show(self) -> None:
        self._choice.show_choice(TONES if self._sounds.is_on else SILENT)
        self._note.say(self._sounds.note())
        self._awake_note.say(self._awake.note())


# Leads through the night: what the person presses, what the guide says, which picture is due.

LIVE_MS = 250  # how often the guide looks at new readings
STALE_S = 90.0  # the sky has turned by a third of a degree
PLOT_VIEW, CHOOSE_VIEW, TURN_VIEW = "plot", "choose", "turn"


class GuideController(QObject):
    """`picture_wanted` carries PLOT_VIEW, CHOOSE_VIEW or TURN_VIEW."""

    picture_wanted = Signal(str)

    def __init__(
        self,
        shown: ActiveNight,
        ways: SourceSwitch,
        theme: Theme,
        parts: DriftParts,
        parent: QObject,
    ) -> None:
        super().__init__(parent)
        self._shown = shown
        self._ways = ways
        self._parts = parts
        self.band = GuideBand()
        self.choosing = Choosing(theme)
        self.turning = TurningPanel(theme)
        self._errand = LatestOnly(self)
        self._errand.done.connect(self._found)
        self._tonight: Snapshot | None = None  # of the night in view
        self._asked: tuple[object, ...] | None = None
        self._is_current = False
        self._cueing = Cueing()
        self.sound_panel = SoundPanel(parts.sounds, parts.awake)
        self.field_panel = FieldPanel(parts.field)
        self._picture = ""
        self._live = Redraw(self.band, self.refresh, LIVE_MS)
        self._actions = self._made_actions()
        self._connect()

    def _connect(self) -> None:
        self.band.pressed.connect(self.act)
        self._parts.field.changed.connect(self._live.mark)
        self._ways.letter_pressed.connect(self.band.press_letter)
        self.choosing.marked.connect(self._live.mark)
        self.choosing.taken.connect(lambda: self.act(WATCH.name))
        self.turning.base_given.connect(lambda base: self._session().set_base(base))

    def _made_actions(self) -> dict[str, Callable[[], None]]:
        def find(north: KnownNorth) -> Callable[[], None]:
            return lambda: self._session().find_north(north)

        return {
            WATCH.name: self._watch,
            ENOUGH.name: lambda: self._session().end_leg(),
            TURN.name: self._begin_turning,
            TURNED.name: self._turned,
            TURNED_OTHERWISE.name: self._turned_otherwise,
            GOOD.name: lambda: self._session().accept(),
            AGAIN.name: lambda: self._session().look_again(),
            KICKED.name: lambda: self._session().tripod_moved(),
            WHICH_NORTH.name: lambda: self._session().doubt_north(),
            WENT_SOUTH.name: find(KnownNorth.TRUSTED),
            WENT_NORTH.name: find(KnownNorth.EXCHANGED),
            CANNOT_TELL.name: find(KnownNorth.UNKNOWN),
            EXCHANGED.name: find(KnownNorth.EXCHANGED),
        }

    def act(self, name: str) -> None:
        """What a key of the band means."""
        self._actions[name]()

    def close(self) -> None:
        """Nothing is looked up any more."""
        self._errand.close()

    def begin_anew(self) -> None:
        """Another night is in view."""
        self._asked = None
        self.choosing.forget()

    def mark(self, snapshot: Snapshot) -> None:
        """Readings have come."""
        self._tonight = snapshot
        self._live.mark()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """A step, a setting or an answer."""
        self._tonight = snapshot
        leads = self._leads(snapshot)
        self.band.setVisible(leads)
        self._show_picture(self._due(snapshot) if leads else PLOT_VIEW)
        if leads:
            self.refresh()

    def leads(self) -> bool:
        """Whether there is a night to lead through, rather than a log to look at."""
        return self._tonight is not None and self._leads(self._tonight)

    def _leads(self, snapshot: Snapshot) -> bool:
        return snapshot.site is not None and self._ways.is_watching_way()

    @staticmethod
    def _due(snapshot: Snapshot) -> str:
        stage = snapshot.guide.stage
        if stage is Stage.CHOOSE:
            return CHOOSE_VIEW
        return TURN_VIEW if stage is Stage.TURN else PLOT_VIEW

    def _show_picture(self, picture: str) -> None:
        if picture != self._picture:
            self._picture = picture
            self.picture_wanted.emit(picture)

    def refresh(self) -> None:
        """Everything as it stands now."""
        snapshot = self._tonight
        if snapshot is None or snapshot.site is None:
            return
        across = self._parts.field.now().across_arcmin
        horizon = self._parts.horizon(snapshot.site)
        warned = warnings(snapshot, horizon, self._ways.now(), across)
        if snapshot.guide.stage in (Stage.CHOOSE, Stage.DONE):
            self._ask(snapshot)
        proposals, star = self.choosing.proposals(), self.choosing.star()
        if not self._is_current:
            proposals = star = None
        told = guidance(snapshot, proposals, star, warned)
        self.band.show_guidance(told)
        cue = self._cueing.due(told, snapshot.guide, snapshot.site.latitude_deg, time.monotonic())
        if cue is not None:
            self._parts.sounds.give(cue)
        if snapshot.guide.stage is Stage.TURN:
            self.turning.show_guide(snapshot.guide, snapshot.site.latitude_deg, across)

    def _ask(self, snapshot: Snapshot) -> None:
        """The stars anew when the sky has turned or more is known."""
        if snapshot.site is None or snapshot.air is None:
            return
        known = snapshot.guide.information
        wanted = (
            snapshot.site,
            snapshot.air,
            snapshot.target_arcmin,
            known.tobytes(),
            int(self._ways.now() // STALE_S),
        )
        if wanted == self._asked or snapshot.guide.stage is Stage.WATCH:
            return
        if self._asked is None or wanted[:-1] != self._asked[:-1]:
            self._is_current = False  # more is known: the stars so far are no advice any more
        self._asked = wanted
        wish = StarWish(
            snapshot.site,
            snapshot.air,
            self._parts.horizon(snapshot.site),
            self._ways.now(),
            known,
            Watching(priors=snapshot.priors),
            snapshot.target_arcmin,
        )
        self._errand.send(lambda: propose(wish))

    def _found(self, proposals: object) -> None:
        if isinstance(proposals, Proposals) and self._asked is not None:
            self._is_current = True
            self.choosing.show_proposals(proposals)
            self._live.mark()

    def _session(self) -> Session:
        return self._shown.session

    def _watch(self) -> None:
        star = self.choosing.star()
        if star is not None:
            self._ways.watch(star.name, star.ra_deg, star.dec_deg)

    def _begin_turning(self) -> None:
        self.turning.begin()
        self._session().begin_turning()

    def _turned(self) -> None:
        counted = self.turning.counted()
        if counted is None or self._tonight is None:
            return
        guide = self._tonight.guide
        how, turn = How.UNKNOWN, guide.wanted
        if guide.seen is not None:
            how, turn = How.SEEN, guide.seen
        elif turn is not None:
            how = How.ADVISED
            scales = guide.azimuth_bolt.scale, guide.altitude_bolt.scale
            meant = turn.azimuth_arcmin, turn.altitude_arcmin
            moved = counted_arcmin(counted, scales, meant)
            if counted != (None, None) and moved is not None:
                how, turn = How.COUNTED, BoltTurn(*moved)
        self._session().bolts_turned(how, turn, counted)

    def _turned_otherwise(self) -> None:
        counted = self.turning.counted()
        if counted is not None:
            self._session().bolts_turned(How.UNKNOWN, None, counted)
