"""The words of the guide for every stage, from a snapshot of the night."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from app.pages.drift import guidance as act
from app.pages.drift.guidance import Action, Guidance
from app.pages.drift.starwords import LONGEST_ARCMIN, choose_detail, choose_sentence
from app.pages.drift.watchwords import Warned
from app.session.guide.afterturn import Mishap
from app.session.guide.state import North
from core.alignment.guide.judgement import Next
from core.alignment.guide.nextstar import flexure_arcmin, half_width_arcmin
from core.alignment.guide.procedure import Stage
from core.language import marked, say

if TYPE_CHECKING:
    from app.session.guide.stars import Proposal, Proposals
    from app.session.snapshot import Snapshot

FIRST_GLANCE_MIN = 0.45
TURN_TOLD = {
    True: marked("Enough is known: turning the bolts now helps more than watching on."),
    False: marked("Turn the bolts only when the figures above are good enough for you."),
}
NOTHING = Warned()


def guidance(
    snapshot: Snapshot,
    proposals: Proposals | None,
    star: Proposal | None,
    warned: Warned = NOTHING,
) -> Guidance:
    """`star`: the proposal that is marked in the list. `warned` of the leg under way."""
    said = _STAGES[snapshot.guide.stage](snapshot, proposals, star)
    warnings = warned.sentences
    if snapshot.solution is not None and snapshot.solution.is_contradictory:
        said = _contradictory(said, snapshot)
    surprise = snapshot.guide.surprise
    if surprise is not None:
        warnings = (surprise.sentence, *warnings)
        said = _with_ways_out(said, snapshot, surprise.mishap)
    if snapshot.guide.north is North.UNKNOWN:
        warnings = (*warnings, say("Which way is north is not known: the first turn will tell."))
    return replace(
        said,
        warnings=(*warnings, *said.warnings),
        others=tuple(action for action in _once(*said.others) if action is not said.primary),
        is_leaving=warned.is_leaving,
    )


def _contradictory(said: Guidance, snapshot: Snapshot) -> Guidance:
    """Before anything else it has to be settled which leg is wrong."""
    if snapshot.guide.stage not in (Stage.CHOOSE, Stage.WATCH):
        return said
    sentence = say(
        "The legs contradict one another: in their list, exchange north and south of the wrong one "
        "or discard it. Another star may show which it is."
    )
    return replace(said, sentence=sentence, detail="")


def _with_ways_out(said: Guidance, snapshot: Snapshot, mishap: Mishap) -> Guidance:
    more = (act.KICKED,) if mishap is Mishap.MOVED else (act.EXCHANGED,)
    if snapshot.guide.north is North.EXCHANGED:
        more = (act.KICKED,)
    return replace(said, others=(*said.others, *more))


def _once(*actions: Action) -> tuple[Action, ...]:
    return tuple(dict.fromkeys(actions))


def _choose(snapshot: Snapshot, proposals: Proposals | None, star: Proposal | None) -> Guidance:
    judged = snapshot.guide.judgement
    others = _changed(snapshot)
    if not snapshot.legs and snapshot.axis_state == 1:
        others = (act.WHICH_NORTH,)
    stage = say(snapshot.guide.stage.value)
    watch = None if star is None else act.WATCH
    if judged is not None and judged.next is Next.GOOD_ENOUGH:
        sentence = say("After this turn {chance}.", chance=chance_words(snapshot))
        return Guidance(stage, sentence, "", (), act.GOOD, _kept(watch, *others))
    if judged is not None and judged.next is Next.TURN and snapshot.legs:
        told = say(TURN_TOLD[True])
        return Guidance(stage, told, "", (), act.TURN, _kept(watch, *others))
    if star is not None and proposals is not None:
        sentence, detail = choose_sentence(star), choose_detail(star, proposals)
        return Guidance(stage, sentence, detail, (), watch, others)
    nothing = "" if proposals is None else proposals.nothing
    return Guidance(stage, nothing or say("Looking for the best star …"), "", (), None, others)


def _kept(*actions: Action | None) -> tuple[Action, ...]:
    return tuple(action for action in actions if action is not None)


def _changed(snapshot: Snapshot) -> tuple[Action, ...]:
    """Only where there is something to lose is the tripod asked about."""
    turn = (act.TURN,) if snapshot.guide.wanted is not None and snapshot.legs else ()
    return (*turn, act.KICKED) if snapshot.legs or snapshot.axis_state > 1 else ()


def _watch(snapshot: Snapshot, _proposals: object, _star: object) -> Guidance:
    stage = f"{say(snapshot.guide.stage.value)}: {snapshot.watching}"
    judged = snapshot.guide.judgement
    others = (act.ENOUGH, *((act.TURN,) if snapshot.solution else ()), act.KICKED)
    if judged is None or not _is_judged(snapshot):
        sentence = say("Go on reading: the first answer takes about half a minute.")
        return Guidance(stage, sentence, "", (), None, others)
    detail = widths_words(snapshot)
    forecast = "" if snapshot.forecast is None else snapshot.forecast.sentence
    primary, sentence = {
        Next.WATCH_ON: (None, forecast or say("Watch on.")),
        Next.OTHER_STAR: (
            act.ENOUGH,
            say("This star has told enough: another one helps more now."),
        ),
        Next.TURN: (act.TURN, say(TURN_TOLD[True])),
        Next.GOOD_ENOUGH: (
            act.GOOD,
            say("Good enough: {chance}.", chance=chance_words(snapshot)),
        ),
    }[judged.next]
    return Guidance(stage, sentence, detail, (), primary, others)


def _is_judged(snapshot: Snapshot) -> bool:
    """Whether the answer already knows this leg, and more of it than a first glance."""
    trends = () if snapshot.solution is None else snapshot.solution.legs
    return any(
        trend.label == snapshot.watching and trend.minutes >= FIRST_GLANCE_MIN for trend in trends
    )


def _turn(snapshot: Snapshot, _proposals: object, _star: object) -> Guidance:
    return Guidance(
        say(snapshot.guide.stage.value),
        say("Turn both bolts; finish every turn in the same sense, so that the play is taken up."),
        "",
        (snapshot.guide.unseen,) if snapshot.guide.unseen else (),
        act.TURNED,
        (act.TURNED_OTHERWISE, act.AGAIN, act.KICKED),
    )


def _done(snapshot: Snapshot, _proposals: object, star: Proposal | None) -> Guidance:
    stage = say(snapshot.guide.stage.value)
    chance = f"{chance_words(snapshot)}."
    sentence = chance[:1].upper() + chance[1:]
    return Guidance(stage, sentence, more_buys(snapshot, star), (), None, (act.AGAIN, act.KICKED))


def _find_north(_snapshot: Snapshot, _proposals: object, _star: object) -> Guidance:
    return Guidance(
        say(Stage.FIND_NORTH.value),
        say(
            "Move the telescope a little north with the mount's own key. Which way did the star go?"
        ),
        say(
            "A telescope that moves north sees the star go south. In a mirrored view it is read "
            "the other way round; then the readings are turned over."
        ),
        (),
        act.WENT_SOUTH,
        (act.WENT_NORTH, act.CANNOT_TELL),
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
    aim = say(snapshot.aim.value)
    if judged is None:
        return say("how near the axis is to the {aim} is not known", aim=aim)
    return say(
        "the axis is within {target:g}′ of the {aim} with a chance of {chance} %",
        target=snapshot.target_arcmin,
        aim=aim,
        chance=min(int(100.0 * judged.chance_within_target), 99),
    )


def widths_words(snapshot: Snapshot) -> str:
    """The ± of the worse direction, which the watching is to bring down."""
    information = snapshot.guide.information
    if not information.any():
        return ""
    width = _half_width_arcmin(snapshot)
    if width > LONGEST_ARCMIN:
        return say("One star alone leaves the other direction open.")
    return say("± {width} now.", width=_figure(width))


def more_buys(snapshot: Snapshot, star: Proposal | None) -> str:
    """How much another five minutes would bring."""
    if star is None or not snapshot.guide.information.any():
        return ""
    now = _half_width_arcmin(snapshot)
    after = star.choice.half_width_arcmin
    if after >= now:
        return ""
    return say(
        "Five more minutes on {star} would bring the ± from {before} to {after}.",
        star=star.name,
        before=_figure(now),
        after=_figure(after),
    )


def _half_width_arcmin(snapshot: Snapshot) -> float:
    latitude_deg = 0.0 if snapshot.site is None else snapshot.site.latitude_deg
    flexure = flexure_arcmin(snapshot.priors, latitude_deg)
    return float(half_width_arcmin(snapshot.guide.information, flexure))


def _figure(arcmin: float) -> str:
    return f"{arcmin:.1f}′" if arcmin < LONGEST_ARCMIN else say("more than a degree")
