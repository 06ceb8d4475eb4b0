"""The parts of a drift plot that belong to one leg."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import numpy as np
import pyqtgraph as pg
from numpy.typing import NDArray
from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtGui import QBrush, QColor, QFont, QPaintEvent, QPolygonF, QResizeEvent, QShowEvent
from PySide6.QtWidgets import (
    QApplication,
    QGraphicsPathItem,
    QGraphicsPolygonItem,
    QHBoxLayout,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from app.ui.curveplot import decimate, named_axes
from app.ui.driftseries import SET_ASIDE, DriftSeries, Floats, shape_code, tint
from app.ui.form import Key
from app.ui.plotreading import PlotKeys, PlotReading, PlotWalk, nearest
from app.ui.redraw import Redraw
from app.ui.style import Theme
from app.ui.text import Reflow, Text
from app.workers.yielding import window_works
from core.language import marked, say

FEW = 300  # up to so many readings in the picture each is a dot, more are a line
SMALL_PX = 14
MOST_SHAPES = 24
LINE_POINTS = 60  # the fitted line is smooth: a thick pen on a short line costs nothing


class LegCurves:
    """Readings as a thin quiet line, group means as shapes, fitted line with its band.

    Lines are Qt's own items: those of the plot library are painted in Python, which takes several
    times as long and waits for every thread that computes.
    """

    def __init__(self, plot: pg.PlotItem, theme: Theme) -> None:
        self._plot = plot
        self._theme = theme
        self._band = QGraphicsPolygonItem()
        self._readings = QGraphicsPathItem()
        self._dots = pg.ScatterPlotItem(size=4, pxMode=True, symbol="o", antialias=True)
        self._set_aside = pg.ScatterPlotItem(size=9, pxMode=True, symbol=SET_ASIDE, antialias=True)
        self._means = pg.ScatterPlotItem(size=10, pxMode=True, antialias=True)
        self._line = QGraphicsPathItem()
        self._steps = QGraphicsPathItem()
        self._step_words: list[pg.TextItem] = []
        self._drawn: object = None  # from what the picture was made
        self._fit: object = None  # from what the parts that come from the fit were made
        self._name = pg.TextItem(anchor=(0, 0.5))
        self._items = (
            self._band,
            self._readings,
            self._dots,
            self._steps,
            self._set_aside,
            self._line,
            self._means,
            self._name,
        )
        for item in self._items:
            plot.addItem(item, ignoreBounds=True)

    def remove(self) -> None:
        for item in (*self._items, *self._step_words):
            self._plot.removeItem(item)

    def shows(self, leg: DriftSeries, left: float, right: float, columns: int) -> bool:
        """Whether `show` would change nothing."""
        return self._state(leg, left, right, columns) == self._drawn

    def _state(self, leg: DriftSeries, *edges: float) -> object:
        return len(leg.minutes), edges, self._fit_state(leg)

    def _fit_state(self, leg: DriftSeries) -> object:
        made_from = len(leg.minutes) if leg.judged is None else leg.judged
        return made_from, self._theme.look, self._theme.scale

    def show(self, leg: DriftSeries, left: float, right: float, columns: int) -> None:
        """`left`, `right`: minutes at the edges of the picture, `columns` pixels wide."""
        self._drawn = self._state(leg, left, right, columns)
        colour = tint(self._theme, leg.index)
        self._show_readings(leg, left, right, columns)
        self._show_set_aside(leg, left, right)
        if self._fit != self._fit_state(leg):
            self._fit = self._fit_state(leg)
            self._show_means(leg, colour)
            self._show_line(leg, colour)
            self._show_steps(leg)
        self._show_name(leg, colour, right, (right - left) / columns)

    def _show_readings(self, leg: DriftSeries, left: float, right: float, columns: int) -> None:
        quiet = QColor(self._theme.look.quiet)
        x, y = decimate(leg.minutes, leg.arcsec, left, right, columns)
        few = len(x) <= FEW
        if few:
            self._dots.setData(x, y, brush=QBrush(quiet), pen=None)
        else:
            quiet.setAlpha(150)
            self._readings.setPen(pg.mkPen(quiet, width=0))
            joined = _joined(x, leg.minutes[leg.pauses])
            self._readings.setPath(pg.arrayToQPath(x, y, connect=joined))
        self._dots.setVisible(few)
        self._readings.setVisible(not few)

    def _show_set_aside(self, leg: DriftSeries, left: float, right: float) -> None:
        chosen = np.flatnonzero(leg.set_aside)
        chosen = chosen[(leg.minutes[chosen] >= left) & (leg.minutes[chosen] <= right)]
        self._set_aside.setVisible(chosen.size > 0)  # what is empty takes time to paint too
        if not chosen.size:
            return
        pen = pg.mkPen(self._theme.look.alarm, width=2)
        self._set_aside.setData(leg.minutes[chosen], leg.arcsec[chosen], pen=pen, brush=None)

    def _show_means(self, leg: DriftSeries, colour: QColor) -> None:
        self._means.setData(
            _grouped(leg.mean_minutes),
            _grouped(leg.mean_arcsec),
            symbol=shape_code(leg.index),
            brush=colour,
            pen=pg.mkPen(self._theme.look.well, width=1),
        )

    def _show_line(self, leg: DriftSeries, colour: QColor) -> None:
        at = _spread(len(leg.line_minutes), LINE_POINTS)
        x = leg.line_minutes[at]
        self._line.setPath(pg.arrayToQPath(x, leg.line_arcsec[at]))
        self._line.setPen(pg.mkPen(colour, width=2))
        around = [*zip(x, leg.low_arcsec[at], strict=True)]
        around += reversed([*zip(x, leg.high_arcsec[at], strict=True)])
        self._band.setPolygon(QPolygonF([QPointF(minute, arcsec) for minute, arcsec in around]))
        edge = pg.mkPen(colour, width=0, style=Qt.PenStyle.DashLine)
        self._band.setPen(edge)
        fill = QColor(colour)
        fill.setAlpha(45)
        self._band.setBrush(fill)

    def _show_steps(self, leg: DriftSeries) -> None:
        for words in self._step_words:
            self._plot.removeItem(words)
        self._step_words = []
        self._steps.setVisible(bool(leg.steps))
        if not leg.steps:
            return
        alarm = QColor(self._theme.look.alarm)
        high = float(leg.arcsec.max(initial=0.0))
        low = float(leg.arcsec.min(initial=0.0))
        x = np.repeat([minute for minute, _size in leg.steps], 2)
        y = np.tile([low, high], len(leg.steps))
        self._steps.setPath(pg.arrayToQPath(x, y, connect="pairs"))
        self._steps.setPen(pg.mkPen(alarm, width=0, style=Qt.PenStyle.DashDotLine))
        self._step_words = [self._step(minute, size, high) for minute, size in leg.steps]

    def _step(self, minute: float, size: float, high: float) -> pg.TextItem:
        words = pg.TextItem(
            say("step {size:.1f}″", size=abs(size)), color=self._theme.look.alarm, anchor=(0, 0)
        )
        words.setPos(minute, high)
        self._lay_under(words)
        words.setFont(self._font())
        self._plot.addItem(words, ignoreBounds=True)
        return words

    def _font(self) -> QFont:
        font = QFont(self._plot.font())
        font.setPixelSize(round(SMALL_PX * self._theme.scale))
        return font

    def _lay_under(self, words: pg.TextItem) -> None:
        """Words stay readable where lines cross them."""
        under = QColor(self._theme.look.well)
        under.setAlpha(190)
        words.fill = QBrush(under)
        words.setZValue(10)

    def _show_name(self, leg: DriftSeries, colour: QColor, right: float, per_px: float) -> None:
        """At the end of the line, or so far before it that the whole name is in the picture."""
        self._name.setText(leg.label, color=colour)
        self._lay_under(self._name)
        self._name.setFont(self._font())
        drawn = (
            (leg.line_minutes, leg.line_arcsec),
            (leg.mean_minutes, leg.mean_arcsec),
            (leg.minutes, leg.arcsec),
        )
        x, y = next((one for one in drawn if len(one[0])), drawn[-1])
        if len(x):
            at = min(float(x[-1]), right - per_px * self._name.boundingRect().width())
            self._name.setPos(at, float(np.interp(at, x, y)))


def _joined(x: Floats, pauses: Floats) -> NDArray[np.int32]:
    """Which points of a line (n,) are joined to the next: 1, but 0 at the last before a pause."""
    joined = np.ones(len(x), np.int32)
    last = np.searchsorted(x, pauses, side="right") - 1
    joined[last[last >= 0]] = 0
    return joined


def _grouped(means: Floats) -> Floats:
    """Means of neighbours, so that shapes stand apart and the line shows between them."""
    size = -(-len(means) // MOST_SHAPES)
    if size <= 1:
        return means
    starts = np.arange(0, len(means), size)
    counts = np.diff(np.append(starts, len(means)))
    return np.asarray(np.add.reduceat(means, starts) / counts)


def _spread(count: int, most: int) -> slice:
    """Every so-manieth of `count` points, both ends nearly kept."""
    return slice(None, None, max(1, -(-count // most)))


# The legs of a drift plot, made anew a few at a time so that the window never waits for all.

LEGS_AT_ONCE = 2  # made anew in one picture
Edges = tuple[float, float, int]  # first and last minute of the picture, its width in pixels


class DrawnLegs:
    """Curves of each leg by its label, in the order in which they were made anew last."""

    def __init__(self, plot: pg.PlotItem, theme: Theme) -> None:
        self._plot = plot
        self._theme = theme
        self._curves: dict[str, LegCurves] = {}
        self._style: object = None

    def remove(self) -> None:
        """All of them."""
        for curves in self._curves.values():
            curves.remove()
        self._curves = {}

    def are_styled(self) -> bool:
        """Whether what is drawn is in the present look."""
        return not self._curves or self._style == self._present_style()

    def show(self, legs: Sequence[DriftSeries], edges: Edges) -> bool:
        """Whether nothing is left to do; else call again.

        The newest leg and the one that waited longest are made anew; all of them in another look,
        since nothing bright may stay behind.
        """
        at_once = LEGS_AT_ONCE if self.are_styled() else len(legs)
        self._style = self._present_style()
        self._remove_all_but({leg.label for leg in legs})
        stale = [leg for leg in self._waited_longest(legs) if not self._shows(leg, edges)]
        for leg in stale[:at_once]:
            curves = self._curves.pop(leg.label, None) or LegCurves(self._plot, self._theme)
            self._curves[leg.label] = curves
            curves.show(leg, *edges)
        return len(stale) <= at_once

    def _present_style(self) -> object:
        return self._theme.look, self._theme.scale

    def _remove_all_but(self, labels: set[str]) -> None:
        for gone in [label for label in self._curves if label not in labels]:
            self._curves.pop(gone).remove()

    def _waited_longest(self, legs: Sequence[DriftSeries]) -> list[DriftSeries]:
        """The newest leg, those never drawn, then in the order in which they were drawn."""
        order = {label: place for place, label in enumerate(self._curves)}
        before = sorted(legs[:-1], key=lambda leg: order.get(leg.label, -1))
        return [*legs[-1:], *before]

    def _shows(self, leg: DriftSeries, edges: Edges) -> bool:
        curves = self._curves.get(leg.label)
        return curves is not None and curves.shows(leg, *edges)


# Declination drift against time: every leg of an axis state in one picture.

LEAST_ARCSEC = 2.0
LEAST_MINUTES = 0.5
GAP_PX = 24
HINT = marked("Point at a reading, or walk with , and . (arrows move, + and − zoom, L: next leg).")
BESIDE_PX = 500  # from here on the keys stand beside the title
MOST_LEGS = 6  # more could not be told apart, and would take too long to draw
Feed = Callable[[int], tuple[Sequence[DriftSeries], int]]


class _DriftView(pg.PlotWidget):
    def paintEvent(self, event: QPaintEvent) -> None:
        with window_works():
            super().paintEvent(event)


class DriftPlot(QWidget):
    """Follows the readings until the person zooms or pans; “Follow” takes up again.

    `copy_wanted`: the person wants the readings as text.
    """

    copy_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._ask: Feed = _no_legs
        self._legs: Sequence[DriftSeries] = ()
        self._is_following = True
        self._view = _DriftView(axisItems=named_axes())
        self._plot = self._view.getPlotItem()
        self._box = self._plot.getViewBox()
        self._curves = DrawnLegs(self._plot, theme)
        self._readout = Text(self.tr(HINT), "small")
        self._nothing = Text(self.tr("Readings will show here as they come."), "quiet")
        self._left_out = Text("", "small")
        self._left_out.hide()
        self._nothing.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._follow = Key(self.tr("Follow (F)"))
        self._copy = Key(self.tr("Copy readings"))
        self._walk = PlotWalk()
        self._mark = pg.ScatterPlotItem(size=16, symbol="o", pxMode=True)
        self._keys = PlotKeys(self._view, self._box)
        self._redraw = Redraw(self, self.draw)
        self._set_up()
        self._arrange()
        self._show_parts(False)
        self.restyle()
        theme.changed.connect(self.restyle)

    def _set_up(self) -> None:
        self._plot.setMenuEnabled(False)
        self._plot.hideButtons()
        self._box.disableAutoRange()
        self._box.sigRangeChangedManually.connect(self._moved_by_hand)
        self._view.scene().sigMouseMoved.connect(self._pointed)
        self._plot.addItem(self._mark, ignoreBounds=True)
        self._mark.setZValue(20)
        self._keys.moved.connect(self._moved_by_hand)
        self._keys.walked.connect(lambda steps: self._read(self._walk.step(self._legs, steps)))
        self._keys.next_leg.connect(lambda: self._read(self._walk.next_leg(self._legs)))
        self._keys.copy.connect(lambda: QApplication.clipboard().setText(self._readout.text()))
        self._view.setAccessibleName(self.tr("Plot of declination drift against time"))
        self._view.setAccessibleDescription(self.tr(HINT))
        for side in ("bottom", "left"):
            self._plot.getAxis(side).enableAutoSIPrefix(False)
        self._plot.showGrid(x=True, y=True, alpha=0.25)
        self._follow.setShortcut("F")
        self._follow.setToolTip(self.tr("Show all readings again as they come"))
        self._follow.clicked.connect(self.follow)
        self._follow.setEnabled(False)
        self._copy.setToolTip(self.tr("Put all readings on the clipboard as a drift log"))
        self._copy.clicked.connect(self.copy_wanted)

    def _arrange(self) -> None:
        title = Text(self.tr("Declination drift"), "title")
        keys = QWidget()
        row = QHBoxLayout(keys)
        row.setContentsMargins(0, 0, 0, 0)
        row.addStretch()
        row.addWidget(self._follow)
        row.addWidget(self._copy)
        head = Reflow((title, keys), BESIDE_PX, (1, 1))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(head)
        column.addWidget(self._nothing, 1)
        column.addWidget(self._view, 1)
        column.addWidget(self._readout)
        column.addWidget(self._left_out)
        # As high as there is room, never because the picture itself asks for it.
        self._view.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Ignored)

    def feed_from(self, ask: Feed) -> None:
        """`ask` gives the newest legs, so many at most, and how many there are before them.

        It is called when a picture is due, not before.
        """
        self._ask = ask
        self._redraw.mark()

    def mark_stale(self) -> None:
        """Something changed. Cheap enough for every reading."""
        self._redraw.mark()

    def follow(self) -> None:
        self._is_following = True
        self._follow.setEnabled(False)
        self._redraw.mark()

    def begin_anew(self) -> None:
        """What is fed from now on is another night's."""
        self._curves.remove()
        self._mark.setData([], [])
        self._readout.setText(self.tr(HINT))
        self.follow()

    def is_following(self) -> bool:
        return self._is_following

    def readout(self) -> str:
        return self._readout.text()

    def plot_item(self) -> pg.PlotItem:
        return self._plot

    def restyle(self) -> None:
        look = self._theme.look
        self._view.setBackground(QColor(look.well))
        font = self.font()
        font.setPixelSize(round(13 * self._theme.scale))
        self._mark.setPen(pg.mkPen(look.text, width=2))
        self._mark.setBrush(None)
        names = {
            "bottom": self.tr("Time since the leg began (minutes)"),
            "left": self.tr("North drift (arcsec)"),
        }
        for side, name in names.items():
            axis = self._plot.getAxis(side)
            axis.setPen(QColor(look.edge))
            axis.setTextPen(QColor(look.text))
            axis.setStyle(tickFont=font, maxTickLevel=0)
            style = {"color": look.text, "font-size": f"{font.pixelSize()}px"}
            axis.setLabel(name, **style)
        self._view.setMinimumHeight(round(130 + 60 * self._theme.scale))
        self._in_new_look()

    def _in_new_look(self) -> None:
        """At once, that nothing bright stays behind; what is hidden just before it shows."""
        if self.isVisible():
            self.draw()
        else:
            self._redraw.mark()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if not self._curves.are_styled():
            self.draw()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._redraw.mark()

    def draw(self) -> None:
        self._legs, left_out = self._ask(MOST_LEGS)
        self._tell_left_out(left_out)
        self._show_parts(bool(self._legs))
        if self._is_following:
            self._show_all()
        (left, right), _ = self._box.viewRange()
        if not self._curves.show(self._legs, (left, right, max(int(self._box.width()), 50))):
            self._redraw.mark()

    def _tell_left_out(self, count: int) -> None:
        words = self.tr("The newest {shown} legs are drawn; the {count} before count as well.")
        self._left_out.say(words.format(shown=MOST_LEGS, count=count) if count else "")

    def _show_parts(self, has_legs: bool) -> None:
        """An empty picture would only puzzle."""
        if has_legs == self._view.isVisibleTo(self):
            return
        self._nothing.setVisible(not has_legs)
        for part in (self._view, self._readout):
            part.setVisible(has_legs)
        self._copy.setEnabled(has_legs)
        self._redraw.mark()  # once more, when the picture has got its size

    def _show_all(self) -> None:
        """All readings and bands, with room for the leg's name at the right."""
        filled = [leg for leg in self._legs if len(leg.minutes)]
        right = max((float(leg.minutes[-1]) for leg in filled), default=0.0)
        low = min((leg.lowest_arcsec() for leg in filled), default=0.0)
        high = max((leg.highest_arcsec() for leg in filled), default=0.0)
        lacking = max(LEAST_ARCSEC - (high - low), 0.0)  # one reading still gets a readable axis
        low, high = low - lacking / 2, high + lacking / 2
        room = high - low
        self._box.setRange(
            xRange=(0.0, max(right, LEAST_MINUTES) * self._room_for_names()),
            yRange=(low - 0.06 * room, high + 0.12 * room),
            padding=0,
            disableAutoRange=True,
        )

    def _room_for_names(self) -> float:
        """How much wider than the readings the picture must be, for names beside their ends."""
        metrics = self.fontMetrics()
        names = max((metrics.horizontalAdvance(leg.label) for leg in self._legs), default=0)
        width = max(float(self._box.width()), 1.0)
        return width / max(width - names - GAP_PX, width / 2)

    def _moved_by_hand(self) -> None:
        self._is_following = False
        self._follow.setEnabled(True)
        self._redraw.mark()

    def _pointed(self, where: QPointF) -> None:
        at = self._box.mapSceneToView(where)
        (left, right), (low, high) = self._box.viewRange()
        found = nearest(self._legs, at.x(), at.y(), right - left, high - low)
        if found is not None:
            self._walk.point_at(found)
            self._read(found)

    def _read(self, found: PlotReading | None) -> None:
        """Rings a reading and tells its value."""
        if found is None:
            return
        self._mark.setData([found.minutes], [found.arcsec])
        self._readout.setText(self._words(found))

    def _words(self, found: PlotReading) -> str:
        side = self.tr("north") if found.arcsec >= 0 else self.tr("south")
        return self.tr("{leg}: {size:.1f}″ {side} after {minutes:.1f} min, at {time} UTC").format(
            leg=found.label,
            size=abs(found.arcsec),
            side=side,
            minutes=found.minutes,
            time=found.time,
        )


def _no_legs(_: int) -> tuple[Sequence[DriftSeries], int]:
    return (), 0
