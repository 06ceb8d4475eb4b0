"""The list of pages down the left side of the window."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtWidgets import QButtonGroup, QSizePolicy, QVBoxLayout, QWidget

from app.widgets.key import Key
from app.widgets.scrolled import Scrolled
from app.widgets.text import Text


class Rail(QWidget):
    """Reached by Alt and the number of the page as well."""

    chosen = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("rail")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName(self.tr("Pages"))
        self._buttons: dict[str, Key] = {}
        self._group = QButtonGroup(self)
        mark = Text("Poleward", "mark")
        mark.setWordWrap(False)
        mark.setContentsMargins(16, 14, 16, 14)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(0)
        self._column.addWidget(mark)
        self._column.addStretch()

    def offer(self, pages: Sequence[tuple[str, str]]) -> None:
        """`pages`: name and title of each, from the top."""
        for number, (name, title) in enumerate(pages, start=1):
            button = Key(title, "rail")
            button.setCheckable(True)
            digit = number % 10  # the tenth has Alt+0
            button.setShortcut(f"Alt+{digit}")
            button.setToolTip(self.tr("{title} (Alt+{number})").format(title=title, number=digit))
            button.setAccessibleName(self.tr("Page {title}").format(title=title))
            button.clicked.connect(lambda _down, name=name: self.chosen.emit(name))
            self._group.addButton(button)
            self._buttons[name] = button
            self._column.insertWidget(self._column.count() - 1, button)

    def show_choice(self, name: str) -> None:
        button = self._buttons[name]
        button.setChecked(True)
        viewport = self.parentWidget()
        pane = None if viewport is None else viewport.parentWidget()
        if isinstance(pane, Scrolled):
            pane.ensureWidgetVisible(button, 0, 0)

    def button(self, name: str) -> Key:
        return self._buttons[name]


class RailPane(Scrolled):
    """The rail where the window is too low for all of it: it scrolls, and keeps its width."""

    def __init__(self, rail: Rail, parent: QWidget | None = None) -> None:
        super().__init__(rail, parent)
        rail.setObjectName("rail")
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Ignored)
        self._fit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        handled = super().eventFilter(watched, event)
        if watched is self.widget() and event.type() in (
            QEvent.Type.LayoutRequest,
            QEvent.Type.Resize,
        ):
            self._fit()
        return handled

    def _fit(self) -> None:
        rail = self.widget()
        wanted = 0 if rail is None else rail.minimumSizeHint().width()
        bar = self.verticalScrollBar()
        if rail is not None and rail.minimumSizeHint().height() > self.height():
            wanted += bar.sizeHint().width()
        if wanted != self.minimumWidth():
            self.setFixedWidth(wanted)
