"""What was found of guiding, pointing and vibration, kept with the night and taken up again."""

from __future__ import annotations

import math
import secrets
from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict, dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np
from PySide6.QtCore import QObject, Signal

from app.devices.files import GrowingFileSource
from app.devices.practice import PracticeSource
from app.devices.source import Source
from app.pages.tracking.figures import (
    FIGURES_KEY,
    Figures,
    Given,
    Reversal,
    Tap,
    TrackingPlace,
    TrackingQuestion,
    from_kept,
    to_keep,
)
from app.pages.tracking.parts import TrackingParts
from app.workers.latest import Job
from core.alignment.driftlog.records import Leg, Rejected
from core.language import marked, say
from core.night.record import Entry, Kind, LegPurpose
from core.tracking.pointing import PointedStar

if TYPE_CHECKING:
    from app.night.session import Session
    from app.night.snapshot import Snapshot
    from app.pages.tracking.parts import LiveParts, TrackingLog
    from app.pages.tracking.study import TrackingStudy
    from app.store.records import StoredLeg
    from core.alignment.axis.solution import Solution
    from core.sky.site import Air, Site
    from core.tracking.guiding import GuidingCheck
    from core.tracking.pointing import Pointing
    from core.tracking.vibration import Vibration


AFTER = "after a change"
BEFORE = "before a change"
Content = dict[str, Any]


class ResultKeeper:
    """One entry of the night for each thing measured; said anew when a figure changed.

    What is invented is never kept.
    """

    def __init__(self, log: TrackingLog, guided_key: Callable[[], int | None]) -> None:
        self._log = log
        self._guided_key = guided_key
        self._of: dict[str, tuple[object, int]] = {}  # what an entry is about, and its key
        self._last: dict[str, Content] = {}
        self.stars_are_of_tonight = False

    def keep(self, study: TrackingStudy) -> None:
        asked = study.question
        guided, pointed = asked.guided, study.pointing.value
        if guided is not None and not guided.is_practice and study.guiding.value is not None:
            key = self._guided_key()
            content = guiding_content(study.guiding.value, key)
            for said in (study.settling.value, study.backlash.value):
                if said is not None:
                    content["sentences"].append(str(said.sentence))
            self._put(Kind.GUIDING, "", key, content)
        if pointed is not None and self.stars_are_of_tonight:
            stars = [asdict(star) for star in asked.sightings]
            self._put(Kind.POINTING, "", "", pointing_content(pointed, stars))
        for tap, part, when in (
            (asked.before, study.before, BEFORE),
            (asked.after, study.after, AFTER),
        ):
            if tap is not None and not tap.is_practice and part.value is not None:
                self._put(Kind.VIBRATION, when, tap, vibration_content(part.value, tap, when))

    def take_up(self, entries: Sequence[Entry]) -> tuple[Tap | None, Tap | None]:
        """The taps of this night, before and after; what is said of them goes on as one entry."""
        taps: dict[str, Tap] = {}
        for entry in entries:
            which, about = "", entry.content.get("leg", "")
            if entry.kind == Kind.VIBRATION:
                which, about = str(entry.content.get("when")), _tap(entry.content)
                if about is None:
                    continue
                taps[which] = about
            if entry.kind in (Kind.GUIDING, Kind.POINTING, Kind.VIBRATION):
                self._of[entry.kind + which] = (about, entry.key)
                self._last[entry.kind + which] = dict(entry.content)
        return taps.get(BEFORE), taps.get(AFTER)

    def _put(self, kind: Kind, which: str, about: object, content: Content) -> None:
        name = kind + which
        if self._last.get(name) == content:
            return
        known, key = self._of.get(name, (None, None))
        same = key if known is about or known == about else None
        self._last[name] = content
        self._of[name] = (about, self._log.put_entry(kind, content, entry_id=same))


def guiding_content(found: GuidingCheck, leg_key: int | None) -> Content:
    return {
        "leg": leg_key,
        "right_ascension_rms_arcsec": round(found.east.rms_arcsec, 3),
        "declination_rms_arcsec": round(found.north.rms_arcsec, 3),
        "guiding_rms_arcsec": round(found.total_rms_arcsec, 3),
        "guide_interval_s": round(found.interval_s, 2),
        "sentence": str(found.sentence),
        "sentences": list(map(str, found.findings)),
    }


