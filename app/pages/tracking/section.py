"""Figures of the Tracking page to type: each is taken up at once and kept."""

from __future__ import annotations

import math
from collections.abc import Sequence

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.tracking.model import TrackingModel
from app.ui.curveplot import HEIGHT_PX, CurvePlot
from app.ui.form import Amount
from app.ui.redraw import Redraw
from app.ui.style import Theme
from app.ui.text import Reflow
from core.mount.equipment import Quantity


class ModelAmount(Amount):
    """`name`: of a figure in `Figures`. Empty, it shows what stands in its place."""

    def __init__(
        self,
        bench: TrackingModel,
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


# How a section of the Tracking page is laid out: what it says, and what it needs beside it.

ROOM_PX = 900
SHARES = (13, 7)


class TrackingSection(QWidget):
    """`show_bench` is called when something changed and the section is seen."""

    def __init__(
        self,
        theme: Theme,
        bench: TrackingModel,
        height_px: int = HEIGHT_PX,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self.theme = theme
        self.bench = bench
        self.plot = CurvePlot(theme, height_px)
        self.plot.hide()
        self._redraw = Redraw(self, self._show)
        bench.changed.connect(self._redraw.mark)

    def arrange(self, said: Sequence[QWidget], needed: Sequence[QWidget]) -> None:
        """`said` on the left, `needed` on the right where there is room."""
        halves = [_column(said), _column(needed)]
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(Reflow(halves, ROOM_PX, SHARES))
        self._show()

    def show_bench(self) -> None:
        raise NotImplementedError

    def _show(self) -> None:
        for amount in self.findChildren(ModelAmount):
            amount.show_kept()
        self.show_bench()


def _column(parts: Sequence[QWidget]) -> QWidget:
    holder = QWidget()
    column = QVBoxLayout(holder)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(10)
    for part in parts:
        column.addWidget(part)
    column.addStretch(1)
    return holder
