"""For which error of the axis the map and the curve are drawn."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.budget.question import Axis
from app.widgets.choice import Choice
from app.widgets.figure import Figure
from app.widgets.reflow import Reflow
from app.widgets.text import Text
from core.language import marked
from core.mount.equipment import Quantity

FIGURES = (
    Quantity(marked("The azimuth error"), " ′", -1800.0, 1800.0),
    Quantity(marked("The altitude error"), " ′", -1800.0, 1800.0),
)
START_ARCMIN = 5.0


class AxisChoice(QWidget):
    """`changed` fires when something else is to be drawn."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.axes = Choice(
            self.tr("Drawn for"),
            [
                (Axis.SOLVED.name, self.tr("The axis as solved")),
                (Axis.EDGE.name, self.tr("The most that is allowed")),
                (Axis.TYPED.name, self.tr("An error I type")),
            ],
        )
        self.axes.show_choice(Axis.EDGE.name)
        hints = (
            self.tr("Positive towards greater azimuth: east of the pole in the north."),
            self.tr("From the true pole; positive when too high."),
        )
        pairs = zip(FIGURES, hints, strict=True)
        self.azimuth, self.altitude = (Figure(one, hint) for one, hint in pairs)
        self._typed = Reflow((self.azimuth, self.altitude), 420)
        self._has_chosen = False
        self._used = (START_ARCMIN, START_ARCMIN)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Text(self.tr("Drawn for"), "small"))
        column.addWidget(self.axes)
        column.addWidget(self._typed)
        self._typed.hide()
        for figure in (self.azimuth, self.altitude):
            figure.show_figure(START_ARCMIN)
            figure.submitted.connect(self._figure_left)
            figure.left.connect(self._figure_left)
        self.axes.chosen.connect(self._chosen)

    def axis(self) -> Axis:
        return Axis[self.axes.choice()]

    def typed_arcmin(self) -> tuple[float, float]:
        return self._used

    def show_solved(self, is_solved: bool) -> None:
        """As soon as there is a solution it is drawn, unless the person has chosen otherwise."""
        self.axes.button(Axis.SOLVED.name).setEnabled(is_solved)
        if is_solved and not self._has_chosen:
            self.axes.show_choice(Axis.SOLVED.name)
        if not is_solved and self.axis() is Axis.SOLVED:
            self.axes.show_choice(Axis.EDGE.name)

    def _chosen(self) -> None:
        self._has_chosen = True
        self._typed.setVisible(self.axis() is Axis.TYPED)
        self.changed.emit()

    def _figure_left(self) -> None:
        values = self.azimuth.read(), self.altitude.read()
        if values[0] is None or values[1] is None or (values[0], values[1]) == self._used:
            return
        self._used = (values[0], values[1])
        self.changed.emit()
