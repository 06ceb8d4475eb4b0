"""What the Drift page gets from the sky and from the sources."""

from __future__ import annotations

import secrets
from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtCore import QObject

from app.pages.drift.parts import DriftParts
from app.sources.logfile import LogFileSource
from app.sources.manual import ManualSource
from app.sources.practice import PracticeSource
from core.practice.simulation import (
    MEADOW_AIR,
    NORTHERN_MEADOW,
    PracticeMount,
    coming_midnight_utc_s,
)
from core.sky import catalogues
from core.sky.catalogues import StarNow
from core.sky.horizon import Horizon
from core.sky.site import Air, Site

if TYPE_CHECKING:
    from app.session.fieldinview import FieldInView
    from app.session.session import Session
    from app.signals.awake import Awake
    from app.signals.sounds import Sounds

LOWEST_DEG = 12.0  # lower, nobody should measure
MOST_STARS = 400


def _nothing_in_the_way(_site: Site) -> Horizon:
    return Horizon.flat()


def drift_parts(
    session: Session,
    now: Callable[[], float],
    sounds: Sounds,
    field: FieldInView,
    awake: Awake,
    horizon: Callable[[Site], Horizon] = _nothing_in_the_way,
) -> DriftParts:
    """`now`: seconds since 1970-01-01 UTC. `horizon`: what stands in the way at a site."""

    def stars_up() -> Sequence[StarNow]:
        snapshot = session.snapshot()
        if snapshot.site is None or snapshot.air is None:
            return ()
        stars = catalogues.load_stars()
        return stars.up_now(snapshot.site, snapshot.air, now(), LOWEST_DEG, MOST_STARS)

    def place_tonight(star: StarNow) -> tuple[float, float]:
        return catalogues.load_stars().at_epoch(star.star, now())

    def log_file(path: Path, parent: QObject) -> LogFileSource:
        return LogFileSource(path, parent)

    def practice(site: Site, air: Air, parent: QObject) -> PracticeSource:
        return _practice(site, air, now(), parent)

    return DriftParts(
        now,
        stars_up,
        place_tonight,
        lambda parent: ManualSource(now, parent),
        log_file,
        practice,
        (NORTHERN_MEADOW, MEADOW_AIR),
        horizon,
        sounds,
        field,
        awake,
    )


def _practice(site: Site, air: Air, utc_s: float, parent: QObject) -> PracticeSource:
    """A mount nobody has seen before, under the coming night."""
    seed = secrets.randbits(32)
    mount = PracticeMount.hidden(np.random.default_rng(seed))
    midnight_utc_s = coming_midnight_utc_s(utc_s, site.longitude_deg)
    return PracticeSource(mount, site, air, midnight_utc_s, seed, parent)
