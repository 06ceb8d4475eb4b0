"""Starts Poleward: `python -m app`."""

from __future__ import annotations

import os

# Before anything imports numpy. The solver works on many small matrices, for which one thread is
# the fastest: with more, they spin on the cores the window needs (100 ms at a time were seen).
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

import argparse
import signal
import sys
from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QSettings, QStandardPaths, QTimer
from PySide6.QtWidgets import QApplication

from app.compose import Program
from app.ui import translation
from app.workers.clocks import awake_s, steady_s
from app.workers.faults import Faults
from app.workers.garbage import WindowGarbage

LOG_NAME = "nights.sqlite"
CHECK_LIMIT_MS = 60_000
SWITCH_INTERVAL_S = 0.0002  # how long the window may wait for Python while a thread computes


def main(argv: Sequence[str]) -> int:
    """Runs until the window is closed; the exit code of the process."""
    wanted = _arguments(argv)
    if wanted.check:
        os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    sys.setswitchinterval(SWITCH_INTERVAL_S)
    signal.signal(signal.SIGINT, signal.SIG_DFL)  # Ctrl+C ends it; all is on disk anyway
    app = QApplication([sys.argv[0]])
    app.setApplicationName("Poleward")
    folder = wanted.log.parent if wanted.log else _own_folder()
    garbage = WindowGarbage()
    garbage.start()
    faults = Faults(folder)
    faults.install()
    settings = QSettings(str(folder / "settings.ini"), QSettings.Format.IniFormat)
    trouble = _speak(settings, app)
    program = Program(
        app, settings, wanted.log or folder / LOG_NAME, steady=steady_s, awake=awake_s
    )
    faults.said.connect(program.window.say)
    if trouble:
        program.window.say(trouble)
    if wanted.check:
        _end_when_ready(app, program)
    program.start()
    code = app.exec()
    program.close()
    garbage.stop()
    faults.remove()
    return code


def _arguments(argv: Sequence[str]) -> argparse.Namespace:
    parser = argparse.ArgumentParser(prog="python -m app", description="Poleward")
    parser.add_argument("--log", type=Path, help="the log of nights to write and to go on with")
    parser.add_argument(
        "--check", action="store_true", help="start without a screen, say “ready” and end"
    )
    return parser.parse_args(argv)


def _speak(settings: QSettings, app: QApplication) -> str:
    """In the person's language from here on; what went wrong, if anything."""
    try:
        translation.speak(translation.chosen(settings.value(translation.SETTING)), app)
    except RuntimeError as error:
        return str(error)
    return ""


def _own_folder() -> Path:
    where = QStandardPaths.writableLocation(QStandardPaths.StandardLocation.AppDataLocation)
    return Path(where)


def _end_when_ready(app: QApplication, program: Program) -> None:
    def ready() -> None:
        print("ready", flush=True)
        app.exit(0)

    program.ready.connect(ready)
    QTimer.singleShot(CHECK_LIMIT_MS, app, lambda: app.exit(1))


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
