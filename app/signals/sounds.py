"""Tones and spoken words, where the person wants them."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, QSettings, Signal

from app.signals.cue import Cue
from app.signals.means import Means, find_means
from core.language import say

KEY = "sounds"
MOCK = "mock"  # an engine of Qt's own tests, which says nothing


class Sounds(QObject):
    """Off until the person turns it on; remembered. Looks for a means only then."""

    changed = Signal()

    def __init__(
        self,
        settings: QSettings,
        find: Callable[[], Means] = find_means,
        parent: QObject | None = None,
        find_speech: Callable[[QObject], Any] | None = None,
    ) -> None:
        super().__init__(parent)
        self._settings = settings
        self._find = find
        self._means: Means | None = None
        self._speech: Any = None
        self._find_speech = find_speech or speech_of
        self._has_failed = False
        self.is_on = settings.value(KEY, False, type=bool) is True

    def turn(self, on: bool) -> None:
        """On is answered with a tone, so that one hears what one has."""
        self.is_on, self._has_failed = on, False
        self._settings.setValue(KEY, on)
        self.changed.emit()
        self.give(Cue.STAR_ENOUGH)

    def note(self) -> str:
        """What the person should know of the means, empty when all is well."""
        if self._has_failed:
            return say("The player of sounds failed and nothing is heard: watch the screen.")
        note = self._prepared().note if self.is_on else ""
        return say(note) if note else ""

    def give(self, cue: Cue) -> None:
        """Speak it where there is a voice, else sound it; a means that fails is left alone."""
        if not self.is_on:
            return
        means = self._prepared()
        if cue.value and self._speech is not None:
            self._speech.say(say(cue.value))
            return
        try:
            means.play(cue)
        except OSError:
            self.is_on, self._has_failed = False, True
            self.changed.emit()

    def close(self) -> None:
        if self._means is not None:
            self._means.close()

    def _prepared(self) -> Means:
        if self._means is None:
            self._means = self._find()
            self._speech = self._find_speech(self)
        return self._means


def speech_of(parent: QObject) -> Any:
    """Qt's speech, where its add-on is installed and has a voice; None elsewhere."""
    try:
        from PySide6.QtTextToSpeech import QTextToSpeech
    except ImportError:
        return None
    engines = [name for name in QTextToSpeech.availableEngines() if name != MOCK]
    if not engines:
        return None
    speech = QTextToSpeech(engines[0], parent)
    return speech if speech.state() != QTextToSpeech.State.Error else None
