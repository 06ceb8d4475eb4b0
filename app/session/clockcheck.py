"""Noticing that the computer's clock was set while a star is watched."""

from __future__ import annotations

from enum import Enum

from core.language import say

STEP_BACK_S = 2.0  # less is two sources of time disagreeing; more is a clock that was set
LONGEST_GAP_S = 50 * 60.0  # a clock set forward by an hour leaves a gap longer than this


class Verdict(Enum):
    """What to do with a reading, by its time."""

    GOES_ON = "goes on"
    REFUSED = "refused"
    WENT_BACK = "went back"
    LEFT_A_GAP = "left a gap"


def judge(last_utc_s: float | None, utc_s: float) -> Verdict:
    """Compare the time of a reading with that of the one before in the same leg."""
    if last_utc_s is None or 0.0 < utc_s - last_utc_s <= LONGEST_GAP_S:
        return Verdict.GOES_ON
    if utc_s > last_utc_s:
        return Verdict.LEFT_A_GAP
    return Verdict.REFUSED if last_utc_s - utc_s <= STEP_BACK_S else Verdict.WENT_BACK


def refusal(step_s: float) -> str:
    """The sentence for a reading that is not later than the one before (`step_s` ≤ 0)."""
    if step_s == 0.0:
        return say(
            "A reading was not taken because its time lies at the same instant as the one before: "
            "check that only one source delivers readings."
        )
    return say(
        "A reading was not taken because its time lies {early_s:.1f} s before the one before: "
        "check that only one source delivers readings.",
        early_s=-step_s,
    )


def notice(verdict: Verdict, step_s: float, old_label: str, new_label: str) -> str:
    """The sentence for a leg that was cut in two because of the clock."""
    if verdict is Verdict.WENT_BACK:
        what = say("The clock went back by {span}", span=span_words(-step_s))
    else:
        what = say(
            "No reading came for {span}, or the clock was set forward", span=span_words(step_s)
        )
    return say(
        "{what}: leg “{ended}” was ended and “{begun}” begun. If the clock was set, check the time "
        "and date, then discard the leg that was read by the wrong time.",
        what=what,
        ended=old_label,
        begun=new_label,
    )


def span_words(seconds: float) -> str:
    """A span of time as one says it: "45 s", "12 min", "2.5 h"."""
    if seconds < 120.0:
        return say("{seconds:.0f} s", seconds=seconds)
    if seconds < 120.0 * 60.0:
        return say("{minutes:.0f} min", minutes=seconds / 60.0)
    return say("{hours:.1f} h", hours=seconds / 3600.0)
