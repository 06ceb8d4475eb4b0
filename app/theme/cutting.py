"""A page cut into pieces that are dressed one by one, each small enough not to be waited for."""

from __future__ import annotations

from dataclasses import dataclass, field

from PySide6.QtCore import QCoreApplication, QEvent
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QComboBox,
    QLabel,
    QLineEdit,
    QScrollArea,
    QScrollBar,
    QStackedWidget,
    QWidget,
)

MOST_WIDGETS = 20  # in a piece; dressing one widget takes up to half a millisecond
GROWS = "grows"  # the property of a widget that is given parts of its own later
GROWN = QEvent.Type(QEvent.registerEventType())
FRAMES = (QScrollArea, QStackedWidget)
DRAWN = (QAbstractButton, QAbstractScrollArea, QComboBox, QLabel, QLineEdit, QScrollBar)


@dataclass
class Cut:
    """`frames` only hold others and keep one sheet for good; `pieces` are dressed at a change."""

    frames: list[QWidget] = field(default_factory=list)
    pieces: list[QWidget] = field(default_factory=list)


def cut(widget: QWidget) -> Cut:
    """Pieces as large as may be, in the order in which their widgets were made."""
    made = Cut()
    _take(widget, _counted(widget, {}), made)
    return made


def frame_of(widget: QWidget) -> Cut:
    """As `cut`, with the widget itself as a frame however few it holds by now."""
    made = Cut([widget])
    counts = _counted(widget, {})
    for child in parts(widget):
        _take(child, counts, made)
    return made


def tell_grown(widget: QWidget) -> None:
    """Has what was put into a widget dressed now, before it is polished without a sheet."""
    QCoreApplication.sendEvent(widget, QEvent(GROWN))


def parts(widget: QWidget) -> list[QWidget]:
    """The widgets right inside; not the windows that open over it."""
    inside = (child for child in widget.children() if isinstance(child, QWidget))
    return [child for child in inside if not child.isWindow()]


def _take(widget: QWidget, counts: dict[QWidget, int], made: Cut) -> None:
    if counts[widget] <= MOST_WIDGETS or not _may_be_frame(widget):
        made.pieces.append(widget)
        return
    made.frames.append(widget)
    for child in parts(widget):
        _take(child, counts, made)


def _may_be_frame(widget: QWidget) -> bool:
    """What draws more than a ground and a plain border needs the whole sheet."""
    plain = isinstance(widget, FRAMES) or not isinstance(widget, DRAWN)
    return plain and not any(child.styleSheet() for child in parts(widget))


def _counted(widget: QWidget, counts: dict[QWidget, int]) -> dict[QWidget, int]:
    """Of all widgets inside; what grows counts as more than a piece may hold."""
    for child in parts(widget):
        _counted(child, counts)
    own = MOST_WIDGETS + 1 if widget.property(GROWS) else 1
    counts[widget] = own + sum(counts[child] for child in parts(widget))
    return counts
