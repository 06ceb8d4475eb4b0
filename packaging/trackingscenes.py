"""Scenes of the Tracking page for `screens.py`; every run, star and tap in them is invented."""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from PySide6.QtCore import QEventLoop, QTimer

from app.compose import Program
from app.pages.tracking.page import (
    EXPOSURE,
    GUIDING,
    PERIODIC,
    POINTING,
    TRAINING,
    VIBRATION,
    TrackingPage,
)
from app.pages.tracking.practice import (
    practice_guiding,
    practice_place,
    practice_run,
    practice_sightings,
    practice_tap,
)
from app.pagetable import TRACKING

NOW_S = 1_790_000_000.0
SCALE = 1.2  # arcseconds per pixel of an invented camera


def _page(program: Program, section: str) -> TrackingPage:
    program.window.show_page(TRACKING)
    page = program.window.page(TRACKING)
    assert isinstance(page, TrackingPage)
    page.show_section(section)
    page.show_top()
    return page


def _wait(ms: int) -> None:
    loop = QEventLoop()
    QTimer.singleShot(ms, loop.quit)
    loop.exec()


def _empty(program: Program) -> None:
    _page(program, PERIODIC)


def _run(program: Program, section: str, scale: float | None = SCALE) -> TrackingPage:
    page = _page(program, section)
    page.bench.want(scale_arcsec_per_px=scale)
    page.bench.take_run(practice_run(NOW_S, np.random.default_rng(3)))
    _wait(3000)
    return page


def _unscaled(program: Program) -> None:
    _run(program, PERIODIC, scale=None)


def _periodic(program: Program) -> None:
    _run(program, PERIODIC)


def _training(program: Program) -> None:
    _run(program, TRAINING)


def _exposure(program: Program) -> None:
    _run(program, EXPOSURE)


def _guiding(program: Program) -> None:
    page = _run(program, GUIDING)
    page.bench.take_guided(practice_guiding(NOW_S, np.random.default_rng(3)))
    _wait(1500)


def _pointing(program: Program) -> None:
    page = _page(program, POINTING)
    page.bench.take_sightings(practice_sightings(np.random.default_rng(3)), practice_place())
    _wait(1500)


def _vibration(program: Program) -> None:
    page = _page(program, VIBRATION)
    page.bench.take_tap(practice_tap(np.random.default_rng(3), is_stiff=False), is_after=False)
    page.bench.take_tap(practice_tap(np.random.default_rng(4), is_stiff=True), is_after=True)
    _wait(1500)


def _recording(program: Program) -> None:
    page = _page(program, PERIODIC)
    assert page.bench.live is not None
    page.bench.live.practise()
    _wait(6000)


TRACKING_SCENES: dict[str, Callable[[Program], None]] = {
    "tracking-empty": _empty,
    "tracking-unscaled": _unscaled,
    "tracking-periodic": _periodic,
    "tracking-training": _training,
    "tracking-exposure": _exposure,
    "tracking-guiding": _guiding,
    "tracking-pointing": _pointing,
    "tracking-vibration": _vibration,
    "tracking-recording": _recording,
}
