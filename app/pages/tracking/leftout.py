"""The lines of a growing file that could not be used: how many, and which was the last."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from core.alignment.driftlog.records import Rejected
from core.language import say


@dataclass(frozen=True)
class LeftOut:
    """All but the last are only counted: a file may go wrong for the whole of a night."""

    count: int = 0
    last: Rejected | None = None

    def and_these(self, lines: Sequence[Rejected]) -> LeftOut:
        """With further lines, in order, at least one."""
        return LeftOut(self.count + len(lines), lines[-1])

    @property
    def words(self) -> str:
        """Empty while every line could be used."""
        if self.last is None:
            return ""
        if self.count == 1:
            return say(
                "Line {number} of the file was left out: {reason}",
                number=self.last.line_number,
                reason=self.last.reason,
            )
        return say(
            "{count} lines of the file were left out, the last of them line {number}: {reason}",
            count=f"{self.count:,}",
            number=self.last.line_number,
            reason=self.last.reason,
        )
