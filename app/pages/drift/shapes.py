"""Which leg has which shape: in the order they come, and kept when one is discarded."""

from __future__ import annotations


class Shapes:
    def __init__(self) -> None:
        self._axis_state = 0
        self._indices: dict[str, int] = {}

    def begin(self, axis_state: int) -> None:
        """Another axis state starts with the first shape again."""
        if axis_state != self._axis_state:
            self._axis_state = axis_state
            self._indices = {}

    def index(self, label: str) -> int:
        return self._indices.setdefault(label, len(self._indices))
