"""What the person did about tonight's meridian flips: seen when, flipped, centred again."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import Any

from PySide6.QtCore import QObject, Signal

from app.session.entrylog import EntryLog
from core.night.record import Entry, Kind


@dataclass(frozen=True)
class Flip:
    """Unix seconds; `centred_utc_s`: None until the target was centred and focused again."""

    flipped_utc_s: float
    centred_utc_s: float | None = None


class FlipBook(QObject):
    """By the name of the target, kept with the night at every change. `changed` follows each."""

    changed = Signal()

    def __init__(
        self,
        log: EntryLog,
        entries: Sequence[Entry],
        now: Callable[[], float],
        parent: QObject | None = None,
    ) -> None:
        """`entries`: those of tonight so far. `now`: seconds since 1970-01-01 UTC."""
        super().__init__(parent)
        self._log, self._now = log, now
        self._keys: dict[str, int] = {}
        self._flips: dict[str, tuple[Flip, ...]] = {}
        for entry in entries:
            target = entry.content.get("target")
            if entry.kind == Kind.FLIP and isinstance(target, str):
                self._keys[target] = entry.key
                self._flips[target] = _flips(entry.content.get("flips"))

    def is_seen(self, target: str) -> bool:
        """Whether the person has looked at when and on which side this target's flip comes."""
        return target in self._flips

    def flips(self, target: str) -> tuple[Flip, ...]:
        """Those done, in order of time."""
        return self._flips.get(target, ())

    def see(self, target: str) -> None:
        """The plan of this target's flip is on the screen."""
        if not self.is_seen(target):
            self._put(target, ())

    def flip(self, target: str) -> None:
        """The mount has changed sides just now."""
        self._put(target, (*self.flips(target), Flip(self._now())))

    def centre(self, target: str) -> None:
        """The target is centred and focused again just now."""
        *before, last = self.flips(target)
        self._put(target, (*before, replace(last, centred_utc_s=self._now())))

    def take_back(self, target: str) -> None:
        """The last thing said was a mistake."""
        *before, last = self.flips(target)
        if last.centred_utc_s is not None:
            before.append(Flip(last.flipped_utc_s))
        self._put(target, tuple(before))

    def _put(self, target: str, flips: tuple[Flip, ...]) -> None:
        self._flips[target] = flips
        done = [
            {"flipped_utc_s": one.flipped_utc_s, "centred_utc_s": one.centred_utc_s}
            for one in flips
        ]
        content = {"target": target, "flips": done}
        self._keys[target] = self._log.put_entry(
            Kind.FLIP, content, entry_id=self._keys.get(target)
        )
        self.changed.emit()


def _flips(given: Any) -> tuple[Flip, ...]:
    """What `_put` kept; anything else is left out."""
    read = []
    for one in given if isinstance(given, list) else ():
        flipped = one.get("flipped_utc_s") if isinstance(one, dict) else None
        centred = one.get("centred_utc_s") if isinstance(one, dict) else None
        if isinstance(flipped, int | float):
            at = float(centred) if isinstance(centred, int | float) else None
            read.append(Flip(float(flipped), at))
    return tuple(read)
