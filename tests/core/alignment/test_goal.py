"""The one verdict, and the goal it is about."""

import numpy as np
import pytest

from core.alignment.axis.evidence import PriorAxis
from core.alignment.goal import Allowed, Origin, Reached, goal_of, reached
from core.alignment.guide.bolts import TurnAccuracy
from core.alignment.guide.judgement import Next, judge
from core.imaging.task import ImagedTarget, Optics, Task, Vantage
from core.imaging.tolerance import LEAST_ARCMIN, MOST_ARCMIN, allowed_by, rounded_down
from core.sky.site import Air, Site

VANTAGE = Vantage.of(Site(48.0, 11.0, 500.0), Air(950.0))


def _task(exposure_s: float, focal_mm: float, limit_px: float = 0.5) -> Task:
    target = ImagedTarget(35.0, -30.0, 30.0)
    guide = 60.0 if focal_mm > 500.0 else None
    return Task(target, Optics(focal_mm, 4.0, 4000, 3000), exposure_s, guide, limit_px)


@pytest.mark.parametrize(
    ("chance", "verdict"),
    [
        (0.99, Reached.WITHIN),
        (0.97, Reached.WITHIN),
        (0.5, Reached.NOT_CLEAR),
        (0.01, Reached.BEYOND),
    ],
)
def test_the_verdict_goes_by_the_chance(chance, verdict) -> None:
    assert reached(chance) is verdict


@pytest.mark.parametrize("off", [0.0, 0.5, 0.9, 3.0])
def test_the_guide_stops_exactly_where_the_verdict_is_within(off: float) -> None:
    known = PriorAxis(np.array([off, 0.0]), np.eye(2) * 0.15**2)
    judged = judge(known, None, np.zeros(2), 1.0, TurnAccuracy())
    assert (judged.next is Next.GOOD_ENOUGH) == (judged.reached is Reached.WITHIN)


def test_the_person_comes_first_then_the_budget_then_the_usual() -> None:
    allowed = Allowed(1.6, "1.6′, from tonight’s budget.")
    assert goal_of(0.5, allowed).origin is Origin.TYPED
    assert goal_of(None, allowed) == goal_of(None, allowed)
    assert (goal_of(None, allowed).arcmin, goal_of(None, allowed).origin) == (1.6, Origin.BUDGET)
    assert goal_of(None, None).origin is Origin.USUAL


def test_the_budget_s_figure_stays_within_what_drift_can_do() -> None:
    assert allowed_by(_task(1.0, 50.0), VANTAGE).arcmin == MOST_ARCMIN
    assert "allow more" in allowed_by(_task(1.0, 50.0), VANTAGE).sentence
    usual = allowed_by(_task(300.0, 1000.0, 0.1), VANTAGE)
    assert LEAST_ARCMIN < usual.arcmin < MOST_ARCMIN
    assert usual.sentence.endswith("300 s exposures at 1000 mm.")


def test_what_is_hopeless_is_no_goal() -> None:
    assert allowed_by(_task(3600.0, 2000.0, 0.02), VANTAGE) is None


@pytest.mark.parametrize(("given", "down"), [(3.96, 3.9), (12.9, 12.0), (0.567, 0.56)])
def test_figures_are_rounded_down(given, down) -> None:
    assert rounded_down(given) == down
