"""Where the person stands in the procedure: stage, north in the field, and the last turn."""

from __future__ import annotations

from collections.abc import Iterator
from enum import Enum

from app.session.guide.turn import TurnMade
from core.alignment.guide.bolts import Base
from core.alignment.guide.procedure import Event, NotNow, Stage, after


class North(Enum):
    """How the readings' north stands to the sky's, as far as the person knows."""

    TRUSTED = "north is where it is read"
    UNKNOWN = "nobody knows"
    EXCHANGED = "north and south are exchanged in what is read"


# What a person does may skip a stage: these come in between without being asked for.
_BETWEEN = (Event.LOOK_AGAIN, Event.STAR_LOST, Event.NORTH_FOUND, Event.TURN_WORTHWHILE)


class Guide:
    """Knows no screen, disk or thread.

    `exchanged`: labels of legs of this axis state whose readings have north and south exchanged.
    `axis_state` counts from 1. `last_turn`: the turn of the bolts that began this axis state.
    """

    def __init__(self) -> None:
        self.stage = Stage.CHOOSE
        self.north = North.TRUSTED
        self.base = Base()
        self.exchanged: set[str] = set()
        self.axis_state = 1
        self.turns_made = 0
        self.last_turn: TurnMade | None = None

    def happened(self, event: Event) -> None:
        """Go on to the stage that follows; raises NotNow where no way leads there."""
        for way in self._ways(event):
            stage = self.stage
            try:
                for step in way:
                    stage = after(stage, step)
            except NotNow:
                continue
            self.stage = stage
            return
        after(self.stage, event)  # raises with the sentence that fits

    @staticmethod
    def _ways(event: Event) -> Iterator[tuple[Event, ...]]:
        yield (event,)
        yield from ((step, event) for step in _BETWEEN)

    def begin_axis_state(self, made: TurnMade | None) -> None:
        """The axis has moved: nothing of the legs holds on but what the turn lets one know."""
        self.axis_state += 1
        self.exchanged = set()
        self.last_turn = made
        if made is not None:
            self.turns_made += 1

    def agree_with(self, axis_state: int, watching: str | None) -> None:
        """After a resume: what the log of nights says comes before what was kept here."""
        if self.axis_state != axis_state:
            self.axis_state, self.last_turn = axis_state, None
            self.exchanged = set()
            self.stage = Stage.CHOOSE
        if watching is not None:
            self.stage = Stage.WATCH
        elif self.stage is Stage.WATCH:
            self.stage = Stage.CHOOSE
