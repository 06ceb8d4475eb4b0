"""How this computer can be made to sound: by its own players, or by a plain beep."""

from __future__ import annotations

import shutil
import subprocess
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path

from PySide6.QtWidgets import QApplication

from app.signals.cue import Cue
from core.language import marked

# Programs that play a file and end; the first that is there is taken. macOS has the first, Linux
# desktops one or more of the others.
PLAYERS = (("afplay",), ("pw-play",), ("paplay",), ("aplay", "-q"))
BEEP_NOTE = marked("This computer offers no player of sounds: a plain beep is used, if it has one.")


def _sound(cue: Cue) -> bytes:
    from app.signals.wav import sound

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
