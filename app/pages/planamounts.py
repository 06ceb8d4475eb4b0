"""Lines for figures that the plan of the evening keeps."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from PySide6.QtWidgets import QSizePolicy, QWidget

from app.session.plans import Plans
from app.widgets.amount import Amount
from app.widgets.columns import Columns
from core.mount.equipment import Quantity

LEAST_PX = 190


class PlanAmounts(Columns):
    """`figures`: of each name its bounds and what is usual. `when_empty`: what an empty line means,
    for those that may be empty; `hints`: a sentence below.
    """

    def __init__(
        self,
        plans: Plans,
        figures: Mapping[str, tuple[Quantity, float]],
        names: Sequence[str],
        when_empty: Mapping[str, str] | None = None,
        hints: Mapping[str, str] | None = None,
        parent: QWidget | None = None,
    ) -> None:
        self._plans = plans
        self._figures = figures
        self._lines = {
            name: Amount(
                figures[name][0], (hints or {}).get(name, ""), (when_empty or {}).get(name, "")
            )
            for name in names
        }
        super().__init__(list(self._lines.values()), LEAST_PX, most=3, are_rows=True, parent=parent)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)
        for name, line in self._lines.items():
            line.given.connect(lambda value, name=name: plans.set_number(name, value))
        self.show_plans()

    def show_plans(self) -> None:
        """What the plan holds now."""
        for name, line in self._lines.items():
            line.show_amount(self._plans.number(name, self._figures[name][1]))

    def line(self, name: str) -> Amount:
        return self._lines[name]
