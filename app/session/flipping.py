"""The flip of tonight's target: in which session, and whether the mount has to do it at all."""

from __future__ import annotations

from app.session.around import Around
from core.language import say
from core.mount.equipment import MountKind
from core.night.darkness import Night, Span
from core.night.flip import FlipPlan, Limits, Series, flip_plan
from core.night.plan import Curve
from core.sky.targets import Target


def session_of(seen: Curve, tonight: Night, begin_utc_s: float, end_utc_s: float) -> Span | None:
    """As the person wants it, NaN for not said; else the longest clear span in the dark."""
    spans = seen.clear_spans(tonight.usable_spans)
    usual = max(spans, key=lambda span: span[1] - span[0], default=None)
    begin, end = (_within(utc_s, tonight) for utc_s in (begin_utc_s, end_utc_s))
    if usual is None:
        return None if begin is None or end is None else (begin, end)
    return (usual[0] if begin is None else begin, usual[1] if end is None else end)


def planned_flip(
    fixed: Target,
    around: Around,
    session: Span | None,
    kind: MountKind,
    limits: Limits,
    series: Series,
) -> tuple[FlipPlan | None, str]:
    """The plan of a target that holds still, or a sentence why there is none."""
    if session is None:
        return None, say(
            "{target} is never high enough and clear while it is dark tonight. Choose another "
            "target, or a lower useful altitude.",
            target=fixed.name,
        )
    try:
        plan = flip_plan(
            *(fixed.ra_deg, fixed.dec_deg, around.site, around.air, session),
            *(kind, limits, series),
        )
    except ValueError as problem:
        return None, str(problem)
    return plan, ""


def _within(utc_s: float, tonight: Night) -> float | None:
    """A time of another night says nothing about this one, nor does NaN."""
    return utc_s if tonight.begin_utc_s <= utc_s <= tonight.end_utc_s else None
