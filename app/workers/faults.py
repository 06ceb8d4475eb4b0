"""What goes wrong inside: a sentence for the person, the details in a file."""

from __future__ import annotations

import logging
import sys
import threading
from logging.handlers import RotatingFileHandler
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QObject, QtMsgType, Signal, qInstallMessageHandler

from core.language import say

log = logging.getLogger("poleward")

FILE_NAME = "faults.txt"
LARGEST_BYTES = 1_000_000
LEVELS = {
    QtMsgType.QtWarningMsg: logging.WARNING,
    QtMsgType.QtCriticalMsg: logging.ERROR,
    QtMsgType.QtFatalMsg: logging.CRITICAL,
}


def _file_in(folder: Path) -> logging.Handler | None:
    """Where the details go; nowhere when the folder cannot be written."""
    try:
        folder.mkdir(parents=True, exist_ok=True)
        handler = RotatingFileHandler(
            folder / FILE_NAME, maxBytes=LARGEST_BYTES, backupCount=1, encoding="utf-8"
        )
    except OSError:
        return None
    handler.setFormatter(logging.Formatter("%(asctime)s %(name)s %(levelname)s %(message)s"))
    return handler


class Faults(QObject):
    """Catches what nobody caught, in any thread. `said` carries a sentence."""

    said = Signal(str)

    def __init__(self, folder: Path) -> None:
        super().__init__()
        self._folder = folder
        self._file: logging.Handler | None = None

    def install(self) -> None:
        """From now on; `remove` puts everything back."""
        self._file = _file_in(self._folder)
        if self._file is not None:
            logging.getLogger().addHandler(self._file)
        sys.excepthook = self.caught
        threading.excepthook = lambda args: self.caught(
            args.exc_type, args.exc_value, args.exc_traceback
        )
        qInstallMessageHandler(self._qt_said)

    def remove(self) -> None:
        sys.excepthook = sys.__excepthook__
        threading.excepthook = threading.__excepthook__
        qInstallMessageHandler(None)
        if self._file is not None:
            logging.getLogger().removeHandler(self._file)
            self._file.close()
            self._file = None

    def caught(
        self,
        kind: type[BaseException],
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        """Takes what `sys.excepthook` is given."""
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error or kind(), trace)
            return
        log.error("not caught", exc_info=(kind, error or kind(), trace))
        said = say(
            "Something in the program went wrong ({fault}); what you measured is kept.",
            fault=kind.__name__,
        )
        if self._file is not None:
            said = f"{said} {say('Details are in {path}.', path=self._folder / FILE_NAME)}"
        self.said.emit(said)

    def _qt_said(self, kind: QtMsgType, _context: object, text: str) -> None:
        level = LEVELS.get(kind)
        if level is not None:
            log.log(level, "Qt: %s", text)
