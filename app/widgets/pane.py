"""A column that scrolls by itself, or shows its whole length where the page scrolls instead."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.widgets.scrolled import Scrolled

LEAST_PX = 200


class Pane(Scrolled):
    def __init__(self, content: QWidget, parent: QWidget | None = None) -> None:
        self._is_whole = False
        super().__init__(content, parent)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Ignored)

    def show_whole(self, whole: bool) -> None:
        self._is_whole = whole
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        handled = super().eventFilter(watched, event)
        if watched is self.widget() and event.type() == QEvent.Type.LayoutRequest:
            self._fit()
        return handled

    def _fit(self) -> None:
        least = LEAST_PX
        content = self.widget()
        layout = content.layout() if content is not None else None
        if self._is_whole and layout is not None:
            least = max(layout.totalHeightForWidth(self.viewport().width()), LEAST_PX)
        if least != self.minimumHeight():
            self.setMinimumHeight(least)
