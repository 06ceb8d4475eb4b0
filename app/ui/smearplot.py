"""Smear against the length of the exposure, at the centre and at the corner of the field."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import pyqtgraph as pg
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, QSize, Qt
from PySide6.QtGui import QColor
from PySide6.QtWidgets import QApplication, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from app.ui.curveplot import named_axes
from app.ui.form import Key
from app.ui.style import Theme
from app.ui.text import Text

Floats = NDArray[np.float64]


LEAST_WIDTH_PX = 240
NEAR = 0.12  # of the height; nearer, names would cover each other


@dataclass(frozen=True, eq=False)
class SmearLines:
    """Arrays (n,), minutes and pixels; NaN where nothing can be said."""

    minutes: Floats
    centre_px: Floats
    corner_px: Floats
    limit_px: float
    chosen_minutes: float


class _SmearView(pg.PlotWidget):
    """Asks for no more than its least height; left to itself it asks for what it has."""

    def sizeHint(self) -> QSize:
        return QSize(LEAST_WIDTH_PX, self.minimumHeight())


class SmearPlot(QWidget):
    """The corner is drawn full, the centre dashed, the limit dotted."""

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._lines: SmearLines | None = None
        self._view = _SmearView(axisItems=named_axes())
        self._plot = self._view.getPlotItem()
        self._corner = self._plot.plot([], [])
        self._centre = self._plot.plot([], [])
        self._limit = pg.InfiniteLine(angle=0)
        self._chosen = pg.InfiniteLine(angle=90)
        self._names = [pg.TextItem(anchor=(1.0, 1.0)) for _ in range(3)]
        self._readout = Text(self.tr("Point at the curve to read it off."), "small")
        self._copy = Key(self.tr("Copy"))
        self._set_up()
        self._arrange()
        self._restyle()
        theme.changed.connect(self._restyle)

    def _set_up(self) -> None:
        self._plot.setMenuEnabled(False)
        self._plot.hideButtons()
        self._plot.setMouseEnabled(x=False, y=False)
        self._view.setAccessibleName(self.tr("Plot of smear against exposure"))
        for part in (self._view, self._view.viewport()):
            part.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._view.scene().sigMouseMoved.connect(self._pointed)
        for item in (self._limit, self._chosen, *self._names):
            self._plot.addItem(item)
        for side in ("bottom", "left"):
            self._plot.getAxis(side).enableAutoSIPrefix(False)
        self._plot.showGrid(x=True, y=True, alpha=0.2)
        self._copy.clicked.connect(self.copy)
        self._copy.setAccessibleName(self.tr("Copy the curve"))
        self._copy.setToolTip(self.tr("Put exposure and smear on the clipboard as a table"))

    def _arrange(self) -> None:
        below = QHBoxLayout()
        below.addWidget(self._readout, 1)
        below.addWidget(self._copy)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Text(self.tr("Smear against exposure"), "title"))
        column.addWidget(self._view, 1)
        column.addLayout(below)
        self._view.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def show_lines(self, lines: SmearLines) -> None:
        self._lines = lines
        self._corner.setData(lines.minutes, lines.corner_px, connect="finite")
        self._centre.setData(lines.minutes, lines.centre_px, connect="finite")
        self._limit.setPos(lines.limit_px)
        self._chosen.setPos(lines.chosen_minutes)
        both = np.concatenate([lines.corner_px, lines.centre_px])
        top = max(float(np.nanmax(both, initial=0.0)), lines.limit_px) * 1.18
        right = float(lines.minutes[-1])
        box = self._plot.getViewBox()
        box.setRange(xRange=(0.0, right), yRange=(0.0, top), padding=0, disableAutoRange=True)
        self._name_lines(lines, right)
        self.setAccessibleDescription(self._words(int(np.argmin(abs(lines.minutes - right)))))

    def lines(self) -> SmearLines | None:
        return self._lines

    def readout(self) -> str:
        return self._readout.text()

    def copy(self) -> None:
        if self._lines is None:
            return
        rows = ["exposure_s\tcentre_px\tcorner_px"]
        for minutes, centre, corner in zip(
            self._lines.minutes, self._lines.centre_px, self._lines.corner_px, strict=True
        ):
            rows.append(f"{60.0 * minutes:.1f}\t{centre:.4f}\t{corner:.4f}")
        QApplication.clipboard().setText("\n".join(rows))

    def _name_lines(self, lines: SmearLines, right: float) -> None:
        """Beside the lines themselves, so that no key to them is needed."""
        ends = [_last(lines.corner_px), _last(lines.centre_px), lines.limit_px]
        words = [self.tr("corner"), self.tr("centre"), self.tr("allowed")]
        near = abs(ends[0] - ends[1]) < NEAR * max(ends)
        anchors = [1.0, 0.0 if near else 1.0, 1.0]  # two lines on each other: one name below
        for item, end, said, anchor in zip(self._names, ends, words, anchors, strict=True):
            item.setText(said)
            item.setAnchor((1.0, anchor))
            item.setPos(right, 0.0 if np.isnan(end) else end)
            item.setVisible(not np.isnan(end))

    def _restyle(self) -> None:
        look = self._theme.look
        self._view.setBackground(QColor(look.well))
        font = self.font()
        font.setPixelSize(round(13 * self._theme.scale))
        names = {"bottom": self.tr("Exposure (minutes)"), "left": self.tr("Smear (pixels)")}
        for side, name in names.items():
            axis = self._plot.getAxis(side)
            axis.setPen(QColor(look.edge))
            axis.setTextPen(QColor(look.text))
            axis.setStyle(tickFont=font, maxTickLevel=0)
            axis.setLabel(name, color=look.text, **{"font-size": f"{font.pixelSize()}px"})
        accent, text, quiet = QColor(look.accent), QColor(look.text), QColor(look.quiet)
        self._corner.setPen(pg.mkPen(accent, width=2))
        self._centre.setPen(pg.mkPen(text, width=2, style=Qt.PenStyle.DashLine))
        self._limit.setPen(pg.mkPen(quiet, width=2, style=Qt.PenStyle.DotLine))
        self._chosen.setPen(pg.mkPen(quiet, width=1))
        for item, colour in zip(self._names, (accent, text, quiet), strict=True):
            item.setFont(font)
            item.setColor(colour)
        self._view.setMinimumHeight(round(170 + 60 * self._theme.scale))

    def _pointed(self, where: QPointF) -> None:
        if self._lines is None:
            return
        at = self._plot.getViewBox().mapSceneToView(where)
        self._readout.setText(self._words(int(np.argmin(abs(self._lines.minutes - at.x())))))

    def _words(self, index: int) -> str:
        if self._lines is None:
            return ""
        corner, centre = self._lines.corner_px[index], self._lines.centre_px[index]
        when = self.tr("{minutes:.3g} min: ").format(minutes=self._lines.minutes[index])
        if np.isnan(corner):
            return when + self.tr("the target does not stay up so long.")
        return when + self.tr("corner {corner:.2f} px, centre {centre:.2f} px").format(
            corner=corner, centre=centre
        )


def _last(values: Floats) -> float:
    known = values[np.isfinite(values)]
    return float(known[-1]) if known.size else float("nan")
