"""What the image section asks: which telescope and camera, binning, reducer, seeing."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Any

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.session.budget import Wanted
from app.widgets.choice import Choice
from app.widgets.figure import Figure
from app.widgets.named import Named
from app.widgets.optionkeys import OptionKeys
from app.widgets.text import Panel
from core.language import marked
from core.mount.equipment import Camera, Quantity, Record, Telescope

FIGURES = {
    "focal_factor": Quantity(marked("The reducer or Barlow factor"), "", 0.05, 20.0),
    "seeing_arcsec": Quantity(marked("The seeing"), " ″", 0.1, 60.0),
    "axis_error_arcmin": Quantity(marked("An axis error to try out"), " ′", 0.0, 600.0),
}
BINNINGS = (1, 2, 3, 4)


class ImageForm(Panel):
    """`changed` fires when the person has changed something that can be used."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("What with"), parent)
        hints = {
            "focal_factor": self.tr("1 without either; a reducer is below, a Barlow lens above."),
            "seeing_arcsec": self.tr("Width of a star at half its brightness; 2 to 4 is usual."),
            "axis_error_arcmin": self.tr("For the longest exposure without guiding."),
        }
        self.telescopes = OptionKeys(self.tr("Telescope"))
        self.cameras = OptionKeys(self.tr("Camera"))
        self.binning = Choice(self.tr("Binning"), [(f"{n}", f"{n} × {n}") for n in BINNINGS])
        self.figures = {name: Figure(one, hints[name]) for name, one in FIGURES.items()}
        self._shown: dict[str, str] = {}
        for part in (self.telescopes, self.cameras, Named(self.tr("Binning"), self.binning)):
            self.column.addWidget(part)
        for figure in self.figures.values():
            self.column.addWidget(figure)
            figure.submitted.connect(self._figure_left)
            figure.left.connect(self._figure_left)
        self.column.addStretch()
        for keys in (self.telescopes, self.cameras, self.binning):
            keys.chosen.connect(lambda _name: self.changed.emit())

    def show_wanted(
        self, wanted: Wanted, telescopes: Sequence[Telescope], cameras: Sequence[Camera]
    ) -> None:
        """The first telescope and camera are those in use."""
        for keys, found in ((self.telescopes, telescopes), (self.cameras, cameras)):
            keys.offer(_sorted_options(found), found[0].key if found else "")
            keys.setVisible(len(found) > 1)
        self.binning.show_choice(str(min(wanted.binning, BINNINGS[-1])))
        for name, figure in self.figures.items():
            if figure.is_free():
                figure.show_figure(getattr(wanted, name))
                self._shown[name] = figure.text()

    def taken(self, wanted: Wanted) -> Wanted:
        """`wanted` with what stands here; what cannot be used is left as it was."""
        figures: dict[str, Any] = {
            name: value
            for name, figure in self.figures.items()
            if (value := figure.read()) is not None or not figure.is_wrong()
        }
        return replace(
            wanted,
            telescope=self.telescopes.choice(),
            camera=self.cameras.choice(),
            binning=int(self.binning.choice()),
            **figures,
        )

    def _figure_left(self) -> None:
        texts = {name: figure.text() for name, figure in self.figures.items()}
        if texts != self._shown:
            self._shown = texts
            self.changed.emit()


def _sorted_options(found: Sequence[Record]) -> list[tuple[str, str]]:
    """In an order that does not change with the choice."""
    return sorted(((one.key, one.name) for one in found), key=lambda pair: pair[1])
