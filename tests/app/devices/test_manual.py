"""What a hand types becomes readings with the time of the key press."""

import math

import pytest

from app.devices.source import Reading
from app.devices.typed import ManualSource, Unit


class Clock:
    """Tells the times it was given, and must be asked for all of them."""

    def __init__(self, *utc_s: float) -> None:
        self.left = list(utc_s)

    def __call__(self) -> float:
        return self.left.pop(0)


def started(*utc_s: float) -> tuple[ManualSource, list[Reading], Clock]:
    clock = Clock(*utc_s)
    source = ManualSource(clock)
    taken: list[Reading] = []
    source.reading.connect(taken.append)
    source.start()
    return source, taken, clock


@pytest.mark.parametrize(
    ("unit", "offset", "is_north", "north_arcsec"),
    [
        (Unit(), 3.5, True, 3.5),
        (Unit(), 3.5, False, -3.5),
        (Unit("divisions", 24.0), 0.5, True, 12.0),
        (Unit("pixels", 1.25), -4.0, False, 5.0),
        (Unit("pixels", 1.25), 0.0, False, 0.0),
    ],
)
def test_units_and_sides(unit: Unit, offset: float, is_north: bool, north_arcsec: float) -> None:
    source, taken, _ = started(100.0)
    source.unit = unit
    source.take(offset, is_north)
    assert taken == [Reading(100.0, north_arcsec)]


def test_a_mark_keeps_the_instant_of_the_look_for_one_reading() -> None:
    source, taken, clock = started(100.0, 130.0)
    assert source.mark() == 100.0
    source.take(1.0)
    source.take(2.0)
    assert [reading.utc_s for reading in taken] == [100.0, 130.0]
    assert clock.left == []


def test_a_stated_error_goes_along() -> None:
    source, taken, _ = started(100.0)
    source.sigma_arcsec = 2.0
    source.take(1.0)
    assert taken[0].sigma_arcsec == 2.0


def test_nothing_comes_before_start_or_after_stop() -> None:
    source, taken, _ = started(100.0, 110.0)
    source.mark()
    source.stop()
    source.take(1.0)
    assert taken == []
    source.start()
    source.take(2.0)
    assert [reading.utc_s for reading in taken] == [110.0]


@pytest.mark.parametrize("offset", [math.nan, math.inf])
def test_offsets_that_are_no_numbers_are_refused_and_the_mark_stays(offset: float) -> None:
    source, taken, _ = started(100.0)
    source.mark()
    with pytest.raises(ValueError, match="must be a number"):
        source.take(offset)
    source.take(1.0)
    assert [reading.utc_s for reading in taken] == [100.0]


@pytest.mark.parametrize("size", [0.0, -1.0, math.nan, math.inf])
def test_a_unit_must_have_a_size(size: float) -> None:
    with pytest.raises(ValueError, match="divisions must cover more than zero"):
        Unit("divisions", size)
