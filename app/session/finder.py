"""Searching for targets beside the window's thread."""

from __future__ import annotations

import re
from collections.abc import Callable

from PySide6.QtCore import QObject, Signal

from app.session.errand import Errand
from core.sky import catalogues, targets
from core.sky.coordinates import UnusableCoordinates
from core.sky.targets import Target

# Right ascension ends where the declination's sign begins, or at a comma.
_PAIR = re.compile(r"^(.*?\d[hms\s]*)[\s,;]*([+\-−]\s*\d.*)$|^([^,;]*\d[^,;]*)[,;](.*\d.*)$")


class Finder(QObject):
    """`found` carries the text asked for and a tuple of targets. The owner calls `close`."""

    found = Signal(str, object)

    def __init__(self, now: Callable[[], float], parent: QObject | None = None) -> None:
        """`now`: seconds since 1970-01-01 UTC."""
        super().__init__(parent)
        self._now = now
        self._errand = Errand(self)
        self._errand.done.connect(self._done)

    def search(self, text: str) -> None:
        utc_s = self._now()
        self._errand.send(lambda: (text, find(text, utc_s)))

    def close(self) -> None:
        self._errand.close()

    def _done(self, answer: object) -> None:
        if isinstance(answer, tuple):
            self.found.emit(*answer)


def find(text: str, utc_s: float) -> tuple[Target, ...]:
    """Targets of that name, or the one at those coordinates; these alone without the tables."""
    try:
        found = targets.search(text, catalogues.load_stars(), catalogues.load_deep_sky(), utc_s)
    except RuntimeError:
        return _at(text)
    return tuple(found) or _at(text)


def _at(text: str) -> tuple[Target, ...]:
    match = _PAIR.match(text.strip())
    if match is None:
        return ()
    right_ascension, declination = match.group(1, 2) if match[1] else match.group(3, 4)
    try:
        return (targets.at_coordinates(right_ascension, declination),)
    except UnusableCoordinates:
        return ()
