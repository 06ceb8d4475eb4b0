"""Whether tones tell what the eye at the telescope cannot see."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from app.signals.sounds import Sounds
from app.widgets.choice import Choice
from app.widgets.text import Panel, Text

SILENT, TONES = "silent", "tones"


class SoundPanel(Panel):
    def __init__(self, sounds: Sounds, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Sounds"), parent)
        self._sounds = sounds
        self._choice = Choice(
            self.tr("Sounds"), [(SILENT, self.tr("Silent")), (TONES, self.tr("Tones"))]
        )
        self._note = Text("", "small")
        self._choice.chosen.connect(lambda chosen: sounds.turn(chosen == TONES))
        sounds.changed.connect(self._show)
        self.column.addWidget(
            Text(
                self.tr(
                    "Rising: a star or the alignment is good enough. Falling: the star leaves. "
                    "Ticks: turn on. A long one: stop."
                ),
                "small",
            )
        )
        self.column.addWidget(self._choice)
        self.column.addWidget(self._note)
        self._show()

    def choice(self) -> Choice:
        return self._choice

    def note(self) -> str:
        return self._note.text()

    def _show(self) -> None:
        self._choice.show_choice(TONES if self._sounds.is_on else SILENT)
        self._note.say(self._sounds.note())
