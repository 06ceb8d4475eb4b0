"""The legs of tonight: a growing buffer each, and their labels."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from app.devices.source import Reading
from core.alignment.driftlog.records import Leg
from core.alignment.guide.fieldnorth import reversed_leg

# Names for the legs of one night, none of them twice.


class Labels:
    """Counts the legs of the night and remembers what they were called.

    Discarded legs and those of earlier axis states count too.
    """

    def __init__(self) -> None:
        self._used: list[str] = []

    def numbered(self, star_name: str) -> str:
        """Take the next number of the night with the star's name."""
        return self.take(f"{len(self._used) + 1} {star_name.strip()}".strip())

    def take(self, wanted: str) -> str:
        """Take `wanted`, told apart from those used before."""
        stem = wanted.strip() or str(len(self._used) + 1)
        label, number = stem, 2
        while label in self._used:
            label, number = f"{stem} ({number})", number + 1
        self._used.append(label)
        return label


# A leg that grows reading by reading and is looked at without copying.

Floats = NDArray[np.float64]

UTC, NORTH, EAST, SIGMA = range(4)
FIRST_CAPACITY = 256


def _row(reading: Reading) -> tuple[float, float, float, float]:
    east, sigma = reading.east_arcsec, reading.sigma_arcsec
    return (
        reading.utc_s,
        reading.north_arcsec,
        np.nan if east is None else east,
        np.nan if sigma is None else sigma,
    )


class LegBuffer:
    """The readings of one leg, in columns that double when they are full.

    What `leg` hands out are read-only views: a reading once written is never changed under them,
    because taking one back moves the rest to fresh columns.
    """

    def __init__(self, label: str, ra_deg: float, dec_deg: float) -> None:
        self.label = label
        self.ra_deg = ra_deg
        self.dec_deg = dec_deg
        self._columns: Floats = np.empty((4, FIRST_CAPACITY))
        self._count = 0
        self._with_east = 0  # how many readings have one
        self._with_sigma = 0
        self._leg: Leg | None = None
        self._exchanged: Leg | None = None

    @classmethod
    def of(cls, leg: Leg, label: str | None = None) -> LegBuffer:
        """A buffer that goes on where `leg` stands, under another `label` if one is given."""
        buffer = cls(label or leg.label, leg.ra_deg, leg.dec_deg)
        buffer._count = leg.utc_s.size
        buffer._columns = np.full((4, max(FIRST_CAPACITY, 2 * buffer._count)), np.nan)
        given = (leg.utc_s, leg.north_arcsec, leg.east_arcsec, leg.sigma_arcsec)
        for column, values in zip(buffer._columns, given, strict=True):
            if values is not None:
                column[: buffer._count] = values
        buffer._count_known()
        return buffer

    def __len__(self) -> int:
        return self._count

    @property
    def last_utc_s(self) -> float | None:
        """Time of the newest reading, None before the first."""
        return float(self._columns[UTC, self._count - 1]) if self._count else None

    @property
    def lasted_s(self) -> float:
        """From the first reading to the newest."""
        if not self._count:
            return 0.0
        return float(self._columns[UTC, self._count - 1] - self._columns[UTC, 0])

    def append(self, reading: Reading) -> None:
        """Add one reading; takes constant time on average."""
        if self._count == self._columns.shape[1]:
            self._move_to(2 * self._count)
        self._columns[:, self._count] = _row(reading)
        self._count += 1
        self._with_east += reading.east_arcsec is not None
        self._with_sigma += reading.sigma_arcsec is not None
        self._leg = self._exchanged = None

    def remove_last(self) -> None:
        """Take the newest reading back; views handed out before keep it."""
        if not self._count:
            raise LookupError("the leg has no reading to take back")
        self._count -= 1
        self._move_to(self._columns.shape[1])
        self._count_known()
        self._leg = self._exchanged = None

    def leg(self) -> Leg:
        """The leg as it stands; its arrays are read-only views (n,).

        East is NaN where it was unread. Stated errors are given only when every reading has one:
        a fit cannot weigh some readings by what was stated and guess the others.
        """
        if self._leg is None:
            self._leg = Leg(
                self.label,
                self.ra_deg,
                self.dec_deg,
                self._view(UTC),
                self._view(NORTH),
                self._view(EAST) if self._with_east else None,
                self._view(SIGMA) if 0 < self._count == self._with_sigma else None,
            )
        return self._leg

    def exchanged(self) -> Leg:
        """The same with north and south exchanged."""
        if self._exchanged is None:
            self._exchanged = reversed_leg(self.leg())
        return self._exchanged

    def _view(self, column: int) -> Floats:
        view = self._columns[column, : self._count]
        view.flags.writeable = False
        return view

    def _count_known(self) -> None:
        known = ~np.isnan(self._columns[:, : self._count])
        self._with_east, self._with_sigma = (int(known[row].sum()) for row in (EAST, SIGMA))

    def _move_to(self, capacity: int) -> None:
        columns = np.empty((4, capacity))
        columns[:, : self._count] = self._columns[:, : self._count]
        self._columns = columns