def pointing_content(found: Pointing, stars: list[Content]) -> Content:
    return {
        "stars": len(stars),
        "as_read_rms_arcmin": round(found.rms_arcmin, 3),
        "left_rms_arcmin": round(found.rms_left_arcmin, 3),
        "sentence": str(found.sentence),
        "sentences": [str(part.sentence) for part in found.terms if part.stands_out],
        "kept": {"stars": stars},
    }


def vibration_content(found: Vibration, tap: Tap, when: str) -> Content:
    return {
        "when": when,
        "first_swing_arcsec": round(found.first_swing_arcsec, 3),
        "frequency_hz": round(found.frequency_hz, 3),
        "settling_s": round(found.settling_s, 2),
        "sentence": str(found.sentence),
        "kept": {
            "time_s": np.round(tap.time_s, 4).tolist(),
            "offset_arcsec": np.round(tap.offset_arcsec, 4).tolist(),
            "origin": tap.origin,
        },
    }


def _tap(content: Mapping[str, Any]) -> Tap | None:
    """None where what was kept cannot be used."""
    kept = content.get("kept")
    try:
        time_s, offset = (
            np.array(kept[name], dtype=np.float64)  # type: ignore[index]
            for name in ("time_s", "offset_arcsec")
        )
    except (TypeError, ValueError, KeyError):
        return None
    if time_s.ndim != 1 or time_s.shape != offset.shape or not time_s.size:
        return None
    return Tap(time_s, offset, str(kept.get("origin", "")) if isinstance(kept, dict) else "")


# The lines of a growing file that could not be used: how many, and which was the last.


@dataclass(frozen=True)
class LeftOut:
    """All but the last are only counted: a file may go wrong for the whole of a night."""

    count: int = 0
    last: Rejected | None = None

    def and_these(self, lines: Sequence[Rejected]) -> LeftOut:
        """With further lines, in order, at least one."""
        return LeftOut(self.count + len(lines), lines[-1])

    @property
    def words(self) -> str:
        """Empty while every line could be used."""
        if self.last is None:
            return ""
        if self.count == 1:
            return say(
                "Line {number} of the file was left out: {reason}",
                number=self.last.line_number,
                reason=self.last.reason,
            )
        return say(
            "{count} lines of the file were left out, the last of them line {number}: {reason}",
            count=f"{self.count:,}",
            number=self.last.line_number,
            reason=self.last.reason,
        )


# Recording a run as it is tracked: which source delivers, where it goes, how it is resumed.

RECORDING_KEY = "tracking recording"  # setting: the source of the run under way
FEWEST_READINGS = 60  # fewer cannot be judged, as core.tracking.run refuses them
SPEEDS = (1.0, 10.0, 60.0)


class LiveRun(QObject):
    """Joins one source to the recorder, and what was recorded to the bench.

    `changed`: recording began or ended, or there is something new to say; `reading_added`: cheap.
    """

    changed = Signal()
    reading_added = Signal()
    scale_needed = Signal()

    def __init__(
        self, bench: TrackingModel, live: LiveParts, parent: QObject | None = None
    ) -> None:
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
        self._bench.parts.log.put_setting(RECORDING_KEY, {"seed": seed, "begin_utc_s": begin_utc_s})
        source, star_deg = self._practice_source(seed, begin_utc_s)
        self._recorder.begin(say("practice run"), *star_deg, LegPurpose.PRACTICE)
        self._begin(source, say("Practice sky, recorded live, invented"))

    def follow(self, path: Path) -> None:
        """Records what another program adds to the file."""
        self._bench.parts.log.put_setting(RECORDING_KEY, {"file": str(path)})
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
        self._bench.parts.log.put_setting(RECORDING_KEY, None)
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
        kept = self._bench.parts.log.get_setting(RECORDING_KEY)
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


def recorded(
    leg: Leg, origin: str, bench: TrackingModel, is_practice: bool, leg_id: int | None
) -> Given:
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


# What the Tracking page has to look at, and the study of it, made anew at every change.

STARS_KEY = "tracking stars"
STOPPED = marked(
    "The computation was stopped before its end. Change anything, and it begins again."
)
FAULT = marked("The computation broke off because of a fault in the program. Report it.")


