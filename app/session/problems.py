"""What is wrong tonight, gathered into words for the person."""

from __future__ import annotations

from enum import IntEnum

from core.language import marked

NO_SITE = marked(
    "The place you stand on is not known, so the axis error cannot be "
    "computed yet: enter latitude and longitude on the Site page. The "
    "readings are kept."
)


class Trouble(IntEnum):
    """Where a problem comes from; the first come first in what is read."""

    STORAGE = 0
    CLOCK = 1
    READING = 2
    SITE = 3
    SOLUTION = 4


class Problems:
    """At most one sentence from each place; the newest replaces the one before."""

    def __init__(self) -> None:
        self._sentences: dict[Trouble, str] = {}

    def put(self, trouble: Trouble, sentence: str | None) -> bool:
        """Say or take back a sentence; returns whether that changed anything."""
        if self._sentences.get(trouble) == sentence:
            return False
        if sentence is None:
            del self._sentences[trouble]
        else:
            self._sentences[trouble] = sentence
        return True

    def text(self) -> str | None:
        """All that is wrong, most pressing first, or None when all is well."""
        return " ".join(self._sentences[key] for key in sorted(self._sentences)) or None
