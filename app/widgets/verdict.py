"""The answer in large letters: where the axis points and what to turn."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.widgets.reflow import Reflow
from app.widgets.text import Panel, Text


@dataclass(frozen=True)
class AxisVerdict:
    """One direction. `figure` and `turn` are empty when the legs cannot tell; `side` says so."""

    figure: str
    side: str
    turn: str


@dataclass(frozen=True)
class Verdict:
    """`quiet`: sentences below. `finding`: what is known instead when the figures are not.
    `is_stale`: a newer answer is being worked out."""

    azimuth: AxisVerdict
    altitude: AxisVerdict
    quiet: tuple[str, ...] = ()
    finding: str = ""
    is_stale: bool = False


class _Half(QWidget):
    def __init__(self, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self._figure = Text("", "figure")
        self._side = Text("", "side")
        self._turn = Text("", "turn")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(Text(name, "quiet"))
        for part in (self._figure, self._side, self._turn):
            column.addWidget(part)
        column.addStretch()  # of two halves the shorter one keeps its lines together

    def show_axis(self, axis: AxisVerdict) -> None:
        self._figure.say(axis.figure)
        self._side.say(axis.side)
        self._turn.say(axis.turn)
        self.setAccessibleDescription(" ".join((axis.figure, axis.side, axis.turn)).strip())


class VerdictBand(Panel):
    """Azimuth and altitude, side by side where there is room."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("Where the axis points"))
        self._azimuth = _Half(self.tr("Azimuth"))
        self._altitude = _Half(self.tr("Altitude"))
        self._finding = Text()
        self._quiet = Text("", "quiet")
        self.column.addWidget(Reflow((self._azimuth, self._altitude), 480))
        self.column.addWidget(self._finding)
        self.column.addWidget(self._quiet)

    def halves(self) -> tuple[QWidget, QWidget]:
        """Azimuth and altitude; each says in its description what it shows."""
        return self._azimuth, self._altitude

    def finding(self) -> str:
        return self._finding.text()

    def show_verdict(self, verdict: Verdict) -> None:
        self._azimuth.show_axis(verdict.azimuth)
        self._altitude.show_axis(verdict.altitude)
        self._finding.say(verdict.finding)
        # At the end of a line that is there anyway: nothing may jump at every answer.
        stale = [self.tr("A newer answer is being worked out …")] if verdict.is_stale else []
        self._quiet.say(" ".join((*verdict.quiet, *stale)))
