"""Keys in a row that goes on in the next line where the width ends."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QSizePolicy, QWidget

from app.widgets.flow import Flow


class KeyRow(QWidget):
    def __init__(self, parts: Sequence[QWidget] = (), parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._flow = Flow(self)
        for part in parts:
            self._flow.addWidget(part)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def add(self, part: QWidget) -> None:
        """At the end."""
        self._flow.addWidget(part)
