"""Which tone is due when what the guide says has changed."""

from __future__ import annotations

from app.pages.drift import guidance as act
from app.pages.drift.guidance import Guidance
from app.pages.drift.turnwords import ALTITUDE, AZIMUTH, bolt_words
from app.session.guide.view import GuideView
from app.signals.cue import Cue
from core.alignment.guide.procedure import Stage

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
