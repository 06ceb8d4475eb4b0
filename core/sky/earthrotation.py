"""How far the Earth's rotation (UT1) is from UTC, read offline from the bundled IERS table."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from pathlib import Path

import erfa
import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.language import marked, say

Floats = NDArray[np.float64]

SECONDS_PER_DAY = 86400.0
UNIX_EPOCH_MJD = 40587.0
# Hour angle turned per second of UT1, in seconds of arc.
ARCSEC_PER_SECOND = 15.041

# Columns of finals2000A.all, counted from 0 (IERS, readme.finals2000A: columns 8-15 and 59-68).
_MJD = slice(7, 15)
_UT1_MINUS_UTC = slice(58, 68)
_KIND = slice(57, 58)  # of UT1−UTC: "I" as measured, "P" as predicted


def tai_minus_utc_s(utc_s: ArrayLike) -> Floats:
    """Seconds TAI is ahead of UTC, by ERFA's table of leap seconds.

    Past the end of that table the last value holds. ERFA's own look-up warns about such years;
    this one need not, since one second unknown to TT moves no star by a thousandth of an arcsecond.
    """
    table = erfa.leap_seconds.get()
    months = (table["year"].astype(int) - 1970) * 12 + table["month"].astype(int) - 1
    starts_s = months.astype("datetime64[M]").astype("datetime64[s]").astype(np.float64)
    row = np.searchsorted(starts_s, np.asarray(utc_s, dtype=np.float64), side="right") - 1
    return np.asarray(table["tai_utc"][np.maximum(row, 0)], dtype=np.float64)


_ENDS = marked(
    "The table of the Earth's rotation ends on {day}: UT1 may be off by up to about "
    "{seconds:.1f} s and hour angles by {arcsec:.0f}″, which changes the axis error by less than "
    "{percent} % of its size."
)
_BEGINS = marked(
    "The table of the Earth's rotation begins on {day}: UT1 may be off by up to about "
    "{seconds:.1f} s and hour angles by {arcsec:.0f}″, which changes the axis error by less than "
    "{percent} % of its size."
)


@dataclass(frozen=True, eq=False)
class EarthOrientation:
    """UT1 by days: `utc_s` (n,) Unix time, increasing; `ut1_minus_tai_s` (n,), seconds.

    UT1−TAI is kept because it has no leap seconds and may be interpolated. Up to `measured_to_s`
    the values are measured, later ones predicted; None when the table does not say.
    """

    utc_s: Floats
    ut1_minus_tai_s: Floats
    measured_to_s: float | None = None

    @staticmethod
    def read(path: Path) -> EarthOrientation:
        """The table in IERS finals2000A form. Raises RuntimeError, a sentence, if it is unusable.

        Read by its fixed columns: ten milliseconds, where a general reader takes half a second.
        """
        try:
            lines = path.read_text(encoding="ascii").splitlines()
            rows = [line for line in lines if line[_UT1_MINUS_UTC].strip()]
            mjd = np.array([float(line[_MJD]) for line in rows])
            ut1_minus_utc_s = np.array([float(line[_UT1_MINUS_UTC]) for line in rows])
            measured = sum(line[_KIND] == "I" for line in rows)
        except (OSError, ValueError) as error:
            raise RuntimeError(_unusable(path, str(error))) from error
        if mjd.size < 2 or np.any(np.diff(mjd) <= 0):
            raise RuntimeError(_unusable(path, say("its days are missing or out of order")))
        utc_s = (mjd - UNIX_EPOCH_MJD) * SECONDS_PER_DAY
        measured_to_s = float(utc_s[measured - 1]) if measured else None
        return EarthOrientation(utc_s, ut1_minus_utc_s - tai_minus_utc_s(utc_s), measured_to_s)

    def ut1_minus_utc_s(self, utc_s: ArrayLike) -> Floats:
        """UT1−UTC in seconds, shaped as `utc_s`; outside the table its nearest value is carried."""
        times = np.asarray(utc_s, dtype=np.float64)
        ut1_minus_tai_s = np.interp(times, self.utc_s, self.ut1_minus_tai_s)
        return np.asarray(ut1_minus_tai_s + tai_minus_utc_s(times), dtype=np.float64)

    def possible_error_s(self, utc_s: float) -> float:
        """How wrong the carried value may be: the largest change seen over a span as long.

        Zero inside the table. Spans over half the table's length take the rate of that half.
        """
        outside_s = max(utc_s - self.utc_s[-1], self.utc_s[0] - utc_s, 0.0)
        days = int(np.ceil(outside_s / SECONDS_PER_DAY))
        if days == 0:
            return 0.0
        seen = min(days, self.utc_s.size // 2)
        change = self.ut1_minus_tai_s[seen:] - self.ut1_minus_tai_s[:-seen]
        return float(np.max(np.abs(change))) * days / seen

    def loss_sentence(self, utc_s: float) -> str | None:
        """What is lost at a time outside the table, in a sentence; None inside it."""
        error_s = self.possible_error_s(utc_s)
        if error_s == 0.0:
            return None
        sentence, day = _ENDS, self.utc_s[-1]
        if utc_s < self.utc_s[0]:
            sentence, day = _BEGINS, self.utc_s[0]
        return say(
            sentence,
            day=_day(day),
            seconds=error_s,
            arcsec=error_s * ARCSEC_PER_SECOND,
            percent=_share_percent(error_s),
        )

    def age_sentence(self, utc_s: float) -> str:
        """How old the table is at a time, in a sentence; outside it, what is lost."""
        lost = self.loss_sentence(utc_s)
        if lost is not None:
            return lost
        end = _day(self.utc_s[-1])
        if self.measured_to_s is None:
            return say("The Earth's rotation is known or predicted up to {end}.", end=end)
        days = round((utc_s - self.measured_to_s) / SECONDS_PER_DAY)
        sentence = marked("The Earth's rotation is measured up to {day} and predicted up to {end}.")
        if days > 1:
            sentence = marked(
                "The Earth's rotation is measured up to {day}, {days} days ago, "
                "and predicted up to {end}."
            )
        return say(sentence, day=_day(self.measured_to_s), days=days, end=end)


@cache
def bundled() -> EarthOrientation:
    """The table that comes with the package astropy-iers-data, read once; never downloaded."""
    import astropy_iers_data  # type: ignore[import-untyped]

    return EarthOrientation.read(Path(astropy_iers_data.IERS_A_FILE))


def _share_percent(error_s: float) -> str:
    """An hour angle wrong by x radians mixes the two axis errors by x: that share, rounded up."""
    share = 100.0 * np.radians(error_s * ARCSEC_PER_SECOND / 3600.0)
    return f"{np.ceil(share * 100.0) / 100.0:.2f}"


def _day(utc_s: float) -> str:
    return str(np.datetime64(int(utc_s), "s").astype("datetime64[D]"))


def _unusable(path: Path, reason: str) -> str:
    return say(
        "The table of the Earth's rotation {path} cannot be used ({reason}). Install "
        "Poleward again, or the package astropy-iers-data by itself.",
        path=path,
        reason=reason,
    )
