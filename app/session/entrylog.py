"""Where anything of a night beside its legs is kept: a tick, a note, a result, a picture."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any, Protocol


class EntryLog(Protocol):
    """The log of nights is one; every call returns at once."""

    def put_entry(
        self,
        kind: str,
        content: Mapping[str, Any],
        attachment: bytes | None = None,
        entry_id: int | None = None,
    ) -> int:
        """Of tonight. With an `entry_id` in that entry's place. The key of the entry."""
        ...
