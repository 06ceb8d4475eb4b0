"""What every way of getting readings has in common."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QObject, Signal


@dataclass(frozen=True, slots=True)
class Reading:
    """One look at the star being watched.

    `utc_s`: seconds since 1970-01-01 UTC. `north_arcsec`: offset of the star relative to where the
    mount keeps pointing, north positive, from any origin fixed within the leg. `east_arcsec`:
    likewise, None where unread. `sigma_arcsec`: stated error of one standard deviation, None where
    unstated.
    """

    utc_s: float
    north_arcsec: float
    east_arcsec: float | None = None
    sigma_arcsec: float | None = None


class Source(QObject):
    """A way readings come in. It emits and knows nobody who listens.

    `reading` carries a `Reading`. `ended` carries one sentence for the person: why no more
    readings come; it is emitted once for every `start`, unless `stop` came first.
    """

    reading = Signal(object)
    ended = Signal(str)

    name: str = ""

    def start(self) -> None:
        """Begin to deliver readings."""
        raise NotImplementedError

    def stop(self) -> None:
        """Deliver no more, and leave no thread or timer running; a second call does nothing."""
        raise NotImplementedError
