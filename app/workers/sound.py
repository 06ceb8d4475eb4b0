"""Tones and spoken words, where the person wants them, by the players of this computer."""

from __future__ import annotations

import shutil
import subprocess
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, QSettings, Signal
from PySide6.QtWidgets import QApplication

from app.workers.tones import Cue
from core.language import marked, say

# How this computer can be made to sound: by its own players, or by a plain beep.

# Programs that play a file and end; the first that is there is taken. macOS has the first, Linux
# desktops one or more of the others.
PLAYERS = (("afplay",), ("pw-play",), ("paplay",), ("aplay", "-q"))
BEEP_NOTE = marked("This computer offers no player of sounds: a plain beep is used, if it has one.")


def _sound(cue: Cue) -> bytes:
    from app.workers.tones import sound

    return sound(cue)


class FilePlayer:
    """Writes each tone to a file once and hands it to a player; never waits for it."""

    note = ""

    def __init__(self, command: tuple[str, ...]) -> None:
        self._command = command
        self._folder = tempfile.TemporaryDirectory(prefix="poleward-")
        self._playing: subprocess.Popen[bytes] | None = None

    def play(self, cue: Cue) -> None:
        """A tone that is still sounding is left to end, and the new one left out."""
        if self._playing is not None and self._playing.poll() is None:
            return
        path = Path(self._folder.name) / f"{cue.name}.wav"
        if not path.exists():
            path.write_bytes(_sound(cue))
        quiet = subprocess.DEVNULL
        self._playing = subprocess.Popen(
            [*self._command, str(path)], stdin=quiet, stdout=quiet, stderr=quiet
        )

    def close(self) -> None:
        if self._playing is not None:
            self._playing.wait(timeout=2.0)
        self._folder.cleanup()


class WindowsPlayer:
    """The player that comes with Python on Windows."""

    note = ""

    def play(self, cue: Cue) -> None:
        if sys.platform == "win32":
            import winsound

            winsound.PlaySound(_sound(cue), winsound.SND_MEMORY | winsound.SND_NODEFAULT)

    def close(self) -> None:
        return


class Beep:
    """What the desktop does to draw attention."""

    note = BEEP_NOTE

    def play(self, cue: Cue) -> None:
        if cue is not Cue.KEEP_TURNING:  # a beep a second would only annoy
            QApplication.beep()

    def close(self) -> None:
        return


Means = FilePlayer | WindowsPlayer | Beep


def find_means(
    platform: str = sys.platform, which: Callable[[str], str | None] = shutil.which
) -> Means:
    """The best there is."""
    if platform == "win32":
        return WindowsPlayer()
    for command in PLAYERS:
        if which(command[0]) is not None:
            return FilePlayer(command)
    return Beep()


# Tones and spoken words, where the person wants them.

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
