"""A night read from the log, with its pictures made ready to be shown."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtGui import QImage

from app.widgets.photo import small
from core.night.record import Entry, Kind, NightRecord
from core.night.report import drift_arcsec_per_min


@dataclass(frozen=True, eq=False)
class PictureShown:
    """A picture of the night. `image`: None where it is none that can be shown."""

    entry: Entry
    image: QImage | None

    @property
    def name(self) -> str:
        """Of the file it came from."""
        return str(self.entry.content.get("name") or "")

    @property
    def caption(self) -> str:
        return str(self.entry.content.get("caption") or "")


@dataclass(frozen=True, eq=False)
class Opened:
    """`drifts`: by the key of a leg, its slope in arcseconds a minute; None: too few readings."""

    night: NightRecord
    pictures: list[PictureShown]
    drifts: Mapping[int, float | None]


def opened(night: NightRecord) -> Opened:
    """For a worker thread: a long leg takes a while to be fitted."""
    pictures = night.of_kind(Kind.PICTURE)
    return Opened(
        night,
        [PictureShown(one, small(one.attachment or b"")) for one in pictures],
        {one.key: drift_arcsec_per_min(one.leg) for one in night.legs},
    )
