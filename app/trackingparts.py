"""The Tracking page, and what it gets."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.pages.tracking.page import TrackingPage
from app.pages.tracking.parts import TrackingParts
from app.theme.theme import Theme

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
    runs = [run for run in warm.night.tracking_runs if not run.discarded]
    parts = TrackingParts(now, warm.log, runs[-1] if runs else None, budget, equipment)
    return TrackingPage(session, theme, parts)


def unbuilt_parts(page: QWidget | None) -> list[Callable[[], None]]:
    """A step for each part of the page that is not shown at first."""
    return page.sections.unbuilt() if isinstance(page, TrackingPage) else []
