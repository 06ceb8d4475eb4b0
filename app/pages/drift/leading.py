"""Leads through the night: what the person presses, what the guide says, which picture is due."""

from __future__ import annotations

import time
from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from app.pages.drift import guidance as say
from app.pages.drift.choosing import Choosing
from app.pages.drift.cueing import Cueing
from app.pages.drift.fieldpanel import FieldPanel
from app.pages.drift.guideband import GuideBand
from app.pages.drift.guidewords import guidance
from app.pages.drift.parts import DriftParts
from app.pages.drift.soundpanel import SoundPanel
from app.pages.drift.turning import Turning, counted_arcmin
from app.pages.drift.watchwords import warnings
from app.pages.drift.ways import Ways
from app.session.errand import Errand
from app.session.guide.stars import Proposals, Wish, propose
from app.session.guide.state import North
from app.session.guide.turn import How
from app.theme.theme import Theme
from app.widgets.redraw import Redraw
from core.alignment.guide.bolts import Turn
from core.alignment.guide.nextstar import Watching
from core.alignment.guide.procedure import Stage

if TYPE_CHECKING:
    from app.session.session import Session
    from app.session.shown import Shown
    from app.session.snapshot import Snapshot

LIVE_MS = 250  # how often the guide looks at new readings
STALE_S = 90.0  # the sky has turned by a third of a degree
PLOT, CHOOSE, TURN = "plot", "choose", "turn"


class Leading(QObject):
    """`picture_wanted` carries PLOT, CHOOSE or TURN."""

    picture_wanted = Signal(str)

    def __init__(
        self, shown: Shown, ways: Ways, theme: Theme, parts: DriftParts, parent: QObject
    ) -> None:
        super().__init__(parent)
        self._shown = shown
        self._ways = ways
        self._parts = parts
        self.band = GuideBand()
        self.choosing = Choosing(theme)
        self.turning = Turning(theme)
        self._errand = Errand(self)
        self._errand.done.connect(self._found)
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
        self.choosing.taken.connect(lambda: self.act(say.WATCH.name))
        self.turning.base_given.connect(lambda base: self._session().set_base(base))

    def _made_actions(self) -> dict[str, Callable[[], None]]:
        def find(north: North) -> Callable[[], None]:
            return lambda: self._session().find_north(north)

        return {
            say.WATCH.name: self._watch,
            say.ENOUGH.name: lambda: self._session().end_leg(),
            say.TURN.name: self._begin_turning,
            say.TURNED.name: self._turned,
            say.TURNED_OTHERWISE.name: self._turned_otherwise,
            say.GOOD.name: lambda: self._session().accept(),
            say.AGAIN.name: lambda: self._session().look_again(),
            say.KICKED.name: lambda: self._session().tripod_moved(),
            say.WHICH_NORTH.name: lambda: self._session().doubt_north(),
            say.WENT_SOUTH.name: find(North.TRUSTED),
            say.WENT_NORTH.name: find(North.EXCHANGED),
            say.CANNOT_TELL.name: find(North.UNKNOWN),
            say.EXCHANGED.name: find(North.EXCHANGED),
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

    def mark(self) -> None:
        """Readings have come."""
        self._live.mark()

    def show_snapshot(self, snapshot: Snapshot) -> None:
        """A step, a setting or an answer."""
        leads = self._leads(snapshot)
        self.band.setVisible(leads)
        self._show_picture(self._due(snapshot) if leads else PLOT)
        if leads:
            self.refresh()

    def leads(self) -> bool:
        """Whether there is a night to lead through, rather than a log to look at."""
        return self._leads(self._shown.snapshot())

    def _leads(self, snapshot: Snapshot) -> bool:
        return snapshot.site is not None and self._ways.is_watching_way()

    @staticmethod
    def _due(snapshot: Snapshot) -> str:
        stage = snapshot.guide.stage
        if stage is Stage.CHOOSE:
            return CHOOSE
        return TURN if stage is Stage.TURN else PLOT

    def _show_picture(self, picture: str) -> None:
        if picture != self._picture:
            self._picture = picture
            self.picture_wanted.emit(picture)

    def refresh(self) -> None:
        """Everything as it stands now."""
        snapshot = self._shown.snapshot()
        if snapshot.site is None:
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
        wish = Wish(
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
        if counted is None:
            return
        guide = self._shown.snapshot().guide
        how, turn = How.UNKNOWN, guide.wanted
        if guide.seen is not None:
            how, turn = How.SEEN, guide.seen
        elif turn is not None:
            how = How.ADVISED
            scales = guide.azimuth_bolt.scale, guide.altitude_bolt.scale
            meant = turn.azimuth_arcmin, turn.altitude_arcmin
            moved = counted_arcmin(counted, scales, meant)
            if counted != (None, None) and moved is not None:
                how, turn = How.COUNTED, Turn(*moved)
        self._session().bolts_turned(how, turn, counted)

    def _turned_otherwise(self) -> None:
        counted = self.turning.counted()
        if counted is not None:
            self._session().bolts_turned(How.UNKNOWN, None, counted)
