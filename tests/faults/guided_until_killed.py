"""A guided night without a screen: goes through the procedure at random until killed.

Before each step and after it, one JSON line: monotonic time, stage, axis state, the leg under way,
turns made, how the last turn is known, and how many readings each leg has.
"""

from __future__ import annotations

import json
import random
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

from PySide6.QtCore import QCoreApplication

from app.devices.source import Reading
from app.night.session import Session
from app.night.snapshot import How, KnownNorth
from app.store.nights import NightLog
from core.alignment.guide.bolts import BoltTurn
from core.alignment.guide.procedure import Stage
from core.sky.site import Air, Site
from tests.app.night.heard import heard
from tests.app.night.scripted import counting_answer

NOW_UTC_S = 1_795_550_400.0


def fail(sentence: str | None) -> None:
    """Nothing may go wrong here."""
    if sentence is not None:
        print(sentence, file=sys.stderr, flush=True)


def state(session: Session) -> dict[str, object]:
    """What a resume must bring back."""
    snapshot = heard(session)
    made = snapshot.guide.last_turn
    return {
        "stage": snapshot.guide.stage.name,
        "north": snapshot.guide.north.name,
        "axis_state": snapshot.axis_state,
        "watching": snapshot.watching,
        "how": None if made is None else made.how.name,
        "turn": None if made is None or made.turn is None else made.turn.azimuth_arcmin,
        "legs": {leg.label: int(leg.utc_s.size) for leg in snapshot.legs},
    }


class Wanderer:
    """Takes steps that fit the stage, some sensible, some not."""

    def __init__(self, session: Session, chance: random.Random, first_utc_s: float) -> None:
        self._session = session
        self._chance = chance
        self._utc_s = first_utc_s

    def step(self) -> None:
        stage = heard(self._session).guide.stage
        choices = {
            Stage.CHOOSE: [self._watch, self._watch, self._session.begin_turning, self._doubt],
            Stage.WATCH: [self._read, self._read, self._read, self._session.end_leg, self._leave],
            Stage.TURN: [self._turned, self._session.look_again, self._session.tripod_moved],
            Stage.DONE: [self._session.look_again, self._session.tripod_moved],
            Stage.FIND_NORTH: [self._find],
        }
        self._chance.choice(choices[stage])()

    def _watch(self) -> None:
        self._session.begin_leg("Star", self._chance.uniform(0.0, 360.0), 10.0)

    def _read(self) -> None:
        for _ in range(self._chance.randrange(1, 20)):
            self._utc_s += 2.0
            self._session.add_reading(Reading(self._utc_s, self._chance.gauss(0.0, 1.0), 0.0))

    def _leave(self) -> None:
        self._chance.choice([self._session.begin_turning, self._session.accept])()

    def _turned(self) -> None:
        how = self._chance.choice([How.SEEN, How.ADVISED, How.UNKNOWN])
        self._session.bolts_turned(
            how, BoltTurn(self._chance.uniform(-30.0, 30.0), 5.0), (1.0, None)
        )

    def _doubt(self) -> None:
        self._session.doubt_north()

    def _find(self) -> None:
        self._session.find_north(self._chance.choice([KnownNorth.TRUSTED, KnownNorth.EXCHANGED]))


def main(path: Path, seed: int) -> None:
    app = QCoreApplication([])
    chance = random.Random(seed)
    log = NightLog.open(path, lambda: NOW_UTC_S, fail, fail)
    night = log.resume_or_begin_night(NOW_UTC_S)
    session = Session(counting_answer, log)
    session.resume(night)
    session.set_site(Site(48.0, 11.0, 500.0), Air(950.0))
    wanderer = Wanderer(session, chance, NOW_UTC_S + 1e5 * seed)
    print("ready", flush=True)
    while True:
        print(json.dumps([time.monotonic(), state(session)]), flush=True)
        wanderer.step()
        print(json.dumps([time.monotonic(), state(session)]), flush=True)
        app.processEvents()
        time.sleep(chance.uniform(0.0, 0.03))


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]))
