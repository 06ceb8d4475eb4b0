"""Declination drift against time: every leg of an axis state in one picture."""

from __future__ import annotations

from collections.abc import Callable, Sequence

import pyqtgraph as pg
from PySide6.QtCore import QPointF, Qt, Signal
from PySide6.QtGui import QColor, QPaintEvent, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QApplication, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from app.courtesy import window_works
from app.theme.theme import Theme
from app.widgets.drawnlegs import DrawnLegs
from app.widgets.driftseries import DriftSeries
from app.widgets.key import Key
from app.widgets.namedaxis import named_axes
from app.widgets.plotkeys import PlotKeys
from app.widgets.plotreading import PlotReading, nearest
from app.widgets.plotwalk import PlotWalk
from app.widgets.redraw import Redraw
from app.widgets.reflow import Reflow
from app.widgets.text import Text
from core.language import marked

LEAST_ARCSEC = 2.0
LEAST_MINUTES = 0.5
GAP_PX = 24
HINT = marked("Point at a reading, or walk with , and . (arrows move, + and − zoom, L: next leg).")
BESIDE_PX = 500  # from here on the keys stand beside the title
MOST_LEGS = 6  # more could not be told apart, and would take too long to draw
Feed = Callable[[int], tuple[Sequence[DriftSeries], int]]


class _View(pg.PlotWidget):
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
        self._view = _View(axisItems=named_axes())
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
