"""A page that scrolls up and down when the window is too low for it, and never sideways."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, QTimer
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QScrollArea, QWidget


class Scrolled(QScrollArea):
    """The content is never squeezed below what its words need at the width there is: Qt asks only
    for the height they need at the width they would like, so that lines would overlap.
    """

    def __init__(self, content: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        content.setObjectName("page")
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidget(content)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._give_room()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        handled = super().eventFilter(watched, event)
        if watched is self.widget() and event.type() == QEvent.Type.LayoutRequest:
            self._give_room()
        return handled

    def bring_into_view(self, part: QWidget) -> None:
        """Scrolls to a part that has just been shown, as soon as it has its place."""
        QTimer.singleShot(0, part, lambda: self.ensureWidgetVisible(part))

    def _give_room(self) -> None:
        content = self.widget()
        layout = content.layout() if content is not None else None
        if content is None or layout is None or not layout.hasHeightForWidth():
            return
        least = layout.totalMinimumHeightForWidth(self.viewport().width())
        if least != content.minimumHeight():
            content.setMinimumHeight(least)
