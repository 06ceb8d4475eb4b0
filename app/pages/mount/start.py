"""The Mount page before anything is entered: what it is for, and the first step."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.theme.theme import Theme
from app.widgets.beam import Beam, Block
from app.widgets.beamdrawing import BeamDrawing
from app.widgets.key import Key
from app.widgets.reflow import Reflow
from app.widgets.text import Panel, Text

# Masses and arms of a made-up load in balance, for the drawing alone.
TUBE, CAMERA, WEIGHT = (6.0, 240.0), (1.0, 360.0), (6.5, -277.0)


class Start(QWidget):
    """`example_wanted`: the invented set; `own_wanted`: a form for one's own mount."""

    example_wanted = Signal()
    own_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.example_key = Key(self.tr("Try an invented set"), "primary")
        self.own_key = Key(self.tr("Enter your mount"))
        self.example_key.clicked.connect(self.example_wanted)
        self.own_key.clicked.connect(self.own_wanted)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(12)
        column.addWidget(
            Text(self.tr("Does the mount carry it, and which one to buy?"), "question")
        )
        column.addWidget(
            Text(
                self.tr(
                    "Type what the data sheets say of your mount and of what goes on it. This page "
                    "weighs the load, places the counterweight, tells what one pixel sees, and "
                    "compares mounts for what you want to do. It knows no products: the figures "
                    "are yours."
                )
            )
        )
        own = self.tr("Its capacity is enough for a start; the rest can follow.")
        example = self.tr("A made-up mount with a telescope, cameras and a weight, to look around.")
        ways = [self._way(self.example_key, example), self._way(self.own_key, own)]
        column.addWidget(Reflow(ways, 640))
        drawing = BeamDrawing(theme, self.tr("A telescope and a counterweight in balance"))
        drawing.show_beam(
            Beam(
                (
                    Block(self.tr("tube"), *TUBE),
                    Block(self.tr("camera"), *CAMERA),
                    Block(self.tr("weight"), *WEIGHT, is_weight=True),
                ),
                self.tr("polar axis"),
                self.tr("counterweight"),
                self.tr("telescope"),
                rail_mm=(-380.0, -90.0),
                are_named=True,
                told=self.tr("A drawing: the weight on the left holds the load on the right."),
            )
        )
        drawing.setMaximumWidth(760)
        column.addWidget(drawing)
        column.addStretch(1)

    def _way(self, key: Key, sentence: str) -> Panel:
        panel = Panel()
        key.setAccessibleDescription(sentence)
        panel.column.addWidget(key)
        panel.column.addWidget(Text(sentence, "quiet"))
        panel.column.addStretch()
        return panel