class TrackingModel(QObject):
    """`changed` tells that something to look at, a figure or the study is another one."""

    changed = Signal()

    def __init__(
        self, session: Session, parts: TrackingParts, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self.parts = parts
        self.typed = from_kept(parts.log.get_setting(FIGURES_KEY))
        self.study: TrackingStudy | None = None
        self.fault = ""
        self.run: Given | None = None
        self.guided: Given | None = None
        self.reversal: Reversal | None = None
        self.sightings: tuple[PointedStar, ...] = _read_stars(parts.log.get_setting(STARS_KEY))
        self.pointed_from: TrackingPlace | None = None
        self.before: Tap | None = None
        self.after: Tap | None = None
        self._run_key: int | None = None  # of the run in the log of nights
        self._kept_run: tuple[Leg, int | None] | None = None
        self._run_axis_state = 0
        self._guided_key: int | None = None
        self._keeping = ResultKeeper(parts.log, lambda: self._guided_key)
        self._is_watched, self._is_stale = False, False
        self._place: tuple[Site | None, Air | None] = (None, None)
        self._solution: Solution | None = None
        self._here: TrackingPlace | None = None
        self.job = Job(self)
        self.live = None if parts.live is None else LiveRun(self, parts.live, self)
        self.job.done.connect(self._take)
        session.follow(self._keep, readings=True)
        session.changed.connect(self._session_changed)
        if parts.budget is not None:
            parts.budget.changed.connect(self.work)

    def begin(self) -> None:
        """Goes on with the run and the stars of this night."""
        stored = self.parts.earlier
        if stored is not None:
            is_practice = stored.purpose == LegPurpose.PRACTICE
            axis_state = self._tonight.axis_state
            # Once the bolts were turned nobody knows whether that was before the run or after.
            given = Given(
                stored.leg,
                stored.leg.label,
                _practice_place() if is_practice else None,
                is_practice=is_practice,
                is_tonight=axis_state == 1 and not is_practice,
                kept_as=stored.leg_id,
            )
            here = self.here()
            self.run = given if here is None else given.placed(here)
            self._run_key, self._run_axis_state = stored.leg_id, axis_state
        guided = self.parts.guided
        if guided is not None:
            self.guided = Given(guided.leg, guided.leg.label, is_kept=True)
            self._guided_key = guided.leg_id
        self.before, self.after = self._keeping.take_up(self.parts.entries)
        if self._has_any():
            self.work()

    def figures(self) -> Figures:
        """What is typed, over what tonight's exposure and common practice say."""
        return self.typed.over(self.parts.usual())

    def here(self) -> TrackingPlace | None:
        """Tonight's place with what is known of the axis; the same object while nothing changes."""
        from core.imaging.tolerance import Alignment

        shown = self._tonight
        solution = None if shown.solution_is_stale else shown.solution
        place = (shown.site, shown.air)
        if place != self._place or solution is not self._solution:
            self._place, self._solution = place, solution
            self._here = None
            if shown.site is not None and shown.air is not None:
                known = None if solution is None else Alignment.of(solution)
                self._here = TrackingPlace(shown.site, shown.air, known)
        return self._here

    def legs(self) -> Sequence[Leg]:
        """Of tonight, in this axis state."""
        return self._tonight.legs

    def want(self, **figures: Any) -> None:
        """Keeps figures typed; None for one that was cleared."""
        self.typed = replace(self.typed, **figures)
        self.parts.log.put_setting(FIGURES_KEY, to_keep(self.typed))
        self.work()

    def take_run(self, given: Given) -> None:
        """Keeps it in the log of nights unless it is invented."""
        self.run = given
        self._run_axis_state = self._tonight.axis_state
        self._kept_run, self._run_key = None, given.kept_as
        if not given.is_practice:
            key = given.kept_as if given.is_kept else self.parts.keep_run(given.leg)
            self._kept_run, self._run_key = (given.leg, key), key
        self.work()

    def leave_run_out(self) -> None:
        """On disk it is only marked."""
        if self._run_key is not None:
            self.parts.log.discard_leg(self._run_key)
        self.run, self._kept_run, self._run_key = None, None, None
        self.work()

    def leave_guided_out(self) -> None:
        """On disk it is only marked."""
        if self._guided_key is not None:
            self.parts.log.discard_leg(self._guided_key)
        self.guided, self._guided_key = None, None
        self.work()

    def take_guided(self, given: Given) -> None:
        """Keeps it in the log of nights unless it is invented."""
        self.guided, self._guided_key = given, given.kept_as
        if not (given.is_practice or given.is_kept):
            self._guided_key = self.parts.keep_run(given.leg, LegPurpose.GUIDING)
        self.work()

    def take_reversal(self, reversal: Reversal | None) -> None:
        self.reversal = reversal
        self.work()

    def take_sightings(
        self, sightings: tuple[PointedStar, ...], place: TrackingPlace | None
    ) -> None:
        """`place`: None for tonight's; those of another place are not kept."""
        self.sightings = sightings
        self.pointed_from = place
        self._keeping.stars_are_of_tonight = place is None
        if place is None:
            kept = [asdict(one) for one in sightings]
            self.parts.log.put_setting(STARS_KEY, kept)
        self.work()

    def take_tap(self, tap: Tap | None, is_after: bool) -> None:
        if is_after:
            self.after = tap
        else:
            self.before = tap
        self.work()

    def close(self) -> None:
        if self.live is not None:
            self.live.close()
        self.job.close()

    def work(self) -> None:
        """Asks anew; the newest question wins."""
        self._is_stale = False
        if not self._has_any():
            self.study, self.fault = None, ""
            self.changed.emit()
            return
        asked, old = self._question(), self.study

        def work(keep_going: Any) -> TrackingStudy | None:
            from app.pages.tracking.study import work_out

            return work_out(asked, old, keep_going)

        self.job.send(work)
        self.changed.emit()

    def stop(self) -> None:
        """Gives up what is being worked out."""
        self.job.stop()
        self.fault = say(STOPPED)
        self.changed.emit()

    def _has_any(self) -> bool:
        """Whether there is something to work out."""
        figures = self.typed
        readings = (self.run, self.guided, self.reversal, self.before, self.after)
        has_load = None not in (figures.payload_kg, figures.capacity_kg)
        return any(one is not None for one in readings) or bool(self.sightings) or has_load

    def _question(self) -> TrackingQuestion:
        here = self.here()
        return TrackingQuestion(
            figures=self.figures(),
            here=here,
            optics=self.parts.optics(),
            solution=self._tonight.solution,
            run=self.run,
            guided=self.guided,
            reversal=self.reversal,
            sightings=self.sightings,
            pointed_from=self.pointed_from or here,
            before=self.before,
            after=self.after,
        )

    def _take(self, answer: object) -> None:
        from app.pages.tracking.study import TrackingStudy

        if isinstance(answer, TrackingStudy):
            self.study, self.fault = answer, ""
            self._keep_result(answer)
            self._keeping.keep(answer)
        else:
            self.fault = say(FAULT)
        self.changed.emit()

    def _keep_result(self, study: TrackingStudy) -> None:
        """Once a run, when it tells its periodic error."""
        found, run = study.drive.periodic.value, study.question.run
        if found is None or run is None or self._kept_run is None:
            return
        if run.leg is not self._kept_run[0]:
            return
        key, self._kept_run = self._kept_run[1], None
        sentences = [str(found.sentence)]
        if study.drive.training.value is not None:
            sentences.append(str(study.drive.training.value.sentence))
        self.parts.keep_result(
            {
                "leg": key,
                "periodic_error_arcsec": found.size.peak_to_peak_arcsec,
                "worm_period_s": found.period_s,
                "sentences": sentences,
            }
        )

    def _keep(self, snapshot: Snapshot) -> None:
        self._tonight = snapshot

    def _session_changed(self, shown: Snapshot) -> None:
        before = self._here
        here = self.here()
        if here is before:
            return
        run = self.run
        if run is not None and here is not None:
            same_axis = shown.axis_state == self._run_axis_state
            self.run = run.placed(here if same_axis else here.without_axis())
        if self.run is not run or self.sightings:
            self._is_stale = True
            self._catch_up()

    def watch(self, is_watched: bool) -> None:
        """Whether the page is in view; out of view nothing is worked out for a better axis."""
        self._is_watched = is_watched
        self._catch_up()

    def _catch_up(self) -> None:
        if self._is_watched and self._is_stale:
            self.work()


def _practice_place() -> TrackingPlace:
    from app.pages.tracking.practice import practice_place

    return practice_place()


def _read_stars(kept: Any) -> tuple[PointedStar, ...]:
    """None where what was kept cannot be used."""
    if not isinstance(kept, list):
        return ()
    try:
        return tuple(PointedStar(**one) for one in kept)
    except TypeError:
        return ()
