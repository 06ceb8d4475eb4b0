"""Rows gathered into legs: one star each, times increasing, at least two readings."""

from __future__ import annotations

import math
from array import array
from bisect import bisect_left
from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from core.alignment.driftlog.records import BadRow, Extras, Floats, Leg, Rejected, Remark
from core.alignment.driftlog.rows import Row
from core.language import say
from core.sky.clock import format_utc

SAME_STAR_DEG = 0.01  # wider than rounding or a night's proper motion, closer than naked-eye pairs


def check_same_star(first: Row, row: Row) -> None:
    """BadRow when a row names another star than the first row of its leg."""
    east_deg = (row.ra_deg - first.ra_deg + 180.0) % 360.0 - 180.0
    cos_dec = math.cos(math.radians(first.dec_deg))
    if math.hypot(east_deg * cos_dec, row.dec_deg - first.dec_deg) > SAME_STAR_DEG:
        raise BadRow(
            say(
                "Leg “{label}” began on the star at {ra:.4f}, {dec:.4f} but this line "
                "names one at {other_ra:.4f}, {other_dec:.4f}; give each star a leg of "
                "its own.",
                label=first.label,
                ra=first.ra_deg,
                dec=first.dec_deg,
                other_ra=row.ra_deg,
                other_dec=row.dec_deg,
            )
        )


class LegRows:
    """The rows of one leg as they come, in compact arrays."""

    def __init__(self, row: Row, extra_names: Sequence[str]) -> None:
        self.label, self.ra_deg, self.dec_deg = row.label, row.ra_deg, row.dec_deg
        self._extra_names = extra_names
        self._utc_s, self._north, self._east, self._sigma = (array("d") for _ in range(4))
        self._line_numbers = array("q")
        self._extra: list[list[str]] = [[] for _ in extra_names]
        self._first = row

    def add(self, row: Row, line_number: int, extra: Sequence[str]) -> None:
        """Takes a reading of this leg's star; BadRow when it names another star."""
        if row.ra_deg != self.ra_deg or row.dec_deg != self.dec_deg:
            check_same_star(self._first, row)
        self._utc_s.append(row.utc_s)
        self._north.append(row.north_arcsec)
        self._east.append(row.east_arcsec)
        self._sigma.append(row.sigma_arcsec)
        self._line_numbers.append(line_number)
        for texts, text in zip(self._extra, extra, strict=True):
            texts.append(text)

    def finish(self) -> tuple[Leg | None, Extras, list[Rejected], list[Remark]]:
        """The leg, the texts of its extra columns, and an account of what was left out."""
        utc_s = np.array(self._utc_s)
        lines = np.array(self._line_numbers)
        kept, rejected = self._in_order(utc_s, lines)
        if kept.size < 2:
            return None, {}, [*rejected, *self._too_few(lines[kept])], []
        sigma, remarks = self._sigma_of(kept, lines)
        leg = Leg(
            self.label,
            self.ra_deg,
            self.dec_deg,
            utc_s[kept],
            np.array(self._north)[kept],
            _unless_all_absent(np.array(self._east)[kept]),
            sigma,
        )
        extras = {
            name: tuple(texts[index] for index in kept)
            for name, texts in zip(self._extra_names, self._extra, strict=True)
        }
        return leg, extras, rejected, remarks

    def _in_order(
        self, utc_s: Floats, lines: NDArray[np.int64]
    ) -> tuple[NDArray[np.intp], list[Rejected]]:
        if np.all(np.diff(utc_s) > 0.0):
            return np.arange(utc_s.size), []
        if utc_s.size > 2 and np.all(np.diff(utc_s) < 0.0):
            reason = say(
                "The times of leg “{label}” run backwards; put its lines in order of "
                "time, earliest first.",
                label=self.label,
            )
            return np.arange(0), [Rejected(int(line), reason) for line in lines]
        kept = longest_increasing(utc_s)
        left_out = np.setdiff1d(np.arange(utc_s.size), kept, assume_unique=True)
        known = {float(utc_s[index]): int(lines[index]) for index in kept}
        return kept, [self._out_of_order(utc_s[i], lines[i], known) for i in left_out]

    def _out_of_order(self, utc_s: float, line: int, known: dict[float, int]) -> Rejected:
        twin = known.get(float(utc_s))
        if twin is not None:
            reason = say(
                "Its time is that of line {twin}; a leg has one reading at a time.", twin=twin
            )
        else:
            reason = say(
                "Its time {time} is out of order among the neighbouring lines of leg "
                "“{label}”; did the clock jump?",
                time=format_utc(float(utc_s)),
                label=self.label,
            )
        return Rejected(int(line), reason)

    def _too_few(self, lines: NDArray[np.int64]) -> list[Rejected]:
        reason = say(
            "It is the only usable reading of leg “{label}”; a drift needs at least "
            "two, and minutes between them.",
            label=self.label,
        )
        return [Rejected(int(line), reason) for line in lines]

    def _sigma_of(
        self, kept: NDArray[np.intp], lines: NDArray[np.int64]
    ) -> tuple[Floats | None, list[Remark]]:
        sigma = _unless_all_absent(np.array(self._sigma)[kept])
        if sigma is None or not np.isnan(sigma).any():
            return sigma, []
        lacking = int(lines[kept][np.isnan(sigma)][0])
        text = say(
            "sigma_arcsec is empty here though other readings of leg “{label}” state "
            "it; the stated errors of this leg are not used. State all of them or none.",
            label=self.label,
        )
        return None, [Remark(lacking, text)]


def longest_increasing(values: Floats) -> NDArray[np.intp]:
    """Indices of a longest strictly increasing run, so that one wild time costs one line.

    Patience sorting (Fredman, Discrete Mathematics 11, 29, 1975).
    """
    tails: list[float] = []
    tail_index: list[int] = []
    before = np.full(values.size, -1, dtype=np.intp)
    for index, value in enumerate(values.tolist()):
        place = bisect_left(tails, value)
        if tails[place : place + 1] == [value]:
            continue  # of two readings at one time the first stays
        before[index] = tail_index[place - 1] if place else -1
        tails[place : place + 1] = [value]
        tail_index[place : place + 1] = [index]
    chain = []
    index = tail_index[-1] if tail_index else -1
    while index >= 0:
        chain.append(index)
        index = int(before[index])
    return np.array(chain[::-1], dtype=np.intp)


def _unless_all_absent(values: Floats) -> Floats | None:
    return None if np.isnan(values).all() else values
