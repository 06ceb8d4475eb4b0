"""Times of readings, and what is made of them."""

import pytest

from app.workers.clocks import TimeVerdict, judge, notice, refusal

NOON = 1.7e9


@pytest.mark.parametrize(
    ("last_utc_s", "utc_s", "verdict"),
    [
        (None, NOON, TimeVerdict.GOES_ON),
        (NOON, NOON + 0.2, TimeVerdict.GOES_ON),
        (NOON, NOON + 1800.0, TimeVerdict.GOES_ON),  # a slow hand at the eyepiece
        (NOON, NOON + 3602.0, TimeVerdict.LEFT_A_GAP),  # set forward by an hour
        (NOON, NOON, TimeVerdict.REFUSED),
        (NOON, NOON - 0.5, TimeVerdict.REFUSED),
        (NOON, NOON - 3598.0, TimeVerdict.WENT_BACK),  # set back by an hour
        (NOON, NOON - 10.0, TimeVerdict.WENT_BACK),
    ],
)
def test_judging(last_utc_s: float | None, utc_s: float, verdict: TimeVerdict) -> None:
    assert judge(last_utc_s, utc_s) is verdict


@pytest.mark.parametrize(
    ("verdict", "step_s", "words"),
    [
        (TimeVerdict.WENT_BACK, -3598.0, "back by 60 min"),
        (TimeVerdict.WENT_BACK, -7.0, "back by 7 s"),
        (TimeVerdict.LEFT_A_GAP, 9000.0, "for 2.5 h"),
    ],
)
def test_notices_say_how_far_and_which_legs(
    verdict: TimeVerdict, step_s: float, words: str
) -> None:
    sentence = notice(verdict, step_s, "1 Vega", "2 Vega")
    assert words in sentence
    assert "“1 Vega”" in sentence
    assert "“2 Vega”" in sentence


def test_refusals_say_by_how_much() -> None:
    assert "same instant" in refusal(0.0)
    assert "0.5 s before" in refusal(-0.5)
