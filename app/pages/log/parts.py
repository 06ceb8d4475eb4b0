"""What the Log page needs from outside."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Protocol

if TYPE_CHECKING:
    from app.night.archive import NightFiles
    from app.night.notes import NightBook
    from core.alignment.priors import Priors
    from core.sky.clocks import Zone


class NoteLog(Protocol):
    """Where notes and pictures of any night are kept; every call returns at once."""

    def put_entry(
        self,
        kind: str,
        content: Mapping[str, Any],
        attachment: bytes | None = None,
        entry_id: int | None = None,
        utc_s: float | None = None,
        night_id: int | None = None,
    ) -> int: ...

    def remove_entry(self, entry_id: int) -> None: ...

    @property
    def is_read_only(self) -> bool: ...

    def flush(self, timeout_s: float = ...) -> bool: ...


@dataclass(frozen=True)
class LogParts:
    """`zone`: what times are shown in. `tonight`: the key of the night that is being written.

    `priors`: what the computation is granted of reticle, tube and drive at present.
    """

    files: NightFiles
    log: NoteLog
    book: NightBook
    tonight: int
    zone: Callable[[], Zone]
    priors: Callable[[], Priors]
