"""What is said of a run while it is recorded."""

from __future__ import annotations

from typing import TYPE_CHECKING, NamedTuple

from core.language import say

if TYPE_CHECKING:
    from app.pages.tracking.liverun import LiveRun
    from core.alignment.driftlog.records import Leg

USUAL_WORM_S = 600.0  # a slow one; common practice, no source
FEWEST_TURNS, GOOD_TURNS = 3, 6
SILENCE_S = 20.0


class Words(NamedTuple):
    """`trouble` is empty while readings come as they should."""

    progress: str
    trouble: str


def progress_words(live: LiveRun, worm_period_s: float | None) -> Words:
    leg = live.leg()
    if not live.is_on:
        return Words("", "")
    if leg is None or not leg.utc_s.size:
        waiting = say("Waiting for the first reading …")
        return Words(waiting, _silence(live) or live.trouble)
    return Words(f"{_so_far(leg)} {_enough(leg, worm_period_s)}", live.trouble or _silence(live))


def _so_far(leg: Leg) -> str:
    return say(
        "Recording “{label}”: {n} readings, {minutes:.1f} minutes.",
        label=leg.label,
        n=f"{leg.utc_s.size:,}",
        minutes=_minutes(leg),
    )


def _enough(leg: Leg, worm_period_s: float | None) -> str:
    """How much longer, from the worm's period where it is known."""
    minutes, turn_min = _minutes(leg), (worm_period_s or USUAL_WORM_S) / 60.0
    least, good = FEWEST_TURNS * turn_min, GOOD_TURNS * turn_min
    if minutes < least:
        return say(
            "Go on for another {minutes:.0f} minutes at least, better {more:.0f}.",
            minutes=max(least - minutes, 1.0),
            more=good - minutes,
        )
    if minutes < good:
        return say(
            "That can be judged; another {minutes:.0f} minutes make it surer.",
            minutes=max(good - minutes, 1.0),
        )
    return say("That is enough.")


def _silence(live: LiveRun) -> str:
    silent_s = live.silent_s()
    if silent_s < SILENCE_S:
        return ""
    return say(
        "No reading for {seconds:.0f} s: is the star still found, and the file still written?",
        seconds=silent_s,
    )


def _minutes(leg: Leg) -> float:
    return float(leg.utc_s[-1] - leg.utc_s[0]) / 60.0
