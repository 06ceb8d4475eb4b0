"""What tonight's budget allows, worked out beside the window and told to the session."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject

from app.session.errand import Errand

if TYPE_CHECKING:
    from app.session.budget import Budget
    from app.session.plans import Plans
    from app.session.session import Session
    from core.alignment.guide.goal import Allowed
    from core.imaging.task import Task
    from core.sky.site import Air, Site
    from core.sky.targets import Target

ALIKE_DEG = 2.0  # of declination: the smear of such targets is the same in practice


class BudgetGoal(QObject):
    """Follows budget, target, place and aim. Call `close` before letting go."""

    def __init__(
        self, session: Session, budget: Budget, plans: Plans, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._session, self._budget, self._plans = session, budget, plans
        self._asked: object = None
        self._errand = Errand(self)
        self._errand.done.connect(self._take)
        for signal in (session.changed, budget.changed, plans.changed):
            signal.connect(self.refresh)
        self.refresh()

    def close(self) -> None:
        """Nothing more is worked out."""
        self._errand.close()

    def refresh(self) -> None:
        """Asks only when something it depends on is different."""
        snapshot = self._session.snapshot()
        task = self._task()
        question = (task, snapshot.site, snapshot.air, snapshot.aim)
        if question == self._asked:
            return
        self._asked = question
        site, air, share = snapshot.site, snapshot.air, snapshot.aim.share
        if task is None or site is None or air is None:
            self._session.follow_budget(None)
            return
        self._errand.send(lambda: (question, _allowed(task, site, air, share)))

    def _task(self) -> Task | None:
        if self._budget.wanted.declination_deg is None:
            return None
        if not is_for(self._plans.target(), self._budget):
            return None
        try:
            return self._budget.task()
        except ValueError:
            return None

    def _take(self, answer: object) -> None:
        if isinstance(answer, tuple) and answer[0] == self._asked:
            self._session.follow_budget(answer[1])


def is_for(target: Target | None, budget: Budget) -> bool:
    """Whether the budget is one for tonight's target; while none is chosen it is for the night."""
    wanted = budget.wanted
    if target is None or wanted.declination_deg is None or target.name == wanted.name:
        return True
    dec_deg = target.dec_deg
    return math.isfinite(dec_deg) and abs(dec_deg - wanted.declination_deg) < ALIKE_DEG


def _allowed(task: Task, site: Site, air: Air, share: float) -> Allowed | None:
    """Slow; for the worker. None where the budget page says why there is no answer."""
    from core.imaging.task import UnusableTask, Vantage
    from core.imaging.tolerance import allowed_by

    vantage = Vantage.of(site, air)
    try:
        return allowed_by(task, vantage, share * vantage.pole_lift_rad)
    except UnusableTask:
        return None
