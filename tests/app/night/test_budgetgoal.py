"""One goal for the night: the person's own figure, else the budget's, else the usual one."""

from collections.abc import Iterator

import pytest

from app.night.budget import Budget, BudgetGoal, Wanted
from app.night.equipment import Equipment
from app.night.plan import Plans
from app.night.session import Session
from core.alignment.goal import Origin
from core.imaging.task import Vantage
from core.imaging.tolerance import tolerance
from core.sky.site import Air, Site
from core.sky.targets import Target
from tests.app.night.heard import heard
from tests.app.night.memory import Memory
from tests.app.night.scripted import ScriptedLog, counting_answer

SITE, AIR = Site(48.0, 11.0, 500.0), Air(950.0)
WANTED = Wanted(
    name="Invented target",
    declination_deg=35.0,
    exposure_s=60.0,
    has_own_optics=True,
    focal_length_mm=530.0,
    pixel_um=4.0,
    width_px=4000,
    height_px=3000,
)
PATIENCE_MS = 20_000
pytestmark = pytest.mark.usefixtures("qapp")


class Night:
    def __init__(self, log: ScriptedLog) -> None:
        memory = Memory()
        self.session = Session(counting_answer, log)
        self.budget = Budget(memory, Equipment(memory))
        self.plans = Plans(memory)
        self.following = BudgetGoal(self.session, self.budget, self.plans)

    def close(self) -> None:
        self.following.close()
        self.session.close()

    def goal(self):
        return heard(self.session).goal


@pytest.fixture
def log() -> ScriptedLog:
    return ScriptedLog()


@pytest.fixture
def night(log: ScriptedLog) -> Iterator[Night]:
    made = Night(log)
    yield made
    made.close()


def _plan(night: Night, qtbot) -> None:
    night.session.set_site(SITE, AIR)
    night.budget.want(WANTED)
    qtbot.waitUntil(lambda: night.goal().origin is Origin.BUDGET, timeout=PATIENCE_MS)


def test_without_a_budget_the_usual_figure_holds_and_says_so(night: Night) -> None:
    assert (night.goal().arcmin, night.goal().origin) == (1.0, Origin.USUAL)
    assert "common practice, no source" in str(night.goal().reason)


def test_the_budget_is_followed_by_itself_with_its_sentence(night: Night, qtbot) -> None:
    _plan(night, qtbot)
    allowed = tolerance(night.budget.task(), Vantage.of(SITE, AIR)).largest_error_arcmin
    assert 0.9 * min(allowed, 10.0) < night.goal().arcmin <= allowed
    assert "from tonight’s budget: 60 s exposures at 530 mm" in str(night.goal().reason)


def test_a_figure_the_person_set_wins_until_it_is_cleared(night: Night, log, qtbot) -> None:
    _plan(night, qtbot)
    followed = night.goal()
    night.session.set_target(0.5)
    assert (night.goal().arcmin, night.goal().origin) == (0.5, Origin.TYPED)
    assert log.calls[-1] == ("set_target", (0.5,))
    night.session.clear_target()
    assert night.goal() == followed
    assert log.calls[-1] == ("set_target", (followed.arcmin,))


def test_a_budget_for_another_target_does_not_count(night: Night, qtbot) -> None:
    _plan(night, qtbot)
    with qtbot.waitSignal(night.session.changed):
        night.plans.set_target(Target("Far north", "star", 10.0, 80.0))
    assert night.goal().origin is Origin.USUAL
    night.plans.set_target(Target("Beside it", "star", 10.0, 34.0))
    qtbot.waitUntil(lambda: night.goal().origin is Origin.BUDGET, timeout=PATIENCE_MS)


def test_what_no_axis_can_keep_leaves_the_usual_figure(night: Night, qtbot) -> None:
    _plan(night, qtbot)
    with qtbot.waitSignal(night.session.changed, timeout=PATIENCE_MS):
        night.budget.want(Wanted(**{**WANTED.__dict__, "limit_px": 0.01, "exposure_s": 3600.0}))
    assert night.goal().origin is Origin.USUAL
