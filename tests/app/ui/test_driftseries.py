"""A leg in minutes and seconds of arc from its own start."""

from types import SimpleNamespace

import numpy as np
import pytest

from app.ui.driftseries import series
from app.ui.plotreading import nearest
from core.alignment.driftlog.records import Leg


def test_without_a_fit_the_first_reading_is_zero(leg: Leg) -> None:
    shown = series(leg, None, 2)
    assert (shown.label, shown.index) == ("Vega", 2)
    assert shown.arcsec[0] == 0.0
    assert shown.minutes[-1] == pytest.approx(199 * 2 / 60)
    assert shown.arcsec[-1] == pytest.approx(0.5 * shown.minutes[-1])
    assert len(shown.line_minutes) == 0


def test_an_older_fit_covers_the_readings_it_knew(leg: Leg, trend: SimpleNamespace) -> None:
    shown = series(leg, trend, 0)
    assert len(shown.minutes) == 200
    assert np.flatnonzero(shown.set_aside).tolist() == [3]
    assert shown.line_arcsec[0] == 0.0
    assert shown.line_minutes[-1] == pytest.approx(149 * 2 / 60)
    assert shown.steps == ((2.0, 3.0),)


def test_the_band_counts_for_the_picture_but_not_beyond_all_bounds(leg: Leg, trend) -> None:
    shown = series(leg, trend, 0)
    assert shown.lowest_arcsec() == pytest.approx(-1.0)
    trend.curve_low_arcsec = trend.curve_low_arcsec - 1000.0
    wide = series(leg, trend, 0)
    assert wide.lowest_arcsec() == pytest.approx(-np.ptp(wide.arcsec))
    bare = series(leg, None, 0)
    assert (bare.lowest_arcsec(), bare.highest_arcsec()) == (bare.arcsec.min(), bare.arcsec.max())


def test_an_empty_leg_shows_nothing() -> None:
    nothing = np.empty(0)
    assert len(series(Leg("Deneb", 0.0, 0.0, nothing, nothing), None, 0).minutes) == 0


def test_the_reading_under_the_pointer_is_named(leg: Leg) -> None:
    shown = series(leg, None, 0)
    found = nearest([shown], 2.01, 1.01, 6.0, 3.0)
    assert found is not None
    assert (found.label, found.time) == ("Vega", "14:15:20")
    assert found.minutes == pytest.approx(2.0)
    assert nearest([shown], 2.0, 2.9, 6.0, 3.0) is None
    assert nearest([], 2.0, 2.9, 6.0, 3.0) is None
