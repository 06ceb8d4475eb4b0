from __future__ import annotations

import re
from pathlib import Path

import erfa
import numpy as np
import pytest

from core.sky import clocks
from core.sky.clocks import EarthOrientation, bundled, parse_utc, tai_minus_utc_s
from core.units import SECONDS_PER_DAY

DAY = SECONDS_PER_DAY
YEAR = 365.25 * DAY


@pytest.fixture
def slowing() -> EarthOrientation:
    """Ten years from 2010 in which UT1 falls back by one millisecond a day."""
    days = np.arange(3652.0)
    return EarthOrientation(parse_utc("2010-01-01T00Z") + days * DAY, -34.0 - 0.001 * days)


def test_between_days_it_is_interpolated(slowing: EarthOrientation) -> None:
    noon = slowing.utc_s[10] + 0.5 * DAY
    assert slowing.ut1_minus_utc_s(noon) == pytest.approx(-0.0105, abs=1e-9)


def test_shape_is_kept(slowing: EarthOrientation) -> None:
    assert slowing.ut1_minus_utc_s(0.0).shape == ()
    assert slowing.ut1_minus_utc_s(np.zeros((2, 3))).shape == (2, 3)


def test_past_the_end_the_last_value_is_carried(slowing: EarthOrientation) -> None:
    last = slowing.ut1_minus_utc_s(slowing.utc_s[-1])
    assert slowing.ut1_minus_utc_s(slowing.utc_s[-1] + 9 * YEAR) == last


def test_inside_nothing_is_lost(slowing: EarthOrientation) -> None:
    assert slowing.loss(float(slowing.utc_s[100])) is None
    assert slowing.loss(float(slowing.utc_s[-1])) is None


@pytest.mark.parametrize("years", [1, 4, 20])
def test_loss_is_the_change_seen_over_as_long_a_span(slowing: EarthOrientation, years: int) -> None:
    lost_s = slowing.possible_error_s(float(slowing.utc_s[-1]) + years * YEAR)
    assert lost_s == pytest.approx(0.36525 * years, abs=0.002)


def test_loss_is_said_with_its_weight(slowing: EarthOrientation) -> None:
    after = slowing.loss(float(slowing.utc_s[-1]) + 4 * YEAR)
    assert after is not None
    assert after.code is clocks.RotationTable.ENDS
    assert after.values["day"] == "2019-12-31"
    assert after.values["seconds"] == pytest.approx(1.461, abs=0.002)
    assert after.values["arcsec"] == pytest.approx(1.461 * 15.041, abs=0.05)
    assert "up to about 1.5 s and hour angles by 22″" in str(after)
    assert "less than 0.02 %" in str(after)
    before = slowing.loss(float(slowing.utc_s[0]) - YEAR)
    assert before is not None
    assert "begins on 2010-01-01" in str(before)


@pytest.mark.parametrize("year", [1995, 2026])
def test_bundled_table_covers_now(year: int) -> None:
    assert bundled().loss(parse_utc(f"{year}-11-24T00Z")) is None


def test_bundled_table_after_its_end() -> None:
    """The loss grows with the years, by no more than the 1.2 s a year of the 1970s."""
    end_s = float(bundled().utc_s[-1])
    losses = [bundled().possible_error_s(end_s + years * YEAR) for years in (1, 5, 13)]
    assert losses == sorted(losses)
    assert all(0.5 * y < loss < 1.2 * y for y, loss in zip((1, 5, 13), losses, strict=True))
    assert re.search(
        r"up to about \d+\.\d s and hour angles by \d+″", str(bundled().loss(end_s + 13 * YEAR))
    )


def test_past_honesty() -> None:
    """Had the table ended in 2010, the loss stated for later days would have covered the truth."""
    whole = bundled()
    known = whole.utc_s <= parse_utc("2010-01-01T00Z")
    cut = EarthOrientation(whole.utc_s[known], whole.ut1_minus_tai_s[known])
    for utc_s in whole.utc_s[~known][::100]:
        truth = float(np.interp(utc_s, whole.utc_s, whole.ut1_minus_tai_s))
        carried = float(cut.ut1_minus_tai_s[-1])
        assert abs(truth - carried) <= cut.possible_error_s(float(utc_s))


def test_erfa_still_warns_about_dubious_years() -> None:
    """We avoid its look-up of leap seconds; the warning is not silenced for others."""
    assert tai_minus_utc_s(parse_utc("2040-01-01T00Z")) == 37.0
    with pytest.warns(erfa.ErfaWarning, match="dubious year"):
        erfa.dat(2040, 1, 1, 0.0)


@pytest.mark.parametrize(
    "content", ["", "no such table\n", "73 1 2 41684.00" + " " * 43 + " nonsense" + " " * 20]
)
def test_unusable_table_is_said_in_a_sentence(tmp_path: Path, content: str) -> None:
    path = tmp_path / "finals2000A.all"
    path.write_text(content, encoding="ascii")
    with pytest.raises(RuntimeError, match=r"finals2000A\.all cannot be used .* Install Poleward"):
        EarthOrientation.read(path)


def test_missing_table_is_said_in_a_sentence(tmp_path: Path) -> None:
    with pytest.raises(RuntimeError, match="Install Poleward again"):
        EarthOrientation.read(tmp_path / "absent")


def test_its_age_is_told_from_the_last_measured_day():
    table = bundled()
    assert table.measured_to_s is not None
    aged = table.age(table.measured_to_s + 20 * DAY)
    assert aged.values["days"] == 20
    assert "20 days ago" in str(aged)
    assert "predicted up to" in str(aged)
    past = table.utc_s[-1] + 400 * DAY
    assert table.age(past) == table.loss(past)
