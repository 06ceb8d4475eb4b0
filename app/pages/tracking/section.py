"""How a section of the Tracking page is laid out: what it says, and what it needs beside it."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.tracking.amounts import BenchAmount
from app.pages.tracking.bench import Bench
from app.theme.theme import Theme
from app.widgets.curveplot import HEIGHT_PX, CurvePlot
from app.widgets.redraw import Redraw
from app.widgets.reflow import Reflow

ROOM_PX = 900
SHARES = (13, 7)


class Section(QWidget):
    """`show_bench` is called when something changed and the section is seen."""

    def __init__(
        self,
        theme: Theme,
        bench: Bench,
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
        for amount in self.findChildren(BenchAmount):
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
