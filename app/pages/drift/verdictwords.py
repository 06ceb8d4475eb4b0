"""The verdict band of the Drift page, from a snapshot of the night."""

from __future__ import annotations

from typing import TYPE_CHECKING

from app.widgets.verdict import AxisVerdict, Verdict
from core.alignment.drift.prepared import CONTRADICTION
from core.language import marked, say

if TYPE_CHECKING:
    from app.session.snapshot import Snapshot
    from core.alignment.advice import Advice
    from core.alignment.axis.solution import Solution

NOT_YET = marked("not known yet")


def verdict(snapshot: Snapshot, is_led: bool = False) -> Verdict:
    """Figures where the legs can tell, words where they cannot. `is_led`: the guide says what to
    do, so that this need not say it too.
    """
    if snapshot.advice is None or snapshot.solution is None:
        return _waiting(snapshot)
    return Verdict(
        _azimuth(snapshot.advice),
        _altitude(snapshot.advice),
        tuple(_quiet(snapshot, is_led)),
        _why_not(snapshot.solution),
        snapshot.solution_is_stale,
    )


def _why_not(solution: Solution) -> str:
    """Why the legs do not tell both errors; empty where they do."""
    if solution.is_contradictory:
        return " ".join(note.text for note in solution.notes if note.code == CONTRADICTION)
    return "" if solution.combination is None else solution.combination.sentence


def _waiting(snapshot: Snapshot) -> Verdict:
    nothing = AxisVerdict("", say(NOT_YET), "")
    if snapshot.site is None and snapshot.legs:
        sentence = say("Enter your site: with it these legs can tell.")
    elif snapshot.watching is None:
        sentence = say("Watch a star to find out.")
    else:
        sentence = say(
            "Watching {star}: the first answer takes about half a minute.", star=snapshot.watching
        )
    return Verdict(nothing, nothing, (sentence,), "", snapshot.solution_is_stale)


def _azimuth(advice: Advice) -> AxisVerdict:
    return AxisVerdict(advice.azimuth_figure, advice.azimuth_side, advice.azimuth_turn)


def _altitude(advice: Advice) -> AxisVerdict:
    return AxisVerdict(advice.altitude_figure, advice.altitude_side, advice.altitude_turn)


def _quiet(snapshot: Snapshot, is_led: bool) -> list[str]:
    said = [say("Aligning on the {aim}. The ± is the 95 % range.", aim=say(snapshot.aim.value))]
    if snapshot.forecast is not None and not is_led:
        said.append(snapshot.forecast.sentence)
    return said
