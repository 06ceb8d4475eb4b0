"""The Tracking page, and what it gets."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.pages.tracking.liverun import LiveParts
from app.pages.tracking.page import TrackingPage
from app.pages.tracking.parts import TrackingParts
from app.session.keeper import Keeper
from app.session.runrecorder import RunRecorder
from app.theme.theme import Theme
from core.night.record import Purpose

if TYPE_CHECKING:
    from app.session.budget import Budget
    from app.session.equipment import Equipment
    from app.session.session import Session
    from app.warmup import Warm


def tracking_page(
    session: Session,
    theme: Theme,
    warm: Warm,
    budget: Budget,
    equipment: Equipment,
    now: Callable[[], float],
) -> TrackingPage:
    """It goes on with the last run of the night that was not left out."""
    recorder = RunRecorder(Keeper(warm.log, session.report_storage))
    kept = [run for run in warm.night.tracking_runs if not run.discarded]
    runs = [run for run in kept if run.purpose != Purpose.GUIDING]
    guided = [run for run in kept if run.purpose == Purpose.GUIDING]
    open_run = runs.pop() if runs and not runs[-1].ended else None
    for run in runs:
        recorder.know(run.leg.label)
    parts = TrackingParts(
        now,
        warm.log,
        runs[-1] if runs else None,
        budget,
        equipment,
        LiveParts(recorder, open_run),
        guided[-1] if guided else None,
        warm.night.entries,
    )
    return TrackingPage(session, theme, parts)


def unbuilt_parts(page: QWidget | None) -> list[Callable[[], None]]:
    """A step for each part of the page that is not shown at first."""
    return page.sections.unbuilt() if isinstance(page, TrackingPage) else []
