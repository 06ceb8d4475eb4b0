"""Tones between two colours of a look."""

from __future__ import annotations

from PySide6.QtGui import QColor

from app.theme.look import Colour


def between(start: Colour, end: Colour, share: float) -> QColor:
    """`share` 0 gives the start, 1 the end."""
    first, last = QColor(start), QColor(end)
    part = min(max(share, 0.0), 1.0)
    mixed = QColor()
    mixed.setRed(round(first.red() + part * (last.red() - first.red())))
    mixed.setGreen(round(first.green() + part * (last.green() - first.green())))
    mixed.setBlue(round(first.blue() + part * (last.blue() - first.blue())))
    return mixed
