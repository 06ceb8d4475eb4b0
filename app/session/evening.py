"""The evening as pages plan it: place, clock, target and figures, whichever of them changes."""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal

from app.session.around import Around, around
from app.session.places import Place, Places
from app.session.plans import Plans
from core.night.darkness import Night, night_of
from core.sky.clocks import Zone, find
from core.sky.site import Site

if TYPE_CHECKING:
    from app.session.session import Session

UTC = "utc"
PLACE = "place"
_ROUND_S = 600.0


class Evening(QObject):
    """`changed` when anything of it does; whoever comes into view asks `refresh` for what another
    page may have kept meanwhile.
    """

    changed = Signal()

    def __init__(
        self,
        session: Session,
        places: Places,
        plans: Plans,
        now: Callable[[], float],
        own_zone: str,
        parent: QObject | None = None,
    ) -> None:
        """`now`: seconds since 1970-01-01 UTC. `own_zone`: the computer's time zone by name."""
        super().__init__(parent)
        self._session = session
        self._places = places
        self._own_zone = own_zone
        self.plans = plans
        self.now = now
        self._known: object = None
        self._around: Around | None = None
        session.changed.connect(lambda _snapshot: self.refresh())
        plans.changed.connect(self.changed)
        self.refresh()

    def around(self) -> Around | None:
        """None while no site is given."""
        return self._around

    def zone(self) -> Zone:
        """What times are shown in: the place's zone, or UTC where that is wanted."""
        if self._around is None or self.shows_utc():
            return find("UTC")
        return self._around.zone

    def shows_utc(self) -> bool:
        return self.plans.word("clock", PLACE) == UTC

    def show_utc(self, wanted: bool) -> None:
        self.plans.set_word("clock", UTC if wanted else PLACE)

    def refresh(self) -> None:
        snapshot = self._session.snapshot()
        place: Place | None = self._places.of(snapshot.site)
        known = snapshot.site, snapshot.air, place
        if known != self._known:
            self._known = known
            self._around = around(snapshot, self._places, self._own_zone)
            self.changed.emit()


def night(site: Site, utc_s: float) -> Night:
    """`night_of`, remembered for some minutes; for worker threads."""
    return _night(site, round(utc_s / _ROUND_S))


@lru_cache(maxsize=8)
def _night(site: Site, rounded: int) -> Night:
    return night_of(site, rounded * _ROUND_S)
