"""With which telescope and camera: those of the set in use, or typed figures."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.session.budget import Wanted
from app.widgets.choice import Choice
from app.widgets.figure import Figure
from app.widgets.text import Panel, Text
from core.mount.equipment import Camera, Telescope, quantities

SET, TYPED = "set", "typed"
WHOLE = ("width_px", "height_px")


class OpticsForm(Panel):
    """`changed` fires when the person has changed something."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("With what"), parent)
        self.sources = Choice(
            self.tr("Optics"),
            [(SET, self.tr("The set in use")), (TYPED, self.tr("Type figures"))],
        )
        self._of_set = Text("", "quiet")
        known = quantities(Telescope) | quantities(Camera)
        names = ("focal_length_mm", "pixel_um", *WHOLE)
        labels = {
            "width_px": self.tr("Width, in pixels"),
            "height_px": self.tr("Height, in pixels"),
        }
        self.figures = {
            name: Figure(known[name], name=labels.get(name, ""), is_whole=name in WHOLE)
            for name in names
        }
        self.column.addWidget(self.sources)
        self.column.addWidget(self._of_set)
        for figure in self.figures.values():
            self.column.addWidget(figure)
            figure.submitted.connect(self.changed)
            figure.left.connect(self.changed)
        self.sources.chosen.connect(lambda _name: self.changed.emit())

    def of_set(self) -> str:
        return self._of_set.text()

    def show_wanted(self, wanted: Wanted, of_set: str) -> None:
        self.sources.show_choice(TYPED if wanted.has_own_optics else SET)
        self._of_set.say("" if wanted.has_own_optics else of_set)
        for name, figure in self.figures.items():
            figure.setVisible(wanted.has_own_optics)
            if figure.is_free():
                figure.show_figure(getattr(wanted, name))

    def taken(self, wanted: Wanted) -> Wanted:
        """`wanted` with what stands here; what cannot be used is left as it was."""
        figures: dict[str, Any] = {"has_own_optics": self.sources.choice() == TYPED}
        for name, figure in self.figures.items():
            value = figure.read()
            if not figure.is_wrong():
                figures[name] = int(value) if name in WHOLE and value is not None else value
        return replace(wanted, **figures)
