"""Which legs of a drift log join tonight's."""

from dataclasses import replace

import numpy as np
import pytest

from app.session.joining import joining
from core.alignment.driftlog import DriftLog, Header, Leg
from core.sky.site import Site

HILL = Site(48.0, 11.0, 500.0)


def leg(label: str, first: float = 0.0) -> Leg:
    utc_s = 1.79e9 + np.arange(5.0)
    return Leg(label, 40.0, 10.0, utc_s, first + np.arange(5.0))


def test_what_is_here_already_is_not_taken_twice() -> None:
    log = DriftLog(Header(), (leg("a"), leg("b", 1.0)))
    assert joining(log, HILL, ()).legs == log.legs
    again = joining(log, HILL, [replace(leg("x"), label="another name")])
    assert [one.label for one in again.legs] == ["b"]
    assert "1 of its legs" in again.sentence
    assert joining(log, HILL, log.legs).legs == ()


@pytest.mark.parametrize(
    ("latitude_deg", "longitude_deg", "joins"),
    [(48.05, 11.05, True), (48.2, 11.0, False), (-48.0, 11.0, False), (48.0, -169.0, False)],
)
def test_a_log_joins_only_where_it_was_measured(
    latitude_deg: float, longitude_deg: float, joins: bool
) -> None:
    log = DriftLog(Header(latitude_deg, longitude_deg), (leg("a"),))
    assert bool(joining(log, HILL, ()).legs) is joins
    assert joining(log, None, ()).legs == log.legs
