"""Whether tones tell what the eye at the telescope cannot see."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from app.signals.awake import Awake
from app.signals.sounds import Sounds
from app.widgets.choice import Choice
from app.widgets.text import Panel, Text

SILENT, TONES = "silent", "tones"


class SoundPanel(Panel):
    """And whether the screen has to be kept on by hand."""

    def __init__(self, sounds: Sounds, awake: Awake, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Sounds"), parent)
        self._sounds, self._awake = sounds, awake
        self._awake_note = Text("", "small")
        self._choice = Choice(
            self.tr("Sounds"), [(SILENT, self.tr("Silent")), (TONES, self.tr("Tones"))]
        )
        self._note = Text("", "small")
        self._choice.chosen.connect(lambda chosen: sounds.turn(chosen == TONES))
        sounds.changed.connect(self._show)
        awake.changed.connect(self._show)
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
        self.column.addWidget(self._awake_note)
        self._show()

    def choice(self) -> Choice:
        return self._choice

    def note(self) -> str:
        return self._note.text()

    def awake_note(self) -> str:
        return self._awake_note.text()

    def _show(self) -> None:
        self._choice.show_choice(TONES if self._sounds.is_on else SILENT)
        self._note.say(self._sounds.note())
        self._awake_note.say(self._awake.note())
