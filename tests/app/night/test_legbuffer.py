"""Legs grow without copies, and what was handed out never changes."""

import numpy as np
import pytest

from app.devices.source import Reading
from app.night.legs import FIRST_CAPACITY, LegBuffer
from core.alignment.driftlog.records import Leg


def filled(count: int) -> LegBuffer:
    buffer = LegBuffer("1 Vega", 279.2, 38.8)
    for i in range(count):
        buffer.append(Reading(float(i), 2.0 * i, 3.0 * i))
    return buffer


@pytest.mark.parametrize("count", [0, 1, FIRST_CAPACITY, FIRST_CAPACITY + 1, 5000])
def test_every_reading_arrives_in_order(count: int) -> None:
    leg = filled(count).leg()
    assert (leg.label, leg.ra_deg, leg.dec_deg) == ("1 Vega", 279.2, 38.8)
    np.testing.assert_array_equal(leg.utc_s, np.arange(count))
    np.testing.assert_array_equal(leg.north_arcsec, 2.0 * np.arange(count))
    if count:
        np.testing.assert_array_equal(leg.east_arcsec, 3.0 * np.arange(count))


def test_looking_copies_nothing_and_allows_no_writing() -> None:
    buffer = filled(100)
    first = buffer.leg()
    assert buffer.leg() is first
    buffer.append(Reading(100.0, 0.0))
    assert np.shares_memory(buffer.leg().utc_s, first.utc_s)
    with pytest.raises(ValueError, match="read-only"):
        first.north_arcsec[0] = 1.0


def test_growth_leaves_earlier_looks_alone() -> None:
    buffer = filled(FIRST_CAPACITY)
    early = buffer.leg()
    buffer.append(Reading(9e9, 9.0))
    assert early.utc_s.size == FIRST_CAPACITY
    assert early.utc_s[-1] == FIRST_CAPACITY - 1


def test_a_reading_taken_back_stays_in_earlier_looks() -> None:
    buffer = filled(3)
    early = buffer.leg()
    buffer.remove_last()
    buffer.append(Reading(7.0, 70.0))
    assert early.north_arcsec.tolist() == [0.0, 2.0, 4.0]
    assert buffer.leg().north_arcsec.tolist() == [0.0, 2.0, 70.0]
    assert buffer.last_utc_s == 7.0


def test_nothing_can_be_taken_back_from_an_empty_leg() -> None:
    with pytest.raises(LookupError):
        filled(0).remove_last()


def test_unread_east_is_absent_or_nan() -> None:
    buffer = LegBuffer("1", 0.0, 0.0)
    buffer.append(Reading(0.0, 1.0))
    assert buffer.leg().east_arcsec is None
    buffer.append(Reading(1.0, 1.0, 5.0))
    np.testing.assert_array_equal(buffer.leg().east_arcsec, [np.nan, 5.0])
    buffer.remove_last()
    assert buffer.leg().east_arcsec is None


def test_stated_errors_count_only_when_all_are_stated() -> None:
    buffer = LegBuffer("1", 0.0, 0.0)
    buffer.append(Reading(0.0, 1.0, sigma_arcsec=2.0))
    np.testing.assert_array_equal(buffer.leg().sigma_arcsec, [2.0])
    buffer.append(Reading(1.0, 1.0))
    assert buffer.leg().sigma_arcsec is None


def test_a_kept_leg_goes_on_where_it_stood() -> None:
    kept = Leg("2", 10.0, 20.0, np.arange(400.0), np.ones(400), None, np.full(400, 0.5))
    buffer = LegBuffer.of(kept)
    buffer.append(Reading(400.0, 2.0, sigma_arcsec=0.5))
    assert len(buffer) == 401
    assert buffer.leg().east_arcsec is None
    np.testing.assert_array_equal(buffer.leg().utc_s, np.arange(401.0))
    np.testing.assert_array_equal(buffer.leg().sigma_arcsec, np.full(401, 0.5))
    assert LegBuffer.of(kept, "7 Vega").label == "7 Vega"
