"""Figures of the Tracking page to type: each is taken up at once and kept."""

from __future__ import annotations

import math

from PySide6.QtWidgets import QWidget

from app.pages.tracking.bench import Bench
from app.widgets.amount import Amount
from core.mount.equipment import Quantity


class BenchAmount(Amount):
    """`name`: of a figure in `Figures`. Empty, it shows what stands in its place."""

    def __init__(
        self,
        bench: Bench,
        name: str,
        quantity: Quantity,
        hint: str = "",
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(quantity, hint, when_empty=" ", parent=parent)
        self._bench = bench
        self._kept_as = name
        self.given.connect(self._take)
        self.show_kept()

    def show_kept(self) -> None:
        """What is typed on the bench, or in its place the usual."""
        typed = getattr(self._bench.typed, self._kept_as)
        self.show_amount(math.nan if typed is None else typed)
        usual = getattr(self._bench.parts.usual(), self._kept_as)
        empty = self.tr("not known") if usual is None else f"{usual:.4g}"
        self.line().setPlaceholderText(empty)

    def _take(self, value: float) -> None:
        wanted = None if math.isnan(value) else value
        if wanted != getattr(self._bench.typed, self._kept_as):
            self._bench.want(**{self._kept_as: wanted})
