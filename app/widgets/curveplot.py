"""A plot of a few curves, read off with the pointer or the arrow keys."""

from __future__ import annotations

from dataclasses import replace

import pyqtgraph as pg
from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QColor, QFocusEvent, QFont, QKeyEvent
from PySide6.QtWidgets import QApplication, QHBoxLayout, QSizePolicy, QVBoxLayout, QWidget

from app.theme.theme import Theme
from app.widgets.curves import Curve, Ink, Picture, joined
from app.widgets.key import Key
from app.widgets.namedaxis import named_axes
from app.widgets.text import Text

HEIGHT_PX = 300
STEPS = 100  # of the arrow keys, from one side to the other
STYLES = {
    Ink.FULL: Qt.PenStyle.SolidLine,
    Ink.DASHED: Qt.PenStyle.DashLine,
    Ink.DOTTED: Qt.PenStyle.DotLine,
    Ink.THIN: Qt.PenStyle.SolidLine,
}


class CurvePlot(QWidget):
    """Shows one `Picture` at a time. Left and right move along it, Home and End to its ends."""

    def __init__(
        self, theme: Theme, height_px: int = HEIGHT_PX, parent: QWidget | None = None
    ) -> None:
        """`height_px`: of the picture at the usual text size."""
        super().__init__(parent)
        self._height_px = height_px
        self._theme = theme
        self._picture: Picture | None = None
        self._at = 0.0
        self._view = pg.PlotWidget(axisItems=named_axes())
        self._plot = self._view.getPlotItem()
        self._cursor = pg.InfiniteLine(angle=90)
        self._title = Text("", "title")
        self._legend = Text("", "small")
        self._readout = Text(self.tr("Point at the plot, or use the arrow keys."), "small")
        self._copy = Key(self.tr("Copy values"))
        self._set_up()
        self._arrange()
        self._restyle()
        theme.changed.connect(self._restyle)

    def _set_up(self) -> None:
        self._plot.setMenuEnabled(False)
        self._plot.hideButtons()
        self._plot.layout.setContentsMargins(4, 4, 10, 10)  # names of axes reach over their edge
        self._plot.setMouseEnabled(x=False, y=False)
        for part in (self._view, self._view.viewport()):
            part.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._view.scene().sigMouseMoved.connect(self._pointed)
        for side in ("bottom", "left"):
            self._plot.getAxis(side).enableAutoSIPrefix(False)
        self._plot.showGrid(x=True, y=True, alpha=0.2)
        self._plot.getViewBox().sigResized.connect(self._place_names)
        self._copy.clicked.connect(self.copy)
        self._copy.setToolTip(self.tr("Put what is drawn on the clipboard as a table"))
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self._readout.setMinimumHeight(1)

    def _arrange(self) -> None:
        head = QHBoxLayout()
        head.addWidget(self._title, 1)
        head.addWidget(self._copy)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addLayout(head)
        column.addWidget(self._legend)
        column.addWidget(self._view)
        column.addWidget(self._readout)
        self._view.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)

    def show_picture(self, picture: Picture) -> None:
        thin = tuple(curve.thinned() for curve in picture.curves)
        self._picture = replace(picture, curves=thin)
        self._title.say(picture.title)
        self._view.setAccessibleName(picture.title)
        self.setAccessibleName(picture.title)
        named = [f"{one.ink.value} {one.name}" for one in _named(thin)]
        self._legend.say("    ".join(named) if len(named) > 1 else "")
        self._draw()

    def picture(self) -> Picture | None:
        """What is drawn, thinned."""
        return self._picture

    def readout(self) -> str:
        return self._readout.text()

    def legend(self) -> str:
        return self._legend.text()

    def copy_key(self) -> Key:
        return self._copy

    def copy(self) -> None:
        if self._picture is not None:
            QApplication.clipboard().setText(self._picture.table())

    def read_at(self, x: float) -> None:
        """Reads the curves off there."""
        if self._picture is None:
            return
        low, high = self._picture.x_span()
        self._at = min(max(x, low), high)
        words = self._picture.words_at(self._at)
        self._readout.setText(words)
        self.setAccessibleDescription(words)
        self._cursor.setPos(self._at)
        self._cursor.show()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self._picture is None:
            super().keyPressEvent(event)
            return
        low, high = self._picture.x_span()
        step = (high - low) / STEPS
        places = {
            Qt.Key.Key_Left: self._at - step,
            Qt.Key.Key_Right: self._at + step,
            Qt.Key.Key_Home: low,
            Qt.Key.Key_End: high,
        }
        wanted = places.get(Qt.Key(event.key()))
        if wanted is None:
            super().keyPressEvent(event)
        else:
            self.read_at(wanted)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        if event.reason() in (Qt.FocusReason.TabFocusReason, Qt.FocusReason.BacktabFocusReason):
            self.read_at(self._at)
        self._show_focus(True)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self._show_focus(False)

    def _show_focus(self, here: bool) -> None:
        ring = self._theme.look.accent if here else self._theme.look.well
        self._view.setStyleSheet(f"border: 3px solid {ring};")

    def _draw(self) -> None:
        picture = self._picture
        if picture is None:
            return
        self._plot.clear()
        for curve in joined(picture.curves):
            self._draw_curve(curve)
        look = self._theme.look
        font = self._font()
        for level, name in picture.levels:
            pen = pg.mkPen(QColor(look.quiet), width=1, style=Qt.PenStyle.DotLine)
            self._plot.addItem(pg.InfiniteLine(pos=level, angle=0, pen=pen))
            label = pg.TextItem(name, color=QColor(look.quiet), anchor=(1.0, 1.0))
            label.setFont(font)
            label.setPos(picture.x_span()[1], level)
            self._plot.addItem(label)
        self._cursor.hide()
        self._plot.addItem(self._cursor)
        self._set_axes(picture)

    def _draw_curve(self, curve: Curve) -> None:
        colour = self._colour(curve.ink)
        if curve.low is not None and curve.high is not None:
            clear = pg.mkPen(None)
            ends = [pg.PlotCurveItem(curve.x, y, pen=clear) for y in (curve.low, curve.high)]
            faint = QColor(colour)
            faint.setAlpha(60)
            for end in ends:
                self._plot.addItem(end)
            self._plot.addItem(pg.FillBetweenItem(*ends, brush=faint))
        if curve.ink is Ink.DOTS:
            size = 4 if curve.x.size > 400 else 8
            self._plot.plot(
                *(curve.x, curve.y),
                pen=None,
                symbol="o",
                symbolSize=size,
                symbolBrush=colour,
                symbolPen=None,
            )
            return
        width = 1 if curve.ink is Ink.THIN or curve.x.size > 2000 else 2
        pen = pg.mkPen(colour, width=width, style=STYLES[curve.ink])
        self._plot.plot(curve.x, curve.y, pen=pen, connect="finite")

    def _set_axes(self, picture: Picture) -> None:
        bottom = self._plot.getAxis("bottom")
        bottom.setTicks([list(picture.x_ticks)] if picture.x_ticks else None)
        look, font = self._theme.look, self._font()
        for side, name in (("bottom", picture.x_name), ("left", picture.y_name)):
            self._plot.getAxis(side).setLabel(
                name, color=look.text, **{"font-size": f"{font.pixelSize()}px"}
            )
        box = self._plot.getViewBox()
        box.setAspectLocked(picture.is_square)
        x_range, y_range = picture.x_span(), picture.y_span()
        box.setRange(xRange=x_range, yRange=y_range, padding=0.01, disableAutoRange=True)

    def _place_names(self) -> None:
        """The names of the axes go to the middle of their axes."""
        for side in ("bottom", "left"):
            self._plot.getAxis(side).resizeEvent()

    def _restyle(self) -> None:
        look, font = self._theme.look, self._font()
        self._view.setBackground(QColor(look.well))
        self._cursor.setPen(pg.mkPen(QColor(look.text), width=1))
        for side in ("bottom", "left"):
            axis = self._plot.getAxis(side)
            axis.setPen(QColor(look.edge))
            axis.setTextPen(QColor(look.text))
            axis.setStyle(tickFont=font, maxTickLevel=0)
        self._plot.getAxis("bottom").setHeight(round(2.7 * font.pixelSize() + 10))
        self._plot.getAxis("left").setWidth(round(4.4 * font.pixelSize()))  # alike in all plots
        self._view.setFixedHeight(round(self._height_px * (0.75 + 0.25 * self._theme.scale)))
        self._show_focus(self.hasFocus())
        self._draw()

    def _colour(self, ink: Ink) -> QColor:
        look = self._theme.look
        named = {Ink.FULL: look.accent, Ink.DASHED: look.text, Ink.DOTTED: look.legs[1]}
        return QColor(named.get(ink, look.edge if ink is Ink.THIN else look.quiet))

    def _font(self) -> QFont:
        font = self.font()
        font.setPixelSize(round(13 * self._theme.scale))
        return font

    def _pointed(self, where: QPointF) -> None:
        if self._picture is not None and self._plot.sceneBoundingRect().contains(where):
            self.read_at(self._plot.getViewBox().mapSceneToView(where).x())


def _named(curves: tuple[Curve, ...]) -> list[Curve]:
    """One of each name, in order."""
    return list({curve.name: curve for curve in curves}.values())
