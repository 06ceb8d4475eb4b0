"""A caret in a colour of the look.

Qt paints its own by inverting what lies beneath, which on black is white.
"""

from __future__ import annotations

from functools import cache

from PySide6.QtCore import QEvent, QObject, QRect, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPalette
from PySide6.QtWidgets import QApplication, QLineEdit, QProxyStyle, QStyle, QStyleOption, QWidget

WIDTH_PX = 2


class _NoCaret(QProxyStyle):
    """Makes Qt's own caret nothing wide."""

    def pixelMetric(
        self,
        metric: QStyle.PixelMetric,
        option: QStyleOption | None = None,
        widget: QWidget | None = None,
    ) -> int:
        if metric == QStyle.PixelMetric.PM_TextCursorWidth:
            return 0
        return super().pixelMetric(metric, option, widget)


@cache
def _no_caret(app: QApplication) -> _NoCaret:
    style = _NoCaret("Fusion")
    style.setParent(app)
    return style


class _Caret(QWidget):
    """Stands where the line types next, while the line has the focus."""

    def __init__(self, line: QLineEdit) -> None:
        super().__init__(line)
        self._line = line
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        line.installEventFilter(self)
        self.follow()

    def follow(self) -> None:
        rect = self._line.inputMethodQuery(Qt.InputMethodQuery.ImCursorRectangle)
        if isinstance(rect, QRect):
            self.setGeometry(rect.center().x(), rect.y(), WIDTH_PX, rect.height())
        self.setVisible(self._line.hasFocus() and not self._line.isReadOnly())

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        # At each painting, since only then does a long text move beneath the caret.
        if event.type() in (QEvent.Type.Paint, QEvent.Type.FocusIn, QEvent.Type.FocusOut):
            self.follow()
        return super().eventFilter(watched, event)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), self.palette().color(QPalette.ColorRole.Accent))
        painter.end()


def colour_caret(line: QLineEdit) -> None:
    """Gives a line of text a caret in the accent of the look."""
    app = QApplication.instance()
    if isinstance(app, QApplication):
        line.setStyle(_no_caret(app))
    caret = _Caret(line)
    line.cursorPositionChanged.connect(lambda _old, _new: caret.follow())
