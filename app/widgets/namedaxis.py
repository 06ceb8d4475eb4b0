"""An axis whose whole name can be read, however large the text and small the plot."""

from __future__ import annotations

from typing import Any

import pyqtgraph as pg

SIDES = ("bottom", "left")
_LEAST_SCALE = 0.5


class NamedAxis(pg.AxisItem):
    """The name stands in the middle, made smaller where the axis is too short for it."""

    def setLabel(self, *args: Any, **kwargs: Any) -> None:
        super().setLabel(*args, **kwargs)
        self.resizeEvent()

    def resizeEvent(self, event: Any = None) -> None:
        super().resizeEvent(event)
        if self.label is None:  # while it is closed
            return
        natural_px = self.label.boundingRect().width()
        is_upright = self.orientation == "left"
        room_px = self.size().height() if is_upright else self.size().width()
        scale = min(1.0, max(room_px / max(natural_px, 1.0), _LEAST_SCALE))
        self.label.setScale(scale)
        half_px = 0.5 * scale * natural_px
        if is_upright:
            self.label.setY(0.5 * room_px + half_px)
        else:
            self.label.setX(0.5 * room_px - half_px)


def named_axes() -> dict[str, NamedAxis]:
    """For a plot with axes at the bottom and at the left."""
    return {side: NamedAxis(side) for side in SIDES}
