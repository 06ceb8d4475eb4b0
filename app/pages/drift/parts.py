"""What the Drift page needs from outside, besides the session."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

if TYPE_CHECKING:
    from app.devices.files import LogFileSource
    from app.devices.practice import PracticeSource
    from app.devices.typed import ManualSource
    from app.night.equipment import FieldInView
    from app.workers.awake import Awake
    from app.workers.sound import Sounds
    from core.sky.catalogues import StarNow
    from core.sky.horizon import Horizon
    from core.sky.site import Air, Site


@dataclass(frozen=True)
class DriftParts:
    """`now`: seconds since 1970-01-01 UTC. `stars_up`: brightest first; none without a site.

    `place_tonight`: ICRS place of a star at this time, degrees. `practice`: a source with a fresh
    hidden error at a site. `meadow`: the invented site to practise on for whoever has given none.
    `horizon`: what stands in the way at a site. `sounds`: tones for who looks into the eyepiece.
    `field`: how much sky is in view. `awake`: keeps the screen on.
    """

    now: Callable[[], float]
    stars_up: Callable[[Site | None, Air | None], Sequence[StarNow]]
    place_tonight: Callable[[StarNow], tuple[float, float]]
    manual: Callable[[QObject], ManualSource]
    log_file: Callable[[Path, QObject], LogFileSource]
    practice: Callable[[Site, Air, QObject], PracticeSource]
    meadow: tuple[Site, Air]
    horizon: Callable[[Site], Horizon]
    sounds: Sounds
    field: FieldInView
    awake: Awake
