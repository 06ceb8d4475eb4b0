"""What the person should know about the answer, in sentences."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.widgets.text import Panel, Text

if TYPE_CHECKING:
    from app.session.snapshot import Snapshot


class Notes(Panel):
    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Worth knowing"), parent)
        self._notes = Text()
        self._contains = Text("", "small")
        self.column.addWidget(self._notes)
        self.column.addWidget(self._contains)
        self.column.addWidget(
            Text(
                self.tr(
                    "Only the motion to the north or south tells of the axis: the motion to the "
                    "east or west carries the periodic error of the drive, and tells how far the "
                    "reticle is turned."
                ),
                "small",
            )
        )

    def show_snapshot(self, snapshot: Snapshot) -> None:
        notes = () if snapshot.solution is None else snapshot.solution.notes
        self._notes.say("\n".join(note.text for note in notes))
        priors = snapshot.priors
        form = self.tr(
            "The ± contains the air, the step of the readings, a reticle turned by some "
            "{angle:g}°, slow wander of the field and a tube that yields {flexure:g}″ per g. "
            "It cannot know of a wrong star, a wrong place or time, a base that moves, or a tube "
            "that yields more."
        )
        self._contains.say(
            form.format(angle=priors.angle_sigma_deg, flexure=priors.flexure_arcsec_per_g)
        )

    def contains(self) -> str:
        """What the ± is made of, and what it cannot know."""
        return self._contains.text()

    def text(self) -> str:
        return self._notes.text()
