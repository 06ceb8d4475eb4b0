"""The words of the guide for every stage, from a snapshot of the night."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from app.pages.drift import guidance as say
from app.pages.drift.guidance import Action, Guidance
from app.pages.drift.starwords import LONGEST_ARCMIN, choose_detail, choose_sentence
from app.session.guide.afterturn import Mishap
from app.session.guide.state import North
from core.alignment.expectation import half_width_arcmin
from core.alignment.judgement import Next
from core.alignment.procedure import Stage

if TYPE_CHECKING:
    from app.session.guide.stars import Proposal, Proposals
    from app.session.snapshot import Snapshot

FIRST_GLANCE_MIN = 0.45
TURN_TOLD = {
    True: "Enough is known: turning the bolts now helps more than watching on.",
    False: "Turn the bolts only when the figures above are good enough for you.",
}


def guidance(
    snapshot: Snapshot,
    proposals: Proposals | None,
    star: Proposal | None,
    warnings: tuple[str, ...] = (),
) -> Guidance:
    """`star`: the proposal that is marked in the list. `warnings` on the leg under way."""
    said = _STAGES[snapshot.guide.stage](snapshot, proposals, star)
    surprise = snapshot.guide.surprise
    if surprise is not None:
        warnings = (surprise.sentence, *warnings)
        said = _with_ways_out(said, snapshot, surprise.mishap)
    if snapshot.guide.north is North.UNKNOWN:
        warnings = (*warnings, "Which way is north is not known: the first turn will tell.")
    return replace(said, warnings=(*warnings, *said.warnings))


def _with_ways_out(said: Guidance, snapshot: Snapshot, mishap: Mishap) -> Guidance:
    more = (say.KICKED,) if mishap is Mishap.MOVED else (say.EXCHANGED,)
    if snapshot.guide.north is North.EXCHANGED:
        more = (say.KICKED,)
    return replace(said, others=_once(*said.others, *more))


def _once(*actions: Action) -> tuple[Action, ...]:
    return tuple(dict.fromkeys(actions))


def _choose(snapshot: Snapshot, proposals: Proposals | None, star: Proposal | None) -> Guidance:
    judged = snapshot.guide.judgement
    others = _changed(snapshot)
    if not snapshot.legs and snapshot.axis_state == 1:
        others = (say.WHICH_NORTH,)
    stage = snapshot.guide.stage.value
    watch = None if star is None else say.WATCH
    if judged is not None and judged.next is Next.GOOD_ENOUGH:
        sentence = f"After this turn {chance_words(snapshot)}."
        return Guidance(stage, sentence, "", (), say.GOOD, _kept(watch, *others))
    if judged is not None and judged.next is Next.TURN and snapshot.legs:
        return Guidance(stage, TURN_TOLD[True], "", (), say.TURN, _kept(watch, *others))
    if star is not None and proposals is not None:
        sentence, detail = choose_sentence(star), choose_detail(star, proposals)
        return Guidance(stage, sentence, detail, (), watch, others)
    nothing = "" if proposals is None else proposals.nothing
    return Guidance(stage, nothing or "Looking for the best star …", "", (), None, others)


def _kept(*actions: Action | None) -> tuple[Action, ...]:
    return tuple(action for action in actions if action is not None)


def _changed(snapshot: Snapshot) -> tuple[Action, ...]:
    """Only where there is something to lose is the tripod asked about."""
    turn = (say.TURN,) if snapshot.guide.wanted is not None and snapshot.legs else ()
    return (*turn, say.KICKED) if snapshot.legs or snapshot.axis_state > 1 else ()


def _watch(snapshot: Snapshot, _proposals: object, _star: object) -> Guidance:
    stage = f"{snapshot.guide.stage.value}: {snapshot.watching}"
    judged = snapshot.guide.judgement
    others = (say.ENOUGH, *((say.TURN,) if snapshot.solution else ()), say.KICKED)
    if judged is None or not _is_judged(snapshot):
        sentence = "Go on reading: the first answer takes about half a minute."
        return Guidance(stage, sentence, "", (), None, others)
    detail = widths_words(snapshot)
    forecast = "" if snapshot.forecast is None else snapshot.forecast.sentence
    primary, sentence = {
        Next.WATCH_ON: (None, forecast or "Watch on."),
        Next.OTHER_STAR: (say.ENOUGH, "This star has told enough: another one helps more now."),
        Next.TURN: (say.TURN, TURN_TOLD[True]),
        Next.GOOD_ENOUGH: (say.GOOD, f"Good enough: {chance_words(snapshot)}."),
    }[judged.next]
    rest = tuple(action for action in others if action is not primary)
    return Guidance(stage, sentence, detail, (), primary, rest)


def _is_judged(snapshot: Snapshot) -> bool:
    """Whether the answer already knows this leg, and more of it than a first glance."""
    trends = () if snapshot.solution is None else snapshot.solution.legs
    return any(
        trend.label == snapshot.watching and trend.minutes >= FIRST_GLANCE_MIN for trend in trends
    )


def _turn(snapshot: Snapshot, _proposals: object, _star: object) -> Guidance:
    return Guidance(
        snapshot.guide.stage.value,
        "Turn both bolts; finish every turn in the same sense, so that the play is taken up.",
        "",
        (snapshot.guide.unseen,) if snapshot.guide.unseen else (),
        say.TURNED,
        (say.TURNED_OTHERWISE, say.AGAIN, say.KICKED),
    )


def _done(snapshot: Snapshot, _proposals: object, star: Proposal | None) -> Guidance:
    stage = snapshot.guide.stage.value
    sentence = f"{chance_words(snapshot)}.".capitalize()
    return Guidance(stage, sentence, more_buys(snapshot, star), (), None, (say.AGAIN, say.KICKED))


def _find_north(_snapshot: Snapshot, _proposals: object, _star: object) -> Guidance:
    return Guidance(
        Stage.FIND_NORTH.value,
        "Move the telescope a little north with the mount's own key. Which way did the star go?",
        "A telescope that moves north sees the star go south. In a mirrored view it is read the "
        "other way round; then the readings are turned over.",
        (),
        say.WENT_SOUTH,
        (say.WENT_NORTH, say.CANNOT_TELL),
    )


_STAGES = {
    Stage.CHOOSE: _choose,
    Stage.WATCH: _watch,
    Stage.TURN: _turn,
    Stage.DONE: _done,
    Stage.FIND_NORTH: _find_north,
}


def chance_words(snapshot: Snapshot) -> str:
    """``the axis is within 1′ of the true pole with a chance of 97 %``."""
    judged = snapshot.guide.judgement
    target, aim = snapshot.target_arcmin, snapshot.aim.value
    if judged is None:
        return f"how near the axis is to the {aim} is not known"
    chance = min(int(100.0 * judged.chance_within_target), 99)
    return f"the axis is within {target:g}′ of the {aim} with a chance of {chance} %"


def widths_words(snapshot: Snapshot) -> str:
    """The ± of the worse direction, which the watching is to bring down."""
    information = snapshot.guide.information
    if not information.any():
        return ""
    width = float(half_width_arcmin(information))
    if width > LONGEST_ARCMIN:
        return "One star alone leaves the other direction open."
    return f"± {_figure(width)} now."


def more_buys(snapshot: Snapshot, star: Proposal | None) -> str:
    """How much another five minutes would bring."""
    if star is None or not snapshot.guide.information.any():
        return ""
    now = float(half_width_arcmin(snapshot.guide.information))
    after = star.choice.half_width_arcmin
    if after >= now:
        return ""
    bring = f"would bring the ± from {_figure(now)} to {_figure(after)}"
    return f"Five more minutes on {star.name} {bring}."


def _figure(arcmin: float) -> str:
    return f"{arcmin:.1f}′" if arcmin < LONGEST_ARCMIN else "more than a degree"
