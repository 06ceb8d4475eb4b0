"""Long work asks now and then whether to go on."""

from __future__ import annotations

from collections.abc import Callable

KeepGoing = Callable[[float], bool]


class AnalysisCancelled(Exception):
    """The caller's `keep_going` answered no."""


def ask(keep_going: KeepGoing | None, share_done: float) -> None:
    """Tells how much is done, 0 to 1; raises AnalysisCancelled when the answer is no."""
    if keep_going is not None and not keep_going(share_done):
        raise AnalysisCancelled("The analysis was stopped.")
