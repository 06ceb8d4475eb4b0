"""What whoever follows the night now would be told."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, Signal

from app.night.activenight import ActiveNight
from app.night.session import Session
from app.night.snapshot import Snapshot


def heard(night: Session | ActiveNight) -> Snapshot:
    """The newest snapshot, as it is handed over at once to whoever begins to follow."""
    told: list[Snapshot] = []
    night.follow(told.append)
    night.changed.disconnect(told.append)
    return told[0]


class FollowedFake(QObject):
    """Stands in for a session where only its snapshots matter; `now` is the newest."""

    changed = Signal(object)
    reading_added = Signal(object)
    now: Any

    def snapshot(self) -> Any:
        return self.now

    def follow(self, take: Callable[[Any], object], readings: bool = False) -> None:
        self.changed.connect(take)
        if readings:
            self.reading_added.connect(take)
        take(self.snapshot())
