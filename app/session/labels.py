"""Names for the legs of one night, none of them twice."""

from __future__ import annotations


class Labels:
    """Counts the legs of the night and remembers what they were called.

    Discarded legs and those of earlier axis states count too.
    """

    def __init__(self) -> None:
        self._used: list[str] = []

    def numbered(self, star_name: str) -> str:
        """Take the next number of the night with the star's name."""
        return self.take(f"{len(self._used) + 1} {star_name.strip()}".strip())

    def take(self, wanted: str) -> str:
        """Take `wanted`, told apart from those used before."""
        stem = wanted.strip() or str(len(self._used) + 1)
        label, number = stem, 2
        while label in self._used:
            label, number = f"{stem} ({number})", number + 1
        self._used.append(label)
        return label
