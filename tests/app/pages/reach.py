"""What every page owes its reader: names, targets, no clipped words."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QAbstractButton, QLabel, QLineEdit, QWidget

from app.ui.style import TOUCH_PX


def nameless(page: QWidget) -> list[QWidget]:
    """Widgets reached by Tab that have neither an accessible name nor words of their own."""
    reached = [part for part in _shown(page) if part.focusPolicy() & Qt.FocusPolicy.TabFocus]
    return [
        part
        for part in reached
        if not part.accessibleName() and not (isinstance(part, QAbstractButton) and part.text())
    ]


def small(page: QWidget) -> list[QWidget]:
    """Keys and lines with a side shorter than a cold finger."""
    touched = [part for part in _shown(page) if isinstance(part, QAbstractButton | QLineEdit)]
    return [part for part in touched if min(part.width(), part.height()) < TOUCH_PX]


def clipped(page: QWidget) -> list[str]:
    """Words that have less room than they take, and keys narrower than they ask for."""
    labels = [part for part in _shown(page) if isinstance(part, QLabel) and part.text()]
    cut = [label.text() for label in labels if _is_cut(label)]
    keys = [part for part in _shown(page) if isinstance(part, QAbstractButton)]
    return cut + [key.text() for key in keys if key.width() < key.sizeHint().width()]


def _is_cut(label: QLabel) -> bool:
    needed = label.heightForWidth(label.width()) if label.wordWrap() else label.sizeHint().height()
    wide = label.wordWrap() or label.sizeHint().width() <= label.width()
    return label.height() < needed or not wide


def _shown(page: QWidget) -> list[QWidget]:
    return [part for part in page.findChildren(QWidget) if part.isVisibleTo(page)]
