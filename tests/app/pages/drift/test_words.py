"""What the Drift page says: verdict, legs, stars and numbers, from made-up records."""

from types import SimpleNamespace

import numpy as np
import pytest

from app.pages.drift.answer import Shapes
from app.pages.drift.offset import UnusableNumber, parse_size
from app.pages.drift.starchoice import ANY, EAST, MERIDIAN, WEST, compass, star_line, suits
from app.pages.drift.words import drift_rate, hour_angle, leg_words, verdict
from core.alignment.axis.singlestar import SingleStarConstraint
from core.alignment.driftlog.records import Leg
from core.alignment.goal import Aim
from core.alignment.guide.judgement import Outlook
from core.finding import Finding
from core.sky.catalogues import Star, StarNow

ADVICE = SimpleNamespace(
    azimuth_figure="12.4′ ± 0.8′",
    azimuth_side="east of the pole",
    azimuth_turn="turn it west",
    altitude_figure="",
    altitude_side="not known yet",
    altitude_turn="",
)


def _snapshot(**changes: object) -> SimpleNamespace:
    usual = {
        "aim": Aim.TRUE_POLE,
        "watching": "Vega",
        "site": "Meadow",
        "legs": (),
        "solution": SimpleNamespace(combination=None, is_contradictory=False),
        "advice": ADVICE,
        "forecast": SimpleNamespace(outlook=Finding.of(Outlook.MINUTES, minutes=4.0, target=1.0)),
        "solution_is_stale": False,
    }
    return SimpleNamespace(**(usual | changes))


def _trend(**changes: object) -> SimpleNamespace:
    usual = {
        "drift_arcsec_per_min": -0.19,
        "drift_sigma_arcsec_per_min": 0.015,
        "interval_factor": 2.0,
        "hour_angle_deg": -31.5,
        "altitude_deg": 44.6,
        "rejected": np.array([False, True, False]),
    }
    return SimpleNamespace(**(usual | changes))


def _now(hour_angle_deg: float, altitude_deg: float, dec_deg: float = 10.0) -> StarNow:
    star = Star(1, "Made up", 0.0, dec_deg, 0.0, 0.0, 0.0, 1.2, "Lyra")
    return StarNow(star, 350.0, altitude_deg, hour_angle_deg)


def test_figures_where_the_legs_can_tell_and_words_where_not() -> None:
    said = verdict(_snapshot())
    assert (said.azimuth.figure, said.azimuth.turn) == ("12.4′ ± 0.8′", "turn it west")
    assert (said.altitude.figure, said.altitude.side) == ("", "not known yet")
    assert "true pole" in said.quiet[0]
    assert "95 %" in said.quiet[0]
    assert "4 more minutes" in said.quiet[1]


def test_the_combination_is_told_when_one_star_leaves_it_at_that() -> None:
    alone = SingleStarConstraint(1.0, 0.0, 3.0, 0.5, 80.0, None, None, 0.8, 1)
    one = SimpleNamespace(combination=alone, is_contradictory=False)
    assert verdict(_snapshot(solution=one)).finding.startswith("One star alone fixes")


def test_before_the_first_answer_it_says_what_it_waits_for() -> None:
    nothing = {"solution": None, "advice": None, "forecast": None}
    assert "half a minute" in verdict(_snapshot(**nothing)).quiet[0]
    assert "Watch a star" in verdict(_snapshot(**nothing, watching=None)).quiet[0]
    read = verdict(_snapshot(**nothing, watching=None, site=None, legs=("read",)))
    assert "Enter your site" in read.quiet[0]


def test_a_stale_answer_is_marked() -> None:
    assert verdict(_snapshot(solution_is_stale=True)).is_stale
    assert not verdict(_snapshot()).is_stale


def test_a_leg_in_words() -> None:
    leg = Leg("Vega", 0.0, 0.0, np.array([0.0, 60.0, 372.0]), np.zeros(3))
    words = leg_words(leg, _trend())
    assert words.rate == "0.19″ ± 0.03″ a minute, south"
    assert words.place == "2.1 h east of the meridian, 45° high"
    assert words.extent == "3 readings in 6.2 min, 1 set aside"
    assert leg_words(leg, None).rate == "no drift known yet"


def test_a_gap_in_a_leg_is_marked() -> None:
    utc_s = np.concatenate([np.arange(0.0, 60.0, 2.0), 780.0 + np.arange(0.0, 60.0, 2.0)])
    leg = Leg("Vega", 0.0, 0.0, utc_s, np.zeros(60))
    assert leg_words(leg, None).extent == "60 readings in 14.0 min, a gap of 12.0 min"
    steady = Leg("Vega", 0.0, 0.0, np.arange(0.0, 600.0, 2.0), np.zeros(300))
    assert "gap" not in leg_words(steady, None).extent


@pytest.mark.parametrize(
    ("rate", "said"),
    [(0.19, "north"), (-0.19, "south"), (0.02, "no drift within the ±")],
)
def test_the_side_of_a_drift(rate: float, said: str) -> None:
    assert drift_rate(_trend(drift_arcsec_per_min=rate)).endswith(said)


@pytest.mark.parametrize(
    ("degrees", "said"),
    {
        0.3: "on the meridian",
        -90.0: "6.0 h east of the meridian",
        270.0: "6.0 h east of the meridian",
        45.0: "3.0 h west of the meridian",
    }.items(),
)
def test_hour_angles_in_words(degrees: float, said: str) -> None:
    assert hour_angle(degrees) == said


@pytest.mark.parametrize(
    ("now", "use"),
    [
        (_now(3.0, 55.0), MERIDIAN),
        (_now(-24.0, 40.0), MERIDIAN),
        (_now(3.0, 20.0), ANY),
        (_now(-90.0, 25.0), EAST),
        (_now(88.0, 25.0), WEST),
        (_now(-90.0, 10.0), ANY),
        (_now(45.0, 50.0), ANY),
        (_now(0.0, 60.0, dec_deg=89.0), ANY),
    ],
)
def test_what_a_star_is_good_for(now: StarNow, use: str) -> None:
    assert suits(now) == use


def test_a_star_in_two_lines() -> None:
    line = star_line(_now(3.0, 55.4))
    assert line.title == "Made up   magnitude 1.2, Lyra"
    assert line.where == "north (350°), 55° high; shows azimuth"


@pytest.mark.parametrize(
    ("azimuth", "said"),
    {0.0: "north", 359.9: "north", 46.0: "north-east", 180.0: "south", 292.0: "west"}.items(),
)
def test_compass(azimuth: float, said: str) -> None:
    assert compass(azimuth) == said


@pytest.mark.parametrize(
    ("text", "value"), {"12": 12.0, " 1,5″ ": 1.5, "−3": -3.0, "+0.25'": 0.25}.items()
)
def test_numbers_as_they_are_typed(text: str, value: float) -> None:
    assert parse_size(text, "offset") == value


@pytest.mark.parametrize("text", ["", "nan", "inf", "1e9", "twelve", "99999999"])
def test_what_is_no_number_is_said(text: str) -> None:
    with pytest.raises(UnusableNumber, match=r"offset.*\.$"):
        parse_size(text, "offset")


def test_shapes_stay_when_a_leg_goes_and_begin_anew_with_the_axis() -> None:
    shapes = Shapes()
    shapes.begin(1)
    assert [shapes.index(label) for label in ("a", "b", "c", "a")] == [0, 1, 2, 0]
    shapes.begin(1)
    assert shapes.index("c") == 2
    shapes.begin(2)
    assert shapes.index("c") == 0
