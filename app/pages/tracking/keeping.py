"""What was found of guiding, pointing and vibration, kept with the night and taken up again."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict
from typing import TYPE_CHECKING, Any

import numpy as np

from app.pages.tracking.question import Tap
from core.night.record import Entry, Kind

if TYPE_CHECKING:
    from app.pages.tracking.parts import TrackingLog
    from app.pages.tracking.study import Study
    from core.tracking.guiding import GuidingCheck
    from core.tracking.pointing import Pointing
    from core.tracking.vibration import Vibration

AFTER = "after a change"
BEFORE = "before a change"
Content = dict[str, Any]


class Keeping:
    """One entry of the night for each thing measured; said anew when a figure changed.

    What is invented is never kept.
    """

    def __init__(self, log: TrackingLog, guided_key: Callable[[], int | None]) -> None:
        self._log = log
        self._guided_key = guided_key
        self._of: dict[str, tuple[object, int]] = {}  # what an entry is about, and its key
        self._last: dict[str, Content] = {}
        self.stars_are_of_tonight = False

    def keep(self, study: Study) -> None:
        asked = study.question
        guided, pointed = asked.guided, study.pointing.value
        if guided is not None and not guided.is_practice and study.guiding.value is not None:
            key = self._guided_key()
            content = guiding_content(study.guiding.value, key)
            for said in (study.settling.value, study.backlash.value):
                if said is not None:
                    content["sentences"].append(said.sentence)
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
        "sentence": found.sentence,
        "sentences": [note.text for note in found.findings],
    }


def pointing_content(found: Pointing, stars: list[Content]) -> Content:
    return {
        "stars": len(stars),
        "as_read_rms_arcmin": round(found.rms_arcmin, 3),
        "left_rms_arcmin": round(found.rms_left_arcmin, 3),
        "sentence": found.sentence,
        "sentences": [part.sentence for part in found.terms if part.stands_out],
        "kept": {"stars": stars},
    }


def vibration_content(found: Vibration, tap: Tap, when: str) -> Content:
    return {
        "when": when,
        "first_swing_arcsec": round(found.first_swing_arcsec, 3),
        "frequency_hz": round(found.frequency_hz, 3),
        "settling_s": round(found.settling_s, 2),
        "sentence": found.sentence,
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
