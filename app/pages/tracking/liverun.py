"""Recording a run as it is tracked: which source delivers, where it goes, how it is resumed."""

from __future__ import annotations

import math
import secrets
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal

from app.pages.tracking.leftout import LeftOut
from app.pages.tracking.question import Given
from app.session.runrecorder import RunRecorder
from app.sources.growing import GrowingFileSource
from app.sources.practice import PracticeSource
from app.sources.source import Source
from core.alignment.driftlog.records import Leg, Rejected
from core.language import say
from core.night.record import Purpose

if TYPE_CHECKING:
    from app.pages.tracking.bench import Bench
    from app.storage.records import StoredLeg

KEY = "tracking recording"  # setting: the source of the run under way
FEWEST_READINGS = 60  # fewer cannot be judged, as core.tracking.run refuses them
SPEEDS = (1.0, 10.0, 60.0)


@dataclass(frozen=True, eq=False)
class LiveParts:
    """`interrupted`: the run that was being recorded when the program ended, to go on with."""

    recorder: RunRecorder
    interrupted: StoredLeg | None = None


class LiveRun(QObject):
    """Joins one source to the recorder, and what was recorded to the bench.

    `changed`: recording began or ended, or there is something new to say; `reading_added`: cheap.
    """

    changed = Signal()
    reading_added = Signal()
    scale_needed = Signal()

    def __init__(self, bench: Bench, live: LiveParts, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._bench = bench
        self._recorder = live.recorder
        self._source: Source | None = None
        self._begun_utc_s = math.nan  # by the program's clock, of the newest reading
        self._origin = ""
        self.speed = SPEEDS[-1]
        self.left_out = LeftOut()
        self.said = ""
        live.recorder.changed.connect(self.changed)
        live.recorder.reading_added.connect(self._note_reading)
        if live.interrupted is not None:
            self._resume(live.interrupted)

    @property
    def is_on(self) -> bool:
        """Whether a source is delivering, be it the first reading or the thousandth."""
        return self._source is not None

    @property
    def is_practice(self) -> bool:
        return isinstance(self._source, PracticeSource)

    @property
    def trouble(self) -> str:
        return self._recorder.trouble

    @property
    def origin(self) -> str:
        return self._origin

    def leg(self) -> Leg | None:
        return self._recorder.leg()

    def silent_s(self) -> float:
        """How long no reading has come."""
        return self._bench.parts.now() - self._begun_utc_s

    def practise(self) -> None:
        """Records an invented drive under the practice sky."""
        seed, begin_utc_s = secrets.randbits(32), self._bench.parts.now()
        self._bench.parts.log.put_setting(KEY, {"seed": seed, "begin_utc_s": begin_utc_s})
        source, star_deg = self._practice_source(seed, begin_utc_s)
        self._recorder.begin(say("practice run"), *star_deg, Purpose.PRACTICE)
        self._begin(source, say("Practice sky, recorded live, invented"))

    def follow(self, path: Path) -> None:
        """Records what another program adds to the file."""
        self._bench.parts.log.put_setting(KEY, {"file": str(path)})
        self._begin_following(path, None)

    def set_speed(self, factor: float) -> None:
        """Of the practice sky, how many times as fast as a real night."""
        self.speed = factor
        if isinstance(self._source, PracticeSource):
            self._source.set_speed(factor)

    def finish(self, said: str = "") -> None:
        """Records no more; what was recorded is looked at now."""
        if self._source is None:
            return
        is_practice, leg_id = self.is_practice, self._recorder.leg_id
        self._let_go()
        leg = self._recorder.end()
        self._bench.parts.log.put_setting(KEY, None)
        self.said = "\n".join(
            part for part in (said or self._told(leg), self.left_out.words) if part
        )
        if leg is not None and leg.utc_s.size >= FEWEST_READINGS:
            self._bench.take_run(recorded(leg, self._origin, self._bench, is_practice, leg_id))
        self.changed.emit()

    def close(self) -> None:
        """Leaves the run open on disk, to be resumed; may be called twice."""
        self._let_go()

    def _told(self, leg: Leg | None) -> str:
        if leg is None:
            return say("Nothing was recorded: no reading had come.")
        if leg.utc_s.size < FEWEST_READINGS:
            return say(
                "Recorded {n} readings, too few to judge ({least} are needed, over three turns of "
                "the worm); they are in the log of nights.",
                n=leg.utc_s.size,
                least=FEWEST_READINGS,
            )
        return say("Recorded {n} readings.", n=f"{leg.utc_s.size:,}")

    def _practice_source(
        self, seed: int, begin_utc_s: float
    ) -> tuple[PracticeSource, tuple[float, float]]:
        from app.pages.tracking.practice import live_practice

        source, star_deg = live_practice(seed, begin_utc_s, self)
        source.set_speed(self.speed)
        return source, star_deg

    def _begin_following(self, path: Path, after_utc_s: float | None) -> None:
        scale = self._bench.typed.scale_arcsec_per_px
        source = GrowingFileSource(path, scale, after_utc_s, self)
        source.star.connect(self._take_star)
        source.left_out.connect(self._note_left_out)
        source.scale_needed.connect(self.scale_needed)
        self._begin(source, say("Recorded tonight from “{file}”", file=path.name))

    def _begin(self, source: Source, origin: str) -> None:
        self._let_go()
        self._source, self._origin = source, origin
        self._begun_utc_s = self._bench.parts.now()
        self.left_out, self.said = LeftOut(), ""
        source.reading.connect(self._recorder.add_reading)
        source.ended.connect(self.finish)
        source.start()
        self.changed.emit()

    def _let_go(self) -> None:
        source, self._source = self._source, None
        if source is not None:
            source.stop()
            source.deleteLater()

    def _take_star(self, label: str, ra_deg: float, dec_deg: float) -> None:
        """A resumed run goes on as long as the file stays with its star."""
        leg = self._recorder.leg()
        if leg is None or (leg.ra_deg, leg.dec_deg) != (ra_deg, dec_deg):
            self._recorder.begin(label, ra_deg, dec_deg)

    def _note_left_out(self, lines: tuple[Rejected, ...]) -> None:
        self.left_out = self.left_out.and_these(lines)
        self.said = self.left_out.words
        self.changed.emit()

    def _note_reading(self) -> None:
        self._begun_utc_s = self._bench.parts.now()
        self.reading_added.emit()

    def _resume(self, stored: StoredLeg) -> None:
        kept = self._bench.parts.log.get_setting(KEY)
        self._recorder.resume(stored)
        leg = stored.leg
        last_utc_s = float(leg.utc_s[-1]) if leg.utc_s.size else None
        if isinstance(kept, dict) and isinstance(kept.get("file"), str):
            self._begin_following(Path(kept["file"]), last_utc_s)
        elif isinstance(kept, dict) and _is_practice(kept):
            source, _ = self._practice_source(kept["seed"], kept["begin_utc_s"])
            if last_utc_s is not None:
                source.skip_to(last_utc_s)
            self._begin(source, say("Practice sky, recorded live, invented"))
        else:
            self._recorder.end()


def recorded(leg: Leg, origin: str, bench: Bench, is_practice: bool, leg_id: int | None) -> Given:
    """What was recorded, to be looked at."""
    from app.pages.tracking.practice import practice_place

    return Given(
        leg,
        origin,
        practice_place() if is_practice else bench.here(),
        is_practice=is_practice,
        is_kept=True,
        is_tonight=not is_practice,
        kept_as=leg_id,
    )


def _is_practice(kept: dict[str, Any]) -> bool:
    return isinstance(kept.get("seed"), int) and isinstance(kept.get("begin_utc_s"), float)
