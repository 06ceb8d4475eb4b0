"""What goes wrong inside: a sentence for the person, the details in a file."""

from __future__ import annotations

import logging
import sys
import threading
from logging.handlers import RotatingFileHandler
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QObject, QtMsgType, Signal, qInstallMessageHandler

log = logging.getLogger("poleward")

LARGEST_BYTES = 1_000_000
LEVELS = {
    QtMsgType.QtWarningMsg: logging.WARNING,
    QtMsgType.QtCriticalMsg: logging.ERROR,
    QtMsgType.QtFatalMsg: logging.CRITICAL,
}


def keep_details(folder: Path) -> Path | None:
    """Sends the details of faults to a file in `folder`; None when it cannot be written."""
    path = folder / "faults.txt"
    try:
        folder.mkdir(parents=True, exist_ok=True)
        handler = RotatingFileHandler(path, maxBytes=LARGEST_BYTES, backupCount=1, encoding="utf-8")
    except OSError:
        return None
    handler.setFormatter(logging.Formatter("%(asctime)s %(name)s %(levelname)s %(message)s"))
    logging.getLogger().addHandler(handler)
    return path


class Faults(QObject):
    """Catches what nobody caught, in any thread. `said` carries a sentence."""

    said = Signal(str)

    def __init__(self, details: Path | None) -> None:
        super().__init__()
        self._details = details

    def install(self) -> None:
        sys.excepthook = self._caught
        threading.excepthook = lambda args: self._caught(
            args.exc_type, args.exc_value, args.exc_traceback
        )
        qInstallMessageHandler(self._qt_said)

    def remove(self) -> None:
        sys.excepthook = sys.__excepthook__
        threading.excepthook = threading.__excepthook__
        qInstallMessageHandler(None)

    def _caught(
        self,
        kind: type[BaseException],
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error or kind(), trace)
            return
        log.error("not caught", exc_info=(kind, error or kind(), trace))
        where = f" Details are in {self._details}." if self._details else ""
        self.said.emit(
            f"Something in the program went wrong ({kind.__name__}); "
            f"what you measured is kept.{where}"
        )

    def _qt_said(self, kind: QtMsgType, _context: object, text: str) -> None:
        level = LEVELS.get(kind)
        if level is not None:
            log.log(level, "Qt: %s", text)
